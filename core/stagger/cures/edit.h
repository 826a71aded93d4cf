#pragma once

#include "core/stagger/cures.h"

#include <functional>
#include <vector>

/// Private to this folder: what may be changed to cure what.
namespace core::stagger {

using Services = std::vector<service::Service>;

/// A change of the services whose amount is still to be found.
struct Edit {
    std::optional<Seconds> most;  ///< The largest amount; absent where there is no amount.
    bool tryEach = false;         ///< More is not always easier: amounts are tried one after another.
    bool isForHands = false;      ///< When they are needed is still to be found.
    std::function<void(Services&, Seconds)> apply;
    std::function<CureStep(Seconds)> step;
    std::function<measure::Harm(Seconds)> change;
};

/// Every change that touches `demand`, in a fixed order.
std::vector<Edit> editsFor(const Question& question, const Demand& demand);

// edit_zone.cpp: windows, strands, looks, late jobs, order, rinsing alone.
void addZoneEdits(const Question& question, const Demand& demand, std::vector<Edit>& edits);

// edit_coat.cpp: bowls, booked water, gaps between coats, the promise, who is there.
void addCoatEdits(const Question& question, const Demand& demand, std::vector<Edit>& edits);

/// A length of the services, to be made longer or shorter.
struct LengthEdit {
    CureKind kind = CureKind::LongerMost;
    TaskId task{};
    bool grows = true;
    std::int64_t rate = 0;  ///< Hundredths of change a minute.
    std::function<Seconds&(Services&)> length;
    std::function<Sentence(Seconds wanted, Seconds now)> words;
    Sentence note{};
    Seconds longest = Seconds::max();  ///< Never made longer than that.
};
Edit lengthEdit(const Question& question, const LengthEdit& wanted);

/// A change without an amount.
Edit plainEdit(CureStep step, measure::Harm change, std::function<void(Services&)> apply);

/// "Let Ends ..." or, where there are several coats or heads, "Second coat: let Ends ...".
Sentence placed(const Services& services, const TaskId& task, Sentence sentence);

/// How far a clock time is moved at most.
inline constexpr Seconds furthestMove = std::chrono::hours{24};

/// Hundredths of change: so much a minute.
measure::Harm perMinute(std::int64_t rate, Seconds length);

}  // namespace core::stagger
