"""dependencies_test.py ROOT: each package of packaging/packages.txt stands by its name in a table of
docs/dependencies.md. First what finds that is tried on examples."""
import re
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
    packages = installed((root / "packaging" / "packages.txt").read_text(encoding="utf-8"))
    page = (root / "docs" / "dependencies.md").read_text(encoding="utf-8")
    wrong += [f"docs/dependencies.md has no row for {name}, which packaging/packages.txt installs"
              for name in missing(packages, page)]
    if len(packages) < 30:
        wrong.append(f"only {len(packages)} packages were found")
    print("\n".join(wrong) if wrong else f"dependencies: {len(packages)} packages, 0 findings")
    sys.exit(1 if wrong else 0)


main()
