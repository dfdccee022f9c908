#include "app/operate/setup_walk.h"

#include "app/text/phrase_book.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <algorithm>

namespace seamclock {
namespace {

Result<void> stopped(const std::string& why) {
    return fail(ErrorCode::Refused, "the walk through Set-up stopped: " + why);
}

} // namespace

SetupWalk::SetupWalk(Window& window, Desk& desk, PeopleWalk& people, QString demo, QString scratch)
    : m_window(window), m_desk(desk), m_people(people), m_demo(std::move(demo)),
      m_scratch(std::move(scratch)) {}

void SetupWalk::take(const Picture& picture, const QString& name) {
    m_window.refresh();
    if (picture) {
        picture(name);
    }
}

Result<void> SetupWalk::expect(const Page* page, const std::string& what) const {
    return m_window.currentPage() == page ? Result<void>() : stopped(what);
}

Result<void> SetupWalk::press(SlotPlace place) {
    return m_people.press(place);
}

Result<void> SetupWalk::choose(const QString& words) {
    auto* list = m_window.setup()->listPage();
    if (const auto there =
            expect(list, "no list stands that holds \"" + words.toStdString() + "\"");
        !there) {
        return there;
    }
    const auto& rows = list->view().rows;
    const QString shown = asShown(words.toUtf8());
    const auto found = std::find_if(rows.begin(), rows.end(), [&](const ListRowView& row) {
        return (row.text.startsWith(words) || row.text.startsWith(shown)) && row.enabled;
    });
    if (found == rows.end()) {
        return stopped("no row begins with \"" + words.toStdString() + "\"");
    }
    emit list->chosen(static_cast<int>(found - rows.begin()));
    m_people.settle();
    return {};
}

Result<void> SetupWalk::open() {
    m_window.openMenu();
    return m_people.choose("Set-up");
}

Result<QString> SetupWalk::written(const QString& name, const QByteArray& bytes) const {
    QDir().mkpath(m_scratch);
    QFile file(QDir(m_scratch).filePath(name));
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size()) {
        return fail(
            ErrorCode::NotWritten, "\"" + file.fileName().toStdString() + "\" can't be written");
    }
    return file.fileName();
}

Result<void> SetupWalk::readFile(const QString& path) {
    m_window.setup()->listPage()->setLine(path);
    return press(SlotPlace::Step);
}

Result<void> SetupWalk::section(const QString& title) {
    return inOrder(
        {[&] { return choose(title); },
         [&] { return expect(m_window.setup()->formPage(), "the section did not open"); }});
}

Result<void> SetupWalk::type(const std::string& pointer, const QString& text) {
    FormCell* cell = m_window.setup()->formPage()->cellOf(pointer);
    if (cell == nullptr || !cell->isTyped()) {
        return stopped("no field of the form is " + pointer);
    }
    cell->type(text);
    m_window.refresh();
    return {};
}

Result<void> SetupWalk::act(const QString& words) {
    FormPage* form = m_window.setup()->formPage();
    SlotButton* button = form->actionOf(words);
    button = button != nullptr ? button : form->actionOf(asShown(words.toUtf8()));
    if (button == nullptr) {
        return stopped("the form has no button \"" + words.toStdString() + "\"");
    }
    emit button->pressed();
    m_people.settle();
    return {};
}

Result<void> SetupWalk::keep(const char* pin) {
    return inOrder(
        {[&] {
             return m_window.currentPage() == m_window.setup()->formPage()
                        ? press(SlotPlace::Step) // to the overview
                        : Result<void>();
         },
         [&] { return press(SlotPlace::Step); }, [&] { return m_people.givePin(pin); },
         [&] {
             m_people.settle();
             return m_window.page() == PageKind::Setup ? Result<void>()
                                                       : stopped("Set-up did not come back");
         }});
}

Result<void> SetupWalk::importProcedure(const char* pin, const Picture& picture) {
    QFile demo(QDir(m_demo).filePath("procedure-pvc-u.json"));
    if (!demo.open(QIODevice::ReadOnly)) {
        return stopped("the demo's procedure file is not there");
    }
    QByteArray bytes = demo.readAll();
    bytes.replace("\"max_C\": 235", "\"max_C\": 410"); // a slip, to be put right
    const auto file = written("pvc-u.json", bytes);
    if (!file) {
        return tl::unexpected<Error>(file.error());
    }
    FormPage* form = m_window.setup()->formPage();
    return inOrder(
        {[&] { return open(); },
         [&] {
             take(picture, "setup");
             return press(SlotPlace::Back);
         },
         [&] { return readFile(m_scratch); },
         [&] {
             take(picture, "setup-files");
             return choose("pvc-u.json");
         },
         [&] {
             take(picture, "setup-import");
             return press(SlotPlace::Step); // refused: something is wrong
         },
         [&] { return section("Plate and air"); },
         [&] {
             take(picture, "setup-refused-value");
             return form->said().contains(inWords(std::string_view("410 is outside 100 to 320 °C")))
                        ? Result<void>()
                        : stopped(form->said().toStdString());
         },
         [&] { return type("/plate/max_C", "235"); },
         [&] {
             return form->said().isEmpty() ? Result<void>() : stopped(form->said().toStdString());
         },
         [&] { return press(SlotPlace::Step); }, [&] { return section("Soak"); },
         [&] {
             take(picture, "setup-column");
             return type("/soak_s/table/1/upper", "81");
         },
         [&] {
             take(picture, "setup-column-falls");
             return type("/soak_s/table/1/upper", "181");
         },
         [&] { return press(SlotPlace::Step); },
         [&] {
             take(picture, "setup-to-keep");
             return keep(pin);
         },
         [&] {
             take(picture, "setup-procedure");
             return expect(m_window.setup()->procedurePage(), "the procedure is not shown");
         }});
}

