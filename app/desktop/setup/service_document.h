#pragma once

#include "core/service/check.h"
#include "core/service/service.h"

#include <QObject>
#include <QString>
#include <QUndoStack>

#include <functional>
#include <map>
#include <vector>

namespace app::desktop {

/// What Set-up works on: the services of one or several heads that are planned together, what is wrong
/// with them, and every change of them, to be undone one by one. One head is shown; what is asked and
/// changed without saying which is that head's.
///
/// The heads share one crew: whoever changes that of one changes that of all.
class ServiceDocument : public QObject {
    Q_OBJECT

public:
    using Service = core::service::Service;
    using Problems = std::vector<core::service::Problem>;

    /// A service, and where it was read from; empty for one that never was.
    struct Opened {
        Service service;
        QString path;
    };

    explicit ServiceDocument(QObject* parent = nullptr);
    ~ServiceDocument() override;

    [[nodiscard]] const Service& service() const { return m_now.services[m_now.shown]; }
    [[nodiscard]] const Problems& problems() const { return m_problems[m_now.shown]; }
    [[nodiscard]] QUndoStack& undoStack() { return m_undo; }

    [[nodiscard]] const std::vector<Service>& services() const { return m_now.services; }
    [[nodiscard]] std::size_t shownHead() const { return m_now.shown; }
    void showHead(std::size_t head);

    [[nodiscard]] const Problems& problemsOf(std::size_t head) const { return m_problems[head]; }
    /// Nothing is wrong with any head.
    [[nodiscard]] bool isSound() const;

    /// Where it was read from or written to; empty for one that never was.
    [[nodiscard]] const QString& path() const { return pathOf(m_now.shown); }
    [[nodiscard]] const QString& pathOf(std::size_t head) const;
    [[nodiscard]] bool isChanged() const;
    [[nodiscard]] bool isChanged(std::size_t head) const;

    /// Another service altogether; nothing of what was there before can be undone.
    void replace(Service service, QString path);
    /// The same with several heads, at least one. Their crew is the first that is named.
    void replaceAll(std::vector<Opened> opened);

    /// One more head, which is then shown. The crew stays what it is unless only the new one names any.
    void addHead(Opened opened);
    /// Not the last one that is there.
    void removeHead(std::size_t head);

    /// One change, called `name` in "Undo NAME". Changes one after the other with
    /// the same `merge` (above 0) are undone together. One that changes nothing is not kept.
    void edit(const QString& name, const std::function<void(Service&)>& change, int merge = 0);

    /// What all heads become, as one change, with the crew of the first.
    void editAll(const QString& name, std::vector<Service> services);

    /// It is on disk now, at `path`.
    void markSaved(QString path);

Q_SIGNALS:
    void changed();
    /// The path, or whether there is something to save.
    void stateChanged();
    /// Heads were opened or added.
    void headsCame();
    /// Of heads that were opened or added: a crew of its own that is not used, in words; empty where there is
    /// none.
    void crewLeftOut(const QString& why);

private:
    friend class ServiceEdit;

    struct State {
        std::vector<Service> services;
        std::vector<int> files;  ///< Where each is in `m_files`.
        std::size_t shown = 0;
    };
    /// What is on disk of a head. Not undone with the rest, for a file stays written.
    struct File {
        QString path;
        Service saved;
    };

    void set(State state);
    void push(const QString& name, State after, int merge = 0);
    int remember(const Opened& opened);
    [[nodiscard]] QString crewClash(const Service& here, const Service& there) const;

    State m_now;
    std::vector<Problems> m_problems;
    std::map<int, File> m_files;
    int m_nextFile = 0;
    QUndoStack m_undo;
};

}  // namespace app::desktop
