// The real program on a display of this test's own: keys and clicks go through the X server's test
// extension, as a keyboard's and a mouse's do, and what is on the screen is read from the server's
// frame buffer, which it keeps in a file. Each press is stamped on the boot clock before and after;
// nothing here asks the program what it did.
#pragma once

#include "app/operate/weld_view.h"
#include "app/pages/frame.h"
#include "app/pages/page.h"
#include "tests/app/horn/sound_rig.h"
#include "tests/support/scratch_folder.h"

#include <QImage>
#include <functional>
#include <map>
#include <memory>
#include <string>
#include <vector>

namespace seamclock::test {

inline constexpr int kScreenWidth = 1280;
inline constexpr int kScreenHeight = 800;
inline constexpr int kPedalKey = 0x01000038; // Qt::Key_F9, which "F9" types

/// A press, on the boot clock [ms].
struct Stamp {
    double before = 0;
    double after = 0;
    double waited = 0; // what the program had waited for a processor before it, as Rig::waited()
};

/// Until `done`, looking every few ms; false: not within `most`.
bool waitFor(const std::function<bool()>& done, Milliseconds most = Milliseconds{20'000});

class Rig {
public:
    Rig();
    ~Rig();
    Rig(const Rig&) = delete;
    Rig& operator=(const Rig&) = delete;

    std::string log() const { return m_folder.file("e2e.seamlog"); }

    /// From the next start on the program's disk fails when told to (tests/faults/fault_shim.cpp).
    void giveFaultyDisk();
    /// none, full, error, sync, readonly or "every N": from the next write on.
    void failDisk(const std::string& word);

    /// From the next start on there are no values for the heat estimate.
    void takeMaterials();

    /// From the next start on these are its system's bus and its user's. Before, it has none: what
    /// a developer's own machine says of its battery would be painted.
    void giveBuses(const std::string& address) { m_buses = address; }

    /// From the next start on it is given these, too.
    void giveArguments(std::vector<std::string> more) { m_arguments = std::move(more); }

    /// Starts it on log(), and returns when its window is there and has the keys.
    void startProgram();
    /// SIGKILL, and gone.
    void killProgram();
    /// Its exit code.
    int waitForEnd(Milliseconds most = Milliseconds{20'000});
    /// Another program of this project's on the same display, with the keys.
    std::unique_ptr<Child> start(const std::string& program, const std::string& title);
    /// The window program's words on log(), for a second one.
    std::vector<std::string> command() const;
    /// How long the program's window thread has stood ready without being given a processor [ms]:
    /// what a busy machine takes from it and no press can tell from slowness.
    double waited() const;
    /// Any program on the same display. What it says of errors goes to that file.
    std::unique_ptr<Child>
    start(const std::vector<std::string>& command, const std::string& errors) const;
    /// To the window with that title (a regular expression).
    void giveKeysTo(const std::string& title);

    Stamp key(const std::string& name);
    Stamp keyDown(const std::string& name);
    Stamp keyUp(const std::string& name);
    Stamp click(QPointF at);
    Stamp click(const QRectF& place) { return click(place.center()); }

    /// What is on the screen now.
    QImage screen() const;

private:
    Stamp type(const std::vector<std::string>& words);
    void waitForHand();
    std::vector<std::string> environment() const;

    ScratchFolder m_folder;
    std::unique_ptr<Child> m_server;
    std::unique_ptr<Child> m_program;
    std::string m_display;
    std::string m_resources;
    std::string m_buses;
    std::vector<std::string> m_arguments;
    std::vector<std::string> m_more;       // variables of the program's environment
    std::map<std::string, double> m_keyUp; // when each was let go [ms of the boot clock]
    double m_pressed = 0;                  // the last press of a hand, likewise
};

/// From now on the screens stand within a frame of that many pixels, as practice's do. What follows
/// counts from the frame's inner edge.
void standInFrame(int wide);
Frame frameFor(FrameKind kind);
PageLook lookOfTests();

/// Of the display.
QRect pixels(const QRectF& place);

/// That place of a page painted here, without a display.
QImage painted(Page& page, const QRect& place);
/// And of the weld's screen.
QImage painted(const WeldView& view, const QRect& place);

/// How much of that place of the screen is painted otherwise than wanted: 0 to 1. Shades that
/// differ by rounding count as the same.
double difference(const QImage& screen, const QRect& place, const QImage& wanted);
/// Less than this is the same picture.
inline constexpr double kSamePicture = 0.002;

} // namespace seamclock::test
