#pragma once

#include <tl/expected.hpp>

#include <cstdint>
#include <filesystem>
#include <memory>
#include <span>
#include <string>

class QFile;

namespace app::sound {

/// Writes what would be heard to a sound file: WAV, 16 bit, one channel, 48 kHz.
///
/// A run of hours holds a few seconds of sound. So nothing of the timeline is
/// kept in memory, silence is a hole in the file and takes no room on the disk,
/// and sounds may be added in any order and over one another. The file is a
/// whole one after each `add`, also if the program is killed.
class WaveFile {
public:
    static constexpr int rate = 48000;

    /// Where a timeline ends: the format counts its bytes with 32 bits, which is 12 h 25 min.
    static constexpr double mostSeconds = 44700;

    /// Makes `path`, over what was there before. The error is a sentence for a person.
    static tl::expected<WaveFile, std::string> open(const std::filesystem::path& path);

    WaveFile(WaveFile&&) noexcept;
    WaveFile& operator=(WaveFile&&) noexcept;
    ~WaveFile();

    /// Mixes `samples`, each from -1 to 1, into the file from that many seconds
    /// after its beginning. What fails is kept and told by `finish`.
    void add(double atSeconds, std::span<const float> samples);

    /// Lengthens the file with silence up to `atSeconds`; never shortens it.
    void lengthenTo(double atSeconds);

    /// Closes the file and tells the first thing that went wrong since it was opened.
    tl::expected<void, std::string> finish();

private:
    WaveFile(std::unique_ptr<QFile> file, std::string path);

    bool mixAt(std::int64_t frame, std::span<const float> samples);
    bool grow(std::int64_t frames);
    void fail(std::string what);

    std::unique_ptr<QFile> m_file;
    std::string m_path;
    std::int64_t m_frames = 0;
    std::string m_failure;
};

}  // namespace app::sound
