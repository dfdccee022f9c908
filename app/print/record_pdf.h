// The record of one joint on paper, one page a joint: everything that the trade writes down, set
// beside actual, each value with the n of the event that it comes from. Where one page can't hold
// it even at the smallest type, it goes on over further pages: nothing is left out.
#pragma once

#include "app/print/paper_page.h"
#include "core/base/result.h"
#include "core/report/record_facts.h"
#include "core/units/measure.h"

#include <QByteArray>
#include <QString>
#include <optional>
#include <string>

namespace seamclock {

/// What no log holds. Empty texts stand on paper as a line to write on, or are left out.
struct PaperWork {
    QString shop;      // "Quillmere Vat Works"
    QString order;     // "QV-118"
    QString part;      // "Brine settling tank"
    QString printed;   // when it was made: "2030-01-07 14:02"
    bool demo = false; // of the demo shop: every page says so
    QString job{};     // of which job order and part are, by its name; empty: it is not known
};
/// As it holds for a joint: the order is its own job's, which stands in the log; the part, too,
/// only where that job is the one of `work`. A joint that names no job is taken to be of `work`'s.
PaperWork workOfJob(const PaperWork& work, const std::optional<std::string>& job);

/// NotWritten: the page can't be begun or ended in memory.
Result<QByteArray> recordPdf(
    const RecordFacts& joint, const LogFacts& log, const PaperWork& work, UnitSystem units,
    Paper paper);

/// Overwrites `file`. NotWritten: with the path and the reason; what stood there is left as it was.
Result<void> writeRecordPdf(
    const RecordFacts& joint, const LogFacts& log, const PaperWork& work, UnitSystem units,
    Paper paper, const QString& file);

/// Into that folder, made if need be, as "joint-12.pdf" or, where that is taken, "joint-12-2.pdf";
/// returns where.
Result<QString> saveRecordPdf(
    const RecordFacts& joint, const LogFacts& log, const PaperWork& work, UnitSystem units,
    Paper paper, const QString& folder);

/// On a printer of `printerNames()`, or the desktop's own where `printer` is empty. Missing: there
/// is none. NotWritten: it does not take the page.
Result<void> printRecord(
    const RecordFacts& joint, const LogFacts& log, const PaperWork& work, UnitSystem units,
    Paper paper, const QString& printer = {});

} // namespace seamclock
