"""The check of the phrases (packaging/phrases.py) is fed one bad file for each thing that it says it finds."""
import importlib.util
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent.parent
sys.path.insert(0, str(ROOT / "packaging"))
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

# What core says, as it is read from its sources.
core = phrases.core_phrases


def templates(code):
    return [core.trimmed(template) for template, _, _ in core.Source(f"void f() {{ {code} }}").templates()]


def reads(what, code, *expected):
    if templates(code) != list(expected):
        sys.exit(f"phrases_test: {what}: expected {expected}, got {templates(code)}")


reads("a format", 'fail(C, fmt::format("{} is {:.1f} mm", a, b));', "{} is {#} mm")
reads("a nested format", 'fmt::format("{}: {:.{}f} {}", a, b, 2, c);', "{#} {}")
reads("a sum", 'fail(C, "seam " + seam.label + " has " "no times");', "seam {} has no times")
reads("a number in a sum", 'fail(C, "row " + std::to_string(n + 1) + " is gone");', "row {#} is gone")
reads("a path before it", 'fail(C, path() + ": is " + what[2] + " now");', "is {} now")
reads("a choice in a sum", 'x = "a sheet" + (b ? " is hot" : " is cold") + end;', "a sheet{}{}", "is hot", "is cold")
reads("a literal in a constructor", 'x = std::string("the table ") + name;', "the table {}")
reads("a comment and a raw text", '/* "no text" */ // "nor this"\n x = R"(SELECT "a")" ;')
reads("quotation marks and signs", r'x = "the \"" + a + "\" of 5 \u00b0C";', 'the "{}" of 5 °C')
for text, is_one in (("the PIN is wrong", True), ("SELECT a FROM b", False), ("weld_opened", False), ("{} mm", False),
                     ("label, what, bench", False), ("{}: {}", False)):
    if core.is_sentence(text) != is_one:
        sys.exit(f"phrases_test: \"{text}\" is{'' if is_one else ' no'} sentence")
if core.for_translators("{} is {#}, not {=}") != "%1 is %2, not %3":
    sys.exit("phrases_test: placeholders for translators")
if not core.left_out("report/record_text.cpp", "f") or core.left_out("report/record_facts.cpp", "f"):
    sys.exit("phrases_test: what is left out")
same = core.merged({"line {#}": "a", "line {}": "b", "no line": "c"})
if same != {"line {}": "a", "no line": "c"}:
    sys.exit(f"phrases_test: two that look alike: {same}")
new = core.Source('namespace n { void f() { fail(C, "a pipe has burst in " + hall); } }')
sentences, wrong = core.templates({"shift/new.cpp": new, "plan/plan.cpp": core.Source("int a;")})
if "a pipe has burst in {}" not in sentences or not any("mm is outside" in line for line in wrong):
    sys.exit(f"phrases_test: a new sentence, and pieces that are gone: {sentences}, {wrong}")
expect("a new sentence of core's", said("", phrases.with_core({}, {"a pipe has burst in {}": "x"}, {})), "unfinished")
