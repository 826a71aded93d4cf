#pragma once

#include <QString>
#include <QStringList>

#include <optional>

namespace app::desktop {

/// What the program was started with.
struct Options {
    QStringList files;            ///< A head each.
    QString data;                 ///< The folder of the journal; empty for the usual one.
    std::optional<double> speed;  ///< Plays time faster, for demonstrations and tests.
    QString language;             ///< One that is offered; empty for what was chosen last.
    bool resume = false;
    bool demo = false;
    QString error;  ///< What is wrong with what was asked; empty where nothing is.
};

/// Ends the program for --help and --version, as programs do.
Options readOptions(const QStringList& arguments);

}  // namespace app::desktop
