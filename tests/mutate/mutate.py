"""Mutation testing of core: one small mechanical change at a time, in a copy of the tree; some test must fail.

A sample of places, chosen by a seed, is changed one by one; the test programs are rebuilt and run, those of the
changed room first, then the others of core and the published values. A change that the compiler refuses is not
counted. A change that no test notices is a survivor: it is printed with its place and fails the run, unless
equivalents.txt says why it can't be noticed.

    mutate.py --root TREE --work FOLDER --seed N --minutes M [--only PATH] [--count N] [--list]
"""
import argparse
import json
import os
import random
import re
import resource
import shutil
import signal
import subprocess
import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "lint"))
from source_files import blank_out  # noqa: E402

ROOMS = ("plan", "weld", "shift", "procedure", "bench")
COPIED = ("CMakeLists.txt", "cmake", "core", "app", "tests", "resources", "DEVELOPERS.md", "README.md")
JUDGES = ("tests/core/", "tests/standards/")

# What is replaced by what. Binary operators have a space on either side (clang-format sees to it); templates,
# references and pointers have not.
SWAPS = [
    (r"(?<= )<(?= )", ["<="]), (r"(?<= )<=(?= )", ["<"]), (r"(?<= )>(?= )", [">="]), (r"(?<= )>=(?= )", [">"]),
    (r"(?<= )==(?= )", ["!="]), (r"(?<= )!=(?= )", ["=="]),
    (r"(?<= )\+(?= )", ["-"]), (r"(?<= )-(?= )", ["+"]), (r"(?<= )\*(?= )", ["/"]), (r"(?<= )/(?= )", ["*"]),
    (r"(?<= )\+=(?= )", ["-="]), (r"(?<= )-=(?= )", ["+="]),
    (r"(?<= )&&(?= )", ["||"]), (r"(?<= )\|\|(?= )", ["&&"]),
    (r"\btrue\b", ["false"]), (r"\bfalse\b", ["true"]),
    (r"\bstd::min\b", ["std::max"]), (r"\bstd::max\b", ["std::min"]),
    (r"\bstd::floor\b", ["std::ceil"]), (r"\bstd::ceil\b", ["std::floor"]),
    (r"\bstd::lower_bound\b", ["std::upper_bound"]), (r"\bstd::upper_bound\b", ["std::lower_bound"]),
    (r"\bstd::any_of\b", ["std::all_of"]), (r"\bstd::all_of\b", ["std::any_of"]),
    (r"(?<=[\w)\]])\.front\(\)", [".back()"]), (r"(?<=[\w)\]])\.back\(\)", [".front()"]),
    (r"(?<=[( ])!(?=[\w(:])", [""]),
]
NUMBER = re.compile(r"(?<![\w.])(\d[\d']*)(\.\d+)?(?=[uUlLfF]*\b|[a-z]+\b|$)(?![\w.]*[xXbB])")
# A whole statement that is one call: dropped. Making room, asserting and the like change nothing one could notice.
CALL = re.compile(r"(?<=[;{})])\n *((?!(?:return|throw|using|case|else)\b)[\w:]+(?:(?:\.|->)\w+)*\([^;{}]*\);)(?=\n)")
CONDITION = re.compile(r"\b(?:if|while) \(")
NOT_CALLED = ("reserve", "shrink_to_fit")
# What a member holds before it is given its value is seen by nobody.
MEMBER = re.compile(r"^ *(?!.*\bconstexpr\b)[\w:<>, ]+ \w+(?:\{[^{}()]*\}| = [^()]*);", re.MULTILINE)


class Mutant:
    def __init__(self, path, text, start, end, new):
        self.path, self.start, self.end, self.new = path, start, end, new
        self.line = text.count("\n", 0, start) + 1
        self.old_line = text.split("\n")[self.line - 1].strip()
        mutated = text[:start] + new + text[end:]
        self.new_line = mutated.split("\n")[self.line - 1].strip()
        self.room = path.split("/")[1]

    def text(self):
        return f"{self.path}:{self.line}: {self.old_line}  ->  {self.new_line}"


def closing_parenthesis(code, opening):
    depth = 0
    for index in range(opening, len(code)):
        depth += {"(": 1, ")": -1}.get(code[index], 0)
        if depth == 0:
            return index
    return None


def joins_text(code, plus):
    """Whether a literal text stands beside this plus: text can't be subtracted."""
    return code[:plus.start()].rstrip().endswith('"') or re.match(r'\s*R?"', code[plus.end():]) is not None


