// The program that the power-cut tests kill: a rehearsal that says on standard output, line by line
// and at once, what happens. In true time its phases last seconds instead of minutes (the reader of
// procedure files refuses such times, and rightly; so they are shortened here, after reading).
//
//   rehearse_driver LOG SEED virtual|true SPEED new|resume [none|confirmed|unconfirmed|abort] [N]
//                   [HAND]
//
// With N it kills itself (SIGKILL) as soon as it has told of event N, most likely before that is on
// disk; 0: it does not. HAND is the operator's pace in true time, % of his usual times.
#include "app/platform/boot_clock.h"
#include "app/platform/boot_pacer.h"
#include "core/practice/virtual_operator.h"
#include "tests/support/demo_order.h"

#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <string>
#include <unistd.h>

using namespace seamclock;

namespace {

Column always(double value) {
    Column column;
    Curve curve;
    curve.pieces = {Piece{millimetres(1), millimetres(100), {value}}};
    column.curves = {curve};
    column.source = {"invented for tests", Standing::CommonPractice};
    return column;
}

/// Soak 1.5 s, which may last thrice that (his hand takes up to 0.9 s), changeover 2 s, build-up 1
/// s, cooling 2.4 s.
void shorten(Procedure& procedure) {
    procedure.soak = always(1.5);
    procedure.soakHighPercent = 200;
    procedure.changeover = always(2);
    procedure.buildUp = always(1);
    procedure.cooling = {CoolingClass{{}, {}, always(0.04)}};
}

void say(const std::string& line) {
    std::printf("%s\n", line.c_str());
    std::fflush(stdout);
}

class Teller : public RehearseWatcher {
public:
    Teller(const BootClock& clock, std::int64_t last) : m_clock(clock), m_last(last) {}

    void planned(const Weld& weld, bool resumed) override {
        if (!resumed) {
            say("planned " + weld.id());
            return;
        }
        // A practice clock stands where the last event left it.
        Instant now = m_clock.now();
        if (weld.clock.bootId != now.bootId) {
            now = weld.events.back().at;
        }
        const WeldTime t = weldTimeAt(weld, now).value_or(WeldTime{});
        say("resumed " + weld.id() + " " + std::string(phaseName(weld.state)) + " " +
            std::to_string(t.lo.count()) + " " + std::to_string(t.hi.count()) + " " +
            std::to_string(now.boot.count()) + " " + std::to_string(weld.events.size()));
    }
    void happened(const Weld&, const Event& event) override {
        say("event " + std::to_string(event.n) + " " + std::string(kindOf(event.d)) + " " +
            std::to_string(event.at.boot.count()));
        if (event.n == m_last) {
            std::raise(SIGKILL);
        }
    }
    void cued(const Weld&, const CueNote&) override {}
    void saved(const Weld&, std::int64_t n) override { say("saved " + std::to_string(n)); }
    void setAside(const SetAside& aside) override {
        say("aside " + std::string(aside.sameChain ? "same " : "new ") + aside.damaged);
    }
    void trouble(const std::string& detail) override { say("trouble " + detail); }

private:
    const BootClock& m_clock;
    std::int64_t m_last;
};

RebootWord wordFrom(const std::string& text) {
    if (text == "confirmed") {
        return RebootWord::GoOnConfirmed;
    }
    if (text == "unconfirmed") {
        return RebootWord::GoOnUnconfirmed;
    }
    return text == "abort" ? RebootWord::Abort : RebootWord::None;
}

int complain(const Error& error) {
    say("error " + error.detail);
    return 2;
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 6) {
        return complain({ErrorCode::Missing, "too few words"});
    }
    const auto clock = BootClock::make();
    if (!clock) {
        return complain(clock.error());
    }
    RehearseOptions options;
    options.logPath = argv[1];
    options.seed = std::strtoull(argv[2], nullptr, 10);
    const bool resume = std::string(argv[5]) == "resume";
    options.resume = resume;
    options.trueTime = std::string(argv[3]) == "true";
    options.word = wordFrom(argc > 6 ? argv[6] : "none");
    if (!resume) {
        options.order = test::orderOf(test::kDemoSeams[1]);
    }
    if (options.trueTime) {
        options.handPercent = argc > 8 ? std::strtoll(argv[8], nullptr, 10) : 0;
        shorten(options.order.procedure.procedure);
    }
    Teller teller(*clock, argc > 7 ? std::strtoll(argv[7], nullptr, 10) : 0);
    BootPacer trueTime(1);
    BootPacer pacer(std::strtod(argv[4], nullptr));
    RehearseTools tools{&*clock, &trueTime, &pacer, &teller};
    const auto result = rehearse(options, tools);
    if (!result) {
        return complain(result.error());
    }
    if (result->resumed) {
        const ResumeNote& note = *result->resumed;
        say("found " + note.phase + " " + std::to_string(note.events) +
            (note.rebooted ? " rebooted" : " same") + (note.aborted ? " aborted" : " open"));
    }
    if (!result->notSaved.empty()) {
        return complain({ErrorCode::NotWritten, result->notSaved});
    }
    say("done " + std::string(toString(result->record.verdict.word)));
    return 0;
}
