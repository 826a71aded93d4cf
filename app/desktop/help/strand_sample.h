#pragma once

#include "app/view/strand_picture.h"

#include <QWidget>

namespace app::desktop {

class Theme;

/// One shape of the strand picture, drawn as the picture itself draws it, to stand beside what it means.
class StrandSample : public QWidget {
    Q_OBJECT

public:
    enum class Kind {
        Applied,
        Develops,
        Filled,
        Water,
        Window,
        Broken,
        Looks,
        Late,
        Forecast,
        Planned,
        Hands
    };

    StrandSample(const Theme& theme, Kind kind, QWidget* parent = nullptr);

    /// What is drawn: a piece of a strand with the shape in it.
    [[nodiscard]] static view::StrandPicture pictureOf(Kind kind);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Theme& m_theme;
    Kind m_kind;
    view::StrandPicture m_picture;
};

}  // namespace app::desktop
