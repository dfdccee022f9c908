#include "app/setup/setup_flow.h"

#include "app/setup/bench_form.h"
#include "app/setup/procedure_form.h"
#include "app/text/dates.h"
#include "app/text/phrase_book.h"
#include "app/text/words.h"
#include "core/base/plain_number.h"
#include "core/bench/calibration.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <algorithm>
#include <utility>

namespace seamclock {
namespace {

constexpr qint64 kLargestFile = 16'000'000;

ListRowView benchRow(const BenchDocument& document) {
    const Bench& bench = document.bench;
    ListRowView row;
    row.text = fromUtf8(bench.name);
    row.second = SetupFlow::tr("bench %1 · seams to %2 mm · sheets %3 to %4 mm")
                     .arg(fromUtf8(bench.id))
                     .arg(inMillimetres(bench.longestSeam))
                     .arg(inMillimetres(bench.thinnestSheet))
                     .arg(inMillimetres(bench.thickestSheet));
    row.third =
        bench.calibration
            ? SetupFlow::tr("calibration due on %1").arg(fullDayWords(bench.calibration->dueOn))
            : SetupFlow::tr("scale not calibrated");
    row.sign = Sign::Spring;
    if (!bench.calibration) {
        row.tone = Tone::Soon;
        row.mark = Mark::Trouble;
    }
    return row;
}

std::vector<FormFinding> findingsOf(const std::string& name, const std::string& text, bool bench) {
    std::vector<FormFinding> out;
    if (bench) {
        for (const BenchFinding& finding : checkBench(name, text)) {
            out.push_back({finding.field, finding.reason});
        }
    } else {
        for (const ProcedureFinding& finding : checkProcedure(name, text)) {
            out.push_back({finding.field, finding.reason});
        }
    }
    return out;
}

/// The file's bytes, or why not.
Result<std::string> bytesOf(const QString& path) {
    QFile file(path);
    if (!QFileInfo(path).isFile() || !file.open(QIODevice::ReadOnly)) {
        return fail(
            ErrorCode::Unreadable,
            "\"" + path.toStdString() + "\" can't be read; allowed: a file that can be read");
    }
    if (file.size() > kLargestFile) {
        return fail(
            ErrorCode::Unreadable, "\"" + path.toStdString() + "\" holds " +
                                       std::to_string(file.size()) + " bytes; allowed: to " +
                                       std::to_string(kLargestFile));
    }
    return file.readAll().toStdString();
}

} // namespace

SetupFlow::SetupFlow(Desk& desk, SetupShop& shop, AskForeman ask, QString folder, QWidget* window)
    : PageFlow(window), m_desk(desk), m_shop(shop), m_ask(std::move(ask)),
      m_folder(std::move(folder)), m_list(new ListPage(window)),
      m_procedure(new ProcedurePage(window)), m_form(new FormPage(window)),
      m_choice(new ChoicePage(window)) {
    m_choice->setObjectName("setupChoice");
    take(pages());
    takeAnswers(m_list);
    takeAnswers(m_choice);
    connect(m_procedure, &ProcedurePage::tabChosen, this, [this](int tab) {
        showProcedure(m_id, tab);
    });
    connect(m_form, &FormPage::typed, this, &SetupFlow::typedInto);
    connect(m_form, &FormPage::asked, this, &SetupFlow::askedFor);
    connect(m_form, &FormPage::acted, this, &SetupFlow::acted);
}

// ---- pages

void SetupFlow::open() {
    if (isChanged()) {
        showSections();
    } else {
        showStart();
    }
}

void SetupFlow::openCalibration(const QString& name, const std::string& document) {
    edit(Kind::Bench, name, document, true);
    if (!m_editing) {
        return; // it was no document, and that was told
    }
    const auto& sections = m_editing->sections;
    const auto found =
        std::find_if(sections.begin(), sections.end(), [](const FormSection& section) {
            const auto& roots = section.roots;
            return std::find(roots.begin(), roots.end(), "/calibration") != roots.end();
        });
    if (found != sections.end()) {
        m_editing->section = static_cast<std::size_t>(found - sections.begin());
        m_form->begin();
        showSection();
    }
}

void SetupFlow::close() {
    shut();
    m_ticked.clear();
    if (!isChanged()) {
        m_editing.reset();
    }
}

void SetupFlow::takeKeys() {
    if (page() == m_list) {
        m_list->takeKeys();
    }
}

bool SetupFlow::isChanged() const {
    return m_editing && (m_editing->isNew || m_editing->draft.text() != m_editing->before);
}

// ---- what there is

const ProcedureDocument* SetupFlow::procedure(const std::string& id) const {
    const auto& all = m_shop.procedures();
    const auto found = std::find_if(all.begin(), all.end(), [&id](const ProcedureDocument& one) {
        return one.procedure.id == id;
    });
    return found == all.end() ? nullptr : &*found;
}

void SetupFlow::showStart() {
    m_editing.reset();
    m_ticked.clear();
    ListView view;
    view.title = tr("Set-up: procedures and benches");
    view.under = tr("Changes are kept by a foreman's PIN and hold for new welds.");
    std::vector<std::string> ids;
    for (const ProcedureDocument& one : m_shop.procedures()) {
        view.rows.push_back(procedureRow(one));
        ids.push_back(one.procedure.id);
    }
    const std::size_t procedures = ids.size();
    const std::vector<BenchDocument> benches = m_shop.benches();
    for (const BenchDocument& one : benches) {
        view.rows.push_back(benchRow(one));
    }
    view.columns = 2;
    view.back = plainSlot(tr("Another procedure"), tr("from a file"));
    view.stop = plainSlot(tr("Another bench"), tr("an empty form"));
    view.step = stepSlot(tr("Back to the bench"), false);
    list(
        view,
        [this, ids, procedures, benches](int index) {
            const auto at = static_cast<std::size_t>(index);
            if (at < procedures) {
                showProcedure(ids[at]);
            } else {
                const BenchDocument& bench = benches[at - procedures];
                edit(Kind::Bench, fromUtf8(bench.bench.name), bench.bytes, false);
            }
        },
        [this] {
            close();
            emit left();
        },
        [this] { edit(Kind::Bench, tr("Another bench"), emptyBench().text(), true); },
        [this] {
            showFiles(
                tr("Which procedure file?"), "json",
                [this](const QString& path) { return importProcedure(path); },
                [this] { showStart(); });
        });
}

void SetupFlow::showProcedure(const std::string& id, int tab) {
    const ProcedureDocument* document = procedure(id);
    if (document == nullptr) {
        showStart();
        return;
    }
    m_id = id;
    m_procedure->show(procedureView(*document, tab));
    turnTo(
        m_procedure,
        [this, id] {
            if (const ProcedureDocument* one = procedure(id)) {
                edit(Kind::Procedure, fromUtf8(one->procedure.title), one->bytes, false);
            }
        },
        [this, id] { attest(id, false); }, [this] { showStart(); });
}

// ---- files

void SetupFlow::showFiles(
    const QString& title, const QString& ending,
    const std::function<std::optional<QString>(const QString& path)>& read, const Press& stop,
    const QString& trouble) {
    const ListView page = filesPage(title, m_folder, ending, trouble, m_files);
    const auto open = [this, title, ending, read, stop](const QString& path) {
        if (QFileInfo(path).isDir()) {
            m_folder = QDir(path).absolutePath();
            showFiles(title, ending, read, stop);
            return;
        }
        if (const auto refused = read(path)) {
            m_folder = QFileInfo(path).isFile() ? QFileInfo(path).absolutePath() : m_folder;
            showFiles(title, ending, read, stop, *refused);
        }
    };
    m_list->setLine(m_folder);
    list(
        page,
        [this, open](int index) {
            const QString path = m_files.at(static_cast<std::size_t>(index)).path;
            open(path);
        },
        [this, open] { open(m_list->lineText()); }, stop);
}

std::optional<QString> SetupFlow::importProcedure(const QString& path) {
    const auto bytes = bytesOf(path);
    if (!bytes) {
        return inWords(bytes.error().detail);
    }
    const QString name = QFileInfo(path).fileName();
    const auto draft = JsonDraft::read(name.toStdString(), *bytes);
    if (!draft) {
        return inWords(draft.error().detail);
    }
    edit(Kind::Procedure, name, *bytes, true);
    return std::nullopt;
}

std::optional<QString> SetupFlow::readPoints(const QString& path) {
    const auto bytes = bytesOf(path);
    if (!bytes) {
        return inWords(bytes.error().detail);
    }
    const std::string name = QFileInfo(path).fileName().toStdString();
    const auto fit = fitScale(name, *bytes);
    if (!fit) {
        return inWords(fit.error().detail);
    }
    if (const auto straight = straightEnough(*fit); !straight) {
        return fromUtf8(name) + ": " + inWords(straight.error().detail);
    }
    JsonDraft& draft = m_editing->draft;
    draft.put("/calibration/points", "[]");
    draft.remove("/calibration/rate_uncertainty_percent");
    draft.remove("/scale/springs");
    draft.remove("/scale/zero");
    draft.remove("/scale/preload_N");
    for (std::size_t i = 0; i < fit->points.size(); ++i) {
        const std::string item = "/calibration/points/" + std::to_string(i);
        draft.insert(item, "{}");
        draft.setNumber(item + "/reading", plainNumber(fit->points[i].reading));
        draft.setNumber(item + "/force_N", plainNumber(fit->points[i].force));
    }
    m_editing->typed.clear();
    look();
    showSection();
    return std::nullopt;
}

// ---- a document in a form

void SetupFlow::edit(Kind kind, const QString& name, const std::string& bytes, bool isNew) {
    auto draft = JsonDraft::read(name.toStdString(), bytes);
    if (!draft) {
        tell(draft.error());
        return;
    }
    m_editing = Editing{};
    m_editing->kind = kind;
    m_editing->name = name;
    m_editing->draft = std::move(*draft);
    m_editing->before = m_editing->draft.text();
    m_editing->isNew = isNew;
    look();
    showSections();
}

/// Works out the sections and what is wrong in them.
void SetupFlow::look() {
    Editing& editing = *m_editing;
    const bool bench = editing.kind == Kind::Bench;
    editing.sections = bench ? benchForm(editing.draft) : procedureForm(editing.draft);
    const auto findings = findingsOf(editing.name.toStdString(), editing.draft.text(), bench);
    editing.wrong = static_cast<int>(findings.size());
    editing.findings = placeFindings(editing.sections, findings);
    editing.section = std::min(editing.section, editing.sections.size() - 1);
}

void SetupFlow::showSections() {
    const Editing& editing = *m_editing;
    ListView view;
    view.title = editing.name;
    if (!editing.findings.isEmpty()) {
        view.trouble = editing.findings.front();
    } else if (editing.wrong > 0) {
        view.under =
            editing.wrong == 1
                ? tr("1 thing is to be put right before it can be kept.")
                : tr("%1 things are to be put right before it can be kept.").arg(editing.wrong);
    } else {
        view.under = isChanged() ? tr("All is as it may be. It is kept by a foreman's PIN.")
                                 : tr("Nothing is changed yet.");
    }
    for (const FormSection& section : editing.sections) {
        ListRowView row;
        row.text = section.title;
        row.second = section.under;
        if (const int wrong = findingsIn(section); wrong > 0) {
            row.mark = Mark::Late;
            row.tone = Tone::Late;
            row.second =
                wrong == 1 ? tr("1 thing to put right") : tr("%1 things to put right").arg(wrong);
        } else {
            row.mark = Mark::Done;
            row.tone = Tone::Normal;
        }
        view.rows.push_back(std::move(row));
    }
    view.columns = 2;
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), isChanged() ? tr("nothing is kept") : tr("to the list"));
    view.step = stepSlot(tr("Keep it"));
    if (editing.wrong > 0 || !isChanged()) {
        view.step.look = SlotView::Look::Gone;
    }
    list(
        view,
        [this](int index) {
            m_editing->section = static_cast<std::size_t>(index);
            m_editing->typed.clear();
            m_form->begin();
            showSection();
        },
        [this] { save(); }, [this] { leaveForm(); });
}

