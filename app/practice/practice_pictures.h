// Paints the trainee's screens to files, as app/operate/pictures.h does the operator's: one weld
// without a mistake, one with several, what follows on each.
#pragma once

#include "app/operate/pictures.h"
#include "core/practice/lesson.h"

#include <string>

namespace seamclock {

/// The files that were written. NotWritten: the folder can't be written to; Refused: the walk
/// through the screens stopped; else as readLessonFolder.
Result<QStringList> paintPracticePictures(
    const PictureOptions& options, const PracticeShop& shop, const std::string& lessonFolder);

} // namespace seamclock
