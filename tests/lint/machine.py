"""Other systems: what Linux alone has stands in three rooms, where another system meets an #error that says what is
missing; what POSIX has stands in files that include core/base/posix.h, whose #error says it for them. D-Bus, which is
the Linux desktop's, is app/power's."""
import re
import sys

from source_files import CPP, Lint, blank_out, code_of, line_of

# The room, and those of its files that are Linux's; its NAME_other.cpp is every other system's.
HOMES = {
    "core/machine": r"machine_linux\.cpp",
    "app/platform": r"boot_clock\.(?:h|cpp)|boot_pacer\.cpp|program_folder_linux\.cpp",
    "app/power": r".*",
}
POSIX_HOME = "core/base/posix.h"

LINUX_HEADER = (r"#\s*include\s*<((?:sys/(?:vfs|syscall|prctl|epoll|signalfd|timerfd|eventfd|inotify|fanotify|sendfile|xattr"
                r"|random|personality|statfs|mount|sysinfo|sysmacros|capability|auxv)|linux/[\w/]+|asm/\w+|mntent"
                r"|pulse/[\w-]+|pipewire/\w+|alsa/\w+|systemd/[\w-]+|libudev|byteswap|endian|features)\.h)>")
LINUX_NAME = (r"\b(CLOCK_BOOTTIME\w*|CLOCK_MONOTONIC_RAW|clock_nanosleep|renameat2|RENAME_\w+|fallocate|sync_file_range"
              r"|O_TMPFILE|O_PATH|syscall|SYS_\w+|prctl|PR_SET_\w+|gettid|memfd_create|signalfd|epoll_\w+|timerfd_\w+"
              r"|eventfd|inotify_\w+|sendfile|accept4|pipe2|dup3|mremap|F_OFD_\w+|statfs|fstatfs|__linux__|ioprio_\w+)\b")
LINUX_PATH = r'"(/(?:proc|sys|dev|run|var|usr|etc)/[^"]*)"'
DESKTOP_BUS = r'#\s*include\s*[<"]((?:QtDBus/)?QDBus\w*)[>"]'
POSIX_HEADER = (r"#\s*include\s*<((?:unistd|fcntl|poll|termios|pthread|sched|dirent|pwd|grp|dlfcn|spawn|netdb|glob|fnmatch"
                r"|ftw|langinfo|strings|syslog|utime|semaphore|mqueue|aio|sys/\w+|net/\w+|netinet/\w+|arpa/\w+)\.h)>")


def home_of(shown):
    for room, own in HOMES.items():
        if shown.startswith(room + "/") and re.fullmatch(own, shown[len(room) + 1:]):
            return room
    return None


def check_homes(lint):
    """Each room of the system has its #error, in a source that its CMakeLists.txt names, and chooses by the system."""
    for room in HOMES:
        cmake = lint.root / room / "CMakeLists.txt"
        if not cmake.is_file():
            continue   # a small tree, as the self-test's
        name = f"{room.rpartition('/')[2]}_other.cpp"
        other = lint.root / room / name
        listed = lint.read(cmake)
        if not other.is_file() or not re.search(r"^#error \"[^\"]{20,}\"", lint.read(other), re.MULTILINE):
            lint.find(other if other.is_file() else cmake, 1, "no_error", f"{name} has no #error that says what is missing")
        if name not in listed or "CMAKE_SYSTEM_NAME" not in listed:
            lint.find(cmake, 1, "no_choice", f"it does not take {name} where the system is another")


def main():
    lint = Lint("machine", sys.argv)
    for path in lint.files(["core", "app"], CPP):
        shown = lint.shown(path)
        text = lint.read(path)
        if home_of(shown) or shown == POSIX_HOME:
            continue
        code, with_strings = code_of(text), blank_out(text, strings=False)
        for rule, pattern, where, why in (
                ("linux_header", LINUX_HEADER, code, "only Linux has it: core/machine, app/platform or app/power"),
                ("linux_name", LINUX_NAME, code, "only Linux has it: core/machine, app/platform or app/power"),
                ("linux_path", LINUX_PATH, with_strings, "a place that only some systems have: app/platform"),
                ("desktop_bus", DESKTOP_BUS, code, "the desktop's bus is app/power's")):
            for match in re.finditer(pattern, where):
                lint.find(path, line_of(where, match.start()), rule, f"{match.group(1)}: {why}")
        posix = re.search(POSIX_HEADER, code)
        if posix and f'"{POSIX_HOME}"' not in code:
            lint.find(path, line_of(code, posix.start()), "posix_header",
                      f'{posix.group(1)}: only with "{POSIX_HOME}", which says what a system without it lacks')
    check_homes(lint)
    lint.finish()


main()
