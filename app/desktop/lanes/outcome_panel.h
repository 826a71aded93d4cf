#pragma once

#include "app/view/outcome_view.h"

#include <QFrame>

#include <optional>

class QLabel;
class QLineEdit;
class QPushButton;

namespace app::desktop {

class FlowLayout;

/// Asks how the zones of a coat that is over turned out, one after the other, and what to think of next time.
/// Each can be passed over; what was said before is said anew by answering again.
class OutcomePanel : public QFrame {
    Q_OBJECT

public:
    explicit OutcomePanel(QWidget* parent = nullptr);

    /// From the first zone of which nothing was said, or from the first one.
    void open(const view::CoatResult& coat);
    /// What was said meanwhile.
    void follow(const std::vector<view::CoatResult>& coats);

Q_SIGNALS:
    void answered(const core::run::Answer& answer);
    void closed();

private:
    void ask();
    void askZone();
    void askNote();
    void clear();
    void put(QWidget* part);
    QPushButton* add(const QString& words);
    QLineEdit* addLine(const QString& name, const QString& what, int most);
    void tell(std::optional<core::run::Outcome> outcome);
    void note();
    void goOn();

    view::CoatResult m_coat;
    std::size_t m_zone = 0;  ///< Which is asked about; past the last it is the note.
    int m_options = 0;
    QLabel* m_question;
    FlowLayout* m_flow;
    QLineEdit* m_words = nullptr;
    std::vector<QWidget*> m_parts;
};

}  // namespace app::desktop
