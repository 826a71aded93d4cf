#pragma once

#include <QScrollArea>

#include <functional>

namespace app::desktop {

/// Holds a page as wide as there is room for, and as high, or, where it needs more, as high as that: then it
/// goes on below. An area that does so by itself goes by how high a page would like to be, and a page that is
/// let has no need to say less.
class PageView : public QScrollArea {
    Q_OBJECT

public:
    /// `least` is how high the page is at least, as it is when it is asked.
    explicit PageView(std::function<int()> least, QWidget* parent = nullptr);

    /// After the page has other parts. What of it can be seen ends above or below a button, never within one.
    void fit();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] int cutOfButtons() const;

    std::function<int()> m_least;
    bool m_fitting = false;
};

}  // namespace app::desktop
