// A program that is kept awake until its standard input ends: "held" once both locks are. The buses
// are those of its environment. With "child" it starts a process of its own that outlives it, as
// the horn may.
#include "app/power/stay_awake.h"

#include <QCoreApplication>
#include <QProcess>
#include <QSocketNotifier>
#include <cstdio>
#include <cstdlib>
#include <unistd.h>

namespace {

int run(int argc, char** argv) {
    QCoreApplication application(argc, argv);
    seamclock::StayAwake awake;
    QObject::connect(&awake, &seamclock::StayAwake::changed, [&] {
        if (awake.state().sleep == seamclock::LockState::Held &&
            awake.state().screen == seamclock::LockState::Held) {
            if (application.arguments().contains("child")) {
                qint64 child = 0;
                QProcess::startDetached("sleep", {"60"}, {}, &child);
                std::printf("child %lld\n", static_cast<long long>(child));
            }
            std::puts("held");
            std::fflush(stdout);
        }
    });
    QSocketNotifier input(STDIN_FILENO, QSocketNotifier::Read);
    QObject::connect(&input, &QSocketNotifier::activated, &application, &QCoreApplication::quit);
    awake.hold(true);
    return QCoreApplication::exec();
}

} // namespace

// As the window program ends.
int main(int argc, char** argv) {
    const int status = run(argc, argv);
    if (seamclock::StayAwake::isProcessHeld()) {
        std::_Exit(status);
    }
    return status;
}
