#include "core/service/service_file.h"

#include "tests/core/service/reading.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>

namespace core::service {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using namespace std::chrono;

const char* const smallest = R"({ "basinbell": 1, "name": "Root touch-up",
  "coats": [{ "zones": [{ "name": "Root", "apply": 12, "develop": { "target": 30, "most": 35 } }], "rinse": [{ "length": 5 }] }] })";

TEST(ServiceFile, TakesDefaultsForWhatIsLeftOut)
{
    const auto service = readService(smallest, context());
    ASSERT_TRUE(service) << testing::PrintToString(textsOf(service.error()));
    EXPECT_EQ(service->timeZone, "Europe/London");
    EXPECT_EQ(service->head, (Head{"", HeadKind::Person, false}));  // a person, so that the cautions come up
    EXPECT_EQ(service->crew, (Crew{{{"Stylist", {}, {}}}, 1}));
    ASSERT_EQ(service->coats.size(), 1U);
    const Coat& coat = service->coats[0];
    EXPECT_EQ(coat.name, "Coat");
    EXPECT_EQ(coat.bowls, (std::vector<Bowl>{{"Bowl", Seconds{0}, {}, ""}}));
    EXPECT_EQ(coat.groups[0].name, "Rinse");
    const Zone& zone = coat.zones[0];
    EXPECT_EQ(zone.apply, (Application{minutes{12}, minutes{12}, minutes{12}}));
    EXPECT_EQ(zone.develop, (Window{minutes{30}, minutes{30}, minutes{35}}));
    EXPECT_EQ(zone.clock, ClockStart::EndOfApplication);
    EXPECT_EQ(zone.under, measure::HarmRate{100});
    EXPECT_EQ(zone.over, measure::HarmRate{100});
}

TEST(ServiceFile, ReadsEverythingWhereItBelongs)
{
    const auto service = readService(richText, context());
    ASSERT_TRUE(service);
    const auto june = [](Seconds time) {
        return sys_days{2026y / June / 1} + time - hours{1};
    };  // summer time
    EXPECT_TRUE(service->demo);
    EXPECT_EQ(service->head, (Head{"Sea witch", HeadKind::Wefts, true}));
    EXPECT_EQ(service->crew.basins, 2U);
    EXPECT_EQ(service->crew.hands[0].away[0], (Interval{june(hours{12}), june(hours{12} + minutes{30})}));
    EXPECT_EQ(service->crew.hands[1].kinds, (std::vector<Work>{Work::Mix, Work::Apply}));
    EXPECT_EQ(service->notBefore, june(hours{9}));
    EXPECT_EQ(service->readyBy, june(hours{17}));
    EXPECT_EQ(service->buffer, minutes{10});
    const Coat& coat = service->coats[0];
    EXPECT_EQ(coat.bowls[0], (Bowl{"Deep", minutes{4}, minutes{45}, "two\nlines"}));
    EXPECT_EQ(coat.zones[0].late, (std::vector<LateJob>{{"Emulsify", minutes{3}, minutes{3}, Seconds{60}}}));
    EXPECT_EQ(coat.zones[1].apply, (Application{minutes{8}, minutes{10}, minutes{12}}));
    EXPECT_EQ(coat.zones[1].looks, (Looks{minutes{5}, minutes{5}, minutes{1}, minutes{2}, minutes{20}}));
    EXPECT_EQ(coat.zones[1].over, measure::HarmRate{50});
    EXPECT_EQ(coat.zones[2].after, (std::vector<After>{{1, minutes{10}}, {0, {}}}));
    EXPECT_EQ(coat.zones[2].group, 1U);
    EXPECT_EQ(coat.groups[1].waterLatest, june(hours{10} + minutes{45}));
    EXPECT_EQ(coat.dryUnattended, minutes{20});
    EXPECT_EQ(coat.gapMost, minutes{60});
}

TEST(ServiceFile, ReadsDecimalsExactly)
{
    const auto service = readService(edited({{"/coats/0/zones/0/late/0/length", "0.1"},
                                             {"/coats/0/zones/0/apply", "\"12:20\""},
                                             {"/coats/0/zones/0/over", "0.07"}}),
                                     context());
    ASSERT_TRUE(service);
    EXPECT_EQ(service->coats[0].zones[0].late[0].length, Seconds{6});
    EXPECT_EQ(service->coats[0].zones[0].apply.usual, Seconds{740});
    EXPECT_EQ(service->coats[0].zones[0].over, measure::HarmRate{7});
}

TEST(ServiceFile, TellsAllThatIsWrongInOneGo)
{
    const std::string text = edited({{"/nme", "1"},
                                     {"/ready_by", "\"2026-10-25T01:30\""},
                                     {"/crew/basins", "0"},
                                     {"/coats/0/zones/0/apply", "\"ten\""},
                                     {"/coats/0/zones/0/develop/most", "22"},
                                     {"/coats/0/zones/0/after", R"(["Ends"])"},
                                     {"/coats/0/zones/2/bowl", "\"Dep\""},
                                     {"/coats/1/zones/0/develop", "-1"}});
    EXPECT_THAT(problemsOf(text),
                ElementsAre(HasSubstr("ready_by: 01:30 comes twice"),
                            HasSubstr("coats[0].zones[0].apply: \"ten\" is not a length"),
                            HasSubstr("coats[0].zones[2].bowl: \"Dep\" is not known"),
                            HasSubstr("nme: there is no such key"), HasSubstr("crew.basins: 0 is too few"),
                            HasSubstr("coats[0].zones[0].develop.most: 22 is less than target 30"),
                            HasSubstr("coats[0].zones[0].after: \"Root\" waits for"),
                            HasSubstr("coats[1].zones[0].develop: -1 is negative")));
}

