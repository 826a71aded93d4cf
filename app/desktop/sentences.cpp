#include "app/desktop/sentences.h"

#include "app/desktop/language.h"
#include "app/desktop/wall_clock.h"
#include "app/desktop/words.h"

#include <QCoreApplication>
#include <QLocale>

namespace app::desktop {
namespace {

using core::measure::Sentence;
using core::measure::SentencePart;

struct SentencesText {
    Q_DECLARE_TR_FUNCTIONS(Sentences)
};

/// The name of the class that `worded` stands in: that is where the catalogues have its patterns.
constexpr const char* patterns = "core::measure::Sentence";

/// English says "2nd" itself, and other languages not by the rule of one and many alone.
QString ordinal(const SentencePart& part)
{
    if (language::used() == QLatin1String{"en"})
        return QString::fromStdString(part.text());
    return SentencesText::tr("%n.", "an ordinal number, such as 2nd", static_cast<int>(part.value));
}

QString joined(const SentencePart& part)
{
    QStringList all;
    for (const Sentence& sentence : part.words)
        all << inWords(sentence);
    QString text = all.join(QLatin1String{part.between});
    // Where a sentence goes on, other languages keep the letter that a name or a noun begins with.
    if (part.kind == SentencePart::Kind::Small && language::used() == QLatin1String{"en"} && !text.isEmpty())
        text[0] = text[0].toLower();
    return text;
}

QString inWords(const SentencePart& part)
{
    using Kind = SentencePart::Kind;
    switch (part.kind) {
    case Kind::Words:
    case Kind::Small: return joined(part);
    case Kind::Length: return words::length(core::measure::Seconds{part.value});
    case Kind::Clock: return WallClock::text(core::measure::LocalTime{core::measure::Seconds{part.value}});
    case Kind::Number: return QLocale{}.toString(static_cast<qlonglong>(part.value));
    case Kind::Ordinal: return ordinal(part);
    }
    return {};
}

}  // namespace

QString inWords(const Sentence& sentence)
{
    if (sentence.pattern() == nullptr)
        return QString::fromStdString(sentence.text());
    const QString pattern = QCoreApplication::translate(patterns, sentence.pattern());
    QString text;
    for (qsizetype place = 0; place < pattern.size(); ++place) {
        const int marker = pattern[place] == QLatin1Char{'%'} && place + 1 < pattern.size()
            ? pattern[place + 1].digitValue()
            : -1;
        if (marker < 1 || marker > static_cast<int>(sentence.parts().size())) {
            text += pattern[place];
            continue;
        }
        text += inWords(sentence.parts()[static_cast<std::size_t>(marker) - 1]);
        ++place;
    }
    return text;
}

}  // namespace app::desktop
