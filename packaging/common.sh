# What packaging/run, packaging/check and packaging/stage share; sourced by them.
# Everything they write stays inside the tree, under build/.

root=$(cd -- "$(dirname -- "$(readlink -f -- "${BASH_SOURCE[0]}")")/.." && pwd -P)
logs=$root/build/logs

export LC_ALL=C.UTF-8 PYTHONUTF8=1 PYTHONDONTWRITEBYTECODE=1
export CCACHE_DIR=${CCACHE_DIR:-$root/build/ccache}
export CCACHE_SLOPPINESS=${CCACHE_SLOPPINESS:-pch_defines,time_macros}   # else nothing is cached beside precompiled headers

# Builds that begin with nothing: headers compiled once, and the sources of a target eight at a time (cmake/seamclock.cmake).
whole_build=(-DSEAMCLOCK_PRECOMPILE=ON -DCMAKE_UNITY_BUILD=ON -DCMAKE_UNITY_BUILD_BATCH_SIZE=8)

say() { printf '%s\n' "$*"; }
die() {
    printf '%s\n' "$*" >&2
    exit 1
}

make_logs() {
    mkdir -p -- "$logs" 2>/dev/null && [ -w "$root/build" ] && [ -w "$logs" ] ||
        die "$root/build can't be written by $(id -un): remove it or give it to $(id -un), then start again."
}

# lock NAME: one builder for one build folder; a second start waits for the first. Children don't inherit it.
lock() {
    { exec 9>>"$root/build/$1.lock"; } 2>/dev/null ||
        die "$root/build/$1.lock can't be written by $(id -un): remove it, then start again."
    if ! flock -n 9; then
        say "Another packaging/$1 is at work in this tree; waiting for it."
        flock 9
    fi
}

# What chooses the deep stage and its part; SEAMCLOCK_COUNT stands in for it, to see another part.
commit_count() {
    if [ -n "${SEAMCLOCK_COUNT-}" ]; then
        echo "$SEAMCLOCK_COUNT"
    else
        git -c safe.directory='*' -C "$root" rev-list --count HEAD 2>/dev/null || echo 0
    fi
}
commit_name() {
    local name
    name=$(git -c safe.directory='*' -C "$root" rev-parse --short=12 HEAD 2>/dev/null) || {
        echo "no commit"
        return
    }
    [ -z "$(git -c safe.directory='*' -C "$root" status --porcelain 2>/dev/null)" ] || name="$name with changes"
    echo "$name"
}

# picture_named FOLDER NAME: the one of the walk through the screens (--pictures, light, 1280x800) that has this name behind
# its number, which moves; "practice-soak" is the one of practice. Fails if there is none.
picture_named() {
    local pattern="[0-9]+-$2"
    [ "$2" = "${2#practice-}" ] || pattern="practice-[0-9]+-${2#practice-}"
    # Not "ls |": that one would be ended, and the pipe fail, if grep had found it before ls was through.
    grep -m1 -E "^1280x800-light-$pattern\.png$" <<<"$(ls -- "$1")"
}

# The names in one section of packages.txt.
packages_of() {
    awk -v wanted="[$1]" '/^\[/ { inside = ($1 == wanted); next } inside && NF && !/^#/ { print $1 }' \
        "$root/packaging/packages.txt"
}

# The line of a log that says what went wrong.
first_error() {
    grep -m1 -E '^E: |error: ' -- "$1" && return
    if grep -q '^CMake Error' -- "$1"; then
        grep -m1 -A3 '^CMake Error' -- "$1" | tr -s '\n ' ' '
        return
    fi
    grep -m1 'FAILED: ' -- "$1" || tail -n 1 -- "$1"
}

