#pragma once

#include "app/desktop/setup/preparation.h"
#include "app/desktop/setup/service_document.h"
#include "app/desktop/sound.h"
#include "app/desktop/tour/tour_guide.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QStackedWidget;

namespace app::desktop {

class LanesPage;
class PageView;
class SetupPage;
class Theme;

/// Makes no sound.
class SilentSound final : public Sound {
public:
    void keepReady(bool) override { }
    void sound(const core::alarm::Call&) override { }
    void setStanding(const std::vector<core::alarm::Alarm>&) override { }
    void silence() override { }
    void playCheck(core::alarm::Kind, core::alarm::Subject) override { }
    [[nodiscard]] bool isWorking() const override { return true; }
    [[nodiscard]] QString problem() const override { return {}; }
};

/// A short tour: the real pages with a service, a run and a clock of their own, of which nothing is kept. One
/// key goes on, one leaves; the pages themselves take none.
class TourWindow : public QWidget {
    Q_OBJECT

public:
    TourWindow(const Theme& theme, const core::service::Service& service, core::measure::Instant start,
               std::shared_ptr<const core::measure::TimeZones> zones, QWidget* parent);
    ~TourWindow() override;

    [[nodiscard]] TourGuide& guide() { return m_guide; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QWidget* makeBand(const Theme& theme);
    QWidget* makePages(const Theme& theme, const std::shared_ptr<const core::measure::TimeZones>& zones);
    QWidget* makeCard();
    [[nodiscard]] int leastPage() const;
    void follow();
    void goOn();
    bool takeKey(int key);

    TourGuide m_guide;
    SilentSound m_sound;
    ServiceDocument m_document;
    Preparation m_preparation;
    PageView* m_view;
    QStackedWidget* m_pages;
    SetupPage* m_setup = nullptr;
    LanesPage* m_lanes = nullptr;
    QLabel* m_words;
    QLabel* m_place;
    QPushButton* m_goOn;
    QPushButton* m_leave;
};

}  // namespace app::desktop
