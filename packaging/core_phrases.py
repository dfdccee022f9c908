"""What core says in English, and app in its own errors, as packaging/phrases.py puts it before a translator.

Core speaks English for logs and scripts and knows no language (DEVELOPERS.md), and its sentences reach people all the
same: why a step was refused, why a table of seams can't be read, why a copy was not made. They are made of literals:
fmt formats, and literals with values between them ("a" + b + "c"). Each is read from the sources as a template, "{}"
where a value stands, "{#}" where it is a number and "{=}" where it is a name that stays; app/text/phrase_book finds the
template that fits a sentence while the program runs. What only a terminal or a file shows is left out, by room, file or
function, each with its reason.
"""
import json
import re
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
LIST = ROOT / "resources" / "translations" / "core_phrases.txt"

# A path below core/, or path#function: why no window shows what is said there.
LEFT_OUT = {
    "base/canonical_json.cpp": "bodies of events that a disk or a forger changed: for whoever repairs the log",
    "log/body_codec.cpp": "the same", "log/fact_codec.cpp": "the same", "weld/event_codec.cpp": "the same",
    "log/chain.cpp": "the same", "log/raw_log.cpp": "the same", "log/rows.cpp": "the same",
    "plan/plan_codec.cpp": "the same: a plan inside an event",
    "base/json.cpp#canonicalJson": "the same", "base/json.cpp#parseCanonical": "the same",
    "log/verify.cpp": "log verify, for the terminal",
    "log/joint.cpp": "columns of the list of joints", "log/joint_measures.cpp": "the same",
    "log/roster.cpp": "a damaged log, which is not opened",
    "rescue/set_aside.cpp#": "the note beside a damaged log, a file for whoever repairs it",
    "rescue/set_aside.cpp#noteOf": "the same", "rescue/set_aside.cpp#lineOf": "the same",
    "rescue/set_aside.cpp#listOf": "the same", "rescue/set_aside.cpp#sentencesOf": "the same",
    "rescue/set_aside.cpp#remarkOf": "a remark in the log, where it stays as it was written",
    "copies/log_import.cpp": "log import, for the terminal",
    "copies/backup.cpp#restoreLog": "log restore, for the terminal",
    "copies/backup.cpp#checkNothingThere": "the same",
    "shift/day_plan.cpp#checkTimes": "what session/job_day hands over is within it",
    "shift/day_plan.cpp#checkCount": "the same", "shift/day_plan.cpp#check": "the same",
    "log/joint_cache.cpp#JointCursor": "SQL", "log/joint_cache.cpp#MeasureCursor": "SQL",
    "practice/demo_folder.cpp#demoPeople": "invented names",
    "estimate/heat_words.cpp": "plan heat, for the terminal; screens have app/setup/heat_view",
    "estimate/heat_estimate.cpp#heatFactors": "the same", "estimate/heat_estimate_json.cpp": "a file",
    "weld/verdict.cpp": "record, for the terminal; screens have app/text/words findingText",
    "practice/demo_days.cpp": "demo days, for the terminal", "practice/hand.cpp": "names of chances",
    "practice/next_act.cpp": "the virtual operator, for the terminal", "practice/bench_weld.cpp": "the same",
    "practice/rehearse_fault.cpp": "the same", "practice/virtual_operator.cpp": "the same",
    "practice/shift_pace.cpp": "the same", "vbench/steady_hand.cpp": "the same",
    "practice/practice_order.cpp": "codes", "practice/practice_words.cpp": "practice, for the terminal",
    "practice/practice_take_codec.cpp": "a take that a log holds", "vbench/bench_act_codec.cpp": "the same",
    "procedure/cells.cpp": "pieces of what a cell holds: COMPOSED has it whole",
    "report": "cards, records and lists for the terminal; screens and paper have app/text/record_words",
    "machine": "what a system answers, in its own words",
    "units": "numbers with their units",
}
# ... and what is shown of one that is left out.
KEPT = {
    "practice/practice_words.cpp#places", "practice/practice_words.cpp#lapseSentence",
    "practice/practice_words.cpp#whyItMatters", "report/record_facts.cpp",
    "procedure/cells.cpp#attested",
}
# Of app's own errors only these are for no window.
APP_LEFT_OUT = {
    "cli": "the terminal", "horn": "lines between two programs",
    "pictures.cpp": "the command that paints the screens", "day_walk.cpp": "the same", "people_walk.cpp": "the same",
    "setup_walk.cpp": "the same", "practice_walk.cpp": "the same", "shop_walk.cpp": "the same", "first_walk.cpp": "the same",
    "guide_walk.cpp": "the same",
    "practice_pictures.cpp": "the same", "paper_errand.cpp": "commands for papers",
}
# Sentences that more than a "+" puts together, as they come out, and the pieces that stand for them in the sources.
COMPOSED = {
    "plan/plan.cpp": [
        "thickness {#} mm is outside {#} to {#} mm of bench {}", "thickness {#} mm is outside {#} to {#} mm of {}",
        "no seam length is given; allowed {#} to {#} mm of bench {}",
        "length {#} mm is outside {#} to {#} mm of bench {}", "total length {#} mm is outside {#} to {#} mm of bench {}",
        "drag {#} N is outside 0 to {#} N", "drag {#} is not a number; allowed 0 to {#} N",
        "{} needs {} at the spring, with drag and preload, above {}, the most that bench {} can hold",
        "{} needs {} at the spring, with drag and preload, below {}, the least that bench {} holds steadily: "
        "weld an offcut beside it, or pair seams",
        "weld an offcut of {#} mm beside it, or {#} such seams in one clamping, "
        "or take a spring of at most {#} N for one {}",
        "weld an offcut of {#} mm beside it, or take a spring of at most {#} N for one {}",
        "weld {#} such seams in one clamping, or take a spring of at most {#} N for one {}",
        "no offcut that this bench can take would help; take a spring of at most {#} N for one {}",
        "ambient {#} °C is outside the classes for which {} has cooling times, up to {#} °C",
        "ambient {#} °C is outside the classes for which {} has cooling times, from {#} °C",
        "ambient {#} °C is outside the classes for which {} has cooling times",
    ],
    "session/sheet_plan.cpp": [
        "procedure {} can't be welded with yet: the shop filled in {}, which a foreman attests first",
        "procedure {} can't be welded with yet: it lacks {}, which the shop fills and attests first",
    ],
    "shift/job_csv.cpp": [
        "line {#}, {=}: {}", "there is no column {}; allowed: {=}", "{} is not there; allowed: {=}",
        "above {#}, to {#} {}", "{#} to {#} {}", "{#} to {#}", "{} has {#} signs; allowed: {}",
        "{} is line {#}'s seam already; allowed: each label once", "{} is not a whole number; allowed: {#} to {#}",
        "line {#}",
    ],
    "weld/intent.cpp": ["{} came {#} ms after the step before; less than {#} ms is taken for one press"],
    "app/operate/photo.cpp": ["the photo \"{}\""],
    "app/print/pdf_file.cpp": ["the {} can't be written to \"{}\"", "there are {#} of that name already"],
    "app/operate/day_closing.cpp": ["there are {#} of that day already"],
    "app/daylog/day_papers.cpp": ["the bench of {=}"],
    "people/pin.cpp": [
        "a foreman's PIN has {#} to {#} digits; this one has {#}", "a PIN has {#} to {#} digits; this one has {#}",
        "a PIN has 1 to {#} digits and nothing else; this one has {#} digits",
        "a PIN has 1 to {#} digits and nothing else; this one has {#} characters",
    ],
    "copies/photo_copies.cpp": ["{#} photo is not what was kept: {}", "{#} photos are not what was kept: {}"],
    "copies/log_copy.cpp": [
        "has {} free, and a copy of this log takes up to {} and must leave {} free",
        "has {} free, and a copy of this log takes up to {}",
        "is there already and is no copy of this log but of another; it is left as it is",
    ],
    "procedure/cells.cpp": [
        "{#} to {#} °C, aim {#} °C", "from zero to drag", "from {#} mm",
        "{#} % a kelvin, longer when warmer, {#} to {#} °C", "{#} % a kelvin, longer when colder, {#} to {#} °C",
    ],
    "practice/practice_words.cpp": [
        "at place {#}", "at places {} and {#}", "{} at place {#}", "{} at places {} and {#}", "{} all along",
        "The edges were not parallel: {}, against {}.",
    ],
    "bench/calibration.cpp": [
        "{} {} is outside {#} to {#}",
        "{} holds {#} value; expected 2, with a decimal point", "{} holds {#} values; expected 2, with a decimal point",
        "{} holds {#} values; expected 2, with a decimal point (1.5, not 1,5)",
        "{} is not the header; expected reading,force_N (or reading_mm)",
        "{} is not the header; expected reading,force_N (or reading_mm), with a comma, not a semicolon",
    ],
}
PIECES = {
    "plan/plan.cpp": [
        "{#} to {#} mm of {}", "thickness {#} mm is outside", "thickness {#} is not a finite number; allowed {}",
        "{}{#} to {#} mm of bench {}", "{#} to {#} mm{}", "of bench {}", "no seam length is given; allowed {}",
        "mm is outside", "is not a finite number; allowed", "total length", "drag {#}{}{#} N", "N is outside 0 to",
        "is not a number; allowed 0 to", "{} needs {} at the spring, with drag and preload",
        "{}above {}, the most that bench {} can hold",
        "{}below {}, the least that bench {} holds steadily: weld an offcut beside it, or pair seams",
        "weld an offcut of {#} mm beside it", "{}{#} such seams in one clamping",
        "no offcut that this bench can take would help; take", "{}, or take", "{}a spring of at most {#} N for one {}",
        "ambient {#} °C is outside the classes for which {} has cooling times{}", "up to",
    ],
    "session/sheet_plan.cpp": [
        "procedure {} can't be welded with yet", "{}the shop filled in {}, which a foreman attests first",
        "{}it lacks {}, which the shop fills and attests first",
    ],
    "shift/job_csv.cpp": [
        "above {#}, to", "{#} to", "has {} signs; allowed", "is line {}'s seam already; allowed: each label once",
        "is not a whole number; allowed: {} to {}", "line {}", "there is no column {}; allowed: {}",
        "{} is not there; allowed: {}",
    ],
    "weld/intent.cpp": ["ms is taken for one press", "{} came {#} ms after the step before; less than {#}{}"],
    "people/pin.cpp": [
        "a foreman's", "{} PIN has {#} to {#} digits; this one has {#}",
        "a PIN has 1 to {#} digits and nothing else; this one has {#}{}",
    ],
    "copies/photo_copies.cpp": ["photo is", "photos are", "{#}{} not what was kept: {}"],
    "copies/log_copy.cpp": [
        "has {} free, and a copy of this log takes up to {}{}", "and must leave {} free", "but of another",
        "is there already and is no copy of this log{}; it is left as it is",
    ],
    "practice/practice_words.cpp": ["at place", "at places", "The edges were not parallel: {} {}, against {}."],
    "bench/calibration.cpp": [
        "{} holds {#}{}; expected 2, with a decimal point", "(1.5, not 1,5)",
        "{} is not the header; expected reading,force_N (or reading_mm){}", "with a comma, not a semicolon",
    ],
}
# Single words that core puts into its sentences, and the file that has them.
WORDS = {
    "plan/plan.cpp": ["alignment", "joining"], "weld/event.cpp": ["soak", "trial", "practice", "production"],
    "quality/welding_factor.cpp": ["welded", "parent"], "practice/lesson.cpp": ["procedure", "bench"],
    "weld/verdict.cpp": ["out of limits", "incomplete"],
    "app/print/card_pdf.cpp": ["card"], "app/print/practice_pdf.cpp": ["practice record"],
    "app/print/record_paper.cpp": ["record"], "app/print/report_paper.cpp": ["report"],
    "app/print/pdf_file.cpp": ["the folder can't be made"], "app/operate/floor.cpp": ["ambient measured", "bench of the log", "drag measured"],
}

