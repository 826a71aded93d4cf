#pragma once

#include "app/desktop/setup/background_planner.h"
#include "app/session/background_work.h"
#include "app/view/strand_picture.h"
#include "core/stagger/start_range.h"

#include <QObject>

#include <optional>

namespace app::desktop {

/// A start of one zone that is tried out: the plan that would come of it, and how far it can go. All of it is
/// worked out apart from the window; nothing of the document is changed.
class StartWish : public QObject {
    Q_OBJECT

public:
    using Instant = core::measure::Instant;

    explicit StartWish(QObject* parent = nullptr);

    /// What is planned, from which starts are tried out. Ends what was being tried.
    void setPlan(core::stagger::Question question, core::stagger::Plan plan);
    void forgetPlan();

    /// Tries out so many minutes later than planned. Begins with `zone`, an application of the plan, if
    /// another one or none was tried until then; a start past what is known to fit is the last that does.
    void tryOut(const view::TaskId& zone, int minutes);
    /// The plan is as it was.
    void letGo();

    [[nodiscard]] bool isOn() const { return m_zone.has_value(); }
    /// Something of it is being worked out.
    [[nodiscard]] bool isBusy() const { return m_planner.isBusy() || m_ranges.isBusy(); }
    [[nodiscard]] const std::optional<view::TaskId>& zone() const { return m_zone; }
    [[nodiscard]] int minutes() const { return m_minutes; }

    /// What would be asked for; nothing where the zone is to start whenever is best.
    [[nodiscard]] std::optional<Instant> wanted() const;
    /// The same, or where the zone starts then.
    [[nodiscard]] Instant moment() const;
    /// Another wish than the one that is planned already, if any.
    [[nodiscard]] bool isNews() const;

    /// In minutes later than planned, below 0 where a start was wanted already. Absent while it is not known,
    /// and at its end where nothing sets a limit.
    [[nodiscard]] std::optional<int> least() const;
    [[nodiscard]] std::optional<int> most() const;
    [[nodiscard]] const std::optional<core::stagger::StartRange>& range() const { return m_range; }
    /// Whether it was to go further than it can.
    enum class Stopped { No, AtEarliest, AtLatest };
    [[nodiscard]] Stopped stopped() const { return m_stopped; }

    /// What comes of what is tried out; nothing while that is worked out.
    [[nodiscard]] const std::optional<BackgroundPlanner::Outcome>& outcome() const { return m_outcome; }
    /// The last plan that came of it, to be shown until the next is there.
    [[nodiscard]] const core::stagger::Plan& shown() const { return m_shown ? *m_shown : *m_plan; }
    [[nodiscard]] const core::stagger::Plan& planned() const { return *m_plan; }

Q_SIGNALS:
    void changed();

private:
    void begin(const view::TaskId& zone);
    void ask();
    void take(const BackgroundPlanner::Outcome& outcome);
    void findRange();
    void takeRange(const std::optional<core::stagger::StartRange>& range);
    [[nodiscard]] int bounded(int minutes) const;
    [[nodiscard]] std::optional<Instant> asked() const;

    BackgroundPlanner m_planner;
    session::BackgroundWork m_ranges;
    core::stagger::Question m_question;
    std::optional<core::stagger::Plan> m_plan;
    std::optional<view::TaskId> m_zone;
    Instant m_start;  ///< Where it is planned.
    int m_minutes = 0;
    Stopped m_stopped = Stopped::No;
    std::optional<core::stagger::StartRange> m_range;
    std::optional<BackgroundPlanner::Outcome> m_outcome;
    std::optional<core::stagger::Plan> m_shown;
};

}  // namespace app::desktop
