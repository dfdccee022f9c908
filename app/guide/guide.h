// The user guide as it is read: chapters in Markdown, in the order of their file names, each with
// its alarms' table filled in from the program's own list (alarm_list.h). What a chapter looks like
// is guide_document's; where its files lie, app/platform's.
#pragma once

#include "core/base/result.h"

#include <QString>
#include <QStringList>
#include <vector>

namespace seamclock {

struct GuideChapter {
    QString file;  // "04-one-weld.md"; links between chapters name it
    QString title; // its first line
    QString about; // its first paragraph
    QString text;  // Markdown, with its title

    bool operator==(const GuideChapter&) const = default;
};

struct Guide {
    std::vector<GuideChapter> chapters;
    QStringList pictures; // folders in which a picture that a chapter names may be
};

/// Files of that folder whose names end in ".md" and begin with a digit. Missing: there is none.
/// Unreadable: one can't be read. Malformed: one has no title, or asks for a table that there
/// isn't.
Result<Guide> readGuide(const QString& folder, const QStringList& pictures);

/// The pictures that a chapter names, without folder and ".png", in their order.
QStringList picturesNamed(const GuideChapter& chapter);

/// A place where words stand, for a search.
struct GuideHit {
    int chapter = 0;
    QString text; // what stands there, shortened to what is around the words

    bool operator==(const GuideHit&) const = default;
};
/// Paragraphs, rows and headings that hold all of the words, whole or as beginnings, in the guide's
/// order; at most `most`. No words: none.
std::vector<GuideHit> findInGuide(const Guide& guide, const QString& words, int most = 24);

} // namespace seamclock
