#pragma once

#include "app/desktop/setup/preparation.h"
#include "app/desktop/wall_clock.h"
#include "core/service/service.h"

#include <QWidget>

#include <functional>

class QLabel;
class QLineEdit;
class QPushButton;

namespace app::desktop {

class Theme;

/// The list before the start: a line for each thing, which opens to be answered. Beside the button that
/// starts the lanes, and never in its way.
class PreparationPanel : public QWidget {
    Q_OBJECT

public:
    PreparationPanel(const Theme& theme, Preparation& preparation,
                     std::function<core::measure::Instant()> now, QWidget* parent = nullptr);

    /// Whose list it is, and in which order their bowls are mixed, in words; empty while there is no plan.
    void showFor(std::vector<core::service::Service> services, WallClock clock, const QString& order);

    /// Of all its lines beside one another.
    [[nodiscard]] int widthOfLines() const;

    /// Opens the first that is open, else the first of all.
    void goToOpen();

Q_SIGNALS:
    void soundCheckRequested();
    /// What is written on them.
    void linesChanged();
    /// There is something to answer, and it should be in view.
    void opened();
    /// Nothing is open any more.
    void allAnswered();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QWidget* makeLines();
    QWidget* makeAnswer();
    void openLine(std::optional<Preparing> line);
    void close();
    void follow();
    void followAnswer();
    void answer(Prepared::State state);
    void goOn();
    [[nodiscard]] QPushButton* lineOf(Preparing line) const
    {
        return m_lines.at(static_cast<std::size_t>(line));
    }

    const Theme& m_theme;
    Preparation& m_preparation;
    std::function<core::measure::Instant()> m_now;
    std::vector<core::service::Service> m_services;
    WallClock m_clock;
    QString m_order;
    std::optional<Preparing> m_open;
    std::vector<QPushButton*> m_lines;
    QWidget* m_answer = nullptr;
    QLabel* m_about = nullptr;
    QPushButton* m_done = nullptr;
    QLineEdit* m_why = nullptr;
    QPushButton* m_skip = nullptr;
    QPushButton* m_back = nullptr;
    QPushButton* m_close = nullptr;
};

}  // namespace app::desktop
