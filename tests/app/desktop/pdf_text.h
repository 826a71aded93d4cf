#pragma once

#include <QList>
#include <QSizeF>
#include <QString>

/// Reads back what a PDF of Qt says.
namespace pdf {

struct Read {
    int pages = 0;
    QList<QSizeF> sizes;  ///< Of each page, in points.
    QString text;         ///< Of all pages, a line for each piece that was drawn at once.
};

/// Nothing where there is no such file.
Read read(const QString& path);

}  // namespace pdf
