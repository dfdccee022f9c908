"""Mutation testing of core: one small mechanical change at a time, in a copy of the tree; some test must fail.

Every comparison with a limit in core/weld, where the verdict is, and core/plan, and then a sample of all other places,
chosen by a seed, is changed one by one; the test programs are rebuilt and run, those of the
changed room first, then the others of core and the published values. A change that the compiler refuses is not
counted. A change that no test notices is a survivor: it is printed with its place, unless equivalents.txt says why it
can't be noticed. A limit's survivor fails the run, and so does a limit that the time did not suffice for; one of the
sample, which is another with each seed, is for whoever reads it: no commit is to fail by the draw of its number.

    mutate.py --root TREE --work FOLDER --seed N --minutes M [--only PATH] [--count N] [--list]
"""
import argparse
import concurrent.futures
import json
import os
import queue
import random
import re
import shlex
import shutil
import signal
import subprocess
import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "lint"))
from source_files import blank_out  # noqa: E402

ROOMS = ("plan", "weld", "shift", "procedure", "bench")
COPIED = ("CMakeLists.txt", "cmake", "core", "app", "tests", "resources", "packaging", "docs", "LICENSE",
          "DEVELOPERS.md", "README.md")
# The rooms' own tests, and the published tables. What is above them (log, session, practice) notices some changes, too,
# but building it took all of the stage's time, and a limit's test belongs beside the limit.
JUDGES = (*(f"tests/core/{room}/" for room in ROOMS), "tests/standards/")

# Where a program that judges welds must not be off by one.
LIMIT_ROOMS = ("core/weld/", "core/plan/")
LIMITS = ("<", "<=", ">", ">=")

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
# A whole statement that is one call: dropped.
CALL = re.compile(r"(?<=[;{})])\n *((?!(?:return|throw|using|case|else)\b)[\w:]+(?:(?:\.|->)\w+)*\([^;{}]*\);)(?=\n)")
CONDITION = re.compile(r"\b(?:if|while) \(")
# Making room changes nothing one could notice.
MAKES_ROOM = re.compile(r"\b[\w.>()-]+(?:\.|->)(?:reserve|shrink_to_fit)\([^;]*\);")
# What a member holds before it is given its value is seen by nobody.
MEMBER = re.compile(r"^ *(?!.*\bconstexpr\b)[\w:<>, ]+ \w+(?:\{[^{}()]*\}| = [^()]*);", re.MULTILINE)


def is_judge(folder):
    return f"{folder}/".startswith(JUDGES)


class Mutant:
    def __init__(self, path, text, start, end, new):
        self.path, self.start, self.end, self.new = path, start, end, new
        self.line = text.count("\n", 0, start) + 1
        self.old_line = text.split("\n")[self.line - 1].strip()
        mutated = text[:start] + new + text[end:]
        self.new_line = mutated.split("\n")[self.line - 1].strip()
        self.room = path.split("/")[1]
        self.of_a_limit = path.startswith(LIMIT_ROOMS) and text[start:end] in LIMITS

    def in_header(self):
        return self.path.endswith(".h")

    def key(self):
        return self.path, self.old_line, self.new_line

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
    code = MAKES_ROOM.sub(lambda m: re.sub(r"[^\n;]", " ", m.group(0)), code)
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


LAST = 180  # seconds that one header may take
LIMITED = ("prlimit", f"--as={4 << 30}", "--")  # a changed loop may never end its allocations


