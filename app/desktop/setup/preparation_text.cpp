#include "app/desktop/setup/preparation_text.h"

#include "app/desktop/words.h"
#include "app/view/lane_view.h"
#include "app/view/preparing_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace app::desktop::preparation_text {
namespace {

using core::service::Service;
using core::stagger::PlannedTask;
using core::stagger::TaskKind;

struct PreparationText {
    Q_DECLARE_TR_FUNCTIONS(PreparationText)
};

struct Bowl {
    std::size_t service;
    std::size_t coat;
    std::size_t bowl;

    friend bool operator==(const Bowl&, const Bowl&) = default;
};

Bowl bowlOf(const std::vector<Service>& services, const PlannedTask& task)
{
    const core::stagger::TaskId& id = task.id;
    if (id.kind == TaskKind::Mix)
        return {id.service, id.coat, id.item};
    return {id.service, id.coat, services[id.service].coats[id.coat].zones[id.item].bowl};
}

}  // namespace

QString name(Preparing what, const std::vector<Service>& services)
{
    return PreparationText::tr(view::preparingName(what, isOnPerson(services)));
}

QString state(const Prepared& said)
{
    return PreparationText::tr(view::preparedState(said));
}

QString line(const Prepared& said, const std::vector<Service>& services)
{
    return PreparationText::tr("%1: %2").arg(name(said.what, services), state(said));
}

QString detail(const Prepared& said, const WallClock& clock)
{
    if (!said.at)
        return {};
    const QString at = clock.text(*said.at);
    return said.why.empty() ? PreparationText::tr("said at %1").arg(at)
                            : PreparationText::tr("%1; said at %2").arg(QString::fromStdString(said.why), at);
}

QString about(Preparing what, const std::vector<Service>& services, const QString& order)
{
    switch (what) {
    case Preparing::Sound:
        return PreparationText::tr(
            "Play each alarm and listen from where you work. As long as nobody has heard them, "
            "every step that is due fills the screen at once.");
    case Preparing::Tests:
        return isOnPerson(services)
            ? PreparationText::tr(
                "Which tests there are, when they are made and who reads them is said by the "
                "product's leaflet, by local rules and by licensed practice. Having them written "
                "down here makes nothing safe.")
            : PreparationText::tr(
                "Try what is mixed on a strand of this hair first, as the product's leaflet says.");
    case Preparing::Protection:
        return PreparationText::tr(
            "Gloves and apron on, fresh air in the room, and eyes covered while powder is "
            "mixed. The product's leaflet and local rules say what else is needed.");
    case Preparing::Bowls:
        return order.isEmpty()
            ? PreparationText::tr(
                "Set bowls, brushes and what goes into them out in the order of mixing. There is no "
                "plan yet that gives the order.")
            : PreparationText::tr(
                  "Set bowls, brushes and what goes into them out in this order: %1. A bowl ages from "
                  "when it is mixed, so mix each at its time.")
                  .arg(order);
    }
    return {};
}

QString done(Preparing what)
{
    switch (what) {
    case Preparing::Sound: return PreparationText::tr("Listen …");
    case Preparing::Tests: return PreparationText::tr("Made and read");
    case Preparing::Protection: return PreparationText::tr("All there");
    case Preparing::Bowls: return PreparationText::tr("Set out");
    }
    return {};
}

QString mixingOrder(const std::vector<Service>& services, const core::stagger::PlanData& plan,
                    const WallClock& clock)
{
    std::vector<Bowl> named;
    QStringList order;
    for (const PlannedTask& task : plan.tasks) {
        if (task.id.kind != TaskKind::Mix && task.id.kind != TaskKind::Apply)
            continue;
        const Bowl bowl = bowlOf(services, task);
        if (std::ranges::find(named, bowl) != named.end())
            continue;
        named.push_back(bowl);
        const QString text = words::ofHead(
            view::headOf(services, bowl.service),
            QString::fromStdString(services[bowl.service].coats[bowl.coat].bowls[bowl.bowl].name));
        order << (task.id.kind == TaskKind::Mix ? PreparationText::tr("%1 at %2")
                                                : PreparationText::tr("%1, ready by %2"))
                     .arg(text, clock.text(task.start));
    }
    return order.join(PreparationText::tr("; "));
}

QString open(const Preparation& preparation, const std::vector<Service>& services)
{
    QStringList names;
    for (const Preparing what : Preparation::all)
        if (preparation.isOpen(what))
            names << name(what, services);
    if (names.isEmpty())
        return {};
    return PreparationText::tr("Still open (F4): %1. You can start all the same.")
        .arg(names.join(PreparationText::tr("; ")));
}

}  // namespace app::desktop::preparation_text
