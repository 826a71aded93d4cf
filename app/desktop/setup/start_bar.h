#pragma once

#include "app/desktop/setup/start_wish.h"
#include "app/desktop/wall_clock.h"

#include <QFrame>
#include <QTimer>

class QLabel;
class QPushButton;

namespace app::desktop {

/// Says what comes of a start that is tried out, and offers to keep it or to let it go.
class StartBar : public QFrame {
    Q_OBJECT

public:
    explicit StartBar(QWidget* parent = nullptr);

    /// `services` are those that `wish` tries a start of.
    void tell(const StartWish& wish, const std::vector<core::service::Service>& services,
              const WallClock& clock);
    /// What is said.
    [[nodiscard]] QString text() const;
    [[nodiscard]] bool canKeep() const;
    /// No lower than that, so that the picture below stays where it is.
    void setLeastHeight(int height) { m_leastHeight = height; }

Q_SIGNALS:
    void kept();
    void letGo();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void say(const QString& text);
    void fit();

    QLabel* m_text;
    QPushButton* m_keep;
    QTimer m_wait;  ///< A plan is usually there at once; what was said of the one before stays until then.
    QString m_waiting;
    int m_leastHeight = 0;
};

}  // namespace app::desktop
