#pragma once

#include <QLayout>

#include <memory>
#include <vector>

namespace app::desktop {

/// Side by side like a row of text, with as many lines as the width asks for. What can grow takes the rest of
/// its line; where nothing can, the line begins at the left.
class FlowLayout : public QLayout {
    Q_OBJECT

public:
    explicit FlowLayout(QWidget* parent = nullptr);

    void addItem(QLayoutItem* item) override;
    /// A label and its field, which stay together.
    void addPair(QWidget* label, QWidget* field);

    [[nodiscard]] int count() const override { return static_cast<int>(m_items.size()); }
    [[nodiscard]] QLayoutItem* itemAt(int place) const override;
    QLayoutItem* takeAt(int place) override;
    [[nodiscard]] Qt::Orientations expandingDirections() const override { return Qt::Horizontal; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    /// As wide as the widest item, and as high as one line: the rest depends on the width.
    [[nodiscard]] QSize minimumSize() const override;
    void setGeometry(const QRect& rect) override;

private:
    struct Part {
        QLayoutItem* item;
        int width;
    };
    using Line = std::vector<Part>;
    [[nodiscard]] std::vector<Line> linesFor(int width) const;
    void leaveNoneAlone(std::vector<Line>& lines, int width) const;
    void stretch(Line& line, int width) const;
    static int heightOf(const Line& line);

    std::vector<std::unique_ptr<QLayoutItem>> m_items;
};

}  // namespace app::desktop
