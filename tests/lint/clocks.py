"""Clocks: time is an argument (DEVELOPERS.md). Only app/platform reads a clock or sleeps; a timer may wake the
program but never measures. Waiting on a condition variable is left to core/log's writer thread, the threads of
core/copies and their tests.

Also kept out of core: the standard library's random distributions, which differ between libraries, so that one seed
gives one record on every machine.
"""
import re
import sys

from source_files import CPP, Lint, blank_out, code_of, line_of

AT_HOME = ("app/platform/", "tests/app/platform/", "tests/speed/")   # tests/speed measures
MAY_WAIT = ("core/log/", "core/copies/", "tests/core/log/", "tests/core/copies/", "tests/core/session/", "tests/faults/")

RULES = [
    ("std_clock", r"\b(?:steady|system|high_resolution|utc|tai|gps|file)_clock\b", "the clock is app/platform's"),
    ("c_clock_header", r"#\s*include\s*<(?:ctime|time\.h|sys/time\.h|sys/times\.h|sys/timerfd\.h|x86intrin\.h)>",
     "only app/platform includes it"),
    ("sleep", r"\b(?:sleep_for|sleep_until|nanosleep|clock_nanosleep|usleep)\b", "nothing sleeps but app/platform"),
    ("qt_clock", r"\bQElapsedTimer\b|\bQDeadlineTimer\b|\bQ(?:Date|Time|DateTime)::current\w*"
                 r"|\bremainingTime\s*\(|\bQThread::\w*sleep\b|\bQTest::q(?:Sleep|Wait)\s*\(",
     "Qt's clocks do not count through sleep"),
    ("build_date", r"\b__(?:DATE|TIME|TIMESTAMP)__\b", "a build must not depend on its hour"),
]
# Of these names only the C library's own functions are meant, not a member or a function of ours.
C_FUNCTIONS = [
    ("c_clock", r"\b(?:gettimeofday|clock_gettime|clock_getres|timespec_get|ftime|getrusage|localtime|localtime_r"
                r"|timerfd_create|timer_create|setitimer|__rdtsc|clock)\s*\(", "the clock is app/platform's"),
    ("c_clock", r"\btime\s*\(\s*(?:nullptr|NULL|0|&)", "the clock is app/platform's"),
    ("sleep", r"\bsleep\s*\(", "nothing sleeps but app/platform"),
]
WAIT = re.compile(r"\bwait_(?:for|until)\s*\(|\btry_lock_(?:for|until)\s*\(")
SQL_CLOCK = re.compile(r"\bCURRENT_(?:TIMESTAMP|TIME|DATE)\b|\b(?:datetime|julianday|unixepoch|strftime)\s*\([^)]*'now'",
                       re.IGNORECASE)
CHANCE = re.compile(r"\bstd::\w+_distribution\b|\bdefault_random_engine\b|\bstd::s?rand\b")


def is_c_function(code, start):
    """Whether the name at `start` is called and is the C library's: not x.time(, ours::time(, or `Type time(`."""
    before = code[:start].rstrip()
    touching = len(before) == start
    if before.endswith((".", "->")):
        return False
    if before.endswith("::"):
        return re.search(r"(?:^|[^\w])(?:std)?::$", before) is not None
    if touching and before.endswith(("&", "*", ">", "~")):
        return False
    word = re.search(r"\w+$", before)
    if word and not touching and word.group(0) not in ("return", "else", "case", "throw"):
        return False
    return not (before.endswith(("&", "*", ">")) and re.search(r"\w[&*>]$", before))


def main():
    lint = Lint("clocks", sys.argv)
    for path in lint.files(["core", "app", "tests"], CPP):
        shown = lint.shown(path)
        text = lint.read(path)
        if shown.startswith(AT_HOME):
            continue
        code = code_of(text)

        def look(pattern, rule, why, where):
            for match in re.finditer(pattern, where):
                lint.find(path, line_of(where, match.start()), rule, f"{match.group(0).strip()}: {why}")

        for rule, pattern, why in RULES:
            look(pattern, rule, why, code)
        for rule, pattern, why in C_FUNCTIONS:
            for match in re.finditer(pattern, code):
                if is_c_function(code, match.start()):
                    lint.find(path, line_of(code, match.start()), rule, f"{match.group(0).strip()}: {why}")
        if not shown.startswith(MAY_WAIT):
            look(WAIT, "timed_wait", "only the threads of core/log and core/copies wait", code)
        look(SQL_CLOCK, "sql_clock", "an instant is an argument, in SQL too", blank_out(text, strings=False))
        if shown.startswith("core/"):
            look(CHANCE, "chance", "one seed, one record: use our own generator and distributions", code)
    lint.finish()


main()