Result<void> SetupWalk::attest(
    const QString& row, const QString& table, int values, const char* pin, const Picture& picture) {
    ListPage* list = m_window.setup()->listPage();
    return inOrder(
        {[&] { return open(); }, [&] { return choose(row); },
         [&] { return press(SlotPlace::Stop); },
         [&] {
             take(picture, "setup-attest");
             return choose(table);
         },
         [&] {
             for (int i = 0; i < values; ++i) {
                 emit list->chosen(i);
             }
             take(picture, "setup-attest-rows");
             return press(SlotPlace::Step);
         },
         [&] { return press(SlotPlace::Step); },
         [&] {
             list->setLine("Table 2, printed March 2029");
             take(picture, "setup-attest-edition");
             return press(SlotPlace::Step);
         },
         [&] { return m_people.givePin(pin); },
         [&] {
             m_people.settle();
             take(picture, "setup-attested");
             return expect(m_window.setup()->procedurePage(), "the procedure is not shown");
         }});
}

Result<void> SetupWalk::edit(const QString& row) {
    return inOrder(
        {[&] { return open(); }, [&] { return choose(row); },
         [&] {
             return m_window.currentPage() == m_window.setup()->procedurePage()
                        ? press(SlotPlace::Step)
                        : Result<void>();
         }});
}

Result<void> SetupWalk::calibrate(const Picture& picture) {
    const auto bent = written(
        "bent.csv", "reading_mm,force_N\n4,249\n8,502\n12,747\n16,1390\n20,1252\n24,1497\n");
    if (!bent) {
        return tl::unexpected<Error>(bent.error());
    }
    ListPage* list = m_window.setup()->listPage();
    return inOrder(
        {[&] { return section("Calibration"); }, [&] { return act("Read a CSV file"); },
         [&] { return readFile(*bent); },
         [&] {
             take(picture, "setup-bent");
             return list->view().trouble.isEmpty() ? stopped("a bent calibration was taken")
                                                   : Result<void>();
         },
         [&] { return readFile(QDir(m_demo).filePath("calibration-east.csv")); },
         [&] {
             take(picture, "setup-calibration");
             return expect(m_window.setup()->formPage(), list->view().trouble.toStdString());
         },
         [&] { return type("/calibration/load_cell", "the shop's own, 5 kN"); },
         [&] { return type("/calibration/done_on", "2030-01-07"); },
         [&] { return type("/calibration/due_on", "2031-01-07"); }});
}

Result<void> SetupWalk::releaseOrder(const Picture& picture) {
    SetupFlow& setup = *m_window.setup();
    return inOrder(
        {[&] { return section("Order of release"); },
         [&] {
             take(picture, "setup-release");
             FormCell* cell = setup.formPage()->cellOf("/release_order");
             if (cell == nullptr) {
                 return stopped("the form has no order");
             }
             emit cell->pressed();
             return expect(setup.choicePage(), "the order is not asked for");
         },
         [&] {
             take(picture, "setup-release-first");
             emit setup.choicePage()->chosen(2);
             emit setup.choicePage()->chosen(0);
             take(picture, "setup-release-third");
             emit setup.choicePage()->chosen(0);
             emit setup.choicePage()->chosen(0); // the sheet is all that is left
             return expect(setup.formPage(), "the order did not end with the sheet");
         }});
}

Result<void> SetupWalk::whatIf(const Picture& picture) {
    m_window.openMenu();
    HeatPage* page = m_window.heatPage();
    const auto rest = [page] { // the spread comes from a thread of its own
        while (!page->hasSpread()) {
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
        }
    };
    return inOrder(
        {[&] { return m_people.choose("What if"); },
         [&] { return expect(page, "\"What if\" did not open"); },
         [&] {
             rest();
             take(picture, "what-if");
             emit page->slider(WhatIf::Changeover)->moved(25);
             rest();
             take(picture, "what-if-late");
             return press(SlotPlace::Back);
         },
         [&] {
             rest();
             return press(SlotPlace::Step);
         }});
}

Result<void> SetupWalk::all(const char* pin, const Picture& picture) {
    SetupFlow& setup = *m_window.setup();
    return inOrder(
        {[&] { return importProcedure(pin, picture); },
         [&] { return attest("PP · ", "Soak", 2, pin, picture); },
         [&] {
             emit setup.procedurePage()->tabChosen(99); // pressures and plate: no plot
             take(picture, "setup-values");
             return edit("East bench");
         },
         [&] {
             take(picture, "setup-bench");
             return section("Scale and springs");
         },
         [&] {
             take(picture, "setup-bench-scale");
             return press(SlotPlace::Step);
         },
         [&] { return calibrate(picture); },
         [&] {
             take(picture, "setup-calibrated");
             setup.formPage()->turnLeaf(9);
             take(picture, "setup-calibrated-end");
             return press(SlotPlace::Step);
         },
         [&] { return releaseOrder(picture); }, [&] { return keep(pin); },
         [&] {
             take(picture, "setup-bench-kept");
             return press(SlotPlace::Stop); // another bench
         },
         [&] {
             take(picture, "setup-new-bench");
             return section("What fits");
         },
         [&] { return type("/longest_seam_mm", "4"); },
         [&] {
             take(picture, "setup-new-bench-limits");
             return press(SlotPlace::Step);
         },
         [&] { return press(SlotPlace::Stop); }, [&] { return press(SlotPlace::Step); }});
}

} // namespace seamclock
