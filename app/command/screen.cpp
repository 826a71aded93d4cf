#include "app/command/screen.h"

#include <algorithm>
#include <ostream>

#include <sys/ioctl.h>
#include <unistd.h>

namespace app::command {

namespace {

/// Without what moves from second to second, so that a pipe hears only of changes.
std::string withoutCountdown(const std::string& line)
{
    return line.substr(0, line.rfind(", "));
}

/// As much of a line as fits; never half a character.
std::string cut(const std::string& line, int columns)
{
    std::size_t place = 0;
    for (int width = 0; place < line.size(); ++place) {
        const bool begins = (static_cast<unsigned char>(line[place]) & 0xc0U) != 0x80U;
        if (begins && width++ == columns)
            break;
    }
    return line.substr(0, place);
}

}  // namespace

void PlainScreen::showPicture(const Picture& picture)
{
    const std::string asked = withoutCountdown(picture.now.front());
    if (asked == m_asked)
        return;
    m_asked = asked;
    say(picture.clock + "  " + picture.now.front());
}

void PlainScreen::say(const std::string& line)
{
    // A pipe is read by somebody who waits for the line.
    m_out << line << std::endl;
}

TerminalScreen::TerminalScreen(std::ostream& out, int descriptor)
    : m_out{out}
    , m_descriptor{descriptor}
{
}

TerminalScreen::~TerminalScreen()
{
    // Rolling is for the whole screen again, and the cursor below all that was written.
    m_out << "\0337\033[r\0338\n" << std::flush;
}

/// Keeps the top `pictureRows` rows for the picture and lets the rest roll, when either size changed.
void TerminalScreen::layOut(int pictureRows)
{
    winsize size{};
    const bool known = ioctl(m_descriptor, TIOCGWINSZ, &size) == 0 && size.ws_row > 0 && size.ws_col > 0;
    const int rows = known ? size.ws_row : 24;
    const int columns = known ? size.ws_col : 80;
    const int picture = std::clamp(pictureRows, 1, std::max(1, rows - 4));
    if (rows == m_rows && columns == m_columns && picture <= m_pictureRows)
        return;
    const bool first = m_rows == 0;
    m_rows = rows;
    m_columns = columns;
    m_pictureRows = std::max(picture, std::min(m_pictureRows, std::max(1, rows - 4)));
    if (first)
        m_out << std::string(static_cast<std::size_t>(rows), '\n');
    m_out << "\033[" << m_pictureRows + 1 << ";" << rows << "r\033[" << rows << ";1H";
}

void TerminalScreen::showPicture(const Picture& picture)
{
    std::vector<std::string> lines = picture.now;
    lines.front().insert(0, picture.clock + "  ");
    lines.insert(lines.end(), picture.lanes.begin(), picture.lanes.end());
    lines.emplace_back("? for what can be typed");
    layOut(static_cast<int>(lines.size()) + 1);
    m_out << "\0337";
    for (int row = 0; row < m_pictureRows; ++row) {
        const auto place = static_cast<std::size_t>(row);
        const bool last = row == m_pictureRows - 1;
        const std::string line = last ? std::string(static_cast<std::size_t>(m_columns), '-')
            : place < lines.size()    ? lines[place]
                                      : "";
        m_out << "\033[" << row + 1 << ";1H\033[K" << (row == 0 ? "\033[1m" : "") << cut(line, m_columns)
              << "\033[0m";
    }
    m_out << "\0338" << std::flush;
}

void TerminalScreen::say(const std::string& line)
{
    // Whatever is being typed moves with the lines; it is still there for the program that reads it.
    m_out << "\r\033[K" << line << "\n" << std::flush;
}

void TerminalScreen::ring(const std::string& line)
{
    m_out << '\a';
    say(line);
}

}  // namespace app::command
