#pragma once

#include "app/view/strand_picture.h"

#include <QSlider>

namespace app::desktop {

class Theme;

/// Lies on a strand and takes hold of it: a slider of the minutes that its zone starts later than planned,
/// for fingers, keys and whoever listens. It draws nothing but where it can be held and that it has the
/// keyboard.
class StrandGrip : public QSlider {
    Q_OBJECT

public:
    explicit StrandGrip(const Theme& theme, QWidget* parent = nullptr);

    void setZone(const view::TaskId& zone, const QString& name);
    [[nodiscard]] const view::TaskId& zone() const { return m_zone; }

    /// How far apart minutes are in the picture.
    void setMinuteWidth(double width) { m_minuteWidth = width; }
    /// Takes on what is known, without telling anybody.
    void showValue(int value, std::optional<int> least, std::optional<int> most);
    /// Whether there is something to keep or to let go with a key.
    void setTrying(bool trying) { m_trying = trying; }
    [[nodiscard]] bool isHeld() const { return m_held; }

    [[nodiscard]] QSize minimumSizeHint() const override;

    /// Left of the strand's start there is room to take hold of it.
    static constexpr int handle = 18;

Q_SIGNALS:
    /// A hand that took hold of it begins to pull, there on the screen.
    void taken(const QPoint& at);
    /// It is to be so many minutes later than planned; that may be more than it can.
    void pulled(int minutes);
    void released();
    void kept();
    void letGo();

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    const Theme& m_theme;
    view::TaskId m_zone;
    QString m_name;
    double m_minuteWidth = 1;
    QPointF m_heldAt;  ///< On the screen.
    int m_heldValue = 0;
    bool m_held = false;
    bool m_pulling = false;  ///< It was not only touched.
    bool m_trying = false;
};

}  // namespace app::desktop
