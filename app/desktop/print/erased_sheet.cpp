#include "app/desktop/print/erased_sheet.h"

#include "app/desktop/print/plan_sheet.h"
#include "app/desktop/records/result_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace app::desktop::print {
namespace {

using core::measure::Instant;
using core::stagger::TaskId;
using core::stagger::TaskKind;

struct ErasedRunText {
    Q_DECLARE_TR_FUNCTIONS(ErasedRun)
};

QString numbered(const TaskId& task)
{
    const std::size_t number = task.item + 1;
    switch (task.kind) {
    case TaskKind::Apply: return ErasedRunText::tr("Apply zone %1").arg(number);
    case TaskKind::Look: return ErasedRunText::tr("Look at zone %1").arg(number);
    case TaskKind::Late: return ErasedRunText::tr("Late job on zone %1").arg(number);
    case TaskKind::Mix: return ErasedRunText::tr("Mix bowl %1").arg(number);
    case TaskKind::Rinse: return ErasedRunText::tr("Rinse group %1").arg(number);
    case TaskKind::RinseAlone: return ErasedRunText::tr("Rinse zone %1 by itself").arg(number);
    case TaskKind::Dry: return ErasedRunText::tr("Dry");
    case TaskKind::Assess: return ErasedRunText::tr("Assess");
    case TaskKind::Heat: return ErasedRunText::tr("Heat");
    }
    return {};
}

/// Which head and coat, so far as there were several.
class Places {
public:
    explicit Places(const view::ErasedRun& run)
    {
        for (const view::LeftTask& left : run.tasks) {
            m_heads = m_heads || left.task.service > 0;
            m_coats = m_coats || left.task.coat > 0;
        }
    }

    [[nodiscard]] QString of(const TaskId& task, QString what) const
    {
        if (m_coats)
            what = ErasedRunText::tr("%1, coat %2").arg(what).arg(task.coat + 1);
        return m_heads ? ErasedRunText::tr("%1, head %2").arg(what).arg(task.service + 1) : what;
    }

private:
    bool m_heads = false;
    bool m_coats = false;
};

QString moment(const output::WallClock& clock, Instant at)
{
    return QString::fromStdString(clock.text(at));
}

Part tasksPart(const view::ErasedRun& run, const Places& places, const output::WallClock& clock)
{
    Part part{ErasedRunText::tr("What is left"), {}, {}, Table{}};
    part.table->headings = {ErasedRunText::tr("From"), ErasedRunText::tr("To"), ErasedRunText::tr("What")};
    for (const view::LeftTask& left : run.tasks)
        part.table->rows.push_back({moment(clock, left.from),
                                    left.until ? moment(clock, *left.until) : QString{},
                                    places.of(left.task, numbered(left.task))});
    return part;
}

Part outcomesPart(const view::ErasedRun& run, const Places& places)
{
    Part part{ErasedRunText::tr("How it turned out"), {}, {}, Table{}};
    part.table->headings = {ErasedRunText::tr("Zone"), ErasedRunText::tr("Said")};
    for (const core::run::ZoneOutcome& said : run.outcomes)
        if (said.outcome) {
            part.table->rows.push_back(
                {places.of(said.zone, ErasedRunText::tr("Zone %1").arg(said.zone.item + 1)),
                 words::turnedOut(*said.outcome)});
        }
    return part;
}

}  // namespace

Sheet erasedSheet(const view::ErasedRun& run, Instant began, Instant ended,
                  const core::measure::TimeZones& zones, const std::string& zone)
{
    const output::WallClock clock{zones, zone, began, ended};
    Sheet sheet;
    sheet.title = ErasedRunText::tr("A run that was erased");
    sheet.subtitle = ErasedRunText::tr("%1, %2 to %3, times in %4")
                         .arg(words::day(began, zones, zone), moment(clock, began), moment(clock, ended),
                              QString::fromStdString(clock.zone()));
    sheet.foot = leafletFirst();
    sheet.parts.push_back(
        {{},
         ErasedRunText::tr(
             "Whatever could name a person was erased: the service with its names and notes, what was "
             "seen and said. What is left are kinds of tasks, numbers and times. A card cannot be made "
             "of them, and a coat cannot begin from them."),
         {},
         {}});
    const Places places{run};
    sheet.parts.push_back(tasksPart(run, places, clock));
    sheet.parts.push_back(outcomesPart(run, places));
    std::erase_if(sheet.parts, [](const Part& part) { return part.table && part.table->rows.empty(); });
    return sheet;
}

}  // namespace app::desktop::print
