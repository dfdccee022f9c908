// Which files a foreman can choose from: those of one folder with one ending, and the folders above
// and below it. No dialog of the desktop's: it could not be used with a glove.
#pragma once

#include "app/pages/list_page.h"

#include <QString>

namespace seamclock {

struct FileRow {
    QString path;
    bool isFolder = false;
};

/// `ending`: "json". `folder` may be a file of it, then that file's folder is listed.
ListView filesPage(
    const QString& title, const QString& folder, const QString& ending, const QString& trouble,
    std::vector<FileRow>& files);

} // namespace seamclock
