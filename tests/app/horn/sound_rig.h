// A sound server of its own for one test, whose only output is a null sink that is recorded; a
// program that welds; and what was heard, from the recorded samples alone.
//
// From a sample to the boot clock: the recorder asks for 5 ms of latency, and each read of its
// bytes is stamped. While the server runs undisturbed its samples come at an even pace, so the
// smallest of "stamp minus samples so far" marks a read that was not late. Sound can't arrive
// before it is made: the mapping errs to the late side only.
#pragma once

#include "core/base/instant.h"
#include "tests/support/scratch_folder.h"

#include <atomic>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <mutex>
#include <string>
#include <sys/types.h>
#include <thread>
#include <utility>
#include <vector>

namespace seamclock::test {

/// A stretch that isn't silence, with less than 5 ms of silence inside.
struct HeardSound {
    double startMs = 0; // on the boot clock
    double lengthMs = 0;
    std::vector<std::int16_t> pcm;
    bool ended = false;   // silence follows; else it may still sound
    double arrivedMs = 0; // the stamp of the read that brought its beginning
};

/// What should be heard. `notes` at its beginning, `lastNotes` at its end.
struct WantedSound {
    std::string what;
    double startMs = 0;
    double lengthMs = 0;
    std::vector<double> notes;
    std::vector<double> lastNotes;
    double toleranceMs = 60;
};

/// A child process whose lines are read as they come.
class Child {
public:
    Child(const std::vector<std::string>& command, const std::vector<std::string>& environment);
    ~Child();
    Child(const Child&) = delete;
    Child& operator=(const Child&) = delete;

    pid_t pid() const { return m_pid; }
    int output() const { return m_output; }
    void signal(int number) const;
    void closeInput();
    /// The number after this word, once a line that begins with it has come. A test fails, and it
    /// is -1, if none comes in time or the process ends before.
    double waitFor(const std::string& word, Milliseconds most);
    /// All lines so far that begin so: the word, the number.
    std::vector<std::pair<std::string, double>> told(const std::string& word);
    /// Its exit code; -1 if it had to be killed.
    int waitForEnd(Milliseconds most);

private:
    bool readMore(int waitMs);

    pid_t m_pid = -1;
    int m_input = -1;
    int m_output = -1;
    std::string m_partial;
    std::vector<std::pair<std::string, double>> m_told;
    bool m_ended = false;
};

/// Not below the build: a sound server's address ends at a blank, and a socket's path is short.
class SocketFolder {
public:
    SocketFolder();
    ~SocketFolder();
    SocketFolder(const SocketFolder&) = delete;
    SocketFolder& operator=(const SocketFolder&) = delete;

    std::string file(const std::string& name) const { return m_path + "/" + name; }
    const std::string& path() const { return m_path; }

private:
    std::string m_path;
};

class SoundRig {
public:
    SoundRig();
    ~SoundRig();
    SoundRig(const SoundRig&) = delete;
    SoundRig& operator=(const SoundRig&) = delete;

    /// Until it answers; the boot clock then.
    double startServer();
    void killServer();
    void signalServer(int number) const;
    void startRecorder();
    /// What was recorded since the last startRecorder().
    std::vector<HeardSound> heard();
    /// The first sound that begins at `from` or later and is over, as its bytes arrived: for a
    /// server that was away, whose samples don't come at an even pace. A test fails if none comes.
    HeardSound waitForSound(double fromMs, Milliseconds most);
    std::unique_ptr<Child> drive(const std::string& how, int soakMs) const;
    std::vector<std::string> environment() const;

private:
    void record(int from);
    void stopRecorder();

    SocketFolder m_folder;
    std::unique_ptr<Child> m_server;
    std::unique_ptr<Child> m_recorder;
    std::thread m_reader;
    std::mutex m_mutex;
    std::vector<std::int16_t> m_pcm;
    std::vector<std::pair<double, std::size_t>> m_stamps; // boot clock, samples until then
};

/// As many processes that never rest.
class Busy {
public:
    explicit Busy(unsigned processes);
    ~Busy();
    Busy(const Busy&) = delete;
    Busy& operator=(const Busy&) = delete;

private:
    std::vector<pid_t> m_pids;
};

/// How late a thread that wants to run every 5 ms does.
class SchedulerProbe {
public:
    SchedulerProbe();
    ~SchedulerProbe();
    SchedulerProbe(const SchedulerProbe&) = delete;
    SchedulerProbe& operator=(const SchedulerProbe&) = delete;

    double worstBetween(double fromMs, double toMs);
    double worst();

private:
    std::mutex m_mutex;
    std::vector<std::pair<double, double>> m_late; // when, by how much
    std::atomic<bool> m_stop{false};
    std::thread m_thread;
};

double bootMs();
/// Until `at` on the boot clock.
void waitUntil(double at);

/// Holds what was heard against what should have been; nothing else may have sounded. How late each
/// came, in the order wanted.
std::vector<double>
judge(const std::vector<HeardSound>& heard, const std::vector<WantedSound>& wanted);
double strengthIn(
    const HeardSound& heard, double hertz, std::ptrdiff_t fromSample, std::ptrdiff_t samples);
/// Drives a whole weld and judges it; how late each sound was. Its tolerances are wider by `more`
/// for each sound, given its wanted start.
std::vector<double> judgeAWholeWeld(
    SoundRig& rig, const std::function<double(double)>& more = [](double) { return 0; });
/// Starts everything, takes the server away for so long, and judges what comes back.
void judgeComingBack(SoundRig& rig, Milliseconds away);
void judgeTone(const HeardSound& heard, const WantedSound& wanted);

/// Bench 1's get ready and count-in.
std::vector<WantedSound> beforeTheStep(double due);
/// One bench's act now from `due` until before `end`.
std::vector<WantedSound> actNow(double due, double end);
/// The driver's whole weld, from the steps it told. By the design's table of tones.
std::vector<WantedSound> wholeWeld(Child& driver);

inline const std::vector<double> kTroubleLow{554.365, 1'108.73};  // C#5, C#6 (ISO 16)
inline const std::vector<double> kTroubleHigh{739.989, 1'479.98}; // F#5, F#6

} // namespace seamclock::test
