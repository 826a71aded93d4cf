#include "core/stagger/task.h"

#include "tests/core/stagger/support.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace core::stagger {
namespace {

using testing::ElementsAre;

const std::vector<TaskKind> allKinds = {TaskKind::Apply, TaskKind::Look,   TaskKind::Late,
                                        TaskKind::Mix,   TaskKind::Rinse,  TaskKind::RinseAlone,
                                        TaskKind::Dry,   TaskKind::Assess, TaskKind::Heat};

/// Two coats; in the first everything there is.
Service everything()
{
    Zone root = makeZone("Root", minutes{20}, exactly(30));
    root.late.push_back({.name = "Emulsify", .before = minutes{5}, .length = minutes{3}});
    root.late.push_back({.name = "Comb through", .before = minutes{9}, .length = minutes{2}});
    Zone ends = makeZone("Ends", minutes{10}, exactly(40));
    ends.looks = service::Looks{.first = minutes{10},
                                .every = minutes{10},
                                .length = minutes{1},
                                .tolerance = minutes{2},
                                .until = minutes{40}};
    Service service = fromOpening({root, ends});
    service::Coat& coat = service.coats.front();
    coat.bowls = {{.name = "Root bowl", .mix = minutes{3}, .potLife = {}, .note = {}},
                  {.name = "Ready bowl", .mix = Seconds{0}, .potLife = {}, .note = {}}};
    coat.dryHands = minutes{4};
    coat.dryUnattended = minutes{6};
    coat.assess = minutes{2};
    service.coats.push_back(
        makeService({makeZone("Gloss", minutes{7}, exactly(5))}, minutes{6}).coats.front());
    return service;
}

std::vector<std::string> texts(const std::vector<TaskId>& ids)
{
    std::vector<std::string> texts;
    for (const TaskId& id : ids)
        texts.push_back(taskIdText(id));
    return texts;
}

// Looks at 10, 20 and 30, not at 40: while the moment is before `until`.
TEST(Task, AllOfAServiceInItsOrder)
{
    EXPECT_THAT(texts(tasksOf(everything())),
                ElementsAre("0.0.apply.0.0", "0.0.late.0.0", "0.0.late.0.1", "0.0.apply.1.0", "0.0.look.1.0",
                            "0.0.look.1.1", "0.0.look.1.2", "0.0.mix.0.0", "0.0.rinse.0.0", "0.0.dry.0.0",
                            "0.0.assess.0.0", "0.1.apply.0.0", "0.1.rinse.0.0"));
}

TEST(Task, TheOrderOfIdsIsTheOrderOfTheService)
{
    const std::vector<TaskId> tasks = tasksOf(everything(), 3);
    EXPECT_TRUE(std::ranges::is_sorted(tasks));
    EXPECT_LT(tasksOf(everything(), 2).back(), tasks.front());
}

TEST(Task, EveryTaskOfAServiceIsOne)
{
    const Service service = everything();
    for (const TaskId& id : tasksOf(service))
        EXPECT_TRUE(isTaskOf(service, id)) << taskIdText(id);
    EXPECT_TRUE(isTaskOf(service, idOf(TaskKind::RinseAlone, 1)));
}

TEST(Task, WhatAServiceDoesNotHaveIsNone)
{
    const Service service = everything();
    for (const TaskId& id : {idOf(TaskKind::Apply, 2), idOf(TaskKind::Apply, 0, 1), idOf(TaskKind::Look, 0),
                             idOf(TaskKind::Look, 1, 3), idOf(TaskKind::Late, 0, 2), idOf(TaskKind::Mix, 1),
                             idOf(TaskKind::Mix, 2), idOf(TaskKind::Rinse, 1), idOf(TaskKind::RinseAlone, 2),
                             idOf(TaskKind::Dry, 1), idOf(TaskKind::Dry, 0, 0, 1),
                             idOf(TaskKind::Assess, 0, 0, 1), idOf(TaskKind::Apply, 0, 0, 2)})
        EXPECT_FALSE(isTaskOf(service, id)) << taskIdText(id);
}

TEST(Task, IsNamedInTheTradesWords)
{
    const Service service = everything();
    EXPECT_EQ(taskName(service, idOf(TaskKind::Apply, 0)), "Apply Root");
    EXPECT_EQ(taskName(service, idOf(TaskKind::Late, 0, 1)), "Comb through Root");
    EXPECT_EQ(taskName(service, idOf(TaskKind::Look, 1, 0)), "Look at Ends (1st)");
    EXPECT_EQ(taskName(service, idOf(TaskKind::Look, 1, 2)), "Look at Ends (3rd)");
    EXPECT_EQ(taskName(service, idOf(TaskKind::Mix, 0)), "Mix Root bowl");
    EXPECT_EQ(taskName(service, idOf(TaskKind::Rinse)), "Rinse All");
    EXPECT_EQ(taskName(service, idOf(TaskKind::RinseAlone, 1)), "Rinse Ends alone");
    EXPECT_EQ(taskName(service, idOf(TaskKind::Dry)), "Dry");
    EXPECT_EQ(taskName(service, idOf(TaskKind::Assess)), "Assess");
    EXPECT_EQ(taskName(service, idOf(TaskKind::Apply, 0, 0, 1)), "Apply Gloss");
}

TEST(Task, OnlyOneOfSeveralLooksIsNumbered)
{
    Service service = everything();
    service.coats[0].zones[1].looks->every.reset();
    EXPECT_EQ(taskName(service, idOf(TaskKind::Look, 1)), "Look at Ends");
    service.coats[0].zones[1].looks->every = minutes{1};
    service.coats[0].zones[1].looks->first = minutes{1};
    for (const auto& [part, words] : {std::pair{1, "(2nd)"},
                                      {3, "(4th)"},
                                      {10, "(11th)"},
                                      {11, "(12th)"},
                                      {12, "(13th)"},
                                      {20, "(21st)"},
                                      {21, "(22nd)"},
                                      {22, "(23rd)"}})
        EXPECT_EQ(taskName(service, idOf(TaskKind::Look, 1, static_cast<std::size_t>(part))),
                  std::string{"Look at Ends "} + words);
}

TEST(Task, TakesItsUsualLength)
{
    Service service = everything();
    service.coats[0].zones[0].apply = {minutes{15}, minutes{20}, minutes{28}};
    EXPECT_EQ(usualLength(service, idOf(TaskKind::Apply, 0)), minutes{20});
    EXPECT_EQ(usualLength(service, idOf(TaskKind::Late, 0, 1)), minutes{2});
    EXPECT_EQ(usualLength(service, idOf(TaskKind::Look, 1, 2)), minutes{1});
    EXPECT_EQ(usualLength(service, idOf(TaskKind::Mix, 0)), minutes{3});
    EXPECT_EQ(usualLength(service, idOf(TaskKind::Rinse)), minutes{5});
    EXPECT_EQ(usualLength(service, idOf(TaskKind::RinseAlone, 1)), minutes{5});
    EXPECT_EQ(usualLength(service, idOf(TaskKind::Dry)), minutes{4});
    EXPECT_EQ(usualLength(service, idOf(TaskKind::Assess)), minutes{2});
    EXPECT_EQ(usualLength(service, idOf(TaskKind::Rinse, 0, 0, 1)), minutes{6});
}

TEST(Task, EachKindIsWorkOfItsOwnAndRinsingAloneIsRinsing)
{
    EXPECT_EQ(workOf(TaskKind::RinseAlone), workOf(TaskKind::Rinse));
    std::vector<service::Work> works;
    for (const TaskKind kind : allKinds)
        if (kind != TaskKind::Heat)  // It takes no hands.
            works.push_back(workOf(kind));
    std::ranges::sort(works);
    EXPECT_EQ(std::ranges::unique(works).size(), 1U);
}

RC_GTEST_PROP(TaskId, IsReadBackAsItWasWritten, ())
{
    const auto number = rc::gen::inRange<std::size_t>(0, 100'000);
    const TaskId id{.service = *number,
                    .coat = *number,
                    .kind = *rc::gen::elementOf(allKinds),
                    .item = *number,
                    .part = *number};
    TaskId read;
    RC_ASSERT(readTaskId(taskIdText(id), read));
    RC_ASSERT(read == id);
}

TEST(TaskId, TextThatIsNoneIsRefused)
{
    for (const char* text :
         {"", "0", "0.0.apply.0", "0.0.apply.0.0.0", "0.0.wash.0.0", "a.0.apply.0.0", "0.0.apply.0.x",
          "0.0.apply.-1.0", "0.0.apply..0", " 0.0.apply.0.0", "0.0.apply.0.0 ", "0.0.Apply.0.0", "0.0..0.0",
          "....", "0.0.apply.0.99999999999999999999999"}) {
        TaskId read;
        EXPECT_FALSE(readTaskId(text, read)) << '"' << text << '"';
    }
}

// What is written in journals must not change.
TEST(TaskId, TextStaysAsItIs)
{
    EXPECT_EQ(taskIdText({.service = 1, .coat = 2, .kind = TaskKind::RinseAlone, .item = 3, .part = 4}),
              "1.2.rinse-alone.3.4");
    std::vector<std::string> written;
    for (const TaskKind kind : allKinds)
        written.push_back(taskIdText(idOf(kind)));
    EXPECT_THAT(written,
                ElementsAre("0.0.apply.0.0", "0.0.look.0.0", "0.0.late.0.0", "0.0.mix.0.0", "0.0.rinse.0.0",
                            "0.0.rinse-alone.0.0", "0.0.dry.0.0", "0.0.assess.0.0", "0.0.heat.0.0"));
}

}  // namespace
}  // namespace core::stagger
