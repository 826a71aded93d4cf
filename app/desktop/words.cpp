#include "app/desktop/words.h"

#include "app/desktop/sentences.h"

#include <QCoreApplication>
#include <QLocale>

#include <cmath>
#include <cstdlib>
#include <tuple>

namespace app::desktop::words {
namespace {

using core::run::Prompt;
using core::stagger::TaskKind;
using view::CountsTo;
using view::StepView;

struct WordsText {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

/// The zone of a look, and those that are looked at with it.
std::vector<std::string> withOthers(const StepView& step)
{
    std::vector<std::string> zones = step.zones;
    for (const view::LookBeside& other : step.together)
        zones.push_back(other.zone);
    return zones;
}

QString startSentence(const StepView& step)
{
    switch (step.prompt.task.kind) {
    case TaskKind::Apply: return WordsText::tr("Apply %1").arg(joined(step.zones));
    case TaskKind::Mix: return WordsText::tr("Mix %1").arg(named(step.name));
    case TaskKind::Late: return QStringLiteral("%1: %2").arg(named(step.name), joined(step.zones));
    case TaskKind::Look: return WordsText::tr("Look at %1").arg(joined(withOthers(step)));
    case TaskKind::Rinse:
    case TaskKind::RinseAlone: return WordsText::tr("Rinse %1").arg(joined(step.zones));
    case TaskKind::Dry: return WordsText::tr("Dry");
    case TaskKind::Assess: return WordsText::tr("Judge the result");
    case TaskKind::Heat: return WordsText::tr("Heat over the head");
    }
    return {};
}

QString runningSentence(const StepView& step)
{
    switch (step.prompt.task.kind) {
    case TaskKind::Apply: return WordsText::tr("Applying %1").arg(joined(step.zones));
    case TaskKind::Mix: return WordsText::tr("Mixing %1").arg(named(step.name));
    case TaskKind::Rinse:
    case TaskKind::RinseAlone: return WordsText::tr("Rinsing %1").arg(joined(step.zones));
    case TaskKind::Dry: return WordsText::tr("Drying");
    case TaskKind::Assess: return WordsText::tr("Judging the result");
    case TaskKind::Heat: return WordsText::tr("Take the heat off");
    case TaskKind::Late:
    case TaskKind::Look: return startSentence(step);
    }
    return {};
}

QString startButton(const StepView& step)
{
    switch (step.prompt.task.kind) {
    case TaskKind::Rinse:
    case TaskKind::RinseAlone: return WordsText::tr("Water is on");
    case TaskKind::Apply: return WordsText::tr("First strand is covered");
    case TaskKind::Mix: return WordsText::tr("Mixing has begun");
    default: return WordsText::tr("Started");
    }
}

QString finishButton(const StepView& step)
{
    switch (step.prompt.task.kind) {
    case TaskKind::Apply: return WordsText::tr("All of %1 is on").arg(joined(step.zones));
    case TaskKind::Mix: return WordsText::tr("It is mixed");
    case TaskKind::Rinse:
    case TaskKind::RinseAlone: return WordsText::tr("Rinsed out");
    case TaskKind::Dry: return WordsText::tr("Dryer is off my hands");
    case TaskKind::Heat: return WordsText::tr("Heat is off");
    default: return WordsText::tr("Done");
    }
}

}  // namespace

QString joined(const std::vector<std::string>& names)
{
    QString text;
    for (std::size_t place = 0; place < names.size(); ++place) {
        if (place > 0)
            text += place + 1 == names.size() ? WordsText::tr(" and ") : QStringLiteral(", ");
        text += named(names[place]);
    }
    return text;
}

QString length(Seconds length)
{
    return QString::fromStdString(core::measure::lengthText(length));
}

QString minutes(Seconds length)
{
    const auto seconds = length.count();
    if (seconds % 60 == 0)
        return QString::number(seconds / 60);
    return QString::fromStdString(core::measure::countdownText(length));
}

QString digits(Seconds left)
{
    const auto seconds = std::abs(left.count());
    const auto twoDigits = [](std::int64_t value) {
        return QStringLiteral("%1").arg(value, 2, 10, QLatin1Char{'0'});
    };
    if (seconds >= 6000)
        return QStringLiteral("%1h%2").arg(seconds / 3600).arg(twoDigits(seconds / 60 % 60));
    return QStringLiteral("%1:%2").arg(seconds / 60).arg(twoDigits(seconds % 60));
}

QString when(Seconds left)
{
    if (left > Seconds{0})
        return WordsText::tr("in %1").arg(digits(left));
    if (left > Seconds{-60})
        return WordsText::tr("now");
    return WordsText::tr("due %1 min ago").arg(-left.count() / 60);
}

QString ofHead(const std::string& head, const QString& sentence)
{
    return head.empty() ? sentence : WordsText::tr("%1: %2", "whose, what").arg(named(head), sentence);
}

QString step(const StepView& step)
{
    return ofHead(step.head,
                  step.prompt.asks == Prompt::Asks::Finish ? runningSentence(step) : startSentence(step));
}

QString title(const view::NowView& now)
{
    if (!now.main)
        return now.finished ? WordsText::tr("All done") : WordsText::tr("Nothing to do just now");
    const StepView& main = *now.main;
    if (main.left <= Seconds{0} && !main.waits)
        return WordsText::tr("Now: %1").arg(step(main));
    return main.prompt.asks == Prompt::Asks::Finish ? step(main) : WordsText::tr("Next: %1").arg(step(main));
}

QString latest(const view::LatestStart& latest, const QString& clock)
{
    if (latest.left < Seconds{0})
        return WordsText::tr("the latest safe start was %1, %2 ago").arg(clock, digits(latest.left));
    const QString condition = latest.onlyAsUsual ? WordsText::tr(", if all takes as usual") : QString{};
    return WordsText::tr("at the latest %1, %2").arg(clock, when(latest.left)) + condition;
}

QString latestBriefly(const view::LatestStart& latest, const QString& clock)
{
    if (latest.left < Seconds{0})
        return WordsText::tr("latest was %1").arg(clock);
    const QString condition = latest.onlyAsUsual ? WordsText::tr(", if as usual") : QString{};
    return WordsText::tr("latest %1, %2").arg(clock, when(latest.left)) + condition;
}

QString stepButton(const StepView& step)
{
    return step.prompt.asks == Prompt::Asks::Finish ? finishButton(step) : startButton(step);
}

QString stepIcon(const StepView& step)
{
    return taskIcon(step.prompt.task.kind);
}

QString taskIcon(TaskKind kind)
{
    switch (kind) {
    case TaskKind::Apply: return QStringLiteral("apply");
    case TaskKind::Look: return QStringLiteral("look");
    case TaskKind::Late: return QStringLiteral("late");
    case TaskKind::Mix: return QStringLiteral("mix");
    case TaskKind::Rinse:
    case TaskKind::RinseAlone: return QStringLiteral("rinse");
    case TaskKind::Dry: return QStringLiteral("dry");
    case TaskKind::Assess: return QStringLiteral("assess");
    case TaskKind::Heat: return QStringLiteral("heat");
    }
    return {};
}

QString stage(core::run::Stage stage)
{
    using core::run::Stage;
    switch (stage) {
    case Stage::Waiting: return WordsText::tr("waiting");
    case Stage::Applying: return WordsText::tr("being applied");
    case Stage::Developing: return WordsText::tr("developing");
    case Stage::Rinsing: return WordsText::tr("under water");
    case Stage::Rinsed: return WordsText::tr("rinsed");
    case Stage::Dropped: return WordsText::tr("left out");
    }
    return {};
}

QString tone(const core::run::SeenTone& tone, const QString& clock)
{
    return clock.isEmpty() ? named(tone.what) : WordsText::tr("%1, %2").arg(named(tone.what), clock);
}

QString countsTo(const view::LaneView& lane)
{
    const bool late = lane.left < Seconds{0};
    switch (lane.countsTo) {
    case CountsTo::Application:
        return late ? WordsText::tr("late to apply") : WordsText::tr("until you apply");
    case CountsTo::ApplicationEnd:
        return late ? WordsText::tr("longer than planned") : WordsText::tr("of applying left");
    case CountsTo::Water: return late ? WordsText::tr("past planned water") : WordsText::tr("until water");
    case CountsTo::Nothing: return stage(lane.stage);
    }
    return {};
}

QString urgency(view::Urgency urgency)
{
    switch (urgency) {
    case view::Urgency::Calm: return {};
    case view::Urgency::Soon: return WordsText::tr("soon");
    case view::Urgency::Due: return WordsText::tr("now");
    case view::Urgency::Late: return WordsText::tr("late");
    }
    return {};
}

namespace {

QString alarmSentence(const core::alarm::Alarm& alarm, const std::vector<std::string>& about)
{
    const QString zones = joined(about);
    switch (alarm.kind) {
    case core::alarm::Kind::LimitPassed: return WordsText::tr("%1 is past its limit").arg(zones);
    case core::alarm::Kind::LimitNear: return WordsText::tr("%1 nears its limit").arg(zones);
    case core::alarm::Kind::GetReady: return WordsText::tr("Soon: %1").arg(zones);
    case core::alarm::Kind::Due: break;
    }
    if (alarm.asks == Prompt::Asks::Finish)
        return WordsText::tr("Should be done: %1").arg(zones);
    if (alarm.subject == core::alarm::Subject::Look)
        return WordsText::tr("Look now: %1").arg(zones);
    return alarm.subject == core::alarm::Subject::Water ? WordsText::tr("Rinse now: %1").arg(zones)
                                                        : WordsText::tr("Now: %1").arg(zones);
}

}  // namespace

QString alarmHeadline(const view::AlarmAbout& about)
{
    return ofHead(about.head, alarmSentence(about.alarm, about.zones));
}

QString alarmHeadline(const view::AlarmView& alarm)
{
    return ofHead(alarm.head, alarmSentence(alarm.alarm, alarm.zones));
}

QString alarmDetail(const view::AlarmView& alarm)
{
    const QString since = alarm.standing < Seconds{60}
        ? WordsText::tr("Due now.")
        : WordsText::tr("Waiting for you: %1 min.").arg(alarm.standing.count() / 60);
    return alarm.also.empty() ? since : since + QStringLiteral("  ") + alarmAlso(alarm);
}

QString alarmAlso(const view::AlarmView& alarm)
{
    QStringList also;
    for (const view::AlarmAbout& other : alarm.also)
        also << alarmHeadline(other);
    return WordsText::tr("Also: %1.").arg(also.join(QStringLiteral("  ·  ")));
}

namespace {

QString strandTest(const std::vector<std::string>& zones, bool soon)
{
    return soon ? WordsText::tr("Soon: %1, strand test").arg(joined(zones))
                : WordsText::tr("%1: strand test").arg(joined(zones));
}

QString spoken(const std::vector<core::service::Service>& services, const view::AlarmAbout& about)
{
    using core::alarm::Kind;
    using core::alarm::Subject;
    const core::alarm::Alarm& alarm = about.alarm;
    const bool soon = alarm.kind == Kind::GetReady;
    if (alarm.kind == Kind::LimitNear || alarm.kind == Kind::LimitPassed)
        return alarmSentence(alarm, about.zones);
    if (alarm.subject == Subject::Look)
        return strandTest(about.zones, soon);
    if (alarm.subject == Subject::Water && alarm.asks == Prompt::Asks::Start)
        return (soon ? WordsText::tr("Soon: rinse %1") : WordsText::tr("Rinse now: %1"))
            .arg(joined(about.zones));
    const QString task = inWords(core::stagger::taskName(services[alarm.task.service], alarm.task));
    if (alarm.asks == Prompt::Asks::Finish)
        return WordsText::tr("%1: has it ended?").arg(task);
    return soon ? WordsText::tr("Soon: %1").arg(task) : task;
}

bool isLook(const view::AlarmAbout& about)
{
    return about.alarm.subject == core::alarm::Subject::Look;
}

}  // namespace

QString call(const std::vector<core::service::Service>& services, const std::vector<view::AlarmAbout>& about)
{
    QStringList said;
    for (std::size_t place = 0; place < about.size(); ++place) {
        view::AlarmAbout one = about[place];
        while (isLook(one) && place + 1 < about.size() && isLook(about[place + 1])
               && about[place + 1].alarm.task.service == one.alarm.task.service) {
            const auto& zones = about[++place].zones;
            one.zones.insert(one.zones.end(), zones.begin(), zones.end());
        }
        const QString text = spoken(services, one);
        const auto& head = services[one.alarm.task.service].head.name;
        said << (services.size() > 1 ? QStringLiteral("%1: %2").arg(named(head), text) : text);
    }
    return said.join(QStringLiteral(". "));
}

QString mostUrgentLane(const view::LanesView& lanes, const view::NowView& now)
{
    const view::LaneView* pressing = nullptr;
    const auto urgencyOf = [](const view::LaneView& lane) { return std::tuple{lane.urgency, -lane.left}; };
    for (const view::LaneView& lane : lanes.lanes)
        if (lane.countsTo != CountsTo::Nothing && (!pressing || urgencyOf(*pressing) < urgencyOf(lane)))
            pressing = &lane;
    if (!pressing)
        return title(now);
    return QStringLiteral("%1\n%2: %3 %4")
        .arg(title(now), named(pressing->title), digits(pressing->left), countsTo(*pressing));
}

QString choice(const view::ChoiceView& choice)
{
    return choice.carriesOn ? WordsText::tr("Carry on with the least harm") : inWords(choice.what);
}

QString outcome(const view::ChoiceView& choice)
{
    const auto zoneMinutes = [](double minutes) {
        return QLocale{}.toString(std::round(minutes * 10) / 10, 'g', QLocale::FloatingPointShortest);
    };
    const auto passed = static_cast<int>(choice.limitsPassed);
    const QString limits = passed == 0 ? WordsText::tr("Every limit holds")
        : passed == 1
        ? WordsText::tr("1 limit is passed by %1").arg(length(choice.passedBy))
        : WordsText::tr("%n limits are passed by %1 in all", nullptr, passed).arg(length(choice.passedBy));
    return limits
        + WordsText::tr("  ·  zone-minutes: %1 short, %2 past the targets")
              .arg(zoneMinutes(choice.minutesShort), zoneMinutes(choice.minutesPast));
}

QString chance(int inside, int runs)
{
    using Kind = core::stagger::Chance::Kind;
    const core::stagger::Chance chance = core::stagger::chanceOf(inside, runs);
    switch (chance.kind) {
    case Kind::Always: return WordsText::tr("every time");
    case Kind::Never: return WordsText::tr("never");
    case Kind::AlmostAlways: return WordsText::tr("over 99 in 100");
    case Kind::HardlyEver: return WordsText::tr("under 1 in 100");
    case Kind::Share: return WordsText::tr("%1 in 100").arg(chance.inHundred);
    }
    return {};
}

QString window(const core::service::Window& window)
{
    return WordsText::tr("%1 min, at least %2, at most %3")
        .arg(minutes(window.target), minutes(window.least), minutes(window.most));
}

}  // namespace app::desktop::words
