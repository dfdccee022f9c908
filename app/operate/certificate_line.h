// A welder's certificate as a foreman types it: one line, with the language's own word before the
// last day. Core reads the English one.
#pragma once

#include "core/base/result.h"
#include "core/people/certificate.h"

#include <QString>

namespace seamclock {

/// "PE-HD, PP 3-20 mm until 2031-06-30"; in German "… bis 2031-06-30".
QString certificateLine(const Certificate& certificate);
/// The English word is read in every language. Errors as readCertificate's.
Result<Certificate> readCertificateLine(const QString& line);

} // namespace seamclock
