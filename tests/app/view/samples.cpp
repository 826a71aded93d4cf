#include "tests/app/view/samples.h"

namespace samples {

using core::run::Lane;
using core::run::Stage;
using core::service::Service;
using core::service::Zone;

Service service()
{
    Zone root;
    root.name = "Root";
    root.apply = {minutes(8), minutes(10), minutes(12)};
    root.develop = {minutes(15), minutes(20), minutes(24)};
    Zone ends;
    ends.name = "Ends";
    ends.bowl = 0;
    ends.apply = {minutes(3), minutes(4), minutes(5)};
    ends.develop = {minutes(10), minutes(15), minutes(18)};
    ends.looks = core::service::Looks{minutes(5), {}, minutes(1), minutes(2), minutes(15)};
    ends.alone = true;

    Service service;
    service.name = "Sample";
    service.crew.hands = {{"Stylist", {}, {}}};
    core::service::Coat coat;
    coat.name = "Only";
    coat.bowls = {{"Colour", Seconds{0}, {}, {}}};
    coat.zones = {root, ends};
    coat.groups = {{"Both", minutes(5), {}, {}}};
    service.coats = {coat};
    return service;
}

std::vector<core::stagger::PlannedTask> tasks()
{
    return {
        {applyRoot, at(0), at(10), {}, 0, {}, {}},
        {applyEnds, at(11), at(15), {}, 0, {}, {}},
        {lookAtEnds, at(20), at(21), {}, 0, {}, {}},
        {rinse, at(30), at(35), {}, 0, 0, {}},
    };
}

core::stagger::PlanData plan()
{
    core::stagger::PlanData plan;
    plan.tasks = tasks();
    plan.zones = {{0, 0, 0, at(0), at(10), at(10), at(30), false},
                  {0, 0, 1, at(11), at(15), at(15), at(30), false}};
    plan.start = at(0);
    plan.end = at(35);
    return plan;
}

core::run::State developing(Instant now)
{
    core::run::State state;
    state.now = now;
    Lane root;
    root.stage = Stage::Developing;
    root.firstContact = at(0);
    root.applicationEnd = root.clockStart = at(10);
    root.water = at(30);
    root.development = now - at(10);
    root.leastAt = at(25);
    root.targetAt = at(30);
    root.mostAt = at(34);
    Lane ends = root;
    ends.zone = 1;
    ends.firstContact = at(11);
    ends.applicationEnd = ends.clockStart = at(15);
    ends.development = now - at(15);
    ends.mostAt = at(33);
    ends.nextLook = at(20);
    ends.nextLookTask = lookAtEnds;
    state.lanes = {root, ends};
    return state;
}

}  // namespace samples