// The stand-in for what could not be read must not bring problems of its own.
TEST(ServiceFile, TellsNothingTwice)
{
    EXPECT_THAT(problemsOf(edited({{"/coats/0/zones/0/develop/target", "\"?\""}})),
                ElementsAre(HasSubstr("coats[0].zones[0].develop.target: \"?\" is not a length")));
    EXPECT_THAT(problemsOf(edited({{"/coats/0/zones/1/develop", ""}})),
                ElementsAre(HasSubstr("coats[0].zones[1].develop: is missing")));
    EXPECT_THAT(problemsOf(edited({{"/coats/0/zones/0", "7"}})),
                ElementsAre(HasSubstr("coats[0].zones[0]: 7 is not a zone"),
                            HasSubstr("coats[0].zones[1].after[0]: \"Root\" is not known"),
                            HasSubstr("coats[0].zones[2].after[1]: \"Root\" is not known")));
    EXPECT_THAT(problemsOf("[1]"), ElementsAre("a list is not a service, which is an object: { ... }"));
}

TEST(ServiceFile, TellsOfRepeatedKeys)
{
    std::string text = smallest;
    text.insert(1, "\"name\": \"Other\",");
    EXPECT_THAT(problemsOf(text), ElementsAre("name: this key is there twice; keep one of them"));
}

TEST(ServiceFile, CountsProblemsPastTwoHundred)
{
    std::string zones = "7";
    for (int i = 1; i < 300; ++i)
        zones += ",7";
    const auto problems = problemsOf(R"({"basinbell": 1, "name": "x", "coats": [{"zones": [)" + zones
                                     + R"(], "rinse": [{"length": 5}]}]})");
    ASSERT_EQ(problems.size(), 201U);
    EXPECT_EQ(problems.back(), "and 100 more problems; mend these first");
}

TEST(ServiceFile, OfANewerVersionIsNotGuessedAt)
{
    for (const char* version : {"2", "17", "1e99"})
        EXPECT_THAT(problemsOf(std::string{"{\"basinbell\": "} + version + ", \"spirals\": [], \"name\": 3}"),
                    ElementsAre(HasSubstr(
                        "of the format and this program reads version 1; open it with a newer Basinbell")));
    EXPECT_THAT(problemsOf(R"({"basinbell": 2})"),
                ElementsAre("basinbell: this file has version 2 of the format and this program reads version "
                            "1; open it with a newer Basinbell"));
}

/// An endless file that counts how much of it was read.
class Endless final : public std::streambuf {
public:
    std::size_t m_given = 0;

protected:
    int_type underflow() override
    {
        m_given += m_block.size();
        setg(m_block.data(), m_block.data(), m_block.data() + m_block.size());
        return traits_type::to_int_type(m_block[0]);
    }

private:
    std::string m_block = std::string(4096, ' ');
};

TEST(ServiceFile, LargerThanFourMegabytesIsNotReadToItsEnd)
{
    Endless endless;
    std::istream in{&endless};
    const auto service = readService(in, context());
    ASSERT_FALSE(service);
    EXPECT_THAT(textsOf(service.error()),
                ElementsAre("the file is larger than 4 MB; this is no service file"));
    EXPECT_LE(endless.m_given, mostFileBytes + 128 * 1024);
}

TEST(ServiceFile, OfFourMegabytesIsRead)
{
    std::string text = smallest;
    text.append(mostFileBytes - text.size(), ' ');
    std::istringstream in{text};
    EXPECT_TRUE(readService(in, context()));
    EXPECT_THAT(problemsOf(text + ' '), ElementsAre("the file is larger than 4 MB; this is no service file"));
}

TEST(ServiceFile, ClockTimesOfAnUnknownZoneBringNoProblemsOfTheirOwn)
{
    const ReadContext nowhere{london(), "", context().today};
    std::string text = edited({{"/zone", ""}});
    const auto service = readService(text, nowhere);
    ASSERT_FALSE(service);
    EXPECT_THAT(textsOf(service.error()),
                ElementsAre("zone: is missing, and this computer's own time zone is not known; name one such "
                            "as \"Europe/London\""));
}

TEST(ServiceFile, LimitsWhatIsAbsurd)
{
    Json rich = Json::parse(richText);
    const Json zone = Json::parse(R"({"name": "Z", "apply": 1, "develop": 1})");
    rich["coats"][1]["zones"] = Json::array();
    for (int i = 0; i < 201; ++i) {
        rich["coats"][1]["zones"].push_back(zone);
        rich["coats"][1]["zones"].back()["name"] = "Z" + std::to_string(i);
    }
    EXPECT_THAT(problemsOf(rich.dump()),
                ElementsAre("coats: 204 zones in all are more than 200, the most that are accepted"));

    Json coats = Json::parse(richText);
    const Json last = coats["coats"][1];
    for (int i = 0; i < 49; ++i) {
        coats["coats"].push_back(last);
        coats["coats"].back()["name"] = "C" + std::to_string(i);
    }
    EXPECT_THAT(problemsOf(coats.dump()),
                ElementsAre("coats: 51 coats are more than 50, the most that are accepted"));

    Json crew = Json::parse(richText);
    for (int i = 0; i < 19; ++i)
        crew["crew"]["hands"].push_back({{"name", "H" + std::to_string(i)}});
    EXPECT_THAT(problemsOf(crew.dump()),
                ElementsAre("crew.hands: 21 pairs of hands are more than 20, the most that are accepted"));

    EXPECT_THAT(problemsOf(edited({{"/name", ("\"" + std::string(101, 'x') + "\"").c_str()}})),
                ElementsAre("name: has 101 characters; write at most 100"));
}

}  // namespace
}  // namespace core::service
