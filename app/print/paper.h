// A document of several pages as a value: blocks from top to bottom, each of texts. What they say
// is decided by whoever makes it (record_paper, report_paper); how they are set, where a page ends
// and what is repeated on the next is paper_flow's, for a PDF and for a printer alike.
#pragma once

#include "app/parts/mark.h"

#include <QString>
#include <QStringList>
#include <optional>
#include <variant>
#include <vector>

namespace seamclock {

/// A duration beside its limits, on a scale of its own. All in one unit; absent: not limited, or
/// not over yet.
struct PaperBar {
    std::optional<double> low;
    std::optional<double> target;
    std::optional<double> high;
    std::optional<double> actual;

    bool operator==(const PaperBar&) const = default;
};

struct PaperCell {
    QString text;
    bool strong = false;
    bool right = false; // numbers under each other
    std::optional<Mark> mark = std::nullopt;
    std::optional<PaperBar> bar = std::nullopt;

    bool operator==(const PaperCell&) const = default;
};

struct PaperHeading {
    QString text;
    QString beside; // soft, behind it

    bool operator==(const PaperHeading&) const = default;
};

/// Names and what they are, side by side in so many columns.
struct PaperFacts {
    struct Fact {
        QString name;
        QString text;

        bool operator==(const Fact&) const = default;
    };
    std::vector<Fact> facts;
    int columns = 2;

    bool operator==(const PaperFacts&) const = default;
};

/// Its heads stand again on each page that it goes on over.
struct PaperTable {
    std::vector<PaperCell> heads;
    std::vector<double> shares; // of the width
    std::vector<std::vector<PaperCell>> rows;

    bool operator==(const PaperTable&) const = default;
};

struct PaperList {
    QStringList items;
    bool soft = false; // small and grey: nobody works by it
    bool runOn = false;

    bool operator==(const PaperList&) const = default;
};

struct PaperText {
    QString text;
    bool strong = false;

    bool operator==(const PaperText&) const = default;
};

/// Framed: nobody may read past it.
struct PaperNotice {
    QString text;

    bool operator==(const PaperNotice&) const = default;
};

/// Lines to sign on at the foot of the last page.
struct PaperSignatures {
    struct Line {
        QString under;
        QString signedBy; // stands on the line; empty: to be signed by hand

        bool operator==(const Line&) const = default;
    };
    std::vector<Line> lines;

    bool operator==(const PaperSignatures&) const = default;
};

using PaperBlock = std::variant<
    PaperHeading, PaperFacts, PaperTable, PaperList, PaperText, PaperNotice, PaperSignatures>;

struct PaperDoc {
    QString what; // named in a refusal: "record"
    QString title;
    QString made;      // right of the title
    QStringList under; // the title
    QString verdict;   // framed beside the title, with its mark; empty: none
    std::optional<Mark> mark;
    QString across; // a word through every page: practice
    std::vector<PaperBlock> blocks;
    QString goesOn; // over the second page and each further one
    QString foot;
    QString pageOf; // "page %1 of %2"
    /// Set smaller, down to kSmallestPaperPoints, where that makes one page of it.
    bool onePage = false;

    bool operator==(const PaperDoc&) const = default;
};

} // namespace seamclock
