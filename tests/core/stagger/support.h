#pragma once

#include "tests/oracle/service_maker.h"

#include <string>

/// Short ways to ask for plans and to say what is expected of them. Every plan that comes out of `planned`
/// has been looked over by the independent checker.
namespace core::stagger {

using oracle::ask;
using oracle::at;
using oracle::makeService;
using oracle::makeZone;
using oracle::opening;
using service::Service;
using service::Zone;
using std::chrono::minutes;

/// So many dead ends, and no other end.
[[nodiscard]] inline Budget conflicts(std::uint64_t most)
{
    return {.conflicts = most, .stop = {}, .better = {}};
}

[[nodiscard]] TaskId idOf(TaskKind kind, std::size_t item = 0, std::size_t part = 0, std::size_t coat = 0);

/// `minutes` of development, no more and no less.
[[nodiscard]] oracle::Span exactly(int minute);

/// A zone that usually takes 11 min to apply, and anything from 8 to 14.
[[nodiscard]] Zone slowZone(const std::string& name, int least, int target, int most);

/// 30 min of development, with a look from 18 to 22 and a job of 10 min from 16 to 18 on.
[[nodiscard]] Zone zoneWithLookAndJob();

/// One coat of these zones at the opening or later, rinsed for 5 min.
[[nodiscard]] Service fromOpening(std::vector<Zone> zones);
/// The same, ready by that minute and started as late as that allows.
[[nodiscard]] Service readyBy(int minute, std::vector<Zone> zones);
void addHands(Service& service, std::vector<service::Work> kinds = {});

/// The plan of a question that must have one: proved, and sound to the checker.
[[nodiscard]] Plan planned(const Question& question);
[[nodiscard]] Plan planned(const Service& service);
/// The refusal of a service that must not fit.
[[nodiscard]] NoPlan refused(const Question& question);
[[nodiscard]] NoPlan refused(const Service& service);
[[nodiscard]] bool fits(const Question& question);
[[nodiscard]] bool fits(const Service& service);
[[nodiscard]] std::string demandsOf(const NoPlan& reason);

/// Minutes from the opening; a plan here never needs a fraction.
[[nodiscard]] int startOf(const Plan& plan, const TaskId& id);
[[nodiscard]] int endOf(const Plan& plan, const TaskId& id);
/// What a zone gets, in whole minutes.
[[nodiscard]] int developmentOf(const Plan& plan, std::size_t zone, std::size_t coat = 0);
/// In zone-minutes at harm 1.
[[nodiscard]] double deviationOf(const Plan& plan);

/// A fact. Without an end it is still going on.
void happened(Question& question, const TaskId& id, int from, std::optional<int> until = {});

}  // namespace core::stagger