void SetupFlow::leaveForm() {
    const bool shown = m_editing && m_editing->kind == Kind::Procedure && !m_editing->isNew;
    m_editing.reset();
    if (shown) {
        showProcedure(m_id);
    } else {
        showStart();
    }
}

void SetupFlow::showSection() {
    const Editing& editing = *m_editing;
    FormPageView view;
    view.section = editing.sections[editing.section];
    for (FormRow& row : view.section.rows) {
        for (FormField& field : row.fields) {
            // what is being typed stands as it was typed
            if (const auto typed = editing.typed.find(field.pointer);
                typed != editing.typed.end()) {
                field.value = typed->second;
            }
        }
    }
    view.step = stepSlot(tr("To the overview"), false);
    m_form->show(view);
    if (page() != m_form) {
        turnTo(
            m_form, [this] { showSections(); }, [this] { m_form->turnLeaf(1); },
            [this] { m_form->turnLeaf(-1); });
    }
}

void SetupFlow::typedInto(const FormField& field, const QString& text) {
    if (!m_editing) {
        return;
    }
    typeInto(m_editing->draft, field, text);
    m_editing->typed[field.pointer] = text;
    look();
    showSection();
}

void SetupFlow::askedFor(const FormField& field) {
    if (!m_editing) {
        return;
    }
    if (field.kind == FormField::Kind::Order) {
        askOrder({});
        return;
    }
    ChoiceView view;
    view.title = field.caption;
    for (const auto& [stored, words] : field.choices) {
        ChoiceView::Choice choice;
        choice.text = words;
        choice.chosen = words == field.value;
        view.choices.push_back(choice);
    }
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("it stays"));
    view.step = hiddenSlot();
    choose(
        view,
        [this, field](int index) {
            m_editing->draft.setText(
                field.pointer, field.choices.at(static_cast<std::size_t>(index)).first);
            look();
            showSection();
        },
        {}, [this] { showSection(); });
}

