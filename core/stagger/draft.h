#pragma once

#include "core/stagger/plan.h"
#include "core/temporal/controllability.h"
#include "core/temporal/problem.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

/// A question about a service, written as a problem of lags: the translation of
/// the rules in docs/method.md, one function a rule.
namespace core::stagger {

using temporal::Lag;
using temporal::Point;
using temporal::Price;
using temporal::Time;

/// A time point and a fixed distance from it. What has happened stands on the origin.
struct Moment {
    Point point = temporal::origin;
    Time offset = 0;

    [[nodiscard]] bool isFixed() const { return point == temporal::origin; }
    friend Moment operator+(Moment moment, Time later) { return {moment.point, moment.offset + later}; }
};

/// `later` comes at most `most` after `earlier`.
constexpr Lag lagBetween(const Moment& earlier, const Moment& later, Time most)
{
    return {earlier.point, later.point, most + earlier.offset - later.offset};
}

/// `earlier` does not come after `later`.
constexpr Lag inOrder(const Moment& earlier, const Moment& later)
{
    return lagBetween(later, earlier, 0);
}

/// Something that takes a pair of hands.
struct Busy {
    TaskId id;
    Moment start;
    Moment end;
    Time length = 0;         ///< The usual one.
    std::optional<Lag> due;  ///< For looks that may turn out not to be due: it is made if this holds.
    TaskState state = TaskState::Open;
    bool needsBasin = false;
    bool elsewhere = false;  ///< For a head that is not planned here: it only takes the crew.
    std::optional<Point> hands =
        {};  ///< Where hands are decided by name: which pair of hands it is, from `numberZero`.
    std::optional<Point> basin = {};
};

/// What the plan says about a zone, before the times are known.
struct DraftedZone {
    TaskId apply;
    Moment contact;
    Moment applicationEnd;
    Moment clockStart;
    Time applied = 0;             ///< From contact to the end of application, usually.
    std::optional<Moment> water;  ///< Absent when its rinse was dropped.
    bool rinsedAlone = false;
    bool begun = false;   ///< Its application has started, as a fact.
    bool rinsed = false;  ///< Water has reached it, or its rinse has started.
};

/// A demand of the service that a reason can name, with what it costs to break
/// it where that is allowed.
struct DraftedDemand {
    DemandKind kind = DemandKind::Promise;
    std::optional<TaskId> task;
    Sentence what;
    std::int64_t breachRate = 0;  ///< Hundredths of harm a minute; 0: it is never broken.
    std::size_t place = 0;        ///< As in `Demand`.
};

/// A limit that may be broken, to be looked at once the times are known.
struct BreakableLag {
    std::size_t demand = 0;
    Moment earlier;
    Moment later;
    Time most = 0;
};

enum class Strictness {
    Keep,      ///< Every limit holds, prices count.
    Break,     ///< Limits may be broken at a price above all others.
    OnlyFits,  ///< Every limit holds, nothing has a price.
};

/// Which level is worth how much in one `Price`; 0 where a level does not count.
struct Scale {
    Price breach = 0;
    Price deviation = 0;
    Price waste = 0;
    Price staleness = 0;
};

struct Draft {
    const Question* question = nullptr;
    Strictness strictness = Strictness::Keep;
    temporal::Problem problem;
    int give = 0;  ///< In tenths: how much of what applying may take longer or shorter the plan must stand.
    std::vector<temporal::Uncertain> links;  ///< Applications whose length nobody controls.
    std::size_t ruleLags = 0;  ///< So many lags of the problem are rules; the rest hold for usual lengths.
    /// Where each task's hands and basin are decisions of the search: what their numbers count from.
    std::optional<Point> numberZero;
    Instant zero;      ///< What the origin of the problem stands for.
    Time horizon = 0;  ///< Every point has a lag to come by then, which no rule asks for.
    std::vector<Busy> busy;
    std::vector<DraftedZone> zones;
    std::vector<TaskId> looksNotDue;  ///< Known before the search.
    std::vector<DraftedDemand> demands;
    std::vector<bool> left;  ///< Demands left out, by place.
    std::vector<BreakableLag> breakable;
    std::vector<BreakableLag> settled;  ///< Limits between things that have happened: kept or not, for good.
    std::vector<std::pair<TaskId, Moment>> drying;  ///< Open drying: its start.
    std::vector<std::pair<std::size_t, Moment>>
        tails;  ///< Service and a moment when something of it is over.
    Scale scale;
    std::vector<Time> wasteFrom;   ///< By service: where it counts from, or up to.
    std::vector<bool> startsLate;  ///< By service: its waste counts from its first start to the promise.
    std::optional<Sentence> impossible;  ///< Set when the question cannot be written down at all.

    [[nodiscard]] bool isLeft(std::size_t demand) const { return demand < left.size() && left[demand]; }
    [[nodiscard]] Instant instantOf(const Moment& moment, const std::vector<Time>& times) const
    {
        return zero + Seconds{times[static_cast<std::size_t>(moment.point)] + moment.offset};
    }
};

/// What is settled already: starts, for planning one coat after another, and limits.
struct Pins {
    std::map<TaskId, Instant> starts;
    std::size_t coats = SIZE_MAX;          ///< Only that many coats of each service are written down.
    std::vector<PlannedTask> elsewhere{};  ///< What services do that have no coats in the question.
    /// The tasks have points all the same, so that lengths can be uncertain, and hands are named.
    bool keepPoints = false;
    /// Where limits may be broken: which, by the place of the demand. Empty: all that may ever be.
    std::vector<bool> mayBreak;
};

/// Writes the question down, without the demands in `left`. `question` must outlive the draft.
/// What lengths a give in tenths covers, ends rounded outwards.
service::Application covered(const service::Application& lengths, int give);

/// Whether nothing is certain about how long some application takes that is still open.
bool hasUncertainLengths(const Question& question);

/// With a `give` above 0 the ends of applications are points of their own, as `links`.
Draft draftOf(const Question& question, Strictness strictness, std::vector<bool> left = {},
              const Pins& pins = {}, int give = 0);

/// Hands and basins: the clauses that answers must keep and `times` does not.
std::vector<temporal::Clause> brokenByCrew(const Draft& draft, const std::vector<Time>& times);

/// Whether hands and basins suffice at `times`.
bool crewSuffices(const Draft& draft, const std::vector<Time>& times);

/// The give: clauses that every answer must keep so that it holds whatever applying
/// takes, and `times`, which the crew can do, does not. None: it is guaranteed.
std::vector<temporal::Clause> brokenByLengths(const Draft& draft, const std::vector<Time>& times);

/// Who does what at `times`, by place in `draft.busy`.
struct Assignment {
    std::vector<std::optional<std::size_t>> hands;
    std::vector<std::optional<std::size_t>> basins;
    std::vector<std::optional<std::size_t>> madeWhile;  ///< The place of the application.
};
Assignment assignCrew(const Draft& draft, const std::vector<Time>& times);

}  // namespace core::stagger
