// A photo of a bead: chosen from the files that the tablet's camera made, copied beside the log
// under the name of its own SHA-256, so that the weld's event and the picture prove each other.
#pragma once

#include "app/daylog/joint_photo.h"
#include "app/pages/choice_page.h"
#include "core/base/result.h"
#include "core/weld/event.h"

#include <QString>
#include <QStringList>

namespace seamclock {

inline constexpr qint64 kLargestPhoto = 50'000'000; // bytes

/// The pictures in these folders, the newest first; `files` are their paths.
ChoiceView photoQuestion(const QStringList& folders, QStringList& files);

/// Copies it; one that is there already is not copied again. The photo is on disk when this
/// returns. Unreadable: no file, none that can be read, no picture. OutOfRange: above
/// kLargestPhoto. NotWritten: the copy.
Result<PhotoAdded> keepPhoto(const QString& file, const QString& log);

} // namespace seamclock
