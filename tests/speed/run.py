"""Prints how long the pieces of a weld take, as ratios of two measurements of the same run.

    python3 tests/speed/run.py BUILD_FOLDER

Times differ from machine to machine and from hour to hour; ratios hardly do. Nothing here passes or fails.
"""
import json
import subprocess
import sys
from pathlib import Path

# (what, measured, beside what)
RATIOS = [
    ("folding 60 stored events, to parsing their JSON", "foldEvents", "parseBodies"),
    ("applying 60 events one by one, to folding them", "applyEvents", "foldEvents"),
    ("record and verdict of a weld, to folding it", "judge", "foldEvents"),
    ("printing a record as JSON, to parsing its events", "printRecord", "parseBodies"),
    ("writing 60 bodies, to parsing them", "writeBodies", "parseBodies"),
    ("chaining 60 rows, to one bare SHA-256 of their bytes", "chainHashes", "bareHash"),
    ("a plan, to reading its procedure", "makeOnePlan", "readProcedureText"),
]


def main():
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    program = Path(sys.argv[1]) / "bin" / "speed"
    if not program.is_file():
        sys.exit(f"{program} is not there: build the target \"speed\" first")
    answer = subprocess.run([program, "--benchmark_format=json", "--benchmark_min_time=0.2"], check=True,
                            capture_output=True, text=True)
    took = {one["name"]: one["cpu_time"] for one in json.loads(answer.stdout)["benchmarks"]}
    for what, measured, beside in RATIOS:
        print(f"{took[measured] / took[beside]:8.2f}  {what}  ({took[measured] / 1e3:.1f} / {took[beside] / 1e3:.1f} µs)")


main()
