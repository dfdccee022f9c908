"""Prints how long the pieces of a weld and of its log take, beside a reference that is measured in the same run.

    python3 tests/speed/run.py BUILD_FOLDER [--full] [--window] [--keep]

"ratio NAME VALUE" is ours over the reference, "value NAME VALUE UNIT" a plain measurement of this machine, with the load
it had printed before and after. Times differ from machine to machine and from hour to hour; ratios hardly do. Nothing
here passes or fails by a clock.

--window measures the window program instead: its start over a log of 100,000 joints (1.3 GB), a step from the key to the
screen, running countdowns, and memory over 500 welds; it needs Xvfb, and takes some minutes.

Logs of 2,000 and 20,000 joints are made for it, and one of 100,000 (1.3 GB) that the day log is scrolled over and the
shop's charts are made of; with --full of 10,000 and 1,000,000 (ten million events, about 9 GB below
BUILD_FOLDER while it runs, and a quarter of an hour). --keep leaves them there and uses them again.
"""
import csv
import json
import os
import shutil
import statistics
import subprocess
import sys
import time
from pathlib import Path

# (name, what, measured, beside what)
RATIOS = [
    ("weld-fold", "folding 60 stored events, to parsing their JSON", "foldEvents", "parseBodies"),
    ("weld-apply", "applying 60 events one by one, to folding them", "applyEvents", "foldEvents"),
    ("weld-judge", "record and verdict of a weld, to folding it", "judge", "foldEvents"),
    ("weld-print", "printing a record as JSON, to parsing its events", "printRecord", "parseBodies"),
    ("weld-write", "writing 60 bodies, to parsing them", "writeBodies", "parseBodies"),
    ("weld-chain", "chaining 60 rows, to one bare SHA-256 of their bytes", "chainHashes", "bareHash"),
    ("procedures-load", "reading all procedures, to reading one", "loadAllProcedures", "readProcedureText"),
    ("plan-make", "a plan, to reading its procedure", "makeOnePlan", "readProcedureText"),
]

# What `seamclock-cli log export` writes of the joints, asked of SQLite's own program.
EXPORT = """SELECT number, weld, type, strftime('%Y-%m-%dT%H:%M:%fZ', opened_ms / 1000.0, 'unixepoch') AS opened_utc,
day AS day_local, offset_min, seam, job, bench, opened_by, material, printf('%.15g', thickness_um / 1000.0) AS thickness_mm,
printf('%.15g', length_um / 1000.0) AS length_mm, procedure, phase AS state, verdict, verdict_now, findings AS reasons,
events, trouble FROM joint ORDER BY id DESC"""


def say(line):
    print(line, flush=True)


def program(folder, name):
    path = folder / "bin" / name
    if not path.is_file():
        sys.exit(f"{path} is not there: build the target \"{name}\" first")
    return path


def run(*command):
    subprocess.run([str(word) for word in command], check=True)


def timed(*command):
    """Seconds and the most memory it held [MB]."""
    start = time.perf_counter()
    process = subprocess.Popen([str(word) for word in command], stdout=subprocess.DEVNULL)
    _, status, used = os.wait4(process.pid, 0)
    took = time.perf_counter() - start
    process.returncode = os.waitstatus_to_exitcode(status)
    if process.returncode != 0:
        sys.exit(f"{command[0]} ended with {process.returncode}")
    return took, used.ru_maxrss / 1024


def pieces(folder):
    answer = subprocess.run([program(folder, "speed"), "--benchmark_format=json", "--benchmark_min_time=0.2"], check=True,
                            capture_output=True, text=True)
    took = {one["name"]: one["cpu_time"] for one in json.loads(answer.stdout)["benchmarks"]}
    answered = json.loads(answer.stdout)["benchmarks"]
    per_second = {one["name"]: one.get("items_per_second") for one in answered}
    say(f"value plan-from-loaded {1e6 / per_second['makePlansOfAll']:.1f} µs   (of all procedures, without a bench and with one)")
    say(f"value procedures-load {took['loadAllProcedures'] / 1e6:.2f} ms   (every shipped file, read and checked)")
    for name, what, measured, beside in RATIOS:
        say(f"ratio {name} {took[measured] / took[beside]:.2f}   ({what}: {took[measured] / 1e3:.1f} / "
            f"{took[beside] / 1e3:.1f} µs)")


