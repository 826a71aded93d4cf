#pragma once

#include <iosfwd>
#include <string>
#include <vector>

namespace app::command {

/// What a run looks like at one moment.
struct Picture {
    std::string clock;
    std::vector<std::string> now;  ///< The one thing to do first, then what comes next.
    std::vector<std::string> lanes;
};

/// How a run is shown: a picture that is drawn anew, and lines that stay.
class Screen {
public:
    Screen() = default;
    Screen(const Screen&) = delete;
    Screen& operator=(const Screen&) = delete;
    virtual ~Screen() = default;

    /// The lanes and what to do, once a second.
    virtual void showPicture(const Picture& picture) = 0;

    /// Something that happened.
    virtual void say(const std::string& line) = 0;

    /// An alarm, which may also ring the terminal's bell.
    virtual void ring(const std::string& line) = 0;
};

/// For pipes and files: what is asked for is written when it changes, and nothing moves.
class PlainScreen final : public Screen {
public:
    explicit PlainScreen(std::ostream& out)
        : m_out{out}
    {
    }
    void showPicture(const Picture& picture) override;
    void say(const std::string& line) override;
    void ring(const std::string& line) override { say(line); }

private:
    std::ostream& m_out;
    std::string m_asked;
};

/// For a terminal: the picture stands at the top, below it the lines roll, and what
/// is typed stands in the last line untouched.
class TerminalScreen final : public Screen {
public:
    TerminalScreen(std::ostream& out, int descriptor);
    ~TerminalScreen() override;

    void showPicture(const Picture& picture) override;
    void say(const std::string& line) override;
    void ring(const std::string& line) override;

private:
    void layOut(int pictureRows);

    std::ostream& m_out;
    int m_descriptor;
    int m_rows = 0;
    int m_columns = 0;
    int m_pictureRows = 0;
};

}  // namespace app::command
