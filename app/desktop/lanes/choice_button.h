#pragma once

#include "app/view/choices_view.h"

#include <QPushButton>

namespace app::desktop {

/// One choice: what is done, the key for it, and below that what it comes to. High enough for wet gloves.
class ChoiceButton : public QPushButton {
    Q_OBJECT

public:
    /// Its key is Alt and `number`, up to 9; further ones have none.
    explicit ChoiceButton(int number, QWidget* parent = nullptr);

    void showChoice(const view::ChoiceView& choice);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    int m_number;
    QString m_what;
    QString m_outcome;
};

}  // namespace app::desktop
