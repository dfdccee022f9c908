"""Feeds each lint a small clean tree, which it must pass; an empty one, which it must refuse; and the clean tree with
one bad example per rule, where it must name that rule. `python3 selftest.py LINT`."""
import subprocess
import sys
import tempfile
from pathlib import Path

ROOM = "seamclock_room(%s SOURCES %s.cpp HEADERS %s.h USES %s)\n"
HEADER = "#pragma once\n"


def room(name, uses, source):
    return {
        f"core/{name}/CMakeLists.txt": ROOM % (name, name, name, uses),
        f"core/{name}/{name}.h": HEADER,
        f"core/{name}/{name}.cpp": f'#include "core/{name}/{name}.h"\n' + source,
    }


CLEAN = {
    "DEVELOPERS.md": "base/ units/ bench/ log/ plan/\n",
    **room("base", "", '#include "core/base/base.h"\n#include <sodium.h>\n// steady_clock is told about here only\n'),
    **room("units", "base", '#include "core/base/base.h"\nint time() { return 1\'000; }\nint t = x.time(0);\n'),
    **room("bench", "units", '#include "core/base/base.h"\nauto text = "sleep_for";\nClock& clock();\n'),
    **room("log", "units", "#include <SQLiteCpp/SQLiteCpp.h>\nbool ok = done.wait_for(lock, 5s);\n"),
    "core/bench/bench_codec.cpp": "#include <nlohmann/json.hpp>\n",
    "core/bench/CMakeLists.txt": "seamclock_room(bench SOURCES bench.cpp bench_codec.cpp HEADERS bench.h USES units)\n",
    "app/platform/CMakeLists.txt": "add_library(platform clock.cpp)\n",
    "app/platform/clock.cpp": "#include <ctime>\nauto t = clock_gettime(CLOCK_BOOTTIME, &x);\n",
    "tests/core/base/CMakeLists.txt": "seamclock_test(base_test SOURCES base_test.cpp)\n",
    "tests/core/base/base_test.cpp": '#include "core/base/base.h"\n#include <gtest/gtest.h>\nGTEST_SKIP() << "why";\n',
    "resources/demo/bench.json": '{"a": 1, "b": {"a": 2}}\n',
}

# Of one lint alone.
PLATFORM = "app/platform/CMakeLists.txt"
OTHER = "app/platform/platform_other.cpp"
CLEAN_TOO = {
    "machine": {
        PLATFORM: "if(CMAKE_SYSTEM_NAME STREQUAL Linux)\nadd_library(platform boot_clock.cpp)\nelse()\n"
                  "add_library(platform platform_other.cpp)\nendif()\n",
        OTHER: '#error "app/platform lacks this system: a clock"\n',
        "app/platform/boot_clock.cpp": "#include <time.h>\nauto t = clock_gettime(CLOCK_BOOTTIME, &x);\n",
        "app/platform/clock.cpp": 'auto bus = "QDBusConnection"; // CLOCK_BOOTTIME, as "/proc/self/exe" has it\n',
        "core/bench/bench_file.cpp": '#include "core/base/posix.h"\n#include <unistd.h>\nauto text = "renameat2";\n',
    },
}

CORE = "core/bench/bench.cpp"
BASE_HEADER = "core/base/base.h"
TEST = "tests/core/base/base_test.cpp"
LONG = "int " + "a" * 100 + ";\n"

