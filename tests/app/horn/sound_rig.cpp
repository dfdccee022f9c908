#include "tests/app/horn/sound_rig.h"

#include "app/platform/boot_clock.h"
#include "tests/app/horn/goertzel.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <gtest/gtest.h>
#include <poll.h>
#include <signal.h>
#include <sstream>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <system_error>
#include <unistd.h>

namespace seamclock::test {

namespace {

constexpr double kSamplesPerMs = 48;
constexpr std::size_t kSilenceWithin = 5 * 48; // samples

const std::vector<double> kActNotes{587.33, 880.0, 1'174.659}; // D5, A5, D6 (ISO 16)
const std::vector<double> kTwoNotes{587.33, 880.0};

// Of full scale. The weakest is a tick, 8 dB down, in the half of it that falls: 0.096; all others
// are above 0.25. Absent ones leak 0.01 at most.
constexpr double kHeard = 0.08;
constexpr double kAbsent = 0.05;

double raised(double hertz, int semitones) {
    return hertz * std::pow(2, semitones / 12.0);
}

void rest(int ms) {
    ::poll(nullptr, 0, ms);
}

} // namespace

double bootMs() {
    return static_cast<double>(bootTime().count());
}

void waitUntil(double at) {
    while (bootMs() < at) {
        rest(std::max(1, static_cast<int>(at - bootMs())));
    }
}

Child::Child(const std::vector<std::string>& command, const std::vector<std::string>& environment) {
    int in[2];
    int out[2];
    if (::pipe2(in, O_CLOEXEC) != 0 || ::pipe2(out, O_CLOEXEC) != 0) {
        ADD_FAILURE() << "no pipe: " << std::strerror(errno);
        return;
    }
    std::vector<char*> words;
    for (const std::string& word : command) {
        words.push_back(const_cast<char*>(word.c_str()));
    }
    words.push_back(nullptr);
    std::vector<char*> variables;
    for (const std::string& variable : environment) {
        variables.push_back(const_cast<char*>(variable.c_str()));
    }
    variables.push_back(nullptr);
    m_pid = ::fork();
    if (m_pid == 0) {
        ::prctl(PR_SET_PDEATHSIG, SIGKILL);
        ::dup2(in[0], STDIN_FILENO);
        ::dup2(out[1], STDOUT_FILENO);
        const int nowhere = ::open("/dev/null", O_WRONLY | O_CLOEXEC);
        ::dup2(nowhere, STDERR_FILENO);
        ::execvpe(words[0], words.data(), variables.data());
        ::_exit(127);
    }
    ::close(in[0]);
    ::close(out[1]);
    m_input = in[1];
    m_output = out[0];
}

Child::~Child() {
    closeInput();
    waitForEnd(Milliseconds{0});
    ::close(m_output);
}

void Child::signal(int number) const {
    if (m_pid > 0) {
        ::kill(m_pid, number);
    }
}

void Child::closeInput() {
    if (m_input >= 0) {
        ::close(m_input);
        m_input = -1;
    }
}

bool Child::readMore(int waitMs) {
    pollfd output{m_output, POLLIN, 0};
    if (m_ended || ::poll(&output, 1, waitMs) <= 0) {
        return false;
    }
    char buffer[4'096];
    const ssize_t got = ::read(m_output, buffer, sizeof buffer);
    if (got <= 0) {
        m_ended = true;
        return false;
    }
    m_partial.append(buffer, static_cast<std::size_t>(got));
    for (std::size_t end = m_partial.find('\n'); end != std::string::npos;
         end = m_partial.find('\n')) {
        std::istringstream line(m_partial.substr(0, end));
        std::string word;
        double value = 0;
        line >> word >> value;
        m_told.emplace_back(word, value);
        m_partial.erase(0, end + 1);
    }
    return true;
}

double Child::waitFor(const std::string& word, Milliseconds most) {
    const double end = bootMs() + static_cast<double>(most.count());
    while (true) {
        if (const auto all = told(word); !all.empty()) {
            return all.front().second;
        }
        if (m_ended || bootMs() > end) {
            ADD_FAILURE() << "no line \"" << word << "\" came";
            return -1;
        }
        readMore(20);
    }
}

std::vector<std::pair<std::string, double>> Child::told(const std::string& word) {
    while (readMore(0)) {
    }
    std::vector<std::pair<std::string, double>> out;
    for (const auto& line : m_told) {
        if (line.first.compare(0, word.size(), word) == 0) {
            out.push_back(line);
        }
    }
    return out;
}

int Child::waitForEnd(Milliseconds most) {
    if (m_pid <= 0) {
        return -1;
    }
    const double end = bootMs() + static_cast<double>(most.count());
    int status = 0;
    while (::waitpid(m_pid, &status, WNOHANG) == 0) {
        if (bootMs() >= end) {
            ::kill(m_pid, SIGKILL);
            ::waitpid(m_pid, &status, 0);
            break;
        }
        rest(5);
    }
    m_pid = -1;
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

SocketFolder::SocketFolder() {
    std::string name = std::string(P_tmpdir) + "/seamclock-sound-XXXXXX";
    const char* made = ::mkdtemp(name.data());
    EXPECT_NE(made, nullptr) << "no folder for the sound server's socket";
    m_path = made != nullptr ? made : "";
}

SocketFolder::~SocketFolder() {
    std::error_code ignored;
    if (!m_path.empty()) {
        std::filesystem::remove_all(m_path, ignored);
    }
}

SoundRig::SoundRig() = default;

SoundRig::~SoundRig() {
    stopRecorder();
    killServer();
}

std::vector<std::string> SoundRig::environment() const {
    const char* const path = std::getenv("PATH");
    return {
        std::string("PATH=") + (path == nullptr ? "/usr/bin:/bin" : path),
        "HOME=" + m_folder.path(), "XDG_RUNTIME_DIR=" + m_folder.path(),
        "PULSE_SERVER=unix:" + m_folder.file("native")};
}

// norewinds: else a null sink renders two seconds of silence ahead when it starts, and nothing can
// be heard for that long.
double SoundRig::startServer() {
    ::unlink(m_folder.file("native").c_str());
    const std::vector<std::string> command{
        "pulseaudio",
        "-n",
        "--daemonize=no",
        "--exit-idle-time=-1",
        "--use-pid-file=no",
        "--realtime=no",
        "--high-priority=no",
        "-L",
        "module-native-protocol-unix auth-anonymous=1 socket=" + m_folder.file("native"),
        "-L",
        "module-null-sink sink_name=bench norewinds=1 rate=48000 channels=1 format=s16le"};
    m_server = std::make_unique<Child>(command, environment());
    const double most = bootMs() + 20'000;
    while (bootMs() < most) {
        const double asked = bootMs();
        const std::vector<std::string> question{"pactl", "info"};
        Child probe(question, environment());
        if (probe.waitForEnd(Milliseconds{5'000}) == 0) {
            return asked;
        }
        rest(5);
    }
    ADD_FAILURE() << "the test's sound server doesn't answer";
    return -1;
}

void SoundRig::killServer() {
    if (m_server) {
        m_server->signal(SIGKILL);
        m_server.reset();
    }
}

void SoundRig::signalServer(int number) const {
    m_server->signal(number);
}

void SoundRig::stopRecorder() {
    if (m_recorder) {
        m_recorder->signal(SIGKILL);
        m_reader.join();
        m_recorder.reset();
    }
}

void SoundRig::startRecorder() {
    stopRecorder();
    m_pcm.clear();
    m_stamps.clear();
    const std::vector<std::string> command{
        "parec",        "-d",           "bench.monitor", "--raw", "--latency-msec=5",
        "--rate=48000", "--channels=1", "--format=s16le"};
    m_recorder = std::make_unique<Child>(command, environment());
    m_reader = std::thread(&SoundRig::record, this, m_recorder->output());
    const double most = bootMs() + 10'000;
    while (bootMs() < most) {
        {
            const std::lock_guard<std::mutex> held(m_mutex);
            if (!m_stamps.empty()) {
                return;
            }
        }
        rest(2);
    }
    ADD_FAILURE() << "the recorder brings nothing";
}

void SoundRig::record(int from) {
    std::vector<char> buffer(65'536);
    std::size_t odd = 0;
    while (true) {
        const ssize_t got = ::read(from, buffer.data() + odd, buffer.size() - odd);
        if (got <= 0) {
            return;
        }
        const double now = bootMs() + 0.5; // cut to whole milliseconds
        const std::size_t bytes = odd + static_cast<std::size_t>(got);
        const std::size_t samples = bytes / 2;
        const std::lock_guard<std::mutex> held(m_mutex);
        const std::size_t before = m_pcm.size();
        m_pcm.resize(before + samples);
        std::memcpy(m_pcm.data() + before, buffer.data(), samples * 2);
        odd = bytes % 2;
        if (odd == 1) {
            buffer[0] = buffer[bytes - 1];
        }
        m_stamps.emplace_back(now, m_pcm.size());
    }
}

std::vector<HeardSound> SoundRig::heard() {
    const std::lock_guard<std::mutex> held(m_mutex);
    double offset = 1e18;
    for (const auto& [now, samples] : m_stamps) {
        offset = std::min(offset, now - static_cast<double>(samples) / kSamplesPerMs);
    }
    std::vector<HeardSound> out;
    std::size_t last = 0;
    std::size_t from = 0;
    const auto close = [&] {
        HeardSound sound;
        sound.startMs = offset + static_cast<double>(from) / kSamplesPerMs;
        sound.ended = m_pcm.size() - last > kSilenceWithin;
        sound.lengthMs = static_cast<double>(last + 1 - from) / kSamplesPerMs;
        sound.pcm.assign(
            m_pcm.begin() + static_cast<std::ptrdiff_t>(from),
            m_pcm.begin() + static_cast<std::ptrdiff_t>(last + 1));
        const auto read = std::find_if(m_stamps.begin(), m_stamps.end(), [&](const auto& stamp) {
            return stamp.second > from;
        });
        sound.arrivedMs = read->first;
        out.push_back(std::move(sound));
    };
    bool sounding = false;
    for (std::size_t i = 0; i < m_pcm.size(); ++i) {
        if (m_pcm[i] == 0) {
            continue;
        }
        if (sounding && i - last > kSilenceWithin) {
            close();
            sounding = false;
        }
        if (!sounding) {
            from = i;
            sounding = true;
        }
        last = i;
    }
    if (sounding) {
        close();
    }
    return out;
}

HeardSound SoundRig::waitForSound(double fromMs, Milliseconds most) {
    const double end = bootMs() + static_cast<double>(most.count());
    do {
        for (const HeardSound& sound : heard()) {
            if (sound.arrivedMs >= fromMs && sound.ended) {
                return sound;
            }
        }
        rest(20);
    } while (bootMs() < end);
    ADD_FAILURE() << "no sound after " << fromMs;
    return {};
}

std::unique_ptr<Child> SoundRig::drive(const std::string& how, int soakMs) const {
    const std::string bin = std::string(SEAMCLOCK_BIN_DIR) + "/";
    const std::vector<std::string> command{
        bin + "sound_driver", bin + "seamclock-horn", how, std::to_string(soakMs)};
    return std::make_unique<Child>(command, environment());
}

Busy::Busy(unsigned processes) {
    for (unsigned i = 0; i < processes; ++i) {
        const pid_t pid = ::fork();
        if (pid == 0) {
            ::prctl(PR_SET_PDEATHSIG, SIGKILL);
            volatile std::uint64_t count = 0;
            while (true) {
                count = count + 1;
            }
        }
        m_pids.push_back(pid);
    }
}

Busy::~Busy() {
    for (const pid_t pid : m_pids) {
        ::kill(pid, SIGKILL);
        ::waitpid(pid, nullptr, 0);
    }
}

SchedulerProbe::SchedulerProbe()
    : m_thread([this] {
          constexpr int kEveryMs = 5;
          while (!m_stop) {
              const double before = bootMs();
              rest(kEveryMs);
              const double after = bootMs();
              const std::lock_guard<std::mutex> held(m_mutex);
              m_late.emplace_back(after, after - before - kEveryMs);
          }
      }) {}

SchedulerProbe::~SchedulerProbe() {
    m_stop = true;
    m_thread.join();
}

double SchedulerProbe::worstBetween(double fromMs, double toMs) {
    const std::lock_guard<std::mutex> held(m_mutex);
    double worst = 0;
    for (const auto& [when, late] : m_late) {
        if (when >= fromMs && when <= toMs) {
            worst = std::max(worst, late);
        }
    }
    return worst;
}

double SchedulerProbe::worst() {
    return worstBetween(0, 1e18);
}

void judgeTone(const HeardSound& heard, const WantedSound& wanted) {
    // Whole but for the samples that its envelope rounds to nothing at both ends.
    EXPECT_NEAR(heard.lengthMs, wanted.lengthMs, 1.5) << wanted.what;
    const std::size_t window = std::min<std::size_t>(heard.pcm.size() * 4 / 10, 48 * 100);
    const std::size_t edge = 48 * 5;
    if (heard.pcm.size() < window + 2 * edge) {
        ADD_FAILURE() << wanted.what << " is only " << heard.lengthMs << " ms";
        return;
    }
    const auto check = [&](const std::vector<double>& notes, std::size_t from) {
        for (const double note : notes) {
            EXPECT_GT(strengthAt(note, heard.pcm.data() + from, window), kHeard)
                << wanted.what << ": " << note << " Hz is not heard";
        }
        for (const double note : kActNotes) {
            const bool near = std::any_of(notes.begin(), notes.end(), [&](double other) {
                return std::abs(other - note) < 110; // the window's own width, at 40 ms
            });
            if (!near) {
                EXPECT_LT(strengthAt(note, heard.pcm.data() + from, window), kAbsent)
                    << wanted.what << ": " << note << " Hz is heard";
            }
        }
    };
    check(wanted.notes, edge);
    check(wanted.lastNotes, heard.pcm.size() - edge - window);
}

std::vector<double>
judge(const std::vector<HeardSound>& heard, const std::vector<WantedSound>& wanted) {
    std::vector<double> late;
    std::vector<bool> known(heard.size(), false);
    for (const WantedSound& want : wanted) {
        std::size_t best = heard.size();
        for (std::size_t i = 0; i < heard.size(); ++i) {
            const auto distance = [&](std::size_t of) {
                return std::abs(heard[of].startMs - want.startMs);
            };
            if (!known[i] && (best == heard.size() || distance(i) < distance(best))) {
                best = i;
            }
        }
        if (best == heard.size() ||
            std::abs(heard[best].startMs - want.startMs) > want.toleranceMs) {
            ADD_FAILURE() << want.what << " at " << want.startMs
                          << " is missing; the nearest is off by "
                          << (best == heard.size() ? 0 : heard[best].startMs - want.startMs);
            continue;
        }
        known[best] = true;
        late.push_back(heard[best].startMs - want.startMs);
        judgeTone(heard[best], want);
    }
    for (std::size_t i = 0; i < heard.size(); ++i) {
        EXPECT_TRUE(known[i]) << "nobody asked for " << heard[i].lengthMs << " ms at "
                              << heard[i].startMs;
    }
    return late;
}

std::vector<WantedSound> actNow(double due, double end) {
    std::vector<WantedSound> out{{"act now", due, 600, kActNotes, kActNotes, 60}};
    for (double at = due + 850; at < end; at += 500) {
        out.push_back({"act now again", at, 250, kActNotes, kActNotes, 60});
    }
    return out;
}

std::vector<WantedSound> beforeTheStep(double due) {
    std::vector<WantedSound> all;
    // Bench 1: one pulse, and again after a second.
    all.push_back({"get ready", due - 10'000, 180, kTwoNotes, kTwoNotes, 60});
    all.push_back({"get ready again", due - 10'000 + 180 + 1'000, 180, kTwoNotes, kTwoNotes, 60});
    for (const int count : {3, 2, 1}) {
        all.push_back({"count-in", due - 1'000 * count, 120, kTwoNotes, kTwoNotes, 60});
    }
    return all;
}

std::vector<WantedSound> wholeWeld(Child& driver) {
    const Milliseconds soon{20};
    const double due = driver.waitFor("due", soon);
    const double out = driver.waitFor("plate_out", soon);
    const double met = driver.waitFor("faces_met", soon);
    const double reading = driver.waitFor("reading", soon);
    const double locked = driver.waitFor("locked", soon);
    std::vector<WantedSound> all = beforeTheStep(due);
    for (const WantedSound& act : actNow(due, out)) {
        all.push_back(act);
    }
    // Quieter by 8 dB and only 50 ms: two seconds of changeover before its limit of 2.25.
    for (const int second : {1, 2}) {
        all.push_back({"tick", out + 1'000 * second, 50, {880}, {880}, 60});
    }
    // One millisecond past its limit.
    for (double at = out + 2'251; at < met; at += 500) {
        all.push_back({"overrun", at, 350, {}, {}, 60});
        // In the first and last 100 ms it rises by 1.4 semitones: its mean there.
        for (const double note : kTwoNotes) {
            all.back().notes.push_back(raised(note, 1));
            all.back().lastNotes.push_back(raised(note, 4));
        }
    }
    for (double at = met + 2'001; at < reading; at += 500) {
        all.push_back({"build-up late", at, 350, kTwoNotes, kTwoNotes, 60});
    }
    // Cooling is shorter than its notice of a minute, so the step itself brings it: not known
    // ahead.
    all.push_back({"cooling's get ready", locked, 180, kTwoNotes, kTwoNotes, 250});
    all.push_back({"cooling's get ready again", locked + 1'180, 180, kTwoNotes, kTwoNotes, 250});
    all.push_back({"done", locked + 6'000, 800, {880, 1'174.659}, kTwoNotes, 60});
    return all;
}

double strengthIn(
    const HeardSound& heard, double hertz, std::ptrdiff_t fromSample, std::ptrdiff_t samples) {
    return strengthAt(hertz, heard.pcm.data() + fromSample, static_cast<std::size_t>(samples));
}

std::vector<double> judgeAWholeWeld(SoundRig& rig, const std::function<double(double)>& more) {
    constexpr int kSoakMs = 11'000;
    const auto driver = rig.drive("weld", kSoakMs);
    driver->waitFor("locked", Milliseconds{60'000});
    EXPECT_EQ(driver->waitForEnd(Milliseconds{20'000}), 0);
    std::vector<WantedSound> wanted = wholeWeld(*driver);
    for (WantedSound& want : wanted) {
        want.toleranceMs += more(want.startMs);
    }
    const std::vector<double> late = judge(rig.heard(), wanted);
    std::printf("late by, in ms:");
    for (const double each : late) {
        std::printf(" %.1f", each);
    }
    std::printf("\n");
    return late;
}

void judgeComingBack(SoundRig& rig, Milliseconds away) {
    constexpr double kBackWithin = 2'000;
    constexpr int kSoakMs = 1'000;
    rig.startServer();
    rig.startRecorder();
    const auto driver = rig.drive("stand", kSoakMs);
    driver->waitFor("sound", Milliseconds{10'000});
    // The first, which is longer, and a repeat of it.
    const HeardSound begin = rig.waitForSound(0, Milliseconds{10'000});
    rig.waitForSound(begin.arrivedMs + 500, Milliseconds{10'000});
    waitUntil(bootMs() + 500);
    const double gone = bootMs();
    rig.killServer();
    const double told = driver->waitFor("no_sound_", Milliseconds{5'000});
    EXPECT_LT(told - gone, 1'000);
    waitUntil(gone + static_cast<double>(away.count()));
    const double answered = rig.startServer();
    rig.startRecorder();
    const HeardSound first = rig.waitForSound(answered, Milliseconds{10'000});
    EXPECT_LT(first.arrivedMs - answered, kBackWithin);
    std::printf(
        "%lld ms away: sound %.0f ms after the server answered\n",
        static_cast<long long>(away.count()), first.arrivedMs - answered);
    // And it is the act now that stands, whole, in its rhythm.
    waitUntil(bootMs() + 2'500);
    std::vector<HeardSound> all = rig.heard();
    ASSERT_GE(all.size(), 4U);
    if (!all.back().ended) {
        all.pop_back();
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
        judgeTone(all[i], {"act now", 0, 250, kActNotes, kActNotes, 0});
        if (i > 0) {
            EXPECT_NEAR(all[i].startMs - all[i - 1].startMs, 500, 60);
        }
    }
}

} // namespace seamclock::test
