"""links_test.py ROOT: each link of our Markdown pages that leads into the sources leads to something that is there, and
each page of docs/design is named by its README. The guide's pictures are painted by the build (help_test holds
their names). First what finds that is tried on examples."""
import re
import sys
from pathlib import Path

LEFT_OUT = {"build", ".git"}


def links(page):
    """Where the links of a page lead, but those to the web or within the page."""
    found = re.findall(r"(?<!!)\[[^\]]*\]\(([^)\s]+)\)", page)
    return [link.split("#")[0] for link in found if not re.match(r"[a-z]+:|#", link)]


def broken(path, page):
    return [link for link in links(page) if not (path.parent / link).exists()]


EXAMPLES = [
    ("[a](README.md) [b](#top) [c](https://example.org/a)", []),
    ("[a](no-such-page.md) and ![b](painted.png)", ["no-such-page.md"]),
    ("[a](README.md#part)", []),
]


def main():
    root = Path(sys.argv[1])
    wrong = [f'"{page}": broken are {broken(root / "README.md", page)}, not {wanted}'
             for page, wanted in EXAMPLES if broken(root / "README.md", page) != wanted]
    pages = [path for path in sorted(root.rglob("*.md"))
             if not LEFT_OUT.intersection(path.relative_to(root).parts)]
    count = 0
    for path in pages:
        text = path.read_text(encoding="utf-8")
        count += len(links(text))
        wrong += [f"{path.relative_to(root)}: nothing is at {link}" for link in broken(path, text)]
    design = root / "docs" / "design"
    named = links((design / "README.md").read_text(encoding="utf-8"))
    wrong += [f"docs/design/README.md does not name {path.relative_to(design)}" for path in sorted(design.rglob("*.md"))
              if path.name != "README.md" and path.relative_to(design).as_posix() not in named]
    if count < 10:
        wrong.append(f"only {count} links were found in {len(pages)} pages")
    print("\n".join(wrong) if wrong else f"links: {count} links in {len(pages)} pages, 0 findings")
    sys.exit(1 if wrong else 0)


main()
