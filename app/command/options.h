#pragma once

#include "core/stagger/plan.h"

#include <QString>
#include <QStringList>

#include <tl/expected.hpp>

#include <cstdint>
#include <optional>

namespace app::command {

/// What was asked for on the command line.
struct Options {
    enum class Command { Help, Version, Plan, Explain, Forecast, Check, Run, Replay, Card, Erase, Cautions };
    Command command = Command::Help;
    QString helpAbout;  ///< A command, or empty.
    QString file;       ///< The first, or the only one.
    QStringList files;  ///< All of them; more than one only where heads are planned together.
    QString crewFile;
    std::optional<double> seconds;  ///< How long may be planned.
    bool json = false;
    std::optional<int> cure;  ///< From 1.
    int runs = 2000;          ///< Of a forecast.
    std::uint64_t seed = 1;
    QString save;
    QString from;
    core::stagger::Preference preference = core::stagger::Preference::AsAsked;
    bool lookAll = false;
    std::optional<double> speed;
    bool answerAll = false;
    QString soundFile;
    QString data;
    bool resume = false;
    std::optional<std::int64_t>
        run;     ///< Which run is told again, shown or erased; of the first two the latest if not said.
    QString at;  ///< Of a run that is told again: the moment to show.
    bool list = false;
};

/// `arguments` without the program's name. The error is a sentence.
tl::expected<Options, QString> readOptions(const QStringList& arguments);

}  // namespace app::command
