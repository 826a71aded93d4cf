#pragma once

#include "core/run/run.h"

#include <QElapsedTimer>
#include <QObject>
#include <QPointer>
#include <QString>

#include <map>
#include <vector>

class QPushButton;

namespace app::desktop {

/// Gloves and foot switches press twice what was to be pressed once. In the moment after an answer a key or a
/// click reaches no button that asks for another step by then; what it asked for before can still be
/// answered. What presses a button without either, as a screen reader does, is no slip and always counts.
class AnswerGuard : public QObject {
    Q_OBJECT

public:
    /// Longer than between the two presses of a slip, shorter than between two steps that were done.
    static constexpr int moment = 600;  ///< Milliseconds. Common practice, no source.

    using Steps = std::map<const QObject*, QString>;

    explicit AnswerGuard(QObject* parent);

    /// Which step `button` answers from now on.
    static void setStep(QPushButton& button, const core::run::Prompt& prompt);
    static void setStep(QPushButton& button, const core::run::Answer& answer);
    static void setStep(QPushButton& button, const QString& step);

    /// Every button that `panel` has.
    void watch(const QWidget& panel);

    /// Which step each button that is in view answers now.
    [[nodiscard]] Steps steps() const;

    /// An answer came, and `before` was asked for when it did.
    void answered(Steps before);

    /// From now on everything counts.
    void settled();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] bool asksForAnother(const QObject& button) const;

    std::vector<QPointer<QPushButton>> m_buttons;
    Steps m_before;
    QElapsedTimer m_since;
};

}  // namespace app::desktop