class Runner:
    """The tree is built once, with a shared library for every room. A changed source is compiled beside the tree, into
    a copy of its room's library, and the test programs find that copy first: several can be judged side by side. That
    one file is compiled by clang++, without optimisation, with all of core's headers compiled before: about four times
    as quick as the build's own command. A changed header is judged by rebuilding the tree, with nothing beside it."""

    def __init__(self, work, log):
        self.work, self.tree, self.build, self.log = work, work / "tree", work / "build", log
        shutil.rmtree(work / "judges", ignore_errors=True)
        self.programs = []  # (folder, command, working folder, seconds)
        self.objects, self.link = {}, {}  # by source, by room
        self.compile = ["clang++-14", "-std=gnu++20", f"-I{self.tree}", "-w", "-O0", "-fPIC", "-D_GLIBCXX_ASSERTIONS",
                        "-ffp-contract=off"]

    def environment(self, place, libraries=None):
        for folder in (place / "home" / "tmp", place / "lib"):
            folder.mkdir(parents=True, exist_ok=True)
        kept = {name: value for name, value in os.environ.items() if not name.startswith("XDG_")}
        kept |= {"HOME": str(place / "home"), "TMPDIR": str(place / "home" / "tmp")}
        return kept | ({"LD_LIBRARY_PATH": str(libraries)} if libraries else {})

    def call(self, command, seconds, place, folder=None, libraries=None):
        """Exit status, or None when it took too long; its whole group is ended then."""
        words = ["sh", "-c", command] if isinstance(command, str) else command
        process = subprocess.Popen([*LIMITED, *words], cwd=folder or self.build,
                                   env=self.environment(place, libraries), stdin=subprocess.DEVNULL, stdout=self.log,
                                   stderr=subprocess.STDOUT, start_new_session=True)
        try:
            return process.wait(timeout=seconds)
        except subprocess.TimeoutExpired:
            return None
        finally:
            if process.poll() is None:
                os.killpg(process.pid, signal.SIGKILL)
                process.wait()

    def must(self, command):
        self.log.write(f"$ {' '.join(command)}\n")
        self.log.flush()
        if self.call(command, 3600, self.work / "judges") != 0:
            sys.exit(f"mutate: the unchanged tree does not build ({self.log.name})")

    def ask(self, *command):
        return subprocess.run(command, cwd=self.build, capture_output=True, encoding="utf-8", check=True).stdout

    def prepare(self):
        self.build.mkdir(parents=True, exist_ok=True)
        # As packaging/common.sh builds what begins with nothing; the rooms that are changed have their sources apart.
        self.must(["cmake", "-S", str(self.tree), "-B", str(self.build), "-G", "Ninja", "-DCMAKE_BUILD_TYPE=Mutants",
                   "-DSEAMCLOCK_PRECOMPILE=ON", "-DCMAKE_UNITY_BUILD=ON", "-DCMAKE_UNITY_BUILD_BATCH_SIZE=8"])
        judges = [path.parent.relative_to(self.tree).as_posix()
                  for path in sorted((self.tree / "tests").rglob("CMakeLists.txt"))
                  if is_judge(path.parent.relative_to(self.tree).as_posix())]
        self.targets = [f"{judge}/all" for judge in judges]
        self.must(["ninja", *self.targets])
        for entry in json.loads((self.build / "compile_commands.json").read_text(encoding="utf-8")):
            self.objects[Path(entry["file"]).resolve()] = re.search(r" -o (\S+) ", entry["command"]).group(1)
        for room in ROOMS:
            library = f"core/{room}/libseamclock_{room}.so"
            self.link[room] = library, self.ask("ninja", "-t", "commands", library).rstrip().split("\n")[-1]
        headers = sorted(path.relative_to(self.tree) for path in (self.tree / "core").glob("*/*.h"))
        (self.work / "core.h").write_text("".join(f'#include "{path}"\n' for path in headers), encoding="utf-8")
        self.must([*self.compile, "-fpch-instantiate-templates", "-x", "c++-header", str(self.work / "core.h"),
                   "-o", str(self.work / "core.pch")])
        found = {}
        for test in json.loads(self.ask("ctest", "--show-only=json-v1"))["tests"]:
            properties = {item["name"]: item["value"] for item in test.get("properties", [])}
            command = test.get("command")
            if not command or {"deep", "endure"} & set(properties.get("LABELS", [])):
                continue
            folder = properties.get("WORKING_DIRECTORY", str(self.build))
            place = os.path.relpath(folder, self.build)
            if is_judge(place):
                if any(word.startswith("--gtest_filter") for word in command):
                    found[command[0]] = (place, folder)
        def measured(program):
            place, folder = found[program]
            began = time.monotonic()
            command = [program, "--gtest_brief=1", "--gtest_fail_fast"]
            if self.call(command, 600, self.work / "judges" / Path(program).name, folder) != 0:
                sys.exit(f"mutate: {program} fails on the unchanged tree")
            return place, command, folder, time.monotonic() - began

        with concurrent.futures.ThreadPoolExecutor(os.cpu_count() or 2) as judges:
            self.programs = list(judges.map(measured, sorted(found)))
        if not self.programs:
            sys.exit("mutate: no test program of the rooms or in tests/standards")

    def noticed(self, mutant, place, libraries=None):
        # Its own room's tests first, and the long ones after all others.
        own = f"tests/core/{mutant.room}"
        for _, command, folder, seconds in sorted(self.programs, key=lambda p: (p[3] > 10, p[0] != own, p[3])):
            if self.call(command, 20 + 10 * seconds, place, folder, libraries) != 0:
                return "killed"
        return "survived"

    def judge(self, mutant, place):
        """"killed", "survived" or "refused" (by the compiler). `place`: a folder that no other judge uses."""
        path = self.tree / mutant.path
        original = path.read_text(encoding="utf-8")
        changed = original[:mutant.start] + mutant.new + original[mutant.end:]
        shutil.rmtree(place / "home", ignore_errors=True)
        if mutant.in_header():
            try:
                path.write_text(changed, encoding="utf-8")
                if self.call(["ninja", *self.targets], 900, place) != 0:
                    return "refused"
                return self.noticed(mutant, place)
            finally:
                path.write_text(original, encoding="utf-8")
        object_file = self.objects[path.resolve()]
        library, link_it = self.link[mutant.room]
        source, made = place / path.name, place / "changed.o"
        place.mkdir(parents=True, exist_ok=True)
        source.write_text(changed, encoding="utf-8")
        link_it = link_it.replace(f" -o {library} ", f" -o {shlex.quote(str(place / 'lib' / Path(library).name))} ")
        link_it = re.sub(rf"(?<= ){re.escape(object_file)}(?= )", lambda _: shlex.quote(str(made)), link_it)
        if self.call([*self.compile, "-include-pch", str(self.work / "core.pch"), "-c", str(source), "-o", str(made)],
                     300, place) != 0:
            return "refused"
        if self.call(link_it, 300, place) != 0:
            sys.exit(f"mutate: a changed room can't be linked ({self.log.name})")
        return self.noticed(mutant, place, place / "lib")

    def judge_all(self, mutants, began, deadline, told):
        """Judges until the time is over; `told(mutant, verdict)` hears of each. Headers, of which one takes as long as
        thirty sources, come last and have a fifth of the time, or what the sources leave. A source's limit that was not
        reached by then still has the time that a last header would have."""
        places = queue.SimpleQueue()
        for number in range(os.cpu_count() or 2):
            places.put(self.work / "judges" / str(number))

        def judge_until(end, mutant):
            if time.monotonic() > end:
                return
            place = places.get()
            try:
                told(mutant, self.judge(mutant, place))
            finally:
                places.put(place)

        headers = [mutant for mutant in mutants if mutant.in_header()]
        sources = [mutant for mutant in mutants if not mutant.in_header()]
        # What is not changed must pass, in every place at once: or each death would prove nothing.
        unchanged = [Mutant(path, (self.tree / path).read_text(encoding="utf-8"), 0, 0, "")
                     for path in dict.fromkeys(mutant.path for mutant in sources)][:places.qsize()]
        with concurrent.futures.ThreadPoolExecutor(places.qsize()) as judges:
            for mutant, verdict in zip(unchanged, judges.map(
                    lambda mutant, place: self.judge(mutant, self.work / "judges" / str(place)),
                    unchanged, range(len(unchanged)))):
                if verdict != "survived":
                    sys.exit(f"mutate: {mutant.path}, unchanged, was {verdict} ({self.log.name})")
        end = deadline - (deadline - began) / 5 if headers else deadline
        with concurrent.futures.ThreadPoolExecutor(places.qsize()) as judges:
            list(judges.map(lambda mutant: judge_until(deadline + LAST if mutant.of_a_limit else end, mutant), sources))
        for mutant in headers:
            judge_until(deadline, mutant)


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
    began = time.monotonic()
    deadline = began + 60 * options.minutes
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(143))  # so that what it started ends with it
    root = options.root.resolve()

    mutants = []
    for room in ROOMS:
        for path in sorted((root / "core" / room).glob("*.cpp")) + sorted((root / "core" / room).glob("*.h")):
            shown = path.relative_to(root).as_posix()
            if shown.startswith(options.only):
                mutants += mutants_of(shown, path.read_text(encoding="utf-8"))
    random.Random(options.seed).shuffle(mutants)
    mutants.sort(key=lambda mutant: not mutant.of_a_limit)
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
    (options.work / "mutate.log").unlink(missing_ok=True)
    count = {"killed": 0, "survived": 0, "refused": 0, "equivalent": 0}
    missed = []  # limits that no test notices
    limits = {mutant for mutant in mutants if mutant.of_a_limit and mutant.key() not in equivalents}
    left = set(limits)
    with open(options.work / "mutate.log", "a", encoding="utf-8") as log:
        runner = Runner(options.work.resolve(), log)
        runner.prepare()
        print(f"unchanged tree: {len(runner.programs)} test programs pass; {len(mutants)} places, seed {options.seed}",
              flush=True)

        def told(mutant, verdict):
            log.write(f"== {verdict}: {mutant.text()}\n")
            log.flush()
            count[verdict] += 1
            left.discard(mutant)
            if verdict == "survived":
                if mutant in limits:
                    missed.append(mutant)
                print(f"survived{', a limit' if mutant in limits else ''}: {mutant.text()}", flush=True)

        known = [mutant for mutant in mutants if mutant.key() in equivalents]
        runner.judge_all([mutant for mutant in mutants if mutant.key() not in equivalents], began, deadline, told)
    count["equivalent"] = len(known)
    tried = count["killed"] + count["survived"]
    print(f"mutants: {tried} judged, {count['killed']} killed, {count['survived']} survived; "
          f"{count['refused']} refused by the compiler, {count['equivalent']} of all known to change nothing")
    if tried == 0:
        sys.exit("mutate: no mutant was judged in the time given")
    print(f"limits: {len(limits) - len(left)} of {len(limits)} judged")
    for mutant in sorted(left, key=Mutant.text):
        print(f"left: {mutant.text()}")
    sys.exit(1 if missed or left else 0)


if __name__ == "__main__":
    main()
