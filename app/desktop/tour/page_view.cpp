#include "app/desktop/tour/page_view.h"

#include <QAbstractButton>

#include <algorithm>

namespace app::desktop {

PageView::PageView(std::function<int()> least, QWidget* parent)
    : QScrollArea{parent}
    , m_least{std::move(least)}
{
}

void PageView::fit()
{
    if (m_fitting || widget() == nullptr)
        return;
    m_fitting = true;
    setViewportMargins({});
    widget()->resize(viewport()->width(), std::max(viewport()->height(), m_least()));
    if (const int cut = cutOfButtons(); cut > 0)
        setViewportMargins(0, 0, 0, cut);
    m_fitting = false;
}

/// By how much less is to be seen for no button to be cut.
int PageView::cutOfButtons() const
{
    const auto buttons = widget()->findChildren<QAbstractButton*>();
    int bottom = viewport()->height();
    for (bool again = true; again;) {
        again = false;
        for (const auto* button : buttons) {
            const int top = button->mapTo(viewport(), QPoint{}).y();
            if (!button->isVisible() || top >= bottom || top + button->height() <= bottom)
                continue;
            bottom = top;
            again = true;
        }
    }
    return viewport()->height() - bottom;
}

void PageView::resizeEvent(QResizeEvent* event)
{
    QScrollArea::resizeEvent(event);
    fit();
}

}  // namespace app::desktop