def mutants_of(path, text):
    code = re.sub(r"^[ \t]*#[^\n]*(?:\\\n[^\n]*)*", lambda m: re.sub(r"[^\n]", " ", m.group(0)), blank_out(text),
                  flags=re.MULTILINE)
    # Not in assertions that only the compiler reads, nor in template heads.
    code = re.sub(r"\b(?:static_assert|assert)\s*\([^;]*;|\btemplate <[^;{]*?>\n",
                  lambda m: re.sub(r"[^\n]", " ", m.group(0)), code)
    if path.endswith(".h"):
        code = MEMBER.sub(lambda m: re.sub(r"[^\n]", " ", m.group(0)), code)
    for pattern, news in SWAPS:
        for match in re.finditer(pattern, code):
            if match.group(0) == "+" and joins_text(code, match):
                continue
            for new in news:
                yield Mutant(path, text, match.start(), match.end(), new)
    for match in NUMBER.finditer(code):
        whole, fraction = match.group(1).replace("'", ""), match.group(2) or ""
        if len(whole) > 1 and whole[0] == "0":
            continue
        for value in (int(whole) + 1, int(whole) - 1):
            if value >= 0:
                yield Mutant(path, text, match.start(), match.end(), f"{value}{fraction}")
    for match in CONDITION.finditer(code):
        opening = match.end() - 1
        closing = closing_parenthesis(code, opening)
        if closing is None or ";" in code[opening:closing] or " = " in code[opening:closing]:
            continue
        yield Mutant(path, text, opening + 1, closing, f"!({text[opening + 1:closing]})")
    for match in CALL.finditer(code):
        call = match.group(1)
        if closing_parenthesis(call, call.index("(")) != len(call) - 2:
            continue
        if not any(f"{name}(" in call for name in NOT_CALLED):
            yield Mutant(path, text, match.start(1), match.end(1), ";")


def read_equivalents(path):
    """Blocks of `file`, `- the line as it is`, `+ the line as changed`, `why …`, parted by empty lines."""
    known = {}
    if not path.is_file():
        return known
    for number, block in enumerate(re.split(r"\n\s*\n", path.read_text(encoding="utf-8")), 1):
        lines = [line for line in block.split("\n") if line.strip() and not line.startswith("#")]
        if not lines:
            continue
        if len(lines) < 4 or lines[1][:2] != "- " or lines[2][:2] != "+ " or not lines[3].startswith("why "):
            sys.exit(f"{path.name}, block {number}: needs a file, '- line', '+ line' and 'why …'")
        known[(lines[0].strip(), lines[1][2:].strip(), lines[2][2:].strip())] = " ".join(lines[3:])
    return known


def copy_tree(root, tree):
    """The sources as they stand, into `tree`; unchanged files keep their times, so that builds stay short."""
    wanted = set()
    for name in COPIED:
        source = root / name
        files = [source] if source.is_file() else sorted(source.rglob("*"))
        for path in files:
            if not path.is_file() or "__pycache__" in path.parts:
                continue
            target = tree / path.relative_to(root)
            wanted.add(target)
            if not target.is_file() or target.read_bytes() != path.read_bytes():
                target.parent.mkdir(parents=True, exist_ok=True)
                shutil.copyfile(path, target)
    for path in tree.rglob("*"):
        if path.is_file() and path not in wanted:
            path.unlink()


def limit_memory():
    """A changed loop may never end its allocations."""
    resource.setrlimit(resource.RLIMIT_AS, (4 << 30, 4 << 30))


