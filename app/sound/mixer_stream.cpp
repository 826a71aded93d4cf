#include "app/sound/mixer_stream.h"

#include "app/sound/limiter.h"

#include <algorithm>
#include <cstring>
#include <limits>

namespace app::sound {

MixerStream::MixerStream(QObject* parent)
    : QIODevice{parent}
{
    // Unbuffered, or Qt would read ahead and every alarm would be late by its buffer.
    open(QIODevice::ReadOnly | QIODevice::Unbuffered);
}

QAudioFormat MixerStream::format()
{
    QAudioFormat format;
    format.setSampleRate(rate);
    format.setChannelCount(channels);
    format.setSampleFormat(QAudioFormat::Int16);
    return format;
}

void MixerStream::play(std::uint64_t ticket, std::vector<float> samples)
{
    m_mixer.add(ticket, std::move(samples));
    Q_EMIT readyRead();
}

void MixerStream::offer(std::uint64_t frames)
{
    m_offered = frames;
    Q_EMIT readyRead();
}

std::vector<std::uint64_t> MixerStream::endedBy(std::uint64_t frames)
{
    std::vector<std::uint64_t> tickets;
    for (const auto& [ticket, at] : m_ended)
        if (at <= frames)
            tickets.push_back(ticket);
    std::erase_if(m_ended, [frames](const auto& ended) { return ended.second <= frames; });
    return tickets;
}

void MixerStream::forget()
{
    m_mixer.forget();
    m_ended.clear();
    m_offered = 0;
}

qint64 MixerStream::bytesAvailable() const
{
    return std::numeric_limits<int>::max();
}

qint64 MixerStream::readData(char* data, qint64 most)
{
    if (!busy() && m_offered == 0)
        return 0;
    const auto frames = static_cast<std::size_t>(std::max<qint64>(most, 0) / frameBytes);
    m_scratch.resize(frames);
    const auto tickets = m_mixer.mixInto(m_scratch);
    for (const float sample : m_scratch) {
        const std::int16_t value = toSixteenBits(sample);
        for (int channel = 0; channel < channels; ++channel) {
            std::memcpy(data, &value, sizeof value);
            data += sizeof value;
        }
    }
    m_taken += frames;
    m_offered -= std::min<std::uint64_t>(m_offered, frames);
    for (const std::uint64_t ticket : tickets)
        m_ended.emplace_back(ticket, m_taken);
    return static_cast<qint64>(frames) * frameBytes;
}

qint64 MixerStream::writeData(const char* /*data*/, qint64 /*size*/)
{
    return -1;
}

}  // namespace app::sound
