#pragma once

#include <QPushButton>

namespace app::desktop {

/// What is done when it is pressed, and below that what it comes to. As high as its words.
class OutcomeButton : public QPushButton {
    Q_OBJECT

public:
    explicit OutcomeButton(QWidget* parent = nullptr);

    /// What the key is, is shown behind `what` and not read out.
    void showWords(const QString& what, const QString& outcome, const QKeySequence& key = {});

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString m_what;
    QString m_outcome;
};

}  // namespace app::desktop
