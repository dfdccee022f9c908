// The part of ShopFlow for jobs: how far each is, a table of seams that an office wrote, and a seam
// typed by hand.
#include "app/shop/shop_errand.h"
#include "app/shop/shop_flow.h"
#include "app/text/words.h"
#include "core/session/job_book.h"

#include <QFile>
#include <QFileInfo>
#include <algorithm>

namespace seamclock {
namespace {

constexpr int kLongestJob = 40;

/// The file's bytes; empty where it can't be read or is larger than a table may be.
std::optional<std::string> bytesOf(const QString& path) {
    QFile file(path);
    if (!QFileInfo(path).isFile() || !file.open(QIODevice::ReadOnly) ||
        file.size() > static_cast<qint64>(kLargestJobCsv)) {
        return std::nullopt;
    }
    return file.readAll().toStdString();
}

} // namespace

void ShopFlow::askJobs(std::function<void()> then) {
    ask<JobsSeen>(
        [seams = m_room.seams](LogReader& log) mutable -> Result<JobsSeen> {
            auto kept = readJobSeams(log);
            if (!kept) {
                return tl::unexpected<Error>(kept.error());
            }
            seams.insert(seams.end(), kept->seams.begin(), kept->seams.end());
            auto progress = jobProgress(log, seams);
            if (!progress) {
                return tl::unexpected<Error>(progress.error());
            }
            return JobsSeen{std::move(seams), std::move(*progress), std::move(kept->unread)};
        },
        [this, then = std::move(then)](const JobsSeen& seen) {
            m_jobs = seen;
            then();
        });
}

void ShopFlow::showJobs() {
    reading(tr("Jobs and their seams"));
    askJobs([this] { listJobs(); });
}

void ShopFlow::listJobs() {
    const std::vector<std::string> jobs = jobsOf(m_jobs.seams);
    list(
        jobList(m_jobs.seams, m_jobs.progress, m_jobs.unread),
        [this, jobs](int index) { showSeams(jobs.at(static_cast<std::size_t>(index))); },
        [this] { showStart(); },
        [this] {
            if (needsForeman()) {
                typeSeam();
            }
        },
        [this] {
            if (needsForeman()) {
                askTable();
            }
        });
}

void ShopFlow::showSeams(const std::string& job) {
    std::vector<std::size_t> places;
    const ListView view = seamList(job, m_jobs.seams, m_jobs.progress, names(), places);
    list(
        view,
        [this, job, places](int index) {
            showSeam(job, places.at(static_cast<std::size_t>(index)));
        },
        [this] { listJobs(); }, {});
}

void ShopFlow::showSeam(const std::string& job, std::size_t place) {
    const JobSeam& seam = m_jobs.seams[place];
    const SeamProgress& progress = m_jobs.progress.seams[place];
    const auto made = std::find_if(
        progress.joints.begin(), progress.joints.end(),
        [&progress](const SeamJoint& one) { return one.line.weld == progress.weld; });
    std::optional<JointLine> joint;
    if (!progress.joints.empty()) {
        joint = made == progress.joints.end() ? progress.joints.front().line : made->line;
    }
    const bool stays = seam.id.empty() || progress.state != JobSeamState::Open;
    if (joint && stays) {
        emit jointAsked(fromUtf8(joint->weld), joint->number);
        return;
    }
    if (stays) {
        emit said(tr("Seam %1 has no joint yet. It is of a job that lies in a file.")
                      .arg(fromUtf8(seam.label)));
        return;
    }
    std::vector<Press> presses;
    ChoiceView view;
    const auto offer = [&](const QString& text, const QString& under, Sign sign, Press press) {
        view.choices.push_back(choiceOf(text, under, sign));
        presses.push_back(std::move(press));
    };
    view.title = joint ? tr("Seam %1 is open.").arg(fromUtf8(seam.label))
                       : tr("Seam %1 has no joint yet.").arg(fromUtf8(seam.label));
    view.under = tr("Taken away it is no longer offered; the log keeps that it was there.");
    offer(
        tr("Take it away"), tr("by a foreman's PIN"), Sign::Erase,
        [this, id = seam.id, label = fromUtf8(seam.label)] {
            takeAway({id}, tr("Seam %1 is taken away.").arg(label));
        });
    const std::vector<std::string> all = untouched(job);
    if (all.size() > 1) { // a table that was brought in under a wrong name
        offer(
            tr("Take away all without a joint"),
            tr("%1 seams of the job %2, by a foreman's PIN").arg(all.size()).arg(fromUtf8(job)),
            Sign::Erase,
            [this, all] { takeAway(all, tr("%1 seams are taken away.").arg(all.size())); });
    }
    if (joint) { // stopped in preparation
        offer(
            tr("Look at joint %1").arg(joint->number), tr("in the day log"), Sign::Note,
            [this, line = *joint] { emit jointAsked(fromUtf8(line.weld), line.number); });
    }
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("it stays"));
    view.step = hiddenSlot();
    choose(
        view, [presses](int index) { presses.at(static_cast<std::size_t>(index))(); }, {},
        [this, job] { showSeams(job); });
}

