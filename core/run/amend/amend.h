#pragma once

#include "core/run/run.h"
#include "core/stagger/choices.h"

/// What can be said in a run beside that something was done: answers that change what is planned from then
/// on. Each gives an answer for `decide`; `services` are those in force.
namespace core::run {

/// These hands are away for that time. The crew is one, whatever the number of services.
Answer awayAnswer(const std::vector<service::Service>& services, std::size_t hands, measure::Interval away);

/// These hands have gone for good.
Answer goneAnswer(const std::vector<service::Service>& services, std::size_t hands, Instant from);

/// Whether that was said of them.
bool hasGone(const service::Hands& hands, Instant now);

/// Somebody comes to help with everything, from now on.
Answer helperAnswer(const std::vector<service::Service>& services, const std::string& name);

/// A zone is to be rinsed by itself, when its time comes; its neighbours have to stay dry.
Answer apartAnswer(const std::vector<service::Service>& services, const TaskId& apply);

/// One zone more in a coat.
Answer zoneAnswer(const std::vector<service::Service>& services, std::size_t service, std::size_t coat,
                  const service::Zone& zone);

/// One zone more in the coat of `like`, an Apply: the same bowl, window, looks and harms, under a name of its
/// own; without late jobs, and after no other zone. It is rinsed with `like`, or by itself once that water
/// has begun. Where `apply` says how long applying takes, it takes just that; else as long as `like`.
Answer zoneLikeAnswer(const std::vector<service::Service>& services, const stagger::Progress& progress,
                      const TaskId& like, const std::string& name, std::optional<Seconds> apply);

/// What can be chosen at `now` where the limits can no longer all hold, each solved, the least harm first.
/// Empty where they can all hold. Takes as long as a few plans.
std::vector<stagger::Choice> choicesAt(const Setup& setup, std::span<const Fact> facts, Instant now);

/// What `stagger::choicesFor` is asked for these choices; nothing where the limits can all hold. For whoever
/// has them worked out apart, and may have to stop that.
std::optional<stagger::Question> choiceQuestionAt(const Setup& setup, std::span<const Fact> facts,
                                                  Instant now);

/// One of the choices that are left where the limits can no longer all hold.
Answer choiceAnswer(const stagger::Choice& choice);

}  // namespace core::run
