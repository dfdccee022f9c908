"""metainfo_test.py ROOT: what a software centre and a menu say of the program stands in every language that the program
speaks (resources/translations), each text beside its English one, and appstreamcli and desktop-file-validate, where they
are installed, find nothing. First what finds a missing text is tried on examples."""
import re
import shutil
import subprocess
import sys
import xml.etree.ElementTree as xml
from pathlib import Path

LANG = "{http://www.w3.org/XML/1998/namespace}lang"
SPOKEN = {"summary", "p", "li", "caption", "developer_name"}
SPOKEN_KEYS = {"GenericName", "Comment", "Keywords"}   # the program's name is the same everywhere


def missing(page, languages):
    """What of the English texts of a metainfo has no text in one of the languages after it."""
    found = []
    for parent in xml.fromstring(page).iter():
        children = list(parent)
        for place, child in enumerate(children):
            if child.tag not in SPOKEN or LANG in child.attrib:
                continue
            after = set()
            for other in children[place + 1:]:
                if other.tag != child.tag or LANG not in other.attrib:
                    break
                if (other.text or "").strip():
                    after.add(other.attrib[LANG])
            found += [f"<{child.tag}> \"{' '.join((child.text or '').split())[:40]}\" in {language}"
                      for language in languages if language not in after]
    return found


def missing_keys(entry, languages):
    """Likewise of a desktop entry."""
    keys = re.findall(r"^(\w+)(?:\[(\w+)\])?=.", entry, re.MULTILINE)
    actions = re.findall(r"^Name(?:\[(\w+)\])?=.", entry.partition("[Desktop Action")[2], re.MULTILINE)
    found = [f"{key} in {language}" for key in sorted(SPOKEN_KEYS) for language in languages
             if (key, "") in keys and (key, language) not in keys]
    return found + [f"the action's name in {language}" for language in languages if actions and language not in actions]


PAGE = ('<c><summary>a</summary><summary xml:lang="de">b</summary><description><p>c</p><p xml:lang="es"> </p>'
        '<p>d</p><p xml:lang="de">e</p><p xml:lang="es">f</p></description></c>')
ENTRY = "Name=S\nComment=a\nComment[de]=b\n[Desktop Action x]\nName=c\nName[es]=d\n"


def main():
    root = Path(sys.argv[1])
    wrong = []
    if missing(PAGE, ["de", "es"]) != ['<summary> "a" in es', '<p> "c" in de', '<p> "c" in es']:
        wrong.append(f"of the example are missing {missing(PAGE, ['de', 'es'])}")
    if missing_keys(ENTRY, ["de", "es"]) != ["Comment in es", "the action's name in de"]:
        wrong.append(f"of the example entry are missing {missing_keys(ENTRY, ['de', 'es'])}")
    languages = sorted(re.fullmatch(r"seamclock_(\w+)", path.stem).group(1)
                       for path in (root / "resources" / "translations").glob("*.ts"))
    if len(languages) < 2:
        wrong.append(f"only {len(languages)} languages were found")
    folder = root / "packaging" / "desktop"
    pages, entries = sorted(folder.glob("*.metainfo.xml")), sorted(folder.glob("*.desktop"))
    for paths, find, judge in ((pages, missing, ["appstreamcli", "validate", "--no-net"]),
                               (entries, missing_keys, ["desktop-file-validate"])):
        if not paths:
            wrong.append(f"packaging/desktop has nothing for {judge[0]}")
        for path in paths:
            wrong += [f"{path.name}: no {text}" for text in find(path.read_text(encoding="utf-8"), languages)]
            if shutil.which(judge[0]):
                judged = subprocess.run([*judge, path], capture_output=True, text=True, check=False)
                if judged.returncode != 0:
                    wrong.append(f"{path.name}: {judge[0]}: {judged.stdout}{judged.stderr}")
            else:
                print(f"{judge[0]} is not installed: {path.name} is not judged by it")
    print("\n".join(wrong) if wrong else f"metainfo: {', '.join(languages)}; 0 findings")
    sys.exit(1 if wrong else 0)


main()
