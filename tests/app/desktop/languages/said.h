#pragma once

#include <QSet>
#include <QStringList>
#include <QTranslator>
#include <QWidget>

/// For finding what no catalogue reaches: everything is put between brackets by a translator, and what is on
/// the screen without them was not handed to one.
namespace said {

/// Says whatever it is asked for in English, between brackets.
class Bracketing final : public QTranslator {
public:
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* source, const char* comment,
                                    int count) const override;
};

/// All that `window` says: titles, labels, buttons, menus, tables, tips, and what a screen reader reads.
QSet<QString> textsIn(QWidget& window);

/// What is left of `text` that has letters in it, without what stands between brackets and without `names`.
QString notTranslated(QString text, const QStringList& names);

}  // namespace said