/// Step by step: what comes next is asked until the sheet is out.
void SetupFlow::askOrder(const std::vector<std::string>& chosen) {
    const std::vector<std::string> steps = releaseSteps();
    ChoiceView view;
    view.title = chosen.empty() ? tr("What is done first when cooling is over?")
                                : tr("What is done then? (step %1)").arg(chosen.size() + 1);
    view.under = tr("The machine's own instructions decide. The last step is the sheet.");
    std::vector<std::string> left;
    for (const std::string& step : steps) {
        if (std::find(chosen.begin(), chosen.end(), step) == chosen.end()) {
            ChoiceView::Choice choice;
            choice.text = releaseSentence(step);
            choice.sign = Sign::Release;
            view.choices.push_back(choice);
            left.push_back(step);
        }
    }
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("the order stays"));
    view.step = hiddenSlot();
    const auto then = [this, chosen, left](int index) {
        std::vector<std::string> next = chosen;
        next.push_back(left.at(static_cast<std::size_t>(index)));
        if (next.back() != releaseSteps().back()) {
            askOrder(next);
            return;
        }
        JsonDraft& draft = m_editing->draft;
        draft.put("/release_order", "[]");
        for (std::size_t i = 0; i < next.size(); ++i) {
            draft.insert("/release_order/" + std::to_string(i), "\"" + next[i] + "\"");
        }
        look();
        showSection();
    };
    choose(view, then, {}, [this] { showSection(); });
}

