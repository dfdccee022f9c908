// Joint after joint: opening one, trial joints, the next of its kind, one that is welded again, and
// what a person's own eye says of it.
#include "app/operate/window.h"
#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/words.h"
#include "core/session/again.h"
#include "core/weld/intent.h"

#include <cmath>
#include <utility>

namespace seamclock {

namespace {

/// As it is written into the log beside the foreman's name.
const WeldDetail kWaived = RemarkMade{"certificate_waived"};

} // namespace

/// What is wrong with the certificate of the person at the bench, for that; empty: nothing.
std::string_view
Window::certificateFlag(std::string_view material, std::int64_t thicknessUm) const {
    return flagOf(m_people->certificate(material, thicknessUm));
}

void Window::askCertificate(
    std::string_view material, std::int64_t thicknessUm, std::string_view flag,
    std::function<void(const ProvenPerson&)> then) {
    const QString who = m_people->atBench().empty()
                            ? tr("Nobody in particular")
                            : nameFor(m_people->people(), m_people->atBench());
    m_people->askForeman(
        tr("%1, %2 mm: %3.")
                .arg(fromUtf8(material), millimetresText(thicknessUm), findingWord(flag)) +
            QLatin1Char(' ') + who,
        std::move(then));
}

/// Whether the person at the bench may go on with what is being prepared: another one than who
/// opened it wants a certificate, too, or a foreman's word, for which it asks.
bool Window::mayGoOn(const Weld& weld) {
    const std::string who = m_people->atBench().empty() ? kStation : m_people->atBench();
    const Event& opened = weld.events.front();
    if (m_floor.practises() || !std::holds_alternative<Preparing>(weld.state) || opened.by == who ||
        m_waived.count({weld.id(), who}) > 0) {
        return true;
    }
    const std::int64_t thickness = weld.plan.thicknessUm;
    const std::string_view flag = certificateFlag(weld.plan.material, thickness);
    if (flag.empty()) {
        return true;
    }
    askCertificate(
        weld.plan.material, thickness, flag, [this, id = weld.id(), who](const ProvenPerson& by) {
            const auto kept = m_floor.judge(id, kWaived, by);
            if (kept) {
                m_waived.emplace(id, who);
            }
            told(kept);
        });
    return false;
}

/// Opens it, or asks first whether the series may begin.
void Window::begin(WeldOrder order) {
    m_waivedBy.reset();
    if (m_floor.practises()) { // nobody tests what is only practised
        openNow(std::move(order), TrialState::Released);
        return;
    }
    const std::string material = order.procedure.procedure.material;
    const std::int64_t thickness = std::llround(inMicrometres(order.request.thickness));
    const std::string_view flag = certificateFlag(material, thickness);
    if (flag.empty()) {
        askTrial(order);
        return;
    }
    order.flags.emplace_back(flag);
    askCertificate(material, thickness, flag, [this, order](const ProvenPerson& by) {
        m_waivedBy = by;
        askTrial(order);
    });
}

void Window::askTrial(const WeldOrder& order) {
    const auto trial = m_floor.trialOf(order);
    if (!trial) {
        say(inWords(trial.error().detail));
        return;
    }
    if (trial->state == TrialState::Released) {
        openNow(order, trial->state);
        return;
    }
    m_order = order;
    m_trial = *trial;
    turnTo(PageKind::Trial);
}

void Window::openNow(WeldOrder order, TrialState trial) {
    if (trial != TrialState::Released) {
        order.flags.emplace_back(flagOf(trial));
    }
    if (!m_floor.practises() && !hasBatches(order.sheets)) {
        order.flags.emplace_back("batch_missing");
    }
    const auto opened = m_floor.open(m_floor.selected(), order);
    if (!opened) {
        told(opened);
        return;
    }
    if (const auto by = std::exchange(m_waivedBy, std::nullopt)) {
        told(m_floor.judge(m_floor.weld(m_floor.selected())->id(), kWaived, *by));
    }
    turnTo(PageKind::Weld);
}

void Window::passTrial() {
    if (m_kind == PageKind::Trial && m_order) {
        openNow(*m_order, m_trial.state);
    }
}

void Window::showTrial() {
    const Post& post = m_floor.posts()[static_cast<std::size_t>(m_floor.selected())];
    m_trialAsked =
        trialQuestion(m_trial, post.letter(), !foremenWithPin(m_people->people()).empty());
    m_choice->show(m_trialAsked.page);
}

void Window::chooseTrial(int index) {
    if (!m_order) {
        return;
    }
    if (m_trialAsked.answers.at(static_cast<std::size_t>(index)) == TrialAnswer::Without) {
        openNow(*m_order, m_trial.state);
        return;
    }
    m_people->askForeman(
        tr("Trial joint %1 is released.").arg(m_trial.number),
        [this, trial = m_trial, order = *m_order](const ProvenPerson& by) {
            const auto released = m_floor.decide(trial.weld, Decision::Accept, "trial_held", by);
            if (!released) {
                told(released);
                return;
            }
            openNow(order, TrialState::Released);
        });
}

void Window::askTrialDecision(const ReasonAnswer& answer) {
    const Weld* weld = m_floor.weld(m_floor.selected());
    if (weld == nullptr) {
        return;
    }
    const bool held = answer.choice == "trial_held";
    m_people->askForeman(
        (held ? tr("Trial joint %1 is released.") : tr("Trial joint %1 is cut out."))
            .arg(weld->opened().number),
        [this, held, choice = answer.choice, id = weld->id()](const ProvenPerson& by) {
            told(m_floor.decide(id, held ? Decision::Accept : Decision::CutOut, choice, by));
        });
}

/// What each bench whose joint is saved could go on with: another one may have begun that seam.
void Window::offerNext() {
    for (int post = 0; post < static_cast<int>(m_floor.posts().size()); ++post) {
        const Weld* weld = m_floor.weld(post);
        if (weld == nullptr || !std::holds_alternative<Closed>(weld->state)) {
            continue;
        }
        const auto next = nextAlike(m_seams, *weld);
        const bool trial = weld->opened().type == WeldType::Trial;
        const bool another = next && (trial || next->label != weld->opened().seam);
        m_floor.setNextSeam(post, another ? fromUtf8(next->label) : QString());
    }
}

void Window::nextJoint() {
    const int post = m_floor.selected();
    const Weld* weld = m_floor.weld(post);
    const Instant& ended = weld->events.back().at;
    const Instant now = m_floor.now();
    if (ended.bootId == now.bootId && now.boot - ended.boot < kBounce) {
        return; // the press that saved the joint, twice
    }
    auto order = m_floor.sameAgain(post);
    if (!order) {
        say(inWords(order.error().detail));
        return;
    }
    order->type = WeldType::Production;
    const Post& at = m_floor.posts()[static_cast<std::size_t>(post)];
    if (!at.nextSeam.isEmpty()) {
        const auto seam = nextAlike(m_seams, *weld);
        auto next = seam ? orderOf(*seam, m_floor.procedures())
                         : Result<WeldOrder>(fail(ErrorCode::Missing, "that seam is made by now"));
        if (!next) {
            say(inWords(next.error().detail));
            return;
        }
        next->bench = order->bench;
        if (order->request.drag) {
            next->request.drag = order->request.drag; // as measured on this bench
        }
        next->request.scaleIsForemans = true;
        order = std::move(next);
    }
    begin(*order);
}

void Window::weldAgain(double lostMm) {
    auto order = m_floor.weldAgain(m_floor.selected(), std::llround(lostMm * 1e3));
    turnTo(PageKind::Weld);
    if (!order) {
        say(inWords(order.error().detail));
        return;
    }
    order->type = WeldType::Production;
    flagRewelds(*order);
    begin(*order);
}

void Window::lookCloser() {
    const Weld* weld = m_floor.weld(m_floor.selected());
    if (weld == nullptr) {
        return;
    }
    m_closer = closerQuestion(*weld);
    if (!isOpen(weld->state)) { // it is graded while it is looked at
        chooseCloser(static_cast<int>(m_closer.grades.size()));
        return;
    }
    m_choice->show(m_closer.page);
    turnTo(PageKind::Closer);
}

void Window::chooseCloser(int index) {
    const auto at = static_cast<std::size_t>(index);
    if (at < m_closer.grades.size()) {
        const auto& [scheme, level] = m_closer.grades[at];
        turnTo(PageKind::Weld);
        told(m_floor.grade(m_floor.selected(), scheme, level));
        return;
    }
    QStringList folders = m_parts.photos;
    if (!m_parts.reports.isEmpty()) {
        folders.push_back(m_parts.reports);
    }
    m_choice->show(photoQuestion(folders, m_photos));
    turnTo(PageKind::Photos);
}

// The disk takes as long as it likes: not on the thread that shows the benches.
void Window::keepPhotoOf(int index) {
    const int post = m_floor.selected();
    const Weld* weld = m_floor.weld(post);
    if (weld == nullptr) {
        return;
    }
    m_parts.desk.run<Result<PhotoAdded>>(
        this,
        [file = m_photos.at(index), log = fromUtf8(m_parts.writer.path())](Office&) {
            return keepPhoto(file, log);
        },
        [this, post, id = weld->id()](const Result<PhotoAdded>& photo) {
            const Weld* there = m_floor.weld(post);
            if (!photo) {
                say(inWords(photo.error().detail));
            } else if (there == nullptr || there->id() != id) {
                say(tr("The joint of that photo is gone from its bench."));
            } else {
                const auto kept = m_floor.addPhoto(post, *photo);
                tell(
                    kept ? tr("The photo is kept: %1").arg(fromUtf8(photo->name))
                         : inWords(kept.error().detail),
                    kept.has_value());
            }
        });
    turnTo(PageKind::Weld);
}

} // namespace seamclock