# SQL, formats of files, headers of tables: nobody is meant to read it as a sentence.
NO_SENTENCE = re.compile(
    r"^\W*(SELECT|INSERT|UPDATE|DELETE|CREATE|DROP|PRAGMA|VACUUM|WITH|CASE|BEGIN|WHERE|AND|OR|FROM|ORDER BY|SQLite format)\b"
    r"|\b(MATCH \?|CROSS JOIN|ORDER BY)|^[\w.+]+ ?[<>=]+( \?)?$|^\w+(, \w+)+$")
# Functions that give nothing but a number.
NUMBERS = ("plainNumber", "milliShown", "millimetresShown")
UNITS = {"N", "mm", "s", "min", "C", "K", "F", "g", "MB", "MPa", "ms", "in", "lbf", "m", "W"}

TOKEN = re.compile(r"""
  (?P<skip>\s+|//[^\n]*|/\*.*?\*/|\#[^\n]*)
 |(?P<raw>R"(?P<mark>[^(\s]*)\(.*?\)(?P=mark)")
 |(?P<string>"(?P<text>(?:[^"\\\n]|\\.)*)")
 |(?P<char>'(?:[^'\\]|\\.)+')
 |(?P<name>[A-Za-z_]\w*)
 |(?P<number>\d[\w.']*)
 |(?P<sign>::|->|\+=|\+\+|<<|==|!=|<=|>=|&&|\|\||.)""", re.X | re.S)
