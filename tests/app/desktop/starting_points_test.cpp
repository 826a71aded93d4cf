#include "app/desktop/setup/starting_points.h"

#include "core/service/check.h"
#include "core/stagger/plan.h"
#include "tests/app/desktop/rig.h"

#include <QAction>
#include <QLabel>

#include <gtest/gtest.h>

using namespace app::desktop;

namespace {

TEST(StartingPoints, PassEveryCheckAndHoldForAllThatApplyingMayTake)
{
    ASSERT_EQ(startingPoints().size(), 4u);
    for (const StartingPoint& point : startingPoints()) {
        EXPECT_TRUE(core::service::checkService(point.service).empty()) << point.service.name;
        EXPECT_TRUE(restsOnCommonPractice(point.service));
        core::stagger::Question question;
        question.services = {point.service};
        question.now = rig::morning;
        const auto plan = core::stagger::plan(question);
        ASSERT_TRUE(plan) << point.service.name << ": " << plan.error().text;
        EXPECT_TRUE((*plan)->proved) << point.service.name;
        EXPECT_EQ((*plan)->give, 100) << point.service.name;
    }
}

TEST(StartingPoints, AreOfferedAndSayThatTheLeafletComesFirst)
{
    rig::Rig rig;
    auto* note = rig.find<QLabel>("practiceNote");
    for (const StartingPoint& point : startingPoints()) {
        auto* offer = rig.find<QAction>(("new-" + point.key.toStdString()).c_str());
        ASSERT_NE(offer, nullptr);
        offer->trigger();
        EXPECT_EQ(rig.window->document().service().name, point.service.name);
        EXPECT_TRUE(note->isVisible());
    }
    rig.window->document().edit(QStringLiteral("the notes"), [](auto& service) {
        for (auto& coat : service.coats)
            for (auto& bowl : coat.bowls)
                bowl.note = "As its leaflet says";
    });
    EXPECT_FALSE(note->isVisible());
}

}  // namespace
