#include "app/storage/said_words.h"

#include "app/storage/fact_row.h"

namespace app::storage {

using core::run::Fact;
using core::run::FactNumber;

Database::Result<SaidWords> SaidWords::read(Database& database, session::RunId run)
{
    SaidWords words{run};
    Statement rows{database, "SELECT fact, words, seal FROM said WHERE run = ?"};
    rows.bind(1, static_cast<std::int64_t>(run));
    auto more = rows.step();
    for (; more && *more; more = rows.step())
        words.m_rows[FactNumber{rows.number(0)}] = {rows.text(1), rows.number(2)};
    if (!more)
        return tl::unexpected{more.error()};
    // Words are erased together with the services, and never without.
    Statement services{database, "SELECT count(*) FROM service WHERE run = ?"};
    services.bind(1, static_cast<std::int64_t>(run));
    const auto any = services.step();
    if (!any)
        return tl::unexpected{any.error()};
    words.m_erased = services.number(0) == 0;
    return words;
}

bool SaidWords::goWith(bool any, Fact& fact) const
{
    const auto row = m_rows.find(fact.number);
    if (row == m_rows.end())
        return !any || m_erased;
    fact.tone = row->second.text;
    return any && FactRow::sealOfWords(m_run, fact.number, fact.tone) == row->second.seal;
}

}  // namespace app::storage
