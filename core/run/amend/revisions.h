#pragma once

#include "core/run/run.h"

/// The services of a run as its amendments left them.
namespace core::run {

/// As begun, or as the last amendment that stands says. Refers into `setup`.
const std::vector<service::Service>& servicesAt(const Setup& setup, std::span<const Fact> facts);

/// `services` with the longest and shortest times that each zone had when it first came up. An amendment may
/// plan past what a product allows, since somebody chose so; what it allows is watched all the same.
std::vector<service::Service> withFirstLimits(const Setup& setup, std::vector<service::Service> services);

/// Why `amended` cannot take the place of `services`, or nothing: it must pass every check, and whatever was
/// there must still be there, as facts name places.
std::optional<Sentence> whyNoAmendment(const std::vector<service::Service>& services,
                                       const std::vector<service::Service>& amended);

}  // namespace core::run
