#include "app/desktop/setup/service_document.h"

#include "app/desktop/sentences.h"
#include "app/view/lane_view.h"
#include "core/service/shared_crew.h"

#include <QUndoCommand>

#include <algorithm>

namespace app::desktop {

/// Keeps all services before and after: they are small, and so an undo cannot go wrong.
class ServiceEdit final : public QUndoCommand {
public:
    ServiceEdit(ServiceDocument& document, const QString& name, ServiceDocument::State after, int merge)
        : QUndoCommand{name}
        , m_document{document}
        , m_before{document.m_now}
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
        if (edit == nullptr || edit->text() != text() || edit->m_after.shown != m_after.shown)
            return false;
        m_after = edit->m_after;
        return true;
    }

private:
    ServiceDocument& m_document;
    ServiceDocument::State m_before;
    ServiceDocument::State m_after;
    int m_merge;
};

ServiceDocument::ServiceDocument(QObject* parent)
    : QObject{parent}
    , m_now{.services = {Service{}}, .files = {0}}
    , m_problems(1)
    , m_files{{0, {}}}
    , m_nextFile{1}
{
    connect(&m_undo, &QUndoStack::indexChanged, this, &ServiceDocument::stateChanged);
}

/// A stack of undos that ends still tells of its index, to whoever is half gone already.
ServiceDocument::~ServiceDocument()
{
    m_undo.disconnect(this);
}

bool ServiceDocument::isSound() const
{
    return std::ranges::all_of(m_problems, &Problems::empty);
}

const QString& ServiceDocument::pathOf(std::size_t head) const
{
    return m_files.at(m_now.files[head]).path;
}

bool ServiceDocument::isChanged(std::size_t head) const
{
    return m_now.services[head] != m_files.at(m_now.files[head]).saved;
}

bool ServiceDocument::isChanged() const
{
    for (std::size_t head = 0; head < m_now.services.size(); ++head)
        if (isChanged(head))
            return true;
    return false;
}

void ServiceDocument::showHead(std::size_t head)
{
    if (head == m_now.shown || head >= m_now.services.size())
        return;
    m_now.shown = head;
    Q_EMIT changed();
    Q_EMIT stateChanged();
}

int ServiceDocument::remember(const Opened& opened)
{
    m_files[m_nextFile] = {opened.path, opened.service};
    return m_nextFile++;
}

void ServiceDocument::replace(Service service, QString path)
{
    std::vector<Opened> one;
    one.push_back({std::move(service), std::move(path)});
    replaceAll(std::move(one));
}

void ServiceDocument::replaceAll(std::vector<Opened> opened)
{
    m_undo.clear();
    m_files.clear();
    State state;
    for (const Opened& one : opened)
        state.services.push_back(one.service);
    const std::size_t whose = core::service::whoseCrew(state.services);
    const core::service::Crew crew = state.services[whose].crew;
    QString left;
    for (std::size_t head = 0; head < opened.size(); ++head) {
        if (left.isEmpty())
            left = crewClash(state.services[head], state.services[whose]);
        opened[head].service.crew = crew;
        state.files.push_back(remember(opened[head]));
    }
    for (Service& service : state.services)
        service.crew = crew;
    set(std::move(state));
    Q_EMIT crewLeftOut(left);
    Q_EMIT headsCame();
}

void ServiceDocument::addHead(Opened opened)
{
    State after = m_now;
    const QString left = crewClash(opened.service, service());
    if (core::service::namesNoCrew(service().crew))
        for (Service& service : after.services)
            service.crew = opened.service.crew;
    opened.service.crew = after.services.front().crew;
    after.services.push_back(opened.service);
    after.files.push_back(remember(opened));
    after.shown = after.services.size() - 1;
    const QString name = QString::fromStdString(view::headOf(after.services, after.shown));
    push(tr("adding %1").arg(name), std::move(after));
    Q_EMIT crewLeftOut(left);
    Q_EMIT headsCame();
}

void ServiceDocument::removeHead(std::size_t head)
{
    if (m_now.services.size() < 2 || head >= m_now.services.size())
        return;
    State after = m_now;
    const QString name = QString::fromStdString(view::headOf(after.services, head));
    const auto place = static_cast<std::ptrdiff_t>(head);
    after.services.erase(after.services.begin() + place);
    after.files.erase(after.files.begin() + place);
    after.shown = std::min(after.shown > head ? after.shown - 1 : after.shown, after.services.size() - 1);
    push(tr("removing %1").arg(name), std::move(after));
}

void ServiceDocument::edit(const QString& name, const std::function<void(Service&)>& change, int merge)
{
    State after = m_now;
    Service& edited = after.services[after.shown];
    change(edited);
    if (edited == service())
        return;
    const core::service::Crew crew = edited.crew;
    for (Service& service : after.services)
        service.crew = crew;
    push(name, std::move(after), merge);
}

void ServiceDocument::editAll(const QString& name, std::vector<Service> services)
{
    if (services.size() != m_now.services.size())
        return;
    for (Service& service : services)
        service.crew = services.front().crew;
    if (services == m_now.services)
        return;
    State after = m_now;
    after.services = std::move(services);
    push(name, std::move(after));
}

void ServiceDocument::push(const QString& name, State after, int merge)
{
    m_undo.push(new ServiceEdit{*this, name, std::move(after), merge});
}

void ServiceDocument::markSaved(QString path)
{
    m_files[m_now.files[m_now.shown]] = {std::move(path), service()};
    Q_EMIT stateChanged();
}

void ServiceDocument::set(State state)
{
    m_now = std::move(state);
    m_problems.clear();
    for (const Service& service : m_now.services)
        m_problems.push_back(core::service::checkService(service));
    Q_EMIT changed();
    Q_EMIT stateChanged();
}

/// Why `here` does not bring its own crew to `there`; empty where nothing is lost.
QString ServiceDocument::crewClash(const Service& here, const Service& there) const
{
    using namespace core::service;
    if (namesNoCrew(here.crew) || namesNoCrew(there.crew))
        return {};
    const core::measure::Sentence difference = crewDifference(here.crew, there.crew);
    if (difference.empty())
        return {};
    return tr("Heads that are planned together share one crew: that of %1 is kept, not that of %2 (%3).")
        .arg(QString::fromStdString(there.name), QString::fromStdString(here.name), inWords(difference));
}

}  // namespace app::desktop
