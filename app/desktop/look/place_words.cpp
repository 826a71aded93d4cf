#include "app/desktop/look/place_words.h"

#include <QCoreApplication>

namespace app::desktop::place_words {
namespace {

using core::service::Section;
using core::service::Stretch;

struct Text {
    Q_DECLARE_TR_FUNCTIONS(PlaceWords)
};

QString section(Section section)
{
    switch (section) {
    case Section::Front: return Text::tr("Front hairline");
    case Section::Crown: return Text::tr("Crown");
    case Section::Side: return Text::tr("Sides");
    case Section::Nape: return Text::tr("Nape");
    case Section::PieceOne: return Text::tr("Piece 1");
    case Section::PieceTwo: return Text::tr("Piece 2");
    case Section::PieceThree: return Text::tr("Piece 3");
    case Section::PieceFour: return Text::tr("Piece 4");
    }
    return {};
}

QString stretch(Stretch stretch)
{
    switch (stretch) {
    case Stretch::Roots: return Text::tr("roots");
    case Stretch::Mids: return Text::tr("mids");
    case Stretch::Ends: return Text::tr("ends");
    }
    return {};
}

}  // namespace

QString name(core::service::Place place)
{
    return Text::tr("%1, %2", "a section of the head, a stretch of its hair")
        .arg(section(place.section), stretch(place.stretch));
}

}  // namespace app::desktop::place_words
