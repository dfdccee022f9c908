// This system has no implementation of these yet. What to write, beside boot_clock.cpp,
// boot_pacer.cpp, display_linux.cpp and program_folder_linux.cpp: bootTime() and BootClock (a clock
// that goes on while the machine sleeps, and an id of each start of it), BootPacer (waiting on that
// clock), hasDisplay() and programFolder().
#error "app/platform lacks this system: a clock that counts sleep, an id of each start, its program"
