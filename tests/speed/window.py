"""Measures the real window program on a display of its own (Xvfb), for run.py:

    python3 tests/speed/window.py BUILD_FOLDER start LOG [ROUNDS]    from its start to its first whole screen
    python3 tests/speed/window.py BUILD_FOLDER countdown LOG [SECONDS]   what a running countdown takes of a core

The log that is named is not changed: each round works on a copy-on-write or plain copy of it. Whether a screen stands is
read from the display's own frame buffer: the page's ground is there, and so is the clock on its tile.
"""
import mmap
import os
import shutil
import signal
import statistics
import struct
import subprocess
import sys
import tempfile
import time
from pathlib import Path

SIZE = (1280, 800)
DEMO = Path(__file__).resolve().parents[2] / "resources" / "demo"   # a shop's benches and seams
GROUND = (0x0D, 0x12, 0x15)   # of the dark theme
CLOCK = (1086, 12, 1264, 102)  # where the clock's tile stands, on every screen


class Display:
    def __init__(self, folder):
        self.folder = Path(folder)
        self.server = subprocess.Popen(
            ["Xvfb", "-displayfd", "1", "-screen", "0", f"{SIZE[0]}x{SIZE[1]}x24", "-nocursor", "-nolisten", "tcp",
             "-noreset", "-fbdir", folder], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL)
        number = self.server.stdout.readline().decode().strip()
        if not number:
            sys.exit("Xvfb gives no display")
        self.name = ":" + number
        with open(self.folder / "Xvfb_screen0", "rb") as file:
            self.bytes = mmap.mmap(file.fileno(), 0, prot=mmap.PROT_READ)
        # An X window dump (XWDFile.h, version 7): big-endian words, the name, the colours, the picture.
        header = struct.unpack(">25I", self.bytes[:100])
        self.line = header[12]
        self.start = header[0] + header[19] * 12

    def row(self, y, left, right):
        at = self.start + y * self.line
        return self.bytes[at + left * 4:at + right * 4]

    def stands(self):
        """The ground below the slots and the clock are painted: a window is painted whole, then shown."""
        blue, green, red = self.row(795, 4, 5)[:3]
        if (red, green, blue) != GROUND:
            return False
        middle = self.row(CLOCK[1] + 29, CLOCK[0] + 60, CLOCK[2] - 10)
        return len({middle[i:i + 3] for i in range(0, len(middle), 4)}) > 4

    def end(self):
        self.server.send_signal(signal.SIGTERM)
        self.server.wait()


def environment(display, folder):
    return {"PATH": os.environ["PATH"], "HOME": folder, "XDG_RUNTIME_DIR": folder, "DISPLAY": display.name,
            "QT_QPA_PLATFORM": "xcb", "LANG": "C.UTF-8", "DBUS_SYSTEM_BUS_ADDRESS": f"unix:path={folder}/no-bus",
            "DBUS_SESSION_BUS_ADDRESS": f"unix:path={folder}/no-bus"}


def command(folder, log, settings):
    return [str(folder / "bin" / "seamclock"), "--log", str(log), "--job", str(DEMO), "--settings", settings,
            "--size", f"{SIZE[0]}x{SIZE[1]}", "--no-sound"]


def settings_in(folder):
    path = Path(folder) / "settings.ini"
    path.write_text("[screen]\ntheme=dark\ndpi=150.9\n", encoding="ascii")
    return str(path)


def copied(log, folder):
    target = Path(folder) / "measured.seamlog"
    for tail in ("", "-wal", "-shm", ".credentials", ".spill"):
        if Path(str(log) + tail).exists():
            subprocess.run(["cp", "--reflink=auto", str(log) + tail, str(target) + tail], check=True)
    return target


def processor_seconds(pid):
    fields = Path(f"/proc/{pid}/stat").read_text(encoding="ascii").rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def until(display, process, most=300.0):
    begun = time.perf_counter()
    while time.perf_counter() - begun < most:
        if display.stands():
            return True
        if process.poll() is not None:
            sys.exit(f"the program ended with {process.returncode} before its screen stood")
        time.sleep(0.001)
    sys.exit(f"no screen within {most:.0f} s")


def forget(path):
    """The file's pages leave the system's cache."""
    with open(path, "rb") as file:
        os.fsync(file.fileno())
        os.posix_fadvise(file.fileno(), 0, 0, os.POSIX_FADV_DONTNEED)


def start_once(folder, log, scratch, cold):
    display = Display(scratch)
    try:
        if cold:
            forget(log)
        begun = time.perf_counter()
        process = subprocess.Popen(command(folder, log, settings_in(scratch)), env=environment(display, scratch),
                                   stdout=subprocess.DEVNULL)
        until(display, process)
        took = time.perf_counter() - begun
        used = processor_seconds(process.pid)
        process.kill()
        process.wait()
        return took, used
    finally:
        display.end()


def start(folder, log, rounds):
    with tempfile.TemporaryDirectory() as kept:
        measured = copied(log, kept)
        for cold in (False, True):
            took, used = [], []
            for i in range(rounds + 1):
                with tempfile.TemporaryDirectory() as scratch:
                    seconds, processor = start_once(folder, measured, scratch, cold)
                if i > 0 or cold:   # the first round reads the program itself from the disk
                    took.append(seconds)
                    used.append(processor)
            name = "window-start-cold" if cold else "window-start"
            size = measured.stat().st_size / 1e6
            what = f"log of {size:.0f} MB" + (", none of it in the system's cache" if cold else "")
            print(f"value {name} {statistics.median(took) * 1e3:.0f} ms   ({what}; shortest {min(took) * 1e3:.0f}, "
                  f"longest {max(took) * 1e3:.0f} ms of {len(took)}; processor {statistics.median(used) * 1e3:.0f} ms; "
                  f"load {os.getloadavg()[0]:.1f})", flush=True)


def countdown(folder, log, seconds):
    with tempfile.TemporaryDirectory() as scratch:
        measured = copied(log, scratch)
        display = Display(scratch)
        try:
            process = subprocess.Popen(command(folder, measured, settings_in(scratch)),
                                       env=environment(display, scratch), stdout=subprocess.DEVNULL)
            until(display, process)
            time.sleep(3)   # what a start sets going is over
            before, begun = processor_seconds(process.pid), time.perf_counter()
            time.sleep(seconds)
            used, took = processor_seconds(process.pid) - before, time.perf_counter() - begun
            rollup = Path(f"/proc/{process.pid}/smaps_rollup").read_text(encoding="ascii")
            memory = {line.split()[0]: int(line.split()[1]) / 1024 for line in rollup.splitlines()[1:]}
            print(f"value window-countdown-{log.stem} {100 * used / took:.2f} %   (of a core, over {took:.0f} s; load "
                  f"{os.getloadavg()[0]:.1f})")
            print(f"value window-memory {memory['Rss:']:.1f} MB   (just started; its own share "
                  f"{memory['Pss:']:.1f} MB)", flush=True)
            process.kill()
            process.wait()
        finally:
            display.end()


def main():
    if len(sys.argv) not in (4, 5) or sys.argv[2] not in ("start", "countdown") or shutil.which("Xvfb") is None:
        sys.exit(__doc__)
    folder, log = Path(sys.argv[1]).resolve(), Path(sys.argv[3])
    if sys.argv[2] == "start":
        start(folder, log, int(sys.argv[4]) if len(sys.argv) > 4 else 7)
    else:
        countdown(folder, log, float(sys.argv[4]) if len(sys.argv) > 4 else 60)


main()