/// Of the seams that the log keeps of a job, those that no joint was ever opened for.
std::vector<std::string> ShopFlow::untouched(const std::string& job) const {
    std::vector<std::string> out;
    for (std::size_t i = 0; i < m_jobs.seams.size(); ++i) {
        const JobSeam& seam = m_jobs.seams[i];
        if (seam.job == job && !seam.id.empty() && m_jobs.progress.seams[i].joints.empty()) {
            out.push_back(seam.id);
        }
    }
    return out;
}

void ShopFlow::takeAway(const std::vector<std::string>& ids, const QString& what) {
    if (!needsForeman()) {
        return;
    }
    m_room.ask(what, [this, ids, what](const ProvenPerson& by) {
        errand<void>(
            [by, ids](Office& office) { return office.withdrawSeams(by, ids); }, what,
            [this] {
                emit seamsKept();
                if (page() != nullptr) {
                    showJobs();
                }
            });
    });
}

// ---- a table

void ShopFlow::askTable() {
    askWords(
        tr("Which job are the seams of?"),
        tr("Its order number, 1 to %1 characters: labels are told apart by it.").arg(kLongestJob),
        tr("job"),
        [this](const QString& job) {
            if (job.size() > kLongestJob) {
                emit said(tr("%1 characters are too many; allowed: 1 to %2.")
                              .arg(job.size())
                              .arg(kLongestJob));
                return;
            }
            showFiles(job.toStdString(), {});
        },
        [this] { showJobs(); });
}

void ShopFlow::showFiles(const std::string& job, const QString& trouble) {
    const ListView page = filesPage(
        tr("Which table of seams?"), m_room.folder, QStringLiteral("csv"), trouble, m_files);
    m_list->setLine(m_room.folder);
    list(
        page,
        [this, job](int index) {
            readTable(job, QString(m_files.at(static_cast<std::size_t>(index)).path));
        },
        [this, job] { readTable(job, m_list->lineText()); }, [this] { showJobs(); });
}

void ShopFlow::readTable(const std::string& job, const QString& path) {
    if (QFileInfo(path).isDir()) {
        m_room.folder = QFileInfo(path).absoluteFilePath();
        showFiles(job, {});
        return;
    }
    const auto bytes = bytesOf(path);
    if (!bytes) {
        showFiles(
            job, tr("\"%1\" can't be read; allowed: a table of up to %2 bytes.")
                     .arg(path)
                     .arg(static_cast<qulonglong>(kLargestJobCsv)));
        return;
    }
    JobCsvKnown known;
    for (const ProcedureDocument& one : m_room.procedures()) {
        known.procedures.emplace(one.procedure.id, weldedBy(one.procedure));
    }
    for (const BenchDocument& one : m_room.benches()) {
        known.benches.insert(one.bench.id);
    }
    showTable(QFileInfo(path).fileName(), job, readJobCsv(*bytes, known));
}

