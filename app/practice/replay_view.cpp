#include "app/practice/replay_view.h"

#include "app/practice/practice_text.h"
#include "app/text/numbers.h"

#include <QCoreApplication>
#include <algorithm>

namespace seamclock {
namespace {

struct PracticeWords {
    Q_DECLARE_TR_FUNCTIONS(PracticeWords)
};

QString tr(const char* text) {
    return PracticeWords::tr(text);
}

Control key(const QString& text, std::optional<Sign> sign = {}) {
    Control one;
    one.view.text = text;
    one.view.sign = sign;
    return one;
}

} // namespace

Milliseconds stepOf(ReplayKey key) {
    switch (key) {
    case ReplayKey::TenBack:
        return Milliseconds(-10'000);
    case ReplayKey::OneBack:
        return Milliseconds(-1'000);
    case ReplayKey::OneOn:
        return Milliseconds(1'000);
    case ReplayKey::TenOn:
        return Milliseconds(10'000);
    case ReplayKey::Play:
    case ReplayKey::Close:
        return Milliseconds(0);
    }
    return Milliseconds(0);
}

BenchPageView replayView(const PracticeResult& result, const ReplayLook& look) {
    const PracticeReplay& replay = result.replay;
    const Instant& began = replay.take().began;
    const double whole = std::max(1.0, static_cast<double>(replay.length().count()));
    BenchPageView view;
    view.replay = true;

    Instant then = began;
    then.boot += look.at;
    then.utc += look.at;
    std::vector<Event> events; // told by then; the first one opened the weld
    for (const Event& event : result.record.events) {
        const Milliseconds at = event.at.boot - began.boot;
        if (at <= look.at || events.empty()) {
            events.push_back(event);
        }
        if (const QString name = eventName(event.d); !name.isEmpty()) {
            const double share = static_cast<double>(at.count()) / whole;
            view.time.events.push_back({std::clamp(share, 0.0, 1.0), name});
        }
    }
    if (const auto weld = fold(events)) {
        ViewContext context;
        context.now = then;
        context.letter = QStringLiteral("P");
        context.lessMotion = true;
        view.weld = weldView(*weld, context);
    }

    const VirtualBench bench = replay.at(look.at);
    const BenchView seen = bench.view();
    const int place = std::clamp(look.place, 0, static_cast<int>(seen.stations.size()) - 1);
    view.bench = practiceBenchView(
        seen, bench.setup(), place, &bench.edge(static_cast<std::size_t>(place)), view.weld.scale);

    view.time.share = static_cast<double>(look.at.count()) / whole;
    view.time.now = goneText(look.at);
    view.time.length = tr("of %1").arg(goneText(replay.length()));
    view.controls = {key(tr("− 10 s")),
                     key(tr("− 1 s")),
                     key(look.plays ? tr("Stop") : tr("Play"), Sign::Cooling),
                     key(tr("+ 1 s")),
                     key(tr("+ 10 s")),
                     key(tr("Close"), Sign::Back)};
    view.controls[2].view.on = look.plays;
    view.controls[2].view.under = look.speed;
    return view;
}

} // namespace seamclock
