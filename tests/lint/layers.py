"""Layers: who may include whom, and which library stays where (DEVELOPERS.md, "Rooms").

The arrows below are the design; a room's USES in its CMakeLists.txt must follow them, and its #includes must follow
its USES. The compiler can't see this, as all rooms share one include root.
"""
import re
import sys

from source_files import CPP, Lint, code_of, line_of

# room: the rooms right below it. What those use may be used too. A new room needs a line here and in DEVELOPERS.md.
ARROWS = {
    "base": [],
    "units": ["base"],
    "machine": ["base"],
    "people": ["base"],
    "procedure": ["units"],
    "bench": ["units"],
    "heat": ["units"],
    "plan": ["procedure", "bench"],
    "weld": ["plan"],
    "shift": ["weld"],
    "estimate": ["weld", "plan", "heat"],
    "log": ["weld", "people", "machine"],
    "copies": ["log"],
    "rescue": ["log"],
    "session": ["rescue", "shift", "weld", "quality"],
    "report": ["estimate", "quality"],
    "quality": ["log"],
    "vbench": ["plan", "heat"],
    "practice": ["session", "weld", "vbench"],
}
# The same for app; main.cpp joins them all.
APP_ARROWS = {
    "platform": [],
    "cli": ["platform"],
    "horn": ["platform"],
    "sound": ["horn"],
    "power": [],
    "parts": [],
    "text": [],
    "pages": ["parts", "text"],
    "print": ["parts", "text"],
    "setup": ["pages"],
    "daylog": ["pages", "print"],
    "guide": ["pages", "print"],
    "shop": ["setup", "daylog"],
    "operate": ["guide", "shop"],
    "practice": ["operate"],
    "first": ["operate"],
    "read": ["daylog", "guide"],
}
QT_FREE = ("core/", "app/cli/", "app/platform/", "tests/core/")


def closure(room, arrows):
    seen, todo = set(), list(arrows.get(room, []))
    while todo:
        below = todo.pop()
        if below not in seen:
            seen.add(below)
            todo += arrows.get(below, [])
    return seen


def declared_uses(lint):
    """{room: (cmake file, its USES)} of every seamclock_room() under core."""
    rooms = {}
    for path in lint.files(["core"], None):
        if path.name != "CMakeLists.txt":
            continue
        text = re.sub(r"#[^\n]*", "", lint.read(path))
        for call in re.finditer(r"\bseamclock_room\s*\(([^)]*)\)", text):
            words = call.group(1).replace('"', " ").split()
            uses, keyword = [], None
            for word in words[1:]:
                if word in ("SOURCES", "HEADERS", "USES", "LIBRARIES", "SEPARATE"):
                    keyword = word
                elif keyword == "USES":
                    uses.append(word)
            rooms[words[0]] = (path, uses)
    return rooms


def check_rooms(lint, rooms):
    for room, (path, uses) in rooms.items():
        if room not in ARROWS:
            lint.find(path, 1, "unknown_room", f'room "{room}" has no line in tests/lint/layers.py')
            continue
        if path.parent.name != room:
            lint.find(path, 1, "room_folder", f'room "{room}" stands in folder {path.parent.name}/')
        for used in uses:
            if used not in closure(room, ARROWS):
                lint.find(path, 1, "arrow", f'room "{room}" may not use "{used}"')
    developers = lint.root / "DEVELOPERS.md"
    told = lint.read(developers) if developers.is_file() else ""
    for room, (path, _) in rooms.items():
        if not re.search(rf"\b{room}/", told):
            lint.find(path, 1, "untold_room", f'DEVELOPERS.md has no line for "{room}/"')


def check_stage(lint):
    """Every folder of tests is in a part of the sanitize stage and in one of clang's: a part left out says nothing."""
    stage = lint.root / "packaging" / "stage"
    if not stage.is_file():
        return
    text = lint.read(stage)
    folders = sorted(path.parent.relative_to(lint.root / "tests").as_posix()
                     for part in ("core", "app") for path in (lint.root / "tests" / part).glob("*/CMakeLists.txt"))
    for what, name in (("sanitize", "every"), ("clang", "rooms")):
        patterns = re.findall(rf"\b{name}='([^']+)'", text)
        for folder in folders:
            if not any(re.search(pattern, folder) for pattern in patterns):
                lint.find(stage, 1, "unjudged_room", f"no part of {what} has tests/{folder}/")


