#include "app/desktop/startup.h"

#include <QFileInfo>

#include <algorithm>

namespace app::desktop {
namespace {

/// A run that was begun longer ago than any service takes is not taken up without a word.
constexpr core::measure::Seconds longestService{18 * 3600};

bool isRecent(const session::StoredRun& run, const session::Session& session)
{
    return run.run.simulated || session.clock().now() - run.run.began <= longestService;
}

void openService(MainWindow& window, const Options& options, const QSettings& settings)
{
    if (!options.files.isEmpty()) {
        window.files().open(options.files);
        return;
    }
    // Before several could be open at once, only what was opened last was known.
    const QStringList recent = settings.value(QStringLiteral("recent")).toStringList().mid(0, 1);
    const QStringList last = settings.value(QStringLiteral("open"), recent).toStringList();
    const bool there = !last.isEmpty()
        && std::ranges::all_of(last, [](const QString& path) { return QFileInfo::exists(path); });
    if (!options.demo && there) {
        window.files().open(last);
        return;
    }
    window.files().openDemo(FileMenu::demoNames().value(0));
    window.offerTour();
}

}  // namespace

void openFirst(MainWindow& window, session::Session& session, const Options& options,
               const QSettings& settings)
{
    const auto runs = session.resumable();
    const bool takesUp = !runs.empty() && (options.resume || isRecent(runs.front(), session));
    if (takesUp && window.resume(runs.front()))
        return;
    openService(window, options, settings);
    if (!takesUp && !runs.empty())
        window.offer(runs.front());
    if (options.resume && runs.empty())
        window.warn(QObject::tr("There is no unfinished run to take up."));
}

}  // namespace app::desktop
