#include "app/desktop/lanes/reason_band.h"
#include "app/desktop/look/metrics.h"
#include "tests/app/desktop/rig.h"

#include <QLabel>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

using namespace app::desktop;
using core::run::FactKind;

namespace {

const QString carryOn = QStringLiteral("Carry on with the least harm");

/// The root is on for 22 of its at most 25 minutes and the ends, which need 4 + 8, are still to be applied.
class Choices : public testing::Test {
protected:
    Choices()
    {
        rig.window->document().replace(rig::Rig::service(), {});
        rig.startLanes();
        press(Qt::Key_Return);
        rig.goOn(std::chrono::minutes{5});
        press(Qt::Key_Return);
        rig.goOn(std::chrono::minutes{22});
    }

    void press(Qt::Key key)
    {
        ASSERT_NE(rig.window->focusWidget(), nullptr);
        rig.settle();
        QTest::keyClick(rig.window->focusWidget(), key);
    }

    /// Asks for the list with its key.
    void ask()
    {
        QTest::keyClick(rig.window.get(), Qt::Key_W);
        ASSERT_TRUE(rig::Rig::wait([this] { return isListed(1); }));
    }

    QPushButton* choice(int number) const
    {
        return rig.find<QPushButton>(QStringLiteral("choice%1").arg(number).toLatin1().constData());
    }
    bool isListed(int number) const { return choice(number) && choice(number)->isVisible(); }
    bool standsReason() const { return rig.find<QWidget>("reason")->isVisible(); }
    QString standing() const { return rig.find<QLabel>("choicesStanding")->text(); }

    /// The first that is not to carry on.
    QPushButton* another() const
    {
        for (int number = 1; isListed(number); ++number)
            if (choice(number)->accessibleName() != carryOn)
                return choice(number);
        return nullptr;
    }

