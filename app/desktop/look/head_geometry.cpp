#include "app/desktop/look/head_geometry.h"

#include <array>
#include <cmath>

namespace app::desktop {
namespace {

using core::service::HeadKind;
using core::service::Place;
using core::service::Section;
using core::service::Stretch;

/// Hair falls along such a curve from the scalp to its end.
struct Flow {
    QPointF root;
    QPointF first;
    QPointF second;
    QPointF end;

    [[nodiscard]] QPointF at(double t) const
    {
        const double u = 1 - t;
        return u * u * u * root + 3 * u * u * t * first + 3 * u * t * t * second + t * t * t * end;
    }
};

/// A section lies between its first and its last flow and is bent through the one between them.
using Flows = std::array<Flow, 3>;

/// The part of the flows that one place takes.
struct Reach {
    double from;
    double until;
};

/// `across` from 0, the first flow, to 1, the last.
QPointF pointOf(const Flows& flows, double across, double along)
{
    const QPointF first = flows[0].at(along);
    const QPointF middle = flows[1].at(along);
    const QPointF last = flows[2].at(along);
    return first * ((1 - across) * (1 - 2 * across)) + middle * (4 * across * (1 - across))
        + last * (across * (2 * across - 1));
}

constexpr int steps = 12;

double between(double from, double until, int step)
{
    return from + (until - from) * step / steps;
}

QPainterPath shapeOf(const Flows& flows, Reach reach)
{
    QPainterPath path{pointOf(flows, 0, reach.from)};
    for (int step = 1; step <= steps; ++step)
        path.lineTo(pointOf(flows, between(0, 1, step), reach.from));
    for (int step = 1; step <= steps; ++step)
        path.lineTo(pointOf(flows, 1, between(reach.from, reach.until, step)));
    for (int step = 1; step <= steps; ++step)
        path.lineTo(pointOf(flows, between(1, 0, step), reach.until));
    for (int step = 1; step < steps; ++step)
        path.lineTo(pointOf(flows, 0, between(reach.until, reach.from, step)));
    path.closeSubpath();
    return path;
}

std::vector<QPainterPath> fibresOf(const Flows& flows, Reach reach)
{
    constexpr int fibres = 6;
    std::vector<QPainterPath> paths;
    for (int fibre = 0; fibre < fibres; ++fibre) {
        const double across = (fibre + 0.5) / fibres;
        QPainterPath path{pointOf(flows, across, reach.from)};
        for (int step = 1; step <= steps; ++step)
            path.lineTo(pointOf(flows, across, between(reach.from, reach.until, step)));
        paths.push_back(path);
    }
    return paths;
}

/// Roots, mids and ends of a section, from `reach.from` to `reach.until` of its flows.
void addSection(std::vector<DrawnPlace>& places, Section section, const Flows& flows, Reach reach)
{
    constexpr std::array bounds{0.0, 0.32, 0.66, 1.0};
    const auto along = [&](double share) { return reach.from + (reach.until - reach.from) * share; };
    for (std::size_t stretch = 0; stretch + 1 < bounds.size(); ++stretch) {
        const Reach part{along(bounds[stretch]), along(bounds[stretch + 1])};
        places.push_back({{section, static_cast<Stretch>(stretch)},
                          shapeOf(flows, part),
                          fibresOf(flows, part),
                          pointOf(flows, 0.5, (part.from + part.until) / 2)});
    }
}

/// Where the hair of the crown ends and that of the nape shows below it.
constexpr double belowCrown = 0.56;

std::vector<DrawnPlace> profile()
{
    const Flow hairline{{58, 50}, {66, 78}, {72, 116}, {66, 172}};
    const Flow fringe{{69, 33}, {78, 70}, {82, 122}, {78, 184}};
    const Flow temple{{88, 22}, {94, 66}, {98, 126}, {93, 190}};
    const Flow overEar{{103, 17}, {110, 62}, {112, 130}, {106, 196}};
    const Flow behindEar{{120, 18}, {128, 62}, {128, 130}, {122, 200}};
    const Flow back{{146, 31}, {160, 70}, {158, 136}, {148, 205}};
    const Flow outer{{162, 62}, {184, 100}, {186, 150}, {174, 202}};
    std::vector<DrawnPlace> places;
    const Flows behind{behindEar, back, outer};
    addSection(places, Section::Crown, behind, {0, belowCrown});
    addSection(places, Section::Nape, behind, {belowCrown, 1});
    addSection(places, Section::Side, {temple, overEar, behindEar}, {0, 1});
    addSection(places, Section::Front, {hairline, fringe, temple}, {0, 1});
    return places;
}

Flow mirrored(const Flow& flow)
{
    const auto over = [](QPointF point) { return QPointF{headFrame.width() - point.x(), point.y()}; };
    return {over(flow.root), over(flow.first), over(flow.second), over(flow.end)};
}

std::vector<DrawnPlace> back()
{
    const Flow outer{{60, 42}, {38, 70}, {30, 136}, {36, 192}};
    const Flow left{{70, 29}, {52, 66}, {46, 136}, {51, 199}};
    const Flow inner{{84, 20}, {70, 66}, {66, 136}, {70, 203}};
    const Flow middle{{100, 16}, {100, 66}, {100, 136}, {100, 207}};
    const Flows behind{inner, middle, mirrored(inner)};
    std::vector<DrawnPlace> places;
    addSection(places, Section::Crown, behind, {0, belowCrown});
    addSection(places, Section::Nape, behind, {belowCrown, 1});
    addSection(places, Section::Side, {outer, left, inner}, {0, 1});
    addSection(places, Section::Side, {mirrored(inner), mirrored(left), mirrored(outer)}, {0, 1});
    return places;
}

constexpr double pieceWidth = 38;
constexpr double pieceStep = 49;
constexpr double pieceTop = 30;

std::vector<DrawnPlace> pieces()
{
    std::vector<DrawnPlace> places;
    for (int piece = 0; piece < 4; ++piece) {
        const auto hanging = [&](double x) {
            const double left = 8 + pieceStep * piece + x;
            return Flow{{left, pieceTop}, {left - 5, 84}, {left + 7, 140}, {left, 206}};
        };
        addSection(places, static_cast<Section>(static_cast<int>(Section::PieceOne) + piece),
                   {hanging(0), hanging(pieceWidth / 2), hanging(pieceWidth)}, {0, 1});
    }
    return places;
}

QPainterPath face()
{
    QPainterPath path{{62, 46}};
    path.cubicTo({54, 56}, {50, 66}, {50, 76});  // Brow.
    path.cubicTo({48, 84}, {38, 94}, {36, 101});
    path.cubicTo({38, 105}, {43, 104}, {45, 106});  // Below the nose.
    path.cubicTo({40, 110}, {40, 113}, {44, 115});
    path.cubicTo({40, 118}, {41, 122}, {46, 124});  // Lips.
    path.cubicTo({45, 132}, {46, 141}, {58, 145});
    path.cubicTo({68, 147}, {76, 143}, {84, 140});  // Chin and jaw.
    path.cubicTo({86, 160}, {84, 184}, {74, 200});
    path.cubicTo({66, 208}, {50, 212}, {36, 218});  // Neck and shoulder.
    return path;
}

QPainterPath neckBehind(double side)
{
    const double x = 100 + side * 26;
    QPainterPath path{{x, 196}};
    path.cubicTo({x, 208}, {x + side * 20, 212}, {x + side * 56, 219});
    return path;
}

}  // namespace

std::vector<HeadSide> sidesOf(HeadKind kind)
{
    if (kind == HeadKind::Wefts)
        return {HeadSide::Pieces};
    return {HeadSide::Profile, HeadSide::Back};
}

std::vector<DrawnPlace> placesSeen(HeadSide side)
{
    switch (side) {
    case HeadSide::Profile: return profile();
    case HeadSide::Back: return back();
    case HeadSide::Pieces: return pieces();
    }
    return {};
}

std::vector<QPainterPath> outline(HeadSide side)
{
    if (side == HeadSide::Profile)
        return {face()};
    if (side == HeadSide::Back)
        return {neckBehind(-1), neckBehind(1)};
    std::vector<QPainterPath> tracks;
    for (int piece = 0; piece < 4; ++piece) {
        QPainterPath track;
        track.addRoundedRect(QRectF{5 + pieceStep * piece, pieceTop - 8, pieceWidth + 6, 8}, 3, 3);
        tracks.push_back(track);
    }
    return tracks;
}

}  // namespace app::desktop
