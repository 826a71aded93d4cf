#pragma once

#include <QHeaderView>

namespace app::desktop {

/// The headings of a table's columns, and above them a line that says what a run of columns is about. The
/// line is there only where the model has such words.
class GroupedHeader : public QHeaderView {
    Q_OBJECT

public:
    /// What a column's group is called; the same words for each column of a run, empty for none.
    static constexpr int GroupRole = Qt::UserRole + 2;

    explicit GroupedHeader(QWidget* parent = nullptr);

    /// Of the line above the headings; 0 where no column is in a group.
    [[nodiscard]] int groupHeight() const;

    /// Where the group of this column stands: above as much of its columns as is in view, so that its name
    /// can be read also where its first columns were scrolled away.
    [[nodiscard]] QRect groupPlace(int column) const;

    void setModel(QAbstractItemModel* model) override;

protected:
    [[nodiscard]] QSize sectionSizeFromContents(int column) const override;
    void paintSection(QPainter* painter, const QRect& place, int column) const override;

private:
    struct Run {
        int first;
        int last;
    };
    [[nodiscard]] QString groupOf(int column) const;
    [[nodiscard]] Run runOf(int column) const;
    void paintGroup(QPainter& painter, const QRect& place, int column) const;
};

}  // namespace app::desktop