def same_rows(one, other):
    """Row by row; those opened in the same millisecond may stand in another order."""
    count, waiting, instant = 0, ([], []), None

    def settle():
        if sorted(waiting[0]) != sorted(waiting[1]):
            sys.exit(f"the exports differ before row {count}: {waiting[0]} / {waiting[1]}")
        waiting[0].clear()
        waiting[1].clear()

    with open(one, newline="", encoding="utf-8") as a, open(other, newline="", encoding="utf-8") as b:
        for rows in zip(csv.reader(a, strict=True), csv.reader(b, strict=True), strict=True):
            if rows[0][3] != instant:
                settle()
                instant = rows[0][3]
            for kept, row in zip(waiting, rows):
                kept.append(row)
            count += 1
    settle()
    return count - 1


def export(folder, log, scratch, rounds):
    ours, theirs = scratch / "ours.csv", scratch / "theirs.csv"
    took, beside, memory = [], [], 0
    for _ in range(rounds):
        seconds, peak = timed(program(folder, "seamclock-cli"), "log", "export", "--log", log, "--out", ours)
        took.append(seconds)
        memory = max(memory, peak)
        beside.append(timed("sqlite3", "-readonly", "-batch", log, ".headers on", ".mode csv", f".output {theirs}",
                            EXPORT)[0])
    joints = same_rows(ours, theirs)
    ours.unlink()
    theirs.unlink()
    return joints, statistics.median(took), statistics.median(beside), memory


def exports(folder, logs, scratch):
    for log in logs:
        joints, ours, theirs, memory = export(folder, log, scratch, 5)
        say(f"ratio log-export-csv-{joints} {ours / theirs:.2f}   ({ours:.3f} / {theirs:.3f} s)")
        say(f"value log-export-memory-{joints} {memory:.1f} MB")


def hundred_thousand(folder, scratch):
    log = scratch / "joints-100000.log"
    if not log.is_file():
        run(program(folder, "make_big_log"), log, 100_000)
    return log


def scroll(folder, big, scratch, full):
    log = big if full else hundred_thousand(folder, scratch)
    run(program(folder, "log_speed"), "scroll", log)
    run(program(folder, "daylog_speed"), log)


def window(folder, scratch):
    run(program(folder, "window_speed"), "steps")
    run(program(folder, "window_speed"), "memory")
    here = Path(__file__).parent / "window.py"
    for phase in ("soaking", "cooling"):
        log = scratch / f"{phase}.seamlog"
        log.unlink(missing_ok=True)
        run(program(folder, "window_speed"), phase, log)
        run(sys.executable, here, folder, "countdown", log)
    run(sys.executable, here, folder, "start", hundred_thousand(folder, scratch))


def main():
    words = [word for word in sys.argv[1:] if not word.startswith("--")]
    options = {word for word in sys.argv[1:] if word.startswith("--")}
    if len(words) != 1 or options - {"--full", "--keep", "--window"}:
        sys.exit(__doc__)
    folder = Path(words[0]).resolve()
    full = "--full" in options
    say("load {:.1f} {:.1f} {:.1f} on {} processors".format(*os.getloadavg(), os.cpu_count()))
    if "--window" in options:
        scratch = folder / "speed-scratch"
        scratch.mkdir(exist_ok=True)
        try:
            window(folder, scratch)
        finally:
            if "--keep" not in options:
                shutil.rmtree(scratch)
        return
    pieces(folder)
    run(program(folder, "heat_speed"))
    run(program(folder, "shop_speed"), "day")
    run(program(folder, "vbench_speed"))
    run(program(folder, "rehearse_speed"))
    run(program(folder, "practice_frame_speed"))
    scratch = folder / "speed-scratch"
    scratch.mkdir(exist_ok=True)
    try:
        logs = []
        for joints in (10_000, 1_000_000) if full else (2_000, 20_000):
            log = scratch / f"joints-{joints}.log"
            if not log.is_file():
                start = time.perf_counter()
                run(program(folder, "make_big_log"), log, joints)
                say(f"value make-log-{joints} {time.perf_counter() - start:.1f} s")
            logs.append(log)
        small, big = logs
        run(program(folder, "report_speed"), scratch)
        run(program(folder, "log_speed"), "page", small, big)
        scroll(folder, big, scratch, full)
        run(program(folder, "shop_speed"), "charts", hundred_thousand(folder, scratch))
        if full:
            run(program(folder, "shop_speed"), "charts", big)
        writing = scratch / "writing"
        writing.mkdir()
        run(program(folder, "log_speed"), "write", writing)
        shutil.rmtree(writing)
        exports(folder, logs, scratch)
        run(program(folder, "log_speed"), "verify", small, 7)
        if full:
            run(program(folder, "log_speed"), "verify", big, 1)
    finally:
        if "--keep" not in options:
            shutil.rmtree(scratch)
    say("load {:.1f} {:.1f} {:.1f} afterwards".format(*os.getloadavg()))


main()
