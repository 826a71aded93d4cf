#include "tests/bench/minizinc.h"

#include <sys/resource.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <functional>
#include <map>
#include <sstream>
#include <stdexcept>

namespace bench {
namespace {

using core::measure::Seconds;
using core::service::Service;
using core::service::Zone;
using core::stagger::Question;
using Span = std::chrono::duration<double>;

constexpr std::array<const char*, 3> levels = {"harm", "waste", "staleness"};

int minutesOf(Seconds length)
{
    return static_cast<int>(std::chrono::duration_cast<std::chrono::minutes>(length).count());
}

const Zone& zoneOf(const Service& head, std::size_t place)
{
    return head.coats.front().zones[place];
}

const core::service::Bowl& bowlOf(const Service& head, const Zone& zone)
{
    return head.coats.front().bowls[zone.bowl];
}

/// Writes the question down as the parameters of coat.mzn.
class Data {
public:
    explicit Data(const Question& question)
        : m_question{question}
    {
        const core::service::Crew& crew = question.services.front().crew;
        m_text << "pairs = " << crew.hands.size() << "; basins = " << crew.basins << ";\n";
        writeHeads();
        writeZones();
        writeLooks();
        m_text << "horizon = " << horizon() << ";\n";
    }

    [[nodiscard]] std::string text() const { return m_text.str(); }

private:
    using Of = std::function<int(const Service&, const Zone&)>;

    void list(const std::string& name, const std::vector<int>& values)
    {
        m_text << name << " = [";
        for (const int value : values)
            m_text << value << ',';
        m_text << "];\n";
    }

    int opens(const Service& head)
    {
        return minutesOf(*head.notBefore - *m_question.services.front().notBefore);
    }

    void writeHeads()
    {
        std::vector<int> open;
        std::vector<int> rinse;
        for (const Service& head : m_question.services) {
            open.push_back(opens(head));
            rinse.push_back(minutesOf(head.coats.front().groups.front().rinse));
        }
        m_text << "heads = " << open.size() << ";\n";
        list("opens", open);
        list("rinse", rinse);
    }

    std::vector<int> ofZones(const Of& value)
    {
        std::vector<int> values;
        for (const Service& head : m_question.services)
            for (const Zone& zone : head.coats.front().zones)
                values.push_back(value(head, zone));
        return values;
    }

    void writeZones()
    {
        const auto headOf = [this](const Service& head, const Zone&) {
            return static_cast<int>(&head - m_question.services.data()) + 1;
        };
        const std::vector<int> heads = ofZones(headOf);
        m_text << "zones = " << heads.size() << ";\n";
        list("head", heads);
        const auto put = [this](const std::string& name, const Of& value) { list(name, ofZones(value)); };
        put("apply", [](const Service&, const Zone& zone) { return minutesOf(zone.apply.usual); });
        put("mix", [](const Service& head, const Zone& zone) { return minutesOf(bowlOf(head, zone).mix); });
        put("pot_life", [](const Service& head, const Zone& zone) {
            return minutesOf(bowlOf(head, zone).potLife.value_or(Seconds{0}));
        });
        put("least", [](const Service&, const Zone& zone) { return minutesOf(zone.develop.least); });
        put("target", [](const Service&, const Zone& zone) { return minutesOf(zone.develop.target); });
        put("most", [](const Service&, const Zone& zone) { return minutesOf(zone.develop.most); });
        put("under",
            [](const Service&, const Zone& zone) { return static_cast<int>(zone.under.hundredths); });
        put("over", [](const Service&, const Zone& zone) { return static_cast<int>(zone.over.hundredths); });
    }

    void writeLooks()
    {
        std::vector<int> looked;
        std::vector<int> moments;
        std::vector<int> lengths;
        std::vector<int> tolerances;
        int place = 0;
        for (const Service& head : m_question.services)
            for (const Zone& zone : head.coats.front().zones) {
                ++place;
                for (const Seconds moment : zone.looks ? zone.looks->moments() : std::vector<Seconds>{}) {
                    looked.push_back(place);
                    moments.push_back(minutesOf(moment));
                    lengths.push_back(minutesOf(zone.looks->length));
                    tolerances.push_back(minutesOf(zone.looks->tolerance));
                }
            }
        m_text << "looks = " << looked.size() << ";\n";
        list("looked", looked);
        list("moment", moments);
        list("look_length", lengths);
        list("tolerance", tolerances);
    }

    /// No plan that is worth anything reaches further.
    int horizon()
    {
        int sum = opens(m_question.services.back());
        for (const Service& head : m_question.services)
            for (std::size_t place = 0; place < head.coats.front().zones.size(); ++place) {
                const Zone& zone = zoneOf(head, place);
                sum += minutesOf(zone.apply.usual + zone.develop.most + bowlOf(head, zone).mix
                                 + head.coats.front().groups.front().rinse);
            }
        return sum;
    }

