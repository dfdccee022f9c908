// The sound process: it keeps one stream to the sound device open and fed, so that no fault of a
// sound stack can stop a weld. Opening a device, or a frozen sound server, may hold the main thread
// for ever; so a thread of its own reads the program's lines, and the process is killed and
// replaced by the supervisor whenever `alive` stays away. `alive` is told from within a pull, never
// by a timer: it means that the device takes sound.
#include "app/horn/player.h"
#include "app/platform/boot_clock.h"
#include "core/base/posix.h"

#include <QAudioDevice>
#include <QAudioFormat>
#include <QAudioSink>
#include <QCoreApplication>
#include <QIODevice>
#include <QMediaDevices>
#include <algorithm>
#include <array>
#include <cerrno>
#include <csignal>
#include <fcntl.h>
#include <poll.h>
#include <string>
#include <thread>
#include <unistd.h>

namespace seamclock {

namespace {

constexpr int kSoundFailed = 3;
constexpr Milliseconds kAliveEvery{250};

// One write, so that lines of two threads don't mix; it never waits for a program that doesn't
// read.
void tell(const FromHorn& message) {
    const std::string line = lineOf(message) + "\n";
    [[maybe_unused]] const auto written = ::write(STDOUT_FILENO, line.data(), line.size());
}

// At once, without the sound stack's own tidying up: that may hang as opening does.
[[noreturn]] void giveUp(const char* code) {
    tell(HornTrouble{code});
    ::_exit(kSoundFailed);
}

Nanoseconds now() {
    // Whole milliseconds, cut: the middle is the better guess.
    return bootTime() + std::chrono::microseconds{500};
}

// What the sink pulls from, always full: silence where nothing sounds.
class Voice : public QIODevice {
public:
    Voice(Player& player, Nanoseconds depth) : m_player(player), m_time(depth) {
        open(QIODevice::ReadOnly | QIODevice::Unbuffered);
    }
    /// Known only once the stream is open.
    void setDepth(Nanoseconds depth) { m_time = StreamTime(depth); }

protected:
    qint64 readData(char* data, qint64 size) override {
        const qint64 frames = size / qint64{sizeof(std::int16_t)};
        m_samples.resize(static_cast<std::size_t>(frames));
        const std::int64_t first = m_time.frames();
        const Nanoseconds at = now();
        m_time.pulled(at, frames);
        if (m_time.isSettled()) {
            m_player.fill(m_samples.data(), m_samples.size(), m_time.heardAt(first));
            report(bootTime());
        } else {
            std::fill(m_samples.begin(), m_samples.end(), std::int16_t{0});
        }
        const auto* const bytes = reinterpret_cast<const char*>(m_samples.data());
        std::copy_n(bytes, frames * qint64{sizeof(std::int16_t)}, data);
        return frames * qint64{sizeof(std::int16_t)};
    }
    qint64 writeData(const char*, qint64) override { return -1; }
    qint64 bytesAvailable() const override { return qint64{1} << 30; }
    bool isSequential() const override { return true; }

private:
    void report(Milliseconds at) {
        for (const HornHeard& heard : m_player.takeHeard(at)) {
            tell(heard);
        }
        if (at >= m_nextAlive) {
            m_nextAlive = at + kAliveEvery;
            tell(
                HornAlive{at, std::chrono::round<Milliseconds>(m_time.lead()), m_time.underruns()});
        }
    }

    Player& m_player;
    StreamTime m_time;
    std::vector<std::int16_t> m_samples;
    Milliseconds m_nextAlive{0};
};

// From a full buffer's last frame to the ear. Qt fills the buffer (145 ms by default) in steps of
// 20 ms, so that up to one step stays free; the middle is taken. Measured with a null sink's
// recorded monitor, in six openings, 120 tones: 134.2 to 135.2 ms, and within one opening always
// the same to 0.1 ms. A device's own latency comes on top and can't be asked for here.
Nanoseconds depthOf(const QAudioSink& sink) {
    constexpr Milliseconds kHalfStep{10};
    const auto bytes = static_cast<std::int64_t>(sink.bufferSize());
    const auto frames = bytes / std::int64_t{sizeof(std::int16_t)};
    return Nanoseconds{frames * 1'000'000 / kFramesPerMilli} - kHalfStep;
}

void takeLine(Player& player, std::string_view line) {
    if (const auto message = readToHorn(line)) {
        player.take(*message, bootTime());
    } else {
        tell(HornTrouble{"bad_line"});
    }
}

// Reads until the program has nothing more to say, and ends the process when there is nothing left
// to do.
void readLines(Player& player) {
    std::string waiting;
    bool ended = false;
    bool tooLong = false;
    std::array<char, 65'536> buffer{};
    while (true) {
        constexpr int kLookEveryMs = 50;
        pollfd input{ended ? -1 : STDIN_FILENO, POLLIN, 0};
        const int ready = ::poll(&input, 1, kLookEveryMs);
        if (player.isFinished(bootTime())) {
            ::_exit(0);
        }
        if (ready <= 0 || ended) {
            continue;
        }
        const ssize_t got = ::read(STDIN_FILENO, buffer.data(), buffer.size());
        if (got < 0 && (errno == EINTR || errno == EAGAIN)) {
            continue;
        }
        if (got <= 0) {
            ended = true;
            player.inputEnded(bootTime());
            continue;
        }
        waiting.append(buffer.data(), static_cast<std::size_t>(got));
        std::size_t from = 0;
        for (std::size_t end = waiting.find('\n'); end != std::string::npos;
             end = waiting.find('\n', from)) {
            if (tooLong) {
                tell(HornTrouble{"bad_line"});
                tooLong = false;
            } else {
                takeLine(player, std::string_view(waiting).substr(from, end - from));
            }
            from = end + 1;
        }
        waiting.erase(0, from);
        if (waiting.size() > kLongestLine) {
            waiting.clear();
            tooLong = true;
        }
    }
}

int run(int argc, char** argv) {
    std::signal(SIGPIPE, SIG_IGN);
    ::fcntl(STDOUT_FILENO, F_SETFL, ::fcntl(STDOUT_FILENO, F_GETFL) | O_NONBLOCK);
    // Never destroyed: the reader ends the process.
    static Player player;
    std::thread(readLines, std::ref(player)).detach();

    const QCoreApplication application(argc, argv);
    const QAudioDevice device = QMediaDevices::defaultAudioOutput();
    if (device.isNull()) {
        giveUp("no_device");
    }
    QAudioFormat format;
    format.setSampleRate(kFramesPerSecond);
    format.setChannelCount(1);
    format.setSampleFormat(QAudioFormat::Int16);
    if (!device.isFormatSupported(format)) {
        giveUp("format_refused");
    }
    QAudioSink sink(device, format);
    QObject::connect(&sink, &QAudioSink::stateChanged, [&sink](QAudio::State) {
        if (sink.error() == QAudio::OpenError) {
            giveUp("open_failed");
        }
        if (sink.error() == QAudio::FatalError || sink.error() == QAudio::IOError) {
            giveUp("device_lost");
        }
    });
    Voice voice(player, depthOf(sink));
    sink.start(&voice);
    if (sink.error() == QAudio::OpenError) {
        giveUp("open_failed");
    }
    voice.setDepth(depthOf(sink));
    return QCoreApplication::exec();
}

} // namespace

} // namespace seamclock

int main(int argc, char** argv) {
    return seamclock::run(argc, argv);
}
