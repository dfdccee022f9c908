#include "app/operate/guide_walk.h"

#include <algorithm>

namespace seamclock {
namespace {

Result<void> stopped(const std::string& why) {
    return fail(ErrorCode::Refused, "the walk through Help stopped: " + why);
}

} // namespace

Result<void> walkGuide(Window& window, const Walk::Picture& picture) {
    const auto take = [&](const QString& name) {
        window.refresh();
        if (picture) {
            picture(name);
        }
    };
    const auto press = [&window](SlotPlace place) {
        emit window.currentPage()->slotPressed(place);
        window.refresh();
    };
    GuideFlow* guide = window.guide();
    window.openHelp();
    if (window.page() != PageKind::Guide || guide->page() != guide->listPage()) {
        return stopped("no contents stand");
    }
    take("help");
    for (const auto& [begins, name] :
         {std::pair{"04", "help-chapter"}, std::pair{"05", "help-alarms"}}) {
        const auto& chapters = guide->guide().chapters;
        const auto found = std::find_if(
            chapters.begin(), chapters.end(), [start = QLatin1String(begins)](const auto& one) {
                return one.file.startsWith(start);
            });
        if (found == chapters.end()) {
            return stopped(std::string("there is no chapter ") + begins);
        }
        emit guide->listPage()->chosen(static_cast<int>(found - chapters.begin()));
        if (guide->page() != guide->chapterPage()) {
            return stopped("no chapter stands");
        }
        guide->chapterPage()->scroll(1);
        take(name);
        press(SlotPlace::Back);
    }
    press(SlotPlace::Stop);
    guide->listPage()->setLine("battery");
    emit guide->listPage()->typed();
    if (guide->listPage()->view().rows.empty()) {
        return stopped("the word was not found");
    }
    take("help-search");
    press(SlotPlace::Stop);
    return window.page() == PageKind::Weld || window.page() == PageKind::Seams
               ? Result<void>()
               : stopped("it did not lead back to the bench");
}

} // namespace seamclock
