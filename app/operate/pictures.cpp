#include "app/operate/pictures.h"

#include "app/operate/day_walk.h"
#include "app/operate/guide_walk.h"
#include "app/operate/people_walk.h"
#include "app/operate/setup_walk.h"
#include "app/operate/shop_walk.h"
#include "app/operate/weld_checks.h"
#include "app/text/words.h"
#include "core/log/world.h"
#include "core/weld/verdict.h"

#include <QCoreApplication>
#include <QDir>
#include <QImage>
#include <QPixmap>
#include <QTemporaryDir>
#include <algorithm>
#include <mutex>

namespace seamclock {
namespace {

using std::chrono::milliseconds;
using std::chrono::minutes;
using std::chrono::seconds;

Result<void> refused(const std::string& why) {
    return fail(ErrorCode::Refused, "the walk through the screens stopped: " + why);
}

Instant demoMorning() {
    Instant start;
    start.boot = milliseconds(3'600'000);
    start.bootId = "practice:5d0c4a3e-8f11-4c0e-9b53-2a6a1d4e7f10";
    start.utc = milliseconds(1'893'996'000'000); // 2030-01-07T06:00Z
    start.offset = minutes(60);
    return start;
}

} // namespace

void layPhoto(const QString& folder) {
    QImage bead(64, 40, QImage::Format_RGB32);
    bead.fill(Qt::darkGray);
    bead.save(QDir(folder).filePath("bead-at-0300-mm.png"), "PNG");
}

QString asShown(const char* words) {
    return QCoreApplication::translate("Walk", words);
}

Walk::Walk(Window& window, Floor& floor, VirtualClock& clock)
    : m_window(window), m_floor(floor), m_clock(clock) {}

void Walk::go(Milliseconds gap) {
    m_clock.advance(gap);
    m_window.refresh();
}

const Weld* Walk::weld() const {
    return m_floor.weld(m_floor.selected());
}

// The step's button, as a hand presses it; and a number where one is asked for.
Result<void> Walk::press() {
    const Weld* before = weld();
    const std::size_t events = before != nullptr ? before->events.size() : 0;
    const PageKind page = m_window.page();
    emit m_window.currentPage()->slotPressed(SlotPlace::Step);
    const Weld* after = weld();
    const bool moved = m_window.page() != page || (after != nullptr) != (before != nullptr) ||
                       (after != nullptr && after->events.size() != events) ||
                       page == PageKind::Pad;
    if (!moved) {
        return refused(
            "\"" + m_window.currentPage()->stepView().text.toStdString() + "\" changed nothing");
    }
    return {};
}

void Walk::take(const Picture& picture, const QString& name) {
    if (picture) {
        picture(name);
    }
}

void Walk::slot(SlotPlace place) {
    emit m_window.currentPage()->slotPressed(place);
    m_window.refresh();
}

void Walk::choose(int index) {
    emit m_window.choicePage()->chosen(index);
    m_window.refresh();
}

void Walk::key(const QString& digits) {
    for (const QChar digit : digits) {
        m_window.padPage()->pad()->type(digit);
    }
    m_window.refresh();
}

Result<void> Walk::prepare(const Picture& picture) {
    for (int step = 0; step < 60; ++step) {
        const Weld* now = weld();
        const auto* state = now != nullptr ? std::get_if<Preparing>(&now->state) : nullptr;
        if (state == nullptr) {
            return refused("preparation ended early");
        }
        if (m_window.page() == PageKind::Pad) {
            const NumberTask& task = m_window.padPage()->task();
            const double value = task.view.target.value_or(1.0);
            if (platePlacesRead(*now) == 1 && picture) {
                key(QString::number(static_cast<int>(*task.view.high) + 5));
                picture("pad-too-hot");
                m_window.padPage()->ask(NumberTask(task));
            }
            key(QString::number(static_cast<int>(value) + 1));
            if (platePlacesRead(*now) == 1 && picture) {
                picture("pad-plate");
            }
        } else {
            const std::string asked = checkAsked(*now, *state);
            if (asked.empty()) {
                return {};
            }
            if (picture && isForceAsked(*now)) {
                picture("check-force");
            } else if (picture && (asked != "plate_temperature" || platePlacesRead(*now) == 0)) {
                picture("check-" + fromUtf8(asked));
            }
        }
        go(seconds(9));
        if (const auto done = press(); !done) {
            return done;
        }
    }
    return refused("preparation did not end");
}

// Presses the step after a picture of it.
Result<void> Walk::shown(const QString& name, Milliseconds wait, const Picture& picture) {
    go(wait);
    take(picture, name);
    return press();
}

Result<void> Walk::begin(const Picture& picture) {
    take(picture, "seams");
    clockIsSet(picture);
    m_window.openNextCard();
    rest(picture);
    take(picture, "card");
    if (const auto done = fromCard(picture); !done) {
        return done;
    }
    return prepare(picture);
}

// By three seconds, and back: the wall clock of what follows is what it was.
void Walk::clockIsSet(const Picture& picture) {
    if (!picture) {
        return;
    }
    for (const Milliseconds by : {seconds(3), seconds(-3)}) {
        m_clock.setWallClock(by);
        m_window.refresh();
        if (by > Milliseconds(0)) {
            take(picture, "clock-set");
        }
        emit m_window.findChild<AlarmBanner*>()->pressed();
    }
}

// From the card to the first check, without a trial joint.
Result<void> Walk::fromCard(const Picture& picture) {
    const auto done = press();
    if (m_window.page() == PageKind::Trial) {
        take(picture, "trial-due");
        m_window.passTrial();
        m_window.refresh();
    }
    return done;
}

Result<void> Walk::heat(const Picture& picture) {
    if (const auto done = shown("ready", seconds(6), picture); !done) {
        return done;
    }
    go(seconds(12));
    take(picture, "align");
    if (picture) {
        slot(SlotPlace::Stop);
        take(picture, "stop-in-alignment");
        slot(SlotPlace::Back);
        key(QString::number(static_cast<double>(weld()->plan.scale->alignment.highMilli) / 2e3));
        take(picture, "pad-overshoot-refused");
        slot(SlotPlace::Stop);
    }
    if (const auto done = shown("align-asked", seconds(50), picture); !done) {
        return done;
    }
    const Milliseconds soak = weld()->plan.soak->target;
    go(seconds(3));
    take(picture, "soak-pressed");
    go(soak / 2 - seconds(3));
    take(picture, "soak");
    return {};
}

Result<void> Walk::join(const Picture& picture) {
    const Milliseconds soak = weld()->plan.soak->target;
    go(soak - soak / 2 - seconds(7));
    take(picture, "get-ready");
    go(seconds(7));
    take(picture, "act-now");
    go(milliseconds(400));
    if (const auto done = press(); !done) {
        return done;
    }
    go(milliseconds(3'400));
    take(picture, "changeover");
    go(milliseconds(1'200));
    if (const auto done = press(); !done) {
        return done;
    }
    go(weld()->plan.buildUp->target * 6 / 10);
    take(picture, "build-up");
    go(weld()->plan.buildUp->target * 3 / 10);
    if (const auto done = press(); !done) {
        return done;
    }
    return shown("lock", milliseconds(1'500), picture);
}

Result<void> Walk::cool(const Picture& picture) {
    const std::vector<Milliseconds> rechecks = weld()->plan.cooling->rechecks;
    const Milliseconds cooling = weld()->plan.cooling->atLeast;
    Milliseconds gone(0);
    for (std::size_t i = 0; i < rechecks.size(); ++i) {
        const Milliseconds part = rechecks[i] * 2 / 3 - gone * 2 / 3;
        go(part);
        take(picture, QString("cooling-%1").arg(i + 1));
        go(rechecks[i] + seconds(4) - gone - part);
        gone = rechecks[i] + seconds(4);
        take(picture, QString("reading-due-%1").arg(i + 1));
        if (const auto done = press(); !done) {
            return done;
        }
        const WeldPlan::ScalePlan& scale = *weld()->plan.scale;
        const bool low = i == 0;
        const std::int64_t read =
            low ? scale.joining.lowMilli / 1000 * 1000 - 1000 : scale.joining.setMilli;
        key(QString::number(static_cast<double>(read) / 1000.0));
        take(picture, low ? "pad-reading-low" : "pad-reading");
        if (const auto done = press(); !done) {
            return done;
        }
        if (low) {
            if (const auto done = shown("reading-low", seconds(5), picture); !done) {
                return done;
            }
            gone += seconds(5);
        }
    }
    go(cooling - gone + seconds(2));
    take(picture, "cooling-done");
    return press();
}

Result<void> Walk::release(const Picture& picture) {
    const std::size_t releases = weld()->plan.releaseOrder.size();
    for (std::size_t i = 0; i < releases; ++i) {
        if (const auto done = shown(QString("release-%1").arg(i + 1), seconds(5), picture); !done) {
            return done;
        }
    }
    return {};
}

// At each place height, width, `k` and the step from face to face.
Result<void> Walk::measure(const Picture& picture, const char* k) {
    go(seconds(5));
    take(picture, "look-at-bead");
    if (picture) {
        slot(SlotPlace::Stop);
        take(picture, "bead-not-measured");
        slot(SlotPlace::Stop);
    }
    const char* const values[] = {"4.2", "9.5", k, "0.4"};
    for (int place = 0; place < beadPlaces(*weld()); ++place) {
        for (const char* value : values) {
            if (m_window.page() != PageKind::Pad) {
                if (const auto done = press(); !done) {
                    return done;
                }
            }
            key(QString(value));
            go(seconds(6));
            if (const auto done = press(); !done) {
                return done;
            }
        }
    }
    return {};
}

Result<void> Walk::save(const Picture& picture) {
    if (picture) {
        slot(SlotPlace::Stop);
        take(picture, "look-closer");
        const auto photo = static_cast<int>(m_window.choicePage()->view().choices.size()) - 1;
        choose(photo);
        take(picture, "photos");
        slot(SlotPlace::Stop);
        slot(SlotPlace::Stop);
        choose(0); // the best of the levels
    }
    if (const auto done = shown("save", seconds(3), picture); !done) {
        return done;
    }
    go(seconds(1));
    take(picture, "saved");
    return {};
}

Result<void> Walk::finish(const Picture& picture) {
    auto done = cool(picture);
    if (done) {
        done = release(picture);
    }
    if (done) {
        done = measure(picture, "0.8");
    }
    return done ? save(picture) : done;
}

Result<void> Walk::goodWeld(const Picture& picture) {
    auto done = begin(picture);
    if (done) {
        done = heat(picture);
    }
    if (done) {
        done = join(picture);
    }
    return done ? finish(picture) : done;
}

Result<void> Walk::fromChecks() {
    auto done = prepare({});
    if (done) {
        done = heat({});
    }
    if (done) {
        done = join({});
    }
    return done ? finish({}) : done;
}

Result<void> Walk::toSoak() {
    auto done = begin({});
    return done ? heat({}) : done;
}

Result<void> Walk::toCooling() {
    auto done = toSoak();
    if (done) {
        done = join({});
    }
    go(minutes(3));
    return done;
}

Result<void> Walk::lateWeld(int post, const Picture& picture) {
    m_floor.select(post);
    m_floor.leave(post);
    m_window.refresh();
    m_window.openNextCard();
    if (const auto done = fromCard({}); !done) {
        return done;
    }
    if (const auto done = prepare({}); !done) {
        return done;
    }
    go(seconds(5));
    take(picture, "not-saved");
    if (const auto done = press(); !done) {
        return done;
    }
    const Milliseconds slow = weld()->plan.alignLate.value_or(weld()->plan.soak->target);
    go(slow + seconds(10));
    take(picture, "align-late");
    if (const auto done = press(); !done) {
        return done;
    }
    go(weld()->plan.soak->high + seconds(6));
    take(picture, "soak-late");
    if (const auto done = press(); !done) {
        return done;
    }
    go(*weld()->plan.changeoverMax + milliseconds(2'400));
    take(picture, "changeover-late");
    if (const auto done = press(); !done) {
        return done;
    }
    go(weld()->plan.buildUp->high + seconds(1));
    take(picture, "build-up-late");
    if (const auto done = press(); !done) {
        return done;
    }
    go(seconds(2));
    if (const auto done = press(); !done) {
        return done;
    }
    go(seconds(3));
    take(picture, "after-the-lock");
    return {};
}

// A trial joint whose valley is not above the sheet: why, and what is asked while nobody released
// it. The bench is free again then.
Result<void> Walk::trial(const Picture& picture) {
    const int post = m_floor.selected();
    m_window.openNextCard();
    slot(SlotPlace::Step); // of the card
    if (m_window.page() != PageKind::Trial) {
        return refused("no trial joint is asked for");
    }
    slot(SlotPlace::Step);
    auto done = prepare({});
    for (const auto part : {&Walk::heat, &Walk::join, &Walk::cool, &Walk::release}) {
        if (done) {
            done = (this->*part)({});
        }
    }
    if (done) {
        done = measure({}, "0");
    }
    if (!done) {
        return done;
    }
    take(picture, "bead-out-of-limits");
    slot(SlotPlace::Step);
    take(picture, "reason-owed");
    choose(0);
    if (done = save({}); !done) {
        return done;
    }
    take(picture, "trial-not-released");
    slot(SlotPlace::Step);
    m_window.openNextCard();
    slot(SlotPlace::Step);
    if (m_window.page() != PageKind::Trial) {
        return refused("the trial joint is not waited for");
    }
    take(picture, "trial-waits");
    slot(SlotPlace::Stop);
    m_floor.leave(post);
    m_window.refresh();
    return {};
}

// Nobody released a trial joint, so that is asked again; then only what each joint needs.
Result<void> Walk::series(const Picture& picture) {
    constexpr int kPost = 0;
    const int before = m_floor.selected();
    m_floor.select(kPost);
    m_floor.leave(kPost);
    m_window.refresh();
    take(picture, "bench-free"); // and what was done before is on disk
    if (const auto done = trial(picture); !done) {
        return done;
    }
    if (const auto done = goodWeld({}); !done) {
        return done;
    }
    take(picture, "same-again");
    slot(SlotPlace::Stop);
    m_window.passTrial();
    m_window.refresh();
    take(picture, "series-first-check");
    if (const auto done = press(); !done) {
        return done;
    }
    go(seconds(12));
    take(picture, "series-together");
    slot(SlotPlace::Stop); // one by one
    take(picture, "series-one-by-one");
    auto done = prepare({});
    if (done) {
        done = heat({});
    }
    const Milliseconds soak = weld()->plan.soak->target;
    for (const Milliseconds wait : {soak - soak / 2, milliseconds(3'000)}) {
        if (done) {
            go(wait);
            done = press();
        }
    }
    if (!done) {
        return done;
    }
    go(seconds(1));
    slot(SlotPlace::Stop);
    emit m_window.choicePage()->chosen(1); // a sheet slipped
    go(seconds(1));
    take(picture, "cut-out");
    slot(SlotPlace::Stop); // weld it again
    key("24");
    take(picture, "pad-length-lost");
    if (const auto again = press(); !again) {
        return again;
    }
    m_window.passTrial();
    m_window.refresh();
    take(picture, "welded-again");
    const auto stopped = m_floor.answer(
        kPost,
        ReasonAnswer{
            AskReason{ReasonFor::Stop, {}}, "another", asShown("Another reason").toStdString()});
    m_floor.leave(kPost);
    m_floor.select(before);
    m_window.refresh();
    return stopped;
}

Result<void> Walk::others(const Picture& picture) {
    // The late weld's reasons, then its cooling.
    for (int i = 0; i < 6 && !reasonsOwed(*weld()).empty(); ++i) {
        if (const auto done = press(); !done) {
            return done;
        }
        go(seconds(12));
    }
    take(picture, "no-sound");
    take(picture, "battery-low");
    emit m_window.currentPage()->slotPressed(SlotPlace::Stop);
    m_window.refresh();
    take(picture, "take-out-early");
    emit m_window.currentPage()->slotPressed(SlotPlace::Stop);
    const Preferences before = m_window.preferences();
    Preferences other = before;
    other.mirrored = !before.mirrored;
    m_window.setPreferences(other);
    take(picture, "other-hand");
    other = before;
    for (const double text : {1.5, 2.0}) {
        other.text = text;
        m_window.setPreferences(other);
        take(picture, QString("text-%1").arg(qRound(text * 100)));
    }
    m_window.setPreferences(before);
    if (const auto done = finish({}); !done) {
        return done;
    }
    if (const auto done = press(); !done) { // the bench is free
        return done;
    }
    return stoppedWeld(picture);
}

Result<void> Walk::stoppedWeld(const Picture& picture) {
    m_window.openNextCard();
    if (const auto done = fromCard({}); !done) {
        return done;
    }
    go(seconds(9));
    if (const auto done = press(); !done) { // drag, as before
        return done;
    }
    emit m_window.currentPage()->slotPressed(SlotPlace::Stop); // one by one
    emit m_window.currentPage()->slotPressed(SlotPlace::Stop); // cannot set it
    m_window.refresh();
    take(picture, "check-left-out");
    emit m_window.currentPage()->slotPressed(SlotPlace::Stop);
    if (const auto done = prepare({}); !done) {
        return done;
    }
    if (const auto done = heat({}); !done) {
        return done;
    }
    emit m_window.currentPage()->slotPressed(SlotPlace::Stop);
    m_window.refresh();
    take(picture, "stop");
    emit m_window.choicePage()->chosen(0);
    go(seconds(1));
    take(picture, "stopped");
    m_window.openMenu();
    m_window.refresh();
    take(picture, "menu");
    const std::vector<MenuItem> items = menuFor(m_window.preferences()).items;
    const auto pedal = std::find(items.begin(), items.end(), MenuItem::Pedal);
    choose(static_cast<int>(pedal - items.begin()));
    take(picture, "pedal");
    slot(SlotPlace::Stop);
    m_window.openDay();
    restOfDay();
    take(picture, "day");
    if (auto* row = m_window.currentPage()->findChild<JointRow*>("joint1")) {
        emit row->pressed();
        restOfDay();
        take(picture, "day-out-of-limits");
    }
    emit m_window.currentPage()->slotPressed(SlotPlace::Step);
    if (const auto done = press(); !done) {
        return done;
    }
    return entry(picture);
}

Result<void> Walk::entry(const Picture& picture) {
    emit m_window.currentPage()->slotPressed(SlotPlace::Stop); // another seam
    m_window.refresh();
    take(picture, "entry");
    const auto tile = [this](const char* name) {
        if (auto* button = m_window.currentPage()->findChild<SlotButton*>(name)) {
            emit button->pressed();
        }
        m_window.refresh();
    };
    tile("entryProcedure");
    take(picture, "procedures");
    emit m_window.choicePage()->chosen(0);
    tile("entryThickness");
    key("900");
    take(picture, "pad-thickness-refused");
    const NumberTask thickness = m_window.padPage()->task();
    m_window.padPage()->ask(thickness);
    key(QString::number(static_cast<int>(thickness.view.high.value_or(10))));
    take(picture, "pad-thickness");
    if (const auto done = press(); !done) {
        return done;
    }
    tile("entryLength");
    key("600");
    if (const auto done = press(); !done) {
        return done;
    }
    take(picture, "entry-whole");
    slot(SlotPlace::Stop); // a seam beside it
    key("200");
    take(picture, "pad-length-added");
    if (const auto done = press(); !done) {
        return done;
    }
    take(picture, "entry-two-lengths");
    tile("entryThickness");
    key("4");
    if (const auto done = press(); !done) {
        return done;
    }
    tile("entryLength");
    key("100");
    if (const auto done = press(); !done) {
        return done;
    }
    return coarse(picture);
}

// A seam so short that only the foreman can allow it on this scale.
Result<void> Walk::coarse(const Picture& picture) {
    if (const auto done = press(); !done) {
        return done;
    }
    rest(picture);
    take(picture, "card-coarse");
    if (const auto done = fromCard({}); !done) {
        return done;
    }
    take(picture, "check-scale_readable");
    emit m_window.currentPage()->slotPressed(SlotPlace::Step);
    m_window.refresh();
    take(picture, "foremans-check");
    emit m_window.currentPage()->slotPressed(SlotPlace::Stop); // close it
    emit m_window.currentPage()->slotPressed(SlotPlace::Stop); // stop this weld
    m_window.refresh();
    emit m_window.choicePage()->chosen(0);
    go(seconds(1));
    return press();
}

// The bench's next seam, prepared; its last weld is left.
Result<void> Walk::toBench(int post) {
    m_floor.select(post);
    if (m_floor.weld(post) != nullptr) {
        m_floor.leave(post);
    }
    m_window.refresh();
    m_window.openNextCard();
    if (const auto done = fromCard({}); !done) {
        return done;
    }
    return prepare({});
}

Result<void> Walk::pressAt(int post) {
    emit m_window.hands().bench(post + 1);
    m_window.refresh();
    return press();
}

Result<void> Walk::stopAt(int post) {
    emit m_window.hands().bench(post + 1);
    m_window.refresh();
    emit m_window.currentPage()->slotPressed(SlotPlace::Stop);
    m_window.refresh();
    emit m_window.choicePage()->chosen(0);
    go(seconds(1));
    return press();
}

Result<void> Walk::twoBenches(const Picture& picture) {
    for (const int post : {0, 1}) {
        if (const auto done = toBench(post); !done) {
            return done;
        }
    }
    const auto soakAt = [this](int post) { return m_floor.weld(post)->plan.soak->target; };
    const int soaks = soakAt(0) > soakAt(1) ? 0 : 1;
    const int aligns = 1 - soaks;
    // Until the one has four seconds less to soak than the other will take.
    const Milliseconds gap = soakAt(soaks) - soakAt(aligns) + seconds(4);
    const Milliseconds aligned = seconds(32);
    go(seconds(1));                                // a hand does not press twice within a blink
    if (const auto done = pressAt(soaks); !done) { // pressure is on
        return done;
    }
    go(seconds(20));
    if (gap < aligned) {
        if (const auto done = pressAt(aligns); !done) {
            return done;
        }
    }
    go(aligned);
    if (const auto done = pressAt(soaks); !done) { // pressure is off
        return done;
    }
    if (gap >= aligned) {
        go(gap - aligned);
        if (const auto done = pressAt(aligns); !done) {
            return done;
        }
    }
    emit m_window.hands().bench(aligns + 1);
    go(gap < aligned ? gap : aligned);
    take(picture, "clash");
    go(soakAt(soaks) - gap - seconds(4));
    take(picture, "came-by-itself");
    go(seconds(5));
    if (const auto done = press(); !done) { // plate out
        return done;
    }
    go(seconds(2));
    emit m_window.hands().bench(aligns + 1);
    take(picture, "changeover-first");
    emit m_window.currentPage()->slotPressed(SlotPlace::Stop);
    m_window.refresh();
    take(picture, "stop-in-changeover");
    emit m_window.choicePage()->chosen(0);
    go(seconds(1));
    if (const auto done = press(); !done) {
        return done;
    }
    return stopAt(aligns);
}

void Walk::rest(const Picture& picture) {
    while (picture && !m_window.isCardWhole()) { // its estimate comes from a thread of its own
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }
}

void Walk::restOfDay() {
    while (m_window.dayLog()->isBusy()) { // it is read on threads of its own
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }
    m_window.refresh();
}

std::vector<PictureShape> pictureShapes(const QStringList& wanted) {
    const std::vector<PictureShape> all{
        {"1280x800", {1280, 800}, kUnitsPerInch},
        {"1920x1200", {1920, 1200}, kUnitsPerInch * 1.5},
        {"800x1280", {800, 1280}, kUnitsPerInch}};
    std::vector<PictureShape> chosen;
    for (const PictureShape& shape : all) {
        if (wanted.isEmpty() || wanted.contains(shape.name)) {
            chosen.push_back(shape);
        }
    }
    return chosen;
}

std::vector<std::pair<ThemeKind, QString>> pictureThemes(const QStringList& wanted) {
    std::vector<std::pair<ThemeKind, QString>> chosen;
    for (const auto& [theme, name] :
         {std::pair{ThemeKind::Dark, QStringLiteral("dark")},
          std::pair{ThemeKind::Light, QStringLiteral("light")},
          std::pair{ThemeKind::Contrast, QStringLiteral("contrast")}}) {
        if (wanted.isEmpty() || wanted.contains(name)) {
            chosen.emplace_back(theme, name);
        }
    }
    return chosen;
}

namespace {

/// A horn that is there, or not.
class PaintedSound : public SoundLink {
public:
    void show(const Shift&) override {}
    bool soundOk() const override { return m_ok; }
    void setOk(bool ok) { m_ok = ok; }

private:
    bool m_ok = true;
};

/// A tablet that does what it is asked, with a battery that is low or not.
class PaintedPower : public PowerLink {
public:
    void hold(bool weldRuns) override { m_held = weldRuns; }
    Awake awake() const override { return m_held ? Awake::Whole : Awake::Off; }
    bool batteryLow() const override { return m_low; }
    int batteryPercent() const override { return 14; }
    void setLow(bool low) { m_low = low; }

private:
    bool m_held = false;
    bool m_low = false;
};

/// What one look of the screens needs besides the window.
struct Studio {
    const PictureOptions& options;
    const std::vector<ProcedureDocument>& procedures;
    const Job& job;
    PictureShape shape;
    ThemeKind theme = ThemeKind::Dark;
    QString themeName;
    QTemporaryDir scratch{};
    PaintedSound sound{};
    PaintedPower power{};
    int count = 0;
    QString trouble{};

    QString log(const QString& name) const { return scratch.filePath(name + ".seamlog"); }

    Result<void> addBenches(Floor& floor) const {
        for (const JobSeam& seam : job.seams) {
            const auto bench = readBenchFile(seam.benchFile);
            if (!bench) {
                return tl::unexpected<Error>(bench.error());
            }
            static_cast<void>(floor.addBench(*bench)); // there already: another seam's
        }
        return {};
    }

    WindowParts parts(Floor& floor, LogWriterBase& writer, Desk& desk) {
        Preferences preferences;
        preferences.theme = theme;
        preferences.language = spoken();
        preferences.dpi = shape.dpi;
        preferences.pedalKey = Qt::Key_F9;
        WindowParts all{
            floor, writer, desk, job.seams, preferences, scratch.filePath("settings.ini"), &sound};
        all.reports = scratch.filePath("documents");
        all.photos = QStringList{scratch.path()};
        all.power = &power;
        all.readGuide = options.readGuide;
        return all;
    }

    void keep(Window& window, const QString& name, QStringList& written) {
        window.refresh();
        QCoreApplication::processEvents();
        const QString file = QDir(options.folder)
                                 .filePath(QString("%1-%2-%3-%4.png")
                                               .arg(shape.name, themeName)
                                               .arg(++count, 2, 10, QLatin1Char('0'))
                                               .arg(name));
        if (window.grab().save(file, "PNG")) {
            written << file;
        } else if (trouble.isEmpty()) {
            trouble = file;
        }
    }
};

/// Two welds, one good and one late, a stopped one, and the pages beside them.
Result<void> paintCourse(Studio& studio, QStringList& written) {
    VirtualClock clock(demoMorning());
    // While it is held, the log's writer waits: that is how rows stand unsaved on a picture.
    std::mutex gate;
    LogWriterOptions logOptions;
    logOptions.changed = [&gate] { const std::lock_guard<std::mutex> passing(gate); };
    auto writer =
        LogWriter<Production>::open(studio.log("course").toStdString(), clock, logOptions);
    if (!writer) {
        return tl::unexpected<Error>(writer.error());
    }
    auto session = Session<Production>::start(*writer, clock);
    if (!session) {
        return tl::unexpected<Error>(session.error());
    }
    std::unique_lock<std::mutex> held(gate, std::defer_lock);
    Floor floor(*session, *writer, clock, studio.procedures, studio.job.operatorId);
    floor.setMaterials(studio.options.materials);
    if (const auto added = studio.addBenches(floor); !added) {
        return added;
    }
    const auto desk = Desk::open(*writer, clock);
    if (!desk) {
        return tl::unexpected<Error>(desk.error());
    }
    Window window(studio.parts(floor, *writer, **desk));
    window.resize(studio.shape.size);
    window.QWidget::show();
    const bool whole = !studio.options.onlyOperator;
    const auto picture = [&](const QString& name) {
        if (!held.owns_lock()) {
            static_cast<void>(writer->flush()); // a picture of what is on disk
        }
        studio.sound.setOk(name != "no-sound");
        studio.power.setLow(name == "battery-low");
        studio.keep(window, name, written);
        studio.sound.setOk(true);
        studio.power.setLow(false);
        if (name == "saved" && whole) {
            held.lock();
        } else if (name == "not-saved" && held.owns_lock()) {
            held.unlock();
        }
    };
    Walk walk(window, floor, clock);
    auto done = walk.goodWeld(picture);
    if (done && whole) {
        done = walk.lateWeld(1, picture);
    }
    if (done && whole) {
        done = walk.others(picture);
    }
    if (done && whole) {
        done = walk.twoBenches(picture);
    }
    if (done && whole) {
        done = walk.series(picture);
    }
    if (done && whole) {
        PeopleWalk people(window, **desk, clock);
        done = people.all(picture);
        if (done) {
            done = DayWalk(window, *writer, people, clock).all(picture);
        }
        if (done) {
            SetupWalk setup(
                window, **desk, people, studio.options.demo, studio.scratch.filePath("files"));
            done = setup.all(PeopleWalk::kForemansPin, picture);
            if (done) {
                done = setup.whatIf(picture);
            }
            if (done) {
                ShopWalk shop(window, *writer, people, studio.scratch.filePath("files"));
                done = shop.all(picture);
            }
        }
        if (done && studio.options.readGuide) {
            done = walkGuide(window, picture);
        }
    }
    return done;
}

/// The screen after the power came back, of a weld that stood in soak or in cooling.
Result<void> paintAfterCut(Studio& studio, bool cooling, QStringList& written) {
    const QString name = cooling ? "power-was-off-in-cooling" : "power-was-off-before-lock";
    const std::string log = studio.log(name).toStdString();
    Instant back = demoMorning();
    {
        VirtualClock clock(back);
        auto writer = LogWriter<Production>::open(log, clock);
        if (!writer) {
            return tl::unexpected<Error>(writer.error());
        }
        auto session = Session<Production>::start(*writer, clock);
        if (!session) {
            return tl::unexpected<Error>(session.error());
        }
        Floor floor(*session, *writer, clock, studio.procedures, studio.job.operatorId);
        floor.setMaterials(studio.options.materials);
        if (const auto added = studio.addBenches(floor); !added) {
            return added;
        }
        const auto desk = Desk::open(*writer, clock);
        if (!desk) {
            return tl::unexpected<Error>(desk.error());
        }
        Window window(studio.parts(floor, *writer, **desk));
        window.resize(studio.shape.size);
        window.QWidget::show();
        Walk walk(window, floor, clock);
        if (const auto done = cooling ? walk.toCooling() : walk.toSoak(); !done) {
            return done;
        }
        if (const auto flushed = writer->flush(); !flushed) {
            return flushed;
        }
        back = clock.now();
    }
    back.boot = seconds(35);
    back.bootId = "practice:0b7e2c55-61f4-4d2b-9a40-c1d7a5e93b02";
    back.utc += seconds(42);
    VirtualClock clock(back);
    auto writer = LogWriter<Production>::open(log, clock);
    if (!writer) {
        return tl::unexpected<Error>(writer.error());
    }
    auto session = Session<Production>::start(*writer, clock);
    if (!session) {
        return tl::unexpected<Error>(session.error());
    }
    Floor floor(*session, *writer, clock, studio.procedures, studio.job.operatorId);
    floor.setMaterials(studio.options.materials);
    auto taken = studio.addBenches(floor);
    if (taken) {
        taken = floor.takeUpFound();
    }
    if (!taken) {
        return taken;
    }
    const auto desk = Desk::open(*writer, clock);
    if (!desk) {
        return tl::unexpected<Error>(desk.error());
    }
    Window window(studio.parts(floor, *writer, **desk));
    window.resize(studio.shape.size);
    window.QWidget::show();
    static_cast<void>(writer->flush());
    studio.keep(window, name, written);
    return {};
}

Result<void> paintOne(Studio& studio, QStringList& written) {
    auto done = paintCourse(studio, written);
    if (done && !studio.options.onlyOperator) {
        done = paintAfterCut(studio, false, written);
    }
    if (done && !studio.options.onlyOperator) {
        done = paintAfterCut(studio, true, written);
    }
    if (!studio.trouble.isEmpty()) {
        return fail(
            ErrorCode::NotWritten,
            "the picture \"" + studio.trouble.toStdString() +
                "\" can't be written; allowed: a folder that can be written");
    }
    return done;
}

} // namespace

Result<QStringList>
paintPictures(const PictureOptions& options, const std::vector<ProcedureDocument>& procedures) {
    if (!QDir().mkpath(options.folder)) {
        return fail(
            ErrorCode::NotWritten, "the folder \"" + options.folder.toStdString() +
                                       "\" can't be made; allowed: a folder that can be written");
    }
    const auto job = readFirstJob(options.demo.toStdString());
    if (!job) {
        return tl::unexpected<Error>(job.error());
    }
    QStringList written;
    for (const PictureShape& shape : pictureShapes(options.sizes)) {
        for (const auto& [theme, name] : pictureThemes(options.themes)) {
            Studio studio{options, procedures, *job, shape, theme, name};
            layPhoto(studio.scratch.path());
            const auto painted = paintOne(studio, written);
            if (!painted) {
                return tl::unexpected<Error>(painted.error());
            }
        }
    }
    return written;
}

} // namespace seamclock