void SetupFlow::acted(const FormAction& action) {
    if (!m_editing) {
        return;
    }
    if (action.kind == FormAction::Kind::ReadFile) {
        showFiles(
            tr("Which file of readings and forces?"), "csv",
            [this](const QString& path) { return readPoints(path); }, [this] { showSection(); });
        return;
    }
    act(m_editing->draft, action);
    if (action.pointer == "/calibration/points" || action.pointer == "/calibration") {
        // Zero and rate come from the points, and from nowhere else.
        JsonDraft& draft = m_editing->draft;
        if (draft.has("/calibration/points")) {
            draft.remove("/scale/springs");
            draft.remove("/scale/zero");
            draft.remove("/scale/preload_N");
            draft.remove("/calibration/rate_uncertainty_percent");
        } else if (!draft.has("/scale/springs")) {
            draft.put("/scale/springs", "[{}]");
        }
    }
    m_editing->typed.clear();
    look();
    showSection();
}

// ---- keeping

void SetupFlow::save() {
    if (!m_editing || m_editing->wrong > 0 || !isChanged()) {
        return;
    }
    const QString id = fromUtf8(m_editing->draft.shown("/id"));
    if (m_editing->kind == Kind::Bench) {
        m_ask(tr("The bench \"%1\" is changed.").arg(id), [this](const ProvenPerson& by) {
            saveBench(by);
        });
    } else {
        m_ask(tr("The procedure \"%1\" is changed.").arg(id), [this](const ProvenPerson& by) {
            saveProcedure(by);
        });
    }
}