    rig::Rig rig;
};

TEST_F(Choices, SaysWhyNotEveryLimitCanHoldAndListsNothingUnasked)
{
    ASSERT_TRUE(rig.session->state().reason);
    ASSERT_TRUE(standsReason());
    const QString text = rig.find<QLabel>("reasonText")->text();
    EXPECT_TRUE(text.contains(QString::fromStdString(rig.session->state().reason->text)));
    EXPECT_FALSE(rig.find<QWidget>("choices")->isVisible());
    EXPECT_GE(rig.find<QPushButton>("askChoices")->height(), metrics::target);
}

TEST_F(Choices, ListsWhatCanBeChosenWithWhatItComesTo)
{
    ask();

    const auto solved = rig.session->choices();
    ASSERT_GE(solved.size(), 2u);
    for (int number = 1; number <= static_cast<int>(solved.size()); ++number) {
        ASSERT_TRUE(isListed(number));
        EXPECT_TRUE(choice(number)->text().contains(QStringLiteral("(Alt+%1)").arg(number)));
        EXPECT_TRUE(choice(number)->accessibleDescription().contains(QStringLiteral("past the targets")));
        EXPECT_GE(choice(number)->height(), metrics::digitsHeight);
    }
    EXPECT_FALSE(isListed(static_cast<int>(solved.size()) + 1));
}

TEST_F(Choices, DoesNothingUntilOneIsTakenAndThenSaysItOnce)
{
    const std::size_t facts = rig.session->facts().size();
    ask();
    rig.goOn(std::chrono::seconds{3});
    ASSERT_EQ(rig.session->facts().size(), facts);
    QPushButton* taken = another();
    ASSERT_NE(taken, nullptr);
    const QString what = taken->accessibleName();
    QTest::keyClick(rig.window.get(), static_cast<Qt::Key>(Qt::Key_0 + taken->objectName().right(1).toInt()),
                    Qt::AltModifier);

    ASSERT_TRUE(rig::Rig::wait([&] { return rig.session->facts().size() > facts; }));
    EXPECT_EQ(rig.session->facts()[facts].kind, FactKind::Amended);
    EXPECT_TRUE(rig.find<QWidget>("changes")->accessibleName().contains(what));
    EXPECT_FALSE(rig.find<QWidget>("choices")->isVisible());
    const QString last = rig.find<QLabel>("lastAnswer")->text();
    EXPECT_FALSE(last.isEmpty());
    EXPECT_FALSE(last.contains(QStringLiteral("was changed"))) << last.toStdString() << ": it must say what";

    press(Qt::Key_Return);
    EXPECT_FALSE(rig.find<QWidget>("changes")->accessibleName().contains(what));
}

TEST_F(Choices, TakesAChoiceBackWithTheOneUndo)
{
    ask();
    another()->click();
    ASSERT_FALSE(rig.session->state().reason);
    EXPECT_FALSE(standsReason());
    rig.find<QPushButton>("undoLast")->click();

    EXPECT_TRUE(rig.session->state().reason);
    EXPECT_TRUE(standsReason());
}

TEST_F(Choices, CarriesOnWithoutAFact)
{
    const std::size_t facts = rig.session->facts().size();
    ask();
    int number = 1;
    while (isListed(number) && choice(number)->accessibleName() != carryOn)
        ++number;
    ASSERT_TRUE(isListed(number));
    choice(number)->click();

    EXPECT_EQ(rig.session->facts().size(), facts);
    EXPECT_FALSE(rig.find<QWidget>("choices")->isVisible());
    EXPECT_TRUE(standsReason());
}

TEST_F(Choices, SaysOfWhenTheyAreAndAreWorkedOutAgain)
{
    ask();
    EXPECT_FALSE(standing().contains(QStringLiteral("ago"))) << standing().toStdString();
    rig.goOn(std::chrono::seconds{31});
    EXPECT_TRUE(standing().contains(QStringLiteral("ago"))) << standing().toStdString();

    ask();
    EXPECT_TRUE(rig::Rig::wait([this] { return !standing().contains(QStringLiteral("ago")); }));
}

TEST_F(Choices, AreWorkedOutAgainAfterAnAnswer)
{
    ask();
    rig.goOn(std::chrono::seconds{31});
    ASSERT_TRUE(standing().contains(QStringLiteral("ago")));
    core::run::Answer start;
    start.task = rig.session->state().prompts.front().task;
    ASSERT_FALSE(rig.session->answer(start));

    if (rig.session->state().reason) {
        ASSERT_TRUE(rig::Rig::wait([this] { return isListed(1) && choice(1)->isEnabled(); }));
        EXPECT_FALSE(standing().contains(QStringLiteral("ago")));
    } else {
        EXPECT_FALSE(standsReason());
    }
}

TEST_F(Choices, LeaveTheAlarmAndTheLanesWholeInASmallWindow)
{
    rig.window->resize(1024, 700);
    ask();
    const auto* card = rig.find<QWidget>("strip1");
    const auto areWhole = [&] {
        QTest::qWait(50);
        const auto* lane = card->isVisible() ? card : rig.find<QWidget>("lane1");
        return lane->height() >= lane->minimumSizeHint().height() && isListed(1)
            && choice(1)->height() >= metrics::targetLive;
    };
    EXPECT_TRUE(areWhole());
    rig.goOn(std::chrono::minutes{4});  // The root is past its limit.

    const auto* alert = rig.find<QWidget>("alert");
    const auto* button = rig.find<QWidget>("alertButton");
    ASSERT_TRUE(alert->isVisible());
    EXPECT_TRUE(areWhole());
    EXPECT_GE(button->height(), metrics::targetLive);
    EXPECT_TRUE(alert->rect().contains(button->geometry()));
    const auto* headline = rig.find<QLabel>("alertHeadline");
    EXPECT_GE(headline->height(), headline->fontMetrics().height());
}

TEST_F(Choices, SayThatTheyAreBeingWorkedOutWhereItTakesLong)
{
    ReasonBand band{*rig.theme};
    const auto* standing = band.findChild<QLabel*>(QStringLiteral("choicesStanding"));
    band.showReason(QStringLiteral("Because."));
    band.showChoices(ReasonBand::List::Searching, {}, {});
    EXPECT_TRUE(standing->text().isEmpty());
    band.showChoices(ReasonBand::List::SearchingLong, {}, {});
    EXPECT_TRUE(standing->text().contains(QStringLiteral("being worked out")));
    EXPECT_FALSE(band.findChild<QPushButton*>(QStringLiteral("askChoices"))->isEnabled());
    band.showChoices(ReasonBand::List::Open, {}, {});
    EXPECT_TRUE(standing->text().contains(QStringLiteral("Nothing")));
}

}  // namespace
