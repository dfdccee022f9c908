"""JSON data that ships: parses, is UTF-8 without a mark, and names no key twice (parsers keep one and say nothing)."""
import json
import sys

from source_files import Lint


def main():
    lint = Lint("json_files", sys.argv)
    for path in lint.files(["resources"], (".json",)):
        text = lint.read(path)

        def pairs(items):
            keys = [key for key, _ in items]
            for key in sorted({key for key in keys if keys.count(key) > 1}):
                lint.find(path, 1, "duplicate_key", f'"{key}" stands {keys.count(key)} times in one object')
            return dict(items)

        def constant(name):
            lint.find(path, 1, "not_a_number", f"{name} is not JSON")

        try:
            json.loads(text, object_pairs_hook=pairs, parse_constant=constant)
        except json.JSONDecodeError as error:
            lint.find(path, error.lineno, "not_json", f"{error.msg}, column {error.colno}")
    lint.finish()


main()
