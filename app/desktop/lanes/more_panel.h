#pragma once

#include "app/view/amend_view.h"

#include <QFrame>

#include <functional>

class QGridLayout;
class QLabel;
class QPushButton;

namespace app::desktop {

/// What can be said beside what is asked for: applying stops, a zone is rinsed by itself, somebody is away,
/// comes or has gone, the coat is given up. What still has to be known is asked for in the same place.
class MorePanel : public QFrame {
    Q_OBJECT

public:
    explicit MorePanel(QWidget* parent = nullptr);

    void showAmend(const view::AmendView& amend);

    /// From its first page on.
    void open();

Q_SIGNALS:
    void stopped(const app::view::ZoneOption& zone);
    void apartWanted(const app::view::ZoneOption& zone);
    void away(const app::view::HandsOption& hands, int minutes);
    void came(const QString& name);
    void gone(const app::view::HandsOption& hands);
    void givenUp(const app::view::ZoneOption& coat);

private:
    enum class Page { Pick, Stop, Apart, AwayWho, AwayMinutes, Helper, Gone, GiveUp };

    void turnTo(Page page);
    void clear();
    void pick();
    void listZones(const std::vector<view::ZoneOption>& zones,
                   void (MorePanel::*told)(const view::ZoneOption&));
    void listHands(const std::function<void(const view::HandsOption&)>& told);
    void listMinutes();
    void askName();
    void askGiveUp();
    void stop();
    QPushButton* add(const QString& text, const QString& name, const QKeySequence& key);
    QPushButton* addOption(const QString& text);
    void ask(const QString& question);

    view::AmendView m_amend;
    Page m_page = Page::Pick;
    view::HandsOption m_who;  ///< Whose minutes are asked for.
    QLabel* m_question;
    QGridLayout* m_grid;
    std::vector<QWidget*> m_parts;
};

}  // namespace app::desktop
