#pragma once

#include "tests/oracle/gecode_model.h"
#include "tests/oracle/gecode_rows.h"
#include "tests/oracle/order.h"

#include <gecode/int.hh>
#include <gecode/minimodel.hh>

#include <map>
#include <memory>
#include <utility>
#include <vector>

namespace oracle {

/// The constraints on the rows of a question. What is best is a list of numbers, each to be made least in
/// turn: harm, waste, staleness, then the starts in the order of the rows.
class GecodeSpace : public Gecode::Space {
public:
    GecodeSpace(const Rows& rows, GecodeOptions::First first);
    GecodeSpace(GecodeSpace& other);
    Gecode::Space* copy() override { return new GecodeSpace{*this}; }
    void constrain(const Gecode::Space& best) override;

    /// From here on the number at `stage` is made less.
    void minimise(int stage) { m_stage = stage; }
    [[nodiscard]] int valueAt(int stage) const { return m_aims[stage].val(); }
    void fix(int stage, int value) { Gecode::rel(*this, m_aims[stage] == value); }
    void keepAtLeast(int stage, int value) { Gecode::rel(*this, m_aims[stage] >= value); }
    void keepAtMost(int stage, int value) { Gecode::rel(*this, m_aims[stage] <= value); }

    [[nodiscard]] bool isDone(int row) const { return m_done[row].val() == 1; }
    [[nodiscard]] Units start(int row) const { return m_start[row].val(); }

    /// Only where lengths are uncertain: the plan with its hands and basins, and how gaps between coats are
    /// kept.
    [[nodiscard]] PlanData plan() const;
    [[nodiscard]] Order gaps() const;
    /// No plan that has all of `order`.
    void ruleOut(const Order& order);
    /// Every plan that has all of `order` keeps `lag`, between points of `points`.
    void demand(const Order& order, const Points& points, const core::temporal::Lag& lag);

private:
    using Expression = Gecode::LinIntExpr;

    [[nodiscard]] int count() const { return static_cast<int>(m_rows->rows().size()); }
    [[nodiscard]] const Row& row(int place) const { return m_rows->rows()[static_cast<std::size_t>(place)]; }
    [[nodiscard]] bool takesHands(int place) const
    {
        return row(place).length > 0 && row(place).state != core::stagger::TaskState::Done;
    }
    [[nodiscard]] bool isOpen(int place) const { return row(place).isOpen(); }
    /// Otherwise no rule binds them to each other.
    [[nodiscard]] bool anyOpen(int a, int b) const { return isOpen(a) || isOpen(b); }
    [[nodiscard]] bool isLook(int place) const { return row(place).id.kind == core::stagger::TaskKind::Look; }
    /// Whether `first` is over when `second` starts; the same Boolean for the same pair.
    Gecode::BoolVar before(int first, int second);
    Gecode::BoolVar sameHands(int a, int b);
    [[nodiscard]] Expression end(int place) const;
    [[nodiscard]] Expression clockStart(int apply) const;
    [[nodiscard]] Expression water(int apply) const;
    [[nodiscard]] int rinseOf(int apply) const;
    [[nodiscard]] int mixOf(int apply) const;
    [[nodiscard]] int find(const Row& beside, core::stagger::TaskKind kind, std::size_t item) const;
    [[nodiscard]] std::vector<int> rowsOf(std::size_t head, std::size_t coat,
                                          core::stagger::TaskKind kind) const;

    void postBowls();
    void postPotLife(int apply);
    void postWindows();
    void postHarm(int apply);
    void postLooks();
    void postDue(int look, int apply);
    void postMadeWhile(int look, int apply);
    void postGoesOnWhile(int look);
    void postLateJobs();
    void postAfter();
    void postKinds();
    void postAway();
    void postOneAtATime();
    void postPair(int a, int b);
    void postWhoIsAtWork();
    Gecode::BoolExpr goesOnWhile(int look);
    void postBasins();
    void postBasinFree(int rinse);
    void postCoats();
    void postCoat(std::size_t head, std::size_t coat);
    void postFinish(std::size_t head, std::size_t coat, const Gecode::IntVar& over);
    void postFacts();
    void postBounds();
    void postAims();
    Gecode::IntVar waste(std::size_t head);
    void postBasinNumbers();
    void postGaps();
    void postGap(std::size_t head, std::size_t coat);
    void postBranching(GecodeOptions::First first);
    void postPushed();

    // What an order is made of, after the model is posted.
    Gecode::BoolVar has(const Choice& choice);
    Gecode::BoolVar hasBefore(int first, int second);
    Gecode::BoolVar hasAll(const Order& order);
    Gecode::BoolVar byOneHands(int a, int b);
    [[nodiscard]] bool excludedByHead(int a, int b) const;
    [[nodiscard]] Expression at(const Points& points, core::temporal::Point point) const;

    const Rows* m_rows;
    int m_stage = 0;
    Gecode::IntVarArray m_start;
    Gecode::IntVarArray m_hands;
    Gecode::BoolVarArray m_done;  ///< All but the looks that are not due.
    Gecode::IntVarArray m_aims;
    Gecode::IntVarArray m_basins;   ///< For each row. Empty unless lengths are uncertain and basins few.
    Gecode::IntVarArray m_gapEnds;  ///< For each gap of the rows where lengths are uncertain: two rows.

    /// What constraints are written with. A copy has none: nothing is posted to it.
    struct Posting {
        std::map<std::pair<int, int>, Gecode::BoolVar> before;
        std::map<std::pair<int, int>, Gecode::BoolVar> same;
        std::map<std::pair<int, int>, Gecode::BoolVar> started;    ///< Look, application that began sooner.
        std::map<std::pair<int, int>, Gecode::BoolVar> madeWhile;  ///< Look, application.
        std::map<int, Gecode::BoolVar> glances;                    ///< Look.
        std::map<std::pair<std::size_t, std::size_t>, Gecode::IntVar> coatOver;
        Gecode::BoolVarArgs choices;
        Gecode::IntVarArgs deviations;
        Gecode::IntVarArgs harms;
    };
    std::unique_ptr<Posting> m_posting;
};

}  // namespace oracle
