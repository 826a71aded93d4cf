#include "tests/app/desktop/pictures/scenes.h"

#include "app/desktop/look/strand_widget.h"
#include "app/desktop/setup/strand_grip.h"
#include "app/desktop/tour/tour_window.h"

#include <QAction>
#include <QDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QTabWidget>
#include <QTest>

#include <algorithm>
#include <iterator>

namespace pictures {
namespace {

using core::run::Prompt;
using rig::Rig;

void awaitPlan(Rig& rig)
{
    Rig::wait([&] { return rig.find<QPushButton>("start")->isEnabled(); });
}

void openDemo(Rig& rig)
{
    rig.window->files().openDemo(QStringLiteral("wig-room-three-zones"));
    awaitPlan(rig);
}

/// The first strand, later by more than it can be so that all is ready in time.
void pullAStrand(Rig& rig)
{
    openDemo(rig);
    rig.window->document().edit(QStringLiteral("a promise"), [&](core::service::Service& service) {
        service.readyBy = rig.clock->now() + std::chrono::minutes{65};
    });
    awaitPlan(rig);
    auto* grip = rig.find<app::desktop::StrandGrip>("grip1");
    grip->setFocus();
    QTest::keyClick(grip, Qt::Key_Right);
    Rig::wait([&] { return grip->maximum() < 24 * 60; });
    for (int press = 0; press < 3; ++press)
        QTest::keyClick(grip, Qt::Key_Right, Qt::ShiftModifier);
    Rig::wait([&] { return rig.find<QPushButton>("keepStart")->isEnabled(); });
}

/// Answers what is asked for first, at its time, so many times.
void answer(Rig& rig, int steps)
{
    for (int step = 0; step < steps && !rig.session->state().prompts.empty(); ++step) {
        const Prompt prompt = rig.session->state().prompts.front();
        if (prompt.due > rig.clock->now())
            rig.goOn(prompt.due - rig.clock->now());
        core::run::Answer answer;
        answer.kind = prompt.asks == Prompt::Asks::Finish ? core::run::Answer::Kind::Finish
            : prompt.asks == Prompt::Asks::Look           ? core::run::Answer::Kind::Leave
                                                          : core::run::Answer::Kind::Start;
        answer.task = prompt.task;
        rig.session->answer(answer);
    }
}

void untilWater(Rig& rig)
{
    for (int step = 0; step < 40 && !rig.session->state().prompts.empty(); ++step) {
        const Prompt& prompt = rig.session->state().prompts.front();
        if (prompt.task.kind == core::stagger::TaskKind::Rinse)
            return rig.goOn(prompt.due - rig.clock->now() + rig::Seconds{75});
        answer(rig, 1);
    }
}

/// Under heat since the first application, with a tone seen at the first look, at the second.
void untilLook(Rig& rig)
{
    using core::run::Answer;
    bool seen = false;
    for (int step = 0; step < 40 && !rig.session->state().prompts.empty(); ++step) {
        const Prompt prompt = rig.session->state().prompts.front();
        if (prompt.asks != Prompt::Asks::Look) {
            answer(rig, 1);
            continue;
        }
        rig.goOn(prompt.due - rig.clock->now());
        if (seen)
            return;
        rig.session->answer({.kind = Answer::Kind::Leave, .task = prompt.task, .tone = "still yellow"});
        rig.session->answer({.kind = Answer::Kind::Start,
                             .task = {.kind = core::stagger::TaskKind::Heat},
                             .again = std::chrono::minutes{10}});
        seen = true;
    }
}

void runDemo(Rig& rig, int steps)
{
    openDemo(rig);
    rig.startLanes();
    answer(rig, steps);
    rig.goOn(std::chrono::minutes{4});
}

/// The demo to its end, with what was seen and how it turned out.
void runToTheEnd(Rig& rig)
{
    openDemo(rig);
    rig.startLanes();
    untilLook(rig);
    for (int step = 0; step < 60 && !rig.session->state().finished; ++step)
        rig.session->state().prompts.empty() ? rig.goOn(std::chrono::minutes{5}) : answer(rig, 1);
}

void showCard(Rig& rig)
{
    using core::run::Answer;
    runToTheEnd(rig);
    const core::run::Outcome outcomes[] = {core::run::Outcome::AsWanted, core::run::Outcome::TooWarm,
                                           core::run::Outcome::AsWanted};
    for (std::size_t zone = 0; zone < 3; ++zone)
        rig.session->answer({.kind = Answer::Kind::TurnOut,
                             .task = {.item = zone},
                             .tone = zone == 1 ? "brassy at the nape" : "",
                             .outcome = outcomes[zone]});
    rig.session->answer({.kind = Answer::Kind::Note, .task = {}, .tone = "Thinner sections at the nape"});
    rig.session->end();
    rig.session->leave();
    rig.find<QAction>("fileRecords")->trigger();
}

void openPremiere(Rig& rig)
{
    rig.window->files().openPremiere();
    auto services = rig.window->document().services();
    for (auto& service : services)
        service.readyBy = rig::morning + std::chrono::hours{6};
    rig.window->document().editAll(QStringLiteral("the promises"), services);
    awaitPlan(rig);
}

void promiseTooMuch(Rig& rig)
{
    openDemo(rig);
    rig.window->document().edit(QStringLiteral("a promise"), [](auto& service) {
        service.readyBy = rig::morning + std::chrono::minutes{45};
    });
    Rig::wait([&] { return !rig.find<app::desktop::StrandWidget>("strands")->isVisible(); });
}

void runPremiere(Rig& rig)
{
    openPremiere(rig);
    rig.startLanes();
    answer(rig, 7);
    rig.goOn(std::chrono::minutes{1});
}

std::vector<Scene> scenesOfWhatIsOver()
{
    return {
        {QStringLiteral("lanes-over"), runToTheEnd},
        {QStringLiteral("lanes-outcome"),
         [](Rig& rig) {
             runToTheEnd(rig);
             rig.find<QPushButton>("overOffer1")->click();
         }},
        {QStringLiteral("card"), showCard},
        {QStringLiteral("setup-next"),
         [](Rig& rig) {
             showCard(rig);
             rig.find<QPushButton>("recordsAgain")->click();
             awaitPlan(rig);
         }},
        {QStringLiteral("card-none"), [](Rig& rig) { rig.find<QAction>("fileRecords")->trigger(); }},
    };
}

void placeOnHead(Rig& rig)
{
    openDemo(rig);
    auto* parts = rig.find<QTabWidget>("parts");
    parts->setCurrentWidget(rig.find<QWidget>("headPanel"));
}

/// What F1 shows, wherever it is pressed.
void openHelp(const Rig& rig)
{
    rig.find<QAction>("pageHelp")->trigger();
}

/// The tour, after so many presses of its one key.
void tour(Rig& rig, int presses)
{
    openDemo(rig);
    rig.find<QAction>("tourMenu")->trigger();
    auto* shown = rig.find<app::desktop::TourWindow>("tour");
    for (int press = 0; press < presses; ++press) {
        shown->guide().goOn();
        if (shown->guide().isGoing())
            shown->guide().goOn();  // Skips ahead.
    }
}

std::vector<Scene> scenesOfTour()
{
    std::vector<Scene> all;
    static constexpr const char* names[] = {"plan", "step", "change", "look", "alarm", "end"};
    for (int stop = 0; stop < app::desktop::TourGuide::stops; ++stop)
        all.push_back({QStringLiteral("tour-%1").arg(QLatin1String{names[stop]}),
                       [stop](Rig& rig) { tour(rig, stop); }});
    return all;
}

std::vector<Scene> scenesOfHelp()
{
    return {
        {QStringLiteral("help-setup"),
         [](Rig& rig) {
             openDemo(rig);
             openHelp(rig);
         }},
        {QStringLiteral("help-lanes"),
         [](Rig& rig) {
             runDemo(rig, 5);
             openHelp(rig);
         }},
        {QStringLiteral("help-heads"),
         [](Rig& rig) {
             runPremiere(rig);
             openHelp(rig);
         }},
        {QStringLiteral("help-card"),
         [](Rig& rig) {
             showCard(rig);
             QWidget& records = shownBy(rig);
             Q_EMIT records.findChild<QShortcut*>(QStringLiteral("pageHelp"))->activated();
         }},
    };
}

/// The list before the start: heard, tests skipped, and what the bowls' line says.
void prepareInPart(Rig& rig)
{
    openDemo(rig);
    rig.pressInDialog("soundCheck", "heard");
    const auto press = [&rig](const char* button) { rig.find<QPushButton>(button)->click(); };
    press("prepareSound");
    press("prepareDone");
    rig.find<QLineEdit>("prepareWhy")->setText(QStringLiteral("same mixture as on Tuesday"));
    press("prepareSkip");
    press("prepareBowls");
    rig.activate();
}

}  // namespace

std::vector<Scene> scenes()
{
    std::vector<Scene> all{
        {QStringLiteral("setup"), openDemo},
        {QStringLiteral("setup-before"), prepareInPart},
        {QStringLiteral("setup-pulled"), pullAStrand},
        {QStringLiteral("setup-head"), placeOnHead},
        {QStringLiteral("setup-heads"), openPremiere},
        {QStringLiteral("setup-nothing-fits"), promiseTooMuch},
        {QStringLiteral("lanes"), [](Rig& rig) { runDemo(rig, 5); }},
        {QStringLiteral("lanes-more"),
         [](Rig& rig) {
             runDemo(rig, 5);
             rig.find<QPushButton>("moreButton")->click();
         }},
        {QStringLiteral("lanes-far"),
         [](Rig& rig) {
             runPremiere(rig);
             rig.find<QPushButton>("far")->click();
         }},
        {QStringLiteral("lanes-look"),
         [](Rig& rig) {
             openDemo(rig);
             rig.startLanes();
             untilLook(rig);
         }},
        {QStringLiteral("lanes-answers"),
         [](Rig& rig) {
             runDemo(rig, 5);
             rig.find<QPushButton>("moreButton")->click();
             rig.find<QPushButton>("moreAnswers")->click();
         }},
        {QStringLiteral("alert-step"),
         [](Rig& rig) {
             runDemo(rig, 3);
             while (rig.session->state().prompts.front().asks != Prompt::Asks::Start)
                 answer(rig, 1);
             rig.goOn(std::chrono::minutes{4});
         }},
        {QStringLiteral("lanes-heads"), runPremiere},
        {QStringLiteral("alert"),
         [](Rig& rig) {
             openDemo(rig);
             rig.startLanes();
             untilWater(rig);
         }},
        {QStringLiteral("alert-heads"),
         [](Rig& rig) {
             openPremiere(rig);
             rig.startLanes();
             untilWater(rig);
         }},
    };
    std::ranges::copy(scenesOfWhatIsOver(), std::back_inserter(all));
    std::ranges::copy(scenesOfHelp(), std::back_inserter(all));
    std::ranges::copy(scenesOfTour(), std::back_inserter(all));
    return all;
}

QWidget& shownBy(const Rig& rig)
{
    if (auto* tour = rig.window->findChild<QWidget*>(QStringLiteral("tour")); tour != nullptr)
        return *tour;
    auto* records = rig.window->findChild<QDialog*>(QStringLiteral("records"));
    return records != nullptr && records->isVisible() ? static_cast<QWidget&>(*records) : *rig.window;
}

}  // namespace pictures
