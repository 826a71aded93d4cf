#include "tests/app/desktop/languages/catalogue.h"

#include <QFile>
#include <QRegularExpression>
#include <QSet>
#include <QXmlStreamReader>

namespace catalogue {
namespace {

QSet<QString> allOf(const QRegularExpression& shape, const QString& text)
{
    QSet<QString> found;
    for (auto matches = shape.globalMatch(text); matches.hasNext();)
        found << matches.next().captured();
    return found;
}

QSet<QString> markersOf(const QString& text)
{
    static const QRegularExpression marker{QStringLiteral("%L?(\\d+|n)")};
    return allOf(marker, text);
}

/// A letter or digit in brackets is the key that was given to it, whatever the language.
QSet<QString> keysOf(const QString& text)
{
    static const QRegularExpression key{QStringLiteral("\\(([A-Z0-9]|F\\d+)\\)")};
    return allOf(key, text);
}

bool hasUnderlinedLetter(const QString& text)
{
    static const QRegularExpression underlined{QStringLiteral("&[\\w%]"),
                                               QRegularExpression::UseUnicodePropertiesOption};
    return underlined.match(text).hasMatch();
}

QString endsOf(const QString& text)
{
    const QString trimmed = text.trimmed();
    const auto begin = text.indexOf(trimmed);
    return text.left(begin) + QLatin1Char{'|'} + text.mid(begin + trimmed.size());
}

void readTranslation(QXmlStreamReader& xml, Message& message)
{
    message.finished = xml.attributes().value(QLatin1String{"type"}).isEmpty();
    if (!message.counts) {
        message.forms << xml.readElementText();
        return;
    }
    while (xml.readNextStartElement())
        message.forms << xml.readElementText();
}

Message readMessage(QXmlStreamReader& xml, const QString& context)
{
    Message message;
    message.context = context;
    message.counts = xml.attributes().value(QLatin1String{"numerus"}) == QLatin1String{"yes"};
    while (xml.readNextStartElement()) {
        if (xml.name() == QLatin1String{"source"})
            message.source = xml.readElementText();
        else if (xml.name() == QLatin1String{"comment"})
            message.comment = xml.readElementText();
        else if (xml.name() == QLatin1String{"translation"})
            readTranslation(xml, message);
        else
            xml.skipCurrentElement();
    }
    return message;
}

void addFaultsOf(const Message& message, const QString& form, QStringList& faults)
{
    const auto add = [&](const char* what) {
        faults << message.name() + QStringLiteral(" -> ") + form + QStringLiteral(": ") + QLatin1String{what};
    };
    if (form.trimmed().isEmpty())
        return add("is not translated");
    QSet<QString> wanted = markersOf(message.source);
    QSet<QString> given = markersOf(form);
    // One can be said without its number.
    if (message.counts && message.forms.size() > 1 && form == message.forms.front()) {
        wanted.remove(QStringLiteral("%n"));
        given.remove(QStringLiteral("%n"));
    }
    if (wanted != given)
        add("puts in something else");
    if (hasUnderlinedLetter(message.source) != hasUnderlinedLetter(form))
        add("an underlined letter is lost or new");
    if (keysOf(message.source) != keysOf(form))
        add("another key");
    if (endsOf(message.source) != endsOf(form))
        add("other spaces at its ends");
}

}  // namespace

std::vector<Message> read(const QString& file)
{
    QFile source{file};
    if (!source.open(QIODevice::ReadOnly))
        return {};
    std::vector<Message> messages;
    QXmlStreamReader xml{&source};
    QString context;
    while (!xml.atEnd()) {
        if (!xml.readNextStartElement() && xml.atEnd())
            break;
        if (!xml.isStartElement())
            continue;
        if (xml.name() == QLatin1String{"name"})
            context = xml.readElementText();
        else if (xml.name() == QLatin1String{"message"})
            messages.push_back(readMessage(xml, context));
    }
    return messages;
}

QStringList faultsOf(const Message& message)
{
    QStringList faults;
    if (!message.finished)
        faults << message.name() + QStringLiteral(": is marked as not finished");
    if (message.forms.isEmpty())
        faults << message.name() + QStringLiteral(": is not translated");
    for (const QString& form : message.forms)
        addFaultsOf(message, form, faults);
    return faults;
}

}  // namespace catalogue
