"""Every shipped procedure is valid by the JSON Schema; whatever the schema refuses, `procedures check` refuses too; and
what is named below as wrong is refused by both, or by `check` alone where no schema can know.

    procedure_schema.py SOURCE_FOLDER SEAMCLOCK_CLI
"""
import copy
import json
import subprocess
import sys
import tempfile
from pathlib import Path

from jsonschema import Draft202012Validator

SOURCE, CLI = Path(sys.argv[1]), sys.argv[2]
FOLDER = SOURCE / "resources/procedures"
SCHEMA = json.loads((FOLDER / "procedure.schema.json").read_text(encoding="utf-8"))
VALID = Draft202012Validator(SCHEMA)
failures = []


def fail(text):
    failures.append(text)
    print("FAILED", text)


def by_schema(document):
    return VALID.is_valid(document)


def by_check(document, scratch):
    path = Path(scratch) / "p.json"
    path.write_text(json.dumps(document, ensure_ascii=False), encoding="utf-8")
    ran = subprocess.run([CLI, "procedures", "check", str(path), "--json"], capture_output=True, text=True, timeout=60)
    if ran.returncode not in (0, 1) or ran.stderr:
        fail(f"check ended with {ran.returncode}: {ran.stderr}")
    said = json.loads(ran.stdout)
    if said["sound"] != (ran.returncode == 0):
        fail("check's status and its words differ")
    return said["sound"]


def places(value, path=()):
    """Every place in a document, of several alike in one list the first alone."""
    if path:
        yield path
    if isinstance(value, dict):
        for key in value:
            yield from places(value[key], path + (key,))
    elif isinstance(value, list) and value:
        yield from places(value[0], path + (0,))


def inside(document, path):
    for step in path:
        document = document[step]
    return document


def changed(document, path, change):
    """A copy in which `change` was done to what holds the place, by its last step."""
    out = copy.deepcopy(document)
    change(inside(out, path[:-1]), path[-1])
    return out


def put(value):
    def change(holder, step):
        holder[step] = value
    return change


def remove(holder, step):
    del holder[step]


def rename(holder, step):
    if isinstance(holder, dict):
        holder[f"{step}_too"] = holder.pop(step)


# (file, place, change): wrong by the schema and by check
WRONG = [
    ("pp-dvs2207-11", ("format",), put("seamclock-procedure/2")),
    ("pp-dvs2207-11", ("id",), put("PP 2207")),
    ("pp-dvs2207-11", ("colour",), put("grey")),
    ("pp-dvs2207-11", ("title",), put("")),
    ("pp-dvs2207-11", ("plate", "max_C"), put(428)),
    ("pp-dvs2207-11", ("plate", "source"), remove),
    ("pp-dvs2207-11", ("plate", "standing"), put("sure")),
    ("pp-dvs2207-11", ("plate", "standing"), put("attested")),
    ("pp-dvs2207-11", ("pressure", "joining_N_mm2"), put(100000)),
    ("pp-dvs2207-11", ("pressure", "joining_bar"), put(1)),
    ("pp-dvs2207-11", ("pressure", "soak_to_drag"), put({"source": "s", "standing": "seen"})),
    ("pp-dvs2207-11", ("reference_ambient", "value_C"), put(68)),
    ("pp-dvs2207-11", ("soak_tolerance", "low_percent"), put(5)),
    ("pp-dvs2207-11", ("bead_mm", "table"), remove),
    ("pp-dvs2207-11", ("bead_mm", "table"), put([])),
    ("pp-dvs2207-11", ("bead_mm", "table", 0, "lower"), put(0.4)),
    ("pp-dvs2207-11", ("soak_s", "table", 0, "upper"), remove),
    ("pp-dvs2207-11", ("cooling_min", "classes"), put([])),
    ("pp-dvs2207-11", ("cooling_min", "default_rule"), put("middle")),
    ("pp-dvs2207-11", ("cooling_min", "classes", 0, "table", 0, "value"), put(360)),
    ("pp-dvs2207-11", ("half_cooling", "from_mm"), put(1500)),
    ("pp-dvs2207-11", ("gaps", 0, "value"), put("soak")),
    ("pe-iso21307-slp", ("soak_s", "formula", 0, "coefficients"), put([])),
    ("pe-iso21307-slp", ("soak_s", "formula", 0, "coefficients"), put([1, 2, 3, 4, 5, 6, 7])),
    ("pe-iso21307-slp", ("cooling_min", "per_kelvin"), put({"percent": 1})),
    ("pe-iso21307-slp", ("cooling_min", "classes", 0, "falls_by_declaration"), put("yes")),
]

# what only check can know
DEEPER = [
    ("pp-dvs2207-11", ("bead_mm", "table", 2, "from_mm"), put(7.5)),       # a gap
    ("pp-dvs2207-11", ("bead_mm", "table", 2, "from_mm"), put(6)),         # an overlap
    ("pp-dvs2207-11", ("bead_mm", "table", 4, "value"), put(0.6)),         # a jump down
    ("pp-dvs2207-11", ("bead_mm",), remove),                               # not declared as a gap
    ("pp-dvs2207-11", ("gaps",), put([])),
    ("pp-dvs2207-11", ("plate", "min_C"), put(230)),                       # above max_C
    ("pp-dvs2207-11", ("pressure", "soak_aim", "value_N_mm2"), put(0.02)),  # above soak_max
    ("pe-iso21307-slp", ("cooling_min", "classes", 0, "falls_by_declaration"), put(False)),
    ("pe-iso21307-slp", ("soak_s", "formula", 0, "coefficients"), put([0, 13500])),
    ("pe-iso21307-slp", ("cooling_min", "default_rule"), put("band-end")),  # without bands
]


def main():
    Draft202012Validator.check_schema(SCHEMA)
    documents = {path.stem: json.loads(path.read_text(encoding="utf-8"))
                 for path in sorted(FOLDER.glob("*.json")) if ".schema." not in path.name}
    if len(documents) < 6:
        fail(f"only {len(documents)} procedures in {FOLDER}")
    tried = refused = 0
    with tempfile.TemporaryDirectory() as scratch:
        for name, document in documents.items():
            for error in VALID.iter_errors(document):
                fail(f"{name}: {error.json_path}: {error.message}")
            if not by_check(document, scratch):
                fail(f"{name}: check refuses it")
        for rows, schema_knows in ((WRONG, True), (DEEPER, False)):
            for name, place, change in rows:
                spoiled = changed(documents[name], place, change)
                if by_schema(spoiled) == schema_knows:
                    fail(f"{name} {place}: the schema should {'refuse' if schema_knows else 'pass'} it")
                if by_check(spoiled, scratch):
                    fail(f"{name} {place}: check should refuse it")
        # Every kind of place there is: gone, of another name, of another type.
        seen = set()
        for name, document in documents.items():
            for place in places(document):
                if place in seen:
                    continue
                seen.add(place)
                was = inside(document, place)
                others = [put(True if not isinstance(was, bool) else 1), put("x" if not isinstance(was, str) else 7),
                          remove, rename]
                for change in others:
                    spoiled = changed(document, place, change)
                    tried += 1
                    if spoiled != document and not by_schema(spoiled):
                        refused += 1
                        if by_check(spoiled, scratch):
                            fail(f"{name} {place}: the schema refuses what check passes: {json.dumps(inside(spoiled, place[:-1]))[:200]}")
    if refused < 100:
        fail(f"only {refused} of {tried} changes were refused by the schema")
    print(f"{len(documents)} procedures, {len(WRONG) + len(DEEPER)} named changes, {tried} others, {refused} of them refused")
    sys.exit(1 if failures else 0)


main()
