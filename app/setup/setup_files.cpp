#include "app/setup/setup_files.h"

#include "app/text/dates.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>

namespace seamclock {
namespace {

struct SetupFiles {
    Q_DECLARE_TR_FUNCTIONS(SetupFiles)
};

QString tr(const char* text) {
    return SetupFiles::tr(text);
}

} // namespace

ListView filesPage(
    const QString& title, const QString& folder, const QString& ending, const QString& trouble,
    std::vector<FileRow>& files) {
    ListView page;
    page.title = title;
    page.line = tr("path of a file or folder");
    page.trouble = trouble;
    files.clear();
    const QDir dir(folder);
    if (!dir.exists()) {
        page.under = tr("There is no folder \"%1\".").arg(folder);
    }
    const auto add = [&](const QString& text, const QString& under, Sign sign, const QString& path,
                         bool isFolder) {
        ListRowView row;
        row.text = text;
        row.second = under;
        row.sign = sign;
        page.rows.push_back(std::move(row));
        files.push_back({path, isFolder});
    };
    if (dir.exists()) {
        for (const QFileInfo& info :
             dir.entryInfoList({"*." + ending}, QDir::Files | QDir::Readable, QDir::Name)) {
            add(info.fileName(),
                fullDayWords(info.lastModified().date()) +
                    info.lastModified().toString(QStringLiteral(" hh:mm")),
                Sign::Note, info.filePath(), false);
        }
        if (page.rows.empty()) {
            page.under = tr("No *.%1 lies in %2.").arg(ending, dir.path());
        }
        for (const QFileInfo& info :
             dir.entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot | QDir::Readable, QDir::Name)) {
            add(info.fileName(), tr("folder"), Sign::Search, info.filePath(), true);
        }
    }
    if (!dir.isRoot() && dir.exists()) {
        add(tr("The folder above"), QFileInfo(dir.absolutePath()).path(), Sign::Back,
            QFileInfo(dir.absolutePath()).path(), true);
    }
    page.columns = 2;
    page.back = hiddenSlot();
    page.stop = plainSlot(tr("Close"), tr("nothing is read"));
    page.step = stepSlot(tr("Read it"), false);
    return page;
}

} // namespace seamclock
