// Included by each file that asks the system itself: files by their descriptor, locks, a terminal.
// That is POSIX, which Linux, the BSDs and macOS have; elsewhere the compiler stops here and says
// what is missing. What Linux alone has is in core/machine, app/platform and app/power, whose
// *_other.cpp say the same of every other system. tests/lint/machine.py holds both.
#pragma once

#if !__has_include(<unistd.h>) || !__has_include(<fcntl.h>) || !__has_include(<sys/file.h>)
#error "this file needs POSIX: open, fsync, flock, stat, poll, tcsetattr; write it for this system"
#endif
