// A trainee's practice record on paper: what was made, when, how it went and what was wrong. Every
// page says that it is practice, by its frame of stripes, by the word through it and in words; it
// is no certificate, and says that, too.
#pragma once

#include "app/print/paper_page.h"
#include "core/base/result.h"

#include <QByteArray>
#include <QString>
#include <vector>

namespace seamclock {

struct PracticeSheet {
    struct Row {
        QString when;
        QString made; // lesson and number
        QString how;  // verdict, what was in limits, the bend test
        QString lapses;

        bool operator==(const Row&) const = default;
    };

    QString title;
    QString word; // through every page
    QString who;
    QString printed;
    QString caution; // "Practice record. Not a certificate. …"
    QString summary;
    QString heads[4]; // over the columns
    std::vector<Row> rows;
    QString page; // "page %1 of %2"
    QString foot;

    bool operator==(const PracticeSheet&) const = default;
};

/// As many pages as it takes. NotWritten: the page can't be begun or ended in memory.
Result<QByteArray> practicePdf(const PracticeSheet& sheet, Paper paper);
/// Into that folder under a name of its own: never over another file. NotWritten.
Result<QString> savePracticePdf(
    const PracticeSheet& sheet, Paper paper, const QString& folder, const QString& stem);

} // namespace seamclock
