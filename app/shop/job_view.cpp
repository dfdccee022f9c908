#include "app/shop/job_view.h"

#include "app/text/dates.h"
#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/record_words.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <algorithm>

namespace seamclock {
namespace {

struct Jobs {
    Q_DECLARE_TR_FUNCTIONS(Jobs)
};

QString tr(const char* text) {
    return Jobs::tr(text);
}

QString jobName(const std::string& job) {
    return job.empty() ? tr("A job without a name") : tr("Job %1").arg(fromUtf8(job));
}

const SeamJoint* deciding(const SeamProgress& seam) {
    const auto joint =
        std::find_if(seam.joints.begin(), seam.joints.end(), [&seam](const SeamJoint& one) {
            return one.line.weld == seam.weld;
        });
    return joint == seam.joints.end() ? nullptr : &*joint;
}

QString whyText(const SeamProgress& seam) {
    const SeamJoint* joint = deciding(seam);
    if (joint == nullptr) {
        return stateText(seam.state);
    }
    const auto number = joint->line.number;
    switch (seam.state) {
    case JobSeamState::Open:
        break;
    case JobSeamState::Running:
        return tr("being made: joint %1, %2").arg(number).arg(stateWord(joint->line.phase));
    case JobSeamState::Done:
        return tr("made: joint %1, %2")
            .arg(number)
            .arg(midSentence(verdictWord(std::string_view(joint->line.verdict))));
    case JobSeamState::ToDecide:
        return joint->line.phase == "damaged"
                   ? tr("to decide: joint %1 can't be read").arg(number)
                   : tr("to decide: joint %1 is %2")
                         .arg(number)
                         .arg(midSentence(verdictWord(std::string_view(joint->line.verdict))));
    case JobSeamState::ToRedo:
        return joint->decision == Decision::Repair
                   ? tr("to weld again: joint %1 is to be repaired").arg(number)
                   : tr("to weld again: joint %1 was stopped").arg(number);
    case JobSeamState::CutOut:
        return tr("to weld again: joint %1 was cut out").arg(number);
    }
    return stateText(seam.state);
}

} // namespace

QString stateText(JobSeamState state) {
    switch (state) {
    case JobSeamState::Open:
        return tr("open");
    case JobSeamState::Running:
        return tr("being made");
    case JobSeamState::Done:
        return tr("made");
    case JobSeamState::ToDecide:
        return tr("to decide");
    case JobSeamState::ToRedo:
    case JobSeamState::CutOut:
        return tr("to weld again");
    }
    return {};
}

StateLook lookOf(JobSeamState state) {
    switch (state) {
    case JobSeamState::Open:
        return {Mark::Open, Tone::Rest};
    case JobSeamState::Running:
        return {Mark::Wait, Tone::Normal};
    case JobSeamState::Done:
        return {Mark::Done, Tone::Normal};
    case JobSeamState::ToDecide:
        return {Mark::Trouble, Tone::Soon};
    case JobSeamState::ToRedo:
        return {Mark::Soon, Tone::Soon};
    case JobSeamState::CutOut:
        return {Mark::Cut, Tone::Late};
    }
    return {};
}

QString seamSheets(const JobSeam& seam) {
    QStringList lengths;
    for (const double length : seam.lengthsMm) {
        lengths << numberText(length, 0);
    }
    return tr("%1, %2 mm, %3 mm long")
        .arg(
            fromUtf8(seam.sheets.empty() ? "" : seam.sheets.front().material),
            millimetresText(static_cast<std::int64_t>(seam.thicknessMm * 1e3 + 0.5)),
            lengths.join(QStringLiteral(" + ")));
}

std::vector<std::string> jobsOf(const std::vector<JobSeam>& seams) {
    std::vector<std::string> out;
    for (const JobSeam& seam : seams) {
        if (std::find(out.begin(), out.end(), seam.job) == out.end()) {
            out.push_back(seam.job);
        }
    }
    return out;
}

ListView jobList(
    const std::vector<JobSeam>& seams, const JobProgress& progress,
    const std::vector<std::string>& unread) {
    ListView view;
    view.title = tr("Jobs and their seams");
    view.under = seams.empty() ? tr("There is no job yet. Read a table, or type a seam.")
                               : tr("A job's seams, and what is made of each.");
    for (const std::string& job : jobsOf(seams)) {
        std::size_t all = 0;
        std::size_t done = 0;
        std::size_t decide = 0;
        std::size_t again = 0;
        for (std::size_t i = 0; i < seams.size() && i < progress.seams.size(); ++i) {
            if (seams[i].job != job) {
                continue;
            }
            const JobSeamState state = progress.seams[i].state;
            ++all;
            done += state == JobSeamState::Done ? 1U : 0U;
            decide += state == JobSeamState::ToDecide ? 1U : 0U;
            again += state == JobSeamState::ToRedo || state == JobSeamState::CutOut ? 1U : 0U;
        }
        ListRowView row;
        row.text = jobName(job);
        row.second = tr("%1 of %2 seams are made").arg(done).arg(all);
        QStringList more;
        if (decide > 0) {
            more << tr("to decide: %1").arg(decide);
        }
        if (again > 0) {
            more << tr("to weld again: %1").arg(again);
        }
        row.third = more.join(QStringLiteral(" · "));
        const StateLook look = lookOf(
            decide > 0    ? JobSeamState::ToDecide
            : again > 0   ? JobSeamState::ToRedo
            : done == all ? JobSeamState::Done
                          : JobSeamState::Open);
        row.mark = look.mark;
        row.tone = look.tone;
        view.rows.push_back(std::move(row));
    }
    for (const std::string& sentence : unread) {
        ListRowView row;
        row.enabled = false;
        row.mark = Mark::Trouble;
        row.tone = Tone::Soon;
        row.text = tr("A seam can't be read");
        row.second = inWords(sentence);
        view.rows.push_back(std::move(row));
    }
    view.back = plainSlot(tr("From a table"), tr("a CSV file"));
    view.stop = plainSlot(tr("Type a seam"), tr("one by one"));
    view.step = stepSlot(tr("Back to the shop"), false);
    return view;
}

ListView seamList(
    const std::string& job, const std::vector<JobSeam>& seams, const JobProgress& progress,
    const DayNames& names, std::vector<std::size_t>& places) {
    ListView view;
    view.title = jobName(job);
    view.under = tr("A seam leads to the joint that decides.");
    places.clear();
    for (std::size_t i = 0; i < seams.size() && i < progress.seams.size(); ++i) {
        const JobSeam& seam = seams[i];
        if (seam.job != job) {
            continue;
        }
        const SeamProgress& is = progress.seams[i];
        ListRowView row;
        row.text = seam.what.empty() ? fromUtf8(seam.label)
                                     : tr("%1: %2").arg(fromUtf8(seam.label), plainText(seam.what));
        row.second = seamSheets(seam);
        if (!seam.bench.empty()) {
            row.second += tr(" · bench %1").arg(names.bench(seam.bench));
        }
        row.third = whyText(is);
        const StateLook look = lookOf(is.state);
        row.mark = look.mark;
        row.tone = look.tone;
        view.rows.push_back(std::move(row));
        places.push_back(i);
    }
    view.columns = 2;
    view.back = hiddenSlot();
    view.stop = hiddenSlot();
    view.step = stepSlot(tr("Back to the jobs"), false);
    return view;
}

ListView tableList(const QString& file, const std::string& job, const JobCsv& table) {
    ListView view;
    if (table.isSound()) {
        const auto count = table.seams.size();
        view.title = count == 1
                         ? tr("%1: one seam for job %2").arg(file, fromUtf8(job))
                         : tr("%1: %2 seams for job %3").arg(file).arg(count).arg(fromUtf8(job));
        view.under = tr("All is as it may be. It is kept by a foreman's PIN.");
        for (const JobSeam& seam : table.seams) {
            ListRowView row;
            row.enabled = false;
            row.text = seam.what.empty()
                           ? fromUtf8(seam.label)
                           : tr("%1: %2").arg(fromUtf8(seam.label), plainText(seam.what));
            row.second = seamSheets(seam);
            row.mark = Mark::Open;
            view.rows.push_back(std::move(row));
        }
        view.columns = 2;
        view.step = stepSlot(tr("Keep them"));
    } else {
        const std::size_t wrong = table.problems.size() + table.more;
        view.title = tr("%1 can't be taken").arg(file);
        view.trouble = wrong == 1 ? tr("1 thing is to be put right in the file.")
                                  : tr("%1 things are to be put right in the file.").arg(wrong);
        for (const JobCsvProblem& problem : table.problems) {
            ListRowView row;
            row.enabled = false;
            row.mark = Mark::Late;
            row.tone = Tone::Late;
            row.text = problem.line == 0 ? tr("The file")
                       : problem.column.empty()
                           ? tr("Line %1").arg(problem.line)
                           : tr("Line %1, %2").arg(problem.line).arg(fromUtf8(problem.column));
            row.second = inWords(plainText(problem.text));
            view.rows.push_back(std::move(row));
        }
        view.step = stepSlot(tr("Keep them"));
        view.step.look = SlotView::Look::Gone;
    }
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("nothing is kept"));
    return view;
}

