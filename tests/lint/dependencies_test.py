"""dependencies_test.py ROOT: each package of packaging/packages.txt stands by its name in a table of
docs/dependencies.md, each row has its version, licence, reason and what would replace it, and on Debian 12 the versions
are those that are installed. First what finds that is tried on examples."""
import re
import subprocess
import sys
from pathlib import Path


def installed(packages):
    """The names in packages.txt."""
    return [line.split()[0] for line in packages.splitlines() if line.strip() and line[0] not in "#["]


def named(page):
    """The names in the first column of the page's tables; "libqt6core6, -gui6" are libqt6core6 and libqt6gui6."""
    found = set()
    for row in re.findall(r"^\| ([^|]+) \|", page, re.MULTILINE):
        before = ""
        for word in re.findall(r"-?[\w+.][\w+.-]*", row):
            family = re.match(r"lib[a-z]+\d", before)
            name = family.group(0) + word[1:] if word.startswith("-") and family else word
            found.add(name)
            before = name if name.startswith("lib") else before
    return found


def missing(names, page):
    return [name for name in names if name not in named(page)]


def rows(page):
    """The rows of the page's tables, without their heads."""
    found = [[cell.strip() for cell in line.strip().strip("|").split("|")]
             for line in page.splitlines() if line.startswith("|")]
    return [row for row in found if row[0] != "package" and not re.fullmatch(r"-+", row[0])]


def blanks(page):
    """What a row leaves open: five cells, with a word each, and a number in the one of the version."""
    found = []
    for row in rows(page):
        if len(row) != 5:
            found.append(f"{row[0]}: {len(row)} cells, not 5")
        elif not all(re.search(r"[A-Za-z0-9]", cell) for cell in row):
            found.append(f"{row[0]}: an empty cell")
        elif not re.search(r"\d", row[1].replace("Debian 12", "")):
            found.append(f"{row[0]}: no version")
    return found


def other_versions(page, versions):
    """Versions of the page that none of the row's packages has; `versions`: of what is installed, by name."""
    found = []
    for row in rows(page):
        names = named("| " + re.sub(r"\([^)]*\)|\bor\b", "", row[0]) + " |")
        known = [re.sub(r"^\d+:", "", versions[name]) for name in sorted(names) if name in versions]
        if len(known) < len(names) or len(row) != 5:
            continue   # one of them is not installed here
        found += [f"{row[0]}: {told} is not of {', '.join(known)}" for told in re.findall(r"\d+(?:\.\d+)+", row[1])
                  if not any(re.match(re.escape(told) + r"(?!\d)", version) for version in known)]
    return found


def debian_versions():
    """Of every installed package; empty where it is another system than Debian 12."""
    try:
        if 'VERSION_ID="12"' not in Path("/etc/os-release").read_text(encoding="utf-8"):
            return {}
        told = subprocess.run(["dpkg-query", "-W", "-f", "${Package} ${Version} ${db:Status-Status}\n"],
                              capture_output=True, text=True, check=False).stdout
    except OSError:
        return {}
    return {line.split()[0]: line.split()[1] for line in told.splitlines() if line.endswith(" installed")}


TABLE = ("| package | version | licence | what for | what would replace it |\n|---|---|---|---|---|\n"
         "| a, b | 1.2, 3.4 | MIT | x | y |\n| c | – | MIT | x | y |\n| d | Debian 12's | MIT | x | y |\n| e | 1 | x |\n")
PAGE = "| package | why |\n|---|---|\n| libqt6core6, -gui6 | screens |\n| g++, clang-14 | building |\n\nAlso cmake.\n"
EXAMPLES = [
    (["libqt6core6", "libqt6gui6", "g++", "clang-14"], []),
    (["libqt6widgets6", "clang", "cmake"], ["libqt6widgets6", "clang", "cmake"]),
]


def main():
    root = Path(sys.argv[1])
    wrong = [f"{names}: found missing {missing(names, PAGE)}, not {wanted}"
             for names, wanted in EXAMPLES if missing(names, PAGE) != wanted]
    if installed("# why\n[run]\ng++    the compiler\n\ncmake\n") != ["g++", "cmake"]:
        wrong.append("packages.txt is read wrongly")
    if blanks(TABLE) != ["c: an empty cell", "d: no version", "e: 3 cells, not 5"]:
        wrong.append(f"of the example's blanks were found {blanks(TABLE)}")
    if other_versions(TABLE, {"a": "1:1.2.3-4", "b": "3.40-1"}) != ["a, b: 3.4 is not of 1.2.3-4, 3.40-1"]:
        wrong.append(f"of the example's versions were found {other_versions(TABLE, {'a': '1:1.2.3-4', 'b': '3.40-1'})}")
    packages = installed((root / "packaging" / "packages.txt").read_text(encoding="utf-8"))
    page = (root / "docs" / "dependencies.md").read_text(encoding="utf-8")
    wrong += [f"docs/dependencies.md has no row for {name}, which packaging/packages.txt installs"
              for name in missing(packages, page)]
    wrong += [f"docs/dependencies.md: {blank}" for blank in blanks(page)]
    wrong += [f"docs/dependencies.md: {other}" for other in other_versions(page, debian_versions())]
    if len(packages) < 30:
        wrong.append(f"only {len(packages)} packages were found")
    print("\n".join(wrong) if wrong else f"dependencies: {len(packages)} packages, 0 findings")
    sys.exit(1 if wrong else 0)


main()
