"""installed.py BUILD CMAKE VERSION: installs a finished build below a temporary prefix and looks for each thing that a
person needs of it; then starts the programs from there. That they read what lies beside them, and not the sources they
were built from, shows by what is changed in the prefix: a procedure taken away, a word written into the guide."""
import os
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

APP = "org.example.Seamclock"
# A pattern each, of which something must be there and hold something. Man pages are packed where gzip is there, icons are
# painted where rsvg-convert is.
WANTED = [
    "bin/seamclock", "bin/seamclock-cli", "bin/seamclock-horn",
    "share/seamclock/guide/01-cautions.md", "share/seamclock/guide/02-install-to-sealed-day.md",
    "share/seamclock/procedures/pp-dvs2207-11.json", "share/seamclock/materials/*.json",
    "share/seamclock/lessons/*.json", "share/seamclock/demo/job-*.json",
    f"share/applications/{APP}.desktop", f"share/metainfo/{APP}.metainfo.xml",
    "share/icons/hicolor/scalable/apps/seamclock.svg",
    "share/doc/seamclock/copyright", "share/doc/seamclock/README.md", "share/doc/seamclock/dependencies.md",
    "share/doc/seamclock/licences/seamclock.txt",
    "share/man/man1/seamclock.1*", "share/man/man1/seamclock-cli.1*", "share/man/man1/seamclock-horn.1*",
]
WORD = "Quillmerevat"   # of no language


def clean(home):
    """The environment of somebody who has no sources and no settings."""
    kept = {key: value for key, value in os.environ.items() if not re.match(r"XDG_|SEAMCLOCK_", key)}
    return {**kept, "HOME": str(home), "QT_QPA_PLATFORM": "offscreen", "LC_ALL": "C.UTF-8"}


def main():
    build, cmake, version = sys.argv[1:]
    wrong = []
    with tempfile.TemporaryDirectory() as folder:
        prefix, home = Path(folder) / "a prefix", Path(folder) / "home"
        home.mkdir()
        put = subprocess.run([cmake, "--install", build, "--prefix", prefix], capture_output=True, text=True, check=False)
        if put.returncode != 0:
            sys.exit(f"cmake --install ended with {put.returncode}: {put.stderr}")
        wrong += [f"nothing is at {wanted}" for wanted in WANTED
                  if not any(path.stat().st_size > 0 for path in prefix.glob(wanted))]
        if shutil.which("rsvg-convert") and not list(prefix.glob("share/icons/hicolor/48x48/apps/seamclock.png")):
            wrong.append("no icon of 48x48 is there")
        licence = prefix / "share/doc/seamclock/licences/seamclock.txt"
        if licence.is_file() and "GNU GENERAL PUBLIC LICENSE" not in licence.read_text(encoding="utf-8")[:200].upper():
            wrong.append("licences/seamclock.txt is no GPL")

        def told(program, *options):
            ran = subprocess.run([prefix / "bin" / program, *options], capture_output=True, text=True, check=False,
                                 env=clean(home), cwd=home, stdin=subprocess.DEVNULL)
            if ran.returncode != 0:
                wrong.append(f"{program} {' '.join(map(str, options))} ended with {ran.returncode}: {ran.stderr}")
            return ran.stdout

        for program in ("seamclock", "seamclock-cli"):
            if version not in told(program, "--version"):
                wrong.append(f"{program} --version does not say {version}")
        if "pvdf-dvs2207-15" not in told("seamclock-cli", "procedures"):
            wrong.append("the procedures that were installed are not found")
        (prefix / "share/seamclock/procedures/pvdf-dvs2207-15.json").unlink(missing_ok=True)
        if "pvdf-dvs2207-15" in told("seamclock-cli", "procedures"):
            wrong.append("the procedures come from elsewhere than from beside the program")
        told("seamclock-cli", "rehearse", "--seed", "7", "--log", home / "practice.seamlog")
        told("seamclock-cli", "heat", "--procedure", "pp-dvs2207-11", "--thickness", "10")
        chapter = prefix / "share/seamclock/guide/01-cautions.md"
        if chapter.is_file():
            chapter.write_text(chapter.read_text(encoding="utf-8") + f"\n{WORD}\n", encoding="utf-8")
        told("seamclock", "--guide", home / "guide.pdf")
        read = subprocess.run(["pdftotext", home / "guide.pdf", "-"], capture_output=True, text=True, check=False)
        if WORD not in read.stdout:
            wrong.append(f"the guide is not the one beside the program {read.stderr}")
    print("\n".join(wrong) if wrong else f"install: {len(WANTED)} things and the programs, 0 findings")
    sys.exit(1 if wrong else 0)


main()