void SetupFlow::inForce(const Result<std::vector<ProcedureDocument>>& now, const QString& told) {
    if (!now) {
        tell(now.error());
        return;
    }
    m_shop.setProcedures(*now);
    m_editing.reset();
    m_ticked.clear();
    if (page() != nullptr) { // or the pages were left meanwhile
        showProcedure(m_id);
    }
    emit kept(told);
}

void SetupFlow::saveProcedure(const ProvenPerson& by) {
    const auto document = readProcedure(m_editing->name.toStdString(), m_editing->draft.text());
    if (!document) {
        tell(document.error());
        return;
    }
    m_id = document->procedure.id;
    using Now = Result<std::vector<ProcedureDocument>>;
    m_desk.run<Now>(
        this,
        [by, document = *document, writer = &m_desk.writer(),
         shipped = m_shop.shipped()](Office& office) -> Now {
            if (const auto set = office.setProcedure(by, document); !set) {
                return tl::unexpected<Error>(set.error());
            }
            return readProceduresInForce(*writer, shipped);
        },
        [this](const Now& now) { inForce(now, tr("The procedure is kept.")); });
}

void SetupFlow::saveBench(const ProvenPerson& by) {
    const auto document = readBench(m_editing->name.toStdString(), m_editing->draft.text());
    if (!document) {
        tell(document.error());
        return;
    }
    const auto benches = m_shop.benches();
    const bool known = std::any_of(benches.begin(), benches.end(), [&](const BenchDocument& one) {
        return one.bench.id == document->bench.id;
    });
    if (!known && benches.size() >= 4) {
        emit said(tr("A fifth bench is one too many: 4 are allowed."));
        return;
    }
    m_desk.run<Result<void>>(
        this, [by, document = *document](Office& office) { return office.setBench(by, document); },
        [this, document = *document](const Result<void>& set) {
            const auto there = set ? m_shop.setBench(document) : set;
            if (!there) {
                tell(there.error());
                return;
            }
            m_editing.reset();
            if (page() != nullptr) {
                showStart();
            }
            emit kept(tr("The bench is kept."));
        });
}

// ---- attesting

void SetupFlow::attest(const std::string& id, bool withdraws) {
    m_id = id;
    m_withdraws = withdraws;
    m_ticked.clear();
    showGroups();
}

