"""What the lints share: which files there are, C++ text without comments and strings, and the closing line.

Every lint is started as `python3 NAME.py [ROOT]`, prints `file:line: rule: what is wrong` per finding and ends with
how much it read. It exits 1 on any finding, and also when it found nothing to read: a lint that looks in the wrong
place must not pass.
"""
import os
import re
import sys
from pathlib import Path

CPP = (".h", ".cpp")
LEFT_OUT = {"build", ".git", "__pycache__"}

_TOKEN = re.compile(
    r"""
      (?P<comment>//(?:[^\n\\]|\\.|\\\n)*|/\*.*?\*/)
    | (?P<raw>\b(?:u8|[uUL])?R"(?P<mark>[^()\\\s]{0,16})\(.*?\)(?P=mark)")
    | (?P<string>"(?:[^"\\\n]|\\.|\\\n)*")
    | (?P<number>\b[0-9][0-9a-zA-Z_.']*)
    | (?P<char>'(?:[^'\\\n]|\\.)+')
    """,
    re.VERBOSE | re.DOTALL,
)


def _blank(text):
    return re.sub(r"[^\n]", " ", text)


def blank_out(text, comments=True, strings=True):
    """The same text, same lines and columns, with comments and/or the insides of literals blanked."""

    def replace(match):
        whole = match.group(0)
        if match.lastgroup == "number":
            return whole
        if match.group("comment") is not None:
            return _blank(whole) if comments else whole
        if not strings:
            return whole
        opening = re.search(r"[\"']", whole).end()
        return whole[:opening] + _blank(whole[opening:-1]) + whole[-1]

    return _TOKEN.sub(replace, text)


def code_of(text):
    """C++ with comments and the insides of literals blanked; #include lines keep their quoted path."""
    bare = blank_out(text).split("\n")
    kept = blank_out(text, strings=False).split("\n")
    return "\n".join(k if re.match(r"\s*#\s*include\b", k) else b for b, k in zip(bare, kept))


def line_of(text, offset):
    return text.count("\n", 0, offset) + 1


class Lint:
    def __init__(self, name, argv):
        self.name = name
        self.root = Path(argv[1] if len(argv) > 1 else Path(__file__).resolve().parents[2]).resolve()
        self.findings = []
        self.read_count = 0

    def files(self, folders, suffixes):
        for folder in folders:
            top = self.root / folder
            if top.is_file():
                yield top
                continue
            # Left-out folders are not entered at all: tests that run beside this one make and remove files in build/.
            found = []
            for here, inner, names in os.walk(top):
                inner[:] = [name for name in inner if name not in LEFT_OUT]
                found += [Path(here) / name for name in names if name not in LEFT_OUT]
            for path in sorted(found):
                if path.is_file() and (suffixes is None or path.suffix in suffixes):
                    yield path

    def shown(self, path):
        return path.relative_to(self.root).as_posix()

    def read(self, path):
        self.read_count += 1
        try:
            return path.read_text(encoding="utf-8")
        except UnicodeDecodeError as error:
            self.find(path, 1, "not_utf8", f"byte {error.start} is not UTF-8")
            return ""

    def find(self, path, line, rule, text):
        self.findings.append(f"{self.shown(path)}:{line}: {rule}: {text}")

    def finish(self):
        for finding in self.findings:
            print(finding)
        if self.read_count == 0:
            print(f"{self.name}: scanned nothing under {self.root.name}/")
            sys.exit(1)
        print(f"{self.name}: {self.read_count} files read, {len(self.findings)} findings")
        sys.exit(1 if self.findings else 0)
