#include "tests/core/temporal/uncertain_networks.h"

#include "core/temporal/executor.h"

#include <gtest/gtest.h>

namespace core::temporal {

UncertainNetwork randomNetwork(Dice& dice, const Shape& shape)
{
    UncertainNetwork network{.points = 1 + 2 * shape.links + shape.free, .lags = {}, .links = {}};
    for (int index = 0; index < shape.links; ++index) {
        Uncertain link{.start = 1 + 2 * index, .end = 2 + 2 * index};
        if (shape.chained && dice.between(0, 3) == 0)
            link.start = 2 * dice.between(0, index);
        link.least = dice.between(shape.shortest, shape.longest);
        link.most = link.least + dice.between(0, shape.longest);
        link.usual = dice.between(link.least, link.most);
        network.links.push_back(link);
    }
    for (Point point = 1; point < network.points; ++point)
        if (point > 2 * shape.links || point % 2 == 1)
            window(network, origin, point, 0, shape.last);
    for (int count = 0; count < shape.lags; ++count) {
        Lag lag = dice.lag(network.points, shape.lagLeast, shape.lagMost);
        if (lag.from == origin || lag.to == origin)  // Clock times are set above; few more are needed.
            lag = dice.lag(network.points, shape.lagLeast, shape.lagMost);
        network.lags.push_back(lag);
    }
    return network;
}

UncertainNetwork waitForAnEnd()
{
    UncertainNetwork network{.points = 4, .lags = {{1, 0, 0}}, .links = {{1, 2, 1, 5, 10}}};
    window(network, 3, 2, -5, 3);
    return network;
}

void window(UncertainNetwork& network, Point from, Point to, Time least, Time most)
{
    network.lags.push_back({from, to, most});
    network.lags.push_back({to, from, -least});
}

UncertainNetwork only(const UncertainNetwork& network, const std::vector<int>& lags,
                      const std::vector<int>& links)
{
    UncertainNetwork left{.points = network.points, .lags = {}, .links = {}};
    for (const int lag : lags)
        left.lags.push_back(network.lags[static_cast<std::size_t>(lag)]);
    for (const int link : links)
        left.links.push_back(network.links[static_cast<std::size_t>(link)]);
    return left;
}

void forAllLengths(const UncertainNetwork& network,
                   const std::function<void(const std::vector<Time>&)>& visit)
{
    std::vector<Time> lengths;
    for (const Uncertain& link : network.links)
        lengths.push_back(link.least);
    while (true) {
        visit(lengths);
        std::size_t place = 0;
        while (place < lengths.size() && lengths[place] == network.links[place].most) {
            lengths[place] = network.links[place].least;
            ++place;
        }
        if (place == lengths.size())
            return;
        ++lengths[place];
    }
}

void forExtremeLengths(const UncertainNetwork& network,
                       const std::function<void(const std::vector<Time>&)>& visit)
{
    for (unsigned choice = 0; choice < 1U << network.links.size(); ++choice) {
        std::vector<Time> lengths;
        for (const Uncertain& link : network.links)
            lengths.push_back((choice >> lengths.size() & 1U) != 0 ? link.most : link.least);
        visit(lengths);
    }
}

std::vector<std::vector<Time>> someWishes(const UncertainNetwork& network, Dice& dice)
{
    const auto points = static_cast<std::size_t>(network.points);
    std::vector<std::vector<Time>> wishes = {std::vector<Time>(points, -farTime),
                                             std::vector<Time>(points, farTime), std::vector<Time>(points)};
    for (Time& time : wishes.back())
        time = dice.between(0, 80);
    return wishes;
}

bool isRunOf(const UncertainNetwork& network, const std::vector<Time>& lengths,
             const std::vector<Time>& times)
{
    for (std::size_t index = 0; index < lengths.size(); ++index) {
        const Uncertain& link = network.links[index];
        if (times[static_cast<std::size_t>(link.end)] - times[static_cast<std::size_t>(link.start)]
            != lengths[index])
            return false;
    }
    return times[origin] == 0 && keepsAll(network.lags, times);
}

int runManyLinks(std::uint64_t seed, int networks, int randomRuns)
{
    int runs = 0;
    std::vector<Time> times;
    while (networks > 0 && !testing::Test::HasFailure()) {
        Dice dice{seed};
        const UncertainNetwork network = randomNetwork(dice,
                                                       {.links = dice.between(5, 10),
                                                        .free = dice.between(0, 4),
                                                        .last = 80,
                                                        .lags = dice.between(6, 14),
                                                        .longest = 10,
                                                        .lagLeast = -10,
                                                        .lagMost = 25,
                                                        .chained = dice.between(0, 1) == 1});
        SCOPED_TRACE(testing::Message() << "seed " << seed++ << '\n' << textOf(network));
        auto executor = Executor::of(network);
        if (!executor)
            continue;
        --networks;
        const auto wishes = someWishes(network, dice);
        const auto runOnce = [&](const std::vector<Time>& lengths) {
            executor->run(lengths, wishes[static_cast<std::size_t>(runs++) % wishes.size()], times);
            ASSERT_TRUE(isRunOf(network, lengths, times)) << textOf(lengths) << '\n' << textOf(times);
        };
        forExtremeLengths(network, runOnce);
        for (int run = 0; run < randomRuns; ++run) {
            std::vector<Time> lengths;
            for (const Uncertain& link : network.links)
                lengths.push_back(dice.between(link.least, link.most));
            runOnce(lengths);
        }
    }
    return runs;
}

std::string textOf(const UncertainNetwork& network)
{
    std::string text = std::to_string(network.points) + " points\n";
    for (const Uncertain& link : network.links)
        text += "t" + std::to_string(link.end) + " - t" + std::to_string(link.start) + " turns out in ["
            + std::to_string(link.least) + ", " + std::to_string(link.most) + "], usually "
            + std::to_string(link.usual) + '\n';
    for (const Lag& lag : network.lags)
        text += textOf(lag) + '\n';
    return text;
}

std::string textOf(const std::vector<Time>& times)
{
    std::string text = "times";
    for (const Time time : times)
        text += ' ' + std::to_string(time);
    return text;
}

std::string textOf(const Objection& objection)
{
    std::string text = objection.lag ? textOf(*objection.lag) : "nothing wins";
    text += " because of lags";
    for (const int lag : objection.lags)
        text += ' ' + std::to_string(lag);
    text += " and links";
    for (const int link : objection.links)
        text += ' ' + std::to_string(link);
    return text;
}

}  // namespace core::temporal
