#include "core/service/check.h"

#include "tests/core/service/reading.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// What only a service built by hand can have wrong; the rest is in refusals_test.cpp.

namespace core::service {
namespace {

using std::chrono::minutes;
using testing::ElementsAre;

Service sound()
{
    Coat coat;
    coat.name = "Coat";
    coat.bowls.push_back({"Bowl", Seconds{0}, {}, ""});
    coat.groups.push_back({"Rinse", minutes{5}, {}, {}});
    Zone zone;
    zone.name = "Root";
    zone.apply = {minutes{10}, minutes{10}, minutes{10}};
    zone.develop = {minutes{25}, minutes{30}, minutes{35}};
    coat.zones.push_back(zone);
    Service service;
    service.name = "By hand";
    service.crew.hands.push_back({"Stylist", {}, {}});
    service.coats.push_back(coat);
    return service;
}

TEST(CheckService, FindsNothingInASoundService)
{
    EXPECT_THAT(textsOf(checkService(sound())), ElementsAre());
}

TEST(CheckService, FindsWhatAnEmptyServiceLacks)
{
    EXPECT_THAT(textsOf(checkService(Service{})),
                ElementsAre("name: is empty; write a name",
                            "crew.hands: is empty; at least one pair of hands is needed",
                            "coats: is empty; list at least one coat"));
}

TEST(CheckService, FindsPlacesThatDoNotExist)
{
    Service service = sound();
    service.coats[0].zones[0].bowl = 1;
    service.coats[0].zones[0].group = 1;
    service.coats[0].zones[0].after.push_back({7, {}});
    EXPECT_THAT(textsOf(checkService(service)),
                ElementsAre("coats[0].zones[0].bowl: there is no such bowl; name one of the coat",
                            "coats[0].zones[0].group: there is no such rinse group; name one of the coat",
                            "coats[0].zones[0].after[0]: there is no such zone; name one of the coat"));
}

TEST(CheckService, FindsTextThatIsNotUtf8)
{
    Service service = sound();
    service.coats[0].bowls[0].note = "\xFF";
    service.head.name = "\xC0\xAF";
    EXPECT_THAT(textsOf(checkService(service)),
                ElementsAre("head.name: is not UTF-8 text; write it again",
                            "coats[0].bowls[0].note: is not UTF-8 text; write it again"));
}

TEST(CheckService, NamesEveryLoopOnce)
{
    Service service = sound();
    Coat& coat = service.coats[0];
    coat.zones.resize(6, coat.zones[0]);
    for (std::size_t i = 0; i < coat.zones.size(); ++i)
        coat.zones[i].name = std::string(1, static_cast<char>('A' + i));
    coat.zones[0].after = {{1, {}}};  // A waits for B, which is in no loop
    coat.zones[1].after = {{2, {}}};  // B and C, both ways
    coat.zones[2].after = {{1, {}}};
    coat.zones[5].after = {{4, {}}};  // F, E, D, F
    coat.zones[4].after = {{3, {}}};
    coat.zones[3].after = {{5, {}}};
    EXPECT_THAT(
        textsOf(checkService(service)),
        ElementsAre(
            "coats[0].zones[1].after: \"B\" waits for \"C\", \"C\" waits for \"B\"; take one of these out",
            "coats[0].zones[3].after: \"D\" waits for \"F\", \"F\" waits for \"E\", \"E\" waits for \"D\"; "
            "take one of these out"));
}

TEST(CheckService, AcceptsTheLongestLengthAndNoLonger)
{
    Service service = sound();
    service.buffer = minutes{1440};
    EXPECT_THAT(textsOf(checkService(service)), ElementsAre());
    service.buffer += Seconds{1};
    EXPECT_THAT(textsOf(checkService(service)),
                ElementsAre("buffer: 1440:01 is more than 1440 (24 h), the longest that is accepted"));
}

TEST(ProblemText, LeavesOutAnEmptyPlace)
{
    EXPECT_EQ(problemText({"a.b", std::string{"is wrong"}}), "a.b: is wrong");
    EXPECT_EQ(problemText({"", std::string{"all is wrong"}}), "all is wrong");
}

}  // namespace
}  // namespace core::service
