#include "app/cli/command_line.h"

int main(int argc, char** argv) {
    return seamclock::runCommandLine(argc, argv);
}