def place_of(included):
    """(part, room) of an include from the root: ("core", "weld"), ("app", "cli") …"""
    parts = included.split("/")
    return parts[0], parts[1] if len(parts) > 2 else ""


def check_own_include(lint, path, shown, line, included, rooms):
    part, room = place_of(included)
    if "../" in included or part not in ("core", "app", "tests"):
        lint.find(path, line, "from_root", f'"{included}" is not written from the root')
        return
    if not (lint.root / included).is_file():
        lint.find(path, line, "missing_file", f'"{included}" does not exist')
    if shown.startswith("core/"):
        own = shown.split("/")[1]
        if part != "core":
            lint.find(path, line, "upward", f'core includes "{included}"')
        elif room != own and room not in closure(own, {r: u for r, (_, u) in rooms.items()}):
            lint.find(path, line, "not_in_uses", f'room "{own}" includes "{included}" without USES {room}')
    elif shown.startswith("app/") and part == "app" and shown.count("/") > 1:
        own = shown.split("/")[1]
        if own not in APP_ARROWS:
            lint.find(path, line, "unknown_room", f'room "{own}" has no line in tests/lint/layers.py')
        elif room != own and room not in closure(own, APP_ARROWS):
            lint.find(path, line, "app_arrow", f'room "{own}" may not include "{included}"')
    elif shown.startswith("tests/core/") and part == "app":
        lint.find(path, line, "upward", f'a test of core includes "{included}"')
    elif not shown.startswith("tests/") and part == "tests":
        lint.find(path, line, "upward", f'"{included}" is a test\'s file')


def check_library(lint, path, shown, line, included):
    product = not shown.startswith("tests/")
    in_core = shown.startswith("core/")
    header = path.suffix == ".h"

    def refuse(rule, where):
        lint.find(path, line, rule, f"<{included}> belongs {where}")

    if re.match(r"Qt?[A-Z]", included) and shown.startswith(QT_FREE):
        refuse("qt", "above core, app/cli and app/platform")
    if included.startswith("SQLiteCpp") or included == "sqlite3.h":
        if product and (not shown.startswith(("core/log/", "core/copies/", "core/rescue/")) or header):
            refuse("sqlite", "in .cpp files of core/log, core/copies and core/rescue")
    if included.startswith("nlohmann/") and product:
        if "codec" not in path.name and "json" not in path.name:
            refuse("json", "in files named *codec* or *json*")
    if included.startswith("fmt/") and in_core and header:
        refuse("fmt", "in .cpp files of core")
    if included.startswith("CLI/") and product and not shown.startswith("app/cli/"):
        refuse("cli11", "in app/cli")
    if included.startswith("sodium") and product:
        if not shown.startswith(("core/base/", "core/log/", "core/people/")) or header:
            refuse("sodium", "in .cpp files of core/base, core/log and core/people")
    if re.match(r"QtCharts/|QChart|Q\w+Series$|Q\w*Axis$|QLegend", included) and product:
        if not shown.startswith("app/setup/") or header:
            refuse("charts", "in .cpp files of app/setup")
    if re.match(r"QtDBus/|QDBus", included) and product and not shown.startswith("app/power/"):
        refuse("dbus", "in app/power")
    if included.startswith(("gtest/", "gmock/", "benchmark/")) and product:
        refuse("test_library", "in tests")


def main():
    lint = Lint("layers", sys.argv)
    rooms = declared_uses(lint)
    check_rooms(lint, rooms)
    check_stage(lint)
    sources = 0
    for path in lint.files(["core", "app", "tests"], CPP):
        sources += 1
        shown = lint.shown(path)
        code = code_of(lint.read(path))
        for include in re.finditer(r'^[ \t]*#[ \t]*include[ \t]*([<"])([^>"\n]+)[>"]', code, re.MULTILINE):
            line = line_of(code, include.start())
            if include.group(1) == '"':
                check_own_include(lint, path, shown, line, include.group(2), rooms)
            check_library(lint, path, shown, line, include.group(2))
    if not rooms or not sources:
        lint.read_count = 0
    lint.finish()


main()
