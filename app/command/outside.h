#pragma once

#include "app/session/journal.h"

#include <filesystem>
#include <functional>
#include <iosfwd>
#include <memory>
#include <span>
#include <string>

namespace app::command {

/// Where the sounds of a run are written.
class SoundFile {
public:
    SoundFile() = default;
    SoundFile(const SoundFile&) = delete;
    SoundFile& operator=(const SoundFile&) = delete;
    virtual ~SoundFile() = default;

    [[nodiscard]] virtual int rate() const = 0;

    /// Mixes in `samples` from that many seconds after the beginning.
    virtual void add(double atSeconds, std::span<const float> samples) = 0;

    /// Closes it; what went wrong since it was opened, or nothing.
    virtual std::string finish() = 0;
};

/// All that the terminal program touches outside itself; its main hands it in.
struct Outside {
    std::istream& in;
    std::ostream& out;
    std::ostream& err;
    int inputDescriptor = 0;  ///< Of `in`, for waiting until there is something to read.
    bool onTerminal = false;  ///< Both ends are a terminal that can move its cursor.

    std::function<tl::expected<session::OpenedJournal, session::JournalError>(const std::filesystem::path&)>
        openJournal;
    std::function<tl::expected<std::unique_ptr<SoundFile>, std::string>(const std::filesystem::path&)>
        openSoundFile;
};

/// What the program ends with.
enum Exit { Planned = 0, BadInput = 1, NothingFits = 2 };

}  // namespace app::command
