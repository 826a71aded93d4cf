#pragma once

#include <QString>
#include <QStringList>

#include <vector>

namespace app::desktop::print {

/// A size of text.
struct TextSize {
    int pixels = 12;
    bool bold = false;
};

/// The lines that `text` takes in `width`: broken between words, and inside one that is wider than all of it.
QStringList brokenIntoLines(const QString& text, TextSize size, double width);

/// How wide one line of it is.
double widthOf(const QString& text, TextSize size);

/// How wide its widest word is, or its widest line where nothing is broken.
double widestWord(const QString& text, TextSize size);
double widestLine(const QString& text, TextSize size);

/// From one line to the next.
double lineHeight(TextSize size);

/// How wide each column of a table becomes in `width`, from the least and the most that each can use.
std::vector<double> columnWidths(const std::vector<double>& least, const std::vector<double>& most,
                                 double width);

}  // namespace app::desktop::print
