#include "app/practice/practice_walk.h"

#include "app/practice/practice_result.h"
#include "app/text/words.h"
#include "core/weld/verdict.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

constexpr Milliseconds kLook{40};
constexpr Milliseconds kWait{200};
constexpr Milliseconds kLongestTurn{60'000};
constexpr Milliseconds kLongest{3'600'000};
constexpr double kFast = 25; // [mm/s]
constexpr double kGentle = 2.8;
constexpr double kTurn = 5.6;
constexpr double kSettleS = 0.12;

Result<void> refused(const std::string& why) {
    return fail(ErrorCode::Refused, "the practice walk stopped: " + why);
}

} // namespace

PracticeWalk::PracticeWalk(PracticeWindow& window, PracticeRoom& room, VirtualClock& machine)
    : m_window(window), m_room(room), m_machine(machine) {}

void PracticeWalk::take(const Picture& picture, const QString& name) {
    if (picture) {
        picture(name);
    }
}

void PracticeWalk::go(Milliseconds gap) {
    while (gap.count() > 0) {
        const Milliseconds part = std::min(gap, m_frame);
        m_machine.advance(part);
        if (m_make) {
            m_make();
        } else {
            m_window.tick();
        }
        gap -= part;
    }
}

Result<void> PracticeWalk::step() {
    const PracticePage page = m_window.page();
    const Weld* before = weldNow();
    const std::size_t events = before != nullptr ? before->events.size() : 0;
    const QString text = m_window.currentPage()->stepView().text;
    emit m_window.currentPage()->slotPressed(SlotPlace::Step);
    const Weld* after = weldNow();
    if (m_window.page() == page && after != nullptr && after->events.size() == events &&
        page != PracticePage::Pad) {
        return refused(
            "\"" + text.toStdString() + "\" changed nothing; " +
            m_window.banner()->text().toStdString());
    }
    return {};
}

Result<void> PracticeWalk::control(const QString& english) {
    const QString text = QCoreApplication::translate("BenchControls", english.toUtf8().constData());
    const auto& controls = m_window.benchPage()->view().controls;
    for (std::size_t i = 0; i < controls.size(); ++i) {
        if (controls[i].view.text == text) {
            ControlButton* button = m_window.benchPage()->control(static_cast<int>(i));
            emit button->pressed();
            emit button->left();
            return {};
        }
    }
    std::string there;
    for (const Control& one : controls) {
        there += " \"" + one.view.text.toStdString() + "\"";
    }
    return refused("no control \"" + text.toStdString() + "\" among" + there);
}

Result<void> PracticeWalk::several(const QStringList& controls) {
    for (const QString& text : controls) {
        if (const auto done = control(text); !done) {
            return done;
        }
        go(kWait);
    }
    return {};
}

Result<void> PracticeWalk::number(double value, int decimals) {
    if (m_window.page() != PracticePage::Pad) {
        return refused("no number is asked for");
    }
    for (const QChar sign : QLocale().toString(value, 'f', decimals)) {
        m_window.padPage()->pad()->type(sign);
    }
    return step();
}

BenchView PracticeWalk::bench() const {
    return m_room.run().bench().view();
}

double PracticeWalk::least(double StationView::*field) const {
    const BenchView view = bench();
    double found = view.stations.front().*field;
    for (const StationView& station : view.stations) {
        found = std::min(found, station.*field);
    }
    return found;
}

bool PracticeWalk::touches() const {
    const BenchView view = bench();
    return std::any_of(view.stations.begin(), view.stations.end(), [](const StationView& each) {
        return each.touches != Touches::Nothing;
    });
}

double PracticeWalk::bead(const WalkMistakes& mistakes) const {
    if (mistakes.topBeadOnly) {
        return least(&StationView::beadTopMm);
    }
    return std::min(least(&StationView::beadTopMm), least(&StationView::beadBottomMm));
}

double PracticeWalk::mmPerUnit() const {
    const SpringScale& scale = m_room.run().bench().setup().bench.scale;
    return inNewtons(scale.rate()) / inNewtons(*scale.ratePerMillimetre());
}

