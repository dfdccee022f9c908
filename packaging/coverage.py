"""coverage.py ROOT BUILD_FOLDER core|app [--rooms REGEX] [--least PERCENT] [--keep FILE COMMIT SIXTH OF] [--missed FILE]

Line coverage of core or of app, by room, from the .gcda files of a --coverage build (gcov of the same g++).

A line counts once however many units compile it (headers, templates), and is reached if any of them reached it. What
moc and rcc made is not ours and lies in the build folder; nor is a line that only asks moc for something.
The stage measures by sixths, each with the rooms that it builds; --keep keeps what was reached in FILE and counts what
other sixths reached at the same commit, too. --missed writes the lines that nothing reached. --least is asked of the rooms
that REGEX finds ("core/weld"), together; below it the answer is 1. With --keep it is asked once all of the sixths that judge
that part of the sources (OF: "0,2,4,5") have run at this commit, since a room is reached by the tests of others, too.
"""
import argparse
import json
import os
import re
import subprocess
import sys
from pathlib import Path

OF_MOC = re.compile(rb"\s*(Q_OBJECT|Q_GADGET|Q_DECLARE_TR_FUNCTIONS\(\w+\))\s*$")


def gcov(batch):
    done = subprocess.run(["gcov", "--json-format", "--stdout", *batch], capture_output=True, encoding="utf-8")
    if done.returncode != 0:
        sys.exit(f"gcov failed: {done.stderr.strip().splitlines()[-1]}")
    decoder, text, at = json.JSONDecoder(), done.stdout, 0
    while at < len(text):
        if text[at].isspace():
            at += 1
            continue
        report, at = decoder.raw_decode(text, at)
        yield report


def data_files(folder, part):
    """No unit of core includes a file of app."""
    for path in sorted(folder.rglob("*.gcda")):
        below = path.relative_to(folder).as_posix()
        if part == "core" or not below.startswith(("core/", "tests/core/")):
            yield str(path)


def measured(root, folder, part):
    """{file: {line: how often}} of that part of the sources."""
    data = list(data_files(folder, part))
    if not data:
        sys.exit("coverage: no .gcda file: nothing was measured")
    lines = {}
    for start in range(0, len(data), 20):
        for report in gcov(data[start:start + 20]):
            for source in report["files"]:
                path = Path(os.path.normpath(os.path.join(report["current_working_directory"], source["file"])))
                if not path.is_relative_to(root / part):
                    continue
                counts = lines.setdefault(path.relative_to(root).as_posix(), {})
                for line in source["lines"]:
                    number = line["line_number"]
                    counts[number] = max(counts.get(number, 0), line["count"])
    for name, counts in lines.items():
        for number, line in enumerate((root / name).read_bytes().splitlines(), start=1):
            if number in counts and OF_MOC.match(line):
                del counts[number]
    return lines


def joined(lines, kept, commit, sixth):
    """Both together and the sixths they are of, where all are of one commit; "… with changes" and "no commit" name none."""
    sixths = {sixth}
    if kept.is_file():
        before = json.loads(kept.read_text(encoding="utf-8"))
        if before["commit"] == commit and " " not in commit:
            sixths.update(before.get("sixths", []))
            for name, counts in before["lines"].items():
                mine = lines.setdefault(name, {})
                for number, count in counts.items():
                    mine[int(number)] = max(mine.get(int(number), 0), count)
    kept.write_text(json.dumps({"commit": commit, "sixths": sorted(sixths), "lines": lines}), encoding="utf-8")
    return lines, sixths


def by_room(lines, part):
    """{room: [lines reached, lines]}; what lies in no room is the part's own."""
    rooms = {}
    for name, counts in lines.items():
        inside = name.split("/")[1:]
        room = rooms.setdefault(inside[0] if len(inside) > 1 else part, [0, 0])
        room[0] += sum(1 for count in counts.values() if count)
        room[1] += len(counts)
    rooms = {room: numbers for room, numbers in rooms.items() if numbers[1]}
    if not rooms:
        sys.exit(f"coverage: no line of {part} was measured")
    return rooms


def table(rooms, part):
    """The rows by room, and the whole."""
    whole = [sum(column) for column in zip(*rooms.values())]
    rows = [f"line coverage of {part}:"]
    for room, (reached, all_lines) in [*sorted((r, n) for r, n in rooms.items() if r != part), (part, whole)]:
        rows.append(f"  {room:<12}{100 * reached / all_lines:5.1f} %  {reached} of {all_lines} lines")
    return rows


def asked_of(rooms, part, names, least):
    """What the rooms that were judged reach together, in a sentence, and whether it is enough."""
    judged = {room: numbers for room, numbers in rooms.items() if re.search(names, f"{part}/{room}")}
    reached, lines = (sum(column) for column in zip(*judged.values())) if judged else (0, 0)
    if not lines:
        sys.exit(f"coverage: no room of {part} is found by {names}")
    share = 100 * reached / lines
    return f"  of {', '.join(sorted(judged))} together {share:.1f} %, at least {least:g} % asked", share >= least


def missed(lines):
    for name, counts in sorted(lines.items()):
        numbers = sorted(number for number, count in counts.items() if not count)
        if numbers:
            yield f"not reached, {name}: {ranges(numbers)}"


def ranges(numbers):
    parts, start, last = [], numbers[0], numbers[0]
    for number in numbers[1:] + [None]:
        if number is None or number != last + 1:
            parts.append(str(start) if start == last else f"{start}-{last}")
            start = number
        last = number
    return ", ".join(parts)


def main():
    asked = argparse.ArgumentParser(description="Line coverage of core or of app, by room.")
    asked.add_argument("root", type=Path)
    asked.add_argument("folder", type=Path)
    asked.add_argument("part", choices=["core", "app"])
    asked.add_argument("--rooms", metavar="REGEX", default="")
    asked.add_argument("--least", type=float, metavar="PERCENT")
    asked.add_argument("--keep", nargs=4, metavar=("FILE", "COMMIT", "SIXTH", "OF"))
    asked.add_argument("--missed", type=Path, metavar="FILE")
    given = asked.parse_args()
    lines = measured(given.root.resolve(), given.folder.resolve(), given.part)
    missing = set()
    if given.keep:
        kept, commit, sixth, of = given.keep
        lines, sixths = joined(lines, Path(kept), commit, sixth)
        missing = set(of.split(",")) - sixths
    print("\n".join(table(by_room(lines, given.part), given.part)))
    if given.missed:
        given.missed.write_text("".join(line + "\n" for line in missed(lines)), encoding="utf-8")
    if missing:
        print(f"  not whole: the sixths {', '.join(sorted(missing))} did not run at this commit")
    elif given.least is not None:
        sentence, enough = asked_of(by_room(lines, given.part), given.part, given.rooms, given.least)
        print(sentence)
        return 0 if enough else 1
    return 0


sys.exit(main())