KINDS = ("skip", "raw", "string", "char", "name", "number", "sign")
OPENS = {"(": ")", "[": "]", "{": "}"}
CLOSES = {close: start for start, close in OPENS.items()}
TAIL = re.compile(r"\{\d*(?::[^{}]*(?:\{[^{}]*\}[^{}]*)*)?\}")


def unescaped(text):
    known = {"n": "\n", "t": "\t", "r": "\r", "0": "\0"}
    return re.sub(r"\\u([0-9a-fA-F]{4})|\\(.)",
                  lambda m: chr(int(m[1], 16)) if m[1] else known.get(m[2], m[2]), text)


class Source:
    """One .cpp as tokens (kind, text, line); literals side by side are one."""

    def __init__(self, text):
        self.tokens, self.partner = [], {}
        at, line = 0, 1
        while at < len(text):
            m = TOKEN.match(text, at)
            kind = next(one for one in KINDS if m.group(one) is not None)
            if kind == "string" and self.tokens and self.tokens[-1][0] == "string":
                before = self.tokens[-1]
                self.tokens[-1] = ("string", before[1] + unescaped(m["text"]), before[2])
            elif kind != "skip":
                self.tokens.append((kind, unescaped(m["text"]) if kind == "string" else m[0], line))
            line += m[0].count("\n")
            at = m.end()
        self.tokens.append(("sign", ";", line))
        open_at = []
        for i, (kind, token, _) in enumerate(self.tokens):
            if kind == "sign" and token in OPENS:
                open_at.append(i)
            elif kind == "sign" and token in CLOSES and open_at:
                self.partner[i] = open_at.pop()
                self.partner[self.partner[i]] = i
        self.functions = list(self._functions())

    def is_sign(self, i, *signs):
        return 0 <= i < len(self.tokens) and self.tokens[i][0] == "sign" and self.tokens[i][1] in signs

    def _functions(self):
        """(first token, last token, name) of each body that stands in a namespace or a class."""
        i = 0
        while i < len(self.tokens):
            if self.is_sign(i, "{"):
                j = i - 1
                while self.tokens[j][1] in ("const", "override", "noexcept"):
                    j -= 1
                if self.is_sign(j, ")"):
                    name = self.tokens[self.partner.get(j, 0) - 1][1]
                    yield i, self.partner.get(i, i), name
                    i = self.partner.get(i, i)
            i += 1

    def function_of(self, i):
        return next((name for first, last, name in self.functions if first < i < last), "")

    def operand_before(self, i):
        """Where the operand begins whose last token is i."""
        while True:
            if self.is_sign(i, ")", "]", "}") and i in self.partner:
                i = self.partner[i]
                if self.tokens[i - 1][0] == "name" and self.tokens[i - 1][1] != "return":
                    i -= 1
                elif self.is_sign(i - 1, ")", "]"):
                    i -= 1
                    continue
                elif self.is_sign(i - 1, ">"):
                    while not self.is_sign(i, "<"):
                        i -= 1
                    i -= 1
                else:
                    return i
            if self.is_sign(i - 1, ".", "->", "::"):
                i -= 2
                continue
            return i - 1 if self.is_sign(i - 1, "*") and not self.tokens[i - 2][0] == "name" else i

    def operand_after(self, i):
        """Where the operand ends whose first token is i."""
        while self.is_sign(i, "*", "&", "-", "!"):
            i += 1
        while True:
            if self.is_sign(i, "(", "[", "{") and i in self.partner:
                i = self.partner[i]
            if self.is_sign(i + 1, ".", "->", "::"):
                i += 2
            elif self.is_sign(i + 1, "(", "[") or (self.is_sign(i + 1, "{") and self.tokens[i][0] == "name"):
                i += 1
            elif self.is_sign(i + 1, "<") and self.tokens[i][1] in ("static_cast", "get"):
                while not self.is_sign(i, ">"):
                    i += 1
            else:
                return i

    def part(self, first, last):
        """An operand as it stands in a template."""
        words = [token[1] for token in self.tokens[first:last + 1]]
        literals = [token for token in self.tokens[first:last + 1] if token[0] == "string"]
        if last == first and literals:
            return literal(words[0])
        if len(literals) == 1 and words[:2] in (["std", "::"], ["string", "("]) and last == first + 5:
            return literal(literals[0][1])  # std::string("...")
        return "{#}" if "to_string" in words[:3] or words[0] in NUMBERS else "{}"

    def failing(self):
        """Which tokens stand between the brackets of a fail(...)."""
        inside = set()
        for i, token in enumerate(self.tokens):
            if token[1] == "fail" and self.is_sign(i + 1, "(") and i + 1 in self.partner:
                inside.update(range(i, self.partner[i + 1]))
        return inside

    def templates(self, only_failing=False):
        """(template, function, line) of every literal, or of those in a fail(...)."""
        inside = self.failing() if only_failing else None
        told = set()
        for i, (kind, text, line) in enumerate(self.tokens):
            if kind != "string" or i in told or (inside is not None and i not in inside):
                continue
            if self.is_sign(i - 1, "(") and self.tokens[i - 2][1] in ("format", "format_to"):
                yield from_format(text), self.function_of(i), line
                continue
            parts, at = [self.part(i, i)], i
            if self.is_sign(i - 1, "(") and self.tokens[i - 2][1] == "string" and self.is_sign(i + 1, ")"):
                at = i - 4 if self.is_sign(i - 3, "::") else i - 2
            first, last = at, self.partner.get(i - 1, i) if at != i else i
            while self.is_sign(first - 1, "+"):
                start = self.operand_before(first - 2)
                told.update(range(start, first - 1) if start == first - 2 else [])
                parts.insert(0, self.part(start, first - 2))
                first = start
            while self.is_sign(last + 1, "+"):
                end = self.operand_after(last + 2)
                told.update([last + 2] if end == last + 2 else [])
                parts.append(self.part(last + 2, end))
                if len([t for t in self.tokens[last + 2:end + 1] if t[0] == "string"]) == 1 and parts[-1] != "{}":
                    told.update(range(last + 2, end + 1))
                last = end
            yield "".join(parts), self.function_of(i), line


