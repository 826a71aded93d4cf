#include "app/desktop/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QTranslator>

#include <algorithm>

namespace app::desktop::language {
namespace {

const QString english = QStringLiteral("en");

/// The translators that are in use belong to the program and are found again by this name.
const QString translatorName = QStringLiteral("language");

/// Keys, as the buttons of this window name them. The toolkit's own catalogues have other words for some, and
/// two words for one key are one too many.
[[maybe_unused]] constexpr const char* const keyNames[] = {
    QT_TRANSLATE_NOOP("QShortcut", "Ctrl"),   QT_TRANSLATE_NOOP("QShortcut", "Shift"),
    QT_TRANSLATE_NOOP("QShortcut", "Del"),    QT_TRANSLATE_NOOP("QShortcut", "Enter"),
    QT_TRANSLATE_NOOP("QShortcut", "Return"), QT_TRANSLATE_NOOP("QShortcut", "PgUp"),
    QT_TRANSLATE_NOOP("QShortcut", "PgDown"), QT_TRANSLATE_NOOP("QShortcut", "Esc"),
};

/// Of "de-AT" and "de_AT", "de".
QString withoutCountry(const QString& code)
{
    return code.section(QLatin1Char{'-'}, 0, 0).section(QLatin1Char{'_'}, 0, 0).toLower();
}

void install(const QString& file, const QString& folder)
{
    auto* translator = new QTranslator{QCoreApplication::instance()};
    translator->setObjectName(translatorName);
    if (translator->load(file, folder))
        QCoreApplication::installTranslator(translator);
    else
        delete translator;
}

void removeAll()
{
    QCoreApplication* const program = QCoreApplication::instance();
    for (QTranslator* translator : program->findChildren<QTranslator*>(translatorName)) {
        QCoreApplication::removeTranslator(translator);
        delete translator;
    }
}

}  // namespace

const std::vector<Offered>& offered()
{
    static const std::vector<Offered> all{{english, QStringLiteral("English")},
                                          {QStringLiteral("de"), QStringLiteral("Deutsch")},
                                          {QStringLiteral("fr"), QStringLiteral("Français")},
                                          {QStringLiteral("es"), QStringLiteral("Español")}};
    return all;
}

bool isOffered(const QString& code)
{
    return std::ranges::find(offered(), code, &Offered::code) != offered().end();
}

QString best(const QStringList& wanted)
{
    for (const QString& code : wanted)
        if (isOffered(withoutCountry(code)))
            return withoutCountry(code);
    return english;
}

void use(const QString& code)
{
    const QLocale system = QLocale::system();
    const QString wanted = isOffered(code) ? code : best(system.uiLanguages());
    QCoreApplication* const program = QCoreApplication::instance();
    if (program->property(qPrintable(translatorName)) == wanted)
        return;  // As when the program starts: first the system's language is used, then the one chosen.
    removeAll();
    QLocale::setDefault(localeFor(wanted, system));
    // Of Qt's own words English ones need no catalogue, and where the package is missing they stay English.
    if (wanted != english)
        install(QStringLiteral("qtbase_") + wanted, QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    install(wanted, QStringLiteral(":/translations"));
    program->setProperty(qPrintable(translatorName), wanted);
}

QString used()
{
    const QString code = QCoreApplication::instance()->property(qPrintable(translatorName)).toString();
    return code.isEmpty() ? english : code;
}

QString voice()
{
    return used() == english ? QStringLiteral("en-GB") : used();
}

QLocale localeFor(const QString& code, const QLocale& system)
{
    if (system.language() != QLocale::C && withoutCountry(system.name()) == code)
        return system;
    return code == english ? QLocale{QLocale::English, QLocale::UnitedKingdom} : QLocale{code};
}

}  // namespace app::desktop::language
