#pragma once

#include "core/service/service.h"

#include <QString>

/// Places of a head in words.
namespace app::desktop::place_words {

/// "Crown, roots".
QString name(core::service::Place place);

}  // namespace app::desktop::place_words
