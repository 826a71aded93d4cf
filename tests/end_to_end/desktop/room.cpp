#include "tests/end_to_end/desktop/room.h"

#include <QElapsedTimer>
#include <QRegularExpression>

#include <algorithm>

namespace desk {
namespace {

const QString button = QStringLiteral("push button");
const QString checkBox = QStringLiteral("check box");

bool isPressed(const Part& part)
{
    return part.role == button || part.role == checkBox;
}

template <class Fits>
std::optional<Part> firstOf(const std::vector<Part>& parts, const Fits& fits)
{
    const auto found = std::ranges::find_if(parts, fits);
    return found == parts.end() ? std::nullopt : std::optional{*found};
}

}  // namespace

QString Room::waitForStep(int milliseconds)
{
    QString title =
        m_screen.waitForTitle({QStringLiteral("Now: "), QStringLiteral("All done")}, milliseconds);
    return title.isEmpty() ? m_screen.title() : title;
}

bool Room::press(const std::optional<Part>& part)
{
    return part && m_reader.press(*part);
}

std::optional<Part> Room::named(const QString& beginning) const
{
    return firstOf(m_reader.read(),
                   [&](const Part& part) { return isPressed(part) && part.name.startsWith(beginning); });
}

std::optional<Part> Room::ending(const QString& ending) const
{
    return firstOf(m_reader.read(),
                   [&](const Part& part) { return isPressed(part) && part.name.endsWith(ending); });
}

bool Room::pressNamed(const QString& beginning)
{
    return press(named(beginning));
}

bool Room::pressEnding(const QString& ending)
{
    return press(this->ending(ending));
}

/// Reading takes a while, so the moment is taken once it is known what to press.
bool Room::answerWith(const std::optional<Part>& part)
{
    const QString title = m_screen.title();
    const auto now = capture::Clock::now();
    if (!press(part))
        return false;
    m_presses.push_back(now);
    waitUntilTaken(title);
    return true;
}

bool Room::answerNamed(const QString& beginning)
{
    return answerWith(named(beginning));
}

void Room::waitUntilTaken(const QString& before)
{
    QElapsedTimer timer;
    timer.start();
    while (m_screen.title() == before && timer.elapsed() < 2000)
        capture::waitFor(std::chrono::milliseconds{20});
}

/// What changes under a finger takes no press for a moment, so it may have to be pressed once more: each step
/// that was answered is followed by another.
bool Room::answer()
{
    for (int tries = 0; tries < 3; ++tries) {
        const QString title = m_screen.title();
        const bool look = title.contains(QLatin1String{"Look at"});
        if (!answerWith(look ? named(QStringLiteral("Leave it")) : ending(QStringLiteral("(Enter)"))))
            return false;
        if (m_screen.title() != title)
            return true;
        m_presses.pop_back();
    }
    return false;
}

QStringList Room::lanes() const
{
    static const QRegularExpression times{QStringLiteral(", [0-9]+[:h].*$")};
    QStringList lanes;
    for (const Part& part : m_reader.read())
        if (part.role == QLatin1String{"filler"} && part.name.contains(QLatin1String{", "}))
            lanes << QString{part.name}.remove(times);
    return lanes;
}

std::string Room::all() const
{
    std::string text;
    for (const Part& part : m_reader.read())
        text += part.role.toStdString() + ": " + part.name.toStdString() + "\n";
    return text;
}

}  // namespace desk
