#include "app/command/program.h"
#include "app/sound/wave_file.h"
#include "app/storage/open_journal.h"

#include <QCoreApplication>

#include <csignal>
#include <cstdlib>
#include <iostream>
#include <string_view>

#include <unistd.h>

namespace {

class WaveSoundFile final : public app::command::SoundFile {
public:
    explicit WaveSoundFile(app::sound::WaveFile file)
        : m_file{std::move(file)}
    {
    }
    [[nodiscard]] int rate() const override { return app::sound::WaveFile::rate; }
    void add(double atSeconds, std::span<const float> samples) override { m_file.add(atSeconds, samples); }
    std::string finish() override
    {
        const auto finished = m_file.finish();
        return finished ? std::string{} : finished.error();
    }

private:
    app::sound::WaveFile m_file;
};

tl::expected<std::unique_ptr<app::command::SoundFile>, std::string>
openSoundFile(const std::filesystem::path& path)
{
    return app::sound::WaveFile::open(path).map([](app::sound::WaveFile file) {
        return std::unique_ptr<app::command::SoundFile>{std::make_unique<WaveSoundFile>(std::move(file))};
    });
}

/// Whether the cursor can be moved about on what we write to.
bool onTerminal()
{
    const char* const kind = std::getenv("TERM");
    return isatty(STDIN_FILENO) && isatty(STDOUT_FILENO) && kind && std::string_view{kind} != "dumb";
}

}  // namespace

int main(int argc, char* argv[])
{
    // A file that may not grow is an error to tell of, not a reason to die.
    (void)std::signal(SIGXFSZ, SIG_IGN);
    const QCoreApplication application{argc, argv};
    QCoreApplication::setApplicationName(QStringLiteral("basinbell"));
    QCoreApplication::setApplicationVersion(QStringLiteral(BASINBELL_VERSION));
    app::command::Outside outside{
        std::cin, std::cout, std::cerr, STDIN_FILENO, onTerminal(), app::storage::openJournal, openSoundFile};
    return app::command::runProgram(QCoreApplication::arguments().mid(1), outside);
}