// As a finger on the wheel's controls does: pressed, slid for the speed, lifted.
void PracticeWalk::hold(double mmPerS) {
    const int way = mmPerS > 0 ? 1 : mmPerS < 0 ? -1 : 0;
    if (way != m_holding && m_holding != 0) {
        emit m_window.benchPage()->control(m_holding > 0 ? 0 : 1)->left();
    }
    if (way != 0) {
        ControlButton* button = m_window.benchPage()->control(way > 0 ? 0 : 1);
        if (way != m_holding) {
            emit button->pressed();
        }
        emit button->slid(16 * std::log2(std::abs(mmPerS) / 2));
    }
    m_holding = way;
}

void PracticeWalk::approach() {
    const Milliseconds until = m_room.run().now() + kLongestTurn;
    while (!touches() && m_room.run().now() < until) {
        hold(least(&StationView::gapMm) > 1.5 ? kFast : kGentle);
        go(kLook);
    }
    hold(0);
}

void PracticeWalk::apart(double mm) {
    const Milliseconds until = m_room.run().now() + kLongestTurn;
    hold(-kFast);
    while (least(&StationView::gapMm) < mm && m_room.run().now() < until) {
        go(kLook);
    }
    hold(0);
}

void PracticeWalk::turnTo(double reading, double mmPerS) {
    const double enough =
        0.1 * static_cast<double>(m_room.run().bench().setup().bench.scale.divisionMilli) / 1e3;
    const Milliseconds until = m_room.run().now() + kLongestTurn;
    while (m_room.run().now() < until) {
        const double missing = reading - bench().scale.reading;
        if (std::abs(missing) <= enough) {
            break;
        }
        hold(std::clamp(missing * mmPerUnit() / kSettleS, -mmPerS, mmPerS));
        go(kLook);
    }
    hold(0);
}

// ---- the weld

Result<void> PracticeWalk::weld(
    const std::string& lesson, const WalkMistakes& mistakes, const Picture& picture) {
    Result<void> done = toChangeover(lesson, mistakes, picture);
    if (done) {
        done = buildUp(picture);
    }
    if (done) {
        done = cool(picture);
    }
    if (done) {
        done = release(picture);
    }
    return done ? finish(picture) : done;
}

Result<void> PracticeWalk::toChangeover(
    const std::string& lesson, const WalkMistakes& mistakes, const Picture& picture) {
    Result<void> done = toBench(lesson, picture);
    if (done) {
        done = prepare(mistakes, picture);
    }
    if (done) {
        done = align(mistakes, picture);
    }
    if (done) {
        done = soak(mistakes, picture);
    }
    return done ? changeOver(mistakes, picture) : done;
}

Result<void> PracticeWalk::toBench(const std::string& lesson, const Picture& picture) {
    m_window.openLessons();
    take(picture, "lessons");
    if (const auto opened = m_window.openLesson(lesson); !opened) {
        return opened;
    }
    take(picture, "lesson");
    if (const auto begun = step(); !begun) {
        return begun;
    }
    take(picture, "card");
    emit m_window.currentPage()->slotPressed(SlotPlace::Step);
    go(kWait);
    return m_window.page() == PracticePage::Bench ? Result<void>()
                                                  : refused("the bench's page does not stand");
}

Result<void> PracticeWalk::evenGap(std::int64_t um) {
    const double wanted = static_cast<double>(um) / 1e3;
    for (int tries = 0; tries < 60; ++tries) {
        const BenchView seen = bench();
        const double front = wanted - seen.gapLeftMm;
        const double back = wanted - seen.gapRightMm;
        if (std::max(std::abs(front), std::abs(back)) < 0.3) {
            return {};
        }
        const QString what = std::abs(front) >= 0.3 ? (front > 0 ? "Front +" : "Front −")
                                                    : (back > 0 ? "Back +" : "Back −");
        if (const auto done = control(what); !done) {
            return done;
        }
        m_window.refresh();
    }
    return refused("the gap can't be set even");
}