void SetupFlow::showGroups() {
    const ProcedureDocument* document = procedure(m_id);
    if (document == nullptr) {
        showStart();
        return;
    }
    list(
        groupsPage(document->procedure, m_ticked, m_withdraws),
        [this](int index) { showCells(static_cast<std::size_t>(index)); },
        [this] {
            if (!m_ticked.empty()) {
                askEdition();
            }
        },
        [this] { showProcedure(m_id); }, [this] { attest(m_id, !m_withdraws); });
}

void SetupFlow::showCells(std::size_t group) {
    const ProcedureDocument* document = procedure(m_id);
    const auto groups =
        document != nullptr ? cellGroups(document->procedure) : std::vector<CellGroup>();
    if (group >= groups.size()) {
        showStart();
        return;
    }
    std::vector<std::string> names;
    const ListView page = cellsPage(groups[group], m_ticked, m_withdraws, names);
    const auto all = [this, names, group](bool ticked) {
        for (const std::string& name : names) {
            if (ticked) {
                m_ticked.insert(name);
            } else {
                m_ticked.erase(name);
            }
        }
        showCells(group);
    };
    list(
        page,
        [this, names, group](int index) {
            const std::string& name = names.at(static_cast<std::size_t>(index));
            if (m_ticked.erase(name) == 0) {
                m_ticked.insert(name);
            }
            showCells(group);
        },
        [this] { showGroups(); }, [all] { all(false); }, [all] { all(true); });
}

void SetupFlow::askEdition() {
    const ProcedureDocument* document = procedure(m_id);
    if (document == nullptr) {
        return;
    }
    ListView view;
    view.title = m_withdraws ? tr("Why do they hold no more?") : tr("Which edition was it?");
    view.line = m_withdraws ? tr("the reason, for the record")
                            : tr("title and date, as printed on the shop's copy");
    const QString count = QString::number(m_ticked.size());
    const QString standard = fromUtf8(document->procedure.standard);
    const bool one = m_ticked.size() == 1;
    if (m_withdraws) {
        view.under = one ? tr("One value loses its standing.")
                         : tr("%1 values lose their standing.").arg(count);
    } else {
        view.under = one ? tr("One value of %1.").arg(standard)
                         : tr("%1 values of %2.").arg(count, standard);
    }
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("back to the tables"));
    view.step = stepSlot(m_withdraws ? tr("Withdraw") : tr("Attest"));
    m_list->setLine({});
    list(
        view, {}, [this] { keepAttestation(); }, [this] { showGroups(); });
}

void SetupFlow::keepAttestation() {
    const std::string words = m_list->lineText().toStdString();
    const ProcedureDocument* document = procedure(m_id);
    if (document == nullptr) {
        return;
    }
    if (words.empty()) {
        ListView view = m_list->view();
        view.trouble = m_withdraws ? tr("Nothing is typed: a few words say why.")
                                   : tr("Nothing is typed: the edition is printed on the cover.");
        m_list->show(view);
        return;
    }
    const std::vector<std::string> cells(m_ticked.begin(), m_ticked.end());
    const bool one = cells.size() == 1;
    const QString what = m_withdraws
                             ? (one ? tr("One attested value is withdrawn.")
                                    : tr("%1 attested values are withdrawn.").arg(cells.size()))
                             : (one ? tr("One value is attested.")
                                    : tr("%1 values are attested.").arg(cells.size()));
    using Now = Result<std::vector<ProcedureDocument>>;
    m_ask(
        what, [this, words, cells, what, document = *document,
               withdraws = m_withdraws](const ProvenPerson& by) {
            m_desk.run<Now>(
                this,
                [by, words, cells, document, withdraws, writer = &m_desk.writer(),
                 shipped = m_shop.shipped()](Office& office) -> Now {
                    const auto done =
                        withdraws
                            ? office.withdrawAttestation(by, document.procedure.id, words, cells)
                            : office.attest(by, document, words, cells);
                    if (!done) {
                        return tl::unexpected<Error>(done.error());
                    }
                    return readProceduresInForce(*writer, shipped);
                },
                [this, what](const Now& now) { inForce(now, what); });
        });
}

} // namespace seamclock
