#pragma once

#include "app/view/amend_view.h"
#include "app/view/answers_view.h"

#include <QFrame>
#include <QPointer>

#include <functional>

class QGridLayout;
class QLabel;
class QPushButton;

namespace app::desktop {

/// What can be said beside what is asked for: applying stops, a zone is rinsed by itself, there is one more,
/// heat is on or off, somebody is away, comes or has gone, an earlier answer was wrong, the coat is given up.
/// What still has to be known is asked for in the same place.
class MorePanel : public QFrame {
    Q_OBJECT

public:
    /// An answer that can be put right, in words.
    struct Listed {
        QString text;
        view::AnswerOption answer;

        friend bool operator==(const Listed&, const Listed&) = default;
    };

    explicit MorePanel(QWidget* parent = nullptr);
    ~MorePanel() override;

    void showAmend(const view::AmendView& amend, const std::vector<Listed>& answers);

    /// From its first page on.
    void open();

    /// As many beside one another as their words leave room for in a panel of that width.
    void arrange(int width);

Q_SIGNALS:
    void stopped(const app::view::ZoneOption& zone);
    void apartWanted(const app::view::ZoneOption& zone);
    void away(const app::view::HandsOption& hands, int minutes);
    void came(const QString& name);
    void gone(const app::view::HandsOption& hands);
    void givenUp(const app::view::ZoneOption& coat);
    /// `minutes` is 0 where nobody said how long it stays.
    void heatPutOn(const core::stagger::TaskId& heat, int minutes);
    void heatTakenOff(const core::stagger::TaskId& heat);
    /// `minutes` is 0 where it takes as long to apply as the other.
    void zoneAdded(const app::view::ZoneOption& like, const QString& name, int minutes);
    void answerUndone(const app::view::AnswerOption& answer);
    void answerWasEarlier(const app::view::AnswerOption& answer, int minutes);
    void answerWasOfZone(const app::view::AnswerOption& answer, const app::view::ZoneOption& zone);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    enum class Page {
        Pick,
        Stop,
        Apart,
        AwayWho,
        AwayMinutes,
        Helper,
        Gone,
        GiveUp,
        HeatWhich,
        HeatMinutes,
        ZoneLike,
        ZoneName,
        Answers,
        Answer,
    };

    void turnTo(Page page);
    void clear();
    void pick();
    void listZones(const std::vector<view::ZoneOption>& zones,
                   const std::function<void(const view::ZoneOption&)>& told);
    void listHands(const std::function<void(const view::HandsOption&)>& told);
    void listMinutes();
    void askName();
    void askGiveUp();
    void listHeats();
    void putOn(const view::ZoneOption& heat);
    void askHeat();
    void askZoneName();
    void listAnswers();
    void askAnswer();
    void pickPeople();
    void heat();
    QPushButton* addPage(const QString& text, const QString& name, Qt::Key key, Page page, bool enabled);
    void stop();
    void put(QWidget* part);
    QPushButton* add(const QString& text, const QString& name, const QKeySequence& key);
    QPushButton* addOption(const QString& text);
    void ask(const QString& question);

    view::AmendView m_amend;
    Page m_page = Page::Pick;
    view::HandsOption m_who;  ///< Whose minutes are asked for.
    view::ZoneOption m_like;  ///< What the zone that is added is like.
    view::ZoneOption m_heat;  ///< What is put on.
    std::vector<Listed> m_answers;
    Listed m_answer;  ///< Which one is being put right.
    QLabel* m_question;
    QGridLayout* m_grid;
    std::vector<QWidget*> m_parts;
    std::vector<QPointer<QWidget>> m_gone;  ///< Nobody's, until the loop of events takes them away.
    int m_columns = 0;
};

}  // namespace app::desktop
