#include "tests/core/service/reading.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// Every refusal of docs/service-file.md, by its exact words, one fault at a time.

namespace core::service {
namespace {

using testing::ElementsAre;

struct Refusal {
    const char* pointer;
    const char* value;
    const char* problem;
};

void expectRefused(std::initializer_list<Refusal> refusals)
{
    for (const Refusal& refusal : refusals)
        EXPECT_THAT(problemsOf(edited({{refusal.pointer, refusal.value}})), ElementsAre(refusal.problem))
            << refusal.pointer << " = " << refusal.value;
}

TEST(ServiceFile, IsReadWithoutFault)
{
    EXPECT_THAT(problemsOf(richText), ElementsAre());
}

TEST(Refusals, OfTheTop)
{
    expectRefused({
        {"/basinbell", "", "basinbell: is missing; a service file has \"basinbell\": 1 at its top"},
        {"/basinbell", "0", "basinbell: 0 is no version of the format; write 1"},
        {"/basinbell", "\"1\"", "basinbell: \"1\" is no version of the format; write 1"},
        {"/basinbell", "1.5", "basinbell: 1.5 is no version of the format; write 1"},
        {"/name", "", "name: is missing; give the service a name"},
        {"/name", "7", "name: 7 is not a text; write it between quotation marks"},
        {"/name", "\"\"", "name: is empty; write a name"},
        {"/name", "\" x\"", "name: starts or ends with a space; take it out"},
        {"/name", R"("a\tb")", "name: holds a control character, such as a tab; take it out"},
        {"/zone", "\"Mars/Base\"",
         "zone: \"Mars/Base\" is not a known time zone; use an IANA name such as \"Europe/London\""},
        {"/date", "\"1 June\"", "date: \"1 June\" is not a day; write it as \"2026-10-25\""},
        {"/date", "\"2026-02-29\"", "date: \"2026-02-29\" is not a day; write it as \"2026-10-25\""},
        {"/demo", "\"yes\"", "demo: \"yes\" is neither true nor false"},
        {"/buffer", "-1", "buffer: -1 is negative; lengths run from 0 to 1440 (24 h)"},
        {"/ready_by", "\"09:00\"",
         "ready_by: is not after not_before by more than the buffer; make it later"},
        {"/ready_by", "\"09:10\"",
         "ready_by: is not after not_before by more than the buffer; make it later"},
        {"/ready_by", "\"2126-01-01T10:00\"",
         "ready_by: is not between the years 2000 and 2099; mend the date"},
        {"/coats", "", "coats: is missing; list the coats; the smallest file has one"},
        {"/coats", "[]", "coats: is empty; list at least one coat"},
        {"/coats", "{}", "coats: an object is not a list: [ ... ]"},
        {"/coats/1/name", "\"First\"",
         "coats[1].name: \"First\" is the name of coats[0].name too; give each coat a name of its own"},
        {"/coats/1/name", "", "coats[1].name: is missing; where there are several, each needs a name"},
        {"/redy_by", "1", "redy_by: there is no such key; did you mean \"ready_by\"?"},
    });
}

TEST(Refusals, OfHeadAndCrew)
{
    expectRefused({
        {"/head", "[]", "head: a list is not a head, which is an object: { ... }"},
        {"/head/kind", "\"doll\"", "head.kind: \"doll\" is not known; known here: person, wig, wefts"},
        {"/head/kind", "\"wig\"",
         "head.comes_apart: only wefts come apart; make it false, or the kind \"wefts\""},
        {"/crew/hands", "[]", "crew.hands: is empty; at least one pair of hands is needed"},
        {"/crew/hands/1/name", "\"Odile\"",
         "crew.hands[1].name: \"Odile\" is the name of crew.hands[0].name too; give each pair of hands a "
         "name of its own"},
        {"/crew/hands/1/name", "",
         "crew.hands[1].name: is missing; give each pair of hands a name, such as \"Stylist\""},
        {"/crew/hands/1/does", "[]",
         "crew.hands[1].does: names no kind of work; leave the key out for hands that do everything"},
        {"/crew/hands/1/does/1", "\"aply\"",
         "crew.hands[1].does[1]: \"aply\" is not known; did you mean \"apply\"?"},
        {"/crew/hands/1/does/1", "\"mix\"", "crew.hands[1].does[1]: \"mix\" is listed twice; take one out"},
        {"/crew/hands/0/does", R"(["mix", "apply", "look", "rinse", "dry", "assess"])",
         "crew.hands: nobody does \"late\", and the service needs it; add it to the does of somebody"},
        {"/crew/hands/0/away/0/until", "\"11:00\"",
         "crew.hands[0].away[0].until: is not after from; a time away ends later than it starts"},
        {"/crew/hands/0/away/1/from", "\"12:20\"",
         "crew.hands[0].away[1].from: is before the end of the time away above; list them in order, without "
         "overlap"},
        {"/crew/hands/0/away/0/from", "",
         "crew.hands[0].away[0].from: is missing; say from when, such as \"13:00\""},
        {"/crew/basins", "0", "crew.basins: 0 is too few; at least one basin is needed"},
        {"/crew/basins", "21", "crew.basins: 21 basins are more than 20, the most that are accepted"},
        {"/crew/basins", "1.5", "crew.basins: 1.5 is not a count; write a whole number"},
    });
}

TEST(Refusals, OfLengths)
{
    const char* const apply = "/coats/0/zones/0/apply";
    expectRefused({
        {apply, "0", "coats[0].zones[0].apply: 0 is too short; write at least one second, \"0:01\""},
        {apply, "-2.5", "coats[0].zones[0].apply: -2.5 is negative; lengths run from 0 to 1440 (24 h)"},
        {apply, "1440.05",
         "coats[0].zones[0].apply: 1440.05 is more than 1440 (24 h), the longest that is accepted"},
        {apply, "1e15",
         "coats[0].zones[0].apply: 1e+15 is more than 1440 (24 h), the longest that is accepted"},
        {apply, "0.33",
         "coats[0].zones[0].apply: 0.33 min is not a whole number of seconds; write it as minutes and "
         "seconds, such as \"2:20\" for 2 min 20 s"},
        {apply, "\"ten\"",
         "coats[0].zones[0].apply: \"ten\" is not a length; a length is a number of minutes such as 12 or "
         "2.5, or \"2:20\" for 2 min 20 s"},
        {apply, "null",
         "coats[0].zones[0].apply: null is not a length; a length is a number of minutes such as 12 or 2.5, "
         "or \"2:20\" for 2 min 20 s"},
        {apply, "\"1:60\"",
         "coats[0].zones[0].apply: \"1:60\" is not a length; a length is a number of minutes such as 12 or "
         "2.5, or \"2:20\" for 2 min 20 s"},
    });
}

TEST(Refusals, OfBowlsAndRinse)
{
    expectRefused({
        {"/coats/0/bowls/0/pot_life", "0",
         "coats[0].bowls[0].pot_life: 0 is too short; write at least one second, \"0:01\""},
        {"/coats/0/bowls/2", R"({"name": "Spare"})",
         "coats[0].bowls[2]: no zone is applied from this bowl; take it out, or name it in a zone"},
        {"/coats/1/bowls", "[]",
         "coats[1].bowls: is empty; list a bowl, or leave the key out for one without mixing"},
        {"/coats/0/rinse/1/name", "\"Spare\"",
         "coats[0].zones[2].group: \"Right\" is not known; known here: Left, Spare"},
        {"/coats/0/rinse/2", R"({"name": "Spare", "length": 5})",
         "coats[0].rinse[2]: no zone is rinsed in this group; take it out, or name it in a zone"},
        {"/coats/1/rinse", "",
         "coats[1].rinse: is missing; list the rinse groups, such as [{ \"length\": 5 }]"},
        {"/coats/1/rinse", "[]",
         "coats[1].rinse: is empty; list at least one rinse group, such as { \"length\": 5 }"},
        {"/coats/1/rinse/0/length", "",
         "coats[1].rinse[0].length: is missing; say how many minutes the rinse takes"},
        {"/coats/0/rinse/1/water/latest", "\"10:00\"",
         "coats[0].rinse[1].water.latest: is before earliest; swap them"},
        {"/coats/0/rinse/0/length", "1.5",
         "coats[0].zones[1].reach: 2 is more than the 1.5 that the rinse takes; the zone must be reached "
         "before it ends"},
        {"/coats/0/gap/most", "4", "coats[0].gap.most: 4 is less than least 5; raise most or lower least"},
        {"/coats/1/gap", R"({"least": 5})",
         "coats[1].gap: leads to the next coat, and this is the last one; take it out"},
        {"/coats/1/zones", "[]", "coats[1].zones: is empty; list at least one zone"},
        {"/coats/1/dry", "10", "coats[1].dry: 10 is not the drying, which is an object: { ... }"},
    });
}

TEST(Refusals, OfApplicationAndWindow)
{
    expectRefused({
        {"/coats/0/zones/1/apply/quickest", "10.5",
         "coats[0].zones[1].apply.quickest: 10.5 is more than usual 10; make quickest at most usual"},
        {"/coats/0/zones/1/apply/slowest", "9",
         "coats[0].zones[1].apply.slowest: 9 is less than usual 10; make slowest at least usual"},
        {"/coats/0/zones/1/apply/usual", "",
         "coats[0].zones[1].apply.usual: is missing; say how many minutes it usually takes"},
        {"/coats/0/zones/2/apply", "",
         "coats[0].zones[2].apply: is missing; say how many minutes applying takes: 12, or { \"quickest\": "
         "10, \"usual\": 12, \"slowest\": 15 }"},
        {"/coats/0/zones/0/develop/least", "31",
         "coats[0].zones[0].develop.least: 31 is more than target 30; make least at most the target"},
        {"/coats/0/zones/0/develop/most", "29.5",
         "coats[0].zones[0].develop.most: 29.5 is less than target 30; make most at least the target"},
        {"/coats/0/zones/2/develop", "",
         "coats[0].zones[2].develop: is missing; say how long it develops, in minutes: { \"least\": 25, "
         "\"target\": 30, \"most\": 35 }"},
        {"/coats/0/zones/2/develop", "0",
         "coats[0].zones[2].develop: 0 is too short; write at least one second, \"0:01\""},
        {"/coats/0/zones/1/apply/slowest", "26",
         "coats[0].zones[1].apply: may take 26, longer than develop.most 25 counted from first contact; "
         "split the zone"},
        {"/coats/0/zones/0/last_strand_least", "36",
         "coats[0].zones[0].last_strand_least: 36 is more than develop.most 35, counted from the same end of "
         "application; lower it or raise most"},
        {"/coats/0/zones/1/clock", "\"start\"",
         "coats[0].zones[1].clock: \"start\" is not known; known here: end, first"},
        {"/coats/0/zones/1/over", "0.125",
         "coats[0].zones[1].over: 0.125 has more than two decimal places; a harm has at most two"},
        {"/coats/0/zones/1/over", "-0.5",
         "coats[0].zones[1].over: -0.5 is negative; a harm runs from 0 to 1000"},
        {"/coats/0/zones/1/over", "1000.01",
         "coats[0].zones[1].over: 1000.01 is more than 1000, the greatest harm"},
        {"/coats/0/zones/1/over", "\"much\"",
         "coats[0].zones[1].over: \"much\" is not a harm; a harm is a number such as 1 or 2.5"},
        {"/coats/0/zones/1/alone", "1", "coats[0].zones[1].alone: 1 is neither true nor false"},
        {"/coats/0/zones/1/not_before", "\"10 o'clock\"",
         "coats[0].zones[1].not_before: \"10 o'clock\" is not a clock time; write \"14:30\", or "
         "\"2026-10-25T14:30\" with the day"},
        {"/coats/0/zones/1/not_before", "\"2126-01-01T10:00\"",
         "coats[0].zones[1].not_before: is not between the years 2000 and 2099; mend the date"},
        {"/coats/0/zones/1/where/0", "\"crown root\"",
         "coats[0].zones[1].where[0]: \"crown root\" is not known; did you mean \"crown roots\"?"},
        {"/coats/0/zones/1/where/1", "\"crown mids\"",
         "coats[0].zones[1].where[1]: \"crown mids\" is listed twice; take one out"},
    });
}

TEST(Refusals, OfLooksAndLateJobs)
{
    expectRefused({
        {"/coats/0/zones/1/looks/first", "20",
         "coats[0].zones[1].looks.first: 20 is not before until 20, so that no look would be due; look "
         "earlier, or leave looks out"},
        {"/coats/0/zones/1/looks/every", "\"0:05\"",
         "coats[0].zones[1].looks.every: 0:05 makes more than 100 looks; look less often"},
        {"/coats/0/zones/1/looks/every", "0",
         "coats[0].zones[1].looks.every: 0 is too short; write at least one second, \"0:01\""},
        {"/coats/0/zones/1/looks/tolerance", "6",
         "coats[0].zones[1].looks.tolerance: 6 is more than every 5, so that looks would change places; make "
         "it at most half of every"},
        {"/coats/0/zones/1/looks/length", "",
         "coats[0].zones[1].looks.length: is missing; say how many minutes a look takes, such as 1"},
        {"/coats/0/zones/0/late/0/length", "4.05",
         "coats[0].zones[0].late[0].length: 4.05 is more than before 3 and tolerance 1 leave until the "
         "water; start it earlier or make it shorter"},
        {"/coats/0/zones/0/late/0/name", "",
         "coats[0].zones[0].late[0].name: is missing; say what is done, such as \"Emulsify\""},
        {"/coats/0/zones/0/late/0/before", "",
         "coats[0].zones[0].late[0].before: is missing; say how many minutes before the water it starts"},
    });
}

TEST(Refusals, OfReferences)
{
    expectRefused({
        {"/coats/0/zones/2/name", "\"Root\"",
         "coats[0].zones[2].name: \"Root\" is the name of coats[0].zones[0].name too; give each zone a name "
         "of its own"},
        {"/coats/0/zones/0/bowl", "\"Dep\"",
         "coats[0].zones[0].bowl: \"Dep\" is not known; did you mean \"Deep\"?"},
        {"/coats/0/zones/0/bowl", "",
         "coats[0].zones[0].bowl: is missing; there are several; name one of them"},
        {"/coats/0/zones/0/group", "",
         "coats[0].zones[0].group: is missing; there are several; name one of them"},
        {"/coats/0/zones/1/after/0", "\"Roots\"",
         "coats[0].zones[1].after[0]: \"Roots\" is not known; did you mean \"Root\"?"},
        {"/coats/0/zones/1/after/0", "\"Mids\"",
         "coats[0].zones[1].after[0]: a zone cannot wait for itself; take it out"},
        {"/coats/0/zones/2/after/1", "\"Mids\"",
         "coats[0].zones[2].after[1]: \"Mids\" is listed twice; take one out"},
        {"/coats/0/zones/2/after/0/zone", "",
         "coats[0].zones[2].after[0].zone: is missing; name the zone that is applied before"},
        {"/coats/0/zones/2/after/0/longest_gap", "-1",
         "coats[0].zones[2].after[0].longest_gap: -1 is negative; lengths run from 0 to 1440 (24 h)"},
        {"/coats/0/zones/0/after", R"(["Ends"])",
         "coats[0].zones[0].after: \"Root\" waits for \"Ends\", \"Ends\" waits for \"Mids\", \"Mids\" waits "
         "for \"Root\"; take one of these out"},
        {"/coats/0/zones/0/aply", "3",
         "coats[0].zones[0].aply: there is no such key; did you mean \"apply\"?"},
        {"/coats/0/rinse/0/zzz", "3",
         "coats[0].rinse[0].zzz: there is no such key; known here: name, length, water"},
    });
}

// The second bowl of that name can be reached by no zone, so it is unused as well.
TEST(Refusals, OfEqualNamesOfBowlsAndGroups)
{
    EXPECT_THAT(
        problemsOf(edited({{"/coats/0/bowls/2", R"({"name": "Deep"})"}})),
        ElementsAre(
            "coats[0].bowls[2]: no zone is applied from this bowl; take it out, or name it in a zone",
            "coats[0].bowls[2].name: \"Deep\" is the name of coats[0].bowls[0].name too; give each bowl a "
            "name of its own"));
    EXPECT_THAT(
        problemsOf(edited({{"/coats/0/rinse/2", R"({"name": "Left", "length": 5})"}})),
        ElementsAre(
            "coats[0].rinse[2]: no zone is rinsed in this group; take it out, or name it in a zone",
            "coats[0].rinse[2].name: \"Left\" is the name of coats[0].rinse[0].name too; give each rinse "
            "group a name of its own"));
}

}  // namespace
}  // namespace core::service
