#include "app/print/pdf_file.h"

#include "core/base/made_files.h"

#include <QDir>
#include <QSaveFile>

namespace seamclock {
namespace {

constexpr int kMostNames = 1'000; // of one stem

tl::unexpected<Error> notWritten(const QString& what, const QString& path, const QString& why) {
    return fail(
        ErrorCode::NotWritten,
        ("the " + what + " can't be written to \"" + path + "\": " + why).toStdString());
}

} // namespace

Result<void> writePdf(const QByteArray& pdf, const QString& what, const QString& file) {
    QSaveFile out(file); // a temporary beside it, renamed at commit
    if (!out.open(QIODevice::WriteOnly)) {
        return notWritten(what, file, out.errorString());
    }
    // commit() alone takes a small file that the disk had half the room for as written.
    if (out.write(pdf) != pdf.size() || !out.flush() || !out.commit()) {
        return notWritten(what, file, out.errorString());
    }
    return {};
}

Result<QString>
savePdf(const QByteArray& pdf, const QString& what, const QString& folder, const QString& stem) {
    if (!QDir().mkpath(folder)) {
        return notWritten(what, folder, QStringLiteral("the folder can't be made"));
    }
    for (int i = 1; i <= kMostNames; ++i) {
        const QString name = i == 1 ? stem + ".pdf" : QStringLiteral("%1-%2.pdf").arg(stem).arg(i);
        const QString file = QDir(folder).filePath(name);
        if (QFile::exists(file)) {
            continue;
        }
        if (const auto written = writePdf(pdf, what, file); !written) {
            return tl::unexpected<Error>(written.error());
        }
        noteMadeFile(file.toStdString());
        return file;
    }
    return notWritten(
        what, QDir(folder).filePath(stem + ".pdf"),
        QStringLiteral("there are %1 of that name already").arg(kMostNames));
}

} // namespace seamclock
