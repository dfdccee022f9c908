"""Writes a program's man page: docs/man/NAME.man, with its line "@OPTIONS@" replaced by what the program's own --help
says of every command and option, so that page and program can't differ.

    python3 packaging/man.py PROGRAM PAGE.man VERSION DATE > PAGE.1
"""
import os
import re
import subprocess
import sys
from pathlib import Path


def help_of(program, words):
    env = dict(os.environ, QT_QPA_PLATFORM="offscreen", LC_ALL="C.UTF-8", COLUMNS="1000")
    done = subprocess.run([program, *words, "--help"], capture_output=True, encoding="utf-8", env=env, timeout=60)
    if done.returncode != 0:
        sys.exit(f"man: \"{' '.join([program, *words, '--help'])}\" ended with {done.returncode}: {done.stderr.strip()}")
    return done.stdout


def parts_of(text):
    """The intro and the lists of a help text: {"Options": [(term, sentence)], …}."""
    intro, lists, current = [], {}, None
    for line in text.splitlines():
        headline = re.fullmatch(r"([A-Z][a-z]+):", line)
        if headline:
            current = lists.setdefault(headline.group(1), [])
            continue
        if current is None:
            intro.append(line)
            continue
        entry = re.match(r"  (\S.*?)(?:\s{2,}(\S.*))?$", line)
        if entry and not line.startswith("   "):
            current.append([entry.group(1), entry.group(2) or ""])
        elif line.strip() and current:
            current[-1][1] = (current[-1][1] + " " + line.strip()).strip()
    return intro, lists


def roff(text):
    text = text.replace("\\", "\\e").replace("-", "\\-")
    return "\\&" + text if text[:1] in ".'" else text


def term(text):
    """"--log TEXT REQUIRED" as bold name and italic value."""
    words, needed = [], False
    for word in re.sub(r"<([^>]*)>", r"\1", text).split():
        if word == "REQUIRED":
            needed = True
        elif word.startswith("-"):
            words.append("\\fB" + roff(word) + "\\fR")
        else:
            if word == "TEXT" and words and not words[-1].startswith("\\fB"):
                continue   # an argument has a name already
            words.append("\\fI" + roff(word if word != "TEXT" else "VALUE") + "\\fR")
    return " ".join(words) + (" (needed)" if needed else "")


def entries(rows, out):
    for name, sentence in rows:
        if name.startswith(("-h", "--help-all")):
            continue
        out += [".TP", term(name), roff(sentence) or "\\&"]


def command(program, words, out):
    intro, lists = parts_of(help_of(program, words))
    if words:
        out += [".SS " + roff(" ".join(words)), roff(intro[0])]
    entries(lists.get("Positionals", []), out)
    entries(lists.get("Arguments", []), out)
    entries(lists.get("Options", []), out)
    for name, _ in lists.get("Subcommands", []):
        command(program, [*words, name], out)


def main():
    program, page, version, date = sys.argv[1:]
    out = []
    command(program, [], out)
    if len(out) < 6:
        sys.exit(f"man: \"{program} --help\" names no option")
    text = Path(page).read_text(encoding="utf-8")
    if "@OPTIONS@\n" not in text:
        sys.exit(f"man: {page} has no line @OPTIONS@")
    print(text.replace("@OPTIONS@\n", "\n".join(out) + "\n").replace("@VERSION@", version).replace("@DATE@", date), end="")


main()
