#include "app/desktop/setup/starting_points.h"

#include "app/desktop/setup/edits.h"

#include <QCoreApplication>

#include <algorithm>

// All lengths here: common practice, no source.

namespace app::desktop {
namespace {

using core::measure::Seconds;
using core::service::ClockStart;
using core::service::Coat;
using core::service::LateJob;
using core::service::Looks;
using core::service::Service;
using core::service::Zone;

struct StartingPointsText {
    Q_DECLARE_TR_FUNCTIONS(StartingPoints)
};

constexpr Seconds minutes(int count)
{
    return Seconds{count * 60};
}

std::string named(const QString& name)
{
    return name.toStdString();
}

struct Window {
    int least;
    int target;
    int most;
};

Zone zone(const QString& name, std::size_t bowl, const Window& apply, const Window& develop)
{
    Zone zone;
    zone.name = named(name);
    zone.bowl = bowl;
    zone.apply = {minutes(apply.least), minutes(apply.target), minutes(apply.most)};
    zone.develop = {minutes(develop.least), minutes(develop.target), minutes(develop.most)};
    return zone;
}

/// A service with one coat that has these bowls and one rinse for all.
Service serviceWith(const QString& name, const QStringList& bowls)
{
    Service service = edits::blankService();
    service.name = named(name);
    Coat& coat = service.coats.front();
    coat.zones.clear();
    coat.bowls.clear();
    for (const QString& bowl : bowls)
        coat.bowls.push_back({named(bowl), minutes(3), minutes(45), named(commonPractice())});
    return service;
}

Service regrowthAndEnds()
{
    Service service =
        serviceWith(StartingPointsText::tr("Regrowth and ends"),
                    {StartingPointsText::tr("Regrowth colour"), StartingPointsText::tr("Ends colour")});
    Coat& coat = service.coats.front();
    coat.zones = {zone(StartingPointsText::tr("Regrowth"), 0, {12, 15, 20}, {30, 35, 40}),
                  zone(StartingPointsText::tr("Ends"), 1, {4, 6, 9}, {5, 10, 15})};
    coat.zones[1].after = {{0, {}}};
    coat.zones[0].late = {LateJob{named(StartingPointsText::tr("Emulsify")), minutes(3), minutes(2)}};
    return service;
}

Service rootMidsAndEnds()
{
    Service service =
        serviceWith(StartingPointsText::tr("Root with mids and ends"),
                    {StartingPointsText::tr("Root colour"), StartingPointsText::tr("Mids toner"),
                     StartingPointsText::tr("Ends toner")});
    Coat& coat = service.coats.front();
    coat.zones = {zone(StartingPointsText::tr("Root"), 0, {8, 10, 13}, {25, 30, 40}),
                  zone(StartingPointsText::tr("Mids"), 1, {8, 10, 12}, {12, 20, 25}),
                  zone(StartingPointsText::tr("Ends"), 2, {6, 8, 10}, {8, 15, 20})};
    coat.zones[1].after = {{0, {}}};
    coat.zones[2].after = {{1, {}}};
    for (const std::size_t toner : {std::size_t{1}, std::size_t{2}})
        coat.zones[toner].looks =
            Looks{minutes(5), minutes(5), minutes(1), core::service::defaultTolerance(minutes(5)),
                  coat.zones[toner].develop.target};
    return service;
}

Service lightenerInSections()
{
    Service service = serviceWith(
        StartingPointsText::tr("Lightener in sections"),
        {StartingPointsText::tr("Lightener, first bowl"), StartingPointsText::tr("Lightener, second bowl")});
    Coat& coat = service.coats.front();
    coat.groups = {{named(StartingPointsText::tr("Back")), minutes(5), {}, {}},
                   {named(StartingPointsText::tr("Sides")), minutes(5), {}, {}}};
    const QString names[] = {StartingPointsText::tr("Back left"), StartingPointsText::tr("Back right"),
                             StartingPointsText::tr("Side left"), StartingPointsText::tr("Side right")};
    for (std::size_t place = 0; place < std::size(names); ++place) {
        Zone section = zone(names[place], place / 2, {5, 7, 9}, {20, 35, 45});
        section.clock = ClockStart::FirstContact;
        section.alone = true;
        section.group = place / 2;
        section.looks = Looks{minutes(20), minutes(5), minutes(1),
                              core::service::defaultTolerance(minutes(5)), section.develop.target};
        if (place > 0)
            section.after = {{place - 1, {}}};
        coat.zones.push_back(std::move(section));
    }
    return service;
}

Service allOverWithAFill()
{
    Service service = serviceWith(StartingPointsText::tr("All over, with a fill first"),
                                  {StartingPointsText::tr("Filler")});
    Coat& fill = service.coats.front();
    fill.name = named(StartingPointsText::tr("Fill"));
    fill.zones = {zone(StartingPointsText::tr("All over"), 0, {10, 12, 15}, {15, 20, 30})};
    fill.dryHands = minutes(5);
    fill.assess = minutes(2);
    Coat colour = fill;
    colour.name = named(StartingPointsText::tr("Colour"));
    colour.bowls.front().name = named(StartingPointsText::tr("All-over colour"));
    colour.zones = {zone(StartingPointsText::tr("All over"), 0, {14, 18, 24}, {25, 30, 40})};
    colour.zones[0].late = {LateJob{named(StartingPointsText::tr("Emulsify")), minutes(3), minutes(2)}};
    service.coats.push_back(std::move(colour));
    return service;
}

}  // namespace

QString commonPractice()
{
    return StartingPointsText::tr("Times are common practice: put in those of the product's leaflet.");
}

std::vector<StartingPoint> startingPoints()
{
    return {
        {StartingPointsText::tr("&Regrowth and ends"), QStringLiteral("regrowth"), regrowthAndEnds()},
        {StartingPointsText::tr("R&oot with mids and ends"), QStringLiteral("root"), rootMidsAndEnds()},
        {StartingPointsText::tr("&Lightener in sections"), QStringLiteral("lightener"),
         lightenerInSections()},
        {StartingPointsText::tr("&All over, with a fill first"), QStringLiteral("fill"), allOverWithAFill()}};
}

bool restsOnCommonPractice(const Service& service)
{
    return std::ranges::any_of(service.coats, [](const Coat& coat) {
        return std::ranges::any_of(
            coat.bowls, [](const core::service::Bowl& bowl) { return bowl.note == named(commonPractice()); });
    });
}

}  // namespace app::desktop
