#include "core/alarm/alarm.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace core::alarm {
namespace {

using run::Prompt;
using stagger::TaskKind;

/// An alarm and the moments at which it begins and, unless answered before, ends by itself.
struct Span {
    Alarm alarm;
    std::optional<Instant> until;
};

Subject subjectOf(const stagger::TaskId& task)
{
    if (task.kind == TaskKind::Look)
        return Subject::Look;
    return isWater(task) ? Subject::Water : Subject::Task;
}

/// A soft notice and then the alarm itself. What ends needs no notice ahead: whoever does it knows. An
/// application may well take longer than usual, so the question whether it has ended stays soft at first.
void addPrompt(const Prompt& prompt, const Manners& manners, std::vector<Span>& spans)
{
    if (prompt.waitsFor)
        return;
    const bool ends = prompt.asks == Prompt::Asks::Finish;
    const Instant notice = ends ? prompt.due : prompt.due - manners.notice;
    Alarm alarm{.kind = Kind::GetReady,
                .subject = subjectOf(prompt.task),
                .task = prompt.task,
                .asks = prompt.asks,
                .since = notice};
    if (notice < prompt.pressing)
        spans.push_back({.alarm = alarm, .until = prompt.pressing});
    alarm.kind = Kind::Due;
    alarm.since = prompt.pressing;
    alarm.every = manners.repeatDue;
    spans.push_back({.alarm = alarm, .until = {}});
}

/// Water that is expected in time needs no warning before it is due: an alarm that asks for nothing teaches
/// people to ignore alarms.
void addLimit(const run::LimitWatch& limit, const Manners& manners, std::vector<Span>& spans)
{
    Instant near = limit.at - manners.limitNotice;
    if (limit.expected && *limit.expected <= limit.at)
        near = std::max(near, *limit.expected);
    Alarm alarm{.kind = Kind::LimitNear,
                .subject = Subject::Water,
                .task = limit.zone,
                .since = near,
                .every = manners.repeatLimit};
    if (near < limit.at)
        spans.push_back({.alarm = alarm, .until = limit.at});
    alarm.kind = Kind::LimitPassed;
    alarm.since = limit.at;
    spans.push_back({.alarm = alarm, .until = {}});
}

/// Whoever is told a minute sooner is told nothing false; what is due, and limits, keep their moments.
void gatherNotices(std::vector<Span>& spans, Seconds together)
{
    std::vector<Alarm*> notices;
    for (Span& span : spans) {
        if (span.alarm.kind == Kind::GetReady && span.alarm.asks != Prompt::Asks::Finish)
            notices.push_back(&span.alarm);
    }
    std::ranges::sort(notices, {}, &Alarm::since);
    std::optional<Instant> first;
    for (Alarm* notice : notices) {
        if (!first || notice->since > *first + together)
            first = notice->since;
        notice->since = *first;
    }
}

/// Everything that sounds or will, if nothing is answered. Of the limits of one zone the nearest is heard.
std::vector<Span> spansOf(const run::State& state, const Manners& manners)
{
    std::vector<Span> spans;
    for (const Prompt& prompt : state.prompts)
        addPrompt(prompt, manners, spans);
    gatherNotices(spans, manners.together);
    std::set<stagger::TaskId> heard;
    for (const run::LimitWatch& limit : state.limits) {
        if (heard.insert(limit.zone).second)
            addLimit(limit, manners, spans);
    }
    return spans;
}

bool isStanding(const Span& span, Instant now)
{
    return span.alarm.since <= now && (!span.until || now < *span.until);
}

int insistenceAt(const Alarm& alarm, const Manners& manners, Instant now)
{
    if (alarm.every <= Seconds{0} || manners.growEvery <= Seconds{0})
        return 0;
    const auto steps = (now - alarm.since) / manners.growEvery;
    return static_cast<int>(std::clamp<std::int64_t>(steps, 0, mostInsistence));
}

/// A zone keeps its voice over all coats of its head, and no two heads share one before all are used. What
/// is about a whole coat has that of its first zone.
int voiceOf(const run::State& state, const stagger::TaskId& task)
{
    std::map<std::size_t, std::size_t> zonesOf;
    for (const run::Lane& lane : state.lanes) {
        if (lane.service < task.service)
            zonesOf[lane.service] = std::max(zonesOf[lane.service], lane.zone + 1);
    }
    std::size_t place = isOfZone(task) ? task.item : 0;
    for (const auto& [service, zones] : zonesOf)
        place += zones;
    return static_cast<int>(place % voices);
}

/// The first moment after `now` that is a whole number of `step` after `since`.
Instant nextStep(Instant since, Seconds step, Instant now)
{
    return since + ((now - since) / step + 1) * step;
}

void addMoments(const Span& span, const Manners& manners, Instant now, std::vector<Instant>& moments)
{
    const Alarm& alarm = span.alarm;
    if (alarm.since > now)
        moments.push_back(alarm.since);
    if (!isStanding(span, now))
        return;
    if (span.until)
        moments.push_back(*span.until);
    if (alarm.every <= Seconds{0})
        return;
    moments.push_back(nextStep(alarm.since, alarm.every, now));
    if (manners.growEvery > Seconds{0} && insistenceAt(alarm, manners, now) < mostInsistence)
        moments.push_back(nextStep(alarm.since, manners.growEvery, now));
}

}  // namespace

std::vector<Alarm> alarmsAt(const run::State& state, const Manners& manners, Instant now)
{
    std::vector<Alarm> alarms;
    for (Span& span : spansOf(state, manners)) {
        if (!isStanding(span, now))
            continue;
        span.alarm.insistence = insistenceAt(span.alarm, manners, now);
        span.alarm.voice = voiceOf(state, span.alarm.task);
        alarms.push_back(span.alarm);
    }
    std::ranges::stable_sort(alarms, [](const Alarm& one, const Alarm& other) {
        return std::tuple{other.kind, one.since} < std::tuple{one.kind, other.since};
    });
    return alarms;
}

std::optional<Instant> nextChange(const run::State& state, const Manners& manners, Instant now)
{
    std::vector<Instant> moments;
    for (const Span& span : spansOf(state, manners))
        addMoments(span, manners, now, moments);
    if (moments.empty())
        return {};
    return std::ranges::min(moments);
}

}  // namespace core::alarm