def literal(text):
    return text.replace("{", "").replace("}", "")


def from_format(text):
    """fmt's "{:.1f}" as "{#}"."""
    def mark(m):
        return "{#}" if re.search(r"[df]\}$", m[0]) else "{}"
    return TAIL.sub(mark, text.replace("{{", "").replace("}}", ""))


def trimmed(template):
    """Without what joins it to its neighbours, a path before it: app/text/phrase_book parts sentences there
    itself."""
    before = None
    while before != template:
        before = template
        template = re.sub(r"^(?:\{\}[:;] |[;,:.]\s+|\s+)|(?:[;,:]?\s+|:)$", "", template)
    return template


def is_sentence(template):
    words = re.findall(r"[^\W\d_]+", re.sub(r"\{[#=]?\}", " ", template))
    return " " in template and "\n" not in template and not NO_SENTENCE.search(template) and \
        any(len(word) > 1 and word not in UNITS for word in words)


def left_out(file, function):
    names = {file, f"{file}#{function}"}
    return not names & KEPT and bool((names | {file.split("/")[0]}) & set(LEFT_OUT))


def read_sources():
    """{file: Source}, in their order; core's without "core/"."""
    core = sorted((ROOT / "core").rglob("*.cpp")) + sorted((ROOT / "core").rglob("*.h"))
    app = [path for path in sorted((ROOT / "app").rglob("*.cpp")) 
           if path.parent.name not in APP_LEFT_OUT and path.name not in APP_LEFT_OUT]
    files = {str(path.relative_to(ROOT / "core")): path for path in core}
    files.update({str(path.relative_to(ROOT)): path for path in app})
    return {file: Source(path.read_text(encoding="utf-8")) for file, path in files.items()}


