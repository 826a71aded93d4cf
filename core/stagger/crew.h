#pragma once

#include "core/stagger/draft.h"

#include <algorithm>
#include <limits>
#include <optional>
#include <vector>

namespace core::stagger {

/// When a task takes hands, from the origin of the problem. Half-open.
struct Span {
    Time start;
    Time end;

    friend bool operator==(const Span&, const Span&) = default;
};

/// The crew's side of a draft at given times: who can do what, and if nobody
/// can, which tasks are in each other's way.
class CrewAt {
public:
    CrewAt(const Draft& draft, const std::vector<Time>& times);

    [[nodiscard]] std::vector<temporal::Clause> broken() const;
    [[nodiscard]] bool suffices() const;
    [[nodiscard]] Assignment assign() const;

    // What is asked to share tasks out, by place in the draft.
    [[nodiscard]] const std::vector<std::size_t>& present() const { return m_present; }
    [[nodiscard]] std::size_t count() const { return m_draft.busy.size(); }
    [[nodiscard]] std::size_t hands() const { return m_crew.hands.size(); }
    [[nodiscard]] Time start(std::size_t place) const { return m_spans[place].start; }
    /// What goes on now has not ended yet, though it may be over in this second as far as the plan knows.
    [[nodiscard]] Time end(std::size_t place) const
    {
        return isRunning(place) ? std::max(m_spans[place].end, m_runningUntil) : m_spans[place].end;
    }
    [[nodiscard]] bool isLook(std::size_t place) const { return task(place).id.kind == TaskKind::Look; }
    [[nodiscard]] bool isMadeWhile(std::size_t look, std::size_t apply) const;
    [[nodiscard]] bool clash(std::size_t a, std::size_t b) const;
    [[nodiscard]] bool mayDo(std::size_t place, std::size_t hands) const;
    /// Facts are exempt, as far as they contradict it.
    [[nodiscard]] bool isAwayDuring(std::size_t place, std::size_t hands) const;
    [[nodiscard]] bool areAlike(std::size_t hands, std::size_t others) const;

private:
    using Clause = temporal::Clause;

    [[nodiscard]] const Busy& task(std::size_t place) const { return m_draft.busy[place]; }
    [[nodiscard]] bool overlap(std::size_t a, std::size_t b) const
    {
        return start(a) < m_spans[b].end && start(b) < m_spans[a].end;
    }
    [[nodiscard]] bool isRunning(std::size_t place) const { return task(place).state == TaskState::Running; }
    void lookWhoCanBeAtWhatRuns();
    [[nodiscard]] bool doesSuchWork(std::size_t place, std::size_t hands) const;
    [[nodiscard]] bool beganWhileApplying(std::size_t look) const;
    [[nodiscard]] bool sameHead(std::size_t a, std::size_t b) const
    {
        return task(a).id.service == task(b).id.service;
    }
    [[nodiscard]] bool isApplication(std::size_t place) const
    {
        return task(place).id.kind == TaskKind::Apply;
    }
    /// Facts are exempt from the rules.
    [[nodiscard]] bool happened(std::size_t place) const { return task(place).state != TaskState::Open; }
    [[nodiscard]] bool bothHappened(std::size_t a, std::size_t b) const { return happened(a) && happened(b); }
    [[nodiscard]] bool pieces(std::size_t place) const
    {
        return m_draft.question->services[task(place).id.service].head.piecesComeApart;
    }
    [[nodiscard]] bool headClash(std::size_t a, std::size_t b) const;
    [[nodiscard]] Clause orderClause(std::size_t a, std::size_t b) const;
    void appendOrders(std::size_t a, std::size_t b, Clause& clause) const;
    void appendNotDue(std::size_t place, Clause& clause) const;
    void appendOtherGlances(std::size_t look, Clause& clause) const;
    [[nodiscard]] bool sameHandsAtBoth(std::size_t a, std::size_t b) const;
    [[nodiscard]] bool sameBasinAtBoth(std::size_t a, std::size_t b) const;
    [[nodiscard]] Clause handsClause(std::size_t a, std::size_t b) const;
    [[nodiscard]] Clause clauseFor(const std::vector<std::size_t>& places) const;
    void appendAway(std::size_t place, Clause& clause) const;
    void brokenByPairs(std::vector<Clause>& clauses) const;
    void brokenByHands(std::vector<Clause>& clauses) const;
    void brokenByBasins(std::vector<Clause>& clauses) const;
    [[nodiscard]] std::vector<std::vector<std::size_t>> clusters() const;

    // crew_names.cpp: where hands and basins are decided by name.
    [[nodiscard]] std::size_t namedHands(std::size_t place) const;
    void brokenByNamedGlance(std::size_t look, const std::vector<std::size_t>& applies,
                             std::vector<Clause>& clauses) const;
    void brokenByNamedHands(std::size_t place, bool glance, std::vector<Clause>& clauses) const;
    void brokenByNames(std::vector<Clause>& clauses) const;
    [[nodiscard]] Assignment assignByNames() const;
    [[nodiscard]] Assignment named() const;
    void renumber(std::vector<Time>& times) const;
    void lower(std::size_t place, std::vector<Time>& times) const;
    void assignGlances(Assignment& assignment) const;
    void assignBasins(Assignment& assignment) const;

    const Draft& m_draft;
    const std::vector<Time>& m_times;
    const service::Crew& m_crew;
    std::vector<Span> m_spans;
    std::vector<std::size_t> m_present;  ///< Tasks that are made, by start, then id.
    bool m_handsCount = true;            ///< Whether the number of hands is a demand.
    bool m_basinsCount = true;
    bool m_headCounts = true;
    std::vector<std::vector<Span>> m_away;
    Time m_runningUntil = std::numeric_limits<Time>::min();
    bool m_runningApart = true;    ///< What runs is done by as many pairs of hands, as far as there are such.
    bool m_runningPresent = true;  ///< And by those who are there.
};

}  // namespace core::stagger
