#!/usr/bin/env python3
"""packaging/phrases.py            brings resources/translations/*.ts up to the sources: what is new in them is unfinished
packaging/phrases.py --check    says what is missing, unfinished or lost a placeholder, and ends with 1 if anything is

Phrases are what app gives to tr(), core's English sentences and the lessons' texts (packaging/core_phrases.py); the last
two are also written to resources/translations/core_phrases.txt, for app/text/phrase_book. All stand in one context:
whoever asks in the program, the same English has the same translation, and where one English word needs two, its place
in the source gives a disambiguation. Placeholders (%1, %n) must be in a translation as often as in the English.
"""
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as tree
from pathlib import Path

import core_phrases

ROOT = Path(__file__).resolve().parent.parent
FOLDER = ROOT / "resources" / "translations"
CONTEXT = "seamclock"
LUPDATE = "/usr/lib/qt6/bin/lupdate"


def in_sources():
    """{(source, comment): {"places": [...], "note": str, "plural": bool}}, in the order of the sources."""
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "all.ts"
        done = subprocess.run([LUPDATE, "-silent", "-no-ui-lines", str(ROOT / "app"), "-ts", str(file)],
                              capture_output=True, encoding="utf-8")
        if done.returncode != 0:
            sys.exit(f"phrases: lupdate failed: {done.stderr.strip()}")
        found = {}
        for message in tree.parse(file).getroot().iter("message"):
            key = (message.findtext("source"), message.findtext("comment") or "")
            one = found.setdefault(key, {"places": [], "note": "", "plural": False})
            one["places"] += [place.get("filename") or "" for place in message.findall("location")]
            one["note"] = one["note"] or (message.findtext("extracomment") or "")
            one["plural"] = one["plural"] or message.get("numerus") == "yes"
    if not found:
        sys.exit("phrases: no phrase was found in app")
    return found


def with_core(found, sentences, lessons):
    """The phrases of app and the sentences of core together; what both say has one translation."""
    for template, place in {**sentences, **lessons}.items():
        one = found.setdefault((core_phrases.for_translators(template), ""), {"places": [], "note": "", "plural": False})
        one["places"].append(place)
    return found


def spoken_past_the_book():
    """Lines of app that show core's English as it is."""
    for path in sorted((ROOT / "app").rglob("*.cpp")):
        if path.parent.name == "cli":
            continue
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
            if re.search(r"fromUtf8\([^()]*(\(\))?(\.|->)detail\b", line):
                yield f"{path.relative_to(ROOT)}:{number}: core's English on a screen: inWords(...detail), not fromUtf8"


def in_file(path):
    """{(source, comment): [translations], of a plural its forms}, of what is finished."""
    if not path.is_file():
        return {}
    out = {}
    for message in tree.parse(path).getroot().iter("message"):
        translation = message.find("translation")
        if translation is None or translation.get("type") in ("unfinished", "vanished", "obsolete"):
            continue
        forms = [form.text or "" for form in translation.findall("numerusform")] or [translation.text or ""]
        if all(forms):
            out[(message.findtext("source"), message.findtext("comment") or "")] = forms
    return out


def placeholders(text):
    return sorted(re.findall(r"%(?:L?\d+|n)", text))


def complaints(path, found):
    have = in_file(path)
    for key, one in found.items():
        forms = have.get(key)
        if not forms:
            yield f"{path.name}: unfinished: \"{key[0]}\""
            continue
        if one["plural"] and len(forms) != 2:
            yield f"{path.name}: {len(forms)} forms of a plural, 2 expected: \"{key[0]}\""
        for form in forms:
            if placeholders(form) != placeholders(key[0]):
                yield f"{path.name}: other placeholders: \"{key[0]}\" is \"{form}\""


def write(path, language, found, have):
    root = tree.Element("TS", version="2.1", language=language, sourcelanguage="en")
    context = tree.SubElement(root, "context")
    tree.SubElement(context, "name").text = CONTEXT
    for (source, comment), one in sorted(found.items()):
        message = tree.SubElement(context, "message")
        if one["plural"]:
            message.set("numerus", "yes")
        tree.SubElement(message, "source").text = source
        if comment:
            tree.SubElement(message, "comment").text = comment
        if one["note"]:
            tree.SubElement(message, "extracomment").text = one["note"]
        translation = tree.SubElement(message, "translation")
        forms = have.get((source, comment))
        if not forms:
            translation.set("type", "unfinished")
        if one["plural"]:
            for index in range(2):
                tree.SubElement(translation, "numerusform").text = forms[index] if forms and index < len(forms) else ""
        elif forms:
            translation.text = forms[0]
    tree.indent(root, "    ")
    text = tree.tostring(root, encoding="unicode")
    path.write_text(f'<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n{text}\n', encoding="utf-8")


def main():
    sentences, bad = core_phrases.templates()
    lessons = core_phrases.lesson_texts()
    lines = core_phrases.for_program(sentences, lessons)
    found = with_core(in_sources(), sentences, lessons)
    files = sorted(FOLDER.glob("*.ts"))
    if not files:
        sys.exit(f"phrases: no .ts file in {FOLDER}")
    if sys.argv[1:] == ["--check"]:
        bad += [line for path in files for line in complaints(path, found)] + list(spoken_past_the_book())
        if not core_phrases.LIST.is_file() or core_phrases.LIST.read_text(encoding="utf-8") != lines:
            bad.append(f"{core_phrases.LIST.name}: not what the sources say: run packaging/phrases.py")
        print("\n".join(bad[:50]))
        print(f"phrases: {len(found)} phrases, {len(files)} languages, {len(bad)} findings")
        sys.exit(1 if bad else 0)
    if sys.argv[1:]:
        sys.exit(f"phrases: takes nothing or --check, not \"{' '.join(sys.argv[1:])}\"")
    if bad:
        sys.exit("\n".join(bad))
    core_phrases.LIST.write_text(lines, encoding="utf-8")
    for path in files:
        have = in_file(path)
        write(path, path.stem.split("_")[-1], found, have)
        print(f"{path.name}: {len(found)} phrases, {sum(key not in have for key in found)} unfinished")


if __name__ == "__main__":
    main()
