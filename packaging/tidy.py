"""clang-tidy 14 over one third of the files that the build compiles, two at a time; any warning fails.

The list is in .clang-tidy. All files, with Qt's headers in most, would take longer than a stage may: what is left of the
commit count by three says which third, so that three runs of the stage, which come seven commits apart, read every file.
"all" as the third word reads all of them in one run.
"""
import json
import os
import re
import subprocess
import sys
import time
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path


def main():
    root, folder = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
    commands = json.loads((folder / "compile_commands.json").read_text(encoding="utf-8"))
    files = sorted({command["file"] for command in commands if Path(command["file"]).is_relative_to(root)})
    files = [file for file in files if not Path(file).is_relative_to(root / "build")]
    if sys.argv[3] != "all":
        files = files[int(sys.argv[3]) % 3::3]
    if not files:
        sys.exit("clang-tidy: nothing to read")
    headers = "^" + re.escape(str(root)) + "/(core|app|tests)/"

    def tidy(file):
        began = time.monotonic()
        done = subprocess.run(
            ["clang-tidy-14", "-p", str(folder), "--quiet", "--warnings-as-errors=*", f"--header-filter={headers}", file],
            capture_output=True, encoding="utf-8")
        return file, done.returncode, done.stdout + (done.stderr if done.returncode else ""), time.monotonic() - began

    said, bad = set(), 0
    with ThreadPoolExecutor(max(2, os.cpu_count() or 2)) as pool:
        for file, status, output, took in pool.map(tidy, files):
            print(f"{Path(file).relative_to(root)}: {'ok' if status == 0 else 'warnings'}, {took:.0f} s")
            if status:
                bad += 1
                for line in output.splitlines():
                    if line not in said and not re.match(r"\d+ warnings? (generated|treated)", line):
                        print(line)
                        if "error:" in line:
                            said.add(line)
            sys.stdout.flush()
    print(f"clang-tidy: {len(files)} files, {bad} with warnings, {len(said)} different warnings")
    sys.exit(1 if bad else 0)


main()