class Runner:
    def __init__(self, work, log):
        self.tree, self.build, self.log = work / "tree", work / "build", log
        home = work / "home"
        shutil.rmtree(home, ignore_errors=True)
        (home / "tmp").mkdir(parents=True)
        kept = {name: value for name, value in os.environ.items() if not name.startswith("XDG_")}
        self.environment = {**kept, "HOME": str(home), "TMPDIR": str(home / "tmp")}
        self.programs = []  # (folder, command, working folder, seconds)

    def call(self, command, seconds, folder=None):
        """Exit status, or None when it took too long; its whole group is ended then."""
        self.log.write(f"$ {' '.join(command)}\n")
        self.log.flush()
        process = subprocess.Popen(command, cwd=folder, env=self.environment, stdin=subprocess.DEVNULL, stdout=self.log,
                                   stderr=subprocess.STDOUT, start_new_session=True, preexec_fn=limit_memory)
        try:
            return process.wait(timeout=seconds)
        except subprocess.TimeoutExpired:
            return None
        finally:
            if process.poll() is None:
                os.killpg(process.pid, signal.SIGKILL)
                process.wait()

    def must(self, command):
        if self.call(command, 3600) != 0:
            sys.exit(f"mutate: the unchanged tree does not build ({self.log.name})")

    def prepare(self):
        jobs = str(os.cpu_count() or 2)
        # Without warnings: as errors they would refuse good mutants ("&&" beside "||").
        self.must(["cmake", "-S", str(self.tree), "-B", str(self.build), "-G", "Ninja", "-DCMAKE_BUILD_TYPE=Check",
                   "-DSEAMCLOCK_WARNINGS=OFF"])
        judges = [path.parent.relative_to(self.tree).as_posix()
                  for path in sorted((self.tree / "tests").rglob("CMakeLists.txt"))
                  if f"{path.parent.relative_to(self.tree).as_posix()}/".startswith(JUDGES)]
        self.must(["ninja", "-C", str(self.build), "-j", jobs, *(f"{judge}/all" for judge in judges)])
        shown = subprocess.run(["ctest", "--test-dir", str(self.build), "--show-only=json-v1"], capture_output=True,
                               encoding="utf-8", check=True)
        found = {}
        for test in json.loads(shown.stdout)["tests"]:
            properties = {item["name"]: item["value"] for item in test.get("properties", [])}
            command = test.get("command")
            if not command or {"deep", "endure"} & set(properties.get("LABELS", [])):
                continue
            folder = properties.get("WORKING_DIRECTORY", str(self.build))
            place = os.path.relpath(folder, self.build)
            if f"{place}/".startswith(JUDGES):
                if any(word.startswith("--gtest_filter") for word in command):
                    found[command[0]] = (place, folder)
        for program, (place, folder) in sorted(found.items()):
            began = time.monotonic()
            command = [program, "--gtest_brief=1", "--gtest_fail_fast"]
            if self.call(command, 600, folder) != 0:
                sys.exit(f"mutate: {program} fails on the unchanged tree")
            self.programs.append((place, command, folder, time.monotonic() - began))
        if not self.programs:
            sys.exit("mutate: no test program in tests/core or tests/standards")

    def judge(self, mutant):
        """"killed", "survived" or "refused" (by the compiler)."""
        path = self.tree / mutant.path
        original = path.read_text(encoding="utf-8")
        path.write_text(original[:mutant.start] + mutant.new + original[mutant.end:], encoding="utf-8")
        try:
            own = f"tests/core/{mutant.room}"
            ordered = sorted(self.programs, key=lambda p: (p[0] != own, p[3]))
            built = set()
            for place, command, folder, seconds in ordered:
                if place not in built:
                    if self.call(["ninja", "-C", str(self.build), f"{place}/all"], 900) != 0:
                        return "refused"
                    built.add(place)
                if self.call(command, 20 + 10 * seconds, folder) != 0:
                    return "killed"
            return "survived"
        finally:
            path.write_text(original, encoding="utf-8")


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--root", type=Path, required=True)
    parser.add_argument("--work", type=Path, required=True)
    parser.add_argument("--seed", type=int, default=0)
    parser.add_argument("--minutes", type=float, default=18)
    parser.add_argument("--only", default="", help="only files whose path begins so")
    parser.add_argument("--count", type=int, help="at most so many mutants")
    parser.add_argument("--list", action="store_true", help="print the sample and stop")
    options = parser.parse_args()
    deadline = time.monotonic() + 60 * options.minutes
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(143))  # so that what it started ends with it
    root = options.root.resolve()

    mutants = []
    for room in ROOMS:
        for path in sorted((root / "core" / room).glob("*.cpp")) + sorted((root / "core" / room).glob("*.h")):
            shown = path.relative_to(root).as_posix()
            if shown.startswith(options.only):
                mutants += mutants_of(shown, path.read_text(encoding="utf-8"))
    random.Random(options.seed).shuffle(mutants)
    mutants = mutants[:options.count]
    if not mutants:
        sys.exit("mutate: nothing to change")
    if options.list:
        for mutant in mutants:
            print(mutant.text())
        return

    equivalents = read_equivalents(Path(__file__).resolve().parent / "equivalents.txt")
    options.work.mkdir(parents=True, exist_ok=True)
    copy_tree(root, options.work / "tree")
    count = {"killed": 0, "survived": 0, "refused": 0, "equivalent": 0}
    with open(options.work / "mutate.log", "w", encoding="utf-8") as log:
        runner = Runner(options.work.resolve(), log)
        runner.prepare()
        print(f"unchanged tree: {len(runner.programs)} test programs pass; {len(mutants)} places, seed {options.seed}",
              flush=True)
        for mutant in mutants:
            if time.monotonic() > deadline:
                break
            log.write(f"== {mutant.text()}\n")
            if (mutant.path, mutant.old_line, mutant.new_line) in equivalents:
                verdict = "equivalent"
            else:
                verdict = runner.judge(mutant)
            log.write(f"== {verdict}\n")
            count[verdict] += 1
            if verdict == "survived":
                print(f"survived: {mutant.text()}", flush=True)
    tried = count["killed"] + count["survived"]
    print(f"mutants: {tried} judged, {count['killed']} killed, {count['survived']} survived; "
          f"{count['refused']} refused by the compiler, {count['equivalent']} known to change nothing")
    if tried == 0:
        sys.exit("mutate: no mutant was judged in the time given")
    sys.exit(1 if count["survived"] else 0)


if __name__ == "__main__":
    main()
