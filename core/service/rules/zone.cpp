#include "core/service/json/value.h"
#include "core/service/rules/limits.h"
#include "core/service/rules/rules.h"
#include "core/service/words.h"

#include <algorithm>

namespace core::service::rules {

using measure::Sentence;

namespace {

/// One zone under examination, with the short cuts that its rules share.
class ZoneCheck {
public:
    ZoneCheck(const Coat& coat, const Zone& zone, const std::string& place, Findings& findings)
        : m_coat{coat}
        , m_zone{zone}
        , m_place{place}
        , m_findings{findings}
    {
    }

    void checkApplication();
    void checkWindow();
    void checkStrands();
    void checkLooks();
    void checkLateJobs();
    void checkRinse();
    void checkWhere();

private:
    [[nodiscard]] std::string at(std::string_view key) const { return inside(m_place, key); }
    void add(std::string_view key, Sentence what, std::string_view restsOn)
    {
        m_findings.add(at(key), std::move(what), {at(restsOn)});
    }
    void checkSeries(const Looks& looks);

    const Coat& m_coat;
    const Zone& m_zone;
    const std::string& m_place;
    Findings& m_findings;
};

void ZoneCheck::checkApplication()
{
    const Application& apply = m_zone.apply;
    if (apply.quickest == apply.usual && apply.usual == apply.slowest) {
        checkTask(m_findings, at("apply"), apply.usual);
        return;
    }
    checkTask(m_findings, at("apply.quickest"), apply.quickest);
    checkTask(m_findings, at("apply.usual"), apply.usual);
    checkTask(m_findings, at("apply.slowest"), apply.slowest);
    if (apply.quickest > apply.usual)
        add("apply.quickest",
            Sentence::worded("%1 is more than usual %2; make quickest at most usual",
                             minutesText(apply.quickest), minutesText(apply.usual)),
            "apply.usual");
    if (apply.slowest < apply.usual)
        add("apply.slowest",
            Sentence::worded("%1 is less than usual %2; make slowest at least usual",
                             minutesText(apply.slowest), minutesText(apply.usual)),
            "apply.usual");
}

void ZoneCheck::checkWindow()
{
    const Window& develop = m_zone.develop;
    if (develop.least == develop.target && develop.target == develop.most) {
        checkTask(m_findings, at("develop"), develop.target);
        return;
    }
    checkLength(m_findings, at("develop.least"), develop.least);
    checkTask(m_findings, at("develop.target"), develop.target);
    checkLength(m_findings, at("develop.most"), develop.most);
    if (develop.least > develop.target)
        add("develop.least",
            Sentence::worded("%1 is more than target %2; make least at most the target",
                             minutesText(develop.least), minutesText(develop.target)),
            "develop.target");
    if (develop.most < develop.target)
        add("develop.most",
            Sentence::worded("%1 is less than target %2; make most at least the target",
                             minutesText(develop.most), minutesText(develop.target)),
            "develop.target");
}

void ZoneCheck::checkStrands()
{
    const std::string most = minutesText(m_zone.develop.most);
    const bool fromFirst = m_zone.clock == ClockStart::FirstContact;
    checkLength(m_findings, at("first_strand_most"), m_zone.firstStrandMost);
    checkLength(m_findings, at("last_strand_least"), m_zone.lastStrandLeast);
    if (fromFirst && m_zone.apply.slowest > m_zone.develop.most)
        m_findings.add(
            at("apply"),
            Sentence::worded("may take %1, longer than develop.most %2 counted from first contact; "
                             "split the zone",
                             minutesText(m_zone.apply.slowest), most),
            {at("develop"), at("clock")});
    if (!fromFirst && m_zone.lastStrandLeast && *m_zone.lastStrandLeast > m_zone.develop.most)
        m_findings.add(at("last_strand_least"),
                       Sentence::worded("%1 is more than develop.most %2, counted from the same end of "
                                        "application; lower it or raise most",
                                        minutesText(*m_zone.lastStrandLeast), most),
                       {at("develop"), at("clock")});
}

void ZoneCheck::checkSeries(const Looks& looks)
{
    if (looks.first >= looks.until)
        m_findings.add(at("looks.first"),
                       Sentence::worded(
                           "%1 is not before until %2, so that no look would be due; look earlier, or leave "
                           "looks out",
                           minutesText(looks.first), minutesText(looks.until)),
                       {at("looks.until"), at("develop.target")});
    else if (looks.every && *looks.every > Seconds{0}
             && (looks.until - looks.first - Seconds{1}) / *looks.every
                 >= static_cast<std::int64_t>(mostLooks))
        m_findings.add(at("looks.every"),
                       Sentence::worded("%1 makes more than %2 looks; look less often",
                                        minutesText(*looks.every), mostLooks),
                       {at("looks.first"), at("looks.until"), at("develop.target")});
    if (looks.every && looks.tolerance > *looks.every)
        add("looks.tolerance",
            Sentence::worded(
                "%1 is more than every %2, so that looks would change places; make it at most half of every",
                minutesText(looks.tolerance), minutesText(*looks.every)),
            "looks.every");
}

void ZoneCheck::checkLooks()
{
    if (!m_zone.looks)
        return;
    const Looks& looks = *m_zone.looks;
    checkLength(m_findings, at("looks.first"), looks.first);
    if (looks.every)
        checkTask(m_findings, at("looks.every"), *looks.every);
    checkTask(m_findings, at("looks.length"), looks.length);
    checkLength(m_findings, at("looks.tolerance"), looks.tolerance);
    checkLength(m_findings, at("looks.until"), looks.until);
    checkSeries(looks);
}

void ZoneCheck::checkLateJobs()
{
    if (!checkCount(m_findings, at("late"), m_zone.late.size(), mostLateJobs, Sentence::worded("late jobs")))
        return;
    for (std::size_t i = 0; i < m_zone.late.size(); ++i) {
        const LateJob& job = m_zone.late[i];
        const std::string place = nth(at("late"), i);
        checkName(m_findings, inside(place, "name"), job.name);
        const bool before = checkLength(m_findings, inside(place, "before"), job.before);
        const bool length = checkTask(m_findings, inside(place, "length"), job.length);
        const bool tolerance = checkLength(m_findings, inside(place, "tolerance"), job.tolerance);
        if (before && length && tolerance && job.before + job.tolerance < job.length)
            m_findings.add(inside(place, "length"),
                           Sentence::worded(
                               "%1 is more than before %2 and tolerance %3 leave until the water; start it "
                               "earlier or make it shorter",
                               minutesText(job.length), minutesText(job.before), minutesText(job.tolerance)),
                           {inside(place, "before"), inside(place, "tolerance")});
    }
}

void ZoneCheck::checkWhere()
{
    for (std::size_t i = 0; i < m_zone.where.size(); ++i) {
        const auto earlier = m_zone.where.begin() + static_cast<std::ptrdiff_t>(i);
        if (std::find(m_zone.where.begin(), earlier, m_zone.where[i]) == earlier)
            continue;
        const std::size_t word = static_cast<std::size_t>(m_zone.where[i].section) * stretches
            + static_cast<std::size_t>(m_zone.where[i].stretch);
        m_findings.add(nth(at("where"), i), json::quoted(placeWords[word]) + " is listed twice; take one out",
                       {at("where")});
    }
}

void ZoneCheck::checkRinse()
{
    checkLength(m_findings, at("reach"), m_zone.reach);
    checkHarm(m_findings, at("under"), m_zone.under);
    checkHarm(m_findings, at("over"), m_zone.over);
    if (!m_coat.bowls.empty() && m_zone.bowl >= m_coat.bowls.size())
        m_findings.add(at("bowl"), Sentence::worded("there is no such bowl; name one of the coat"));
    if (m_coat.groups.empty())
        return;
    if (m_zone.group >= m_coat.groups.size()) {
        m_findings.add(at("group"), Sentence::worded("there is no such rinse group; name one of the coat"));
        return;
    }
    const Seconds rinse = m_coat.groups[m_zone.group].rinse;
    const std::string coatPlace = m_place.substr(0, m_place.rfind(".zones"));
    if (m_zone.reach > rinse)
        m_findings.add(at("reach"),
                       Sentence::worded(
                           "%1 is more than the %2 that the rinse takes; the zone must be reached before it "
                           "ends",
                           minutesText(m_zone.reach), minutesText(rinse)),
                       {at("group"), inside(nth(inside(coatPlace, "rinse"), m_zone.group), "length")});
}

}  // namespace

void checkZone(const Coat& coat, const Zone& zone, const std::string& place, Findings& findings)
{
    ZoneCheck check{coat, zone, place, findings};
    check.checkApplication();
    check.checkWindow();
    check.checkStrands();
    check.checkLooks();
    check.checkLateJobs();
    check.checkRinse();
    check.checkWhere();
    if (zone.notBefore)
        checkMoment(findings, inside(place, "not_before"), *zone.notBefore);
    for (std::size_t i = 0; i < zone.after.size(); ++i)
        if (zone.after[i].longestGap)
            checkLength(findings, inside(nth(inside(place, "after"), i), "longest_gap"),
                        *zone.after[i].longestGap);
}

}  // namespace core::service::rules
