#include "app/practice/practice_pictures.h"

#include "app/practice/practice_walk.h"
#include "core/practice/lesson_codec.h"

#include <QCoreApplication>
#include <QDir>
#include <QPixmap>
#include <QTemporaryDir>

namespace seamclock {
namespace {

Instant practiceMorning() {
    Instant start;
    start.boot = std::chrono::milliseconds(3'600'000);
    start.bootId = "practice:7f1d0c52-3b0a-4d52-9a67-2f6f0f4be0d1";
    start.utc = std::chrono::milliseconds(1'893'996'000'000); // 2030-01-07T06:00Z
    start.offset = std::chrono::minutes(60);
    return start;
}

Result<QStringList> paintOne(
    const PictureOptions& options, const PracticeShop& shop, const std::vector<Lesson>& lessons,
    const PictureShape& shape, ThemeKind theme, const QString& themeName) {
    QTemporaryDir scratch;
    VirtualClock machine(practiceMorning());
    auto room = PracticeRoom::open(
        machine.now(), shop, lessons, scratch.filePath("practice.seamlog").toStdString(),
        "person:practice");
    if (!room) {
        return tl::unexpected<Error>(room.error());
    }
    Preferences preferences;
    preferences.theme = theme;
    preferences.language = spoken();
    preferences.dpi = shape.dpi;
    PracticeWindowParts parts{
        **room, machine, preferences, QStringLiteral("Ilva Borrick"),
        scratch.filePath("documents")};
    PracticeWindow window(std::move(parts));
    window.stopTimer(); // only the walk moves time
    window.resize(shape.size);
    window.QWidget::show();
    QStringList written;
    QString trouble;
    int count = 0;
    const auto picture = [&](const QString& name) {
        window.refresh();
        QCoreApplication::processEvents();
        const QString file = QDir(options.folder)
                                 .filePath(QString("%1-%2-practice-%3-%4.png")
                                               .arg(shape.name, themeName)
                                               .arg(++count, 2, 10, QLatin1Char('0'))
                                               .arg(name));
        if (window.grab().save(file, "PNG")) {
            written << file;
        } else if (trouble.isEmpty()) {
            trouble = file;
        }
    };
    PracticeWalk walk(window, **room, machine);
    auto done = walk.weld(lessons.front().id, {}, picture);
    if (done) {
        WalkMistakes mistakes;
        mistakes.pressedSoak = true;
        mistakes.takesCall = true;
        mistakes.changeover = Milliseconds(9'000);
        mistakes.says = Wrong::PlateCold;
        const auto call = std::find_if(lessons.begin(), lessons.end(), [](const Lesson& lesson) {
            return lesson.call.has_value();
        });
        done = walk.weld(call == lessons.end() ? lessons.front().id : call->id, mistakes, picture);
    }
    if (done) {
        done = walk.afterwards(picture);
    }
    // What is drawn of a lean, of a draught and of melt that strings.
    WalkMistakes trusts;
    trusts.trustsDisplay = true;
    for (const Lesson& lesson : lessons) {
        const BenchFaults& faults = lesson.faults;
        const char* const what = faults.leanMm != 0        ? "leans"
                                 : faults.draught > 1      ? "draught"
                                 : faults.plateOffsetK > 0 ? "too-hot"
                                                           : nullptr;
        if (!done || what == nullptr) {
            continue;
        }
        done = walk.toChangeover(lesson.id, trusts, [&](const QString& name) {
            for (const char* const shown : {"shim", "ready", "apart", "changeover"}) {
                if (name == QLatin1String(shown)) {
                    picture(QString("%1-%2").arg(what, name));
                }
            }
        });
    }
    if (!done) {
        return tl::unexpected<Error>(done.error());
    }
    if (!trouble.isEmpty()) {
        return fail(
            ErrorCode::NotWritten, "the picture \"" + trouble.toStdString() +
                                       "\" can't be written; allowed: a folder that can be "
                                       "written");
    }
    return written;
}

} // namespace

Result<QStringList> paintPracticePictures(
    const PictureOptions& options, const PracticeShop& shop, const std::string& lessonFolder) {
    const auto lessons = readLessonFolder(lessonFolder);
    if (!lessons) {
        return tl::unexpected<Error>(lessons.error());
    }
    QStringList written;
    for (const PictureShape& shape : pictureShapes(options.sizes)) {
        for (const auto& [theme, name] : pictureThemes(options.themes)) {
            auto painted = paintOne(options, shop, *lessons, shape, theme, name);
            if (!painted) {
                return tl::unexpected<Error>(painted.error());
            }
            written += *painted;
        }
    }
    return written;
}

} // namespace seamclock
