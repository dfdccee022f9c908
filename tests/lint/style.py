"""Style that neither the compiler nor clang-format sees, and what must never be in a committed file."""
import re
import sys

from source_files import CPP, Lint, blank_out, code_of, line_of

COLUMNS = 100
TEXT = (".h", ".cpp", ".py", ".cmake", ".txt", ".md", ".json", ".sh", ".sql", ".csv", ".yml", ".yaml", ".service",
        ".desktop", ".xml", "")
OWN_NAMES = {"CMakeLists.txt", "README.md"}
UNFINISHED = re.compile(r"\b(?:TO" r"DO|FIX" r"ME|X" r"XX|HA" r"CK)\b")
MACHINE_PATH = re.compile(r"(?<![\w.$}/~-])/(?:ho" r"me|ro" r"ot|t" r"mp|wo" r"rk|mnt|srv|Users)/[\w.-]")
HOST = re.compile(r"\b(?:https?|ssh|git)://(?:[\w.-]*\.)?(?:deb\.deb" r"ian\.org|py" r"pi\.org|npm" r"js\.org"
                  r"|[\w.-]*(?:registry|artifact|mirror|proxy)[\w.-]*|localhost|(?:\d{1,3}\.){3}\d{1,3})\b")


def raw_string_lines(text):
    """The lines inside a raw string, which can't be broken."""
    with_strings = blank_out(text, strings=False)
    lines = set()
    for match in re.finditer(r'R"([^()\\\s]{0,16})\(.*?\)\1"', with_strings, re.DOTALL):
        lines.update(range(line_of(text, match.start()), line_of(text, match.end()) + 1))
    return lines


def matching_brace(code, opening):
    depth = 0
    for index in range(opening, len(code)):
        depth += {"{": 1, "}": -1}.get(code[index], 0)
        if depth == 0:
            return index
    return len(code)


def check_defaults(lint, path, shown, code):
    if shown.startswith("core/"):
        for match in re.finditer(r"\bdefault\s*:(?!:)", code):
            lint.find(path, line_of(code, match.start()), "default_label", "core has no default label")
        return
    for switch in re.finditer(r"\bswitch\s*\(", code):
        opening = code.find("{", switch.end())
        if opening < 0:
            continue
        body = code[opening:matching_brace(code, opening)]
        default = re.search(r"\bdefault\s*:(?!:)", body)
        if default and re.search(r"\bcase\s+(?:\w+::)+\w+\s*:", body):
            lint.find(path, line_of(code, opening + default.start()), "default_label", "an enum switch has no default")


def check_cpp(lint, path, shown, text):
    code = code_of(text)
    raw = raw_string_lines(text)
    if path.suffix == ".h":
        first = next((line for line in code.split("\n") if line.strip()), "")
        if first.strip() != "#pragma once":
            lint.find(path, 1, "pragma_once", "the first line of code is not #pragma once")
    own = path.with_suffix(".h")
    if path.suffix == ".cpp" and shown.startswith(("core/", "app/")) and own.is_file():
        included = re.search(r'^\s*#\s*include\s*[<"]([^>"]+)', text, re.MULTILINE)
        if included is None or included.group(1) != lint.shown(own):
            line = 1 if included is None else line_of(text, included.start(1))
            lint.find(path, line, "own_header_first", f'the first header is not "{lint.shown(own)}", which that proves')
    for number, line in enumerate(text.split("\n"), 1):
        if "\t" in line:
            lint.find(path, number, "tab", "a tab")
        if line != line.rstrip() and number not in raw:
            lint.find(path, number, "trailing_space", "space at the end of the line")
        unbreakable = number in raw or "://" in line or line.startswith("#include")
        if len(line) > COLUMNS and not unbreakable:
            lint.find(path, number, "columns", f"{len(line)} columns, {COLUMNS} at most")
    if text and not text.endswith("\n"):
        lint.find(path, text.count("\n") + 1, "last_newline", "no newline at the end of the file")
    check_defaults(lint, path, shown, code)
    for match in re.finditer(r"\bGTEST_SKIP\s*\(\s*\)(?!\s*<<)", code):
        lint.find(path, line_of(code, match.start()), "skip_without_reason", "GTEST_SKIP() gives no reason")
    for match in re.finditer(r"\bTEST(?:_F|_P)?\s*\([^)]*\bDISABLED_", code):
        lint.find(path, line_of(code, match.start()), "disabled_test", "a test that never runs")
    for match in re.finditer(r"//[^\n]*\bNOLINT(?:NEXTLINE|BEGIN)?\b([^\n]*)", text):
        if not re.match(r"\([\w.,* -]+\):? *[^\s(].{5,}", match.group(1)):
            lint.find(path, line_of(text, match.start()), "nolint_without_reason", "NOLINT names no check and reason")


def check_built(lint):
    """Every source is named in the CMakeLists.txt of its folder or one above: explicit lists, nothing forgotten."""
    for path in lint.files(["core", "app", "tests"], CPP):
        if path.suffix == ".h" and not lint.shown(path).startswith("core/"):
            continue
        folder, named = path.parent, False
        while folder != lint.root and not named:
            cmake = folder / "CMakeLists.txt"
            if cmake.is_file():
                inside = re.escape(path.relative_to(folder).as_posix())
                named = re.search(rf"(?<![\w./-]){inside}(?![\w.])", cmake.read_text(encoding="utf-8")) is not None
            folder = folder.parent
        if not named:
            lint.find(path, 1, "not_built", "no CMakeLists.txt names this file")


def main():
    lint = Lint("style", sys.argv)
    for path in lint.files(["."], TEXT):
        shown = lint.shown(path)
        text = lint.read(path)
        for pattern, rule, why in ((UNFINISHED, "unfinished", "finish it or file it"),
                                   (MACHINE_PATH, "machine_path", "a path of one machine"),
                                   (HOST, "host", "a host of one machine or registry")):
            for match in pattern.finditer(text):
                lint.find(path, line_of(text, match.start()), rule, f'"{match.group(0)}": {why}')
        if shown.startswith(("core/", "app/", "tests/")) and path.name not in OWN_NAMES:
            if path.suffix in CPP + (".py",) and not re.fullmatch(r"[a-z][a-z0-9_]*\.\w+", path.name):
                lint.find(path, 1, "file_name", "file names are snake_case")
        if path.suffix in CPP:
            check_cpp(lint, path, shown, text)
    check_built(lint)
    lint.finish()


main()
