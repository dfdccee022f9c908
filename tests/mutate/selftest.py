"""What mutate.py changes, and what it leaves alone, on a text written for it; and that it copies what is built."""
import re
import sys
from pathlib import Path

sys.argv = ["mutate"]
sys.path.insert(0, str(Path(__file__).resolve().parent))
import mutate  # noqa: E402

TEXT = """\
// a < b, 7
#include <x>
template <int N = 4>
int f(const std::vector<int>& v, int&& a, int* p) {
    static_assert(sizeof(int) == 4);
    std::string text = "8 < 9" + name + R"(1 == 2)";
    if (a <= 10 && !v.empty()) {
        v.reserve(3);
        v.push_back(a - 1);
    }
    return std::min(v.front(), 0x1F) * 0.5;
}
"""
EXPECTED = [
    ("<=", "<"), ("&&", "||"), ("10", "11"), ("10", "9"), ("!", ""), ("-", "+"), ("1", "2"), ("1", "0"),
    ("std::min", "std::max"), (".front()", ".back()"), ("*", "/"), ("0.5", "1.5"),
    ("a <= 10 && !v.empty()", "!(a <= 10 && !v.empty())"), ("v.push_back(a - 1);", ";"),
]


def main():
    made = [(TEXT[m.start:m.end], m.new) for m in mutate.mutants_of("core/weld/x.cpp", TEXT)]
    member = [m.text() for m in mutate.mutants_of("core/weld/x.h", "    int count = 3;\n    bool on = false;\n")]
    limits = [TEXT[m.start:m.end] for path in ("core/weld/x.cpp", "core/bench/x.cpp")
              for m in mutate.mutants_of(path, TEXT) if m.of_a_limit]
    kept = [m.new for m in mutate.mutants_of("core/weld/x.h", "constexpr int kCount = 3;\n")]
    problems = [f"not made: {pair}" for pair in EXPECTED if pair not in made]
    problems += [f"made without reason: {pair}" for pair in made if pair not in EXPECTED]
    problems += [f"made without reason: {text}" for text in member]
    if kept != ["4", "2"]:
        problems.append(f"a constant in a header gave {kept}")
    if limits != ["<="]:
        problems.append(f"limits were seen in {limits}")
    root = Path(__file__).resolve().parents[2]
    built = re.findall(r"add_subdirectory\((\w+)\)", (root / "CMakeLists.txt").read_text(encoding="utf-8"))
    problems += [f"the build needs {folder}, and it is not copied" for folder in built if folder not in mutate.COPIED]
    apart = re.search(r"Mutants AND CMAKE_CURRENT_SOURCE_DIR MATCHES \"/core/\(([\w|]+)\)\$",
                      (root / "cmake/seamclock.cmake").read_text(encoding="utf-8"))
    if not apart or set(apart.group(1).split("|")) != set(mutate.ROOMS):
        problems.append("the rooms whose sources are compiled apart are not the ones that are changed")
    if len(built) < 3:
        problems.append(f"of the folders that the build asks for only {built} were found")
    for problem in problems:
        print(problem)
    print(f"{len(made)} changes, {len(problems)} problems")
    sys.exit(1 if problems else 0)


main()
