#include "app/desktop/setup/service_document.h"

#include <QUndoCommand>

namespace app::desktop {

/// Keeps both services: they are small, and so an undo cannot go wrong.
class ServiceEdit final : public QUndoCommand {
public:
    ServiceEdit(ServiceDocument& document, const QString& name, ServiceDocument::Service after, int merge)
        : QUndoCommand{name}
        , m_document{document}
        , m_before{document.service()}
        , m_after{std::move(after)}
        , m_merge{merge}
    {
    }

    void undo() override { m_document.set(m_before); }
    void redo() override { m_document.set(m_after); }
    [[nodiscard]] int id() const override { return m_merge > 0 ? m_merge : -1; }

    bool mergeWith(const QUndoCommand* next) override
    {
        const auto* edit = dynamic_cast<const ServiceEdit*>(next);
        if (edit == nullptr || edit->text() != text())
            return false;
        m_after = edit->m_after;
        return true;
    }

private:
    ServiceDocument& m_document;
    ServiceDocument::Service m_before;
    ServiceDocument::Service m_after;
    int m_merge;
};

ServiceDocument::ServiceDocument(QObject* parent)
    : QObject{parent}
{
    connect(&m_undo, &QUndoStack::cleanChanged, this, &ServiceDocument::stateChanged);
    connect(&m_undo, &QUndoStack::indexChanged, this, &ServiceDocument::stateChanged);
}

/// A stack of undos that ends still tells of its index, to whoever is half gone already.
ServiceDocument::~ServiceDocument()
{
    m_undo.disconnect(this);
}

void ServiceDocument::replace(Service service, QString path)
{
    m_undo.clear();
    m_path = std::move(path);
    set(std::move(service));
    Q_EMIT stateChanged();
}

void ServiceDocument::edit(const QString& name, const std::function<void(Service&)>& change, int merge)
{
    Service after = m_service;
    change(after);
    if (after == m_service)
        return;
    m_undo.push(new ServiceEdit{*this, name, std::move(after), merge});
}

void ServiceDocument::markSaved(QString path)
{
    m_path = std::move(path);
    m_undo.setClean();
    Q_EMIT stateChanged();
}

void ServiceDocument::set(Service service)
{
    m_service = std::move(service);
    m_problems = core::service::checkService(m_service);
    Q_EMIT changed();
}

}  // namespace app::desktop
