#pragma once

#include "app/view/now_view.h"

#include "core/run/run.h"

#include <QObject>
#include <QStringList>

class QLabel;
class QWidget;

namespace app::desktop {

class LiveButton;

/// One of several zones that are looked at together: its name and its answers, in one line of the choices.
class LookRow : public QObject {
    Q_OBJECT

public:
    /// What its answers say; `brief` where two lines have to do.
    struct Words {
        QString leave;
        QString again;
        QString rinse;
    };

    /// The keys are those of the first, as it is what is asked for.
    LookRow(int number, QWidget* parent);

    /// What is to be thought of before it is rinsed.
    [[nodiscard]] static QStringList notes(const view::LookBeside& zone, bool brief);

    [[nodiscard]] Words wordsFor(const view::LookBeside& zone, int again, bool brief) const;
    void showZone(const view::LookBeside& zone, int again, bool brief);
    void setVisible(bool visible);

    /// A name that is longer is cut short; its answers are heard with all of it.
    [[nodiscard]] static int mostNameWidth();

    [[nodiscard]] QLabel* name() const { return m_name; }
    [[nodiscard]] LiveButton* leave() const { return m_leave; }
    [[nodiscard]] LiveButton* again() const { return m_again; }
    [[nodiscard]] LiveButton* rinse() const { return m_rinse; }

Q_SIGNALS:
    void answered(core::run::Answer::Kind kind);

private:
    [[nodiscard]] QString withKey(const QString& words, int key) const;

    int m_number;
    QLabel* m_name;
    LiveButton* m_leave;
    LiveButton* m_again;
    LiveButton* m_rinse;
};

}  // namespace app::desktop
