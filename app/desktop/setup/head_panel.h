#pragma once

#include "app/desktop/setup/service_document.h"

#include <QWidget>

class QButtonGroup;
class QLabel;
class QVBoxLayout;

namespace app::desktop {

class HeadDrawing;
class Theme;

/// Where the zones of a coat are on the head: the drawing, and beside it the zones to choose from. A place
/// that is pressed goes to the chosen zone, from whichever had it; pressed again it is nobody's.
class HeadPanel : public QWidget {
    Q_OBJECT

public:
    HeadPanel(const Theme& theme, ServiceDocument& document, QWidget* parent = nullptr);

    void showCoat(std::size_t coat);
    /// The zone that places go to.
    void choose(std::size_t zone);

    /// Nothing while another page is shown in its place, which has better use for the room.
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void chosen(std::size_t zone);

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void follow();
    void fillZones();
    void press(core::service::Place place);

    const Theme& m_theme;
    ServiceDocument& m_document;
    HeadDrawing* m_drawing;
    QLabel* m_hint;
    QVBoxLayout* m_list;
    QButtonGroup* m_zones;
    std::size_t m_coat = 0;
    std::size_t m_chosen = 0;
};

}  // namespace app::desktop
