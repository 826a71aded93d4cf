#pragma once

#include "app/storage/database.h"
#include "core/run/fact.h"

#include <cstdint>
#include <map>
#include <string>

namespace app::storage {

/// What was said in words with the facts of a run. It stands apart from them, each with a seal of its own.
class SaidWords {
public:
    static Database::Result<SaidWords> read(Database& database, session::RunId run);

    /// Gives `fact` its words, if `any` go with it; false where they are missing without having been erased,
    /// were changed, or stand there though none do.
    [[nodiscard]] bool goWith(bool any, core::run::Fact& fact) const;

private:
    explicit SaidWords(session::RunId run)
        : m_run{run}
    {
    }

    struct Row {
        std::string text;
        std::int64_t seal = 0;
    };
    session::RunId m_run;
    std::map<core::run::FactNumber, Row> m_rows;
    bool m_erased = false;
};

}  // namespace app::storage
