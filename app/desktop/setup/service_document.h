#pragma once

#include "core/service/check.h"
#include "core/service/service.h"

#include <QObject>
#include <QString>
#include <QUndoStack>

#include <functional>
#include <vector>

namespace app::desktop {

/// The service that Set-up works on: what it is, what is wrong with it, and
/// every change of it, to be undone one by one.
class ServiceDocument : public QObject {
    Q_OBJECT

public:
    using Service = core::service::Service;

    explicit ServiceDocument(QObject* parent = nullptr);
    ~ServiceDocument() override;

    [[nodiscard]] const Service& service() const { return m_service; }
    [[nodiscard]] const std::vector<core::service::Problem>& problems() const { return m_problems; }
    [[nodiscard]] QUndoStack& undoStack() { return m_undo; }

    /// Where it was read from or written to; empty for one that never was.
    [[nodiscard]] const QString& path() const { return m_path; }
    [[nodiscard]] bool isChanged() const { return !m_undo.isClean(); }

    /// Another service altogether; nothing of the one before can be undone.
    void replace(Service service, QString path);

    /// One change, called `name` in "Undo NAME". Changes one after the other with
    /// the same `merge` (above 0) are undone together. One that changes nothing is not kept.
    void edit(const QString& name, const std::function<void(Service&)>& change, int merge = 0);

    /// It is on disk now, at `path`.
    void markSaved(QString path);

Q_SIGNALS:
    void changed();
    /// The path, or whether there is something to save.
    void stateChanged();

private:
    friend class ServiceEdit;
    void set(Service service);

    Service m_service;
    std::vector<core::service::Problem> m_problems;
    QString m_path;
    QUndoStack m_undo;
};

}  // namespace app::desktop
