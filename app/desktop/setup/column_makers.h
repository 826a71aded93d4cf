#pragma once

#include "app/desktop/setup/columns.h"
#include "app/desktop/setup/entry.h"
#include "app/desktop/words.h"

#include <optional>

/// Ready-made kinds of column, for columns.cpp.
namespace app::desktop::makers {

using core::measure::Seconds;
using edits::Service;

/// What the rows of each table are; constant where the service is.
auto& itemOf(auto& service, const CellPlace& at, const core::service::Zone*)
{
    return service.coats[at.coat].zones[at.row];
}
auto& itemOf(auto& service, const CellPlace& at, const core::service::Bowl*)
{
    return service.coats[at.coat].bowls[at.row];
}
auto& itemOf(auto& service, const CellPlace& at, const core::service::RinseGroup*)
{
    return service.coats[at.coat].groups[at.row];
}
auto& itemOf(auto& service, const CellPlace& at, const core::service::Coat*)
{
    return service.coats[at.row];
}
auto& itemOf(auto& service, const CellPlace& at, const core::service::Hands*)
{
    return service.crew.hands[at.row];
}

template <typename Item>
auto& item(auto& service, const CellPlace& at)
{
    return itemOf(service, at, static_cast<const Item*>(nullptr));
}

template <typename Item>
Column text(QString title, QString tip, std::string key, std::string Item::*field)
{
    const auto read = [field](const Service& service, const CellPlace& at) {
        return QString::fromStdString(item<Item>(service, at).*field);
    };
    const auto write = [field](Service& service, const CellPlace& at, const QString& entry) {
        item<Item>(service, at).*field = entry.trimmed().toStdString();
        return true;
    };
    return {std::move(title), std::move(tip), std::move(key), read, write, {}};
}

/// `field` answers with the length inside an item.
template <typename Item, typename Field>
Column length(QString title, QString tip, std::string key, Field field)
{
    const auto read = [field](const Service& service, const CellPlace& at) {
        Item copy = item<Item>(service, at);
        return words::minutes(field(copy));
    };
    const auto write = [field](Service& service, const CellPlace& at, const QString& entry) {
        const std::optional<Seconds> seconds = lengthOf(entry);
        if (seconds)
            field(item<Item>(service, at)) = *seconds;
        return seconds.has_value();
    };
    return {std::move(title), std::move(tip), std::move(key), read, write, {}};
}

/// The same for a length that need not be given.
template <typename Item>
Column optionalLength(QString title, QString tip, std::string key, std::optional<Seconds> Item::*field)
{
    const auto read = [field](const Service& service, const CellPlace& at) {
        const std::optional<Seconds>& seconds = item<Item>(service, at).*field;
        return seconds ? words::minutes(*seconds) : QString{};
    };
    const auto write = [field](Service& service, const CellPlace& at, const QString& entry) {
        const std::optional<Seconds> seconds = lengthOf(entry);
        if (!seconds && !entry.trimmed().isEmpty())
            return false;
        item<Item>(service, at).*field = seconds;
        return true;
    };
    return {std::move(title), std::move(tip), std::move(key), read, write, {}};
}

/// One of several; `read` and `write` deal in the place among them.
template <typename Read, typename Write>
Column choice(QString title, QString tip, std::string key, Column::Choices choices, Read place,
              Write setPlace)
{
    const auto read = [choices, place](const Service& service, const CellPlace& at) {
        return choices(service, at).value(static_cast<qsizetype>(place(service, at)));
    };
    const auto write = [choices, setPlace](Service& service, const CellPlace& at, const QString& entry) {
        const auto found = choices(service, at).indexOf(entry);
        if (found >= 0)
            setPlace(service, at, static_cast<std::size_t>(found));
        return found >= 0;
    };
    return {std::move(title), std::move(tip), std::move(key), read, write, choices};
}

}  // namespace app::desktop::makers
