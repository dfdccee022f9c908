#include "app/practice/practice_stand.h"

#include "app/practice/practice_text.h"
#include "app/text/words.h"
#include "core/base/uuid.h"
#include "core/practice/lesson_codec.h"

#include <QDir>
#include <QFileInfo>

namespace seamclock {

Result<std::unique_ptr<PracticeStand>> PracticeStand::open(PracticeOrder order) {
    const QString folder = QFileInfo(fromUtf8(order.logPath)).path();
    auto shelf = readLessons(order.lessonFolder, ownLessonFolder(order.logPath));
    if (!shelf) {
        return tl::unexpected<Error>(shelf.error());
    }
    if (!QDir().mkpath(folder)) {
        return fail(
            ErrorCode::NotWritten, "the folder \"" + folder.toStdString() +
                                       "\" for the practice log can't be made; allowed: a folder "
                                       "that can be written");
    }
    Instant begins = order.machine.now();
    begins.bootId = "practice:" + newUuid();
    auto room = PracticeRoom::open(
        begins, std::move(order.shop), std::move(shelf->lessons), order.logPath, order.by);
    if (!room) {
        return tl::unexpected<Error>(room.error());
    }
    std::unique_ptr<PracticeStand> stand(new PracticeStand);
    stand->m_room = std::move(*room);
    const auto seed = static_cast<std::uint64_t>(begins.utc.count() / 1000);
    PracticeWindowParts parts{
        *stand->m_room, order.machine, order.preferences, order.who, order.reports};
    QStringList notices;
    if (const QString broken = brokenOffText(stand->m_room->brokenOff()); !broken.isEmpty()) {
        notices << broken;
    }
    if (const QString leftOut = leftOutText(shelf->leftOut); !leftOut.isEmpty()) {
        notices << leftOut;
    }
    parts.notice = notices.join(QLatin1Char(' '));
    parts.seed = seed;
    parts.sound = order.sound;
    parts.readGuide = std::move(order.readGuide);
    stand->m_window = std::make_unique<PracticeWindow>(std::move(parts));
    if (!order.lesson.empty()) {
        if (const auto opened = stand->m_window->openLesson(order.lesson); !opened) {
            return tl::unexpected<Error>(opened.error());
        }
    }
    return stand;
}

} // namespace seamclock
