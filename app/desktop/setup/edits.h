#pragma once

#include "core/service/service.h"

#include <cstddef>
#include <vector>

/// Changes to a service as Set-up makes them. Each keeps every reference
/// (a zone's bowl, group and what it comes after) at the thing it meant.
namespace app::desktop::edits {

using core::service::Coat;
using core::service::Service;

/// The lists of a service that Set-up shows as tables. Zones, bowls and
/// groups belong to a coat.
enum class Part { Zones, Bowls, Groups, Coats, Hands };

std::size_t count(const Service& service, std::size_t coat, Part part);

/// Adds one with usual values at the end.
void add(Service& service, std::size_t coat, Part part);

/// Whether the one at `row` may go: the last of its kind stays, and so does a bowl or group that is in use.
bool mayRemove(const Service& service, std::size_t coat, Part part, std::size_t row);

/// Only where it may go.
void remove(Service& service, std::size_t coat, Part part, std::size_t row);

/// Swaps `row` with the one below it.
void swapDown(Service& service, std::size_t coat, Part part, std::size_t row);

/// One head, one coat, one zone: something to begin with. Its times are common
/// practice, no source; the product's leaflet replaces them.
Service blankService();

}  // namespace app::desktop::edits
