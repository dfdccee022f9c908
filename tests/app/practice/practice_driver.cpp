// Practises into a given log as far as soak, says so, and waits: to be killed there.
#include "tests/app/practice/practice_shop.h"

#include <QApplication>
#include <cstdio>
#include <unistd.h>

int main(int argc, char** argv) {
    const QApplication application(argc, argv);
    if (argc != 2) {
        return 2;
    }
    seamclock::test::Practising shop({1280, 800}, {}, {}, argv[1]);
    auto done = shop.walk().toBench("pe10-first");
    if (done) {
        done = shop.walk().prepare({});
    }
    if (done) {
        done = shop.walk().align({});
    }
    if (done) {
        done = shop.room().writer().flush();
    }
    std::printf("%s\n", done ? "in soak" : done.error().detail.c_str());
    std::fflush(stdout);
    while (done) {
        pause();
    }
    return 1;
}