QString batchWord(const SheetBatch& sheet) {
    QString words = sheet.batch.empty() ? tr("no batch noted") : plainText(sheet.batch);
    if (sheet.corrected) {
        words += tr(" (as it was corrected)");
    } else if (sheet.overruled) {
        words += tr(" (as it was noted at first)");
    }
    return words;
}

std::vector<ListRowView> batchRows(const BatchFound& found, const DayNames& names) {
    std::vector<ListRowView> rows;
    for (const BatchJoint& joint : found.joints) {
        ListRowView row;
        const QString seam =
            joint.line.job.empty()
                ? fromUtf8(joint.line.seam)
                : tr("%1 of job %2").arg(fromUtf8(joint.line.seam), fromUtf8(joint.line.job));
        row.text = joint.line.seam.empty()
                       ? tr("Joint %1").arg(joint.line.number)
                       : tr("Joint %1, seam %2").arg(joint.line.number).arg(seam);
        QStringList sheets;
        for (const SheetBatch& sheet : joint.sheets) {
            sheets << tr("sheet %1: %2").arg(sheet.sheet).arg(batchWord(sheet));
        }
        row.second = tr("%1 · bench %2 · %3")
                         .arg(
                             fullDayWords(joint.line.day), names.bench(joint.line.bench),
                             sheets.join(QStringLiteral(", ")));
        const bool good = joint.line.verdict.rfind("within limits", 0) == 0;
        row.mark = joint.line.phase == "aborted"           ? Mark::Cut
                   : joint.line.open                       ? Mark::Wait
                   : good                                  ? Mark::Done
                   : joint.line.verdict == "out of limits" ? Mark::Late
                                                           : Mark::Open;
        row.tone = good ? Tone::Normal : Tone::Rest;
        row.third = joint.line.open ? stateWord(joint.line.phase)
                                    : verdictWord(std::string_view(joint.line.verdict));
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<ListRowView> sheetRows(const std::vector<SheetBatch>& sheets) {
    std::vector<ListRowView> rows;
    for (const SheetBatch& sheet : sheets) {
        ListRowView row;
        row.text = tr("Sheet %1: %2").arg(sheet.sheet).arg(batchWord(sheet));
        row.second = tr("%1 · %2").arg(fromUtf8(sheet.material), plainText(sheet.maker));
        if (!sheet.grade.empty()) {
            row.second += QStringLiteral(" · ") + plainText(sheet.grade);
        }
        row.sign = Sign::Search;
        row.enabled = !sheet.batch.empty();
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace seamclock
