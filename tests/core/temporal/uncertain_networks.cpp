#include "tests/core/temporal/uncertain_networks.h"

namespace core::temporal {

UncertainNetwork randomNetwork(Dice& dice, const Shape& shape)
{
    UncertainNetwork network{.points = 1 + 2 * shape.links + shape.free, .lags = {}, .links = {}};
    for (int index = 0; index < shape.links; ++index) {
        Uncertain link{.start = 1 + 2 * index, .end = 2 + 2 * index};
        if (shape.chained && dice.between(0, 3) == 0)
            link.start = 2 * dice.between(0, index);
        link.least = dice.between(1, shape.longest);
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
