#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace house {

/// One text file of the tree, with its path as seen from the root.
struct TextFile {
    std::filesystem::path path;
    std::vector<std::string> lines;

    bool isCode() const;
    bool isHeader() const;
    /// The first folders of the path, "core/stagger" for count 2.
    std::string room(int count = 2) const;
};

std::filesystem::path root();

/// Every text file below `folder` (seen from the root; "" is everything), in the order of their paths. What
/// git ignores and git's own folder are left out.
std::vector<TextFile> textFilesBelow(const std::string& folder);

/// The files of `folder` that are C++ sources or headers.
std::vector<TextFile> codeBelow(const std::string& folder);

/// Whether a line contains `word` as a word or phrase of its own.
bool mentions(const std::string& line, const std::string& word);

}  // namespace house
