#pragma once

#include "app/view/outcome_view.h"
#include "app/view/strand_picture.h"

/// The record of a run: what really happened to each zone, beside what was asked for.
namespace app::view {

/// A look that was made, and what came of it.
struct CardLook {
    TaskId look;
    Instant at;
    core::run::Verdict verdict = core::run::Verdict::Leave;
    Seconds again{0};
    std::string seen;  ///< In words; empty where nobody said.

    friend bool operator==(const CardLook&, const CardLook&) = default;
};

struct CardZone {
    TaskId zone;  ///< Its Apply.
    std::string name;
    core::run::Stage stage = core::run::Stage::Waiting;
    std::optional<Instant> mixed;  ///< When its bowl was, the last time.
    std::optional<Instant> firstStrand;
    std::optional<Instant> lastStrand;
    std::optional<Instant> water;
    std::optional<Instant> plannedWater;  ///< By the plan that the run was begun with.
    std::optional<Seconds> developed;     ///< Once there was water.
    core::service::Window window;         ///< As asked for.
    std::vector<CardLook> looks;          ///< In the order in which they were made.
    ZoneResult result;

    friend bool operator==(const CardZone&, const CardZone&) = default;
};

/// What was mixed for which zones.
struct CardBowl {
    std::string name;
    std::string note;                ///< What goes in, in the stylist's words.
    std::vector<std::string> zones;  ///< That it was for.
    std::optional<Instant> mixed;

    friend bool operator==(const CardBowl&, const CardBowl&) = default;
};

/// Heat over the head; without an end where nobody said that it was taken off.
struct CardHeat {
    Instant from;
    std::optional<Instant> until;

    friend bool operator==(const CardHeat&, const CardHeat&) = default;
};

struct CardCoat {
    CoatPlace place;
    std::string name;
    StrandPicture
        picture;  ///< As it really went, with the first plan marked on it; empty where nothing was done.
    std::vector<CardZone> zones;
    std::vector<CardBowl> bowls;
    std::vector<CardHeat> heats;
    std::vector<std::string> leftOut;  ///< Tasks, in the trade's words.
    std::string note;                  ///< For next time.

    friend bool operator==(const CardCoat&, const CardCoat&) = default;
};

struct CardHead {
    std::string service;
    std::string head;  ///< Empty where it has no name.
    std::string timeZone;
    std::vector<CardCoat> coats;

    friend bool operator==(const CardHead&, const CardHead&) = default;
};

/// Something that was changed while the run went on.
struct CardChange {
    Instant at;
    std::string what;

    friend bool operator==(const CardChange&, const CardChange&) = default;
};

struct RecordCard {
    Instant began;
    Instant until;       ///< Its last moment: when it was ended, else that of the last fact.
    bool ended = false;  ///< Otherwise it is the card of a run that goes on.
    std::vector<CardHead> heads;
    std::vector<CardChange> changes;
    std::vector<core::run::Prepared> prepared{};  ///< What was said before; empty where nobody was asked.
    bool onPerson = false;                        ///< One of the heads is a person's.

    friend bool operator==(const RecordCard&, const RecordCard&) = default;
};

/// The first moment that is named on it: what was said before it began was said earlier.
Instant firstMoment(const RecordCard& card);

/// `now` where the run goes on; of one that was ended the card stays as it is. `zones` must know the time
/// zone of every service.
RecordCard recordCard(const core::run::Setup& setup, std::span<const core::run::Fact> facts, Instant now,
                      const core::measure::TimeZones& zones);

}  // namespace app::view
