#include "app/desktop/language.h"
#include "app/desktop/print/page_layout.h"
#include "app/desktop/records/records_window.h"
#include "tests/app/desktop/pictures/scenes.h"
#include "tests/app/desktop/pictures/sheet.h"
#include "tests/app/desktop/pictures/stage.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QPainter>

#include <cstdio>

// Draws the window as it is in each scene, theme and size, into files named after them. See --help.

namespace {

using app::desktop::Theme;

struct Wanted {
    QDir folder;
    QStringList scenes;
    QStringList themes;
    QStringList sizes;
    int text = 100;
    QString language;
    QSizeF paper;  ///< In 1/96 inch; empty for pictures of the window.
    bool sheets = false;
    QStringList looks;  ///< Whose sheets; empty for all.
};

QSize sizeOf(const QString& size)
{
    return {size.section(QLatin1Char{'x'}, 0, 0).toInt(), size.section(QLatin1Char{'x'}, 1, 1).toInt()};
}

QSizeF paperOf(const QString& name)
{
    if (name.isEmpty())
        return {};
    return name.compare(QLatin1String{"letter"}, Qt::CaseInsensitive) == 0 ? QSizeF{816, 1056}
                                                                           : QSizeF{794, 1123};
}

/// What the scene would print for its first head, on white paper.
bool drawPaper(const pictures::Scene& scene, const Wanted& wanted)
{
    constexpr int margin = 49;  // 13 mm.
    constexpr double enlarged = 1.25;
    rig::Rig rig;
    scene.stage(rig);
    auto* records = rig.window->findChild<app::desktop::RecordsWindow*>(QStringLiteral("records"));
    const auto sheets = records != nullptr ? records->sheets() : rig.window->toPrint();
    const auto pages =
        app::desktop::print::layOut(sheets.front(), wanted.paper - QSizeF{2 * margin, 2 * margin});
    for (std::size_t page = 0; page < pages.size(); ++page) {
        QImage paper{(wanted.paper * enlarged).toSize(), QImage::Format_RGB32};
        paper.fill(Qt::white);
        QPainter painter{&paper};
        painter.scale(enlarged, enlarged);
        painter.translate(margin, margin);
        app::desktop::print::paint(painter, pages[page], app::desktop::paperColours());
        painter.end();
        const QString number = page == 0 ? QString{} : QStringLiteral("-%1").arg(page + 1);
        const QString path = wanted.folder.filePath(QStringLiteral("print-%1%2.png").arg(scene.name, number));
        if (!paper.save(path))
            return false;
        std::printf("%s\n", qPrintable(path));
    }
    return true;
}

bool draw(const pictures::Scene& scene, const Wanted& wanted)
{
    pictures::Look look{wanted.language, wanted.themes.front(), sizeOf(wanted.sizes.front()), wanted.text};
    pictures::Stage stage{scene, look};
    for (const QString& size : wanted.sizes)
        for (const QString& theme : wanted.themes) {
            look.theme = theme;
            look.size = sizeOf(size);
            const QString name = wanted.sizes.size() == 1
                ? QStringLiteral("%1-%2.png").arg(scene.name, theme)
                : QStringLiteral("%1-%2-%3.png").arg(scene.name, theme, size);
            if (!stage.picture(look).save(wanted.folder.filePath(name)))
                return false;
            std::printf("%s\n", qPrintable(wanted.folder.filePath(name)));
        }
    return true;
}

bool drawSheets(const Wanted& wanted)
{
    for (const pictures::Look& look : pictures::looks()) {
        if (!wanted.looks.isEmpty() && !wanted.looks.contains(look.name()))
            continue;
        const QString path = wanted.folder.filePath(look.name() + QStringLiteral(".jpg"));
        if (!pictures::write(pictures::sheetOf(look), path))
            return false;
        std::printf("%s\n", qPrintable(path));
    }
    return true;
}

QString looksInWords()
{
    QStringList names;
    for (const pictures::Look& look : pictures::looks())
        names << look.name();
    return names.join(QStringLiteral(", "));
}

Wanted read(const QStringList& arguments)
{
    QCommandLineParser parser;
    parser.setApplicationDescription(QStringLiteral("Draws the window into files. Several names are "
                                                    "separated by commas."));
    parser.addHelpOption();
    parser.addPositionalArgument(QStringLiteral("FOLDER"), QStringLiteral("Where the pictures go."));
    parser.addOptions(
        {{QStringLiteral("scenes"), QStringLiteral("Which, of all."), QStringLiteral("NAMES")},
         {QStringLiteral("themes"), QStringLiteral("light, dark, contrast, dark-contrast."),
          QStringLiteral("NAMES"), QStringLiteral("light,dark")},
         {QStringLiteral("sizes"), QStringLiteral("Of the window."), QStringLiteral("WxH"),
          QStringLiteral("1280x800")},
         {QStringLiteral("paper"), QStringLiteral("What each scene would print instead, on A4 or Letter."),
          QStringLiteral("SIZE")},
         {QStringLiteral("sheets"), QStringLiteral("All scenes on a sheet for each look instead.")},
         {QStringLiteral("looks"), QStringLiteral("Which sheets, of %1.").arg(looksInWords()),
          QStringLiteral("NAMES")},
         {QStringLiteral("text"), QStringLiteral("Its size in percent."), QStringLiteral("PERCENT"),
          QStringLiteral("100")},
         {QStringLiteral("language"), QStringLiteral("en, de, fr, es."), QStringLiteral("CODE"),
          QStringLiteral("en")}});
    parser.process(arguments);
    app::desktop::language::use(parser.value(QStringLiteral("language")));
    const auto list = [&](const char* option) {
        return parser.value(QLatin1String{option}).split(QLatin1Char{','}, Qt::SkipEmptyParts);
    };
    return {QDir{parser.positionalArguments().value(0, QStringLiteral("."))},
            list("scenes"),
            list("themes"),
            list("sizes"),
            parser.value(QStringLiteral("text")).toInt(),
            parser.value(QStringLiteral("language")),
            paperOf(parser.value(QStringLiteral("paper"))),
            parser.isSet(QStringLiteral("sheets")),
            list("looks")};
}

}  // namespace

int main(int argc, char* argv[])
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application{argc, argv};
    const Wanted wanted = read(QApplication::arguments());
    if (wanted.sheets)
        return drawSheets(wanted) ? 0 : 1;
    for (const pictures::Scene& scene : pictures::scenes())
        if (wanted.scenes.isEmpty() || wanted.scenes.contains(scene.name))
            if (!(wanted.paper.isEmpty() ? draw(scene, wanted) : drawPaper(scene, wanted)))
                return 1;
    return 0;
}
