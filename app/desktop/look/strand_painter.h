#pragma once

#include "app/desktop/look/colours.h"
#include "app/desktop/look/strand_flags.h"
#include "app/desktop/look/strand_geometry.h"

#include <QIcon>
#include <QString>

#include <functional>

class QPainter;

namespace app::desktop {

/// The words that go into a strand picture.
struct StrandWords {
    std::function<QString(view::Instant)> clock;         ///< A moment on the axis.
    std::function<QString(const view::Strand&)> detail;  ///< The line below a strand's name.
    std::function<QString(const view::Strand&)> chance;  ///< Beside the name, where there is a forecast.
    std::function<QString(const view::TaskId&)> job;     ///< What a pair of hands does.
    /// The same where there is no room for words, in a colour.
    std::function<QIcon(const view::TaskId&, const QColor&)> jobIcon;
    QString water;  ///< Beside the rinse line.
    QString now;
};

/// Draws a strand picture. Every zone is a ribbon that swells as it develops and
/// ends in the water; below it a track with its window: a bracket at least, a
/// wedge at target, a bar at most. Hatched is being applied, fibres develop, an
/// eye is a look, a wave a late job, a dashed track a window that is not kept,
/// a bar with two ends between which water comes nine times in ten, a pin a start that is wanted, a barred
/// post as far as it can be.
class StrandPainter {
public:
    StrandPainter(QPainter& painter, const view::StrandPicture& picture, const QRectF& frame,
                  const Colours& colours, const StrandWords& words);

    void paint();

private:
    void paintAxis();
    void paintWater();
    void paintStrand(std::size_t place);
    void paintName(std::size_t place);
    void paintApplication(const view::Strand& strand, const QRectF& row, const QColor& colour);
    void paintDevelopment(const view::Strand& strand, const QRectF& row, const QColor& colour);
    void paintRinse(const view::Strand& strand, const QRectF& row);
    void paintWindow(const view::Strand& strand, const QRectF& row, const QColor& colour);
    void paintForecast(const view::Strand& strand, const QRectF& row);
    void paintWanted(const view::Strand& strand, const QRectF& row);
    void paintStop(double x, const QRectF& row, bool isLatest);
    void paintPlanned(const view::Strand& strand, const QRectF& row);
    void paintMarks(const view::Strand& strand, const QRectF& row);
    void paintHands(std::size_t pair);
    void paintJob(const view::HandsJob& job, const QRectF& room);
    void paintNow();
    void paintFlag(const StrandFlags::Flag& flag);
    [[nodiscard]] double ribbonAt(const view::Strand& strand, view::Instant moment) const;
    [[nodiscard]] QPainterPath ribbon(const view::Strand& strand, const QRectF& row,
                                      view::Instant until) const;
    [[nodiscard]] double centre(const QRectF& row) const;

    QPainter& m_painter;
    const view::StrandPicture& m_picture;
    const Colours& m_colours;
    const StrandWords& m_words;
    StrandGeometry m_geometry;
    StrandFlags m_flags;
};

}  // namespace app::desktop
