#include "tests/house/source_tree.h"

#include <algorithm>
#include <cctype>
#include <fstream>
#include <set>

namespace house {
namespace {

namespace fs = std::filesystem;

const std::set<std::string> codeEndings = {".h", ".cpp"};
const std::set<std::string> textEndings = {".h",       ".cpp", ".txt", ".cmake", ".md",  ".json", ".sql",
                                           ".desktop", ".svg", ".py",  ".sh",    ".xml", ".in"};

/// Scripts such as app/start have no ending and begin with "#!".
bool isScript(const fs::path& path)
{
    std::ifstream file{path};
    return path.extension().empty() && file.get() == '#' && file.get() == '!';
}

bool isText(const fs::path& path)
{
    return textEndings.contains(path.extension().string()) || isScript(path);
}

/// Folders at the top that hold no text of ours.
bool isForeign(const std::string& top)
{
    return top == ".git" || top.starts_with("build");
}

TextFile read(const fs::path& path)
{
    TextFile text{fs::relative(path, root()), {}};
    std::ifstream file{path};
    for (std::string line; std::getline(file, line);)
        text.lines.push_back(line);
    return text;
}

bool isWordCharacter(char character)
{
    return character == '_' || std::isalnum(static_cast<unsigned char>(character)) != 0;
}

}  // namespace

bool TextFile::isCode() const
{
    return codeEndings.contains(path.extension().string());
}

bool TextFile::isHeader() const
{
    return path.extension() == ".h";
}

std::string TextFile::room(int count) const
{
    fs::path room;
    for (const fs::path& part : path.parent_path()) {
        if (count-- == 0)
            break;
        room /= part;
    }
    return room.string();
}

std::filesystem::path root()
{
    return SOURCE_DIR;
}

std::vector<TextFile> textFilesBelow(const std::string& folder)
{
    std::vector<TextFile> files;
    auto walk = fs::recursive_directory_iterator{root() / folder};
    for (const fs::directory_entry& entry : walk) {
        if (entry.is_directory() && isForeign(fs::relative(entry.path(), root()).begin()->string()))
            walk.disable_recursion_pending();
        else if (entry.is_regular_file() && isText(entry.path()))
            files.push_back(read(entry.path()));
    }
    std::ranges::sort(files, {}, &TextFile::path);
    return files;
}

std::vector<TextFile> codeBelow(const std::string& folder)
{
    std::vector<TextFile> files = textFilesBelow(folder);
    std::erase_if(files, [](const TextFile& file) { return !file.isCode(); });
    return files;
}

bool mentions(const std::string& line, const std::string& word)
{
    for (std::size_t at = line.find(word); at != std::string::npos; at = line.find(word, at + 1)) {
        const std::size_t end = at + word.size();
        const bool begins = at == 0 || !isWordCharacter(word.front()) || !isWordCharacter(line[at - 1]);
        const bool ends = end == line.size() || !isWordCharacter(word.back()) || !isWordCharacter(line[end]);
        if (begins && ends)
            return true;
    }
    return false;
}

}  // namespace house