void ShopFlow::showTable(const QString& file, const std::string& job, const JobCsv& table) {
    std::vector<JobSeam> seams = table.seams;
    for (JobSeam& seam : seams) {
        seam.job = job;
    }
    list(
        tableList(file, job, table), {},
        [this, seams] {
            if (!seams.empty()) {
                const auto count = static_cast<qulonglong>(seams.size());
                keepSeams(
                    seams,
                    count == 1 ? tr("One seam is kept.") : tr("%1 seams are kept.").arg(count));
            }
        },
        [this] { showJobs(); });
}

void ShopFlow::keepSeams(std::vector<JobSeam> seams, const QString& done) {
    m_room.ask(done, [this, seams = std::move(seams), done](const ProvenPerson& by) {
        errand<void>(
            [by, seams](Office& office) { return office.addSeams(by, seams); }, done,
            [this] {
                m_typing.reset();
                emit seamsKept();
                if (page() != nullptr) {
                    showJobs();
                }
            });
    });
}

// ---- a seam by hand

SeamChoices ShopFlow::seamChoices() const {
    SeamChoices out;
    for (const ProcedureDocument& one : m_room.procedures()) {
        out.procedures.emplace_back(one.procedure.id, fromUtf8(one.procedure.title));
        out.welds.emplace(one.procedure.id, weldedBy(one.procedure));
    }
    for (const BenchDocument& one : m_room.benches()) {
        out.benches.emplace_back(
            one.bench.id, tr("%1: %2").arg(m_room.letter(one.bench.id), fromUtf8(one.bench.name)));
    }
    return out;
}

void ShopFlow::typeSeam() {
    m_typing = SeamValues{{"shielded", QStringLiteral("no")}};
    m_asksWhole = false;
    m_form->begin();
    showForm();
}

void ShopFlow::showForm() {
    FormPageView view;
    view.section = seamForm(*m_typing, seamChoices(), m_asksWhole);
    view.step = stepSlot(tr("To the overview"), false);
    m_form->show(view);
    if (page() != m_form) {
        turnTo(
            m_form, [this] { showSeamDraft(); }, [this] { m_form->turnLeaf(1); },
            [this] { m_form->turnLeaf(-1); });
    }
}

void ShopFlow::showSeamDraft() {
    m_asksWhole = true;
    const auto seam = seamOf(*m_typing, seamChoices());
    const int wrong = findingsIn(seamForm(*m_typing, seamChoices(), true));
    ListView view;
    ListRowView row;
    if (seam) {
        view.title = tr("Seam %1 of job %2").arg(fromUtf8(seam->label), fromUtf8(seam->job));
        view.under = tr("All is as it may be. It is kept by a foreman's PIN.");
        row.text = tr("%1: %2").arg(fromUtf8(seam->label), fromUtf8(seam->what));
        row.second = seamSheets(*seam);
        row.mark = Mark::Done;
        row.tone = Tone::Normal;
    } else {
        view.title = tr("A seam of a job");
        view.under = wrong == 1
                         ? tr("1 thing is to be put right before it can be kept.")
                         : tr("%1 things are to be put right before it can be kept.").arg(wrong);
        row.text = tr("To the form");
        row.second = tr("What is wrong stands at its field.");
        row.mark = Mark::Late;
        row.tone = Tone::Late;
    }
    view.rows.push_back(std::move(row));
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("nothing is kept"));
    view.step = stepSlot(tr("Keep it"));
    if (!seam) {
        view.step.look = SlotView::Look::Gone;
    }
    list(
        view, [this](int) { showForm(); },
        [this, seam] {
            if (seam) {
                keepSeams(
                    {*seam}, tr("Seam %1 of job %2 is kept.")
                                 .arg(fromUtf8(seam->label), fromUtf8(seam->job)));
            }
        },
        [this] {
            m_typing.reset();
            showJobs();
        });
}

} // namespace seamclock
