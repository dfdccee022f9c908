#include "tests/faults/driver.h"

#include "app/platform/boot_clock.h"

#include <array>
#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <gtest/gtest.h>
#include <poll.h>
#include <sstream>
#include <sys/wait.h>
#include <unistd.h>

namespace seamclock::test {

namespace {

constexpr const char* kBootIdOfKernel = "/proc/sys/kernel/random/boot_id";
constexpr int kPatienceMs = 60'000;

/// The same words, run where that file stands for the kernel's boot id.
std::vector<std::string> onBoot(const std::string& bootIdFile, std::vector<std::string> words) {
    if (bootIdFile.empty()) {
        return words;
    }
    std::vector<std::string> inside{"unshare",
                                    "--mount",
                                    "sh",
                                    "-c",
                                    R"(mount --bind "$1" "$2" && shift 2 && exec "$@")",
                                    "sh",
                                    bootIdFile,
                                    kBootIdOfKernel};
    inside.insert(inside.end(), words.begin(), words.end());
    return inside;
}

std::vector<std::string> wordsOf(const DriverCall& call) {
    std::vector<std::string> words{
        std::string(SEAMCLOCK_BIN_DIR) + "/rehearse_driver",
        call.log,
        std::to_string(call.seed),
        call.trueTime ? "true" : "virtual",
        std::to_string(call.speed),
        call.resume ? "resume" : "new",
        call.word,
        std::to_string(call.dieAt),
        std::to_string(call.hand)};
    words.insert(words.begin(), call.before.begin(), call.before.end());
    return onBoot(call.bootIdFile, std::move(words));
}

/// A child whose standard output is read here.
class Child {
public:
    explicit Child(const std::vector<std::string>& words) {
        std::array<int, 2> ends{};
        if (::pipe(ends.data()) != 0) {
            ADD_FAILURE() << "no pipe";
            return;
        }
        std::vector<char*> arguments;
        arguments.reserve(words.size() + 1);
        for (const std::string& word : words) {
            arguments.push_back(const_cast<char*>(word.c_str()));
        }
        arguments.push_back(nullptr);
        m_pid = ::fork();
        if (m_pid == 0) {
            ::dup2(ends[1], STDOUT_FILENO);
            ::close(ends[0]);
            ::close(ends[1]);
            ::execvp(arguments[0], arguments.data());
            ::_exit(127);
        }
        ::close(ends[1]);
        m_out = ends[0];
    }
    ~Child() {
        if (m_pid > 0) {
            kill();
            wait();
        }
        if (m_out >= 0) {
            ::close(m_out);
        }
    }
    Child(const Child&) = delete;
    Child& operator=(const Child&) = delete;

    void kill() { ::kill(m_pid, SIGKILL); }

    /// Whether the process ended by SIGKILL.
    bool wait() {
        int status = 0;
        while (::waitpid(m_pid, &status, 0) < 0 && errno == EINTR) {
        }
        m_pid = -1;
        return WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
    }