# lint: [(rule, file, its new text)]
BAD = {
    "layers": [
        ("unknown_room", "core/extra/CMakeLists.txt", "seamclock_room(extra HEADERS extra.h)\n"),
        ("room_folder", "core/bench/CMakeLists.txt", "seamclock_room(plan SOURCES bench.cpp USES units)\n"),
        ("arrow", "core/units/CMakeLists.txt", "seamclock_room(units SOURCES units.cpp USES base bench)\n"),
        ("arrow", "core/bench/CMakeLists.txt", "seamclock_room(bench SOURCES bench.cpp USES procedure)\n"),
        ("untold_room", "DEVELOPERS.md", "base/ units/ log/\n"),
        ("unjudged_room", "packaging/stage", "every='^core/units'\nrooms='^core/'\n"),
        ("unjudged_room", "packaging/stage", "every='^core/'\nrooms='^app/'\n"),
        ("not_in_uses", "core/base/base.cpp", '#include "core/units/units.h"\n'),
        ("not_in_uses", CORE, '#include "core/log/log.h"\n'),
        ("not_in_uses", CORE, '  #  include "core/log/log.h"\n'),
        ("from_root", CORE, '#include "bench.h"\n'),
        ("from_root", CORE, '#include "core/bench/../log/log.h"\n'),
        ("missing_file", CORE, '#include "core/bench/gone.h"\n'),
        ("upward", CORE, '#include "app/platform/clock.h"\n'),
        ("upward", TEST, '#include "app/platform/clock.h"\n'),
        ("upward", "app/platform/clock.cpp", '#include "tests/core/base/base_test.h"\n'),
        ("qt", CORE, "#include <QString>\n"),
        ("qt", "app/platform/clock.cpp", "#include <QtCore/QTimer>\n"),
        ("qt", TEST, "#include <QTest>\n"),
        ("sqlite", CORE, "#include <sqlite3.h>\n"),
        ("sqlite", "core/log/log.h", HEADER + "#include <SQLiteCpp/Database.h>\n"),
        ("sqlite", "app/platform/clock.cpp", "#include <sqlite3.h>\n"),
        ("json", CORE, "#include <nlohmann/json.hpp>\n"),
        ("fmt", BASE_HEADER, HEADER + "#include <fmt/format.h>\n"),
        ("cli11", "app/platform/clock.cpp", "#include <CLI/CLI.hpp>\n"),
        ("sodium", CORE, "#include <sodium.h>\n"),
        ("sodium", BASE_HEADER, HEADER + "#include <sodium/crypto_hash.h>\n"),
        ("test_library", CORE, "#include <gtest/gtest_prod.h>\n"),
        ("app_arrow", "app/setup/form.cpp", '#include "app/operate/floor.h"\n'),
        ("app_arrow", "app/parts/lamp.cpp", '#include "app/text/words.h"\n'),
        ("unknown_room", "app/extra/extra.cpp", '#include "app/parts/lamp.h"\n'),
        ("charts", "app/operate/window.cpp", "#include <QChartView>\n"),
        ("charts", "app/setup/plot.h", HEADER + "#include <QLineSeries>\n"),
        ("dbus", "app/operate/window.cpp", "#include <QDBusConnection>\n"),
    ],
    "clocks": [
        ("std_clock", CORE, "auto t = std::chrono::steady_clock::now();\n"),
        ("std_clock", CORE, "using Ticks = std::chrono::system_clock;\n"),
        ("std_clock", "app/cli/pace.cpp", "auto t = high_resolution_clock::now();\n"),
        ("c_clock", CORE, "auto t = time(nullptr);\n"),
        ("c_clock", CORE, "auto t = std::time(0);\n"),
        ("c_clock", CORE, "return ::time(&t);\n"),
        ("c_clock", CORE, "auto t = std::clock();\n"),
        ("c_clock", CORE, "x = 2 * clock();\n"),
        ("c_clock", CORE, "gettimeofday(&t, nullptr);\n"),
        ("c_clock", CORE, "if (clock_gettime(CLOCK_MONOTONIC, &t) == 0) {\n"),
        ("c_clock_header", CORE, "#include <ctime>\n"),
        ("c_clock_header", CORE, "#include <sys/timerfd.h>\n"),
        ("sleep", TEST, "std::this_thread::sleep_for(1s);\n"),
        ("sleep", TEST, "usleep(10);\n"),
        ("sleep", TEST, "{ sleep(1); }\n"),
        ("qt_clock", "app/operate/ring.cpp", "QElapsedTimer timer;\n"),
        ("qt_clock", "app/operate/ring.cpp", "auto t = QDateTime::currentDateTimeUtc();\n"),
        ("qt_clock", "tests/app/operate/ring_test.cpp", "QTest::qWait(50);\n"),
        ("build_date", CORE, "auto built = __DATE__;\n"),
        ("timed_wait", CORE, "done.wait_for(lock, 5s);\n"),
        ("timed_wait", TEST, "future.wait_until(soon);\n"),
        ("sql_clock", "core/log/log.cpp", "auto sql = \"INSERT INTO t VALUES(CURRENT_TIMESTAMP)\";\n"),
        ("sql_clock", "core/log/log.cpp", "auto sql = R\"(SELECT strftime('%s', 'now'))\";\n"),
        ("chance", CORE, "std::normal_distribution<double> spread;\n"),
    ],
    "style": [
        ("pragma_once", BASE_HEADER, "#ifndef BASE\n#define BASE\n#endif\n"),
        ("tab", CORE, "\tint a;\n"),
        ("trailing_space", CORE, "int a; \n"),
        ("columns", CORE, LONG),
        ("columns", CORE, "// " + "ä" * 98 + "\n"),
        ("last_newline", CORE, "int a;"),
        ("own_header_first", CORE, '#include <string>\n#include "core/bench/bench.h"\n'),
        ("own_header_first", CORE, "int a;\n"),
        ("default_label", CORE, "switch (n) { case 1: break; default: break; }\n"),
        ("default_label", "app/platform/clock.cpp", "switch (k) { case Kind::Open: break; default: break; }\n"),
        ("unfinished", CORE, "// TO" "DO later\n"),
        ("unfinished", "packaging/run", "# FIX" "ME\n"),
        ("machine_path", "packaging/run", "cd /ho" "me/anna/x\n"),
        ("machine_path", CORE, 'auto p = "/t' 'mp/seam.db";\n'),
        ("host", "packaging/run", "curl https://deb.deb" "ian.org/x\n"),
        ("host", "packaging/run", "curl http://" "10.0.0.7/x\n"),
        ("not_utf8", CORE, b"// \xff\n"),
        ("file_name", "core/base/baseThing.cpp", "int a;\n"),
        ("file_name", "tests/lint/Bad-name.py", "a = 1\n"),
        ("skip_without_reason", TEST, "GTEST_SKIP();\n"),
        ("disabled_test", TEST, "TEST(Base, DISABLED_Counts) {}\n"),
        ("nolint_without_reason", CORE, "int a; // NO" "LINT\n"),
        ("nolint_without_reason", CORE, "int a; // NO" "LINT(bugprone-branch-clone)\n"),
        ("not_built", "core/base/forgotten.cpp", "int a;\n"),
        ("not_built", "core/base/forgotten.h", HEADER),
        ("not_built", "tests/core/base/forgotten_test.cpp", "int a;\n"),
    ],
    "machine": [
        ("linux_header", CORE, "#include <sys/vfs.h>\n"),
        ("linux_header", CORE, "# include <linux/fs.h>\n"),
        ("linux_header", "app/horn/main.cpp", "#include <pulse/simple.h>\n"),
        ("linux_name", CORE, "renameat2(AT_FDCWD, a, AT_FDCWD, b, 1);\n"),
        ("linux_name", "app/platform/clock.cpp", "auto clock = CLOCK_BOOTTIME;\n"),
        ("linux_name", "app/horn/main.cpp", "prctl(PR_SET_PDEATHSIG, SIGKILL);\n"),
        ("linux_path", CORE, 'std::ifstream table("/proc/self/mounts");\n'),
        ("linux_path", "app/sound/sound.cpp", 'open("/dev/snd/seq");\n'),
        ("desktop_bus", "app/sound/sound.cpp", "#include <QDBusConnection>\n"),
        ("desktop_bus", "app/sound/sound.cpp", "#include <QtDBus/QDBusMessage>\n"),
        ("posix_header", CORE, "#include <unistd.h>\n"),
        ("posix_header", CORE, '#include "core/bench/bench.h"\n#include <sys/stat.h>\n'),
        ("no_error", OTHER, "// nothing yet\n"),
        ("no_choice", PLATFORM, "add_library(platform boot_clock.cpp)\n"),
        ("no_choice", PLATFORM, "add_library(platform boot_clock.cpp platform_other.cpp)\n"),
    ],
    "json_files": [
        ("duplicate_key", "resources/demo/bench.json", '{"a": 1, "b": [{"c": 1, "c": 2}]}\n'),
        ("not_json", "resources/demo/bench.json", '{"a": 1,}\n'),
        ("not_json", "resources/demo/bench.json", ""),
        ("not_json", "resources/demo/bench.json", "\ufeff{}\n"),
        ("not_a_number", "resources/demo/bench.json", '{"a": NaN}\n'),
        ("not_utf8", "resources/demo/bench.json", b'{"a": "\xe4"}\n'),
    ],
}


