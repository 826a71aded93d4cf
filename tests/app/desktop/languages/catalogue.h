#pragma once

#include <QString>
#include <QStringList>

#include <vector>

/// The catalogues of resources/translations, and what can be wrong with them.
namespace catalogue {

struct Message {
    QString context;
    QString source;
    QString comment;
    bool counts = false;   ///< Says something of one or of many.
    bool finished = true;  ///< Neither untranslated nor marked as thrown away.
    QStringList forms;     ///< The translation; where it counts, one for each plural form.

    [[nodiscard]] QString name() const { return context + QStringLiteral(": ") + source; }
};

/// Empty where the file cannot be read.
std::vector<Message> read(const QString& file);

/// What is wrong with one message, in words; nothing where all is well: untranslated, another set of markers
/// (%1, %n), an underlined letter (&) or a key in brackets that is lost, other spaces at the ends.
QStringList faultsOf(const Message& message);

}  // namespace catalogue
