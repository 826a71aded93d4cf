#pragma once

#include "app/desktop/look/strand_painter.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

/// What goes on paper, before it is known how many pages that takes.
namespace app::desktop::print {

/// Rows of cells in columns that are as wide as what stands in them allows. A cell that has no room for a
/// line has several; a table that has no room on a page goes on under its headings on the next.
struct Table {
    QStringList headings;
    std::vector<QStringList> rows;
    bool roomToWrite = false;  ///< One more column, with the last heading, that is left empty for a pen.
};

/// A strand picture. With more strands than a page has room for it goes on on the next.
struct Drawing {
    view::StrandPicture picture;
    StrandWords words;
};

/// A part of a sheet: whichever it has of these, in this order, below its heading.
struct Part {
    QString heading;
    QString text;
    std::optional<Drawing> drawing;
    std::optional<Table> table;
};

/// What belongs to one head, on as many pages as it takes.
struct Sheet {
    QString title;
    QString subtitle;
    QString foot;  ///< At the foot of every page.
    std::vector<Part> parts;
};

}  // namespace app::desktop::print