def run(lint, files):
    with tempfile.TemporaryDirectory() as folder:
        for name, text in files.items():
            path = Path(folder) / name
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_bytes(text if isinstance(text, bytes) else text.encode("utf-8"))
        script = Path(__file__).resolve().parent / f"{lint}.py"
        done = subprocess.run([sys.executable, "-B", script, folder], capture_output=True, encoding="utf-8")
        return done.returncode, done.stdout + done.stderr


def main():
    lint = sys.argv[1]
    wrong = []
    clean = {**CLEAN, **CLEAN_TOO.get(lint, {})}
    status, output = run(lint, clean)
    if status != 0:
        wrong.append(f"the clean tree is refused:\n{output}")
    status, output = run(lint, {})
    if status != 1 or "scanned nothing" not in output:
        wrong.append(f"an empty tree: status {status}\n{output}")
    for rule, name, text in BAD[lint]:
        status, output = run(lint, {**clean, name: text})
        found = [line for line in output.splitlines() if line.startswith(f"{name}:") or rule == "untold_room"]
        if status != 1 or not any(f": {rule}: " in line for line in found):
            wrong.append(f"{name} with {text!r}: expected {rule}, status {status}\n{output}")
    for text in wrong:
        print(text)
    print(f"{lint}: {len(BAD[lint])} bad examples, {len(wrong)} of the expectations failed")
    sys.exit(1 if wrong else 0)


main()
