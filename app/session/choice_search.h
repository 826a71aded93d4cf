#pragma once

#include "app/session/background_work.h"
#include "app/session/session.h"

#include <QObject>
#include <QTimer>

namespace app::session {

/// What can be chosen where not every limit can hold: worked out when somebody asks, in a thread of
/// its own, and again when an answer has made it void. Chooses nothing by itself.
class ChoiceSearch : public QObject {
    Q_OBJECT

public:
    explicit ChoiceSearch(const Session& session, QObject* parent = nullptr);

    /// Works out what there is, for now.
    void open();
    void close();

    /// After every answer and every second.
    void follow();

    [[nodiscard]] bool isOpen() const { return m_open; }
    [[nodiscard]] bool isSearching() const { return m_work.isBusy(); }
    /// It has been searched for so long that somebody who waits should be told.
    [[nodiscard]] bool takesLong() const { return isSearching() && m_long; }

    [[nodiscard]] const std::vector<core::stagger::Choice>& choices() const { return m_choices; }
    /// The moment that the choices were worked out for.
    [[nodiscard]] core::measure::Instant asOf() const { return m_asOf; }

Q_SIGNALS:
    void changed();

private:
    void found(std::vector<core::stagger::Choice> choices);

    const Session& m_session;
    BackgroundWork m_work;
    QTimer m_patience;
    bool m_open = false;
    bool m_long = false;
    std::optional<RunId> m_run;  ///< And what was known of it when the search began.
    std::size_t m_facts = 0;
    core::measure::Instant m_asOf;
    std::vector<core::stagger::Choice> m_choices;
};

}  // namespace app::session