// Until both ends are home; or one end only.
Result<void> PracticeWalk::clamp(const QString& which, bool even) {
    if (const auto done = several({"Clamps", which}); !done) {
        return done;
    }
    const auto held = [this](int index) {
        const QString under =
            m_window.benchPage()->view().controls[static_cast<std::size_t>(index)].view.under;
        return QLocale().toDouble(
            under.split(' ').front().remove('+').replace(QChar(0x2212), QLatin1Char('-')));
    };
    for (int tries = 0; tries < 20 && (held(0) < -0.05 || held(2) < -0.05); ++tries) {
        if (!even && std::max(held(0), held(2)) > -0.05) {
            break;
        }
        if (const auto done = control(held(0) < -0.05 ? "Front +" : "Back +"); !done) {
            return done;
        }
        m_window.refresh();
    }
    for (int more = 0; !even && more < 8; ++more) { // and that far too far
        if (const auto done = control("Front +"); !done) {
            return done;
        }
        m_window.refresh();
    }
    return several({"Clamp it", "Close"});
}

// The second sheet's lower side, until it stands with the upper one.
Result<void> PracticeWalk::shim(const Picture& picture) {
    constexpr double kUpright = 0.1; // [mm]
    if (std::abs(bench().leanMm[1]) <= kUpright) {
        return {};
    }
    if (const auto done = several({"Clamps", "Shim"}); !done) {
        return done;
    }
    take(picture, "shim");
    for (int tries = 0; tries < 50 && std::abs(bench().leanMm[1]) > kUpright; ++tries) {
        if (const auto done = several({bench().leanMm[1] > 0 ? "Below +" : "Below −"}); !done) {
            return done;
        }
    }
    return several({"Close", "Close"});
}

Result<void> PracticeWalk::check(
    const std::string& asked, const WalkMistakes& mistakes, const Picture& picture) {
    if (asked == "plate_temperature") {
        const int place = platePlacesRead(*weldNow());
        const QString names[] = {"Front", "Middle", "Back"};
        if (const auto done = several({"Plate", "Read plate", names[place], "Close", "Close"});
            !done) {
            return done;
        }
        const BenchView seen = bench();
        const std::size_t at = static_cast<std::size_t>(place) * (seen.stations.size() - 1) / 2;
        if (const auto done = step(); !done) {
            return done;
        }
        return number(
            std::round(mistakes.trustsDisplay ? seen.plateShownC : seen.stations[at].plateC), 0);
    }
    Result<void> done;
    if (asked == "film_off") {
        done = several({"Clamps", "Film off", "Close"});
    } else if (asked == "edges_planed") {
        done = several({"Clamps", "Plane edges", "Close"});
    } else if (asked == "plate_wiped") {
        done = several({"Plate", "Wipe plate", "Close"});
    } else if (asked == "gap" || asked == "clamping_gap") {
        done = several({"Clamps", "Set gap"});
        if (done) {
            done = evenGap(asked == "gap" ? plan().gapUm : plan().clampingGapUm);
        }
        if (done) {
            done = several({"Close", "Close"});
        }
    } else if (asked == "first_sheet") {
        done = clamp("First sheet", true);
    } else if (asked == "second_sheet") {
        done = clamp("Second sheet", !mistakes.offParallel);
    } else if (asked == "edges_meet" && !mistakes.leavesLean) {
        done = shim(picture);
    }
    go(kWait);
    return done ? step() : done;
}

