// Bookmarks for a PDF that QPdfWriter made, which of Qt 6.4 makes none. The pages stay byte for
// byte as they are: what is new is appended as an incremental update, and a reader begins at the
// end. By ISO 32000-1, 7.5.6 (updates) and 12.3.3 (outlines), both from memory; what comes out is
// read back by another program in the tests. It reads only what QPdfWriter writes: one table of
// objects, one flat list of pages.
#pragma once

#include "core/base/result.h"

#include <QByteArray>
#include <QString>
#include <vector>

namespace seamclock {

struct Bookmark {
    QString title;
    int page = 1; // from 1
};

/// Malformed: not such a PDF, or it has no such page.
Result<QByteArray> withBookmarks(const QByteArray& pdf, const std::vector<Bookmark>& bookmarks);

} // namespace seamclock
