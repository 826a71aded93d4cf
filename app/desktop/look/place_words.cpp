#include "app/desktop/look/place_words.h"

#include <QCoreApplication>

namespace app::desktop::place_words {
namespace {

using core::service::Section;
using core::service::Stretch;

struct PlaceWordsText {
    Q_DECLARE_TR_FUNCTIONS(PlaceWords)
};

QString section(Section section)
{
    switch (section) {
    case Section::Front: return PlaceWordsText::tr("Front hairline");
    case Section::Crown: return PlaceWordsText::tr("Crown");
    case Section::Side: return PlaceWordsText::tr("Sides");
    case Section::Nape: return PlaceWordsText::tr("Nape");
    case Section::PieceOne: return PlaceWordsText::tr("Piece 1");
    case Section::PieceTwo: return PlaceWordsText::tr("Piece 2");
    case Section::PieceThree: return PlaceWordsText::tr("Piece 3");
    case Section::PieceFour: return PlaceWordsText::tr("Piece 4");
    }
    return {};
}

QString stretch(Stretch stretch)
{
    switch (stretch) {
    case Stretch::Roots: return PlaceWordsText::tr("roots");
    case Stretch::Mids: return PlaceWordsText::tr("mids");
    case Stretch::Ends: return PlaceWordsText::tr("ends");
    }
    return {};
}

}  // namespace

QString name(core::service::Place place)
{
    return PlaceWordsText::tr("%1, %2", "a section of the head, a stretch of its hair")
        .arg(section(place.section), stretch(place.stretch));
}

}  // namespace app::desktop::place_words