    /// The next whole line; empty: none came within `patience`, or the output has ended (`isOver`).
    std::optional<std::string> line(int patienceMs) {
        while (true) {
            const auto end = m_read.find('\n');
            if (end != std::string::npos) {
                std::string next = m_read.substr(0, end);
                m_read.erase(0, end + 1);
                return next;
            }
            pollfd waiting{m_out, POLLIN, 0};
            if (m_over || ::poll(&waiting, 1, patienceMs) <= 0) {
                return {};
            }
            std::array<char, 4096> bytes{};
            const ssize_t got = ::read(m_out, bytes.data(), bytes.size());
            if (got <= 0) {
                m_over = true;
                return {};
            }
            m_read.append(bytes.data(), static_cast<std::size_t>(got));
        }
    }
    bool isOver() const { return m_over; }

private:
    pid_t m_pid = -1;
    int m_out = -1;
    bool m_over = false;
    std::string m_read;
};

void take(const std::string& line, Told& told) {
    std::istringstream words(line);
    std::string first;
    words >> first;
    std::string rest;
    std::getline(words >> std::ws, rest);
    std::istringstream values(rest);
    if (first == "event") {
        std::int64_t n = 0;
        Told::Event event;
        values >> n >> event.kind >> event.bootMs;
        told.events[n] = event;
    } else if (first == "saved") {
        std::int64_t n = 0;
        values >> n;
        told.saved.insert(n);
    } else if (first == "planned") {
        told.weld = rest;
    } else if (first == "resumed") {
        Told::Resumed resumed;
        values >> told.weld >> resumed.phase >> resumed.loMs >> resumed.hiMs >> resumed.bootMs >>
            resumed.events;
        told.resumed = resumed;
    } else if (first == "trouble") {
        told.troubles.push_back(rest);
    } else if (first == "aside") {
        told.aside = rest;
    } else if (first == "found") {
        told.found = rest;
    } else if (first == "done") {
        told.done = rest;
    } else if (first == "error") {
        told.error = rest;
    } else {
        ADD_FAILURE() << "the driver said: " << line;
    }
}

constexpr int kLookEveryMs = 50;

/// Reads until the output ends or `kill` says when (how many milliseconds are left; negative: not
/// yet decided).
template <class Left>
Told follow(const DriverCall& call, Left left) {
    Child child(wordsOf(call));
    Told told;
    bool killing = false;
    while (!child.isOver()) {
        const int more = killing ? kPatienceMs : left(told);
        const auto line = child.line(more < 0 ? kPatienceMs : more);
        if (line) {
            take(*line, told);
        } else if (!child.isOver()) {
            EXPECT_FALSE(killing || more < 0) << "the driver is silent";
            child.kill();
            killing = true;
        }
    }
    told.killed = child.wait();
    return told;
}

int leftOf(Milliseconds due) {
    return static_cast<int>(std::max<std::int64_t>((due - bootTime()).count(), 0));
}

} // namespace

Told runDriver(const DriverCall& call) {
    return follow(call, [](const Told&) { return -1; });
}

Told runDriverFor(const DriverCall& call, Milliseconds life) {
    std::optional<Milliseconds> due;
    return follow(call, [&](const Told& told) {
        if (!due && !told.weld.empty()) {
            due = bootTime() + life;
        }
        return due ? leftOf(*due) : -1;
    });
}

Told runDriverTo(const DriverCall& call, const std::string& kind, Milliseconds more) {
    std::optional<Milliseconds> due;
    return follow(call, [&](const Told& told) {
        const bool seen = !told.events.empty() && told.events.rbegin()->second.kind == kind;
        if (!due && seen) {
            due = bootTime() + more;
        }
        return due ? leftOf(*due) : -1;
    });
}

Told runDriverWatched(const DriverCall& call, const std::function<bool(const Told&)>& look) {
    Child child(wordsOf(call));
    Told told;
    bool killing = false;
    int silent = 0; // looks without a line
    while (!child.isOver()) {
        if (const auto line = child.line(kLookEveryMs)) {
            take(*line, told);
            silent = 0;
        } else if (!child.isOver() && ++silent > kPatienceMs / kLookEveryMs) {
            ADD_FAILURE() << "the driver is silent";
            child.kill();
            killing = true;
        }
        if (!killing && !look(told)) {
            child.kill();
            killing = true;
        }
    }
    told.killed = child.wait();
    return told;
}

std::string recoverSays(const std::string& log, const std::string& bootIdFile) {
    Child child(onBoot(
        bootIdFile, {std::string(SEAMCLOCK_BIN_DIR) + "/seamclock-cli", "log", "recover", "--json",
                     "--log", log}));
    std::string said;
    while (!child.isOver()) {
        if (const auto line = child.line(kPatienceMs)) {
            said += *line + "\n";
        } else if (!child.isOver()) {
            ADD_FAILURE() << "log recover is silent";
            break;
        }
    }
    return said;
}

std::string whyNoOtherBoot(const std::string& bootIdFile) {
    if (::geteuid() != 0) {
        return "only root may mount another boot id over the kernel's";
    }
    const std::string command = "unshare --mount sh -c 'mount --bind \"$0\" " +
                                std::string(kBootIdOfKernel) + "' '" + bootIdFile + "' 2>/dev/null";
    return std::system(command.c_str()) == 0 ? ""
                                             : "this machine gives root no mount namespace (a "
                                               "container without the right to mount)";
}

} // namespace seamclock::test
