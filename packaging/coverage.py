"""Line coverage of core, by room, from the .gcda files of a --coverage build (gcov of the same g++).

A line counts once however many units compile it (headers, templates), and is reached if any of them reached it.
"""
import json
import os
import subprocess
import sys
from pathlib import Path


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


def main():
    root, folder = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
    data = sorted(str(path) for path in folder.rglob("*.gcda"))
    if not data:
        sys.exit("coverage: no .gcda file: nothing was measured")
    lines = {}
    for start in range(0, len(data), 20):
        for report in gcov(data[start:start + 20]):
            for source in report["files"]:
                path = Path(os.path.normpath(os.path.join(report["current_working_directory"], source["file"])))
                if not path.is_relative_to(root / "core"):
                    continue
                counts = lines.setdefault(path.relative_to(root).as_posix(), {})
                for line in source["lines"]:
                    number = line["line_number"]
                    counts[number] = max(counts.get(number, 0), line["count"])
    rooms = {}
    for name, counts in lines.items():
        room = rooms.setdefault(name.split("/")[1], [0, 0])
        room[0] += sum(1 for count in counts.values() if count)
        room[1] += len(counts)
    if not rooms:
        sys.exit("coverage: no line of core was measured")
    print("line coverage of core:")
    for room, (reached, all_lines) in sorted(rooms.items()):
        print(f"  {room:<12}{100 * reached / all_lines:5.1f} %  {reached} of {all_lines} lines")
    reached, all_lines = (sum(column) for column in zip(*rooms.values()))
    print(f"  {'core':<12}{100 * reached / all_lines:5.1f} %  {reached} of {all_lines} lines")
    for name, counts in sorted(lines.items()):
        missed = sorted(number for number, count in counts.items() if not count)
        if missed:
            print(f"  not reached, {name}: {ranges(missed)}")


def ranges(numbers):
    parts, start, last = [], numbers[0], numbers[0]
    for number in numbers[1:] + [None]:
        if number != last + 1 if number is not None else True:
            parts.append(str(start) if start == last else f"{start}-{last}")
            start = number
        last = number
    return ", ".join(parts)


main()