# The errors in a log, each once, and its end; without the compiler's command lines and the tests that passed.
show_end() {
    { grep -E 'error: |ERROR: |^CMake Error|WARNING: ThreadSanitizer|runtime error' -- "$1" || true; } |
        awk '!seen[$0]++' | head -n 20 | cut -c1-300
    echo "…"
    grep -v -E '^(/[^ ]*/)?(ccache|c\+\+|g\+\+|clang\+\+-14) | Passed +[0-9.]+ sec$|^ +Start +[0-9]+: ' -- "$1" |
        tail -n 80 | cut -c1-300
}

# need_packages SECTION…: installs by apt what is missing of these sections, and says what.
need_packages() {
    command -v dpkg-query >/dev/null && command -v apt-get >/dev/null ||
        die "This system has no apt: Seamclock builds on Debian 12; packaging/packages.txt lists what it needs."
    local section name missing=() as_root=()
    for section in "$@"; do
        for name in $(packages_of "$section"); do
            [ "$(dpkg-query -W -f='${db:Status-Status}' "$name" 2>/dev/null)" = installed ] || missing+=("$name")
        done
    done
    [ ${#missing[@]} -gt 0 ] || return 0
    say "Installing Debian packages: ${missing[*]}"
    if [ "$(id -u)" -ne 0 ]; then
        command -v sudo >/dev/null ||
            die "Installing needs root, and there is no sudo: as root, apt-get install ${missing[*]}"
        sudo -v || die "sudo refused $(id -un): as root, apt-get install ${missing[*]}"
        as_root=(sudo)
    fi
    local log=$logs/apt.log apt=(env DEBIAN_FRONTEND=noninteractive apt-get -q -y
        -o DPkg::Lock::Timeout=300 -o Acquire::Retries=3)
    "${as_root[@]}" "${apt[@]}" update </dev/null >"$log" 2>&1 ||
        die "apt-get update failed: $(first_error "$log") (all of it: $log)"
    "${as_root[@]}" "${apt[@]}" install --no-install-recommends "${missing[@]}" </dev/null >>"$log" 2>&1 ||
        die "apt-get install failed: $(first_error "$log") (all of it: $log)"
}

# As many compilers as there are processors, but not more than there is memory for (1.2 GB each).
jobs_fitting() {
    local jobs memory
    jobs=$(nproc)
    memory=$(awk '/^MemAvailable:/ { print int($2 / 1200000) }' /proc/meminfo 2>/dev/null)
    if [ -n "$memory" ] && [ "$memory" -lt "$jobs" ]; then
        jobs=$((memory > 1 ? memory : 1))
    fi
    echo "$jobs"
}

# configure FOLDER [CMAKE OPTIONS]: starts afresh when the folder was made for another place or generator.
configure() {
    local folder=$1 fresh=()
    shift
    if [ -f "$folder/CMakeCache.txt" ] &&
        ! { grep -qxF "CMAKE_HOME_DIRECTORY:INTERNAL=$root" "$folder/CMakeCache.txt" &&
            grep -qxF "CMAKE_GENERATOR:INTERNAL=Ninja" "$folder/CMakeCache.txt"; }; then
        fresh=(--fresh)
    fi
    cmake "${fresh[@]}" -S "$root" -B "$folder" -G Ninja "$@" </dev/null 9>&-
}

# build FOLDER [NINJA OPTIONS OR TARGETS]
build() {
    local folder=$1
    shift
    ninja -C "$folder" -j "$(jobs_fitting)" "$@" </dev/null 9>&-
}

# run_tests FOLDER [CTEST OPTIONS]: the tests below this folder of a build; none to run is a failure. Their home and
# temporary folder are empty ones of their own, so that no test touches the person's data.
run_tests() {
    local folder=$1 home=$root/build/test-home
    shift
    rm -rf -- "$home" && mkdir -p -- "$home/tmp" || return
    env -u XDG_DATA_HOME -u XDG_CONFIG_HOME -u XDG_CACHE_HOME -u XDG_STATE_HOME -u XDG_RUNTIME_DIR \
        HOME="$home" TMPDIR="$home/tmp" \
        ctest --test-dir "$folder" -j2 --no-tests=error --output-on-failure "$@" </dev/null 9>&-
}
