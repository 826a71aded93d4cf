#include "tests/bench/gecode_project.h"
#include "tests/bench/made_project.h"
#include "tests/bench/project_file.h"
#include "tests/core/temporal/small_projects.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

// Solves every project of a folder, or invented ones, beside Gecode in the same run, one thread.
//     project_bench FOLDER [SECONDS [TABLE]]
//     project_bench --made ACTIVITIES COUNT [SECONDS]
// The folder holds .sch files; the table known values, FOLDER/optimum/optimum.csv where nothing else is said.

namespace {

using core::temporal::Project;
using core::temporal::ProjectOutcome;
using core::temporal::Time;
using Makespan = std::optional<Time>;

struct Case {
    std::string name;
    Project project;
    std::optional<Makespan> known;  ///< Nothing: not known. A makespan of nothing: no schedule fits.
};

struct Solved {
    bool proved = false;
    Makespan makespan;
    double milliseconds = 0;
};

double millisecondsSince(std::clock_t begin)
{
    return 1000.0 * static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC;
}

std::string shown(const Solved& solved)
{
    const std::string value = solved.makespan ? std::to_string(*solved.makespan) : "none";
    return solved.proved ? value : "open, " + value;
}

Solved solveHere(const Case& given, double seconds, int& wrong)
{
    const std::clock_t begin = std::clock();
    core::temporal::Limits limits;
    limits.stop = [&] { return millisecondsSince(begin) > 1000 * seconds; };
    const ProjectOutcome outcome = core::temporal::shortest(given.project, limits);
    Solved solved{outcome.complete, {}, millisecondsSince(begin)};
    if (outcome.best) {
        solved.makespan = outcome.best->makespan;
        const std::string broken = brokenBy(given.project, outcome.best->starts);
        if (!broken.empty() || makespanOf(given.project, outcome.best->starts) != solved.makespan) {
            std::printf("wrong: %s breaks %s\n", given.name.c_str(), broken.c_str());
            ++wrong;
        }
    }
    return solved;
}

Solved solveByGecode(const Case& given, double seconds)
{
    const std::clock_t begin = std::clock();
    const bench::GecodeFound found = bench::shortestByGecode(given.project, seconds);
    return {found.proved, found.makespan, millisecondsSince(begin)};
}

double median(std::vector<double> values)
{
    std::ranges::sort(values);
    return values[values.size() / 2];
}

void printRow(const char* who, const std::vector<Solved>& all)
{
    std::vector<double> times;
    double sum = 0;
    for (const Solved& solved : all) {
        times.push_back(solved.milliseconds);
        sum += solved.milliseconds;
    }
    std::printf("%-10s proved %3td of %3zu   mean %10.3f   median %9.3f   most %10.3f ms\n", who,
                std::ranges::count(all, true, &Solved::proved), all.size(),
                sum / static_cast<double>(times.size()), median(times), std::ranges::max(times));
}

/// Returns how many answers contradict each other.
int run(const std::vector<Case>& cases, double seconds)
{
    std::vector<Solved> here;
    std::vector<Solved> peer;
    std::vector<double> ratios;
    std::vector<std::string> slower;
    int wrong = 0;
    int compared = 0;
    for (const Case& given : cases) {
        const Solved& one = here.emplace_back(solveHere(given, seconds, wrong));
        const Solved& other = peer.emplace_back(solveByGecode(given, seconds));
        const bool differ = one.proved && other.proved && one.makespan != other.makespan;
        const bool unknown = given.known && one.proved && one.makespan != *given.known;
        compared += given.known && one.proved ? 1 : 0;
        if (differ || unknown) {
            std::printf("differs: %s has %s, Gecode %s\n", given.name.c_str(), shown(one).c_str(),
                        shown(other).c_str());
            ++wrong;
        }
        ratios.push_back(other.milliseconds / std::max(one.milliseconds, 0.001));
        if (!one.proved || (other.proved && one.milliseconds > other.milliseconds)) {
            char line[200];
            std::snprintf(line, sizeof line, "  %s: %s in %.3f ms, Gecode %s in %.3f ms", given.name.c_str(),
                          shown(one).c_str(), one.milliseconds, shown(other).c_str(), other.milliseconds);
            slower.emplace_back(line);
        }
    }
    printRow("here", here);
    printRow("Gecode", peer);
    std::printf(
        "Gecode's time over ours at the median: %.1f; %d answers differ; %d compared with known values\n",
        median(ratios), wrong, compared);
    std::printf("slower or open here: %zu\n", slower.size());
    for (const std::string& line : slower)
        std::printf("%s\n", line.c_str());
    return wrong;
}

/// Prints what cannot be read.
std::vector<Case> casesOf(const std::filesystem::path& folder, const std::filesystem::path& tablePath)
{
    std::ifstream tableFile{tablePath};
    const auto table = bench::readTable(tableFile);
    std::vector<Case> cases;
    for (const auto& entry : std::filesystem::directory_iterator{folder}) {
        const std::string extension = entry.path().extension().string();
        if (extension != ".sch" && extension != ".SCH")
            continue;
        std::ifstream file{entry.path()};
        bench::ReadProject read = bench::readProject(file);
        if (!read.error.empty()) {
            std::fprintf(stderr, "%s: %s\n", entry.path().c_str(), read.error.c_str());
            continue;
        }
        Case& made = cases.emplace_back(Case{entry.path().filename().string(), std::move(read.project), {}});
        if (const auto known = table.find(made.name); known != table.end())
            made.known = known->second;
    }
    std::ranges::sort(cases, {}, &Case::name);
    return cases;
}

std::vector<Case> madeCases(int activities, int count)
{
    std::vector<Case> cases;
    for (int seed = 1; seed <= count; ++seed)
        cases.push_back({"seed " + std::to_string(seed),
                         bench::madeProject(activities, static_cast<std::uint64_t>(seed)),
                         {}});
    return cases;
}

}  // namespace

int main(int count, char** arguments)
{
    const std::vector<std::string> given{arguments + 1, arguments + count};
    const bool made = !given.empty() && given[0] == "--made";
    if (given.size() < (made ? 3U : 1U)) {
        std::fprintf(stderr,
                     "project_bench FOLDER [SECONDS [TABLE]]\n"
                     "project_bench --made ACTIVITIES COUNT [SECONDS]\n");
        return 2;
    }
    const std::size_t place = made ? 3 : 1;
    const double seconds = given.size() > place ? std::atof(given[place].c_str()) : 10;
    std::error_code error;
    if (!made && !std::filesystem::is_directory(given[0], error)) {
        std::fprintf(stderr, "%s is not a folder\n", given[0].c_str());
        return 2;
    }
    const std::vector<Case> cases = made
        ? madeCases(std::max(1, std::atoi(given[1].c_str())), std::atoi(given[2].c_str()))
        : casesOf(given[0], given.size() > 2 ? given[2] : given[0] + "/optimum/optimum.csv");
    if (cases.empty()) {
        std::fprintf(stderr, "no project to solve\n");
        return 2;
    }
    return run(cases, seconds) == 0 ? 0 : 1;
}
