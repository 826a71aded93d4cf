#pragma once

#include "app/desktop/print/page_layout.h"

#include <QWidget>

namespace app::desktop {

class Theme;

/// Shows what would be printed, as one sheet as wide as there is room for, in the colours of the window and
/// as large as its text is.
class CardView : public QWidget {
    Q_OBJECT

public:
    explicit CardView(const Theme& theme, QWidget* parent = nullptr);

    void showSheets(std::vector<print::Sheet> sheets);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void layOut();
    [[nodiscard]] QString inWords() const;

    const Theme& m_theme;
    std::vector<print::Sheet> m_sheets;
    std::vector<print::Scroll> m_pages;
    int m_height = 0;
};

}  // namespace app::desktop
