#include "app/session/cautions.h"

#include <QtGlobal>

#include <fstream>
#include <system_error>

namespace app::session {

namespace {

/// Another name when the words change in a way that should be read again.
constexpr const char* marker = "cautions-1-shown";

}  // namespace

const std::vector<std::string>& cautions()
{
    // The skin test and its 48 hours: National Hair & Beauty Federation, "Allergy alert testing" (a rule of
    // the trade, of makers and of insurers). Gloves, eyes, ventilation: the label words of Regulation (EC) No
    // 1223/2009, Annex III, entries 4, 8 and 12, and ANSES, opinion of 12 June 2019 on persulfates.
    static const std::vector<std::string> texts{
        QT_TRANSLATE_NOOP("Cautions",
                          "The product's own leaflet comes first. Where it differs from this plan, the "
                          "leaflet is right: change the service and plan again."),
        QT_TRANSLATE_NOOP("Cautions",
                          "Have the skin test that the maker, the trade and insurers ask for, as a rule 48 "
                          "hours before, and read by someone trained to read it. A test without a reaction "
                          "is no promise that there will be none."),
        QT_TRANSLATE_NOOP("Cautions",
                          "Do not colour on a rash, on sensitive or broken skin, or after an earlier "
                          "reaction to colour or to a black temporary tattoo, until a doctor has said what "
                          "may be done. Many products are not meant for people under 16."),
        QT_TRANSLATE_NOOP("Cautions",
                          "Wear suitable gloves, and air the room, above all with lighteners and ammonia."),
        QT_TRANSLATE_NOOP(
            "Cautions",
            "Keep mixtures out of eyes, and off lashes and brows unless the product is made for them. If "
            "some gets into an eye, rinse at once with plenty of water and get medical help."),
        QT_TRANSLATE_NOOP("Cautions",
                          "If skin burns, swells or blisters, rinse at once, whatever the clock says, and "
                          "get medical help."),
        QT_TRANSLATE_NOOP(
            "Cautions",
            "Local rules and licensed practice decide who may do this work and how. This program plans and "
            "keeps time: it knows neither the product nor the person, and whoever does the work decides."),
    };
    return texts;
}

bool cautionsWereShown(const std::filesystem::path& folder)
{
    std::error_code error;
    return std::filesystem::exists(folder / marker, error);
}

void rememberCautionsShown(const std::filesystem::path& folder)
{
    std::ofstream{folder / marker} << "";
}

}  // namespace app::session
