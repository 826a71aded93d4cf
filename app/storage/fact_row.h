#pragma once

#include "app/storage/database.h"
#include "core/run/fact.h"

#include <cstdint>
#include <optional>

namespace app::storage {

/// A fact as a row of the journal, and its seal: a sum over the row and the seal
/// of the row before it. SQLite's own check sees damaged pages but not a changed
/// value or a row that is missing; the chain of seals sees both.
class FactRow {
public:
    FactRow(session::RunId run, const core::run::Fact& fact, std::int64_t sealBefore);

    [[nodiscard]] Database::Result<void> insert(Database& database) const;
    [[nodiscard]] std::int64_t seal() const { return m_seal; }

    /// The columns that `read` expects, in order.
    static constexpr const char* columns =
        "number, kind, task, about, happened, recorded, verdict, again, seal, revision";

    /// The fact of the row that `statement` stands at; nothing if it makes no sense.
    static std::optional<core::run::Fact> read(const Statement& statement);
    static std::int64_t sealOf(const Statement& statement) { return statement.number(8); }

private:
    session::RunId m_run;
    core::run::Fact m_fact;
    std::int64_t m_seal;
};

}  // namespace app::storage
