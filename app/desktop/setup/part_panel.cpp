#include "app/desktop/setup/part_panel.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/setup/cell_delegate.h"
#include "app/desktop/setup/grouped_header.h"
#include "app/desktop/setup/table_access.h"
#include "app/desktop/words.h"
#include "app/view/lane_view.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace app::desktop {
namespace {

QString objectNameOf(edits::Part part)
{
    switch (part) {
    case edits::Part::Zones: return QStringLiteral("zones");
    case edits::Part::Bowls: return QStringLiteral("bowls");
    case edits::Part::Groups: return QStringLiteral("groups");
    case edits::Part::Coats: return QStringLiteral("coatTable");
    case edits::Part::Hands: return QStringLiteral("hands");
    }
    return {};
}

}  // namespace

PartPanel::PartPanel(const Theme& theme, ServiceDocument& document, edits::Part part, const Moments& moments,
                     QWidget* parent)
    : QWidget{parent}
    , m_document{document}
    , m_table{document, part, moments}
    , m_view{new QTableView}
    , m_wrong{new QLabel}
{
    TableAccess::install();
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, metrics::gapSmall, 0, 0);
    layout->setSpacing(metrics::gapTiny);
    layout->addWidget(m_view, 1);
    m_view->setItemDelegate(new CellDelegate{theme, m_view});
    makeTable();
    makeButtons(theme);
    connect(&m_table, &PartTable::refused, m_wrong, &QLabel::setText);
    connect(&m_document, &ServiceDocument::changed, this, &PartPanel::followCursor);
    connect(&m_document, &ServiceDocument::changed, this, &PartPanel::followName);
    followCursor();
    followName();
}

/// Heard without the tabs around it, one table is as good as another.
void PartPanel::followName()
{
    const auto& coats = m_document.service().coats;
    const std::size_t coat = m_table.coat();
    QStringList names{nameOfPart(coat + 1)};
    const bool ofCoat = m_table.part() != edits::Part::Coats && m_table.part() != edits::Part::Hands;
    if (ofCoat && coat < coats.size() && !coats[coat].name.empty())
        names << QString::fromStdString(coats[coat].name);
    m_view->setAccessibleName(words::ofHead(view::headOf(m_document.services(), m_document.shownHead()),
                                            names.join(QStringLiteral(", "))));
}

QString PartPanel::nameOfPart(std::size_t coat) const
{
    switch (m_table.part()) {
    case edits::Part::Zones: return tr("Zones of coat %1").arg(coat);
    case edits::Part::Bowls: return tr("Bowls of coat %1").arg(coat);
    case edits::Part::Groups: return tr("Rinse groups of coat %1").arg(coat);
    case edits::Part::Coats: return tr("Coats and their drying");
    case edits::Part::Hands: return tr("Pairs of hands");
    }
    return {};
}

void PartPanel::makeTable()
{
    auto* header = new GroupedHeader{m_view};
    m_view->setHorizontalHeader(header);
    m_view->setModel(&m_table);
    m_view->setObjectName(objectNameOf(m_table.part()));
    m_view->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::SelectedClicked
                            | QAbstractItemView::AnyKeyPressed);
    m_view->installEventFilter(this);
    m_view->setSelectionMode(QAbstractItemView::SingleSelection);
    m_view->setTabKeyNavigation(true);
    m_view->verticalHeader()->setDefaultSectionSize(Theme::scaled(29));
    m_view->verticalHeader()->hide();
    header->setSectionsClickable(true);
    header->setSectionResizeMode(QHeaderView::ResizeToContents);
    header->setStretchLastSection(true);
    header->setHighlightSections(false);
    // The page of large text scrolls anyhow.
    constexpr int threeRows = 134;
    constexpr int fourRows = 163;
    m_view->setMinimumHeight(Theme::scaled(Theme::textIsLarge() ? fourRows : threeRows)
                             + header->groupHeight());
    connect(m_view->selectionModel(), &QItemSelectionModel::currentChanged, this, &PartPanel::followCursor);
    connect(m_view->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& cell) {
                if (cell.isValid())
                    Q_EMIT rowChosen(static_cast<std::size_t>(cell.row()));
            });
    connect(&m_table, &QAbstractItemModel::modelReset, this, &PartPanel::followCursor);
}

QPushButton* PartPanel::makeButton(const Theme& theme, const QString& icon, const QString& name,
                                   const QString& object)
{
    auto* button = new QPushButton{name};
    button->setIcon(theme.icon(icon));
    button->setObjectName(objectNameOf(m_table.part()) + object);
    button->setFocusPolicy(Qt::StrongFocus);
    connect(&theme, &Theme::changed, button, [&theme, button, icon] { button->setIcon(theme.icon(icon)); });
    return button;
}

