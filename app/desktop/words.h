#pragma once

#include "app/view/alarm_view.h"
#include "app/view/choices_view.h"
#include "app/view/lane_view.h"
#include "app/view/now_view.h"

#include "core/stagger/forecast.h"

#include <QString>

#include <string>
#include <vector>

/// The words on the screen that depend on what is going on. Views bring facts
/// and names; here they become sentences, in the person's language.
namespace app::desktop::words {

using core::measure::Seconds;

/// What a person called it.
inline QString named(const std::string& name)
{
    return QString::fromStdString(name);
}

/// "Root", "Root and Mids", "Root, Mids and Ends".
QString joined(const std::vector<std::string>& names);

/// "12 min", "1 h 5 min".
QString length(Seconds length);

/// In whole minutes and short, for a narrow place: "12", "12½"; 12 min 20 s is "12:20".
QString minutes(Seconds length);

/// The digits of a countdown, without a sign: "9:05"; from 100 minutes on "1h45".
QString digits(Seconds left);

/// "in 9:05", "now", "due 2 min ago".
QString when(Seconds left);

/// "The countess: Apply Crown"; the sentence alone where there is one head.
QString ofHead(const std::string& head, const QString& sentence);

/// What to do, as the biggest sentence on the page: "Apply Root", "Applying Root", "The ghost: Apply Root".
QString step(const view::StepView& step);

/// The same for the window's title: "Now: Rinse Root", "Next: Apply Mids", "Applying Root".
QString title(const view::NowView& now);

/// Until when it can be put off: "at the latest 14:31, in 6:20, if all takes as usual". `clock` is its moment
/// by the clock. The brief one, for a narrow place: "latest 14:31, in 6:20, if as usual".
QString latest(const view::LatestStart& latest, const QString& clock);
QString latestBriefly(const view::LatestStart& latest, const QString& clock);

/// What answers it: "Start Root", "Root is on".
QString stepButton(const view::StepView& step);

/// The drawing that goes with it, a name in resources/icons.
QString stepIcon(const view::StepView& step);
QString taskIcon(core::stagger::TaskKind kind);

QString stage(core::run::Stage stage);

/// "still yellow, 14:29"; `clock` is when it was seen.
QString tone(const core::run::SeenTone& tone, const QString& clock);

/// What a lane's digits count to: "until water", "late for water".
QString countsTo(const view::LaneView& lane);

/// "due", "late" and so on: urgency is never told by colour alone.
QString urgency(view::Urgency urgency);

/// An alarm that takes the window, and the line below it.
QString alarmHeadline(const view::AlarmAbout& about);
QString alarmHeadline(const view::AlarmView& alarm);
/// Since when, and what else stands.
QString alarmDetail(const view::AlarmView& alarm);
/// What else stands; for an alarm with which something stands.
QString alarmAlso(const view::AlarmView& alarm);

/// All that somebody is called for, short, to be spoken and for a notice: "Root and Ends: strand test".
QString call(const std::vector<core::service::Service>& services, const std::vector<view::AlarmAbout>& about);

/// What there is to do, and the lane that presses most: for the tray, where there is room for two lines.
QString mostUrgentLane(const view::LanesView& lanes, const view::NowView& now);

/// What is chosen, and what it comes to: "1 limit is passed by 4 min  ·  zone-minutes: 3.5 short, 0 past the
/// targets".
QString choice(const view::ChoiceView& choice);
QString outcome(const view::ChoiceView& choice);

/// How often: "97 in 100", "every time". `inside` of `runs`.
QString chance(int inside, int runs);

/// A strand in words, for those who listen.
QString window(const core::service::Window& window);

}  // namespace app::desktop::words
