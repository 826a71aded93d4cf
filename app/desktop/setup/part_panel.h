#pragma once

#include "app/desktop/setup/part_table.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QTableView;

namespace app::desktop {

class Theme;

/// A table of one list, with what adds, removes and moves its rows, and a line
/// that says what is wrong with the cell the cursor is on.
class PartPanel : public QWidget {
    Q_OBJECT

public:
    PartPanel(const Theme& theme, ServiceDocument& document, edits::Part part, const Moments& moments,
              QWidget* parent = nullptr);

    void showCoat(std::size_t coat);

    /// Goes to the cell a problem's place points at. False where it is none of this table.
    bool goTo(const std::string& place);

    [[nodiscard]] QTableView* table() const { return m_view; }

    /// Puts the cursor on this row, and the keyboard nowhere else than it is.
    void chooseRow(std::size_t row);

Q_SIGNALS:
    /// The cursor came to another row.
    void rowChosen(std::size_t row);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void makeTable();
    void makeButtons(const Theme& theme);
    QPushButton* makeButton(const Theme& theme, const QString& icon, const QString& name,
                            const QString& object);
    void addRow();
    void removeRow();
    void moveRow(int direction);
    void followCursor();
    void followName();
    [[nodiscard]] QString nameOfPart(std::size_t coat) const;
    [[nodiscard]] QString rowName(int row) const;

    ServiceDocument& m_document;
    PartTable m_table;
    QTableView* m_view;
    QLabel* m_wrong;
    QPushButton* m_remove = nullptr;
    QPushButton* m_up = nullptr;
    QPushButton* m_down = nullptr;
};

}  // namespace app::desktop