void PartPanel::makeButtons(const Theme& theme)
{
    auto* row = new QHBoxLayout;
    row->setSpacing(metrics::gapSmall);
    auto* add = makeButton(theme, QStringLiteral("add"), tr("Add"), QStringLiteral("Add"));
    m_remove = makeButton(theme, QStringLiteral("remove"), tr("Remove"), QStringLiteral("Remove"));
    m_up = makeButton(theme, QStringLiteral("up"), tr("Up"), QStringLiteral("Up"));
    m_down = makeButton(theme, QStringLiteral("down"), tr("Down"), QStringLiteral("Down"));
    for (QPushButton* button : {add, m_remove, m_up, m_down})
        row->addWidget(button);
    m_wrong->setProperty("role", QStringLiteral("wrong"));
    m_wrong->setObjectName(objectNameOf(m_table.part()) + QStringLiteral("Wrong"));
    m_wrong->setWordWrap(true);
    m_wrong->setTextFormat(Qt::PlainText);
    row->addWidget(m_wrong, 1);
    static_cast<QVBoxLayout*>(layout())->addLayout(row);
    connect(add, &QPushButton::clicked, this, &PartPanel::addRow);
    connect(m_remove, &QPushButton::clicked, this, &PartPanel::removeRow);
    connect(m_up, &QPushButton::clicked, this, [this] { moveRow(-1); });
    connect(m_down, &QPushButton::clicked, this, [this] { moveRow(1); });
}

void PartPanel::showCoat(std::size_t coat)
{
    m_table.showCoat(coat);
    followCursor();
    followName();
}

bool PartPanel::goTo(const std::string& place)
{
    const QModelIndex cell = m_table.cellOf(place);
    if (!cell.isValid())
        return false;
    m_view->setCurrentIndex(cell);
    m_view->scrollTo(cell);
    m_view->setFocus();
    return true;
}

void PartPanel::chooseRow(std::size_t row)
{
    const int column = std::max(0, m_view->currentIndex().column());
    if (m_view->currentIndex().row() != static_cast<int>(row))
        m_view->setCurrentIndex(m_table.index(static_cast<int>(row), column));
}

/// Enter opens the cell, as it ends typing in it.
bool PartPanel::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::KeyPress) {
        const auto* press = static_cast<QKeyEvent*>(event);
        const bool opens = press->key() == Qt::Key_Return || press->key() == Qt::Key_Enter;
        if (opens && press->modifiers() == Qt::NoModifier && m_view->currentIndex().isValid()) {
            m_view->edit(m_view->currentIndex());
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

QString PartPanel::rowName(int row) const
{
    return m_table.index(row, 0).data().toString();
}

void PartPanel::addRow()
{
    m_document.edit(tr("adding a row"),
                    [this](auto& service) { edits::add(service, m_table.coat(), m_table.part()); });
    m_view->setCurrentIndex(m_table.index(m_table.rowCount() - 1, 0));
    m_view->setFocus();
}

void PartPanel::removeRow()
{
    const int row = m_view->currentIndex().row();
    const auto place = static_cast<std::size_t>(row);
    if (row < 0 || !edits::mayRemove(m_document.service(), m_table.coat(), m_table.part(), place))
        return;
    m_document.edit(tr("removing %1").arg(rowName(row)),
                    [&](auto& service) { edits::remove(service, m_table.coat(), m_table.part(), place); });
    m_view->setCurrentIndex(m_table.index(std::min(row, m_table.rowCount() - 1), 0));
}

void PartPanel::moveRow(int direction)
{
    const QModelIndex cell = m_view->currentIndex();
    const int other = cell.row() + direction;
    if (!cell.isValid() || other < 0 || other >= m_table.rowCount())
        return;
    const auto upper = static_cast<std::size_t>(std::min(cell.row(), other));
    m_document.edit(tr("moving %1").arg(rowName(cell.row())),
                    [&](auto& service) { edits::swapDown(service, m_table.coat(), m_table.part(), upper); });
    m_view->setCurrentIndex(m_table.index(other, cell.column()));
}

void PartPanel::followCursor()
{
    const QModelIndex cell = m_view->currentIndex();
    const bool valid = cell.isValid();
    m_wrong->setText(valid ? m_table.wrongAt(cell) : QString{});
    m_up->setEnabled(valid && cell.row() > 0);
    m_down->setEnabled(valid && cell.row() + 1 < m_table.rowCount());
    m_remove->setEnabled(valid
                         && edits::mayRemove(m_document.service(), m_table.coat(), m_table.part(),
                                             static_cast<std::size_t>(cell.row())));
}

}  // namespace app::desktop
