#include "app/shop/numbered_joint.h"

#include "app/text/record_words.h"
#include "app/text/words.h"
#include "core/log/roster.h"
#include "core/weld/event_codec.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <utility>

namespace seamclock {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("NumberedJoint", text);
}

} // namespace

Result<std::vector<NumberedJoint>> jointsNumbered(LogReader& log, std::int64_t number) {
    const auto welds = log.weldsNumbered(number);
    if (!welds) {
        return tl::unexpected<Error>(welds.error());
    }
    std::vector<NumberedJoint> found;
    for (const std::string& weld : *welds) {
        const auto body = log.body(weld, 1);
        if (!body) {
            return tl::unexpected<Error>(body.error());
        }
        NumberedJoint one;
        one.weld = weld;
        auto event = *body ? eventFromBody(**body) : fail(ErrorCode::Missing, weld);
        if (event) {
            one.at = event->at;
            one.by = event->by;
            auto name = nameElsewhere(log, weld, event->by);
            if (!name) {
                return tl::unexpected<Error>(name.error());
            }
            one.byName = std::move(*name);
            if (auto* opened = std::get_if<WeldOpened>(&event->d)) {
                one.opened = std::move(*opened);
            }
        }
        found.push_back(std::move(one));
    }
    std::stable_sort(found.begin(), found.end(), [](const auto& a, const auto& b) {
        return a.at.utc > b.at.utc;
    });
    return found;
}

QString jointText(const NumberedJoint& joint, const DayNames& names) {
    if (!joint.opened) {
        return {};
    }
    QStringList parts;
    if (joint.opened->seam) {
        parts << tr("Seam %1").arg(plainText(*joint.opened->seam));
    }
    parts << tr("bench %1").arg(names.bench(joint.opened->bench))
          << (joint.byName.empty() ? names.person(joint.by) : plainText(joint.byName));
    return parts.join(QStringLiteral(", "));
}

} // namespace seamclock