def templates(sources=None):
    """{template: place} of core's sentences, in the order of the sources; and what is wrong with the tables above."""
    found, wrong = {}, []
    for file, source in (sources or read_sources()).items():
        pieces = dict.fromkeys(PIECES.get(file, []), False)
        place = file if file.startswith("app/") else f"core/{file}"
        for template, function, line in source.templates(only_failing=file.startswith("app/")):
            template = trimmed(template)
            if template in pieces:
                pieces[template] = True
            elif is_sentence(template) and not left_out(file, function):
                found.setdefault(template, f"{place}:{line}")
        for template in COMPOSED.get(file, []):
            found.setdefault(template, place)
        literals = {text for kind, text, _ in source.tokens if kind == "string"}
        for word in WORDS.get(file, []):
            found.setdefault(word, place)
            if word not in literals:
                wrong.append(f"core_phrases: {place} no longer says \"{word}\": take it out of WORDS")
        wrong += [f"core_phrases: {place} no longer makes \"{piece}\": look at COMPOSED and PIECES"
                  for piece, seen in pieces.items() if not seen]
    return merged(found), wrong


def merged(found):
    """Two that a translator can't tell apart are one: with "{}" where one of them has it."""
    out = {}
    for template, place in found.items():
        kinds, at = re.findall(r"\{[#=]?\}", template), place
        phrase = for_translators(template)
        if phrase in out:
            kinds = [a if a == b else "{}" for a, b in zip(kinds, out[phrase][0])]
            at = out[phrase][1]
        out[phrase] = (kinds, at)
    texts = {}
    for phrase, (kinds, place) in out.items():
        parts = re.split(r"%\d", phrase) if kinds else [phrase]
        texts["".join(part + kind for part, kind in zip(parts, kinds + [""]))] = place
    return texts


def lesson_texts():
    """{text: place} of the lessons: titles, what they teach, what is said after them."""
    found = {}
    for path in sorted((ROOT / "resources" / "lessons").glob("*.json")):
        lesson = json.loads(path.read_text(encoding="utf-8"))
        for key in ("title", "teaches", "after"):
            found.setdefault(lesson[key], str(path.relative_to(ROOT)))
    return found


def for_translators(template):
    """"{}" and "{#}" as %1, %2, ... in their order."""
    parts = re.split(r"\{[#=]?\}", template)
    return "".join(part + (f"%{i + 1}" if i + 1 < len(parts) else "") for i, part in enumerate(parts))


def for_program(found, lessons):
    """The lines of core_phrases.txt, which becomes part of the program."""
    return "".join(line + "\n" for line in sorted({**found, **lessons}))
