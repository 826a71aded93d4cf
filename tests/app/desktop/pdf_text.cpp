#include "tests/app/desktop/pdf_text.h"

#include <QFile>
#include <QHash>
#include <QRegularExpression>

#include <algorithm>

// As Qt 6.4 writes them: pages and fonts are objects in the open, "/F7" is the font that is object 7, what is
// drawn is deflated, and each piece of text stands between BT and ET as the numbers of its glyphs.
namespace pdf {
namespace {

using Glyphs = QHash<uint, QString>;

/// "12 0 obj ... endobj", without these words.
QHash<int, QByteArray> objectsOf(const QByteArray& file)
{
    QHash<int, QByteArray> objects;
    qsizetype at = 0;
    while ((at = file.indexOf(" 0 obj\n", at)) >= 0) {
        const qsizetype number = file.lastIndexOf('\n', at - 1) + 1;
        const qsizetype until = file.indexOf("endobj", at);
        objects[file.mid(number, at - number).toInt()] = file.mid(at + 7, until - at - 7);
        at = until;
    }
    return objects;
}

QByteArray streamOf(const QByteArray& object)
{
    const qsizetype from = object.indexOf("stream\n");
    if (from < 0)
        return {};
    const QByteArray bytes = object.mid(from + 7, object.lastIndexOf("\nendstream") - from - 7);
    if (!object.left(from).contains("/FlateDecode"))
        return bytes;
    return qUncompress(QByteArray{"\0\x10\0\0", 4} + bytes);  // A megabyte expected, grown as needed.
}

/// "/Contents 9 0 R" is 9.
int referenceOf(const QByteArray& object, const char* key)
{
    const qsizetype at = object.indexOf(key);
    return at < 0
        ? 0
        : object.mid(at + static_cast<qsizetype>(qstrlen(key)), 12).trimmed().split(' ').front().toInt();
}

QString letter(const QString& number)
{
    const auto code = static_cast<char16_t>(number.toUInt(nullptr, 16));
    return code == u'\t' ? QStringLiteral(" ") : QString{QChar{code}};  // A tab shares the glyph of a space.
}

/// Of the lines "<0001> <0003> [<0041> <0070> <0070>]", which are the letters of glyphs 1 to 3, or
/// "<0004> <0005> <0061>", which are one after the other.
Glyphs glyphsOf(const QByteArray& map)
{
    static const QRegularExpression range{
        QStringLiteral(R"(<([0-9A-Fa-f]{4})> <([0-9A-Fa-f]{4})> (?:<([0-9A-Fa-f]{4})>|\[([^\]]*)\]))")};
    static const QRegularExpression listed{QStringLiteral("<([0-9A-Fa-f]+)>")};
    Glyphs glyphs;
    for (auto found = range.globalMatch(QString::fromLatin1(map)); found.hasNext();) {
        const auto one = found.next();
        uint glyph = one.captured(1).toUInt(nullptr, 16);
        const uint last = one.captured(2).toUInt(nullptr, 16);
        for (auto letters = listed.globalMatch(one.captured(4)); letters.hasNext(); ++glyph)
            glyphs[glyph] = letter(letters.next().captured(1));
        for (uint code = one.captured(3).toUInt(nullptr, 16); code > 0 && glyph <= last; ++glyph, ++code)
            glyphs[glyph] = letter(QString::number(code, 16));
    }
    return glyphs;
}

QString textOf(const QByteArray& drawn, const QHash<int, QByteArray>& objects)
{
    static const QRegularExpression piece{QStringLiteral("\\bBT\\b(.*?)\\bET\\b"),
                                          QRegularExpression::DotMatchesEverythingOption};
    static const QRegularExpression font{QStringLiteral("/F(\\d+) ")};
    static const QRegularExpression shown{QStringLiteral("<([0-9A-Fa-f]{4})> Tj")};
    QString text;
    for (auto pieces = piece.globalMatch(QString::fromLatin1(drawn)); pieces.hasNext();) {
        const QString one = pieces.next().captured(1);
        const QByteArray object = objects.value(font.match(one).captured(1).toInt());
        const Glyphs glyphs = glyphsOf(streamOf(objects.value(referenceOf(object, "/ToUnicode "))));
        for (auto letters = shown.globalMatch(one); letters.hasNext();)
            text += glyphs.value(letters.next().captured(1).toUInt(nullptr, 16));
        text += QLatin1Char{'\n'};
    }
    return text;
}

}  // namespace

Read read(const QString& path)
{
    QFile file{path};
    if (!file.open(QIODevice::ReadOnly))
        return {};
    const auto objects = objectsOf(file.readAll());
    static const QRegularExpression box{QStringLiteral("/MediaBox \\[0 0 ([0-9.]+) ([0-9.]+)\\]")};
    Read read;
    QList<int> numbers = objects.keys();
    std::ranges::sort(numbers);
    for (const int number : numbers) {
        const QByteArray object = objects[number];
        if (!object.contains("/Type /Page\n"))
            continue;
        ++read.pages;
        const auto size = box.match(QString::fromLatin1(object));
        read.sizes << QSizeF{size.captured(1).toDouble(), size.captured(2).toDouble()};
        read.text += textOf(streamOf(objects.value(referenceOf(object, "/Contents "))), objects);
    }
    return read;
}

}  // namespace pdf
