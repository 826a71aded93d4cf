#include "tests/oracle/random_service.h"
#include "tests/oracle/service_maker.h"

#include <sstream>

namespace oracle {
namespace {

namespace service = core::service;

/// Seconds from the opening.
std::string at(std::optional<Instant> moment)
{
    return moment ? std::to_string((*moment - opening).count()) : "-";
}

std::string text(std::optional<Seconds> length)
{
    return length ? std::to_string(length->count()) : "-";
}

void write(std::ostream& out, const service::Zone& zone)
{
    out << "    " << zone.name << ": bowl " << zone.bowl << ", group " << zone.group << ", reach "
        << text(zone.reach) << ", apply " << text(zone.apply.quickest) << '/' << text(zone.apply.usual) << '/'
        << text(zone.apply.slowest)
        << (zone.clock == service::ClockStart::EndOfApplication ? ", from end " : ", from first ")
        << text(zone.develop.least) << '/' << text(zone.develop.target) << '/' << text(zone.develop.most)
        << ", first strand most " << text(zone.firstStrandMost) << ", last strand least "
        << text(zone.lastStrandLeast) << ", under " << zone.under.hundredths << ", over "
        << zone.over.hundredths << '\n';
    if (zone.looks)
        out << "      looks: first " << text(zone.looks->first) << ", every " << text(zone.looks->every)
            << ", length " << text(zone.looks->length) << ", tolerance " << text(zone.looks->tolerance)
            << ", until " << text(zone.looks->until) << '\n';
    for (const service::LateJob& job : zone.late)
        out << "      late: before " << text(job.before) << ", length " << text(job.length) << ", tolerance "
            << text(job.tolerance) << '\n';
    for (const service::After& after : zone.after)
        out << "      after: zone " << after.zone << ", longest gap " << text(after.longestGap) << '\n';
    if (zone.notBefore)
        out << "      wanted not before " << at(zone.notBefore) << '\n';
}

void write(std::ostream& out, const service::Coat& coat)
{
    out << "  " << coat.name << ": dry " << text(coat.dryHands) << '+' << text(coat.dryUnattended)
        << ", assess " << text(coat.assess) << ", gap " << text(coat.gapLeast) << " to " << text(coat.gapMost)
        << '\n';
    for (const service::Bowl& bowl : coat.bowls)
        out << "    " << bowl.name << ": mix " << text(bowl.mix) << ", pot life " << text(bowl.potLife)
            << '\n';
    for (const service::RinseGroup& group : coat.groups)
        out << "    " << group.name << ": rinse " << text(group.rinse) << ", booked "
            << at(group.waterEarliest) << " to " << at(group.waterLatest) << '\n';
    for (const service::Zone& zone : coat.zones)
        write(out, zone);
}

void write(std::ostream& out, const service::Crew& crew)
{
    out << "  basins: " << crew.basins << '\n';
    for (const service::Hands& hands : crew.hands) {
        out << "  " << hands.name << ": does";
        for (const service::Work work : hands.kinds)
            out << ' ' << static_cast<int>(work);
        out << (hands.kinds.empty() ? " everything" : "") << ", away";
        for (const core::measure::Interval& away : hands.away)
            out << ' ' << at(away.from) << " to " << at(away.until);
        out << '\n';
    }
}

void write(std::ostream& out, const core::stagger::Progress& progress)
{
    for (const core::stagger::TaskProgress& fact : progress.tasks) {
        out << "  " << core::stagger::taskIdText(fact.id) << " since " << at(fact.start) << ", ended "
            << at(fact.end) << ", expected " << at(fact.plannedEnd) << '\n';
    }
    for (const core::stagger::TaskId& id : progress.dropped)
        out << "  " << core::stagger::taskIdText(id) << " dropped\n";
}

}  // namespace

std::string questionText(const core::stagger::Question& question)
{
    std::ostringstream out;
    out << "now " << at(question.now) << ", preference " << static_cast<int>(question.preference) << '\n';
    write(out, question.progress);
    for (const service::Service& made : question.services) {
        out << "service: not before " << at(made.notBefore) << ", ready by " << at(made.readyBy)
            << ", buffer " << text(made.buffer) << (made.head.piecesComeApart ? ", comes apart" : "") << '\n';
        write(out, made.crew);
        for (const service::Coat& coat : made.coats)
            write(out, coat);
    }
    return out.str();
}

std::string planText(const core::stagger::Question& question, const core::stagger::PlanData& plan)
{
    std::ostringstream out;
    out << "worth " << plan.worth.breach.hundredthSeconds << ' ' << plan.worth.deviation.hundredthSeconds
        << ' ' << plan.worth.waste.count() << ' ' << plan.worth.staleness.count();
    if (plan.give)
        out << ", give " << *plan.give;
    out << '\n';
    for (const core::stagger::PlannedTask& task : plan.tasks) {
        out << "  " << at(task.start) << " to " << at(task.end) << ' '
            << core::stagger::taskName(question.services.at(task.id.service), task.id) << " coat "
            << task.id.coat;
        if (task.hands)
            out << " hands " << *task.hands;
        if (task.state != core::stagger::TaskState::Open)
            out << (task.state == core::stagger::TaskState::Done ? " done" : " goes on");
        if (task.basin)
            out << " basin " << *task.basin;
        if (task.madeWhile)
            out << " while zone " << task.madeWhile->item;
        out << '\n';
    }
    return out.str();
}

}  // namespace oracle
