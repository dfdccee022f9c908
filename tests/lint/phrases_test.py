"""The check of the phrases (packaging/phrases.py) is fed one bad file for each thing that it says it finds."""
import importlib.util
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent.parent
spec = importlib.util.spec_from_file_location("phrases", ROOT / "packaging" / "phrases.py")
phrases = importlib.util.module_from_spec(spec)
spec.loader.exec_module(phrases)

FOUND = {("Wait %1", ""): {"places": [], "note": "", "plural": False}}
PLURAL = {("%n joints", ""): {"places": [], "note": "", "plural": True}}


def said(message, found):
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "x_de.ts"
        path.write_text(f"<TS><context><name>seamclock</name>{message}</context></TS>", encoding="utf-8")
        return list(phrases.complaints(path, found))


def expect(what, lines, word):
    if (word is None) != (not lines) or (word and word not in lines[0]):
        sys.exit(f"phrases_test: {what}: expected {word or 'nothing'}, got {lines}")


one = "<message><source>Wait %1</source><translation{}>{}</translation></message>"
many = "<message numerus='yes'><source>%n joints</source><translation>{}</translation></message>"
form = "<numerusform>{}</numerusform>"
expect("a good one", said(one.format("", "Warten %1"), FOUND), None)
expect("none", said("", FOUND), "unfinished")
expect("an unfinished one", said(one.format(" type='unfinished'", "Warten %1"), FOUND), "unfinished")
expect("an empty one", said(one.format("", ""), FOUND), "unfinished")
expect("a lost placeholder", said(one.format("", "Warten"), FOUND), "other placeholders")
expect("one too many", said(one.format("", "Warten %1 %2"), FOUND), "other placeholders")
expect("a good plural", said(many.format(form.format("%n Naht") + form.format("%n Nähte")), PLURAL), None)
expect("a lost form", said(many.format(form.format("%n Nähte")), PLURAL), "forms of a plural")
expect("a form without its number", said(many.format(form.format("eine Naht") + form.format("%n Nähte")), PLURAL),
       "other placeholders")
