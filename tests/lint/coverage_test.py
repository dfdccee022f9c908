"""packaging/coverage.py over a small program that is built here: what it counts, what it leaves out, what it joins."""
import subprocess
import sys
import tempfile
from pathlib import Path

SCRIPT = Path(__file__).resolve().parents[2] / "packaging" / "coverage.py"
HEADER = """#pragma once
#define Q_OBJECT static int asked() { return 1; }
struct Page {
    Q_OBJECT
    static int twice(int a) {
        return 2 * a;
    }
};
int shown(int a);
"""
PAGE = """#include "app/pages/page.h"
int shown(int a) {
    if (a > 3) {
        return Page::twice(a);
    }
    return a;
}
"""
MADE = """int made() {
    return 7;
}
"""
MAIN = """#include "app/pages/page.h"
#include "core/weld/weld.h"
int main(int argc, char**) {
    return welded(argc) + shown(argc) + Page::asked() > 0 ? 0 : 1;
}
"""
WELD = """#pragma once
inline int welded(int a) {
    return a + 1;
}
"""
problems = []


def expect(what, seen, wanted):
    if seen != wanted:
        problems.append(f"{what}:\n  seen   {seen!r}\n  wanted {wanted!r}")


def coverage(root, *arguments):
    done = subprocess.run([sys.executable, "-B", str(SCRIPT), str(root), str(root / "build"), *arguments],
                          capture_output=True, encoding="utf-8")
    return done.returncode, (done.stdout + done.stderr).splitlines()


def built(root, arguments):
    """Each source an object of its own below build, as CMake does it; then it is started."""
    objects = []
    for name in ["app/pages/page.cpp", "app/main.cpp", "build/app/pages/moc_page.cpp"]:
        place = root / "build" / (name.removeprefix("build/") + ".o")
        place.parent.mkdir(parents=True, exist_ok=True)
        subprocess.run(["g++", "-O0", "--coverage", "-I", str(root), "-c", str(root / name), "-o", str(place)],
                       check=True, cwd=root / "build")
        objects.append(str(place))
    program = root / "build" / "program"
    subprocess.run(["g++", "--coverage", *objects, "-o", str(program)], check=True)
    subprocess.run([str(program), *arguments], check=True)


with tempfile.TemporaryDirectory(prefix="seamclock coverage ") as folder:
    root = Path(folder)
    for name, text in {"app/pages/page.h": HEADER, "app/pages/page.cpp": PAGE, "app/main.cpp": MAIN,
                       "core/weld/weld.h": WELD, "build/app/pages/moc_page.cpp": MADE}.items():
        (root / name).parent.mkdir(parents=True, exist_ok=True)
        (root / name).write_text(text, encoding="utf-8")
    expect("nothing was run", coverage(root, "app"), (1, ["coverage: no .gcda file: nothing was measured"]))
    kept, missed = root / "kept.json", root / "missed.txt"

    built(root, [])
    status, rows = coverage(root, "app", "--keep", str(kept), "one", "1", "1,3", "--missed", str(missed))
    expect("app", (status, rows), (0, [
        "line coverage of app:",
        "  pages        50.0 %  3 of 6 lines",
        "  app          62.5 %  5 of 8 lines",
        "  not whole: the sixths 3 did not run at this commit"]))
    expect("what nothing reached", missed.read_text(encoding="utf-8").splitlines(), [
        "not reached, app/pages/page.cpp: 4", "not reached, app/pages/page.h: 5-6"])
    expect("core", coverage(root, "core"), (0, [
        "line coverage of core:", "  weld        100.0 %  2 of 2 lines", "  core        100.0 %  2 of 2 lines"]))

    asked = ["--rooms", "^app/(pages|print)"]
    expect("as much as is asked", coverage(root, "app", *asked, "--least", "50"), (0, [
        "line coverage of app:",
        "  pages        50.0 %  3 of 6 lines",
        "  app          62.5 %  5 of 8 lines",
        "  of pages together 50.0 %, at least 50 % asked"]))
    expect("less than is asked", coverage(root, "app", *asked, "--least", "51")[0], 1)
    of_all = ["--keep", str(kept), "one", "1", "1,3", "--least", "99"]
    expect("no part is asked for what the others reach", coverage(root, "app", *of_all)[0], 0)
    expect("no such room", coverage(root, "app", "--rooms", "^app/shop", "--least", "1"),
           (1, ["line coverage of app:", "  pages        50.0 %  3 of 6 lines", "  app          62.5 %  5 of 8 lines",
                "coverage: no room of app is found by ^app/shop"]))

    for data in root.rglob("*.gcda"):
        data.unlink()
    subprocess.run([str(root / "build" / "program"), "1", "2", "3"], check=True)
    of_all[3] = "3"
    expect("another part of the same commit", (coverage(root, "app", *of_all)[0], coverage(root, "app", *of_all)[1][-2:]),
           (0, ["  app         100.0 %  8 of 8 lines", "  of app, pages together 100.0 %, at least 99 % asked"]))
    of_all[2] = "two"
    expect("another commit forgets it", coverage(root, "app", *of_all),
           (0, ["line coverage of app:", "  pages        83.3 %  5 of 6 lines", "  app          87.5 %  7 of 8 lines",
                "  not whole: the sixths 1 did not run at this commit"]))
    of_all[3] = "1"
    expect("both have run, and it is not enough", coverage(root, "app", *of_all)[0], 1)
    expect("no such part", coverage(root, "all")[0], 2)

print("\n".join(problems) if problems else "coverage: 12 checks, 0 findings")
sys.exit(1 if problems else 0)