    const Question& m_question;
    std::ostringstream m_text;
};

/// What the processes that ended had of the processor.
Span processorTime()
{
    rusage used{};
    getrusage(RUSAGE_CHILDREN, &used);
    const auto span = [](const timeval& time) {
        return Span{static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) / 1e6};
    };
    return span(used.ru_utime) + span(used.ru_stime);
}

struct Said {
    std::map<std::string, double> numbers;  ///< The last said of each name.
    bool found = false;                     ///< Some plan.
    bool complete = false;                  ///< It is the best one.
    bool nothingFits = false;
    Span processor{0};
};

/// Runs a command and reads lines such as "harm = 12;" and "%%%mzn-stat: failures=3".
Said run(const std::string& command)
{
    const Span before = processorTime();
    FILE* output = popen(command.c_str(), "r");
    if (output == nullptr)
        throw std::runtime_error{"cannot run " + command};
    Said said;
    std::array<char, 4096> line{};
    while (std::fgets(line.data(), static_cast<int>(line.size()), output) != nullptr) {
        const std::string text{line.data()};
        said.found = said.found || text.starts_with("----------");
        said.complete = said.complete || text.starts_with("==========");
        said.nothingFits = said.nothingFits || text.starts_with("=====UNSATISFIABLE");
        const std::size_t equals = text.find('=');
        if (equals == std::string::npos || equals == 0)
            continue;
        std::istringstream words{text.substr(0, equals)};
        std::string name;
        while (words >> name) { }  // The last word before the sign.
        said.numbers[name] = std::atof(text.c_str() + equals + 1);
    }
    pclose(output);
    said.processor = processorTime() - before;
    return said;
}

/// A folder that is gone again afterwards.
class Scratch {
public:
    Scratch() { std::filesystem::create_directories(m_path); }
    ~Scratch() { std::filesystem::remove_all(m_path); }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;

    [[nodiscard]] std::string file(const std::string& name) const { return (m_path / name).string(); }

private:
    std::filesystem::path m_path =
        std::filesystem::temp_directory_path() / ("plan_bench." + std::to_string(getpid()));
};

class Solver {
public:
    Solver(const Question& question, Search search, std::chrono::seconds longest)
        : m_data{Data{question}.text() + "guided = " + (search == Search::Guided ? "true" : "false") + ";\n"}
        , m_limit{"ulimit -t " + std::to_string(longest.count()) + "; "}
    {
    }

    MiniZincAnswer solve()
    {
        for (int level = 1; level <= 3; ++level) {
            const Said said = solveLevel(level);
            m_hasFound = m_hasFound || said.found;
            if (said.found)
                for (const char* name : levels)  // A number that is settled beforehand is not said again.
                    if (said.numbers.contains(name))
                        m_found[name] = said.numbers.at(name);
            m_answer.proved = said.complete || said.nothingFits;
            if (!said.complete)
                break;
        }
        if (m_hasFound)
            m_answer.worth = {.breach = {},
                              .deviation = {static_cast<std::int64_t>(m_found["harm"]) * 60},
                              .waste = std::chrono::minutes{static_cast<int>(m_found["waste"])},
                              .staleness = std::chrono::minutes{static_cast<int>(m_found["staleness"])}};
        return m_answer;
    }

private:
    Said solveLevel(int level)
    {
        std::ofstream data{m_scratch.file("coat.dzn")};
        data << m_data << "level = " << level << ";\n";
        for (std::size_t place = 0; place < 2; ++place)
            data << levels[place] << "_most = " << static_cast<int>(m_found[levels[place]]) << ";\n";
        data.close();
        const Said flat = run(m_limit + "minizinc --compile --solver gecode --no-output-ozn --fzn "
                              + m_scratch.file("coat.fzn") + " " COAT_MODEL " " + m_scratch.file("coat.dzn")
                              + " 2>/dev/null");
        m_answer.flattening += flat.processor;
        constexpr Span isShort{0.2};
        Said said = solveFlat();
        Span least = spentBy(said);
        for (int again = 0; again < 4 && least < isShort && said.complete; ++again)
            least = std::min(least, spentBy(solveFlat()));
        m_answer.solving += least;
        m_answer.failures += static_cast<std::uint64_t>(said.numbers["failures"]);
        return said;
    }

    Said solveFlat() { return run(m_limit + "fzn-gecode -s " + m_scratch.file("coat.fzn") + " 2>/dev/null"); }

    static Span spentBy(const Said& said)
    {
        if (!said.numbers.contains("solveTime"))  // It was stopped.
            return said.processor;
        return std::min(said.processor, Span{said.numbers.at("initTime") + said.numbers.at("solveTime")});
    }

    Scratch m_scratch;
    std::string m_data;
    std::string m_limit;
    bool m_hasFound = false;
    std::map<std::string, double> m_found;
    MiniZincAnswer m_answer;
};

}  // namespace

bool miniZincIsThere()
{
    return std::system("command -v minizinc >/dev/null && command -v fzn-gecode >/dev/null") == 0;
}

MiniZincAnswer planWithMiniZinc(const Question& question, Search search, std::chrono::seconds longest)
{
    return Solver{question, search, longest}.solve();
}

}  // namespace bench
