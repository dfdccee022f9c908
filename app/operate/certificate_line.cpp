#include "app/operate/certificate_line.h"

#include "app/text/words.h"

#include <QCoreApplication>

namespace seamclock {
namespace {

QString untilWord() {
    return QLatin1Char(' ') + QCoreApplication::translate("People", "until") + QLatin1Char(' ');
}

} // namespace

QString certificateLine(const Certificate& certificate) {
    return fromUtf8(scopeOf(certificate)) + untilWord() + fromUtf8(certificate.until);
}

Result<Certificate> readCertificateLine(const QString& line) {
    QString english = line;
    const QString word = untilWord();
    if (const qsizetype at = line.lastIndexOf(word); at >= 0) {
        english.replace(at, word.size(), QStringLiteral(" until "));
    }
    return readCertificate(english.toStdString());
}

} // namespace seamclock
