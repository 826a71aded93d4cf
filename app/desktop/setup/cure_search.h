#pragma once

#include "app/session/background_work.h"

#include "core/stagger/cures.h"

#include <QTimer>

#include <vector>

namespace app::desktop {

/// Looks for what would make a service fit, apart from the window.
class CureSearch : public QObject {
    Q_OBJECT

public:
    enum class Standing {
        Nothing,  ///< Nothing is looked for.
        Searching,
        SearchingLong,  ///< For more than half a second: worth a word.
        Found,          ///< All there is.
        OutOfTime,      ///< There may be more.
    };

    explicit CureSearch(QObject* parent = nullptr);

    /// `reason` is why `question` has no plan. Stops whatever is being looked for. What was found before, of
    /// the same services a minute ago, stays until it is found again.
    void ask(core::stagger::Question question, core::stagger::NoPlan reason);
    void forget();
    [[nodiscard]] bool isBusy() const { return m_work.isBusy(); }

    [[nodiscard]] Standing standing() const { return m_standing; }
    [[nodiscard]] const std::vector<core::stagger::Cure>& cures() const { return m_cures; }

Q_SIGNALS:
    void changed();

private:
    void stand(Standing standing);

    session::BackgroundWork m_work;
    QTimer m_patience;
    Standing m_standing = Standing::Nothing;
    std::vector<core::stagger::Cure> m_cures;
};

}  // namespace app::desktop
