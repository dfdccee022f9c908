// Paints the screens to files, so that they can be looked at, put into the guide, and held against
// the design: one weld is made on a clock that only this moves, by the same presses as a hand's,
// and each screen is kept at the instant that matters. Nothing here is shown to a person at work.
#pragma once

#include "app/operate/window.h"
#include "core/practice/virtual_clock.h"

#include <QSize>
#include <QString>
#include <QStringList>
#include <functional>
#include <utility>
#include <vector>

namespace seamclock {

/// What a walk looks for on the screen, in the words that a translator makes of it.
QString asShown(const char* words);

/// A picture in that folder, for whoever looks for photos there.
void layPhoto(const QString& folder);

/// Makes a weld on a window by presses. `picture` is called at each screen with its name.
class Walk {
public:
    Walk(Window& window, Floor& floor, VirtualClock& clock);

    using Picture = std::function<void(const QString& name)>;
    /// One weld from the first seam to the saved joint, in time. Refused: a press that the floor
    /// refused, with the sentence.
    Result<void> goodWeld(const Picture& picture);
    /// A weld whose soak, changeover and build-up are late, on bench `post`, to its cooling.
    Result<void> lateWeld(int post, const Picture& picture);
    /// What stands beside a weld, after the late one: its cooling, reasons, the other hand, larger
    /// words, a stopped weld, menu, day's list and entry.
    Result<void> others(const Picture& picture);
    /// On the first bench: a good weld, the same again with what still stands, and a joint that is
    /// cut out and welded again. The bench is free then, and the one before stands.
    Result<void> series(const Picture& picture);
    /// Two benches at once, both free before and after: a clash, a screen that came by itself, what
    /// may not come over a changeover.
    Result<void> twoBenches(const Picture& picture);
    /// The first part of a weld, without pictures.
    Result<void> toSoak();
    /// From a weld's first check to the saved joint.
    Result<void> fromChecks();
    Result<void> toCooling();

private:
    static void take(const Picture& picture, const QString& name);
    Result<void> shown(const QString& name, Milliseconds wait, const Picture& picture);
    Result<void> begin(const Picture& picture);
    void clockIsSet(const Picture& picture);
    Result<void> heat(const Picture& picture);
    Result<void> join(const Picture& picture);
    Result<void> finish(const Picture& picture);
    Result<void> cool(const Picture& picture);
    Result<void> release(const Picture& picture);
    Result<void> measure(const Picture& picture, const char* k);
    Result<void> save(const Picture& picture);
    Result<void> trial(const Picture& picture);
    void slot(SlotPlace place);
    void choose(int index);
    Result<void> stoppedWeld(const Picture& picture);
    Result<void> entry(const Picture& picture);
    Result<void> toBench(int post);
    Result<void> pressAt(int post);
    Result<void> stopAt(int post);
    Result<void> coarse(const Picture& picture);
    void rest(const Picture& picture);
    void restOfDay();
    Result<void> press();
    Result<void> fromCard(const Picture& picture);
    void key(const QString& digits);
    void go(Milliseconds gap);
    void goToWeldTime(Milliseconds sinceState);
    const Weld* weld() const;
    Result<void> prepare(const Picture& picture);

    Window& m_window;
    Floor& m_floor;
    VirtualClock& m_clock;
};

/// One screen that pictures are painted for.
struct PictureShape {
    QString name;
    QSize size;
    double dpi = kUnitsPerInch;
};
/// Those of these names; all three where none is named.
std::vector<PictureShape> pictureShapes(const QStringList& wanted);
std::vector<std::pair<ThemeKind, QString>> pictureThemes(const QStringList& wanted);

struct PictureOptions {
    QString folder;
    QString demo;              // the folder with the job
    QStringList sizes;         // "1280x800", …; empty: all three
    QStringList themes;        // empty: all three
    bool onlyOperator = false; // one size, dark, the operator's screens alone
    std::vector<Material> materials;
    GuideFlow::Read readGuide{}; // empty: no picture of Help
};

/// The files that were written. NotWritten: the folder can't be written to.
Result<QStringList>
paintPictures(const PictureOptions& options, const std::vector<ProcedureDocument>& procedures);

} // namespace seamclock
