#pragma once

#include "app/desktop/look/colours.h"

#include <QFont>
#include <QHash>
#include <QIcon>
#include <QObject>

#include <optional>

class QApplication;

namespace app::desktop {

/// The look of the window as a whole: which palette, which typeface, which icons.
class Theme : public QObject {
    Q_OBJECT

public:
    enum class Choice { System, Light, Dark, HighContrast, DarkHighContrast };

    /// What the system asks for.
    struct SystemLook {
        std::optional<bool> dark;  ///< Absent where it has no preference.
        bool highContrast = false;

        friend bool operator==(const SystemLook&, const SystemLook&) = default;
    };

    /// While many parts are put together. The style sheet waits until they are: it is worked out anew for
    /// each part at each place that it is put into, which is most of the time that a window takes to build.
    class Building {
    public:
        explicit Building(Theme& theme);
        ~Building();
        Building(const Building&) = delete;
        Building& operator=(const Building&) = delete;

    private:
        Theme& m_theme;
    };

    explicit Theme(QApplication& application);

    void choose(Choice choice);
    /// Followed while nobody chose otherwise.
    void followSystem(const SystemLook& system);
    [[nodiscard]] Choice choice() const { return m_choice; }
    [[nodiscard]] bool isDark() const { return m_dark; }
    [[nodiscard]] bool isHighContrast() const { return m_highContrast; }
    [[nodiscard]] const Colours& colours() const { return m_colours; }

    /// How large text is, in percent of the usual: 100 to 200. Parts that exist already are to be built
    /// again.
    void setTextSize(int percent);
    [[nodiscard]] static int textSize() { return s_textSize; }
    /// So large that what is good to know has to give way to what must be read.
    [[nodiscard]] static bool textIsLarge() { return s_textSize > 125; }

    /// The typeface in a size of `metrics`, larger where text is. What is large already grows no further than
    /// it must to be larger than the rest.
    [[nodiscard]] static QFont font(int pixels, bool bold = false);

    /// In exactly this size, for figures that are read from afar anyhow.
    [[nodiscard]] static QFont exactFont(int pixels, bool bold = false);

    /// That of `font`, and as many percent of it as the page has room for.
    [[nodiscard]] static QFont enlargedFont(int pixels, int percent, bool bold = false);

    /// A length that text needs, as large as text is.
    [[nodiscard]] static int scaled(int pixels) { return pixels * s_textSize / 100; }

    /// One of our drawings (resources/icons/NAME.svg) in a colour.
    [[nodiscard]] QIcon icon(const QString& name, const QColor& colour) const;
    [[nodiscard]] QIcon icon(const QString& name) const { return icon(name, m_colours.ink); }

Q_SIGNALS:
    void changed();

private:
    void apply();
    void dress();

    static inline int s_textSize = 100;  ///< One for the whole program, as its style sheet is.

    QApplication& m_application;
    bool m_paletteIsDark;  ///< The toolkit's own, where the system has no preference.
    SystemLook m_system;
    Choice m_choice = Choice::System;
    bool m_dark = false;
    bool m_highContrast = false;
    bool m_building = false;
    Colours m_colours;
    mutable QHash<QPair<QString, QRgb>, QIcon> m_drawn;  ///< A picture asks for the same few at every stroke.
};

}  // namespace app::desktop
