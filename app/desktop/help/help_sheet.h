#pragma once

#include "app/desktop/help/help_text.h"

#include <QFrame>
#include <QPointer>

#include <functional>

class QBoxLayout;
class QGridLayout;
class QLabel;
class QScrollArea;

namespace app::desktop {

class Theme;

/// The help of one page, in a place that the page gives it: it never covers anything, and the keyboard stays
/// where it is. F1 opens and closes it, Esc closes it, PgDn and PgUp read on.
class HelpSheet : public QFrame {
    Q_OBJECT

public:
    HelpSheet(const Theme& theme, HelpFor page, QWidget* parent = nullptr);

    /// The keys are read from the window's parts each time, so it must be in its window by then.
    void open();
    void close();
    void toggle() { isHidden() ? open() : close(); }

    /// In a window that has no menu for it: F1 opens and closes it there, and `arrange` follows each.
    void openByKey(QWidget& window, const std::function<void()>& arrange);

    /// Below it nothing could be read in it.
    [[nodiscard]] static int leastHeight();
    /// From it on it is read with ease.
    [[nodiscard]] static int easyHeight();
    /// So high that nothing has to be scrolled.
    [[nodiscard]] int wholeHeight(int width);

    /// Beside `rest` where `least` of `width` is left to that, else in its place.
    void share(QWidget& rest, int width, int least);

Q_SIGNALS:
    void closed();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QWidget* makeHead(const QString& title);
    QWidget* makeWords(const std::vector<QString>& paragraphs);
    QWidget* makeShapes(const std::vector<HelpText::Shape>& shapes);
    QWidget* makeKeys();
    void fillKeys();
    void makeScrollKeys();
    void arrange(int width);

    const Theme& m_theme;
    HelpText m_text;
    QScrollArea* m_scroll;
    QBoxLayout* m_columns = nullptr;
    std::vector<QLabel*> m_keys;  ///< A label a line, in the order of the text.
    QPointer<QWidget> m_before;   ///< What had the keyboard when it was opened.
};

/// The keys that the parts of `window` with these names really have, such as "1, 2, 3"; of those that are not
/// there nothing.
QString keysOf(const QWidget& window, const HelpText::Key& key);

}  // namespace app::desktop
