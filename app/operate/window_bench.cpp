// Which bench has the screen: who presses a bench's cell, a bench that calls for hands, and the
// number that is half typed meanwhile.
#include "app/operate/window.h"

#include "core/shift/hands.h"

#include <algorithm>

namespace seamclock {

// Who presses a bench's cell, or its key.
void Window::goToBench(int post) {
    if (!isFirst(post)) {
        return;
    }
    if (post != m_floor.selected()) {
        layNumberAside();
    }
    m_floor.select(post);
    turnTo(m_floor.weld(post) != nullptr ? PageKind::Weld : PageKind::Seams);
    takeUpNumber(post);
}

/// What is half typed when another bench calls the screen waits for its own.
void Window::layNumberAside() {
    if (m_kind == PageKind::Entry) {
        m_entry->takeLines(m_draft);
    }
    if (m_kind != PageKind::Pad || m_pad->pad()->text().isEmpty()) {
        return;
    }
    const int post = m_floor.selected();
    const Weld* weld = m_floor.weld(post);
    m_typed[post] = {
        weld != nullptr ? weld->id() : std::string(), m_pad->task(), m_pad->pad()->text(), m_before,
        m_before == PageKind::Seams ? m_cutOut : std::nullopt};
}

/// It stands there again, if it is still asked for.
void Window::takeUpNumber(int post) {
    const auto found = m_typed.find(post);
    if (found == m_typed.end() || m_floor.selected() != post || m_floor.handsAt()) {
        return;
    }
    const HalfTyped half = found->second;
    m_typed.erase(found);
    const Weld* weld = m_floor.weld(post);
    if ((weld != nullptr ? weld->id() : std::string()) != half.weld) {
        return;
    }
    NumberTask task = half.task;
    if (weld != nullptr && half.before == PageKind::Weld) {
        const WeldView& view = m_weld->view();
        const AskNumber asked{half.task.what};
        const bool isAsked =
            view.step.offer == Offer(asked) || view.stop.offer == Offer(asked) ||
            (asked.what == NumberFor::Overshoot && std::holds_alternative<Aligning>(weld->state));
        if (!isAsked) {
            return;
        }
        task = m_floor.numberTask(post, half.task.what);
    }
    m_before = half.before;
    m_cutOut = half.cutOut;
    m_pad->ask(task, half.text);
    turnTo(PageKind::Pad);
}

/// Whether the screen may go where that cell of the strip leads. While a bench has both hands it
/// may not, and the cell says which bench comes first.
bool Window::isFirst(int cell) {
    const auto busy = m_floor.handsAt();
    if (!busy || cell == *busy) {
        return true;
    }
    m_heldBack = HeldBack{cell, m_floor.now().boot};
    refresh();
    return false;
}

bool Window::isStopAsked() const {
    return m_kind == PageKind::Reasons && m_asked.what == ReasonFor::Stop;
}

/// By any bench, now or within seconds.
bool Window::handsAreCalled(const Instant& now) const {
    for (int i = 0; i < static_cast<int>(m_floor.posts().size()); ++i) {
        const Weld* weld = m_floor.weld(i);
        if (weld != nullptr && handsCall(*weld, now) != HandsCall::None) {
            return true;
        }
    }
    return false;
}

/// Whether a bench calls for hands while another page than a weld's stands.
bool Window::callsAway(const Instant& now) const {
    return m_kind != PageKind::Weld && handsAreCalled(now);
}

// Each bench comes once when it is time to get ready and once when its soak is over; between the
// two a hand may look elsewhere. One that has both hands stands until its lock.
void Window::comeForward(const Instant& now) {
    const int selected = m_floor.selected();
    m_answered.resize(m_floor.posts().size(), HandsCall::None);
    if (const auto busy = m_floor.handsAt()) {
        const bool stands = *busy == selected && (m_kind == PageKind::Weld || isStopAsked());
        if (!stands) {
            come(*busy, now);
        }
        return;
    }
    HandsCall here = HandsCall::None;
    HandsCall most = HandsCall::None;
    std::optional<int> wanted;
    for (int i = 0; i < static_cast<int>(m_floor.posts().size()); ++i) {
        const Weld* weld = m_floor.weld(i);
        const HandsCall call = weld == nullptr ? HandsCall::None : handsCall(*weld, now);
        HandsCall& answered = m_answered[static_cast<std::size_t>(i)];
        answered = std::min(answered, call);
        if (i == selected && m_kind == PageKind::Weld) {
            here = answered = call;
        } else if (call > answered && call > most) {
            most = call;
            wanted = i;
        }
    }
    if (wanted && most > here) {
        m_answered[static_cast<std::size_t>(*wanted)] = most;
        come(*wanted, now);
    }
}

void Window::come(int post, const Instant& now) {
    m_cameAt = now.boot;
    layNumberAside();
    m_floor.select(post);
    turnTo(PageKind::Weld);
}

} // namespace seamclock
