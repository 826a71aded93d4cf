#pragma once

#include "core/stagger/plan.h"

namespace bench {

/// The coats that planning is timed on, in whole minutes: zones applied one after the other with windows that
/// nearly fit that order, all under one rinse.
///
/// `Looks`: one look of a minute at each zone, one pair of hands, nothing to mix.
/// `Mixing`: besides, each zone has a bowl of its own that is mixed by the same hands and lasts 15 minutes
/// until it is applied, and three looks.
enum class Family { Looks, Mixing };

/// The same coat each time it is asked for.
core::stagger::Question coat(Family family, std::size_t zones, std::size_t hands);

/// Heads that come in a quarter of an hour apart, each with such a coat of `Looks`; a basin for every two.
core::stagger::Question room(std::size_t heads, std::size_t zones, std::size_t hands);

/// Lets each zone be applied up to a minute quicker and two minutes slower than usual.
void makeUncertain(core::stagger::Question& question);

}  // namespace bench
