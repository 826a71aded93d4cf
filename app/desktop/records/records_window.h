#pragma once

#include "app/desktop/print/printing.h"
#include "app/session/session.h"
#include "app/view/record_card.h"

#include <QDialog>

class QLabel;
class QListWidget;
class QPushButton;
class QScrollArea;
class QSplitter;

namespace app::desktop {

class CardView;
class HelpSheet;
class OutcomePanel;
class Theme;

/// The record cards: the runs that were ended, the latest first, and the card of the one that is chosen.
/// Stops nothing that runs.
class RecordsWindow : public QDialog {
    Q_OBJECT

public:
    RecordsWindow(const Theme& theme, session::Session& session,
                  std::shared_ptr<const core::measure::TimeZones> zones, QWidget* parent);

    /// What the journal holds now. The run that is chosen stays so where it is still there.
    void readRuns();

    /// The card that is shown.
    [[nodiscard]] const std::vector<print::Sheet>& sheets() const { return m_sheets; }
    [[nodiscard]] print::Printing& printing() { return *m_printing; }

Q_SIGNALS:
    /// The next coat is to begin with these; `lastTime` is what was said of the last, in sentences.
    void startAgain(const std::vector<core::service::Service>& services, const QString& lastTime);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QWidget* makeList();
    QWidget* makeCard();
    QWidget* makeFoot();
    QWidget* makeHelp();
    void arrange(int width);
    void addRun(const QString& text);
    /// A run that began, ended or was taken up meanwhile has another place in the list.
    void followSession();
    void choose(int row);
    [[nodiscard]] int rowOf(std::optional<session::RunId> run) const;
    [[nodiscard]] std::optional<session::RunId> runAt(int row) const;
    void showCard();
    void showEmpty();
    void showErased();
    void askOutcome();
    void beginAgain();
    void tell(const core::run::Answer& answer);
    void complain(const QString& what);
    [[nodiscard]] view::RecordCard card() const;
    [[nodiscard]] bool showsCurrent(int row) const;
    [[nodiscard]] QString lineOf(const session::StoredRun& run) const;

    const Theme& m_theme;
    session::Session& m_session;
    std::shared_ptr<const core::measure::TimeZones> m_zones;
    print::Printing* m_printing;
    std::vector<session::StoredRun> m_runs;
    std::optional<session::RunId> m_current;  ///< As it was when the list was made; it is the first line.
    std::optional<session::PastRun> m_chosen;
    std::vector<print::Sheet> m_sheets;
    QSplitter* m_parts;
    QListWidget* m_list;
    CardView* m_card;
    QScrollArea* m_scroll;
    QLabel* m_empty;
    QLabel* m_wrong;
    OutcomePanel* m_outcome;
    HelpSheet* m_help;
    QPushButton* m_print = nullptr;
    QPushButton* m_pdf = nullptr;
    QPushButton* m_turnedOut = nullptr;
    QPushButton* m_again = nullptr;
};

}  // namespace app::desktop
