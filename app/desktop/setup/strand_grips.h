#pragma once

#include "app/desktop/look/strand_widget.h"
#include "app/desktop/setup/start_wish.h"
#include "app/desktop/setup/strand_grip.h"

#include <QObject>

#include <vector>

namespace app::desktop {

/// Lays a grip on every strand of a picture, and tries out the starts that they are pulled to.
class StrandGrips : public QObject {
    Q_OBJECT

public:
    StrandGrips(const Theme& theme, StrandWidget& strands, StartWish& wish);

    /// Where the strands of the picture are; to be called when there is another one.
    void place();
    /// What the one that is pulled comes to, for whoever listens.
    void describe(const QString& text);

Q_SIGNALS:
    void kept();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    StrandGrip* make();
    void placeOne(StrandGrip& grip, std::size_t strand, const StrandGeometry& geometry);
    void makeRoom(const QPoint& hand);
    void release();

    const Theme& m_theme;
    StrandWidget& m_strands;
    StartWish& m_wish;
    std::vector<StrandGrip*> m_grips;
};

}  // namespace app::desktop
