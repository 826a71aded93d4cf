#pragma once

#include "core/stagger/draft.h"

#include <string>
#include <vector>

namespace core::stagger {

/// Writes a question down as a `Draft`, rule by rule. Private to this folder.
class Drafter {
public:
    Drafter(const Question& question, Strictness strictness, std::vector<bool> left, const Pins& pins,
            int give);

    Draft write();

private:
    struct CoatDraft {
        std::vector<std::optional<std::size_t>> zonePlaces;  ///< Into Draft::zones; absent when dropped.
        std::vector<std::optional<Moment>> groupStarts;
        std::vector<Moment> rinseEnds;
        std::vector<Moment> sources;  ///< Open tasks that can come first.
        std::vector<Moment> ends;     ///< When the coat is over.
    };

    // draft_horizon.cpp and draft.cpp: the frame.
    bool setHorizon();
    void writeService(std::size_t index);
    void writeWaste(std::size_t index, std::optional<Time> start, const std::vector<Moment>& sources,
                    const std::vector<Moment>& ends);
    [[nodiscard]] std::optional<Time> earliestStart(const service::Service& service) const;
    void setScale();
    void writeRanking();
    void registerCrewDemands();
    void writeElsewhere();

    // draft_coat.cpp: bowls, rinses, what follows them.
    CoatDraft writeCoat(std::size_t service, std::size_t coat, const std::vector<Moment>& previousEnds);
    void writeGroups(std::size_t service, std::size_t coat, CoatDraft& draft);
    void writeGroup(const TaskId& rinse, CoatDraft& draft);
    [[nodiscard]] bool isRinsedIn(const TaskId& rinse, const TaskId& apply) const;
    void writeBowl(const TaskId& mix, CoatDraft& draft);
    void writePotLife(const TaskId& mix, const CoatDraft& draft, const std::optional<Moment>& ready);
    void writeAfterRinse(std::size_t service, std::size_t coat, CoatDraft& draft);
    void writeDrying(const TaskId& dry, CoatDraft& draft);
    void writeAssessing(const TaskId& assess, CoatDraft& draft);
    void writeGap(std::size_t service, std::size_t coat, const std::vector<Moment>& previousEnds,
                  const CoatDraft& draft);

    // draft_zone.cpp: a zone and all that is tied to it.
    void writeApplication(const TaskId& apply, CoatDraft& draft);
    void writeWish(const DraftedZone& drafted);
    void writeBegun(const TaskProgress& progress, DraftedZone& drafted);
    void writeWater(const TaskId& apply, CoatDraft& draft);
    void writeWindow(const DraftedZone& drafted);
    [[nodiscard]] bool canStillBeDone(const DraftedZone& drafted, Time length) const;
    void writeLooks(const DraftedZone& drafted);
    void writeLook(const DraftedZone& drafted, const TaskId& look, Time moment, std::size_t demand);
    void writeOpenLook(const DraftedZone& drafted, const TaskId& look, Time moment, std::size_t demand);
    void writeLateJobs(const DraftedZone& drafted);
    void writeAfter(const DraftedZone& drafted, const CoatDraft& draft);

    // Building blocks.
    Point newPoint();
    Moment startOf(const TaskId& id);
    std::size_t demand(DemandKind kind, Sentence what, std::optional<TaskId> task, std::int64_t breachRate,
                       std::size_t place = 0);
    void keep(const Moment& earlier, const Moment& later, Time most);
    void limit(std::size_t demand, const Moment& earlier, const Moment& later, Time most);
    std::vector<Moment> gathered(const std::vector<Moment>& moments, bool together, bool first);
    std::vector<Moment> firstOf(const std::vector<Moment>& moments, bool together);
    std::vector<Moment> lastOf(const std::vector<Moment>& moments, bool together);
    void stretchCosts(const Moment& earlier, const Moment& later, Time most, Price price);
    void always(const std::vector<Lag>& clause) { m_draft.problem.clauses.push_back(clause); }
    [[nodiscard]] bool mayBreak(std::size_t demand) const
    {
        return m_draft.strictness == Strictness::Break && m_draft.demands[demand].breachRate > 0
            && (m_pins.mayBreak.empty() || m_pins.mayBreak[demand]);
    }
    [[nodiscard]] Time timeOf(Instant instant) const
    {
        return static_cast<Time>((instant - m_draft.zero).count());
    }
    [[nodiscard]] const service::Service& serviceOf(const TaskId& id) const;
    [[nodiscard]] const service::Coat& coatOf(const TaskId& id) const;
    [[nodiscard]] const service::Zone& zoneOf(const TaskId& id) const;
    [[nodiscard]] Sentence headed(std::size_t service, Sentence what) const;
    [[nodiscard]] Sentence named(const TaskId& id, Sentence what) const;
    [[nodiscard]] Time runningEnd(const TaskProgress& progress, Seconds usual) const;
    Moment applicationEnd(const Moment& start, const service::Application& lengths);
    Moment runningApplicationEnd(const TaskId& apply, Time start, const service::Application& lengths);
    [[nodiscard]] bool isSettled(const TaskId& id) const;
    [[nodiscard]] bool isKnown(const Moment& moment) const;
    void addRunning(const TaskId& id, const TaskProgress& progress, Time end);
    void addOpen(const TaskId& id, const Moment& start, Time length, std::optional<Lag> due = {});
    void nameHands();

    const Question& m_question;
    const Pins& m_pins;
    Draft m_draft;
    Time m_low = 0;        ///< Nothing open starts before.
    Time m_high = 0;       ///< Everything is over by then.
    Time m_freeStart = 0;  ///< Where a service begins that nothing ties to the clock.
    std::optional<Time> m_now;
    std::vector<Point> m_known;    ///< Ends of what runs: points of their own, but nobody's to decide.
    std::vector<Lag> m_asPlanned;  ///< What holds where all goes as planned: usual lengths, pinned starts.
};

}  // namespace core::stagger
