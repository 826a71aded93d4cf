#pragma once

#include "app/desktop/wall_clock.h"
#include "app/view/choices_view.h"

#include <QFrame>

class QGridLayout;
class QLabel;
class QPushButton;
class QScrollArea;

namespace app::desktop {

class ChoiceButton;
class Theme;

/// Stands while not every limit can hold any more: says why, and lists what can be chosen where that is
/// asked for. It is calm: what is due is said by others.
class ReasonBand : public QFrame {
    Q_OBJECT

public:
    explicit ReasonBand(const Theme& theme, QWidget* parent = nullptr);

    /// Hidden where there is none.
    void showReason(const QString& reason);

    enum class List { Closed, Searching, SearchingLong, Open };
    void showChoices(List list, const view::ChoicesView& choices, const WallClock& clock);

    /// How high the list is, and how high it is made: as high as there is room for, a row at least.
    [[nodiscard]] int listHeight() const;
    void giveListRoom(int height);
    [[nodiscard]] static int leastListHeight();

Q_SIGNALS:
    /// The list is wanted, or wanted as of now.
    void listWanted();
    void listClosed();
    void chosen(std::size_t place);

private:
    void build();
    void fill(const std::vector<view::ChoiceView>& choices);
    [[nodiscard]] QString standing(List list, const view::ChoicesView& choices, const WallClock& clock) const;

    const Theme& m_theme;
    QLabel* m_icon;
    QLabel* m_text;
    QPushButton* m_ask;
    QPushButton* m_close;
    QLabel* m_standing;
    QScrollArea* m_scroll;
    QGridLayout* m_grid;
    std::vector<ChoiceButton*> m_buttons;
    std::vector<view::ChoiceView> m_shown;
};

}  // namespace app::desktop
