#include "app/sound/wave_file.h"

#include "app/sound/limiter.h"

#include <QFile>
#include <QFileInfo>
#include <QtEndian>

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace app::sound {
namespace {

constexpr std::int64_t headerBytes = 44;
constexpr std::int64_t frameBytes = 2;
constexpr std::int64_t mostFrames = static_cast<std::int64_t>(WaveFile::mostSeconds) * WaveFile::rate;

/// Sounds are mixed in pieces of this many frames, so that memory stays the same for any length.
constexpr std::size_t pieceFrames = 16384;

/// The canonical header of "Multimedia Programming Interface and Data Specifications 1.0",
/// IBM and Microsoft, August 1991, part "WAVE": RIFF, one `fmt ` chunk, one `data` chunk.
QByteArray headerFor(std::int64_t frames)
{
    const auto dataBytes = static_cast<quint32>(frames * frameBytes);
    QByteArray header;
    const auto word = [&header](quint32 value) {
        std::array<char, 4> bytes{};
        qToLittleEndian(value, bytes.data());
        header.append(bytes.data(), 4);
    };
    const auto half = [&header](quint16 value) {
        std::array<char, 2> bytes{};
        qToLittleEndian(value, bytes.data());
        header.append(bytes.data(), 2);
    };
    header.append("RIFF");
    word(dataBytes + static_cast<quint32>(headerBytes - 8));
    header.append("WAVEfmt ");
    word(16);
    half(1);  // Plain samples.
    half(1);  // One channel.
    word(WaveFile::rate);
    word(WaveFile::rate * static_cast<quint32>(frameBytes));
    half(static_cast<quint16>(frameBytes));
    half(16);
    header.append("data");
    word(dataBytes);
    return header;
}

std::string textOf(const QString& text)
{
    return text.toStdString();
}

}  // namespace

tl::expected<WaveFile, std::string> WaveFile::open(const std::filesystem::path& path)
{
    const QString name = QString::fromStdString(path.string());
    const QFileInfo there{name};
    if (there.exists() && !there.isFile())
        return tl::unexpected{path.string() + ": is not an ordinary file; name a file that may be written."};

    auto file = std::make_unique<QFile>(name);
    if (!file->open(QIODevice::ReadWrite | QIODevice::Truncate | QIODevice::Unbuffered))
        return tl::unexpected{path.string() + ": the sound file could not be made: "
                              + textOf(file->errorString()) + ". Choose a folder that may be written."};
    WaveFile made{std::move(file), path.string()};
    if (!made.grow(0))
        return tl::unexpected{made.m_failure};
    return made;
}

WaveFile::WaveFile(std::unique_ptr<QFile> file, std::string path)
    : m_file{std::move(file)}
    , m_path{std::move(path)}
{
}

WaveFile::WaveFile(WaveFile&&) noexcept = default;
WaveFile& WaveFile::operator=(WaveFile&&) noexcept = default;
WaveFile::~WaveFile() = default;

void WaveFile::add(double atSeconds, std::span<const float> samples)
{
    if (!m_failure.empty() || samples.empty())
        return;
    if (!(atSeconds >= 0 && atSeconds <= mostSeconds))
        return fail("a sound at " + std::to_string(atSeconds)
                    + " s is outside the 12 h 25 min that a sound file can hold");
    std::int64_t frame = std::llround(atSeconds * rate);
    if (frame + static_cast<std::int64_t>(samples.size()) > mostFrames)
        return fail("the run is longer than the 12 h 25 min that a sound file can hold");

    while (!samples.empty()) {
        const auto piece = samples.first(std::min(samples.size(), pieceFrames));
        if (!mixAt(frame, piece))
            return;
        frame += static_cast<std::int64_t>(piece.size());
        samples = samples.subspan(piece.size());
    }
    grow(frame);
}

void WaveFile::lengthenTo(double atSeconds)
{
    if (!m_failure.empty() || !(atSeconds >= 0))
        return;
    const auto frame = static_cast<std::int64_t>(std::min(atSeconds, mostSeconds) * rate);
    if (frame <= m_frames)
        return;
    if (!m_file->resize(headerBytes + frame * frameBytes))
        return fail(textOf(m_file->errorString()));
    grow(frame);
}

tl::expected<void, std::string> WaveFile::finish()
{
    if (m_file && m_file->isOpen()) {
        m_file->close();
        if (m_failure.empty() && m_file->error() != QFileDevice::NoError)
            fail(textOf(m_file->errorString()));
    }
    if (!m_failure.empty())
        return tl::unexpected{m_failure};
    return {};
}

/// Adds to what the file holds there already; past its end that is silence.
bool WaveFile::mixAt(std::int64_t frame, std::span<const float> samples)
{
    const std::int64_t place = headerBytes + frame * frameBytes;
    std::vector<qint16_le> mixed(samples.size(), qint16_le{0});
    auto* bytes = reinterpret_cast<char*>(mixed.data());
    const auto size = static_cast<std::int64_t>(samples.size()) * frameBytes;

    const std::int64_t there = std::clamp<std::int64_t>((m_frames - frame) * frameBytes, 0, size);
    if (!m_file->seek(place) || m_file->read(bytes, there) != there) {
        fail(textOf(m_file->errorString()));
        return false;
    }
    for (std::size_t i = 0; i < samples.size(); ++i)
        mixed[i] = toSixteenBits(softLimited(fromSixteenBits(mixed[i]) + samples[i]));
    if (!m_file->seek(place) || m_file->write(bytes, size) != size) {
        fail(textOf(m_file->errorString()));
        return false;
    }
    return true;
}

/// Puts the length into the header once the sound is there, so that a header never promises too much.
bool WaveFile::grow(std::int64_t frames)
{
    m_frames = std::max(m_frames, frames);
    const QByteArray header = headerFor(m_frames);
    if (m_file->seek(0) && m_file->write(header) == header.size())
        return true;
    fail(textOf(m_file->errorString()));
    return false;
}

void WaveFile::fail(std::string what)
{
    if (m_failure.empty())
        m_failure = m_path + ": the sound file is not whole: " + std::move(what)
            + ". What was written before that can be played.";
}

}  // namespace app::sound
