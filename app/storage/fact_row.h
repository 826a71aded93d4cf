#pragma once

#include "app/storage/database.h"
#include "core/run/fact.h"

#include <cstdint>
#include <optional>

namespace app::storage {

/// A fact as a row of the journal, and its seal: a sum over the row and the seal
/// of the row before it. SQLite's own check sees damaged pages but not a changed
/// value or a row that is missing; the chain of seals sees both. Words that go with a
/// fact stand in a row of their own, with a seal of their own, so that they can be erased.
class FactRow {
public:
    /// A fact that is to be written.
    FactRow(session::RunId run, const core::run::Fact& fact, std::int64_t sealBefore);

    /// One that was read, with or without its words.
    FactRow(session::RunId run, const core::run::Fact& fact, bool hasWords, std::int64_t sealBefore);

    /// With its words.
    [[nodiscard]] Database::Result<void> insert(Database& database) const;
    [[nodiscard]] std::int64_t seal() const { return m_seal; }

    /// The columns that `read` expects, in order.
    static constexpr const char* columns =
        "number, kind, task, about, happened, recorded, verdict, again, seal, revision, words, outcome";

    /// The fact of the row that `statement` stands at, without its words; nothing if it makes no sense.
    static std::optional<core::run::Fact> read(const Statement& statement);
    static std::int64_t sealOf(const Statement& statement) { return statement.number(8); }
    /// Whether words go with it.
    static bool hasWords(const Statement& statement) { return statement.number(10) != 0; }

    /// The seal of the words of a fact.
    static std::int64_t sealOfWords(session::RunId run, core::run::FactNumber fact, const std::string& words);

private:
    [[nodiscard]] Database::Result<void> insertWords(Database& database) const;

    session::RunId m_run;
    core::run::Fact m_fact;
    bool m_hasWords;
    std::int64_t m_seal;
};

}  // namespace app::storage