Result<void> PracticeWalk::prepare(const WalkMistakes& mistakes, const Picture& picture) {
    for (int round = 0; round < 60; ++round) {
        const Weld* now = weldNow();
        const auto* state = now != nullptr ? std::get_if<Preparing>(&now->state) : nullptr;
        if (state == nullptr) {
            return refused("preparation ended early");
        }
        const std::string asked = checkAsked(*now, *state);
        if (asked.empty()) {
            break;
        }
        if (picture && (asked == "gap" || asked == "plate_temperature")) {
            m_window.refresh();
            take(picture, "prepare-" + fromUtf8(asked));
            const QStringList panel = asked == "gap" ? QStringList{"Clamps"} : QStringList{"Plate"};
            if (platePlacesRead(*now) == 0) {
                static_cast<void>(several(panel));
                take(picture, asked == "gap" ? "prepare-clamps" : "prepare-plate");
                if (asked == "plate_temperature") {
                    static_cast<void>(several({"Set plate"}));
                    take(picture, "prepare-set-plate");
                    static_cast<void>(several({"Close", "Read plate", "Middle"}));
                    take(picture, "prepare-read-plate");
                    static_cast<void>(several({"Close"}));
                } else {
                    static_cast<void>(several({"Set gap"}));
                    take(picture, "prepare-set-gap");
                    static_cast<void>(several({"Close"}));
                }
                static_cast<void>(control("Close"));
                m_window.refresh();
            }
        }
        if (asked == "second_sheet" && picture) {
            static_cast<void>(several({"Clamps", "Second sheet"}));
            take(picture, "prepare-second-sheet");
            static_cast<void>(several({"Close", "Close"}));
        }
        if (const auto done = check(asked, mistakes, picture); !done) {
            return done;
        }
        go(Milliseconds(1'000));
    }
    if (mistakes.says) {
        emit m_window.strip()->linePressed();
        take(picture, "side");
        emit m_window.choicePage()->chosen(0);
        take(picture, "wrong");
        const auto& all = allWrong();
        const auto which = std::find(all.begin(), all.end(), *mistakes.says) - all.begin();
        emit m_window.choicePage()->chosen(static_cast<int>(which));
        go(kWait);
        take(picture, "noted");
    }
    if (mistakes.touchesEdge) {
        emit m_window.benchPage()->edgeTouched(1);
        go(kWait);
    }
    return {};
}

Result<void> PracticeWalk::align(const WalkMistakes& mistakes, const Picture& picture) {
    apart(16);
    take(picture, "ready");
    if (const auto done = several({"Plate", "Plate in"}); !done) {
        return done;
    }
    go(Milliseconds(1'000));
    approach();
    const double set = static_cast<double>(plan().scale->alignment.setMilli) / 1e3;
    turnTo(set, kFast); // told within three seconds of touching
    if (const auto done = step(); !done) {
        return done;
    }
    const double wanted = plan().beadMinUm ? static_cast<double>(*plan().beadMinUm) / 1e3 : 1;
    const double division = static_cast<double>(plan().scale->divisionMilli) / 1e3;
    const Milliseconds until = m_room.run().now() + kLongest / 2;
    bool shown = false;
    while (m_room.run().now() < until && bead(mistakes) < wanted &&
           !(mistakes.offParallel &&
             m_room.run().now() > until - kLongest / 2 + Milliseconds(180'000))) {
        if (bench().scale.reading < set - division / 2) {
            turnTo(set, kTurn);
        }
        go(kWait);
        if (!shown && bead(mistakes) > wanted * 0.6) {
            shown = true;
            take(picture, "align");
        }
    }
    if (!mistakes.pressedSoak) {
        turnTo(static_cast<double>(plan().scale->soak.setMilli) / 1e3, kTurn);
    }
    if (const auto done = control("Lock"); !done) {
        return done;
    }
    m_window.refresh();
    take(picture, "align-over");
    return step();
}

Result<void> PracticeWalk::soak(const WalkMistakes& mistakes, const Picture& picture) {
    m_window.setPace(30);
    const Milliseconds whole = plan().soak->target;
    bool shown = false;
    const Milliseconds until = m_room.run().now() + kLongest;
    while (m_room.run().now() < until) {
        const auto* state = std::get_if<Soaking>(&weldNow()->state);
        if (state == nullptr) {
            return refused("soak ended early");
        }
        const Milliseconds gone = weldTimeAt(*weldNow(), m_room.now())->lo - state->from.lo;
        if (gone >= whole && m_window.page() == PracticePage::Bench) {
            break; // no sooner than a call is over
        }
        if (!shown && gone > whole / 2) {
            shown = true;
            take(picture, "soak");
        }
        go(gone > whole - Milliseconds(11'000) ? kLook : kWait);
        if (m_window.page() == PracticePage::Call && m_window.choicePage()->isVisible()) {
            take(picture, "call");
            emit m_window.choicePage()->chosen(mistakes.takesCall ? 0 : 1);
            if (mistakes.takesCall) {
                go(kWait);
                take(picture, "on-the-phone");
            }
        }
    }
    m_window.setPace(1);
    m_window.refresh();
    take(picture, "act-now");
    return {};
}

Result<void> PracticeWalk::changeOver(const WalkMistakes& mistakes, const Picture& picture) {
    if (const auto done = control("Unlock"); !done) {
        return done;
    }
    m_window.refresh();
    apart(1.5);
    take(picture, "apart");
    if (const auto done = control("Plate"); !done) {
        return done;
    }
    if (const auto done = step(); !done) {
        return done;
    }
    go(Milliseconds(400));
    take(picture, "changeover");
    go(Milliseconds(400));
    if (mistakes.changeover) {
        go(*mistakes.changeover);
        take(picture, "changeover-late");
    }
    approach();
    go(Milliseconds(200)); // the step is not taken for a bounce
    return step();
}

Result<void> PracticeWalk::buildUp(const Picture& picture) {
    const Milliseconds from = m_room.run().now();
    const Milliseconds target = plan().buildUp->target;
    const double set = static_cast<double>(plan().scale->joining.setMilli) / 1e3;
    const double start = bench().scale.reading;
    bool shown = false;
    while (m_room.run().now() - from < target) {
        const double share = static_cast<double>((m_room.run().now() - from + kLook).count()) /
                             static_cast<double>(target.count());
        const double missing = start + (set - start) * share - bench().scale.reading;
        const double speed = missing * mmPerUnit() / kSettleS;
        hold(std::clamp(speed, 0.0, kFast));
        go(kLook);
        if (!shown && share > 0.6) {
            shown = true;
            take(picture, "build-up");
        }
    }
    turnTo(set, kTurn);
    if (const auto done = step(); !done) {
        return done;
    }
    if (const auto done = control("Lock"); !done) {
        return done;
    }
    m_window.refresh();
    return step();
}

Result<void> PracticeWalk::topUp() {
    if (bench().scale.seenMilli >= plan().scale->joining.lowMilli) {
        return {};
    }
    m_window.refresh();
    if (const auto done = control("Unlock"); !done) {
        return done;
    }
    m_window.refresh();
    turnTo(static_cast<double>(plan().scale->joining.setMilli) / 1e3, kTurn);
    return control("Lock");
}

Result<void> PracticeWalk::cool(const Picture& picture) {
    m_window.setPace(30);
    const Milliseconds from = m_room.run().now();
    const Milliseconds until = from + kLongest * 2;
    bool shown = false;
    while (m_room.run().now() < until) {
        const auto view = m_room.floor().view(0, m_room.now(), false, true);
        const auto* reason = std::get_if<AskReason>(&view->step.offer);
        if (reason != nullptr || std::holds_alternative<MakeSteps>(view->step.offer)) {
            const QString text = view->step.view.text;
            if (const auto* steps = std::get_if<MakeSteps>(&view->step.offer);
                steps != nullptr && std::holds_alternative<ReleaseStep>(steps->details.front())) {
                break; // it has cooled, and its number is on the sheet
            }
            m_window.refresh();
            if (const auto done = step(); !done) {
                return done;
            }
            if (m_window.page() == PracticePage::Reasons) {
                emit m_window.choicePage()->chosen(0);
            }
            continue;
        }
        if (const auto done = topUp(); !done) {
            return done;
        }
        const bool due = view->step.view.look == SlotView::Look::Act;
        if (std::holds_alternative<AskNumber>(view->step.offer) && due) {
            m_window.refresh();
            if (const auto done = step(); !done) {
                return done;
            }
            if (const auto done = number(static_cast<double>(bench().scale.seenMilli) / 1e3, 1);
                !done) {
                return done;
            }
            continue;
        }
        if (!shown && m_room.run().now() - from > Milliseconds(90'000)) {
            shown = true;
            m_window.refresh();
            take(picture, "cooling");
        }
        go(kWait);
    }
    m_window.setPace(1);
    m_window.refresh();
    return {};
}

Result<void> PracticeWalk::release(const Picture& picture) {
    const std::vector<std::string> order = plan().releaseOrder; // the weld is another after a step
    for (const std::string& code : order) {
        m_window.refresh();
        if (const auto done = control("Clamps"); !done) {
            return done;
        }
        m_window.refresh();
        if (code == order.front()) {
            take(picture, "release");
        }
        const QString what = code == "clamps_eased"  ? "Ease clamps"
                             : code == "bars_opened" ? "Open bars"
                             : code == "spring_off"  ? "Spring off"
                                                     : "Lift sheet";
        if (const auto done = several({what, "Close"}); !done) {
            return done;
        }
        go(Milliseconds(2'000));
        if (const auto done = step(); !done) {
            return done;
        }
    }
    take(picture, "released");
    return {};
}

Result<void> PracticeWalk::finish(const Picture& picture) {
    for (int round = 0; round < 20; ++round) {
        m_window.refresh();
        const Weld* weld = weldNow();
        if (weld == nullptr || !isOpen(weld->state)) {
            break;
        }
        const auto view = m_room.floor().view(0, m_room.now(), false, true);
        if (const auto done = step(); !done) {
            return done;
        }
        const BenchView seen = bench();
        const StationView& middle = seen.stations[seen.stations.size() / 2];
        for (int values = 0; m_window.page() == PracticePage::Pad && values < 4; ++values) {
            const NumberFor what = m_window.padPage()->task().what;
            const double value = what == NumberFor::BeadHeight  ? middle.beadTopMm
                                 : what == NumberFor::BeadWidth ? 4 * middle.beadTopMm
                                 : what == NumberFor::BeadK     ? std::max(0.0, middle.valleyTopMm)
                                                                : 0.1;
            if (const auto done = number(value, 1); !done) {
                return done;
            }
        }
        if (m_window.page() == PracticePage::Reasons) {
            emit m_window.choicePage()->chosen(0);
        }
        go(Milliseconds(700));
    }
    m_window.refresh();
    take(picture, "saved");
    if (const auto done = step(); !done) {
        return done;
    }
    return waitForResult(picture);
}

Result<void> PracticeWalk::waitForResult(const Picture& picture) {
    take(picture, "working");
    while (m_window.page() == PracticePage::Working) {
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }
    if (m_window.page() != PracticePage::Result) {
        return refused(m_window.banner()->text().toStdString());
    }
    take(picture, "result");
    if (picture) {
        emit m_window.resultPage()->slotPressed(SlotPlace::Stop);
        take(picture, "result-steps");
        emit m_window.listPage()->slotPressed(SlotPlace::Step);
    }
    emit m_window.resultPage()->slotPressed(SlotPlace::Step);
    take(picture, "result-joint");
    return {};
}

Result<void> PracticeWalk::afterwards(const Picture& picture) {
    emit m_window.resultPage()->slotPressed(SlotPlace::Stop);
    if (m_window.page() != PracticePage::Replay) {
        return refused("the take is not seen again");
    }
    emit m_window.benchPage()->timeChosen(0.35);
    take(picture, "replay");
    emit m_window.benchPage()->control(2)->pressed();
    go(Milliseconds(1'000));
    take(picture, "replay-plays");
    emit m_window.benchPage()->control(5)->pressed();
    m_window.openHistory();
    take(picture, "history");
    emit m_window.currentPage()->slotPressed(SlotPlace::Step);
    take(picture, "record-saved");
    return {};
}

} // namespace seamclock
