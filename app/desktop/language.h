#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>

#include <vector>

/// Which language the window is in. British English is what the sources say; the others are catalogues inside
/// the program (resources/translations).
namespace app::desktop::language {

struct Offered {
    QString code;  ///< ISO 639-1, "de".
    QString name;  ///< In the language itself, "Deutsch".
};

/// In the order of the menu.
const std::vector<Offered>& offered();

[[nodiscard]] bool isOffered(const QString& code);

/// The first of `wanted` (codes such as "de-AT", the most wanted first) that is offered, else English.
[[nodiscard]] QString best(const QStringList& wanted);

/// Puts the program into the language of `code`, or into that of the system where it is empty or not offered:
/// words, plural forms, the words of Qt's own buttons, and how times, dates and numbers are written. What is
/// on the screen already has to be built again.
void use(const QString& code);

/// The code of the language that is used.
[[nodiscard]] QString used();

/// The language of a voice that reads the window's texts, "en-GB", "de".
[[nodiscard]] QString voice();

/// How times, dates and numbers are written in the language `code` on a system that writes them as `system`
/// does: as the system where it is of the same language, else as in the country the language is named after.
[[nodiscard]] QLocale localeFor(const QString& code, const QLocale& system);

}  // namespace app::desktop::language
