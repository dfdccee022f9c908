#include "app/operate/log_notice.h"

#include "app/text/words.h"

#include <QCoreApplication>
#include <QFileInfo>

namespace seamclock {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("LogNotice", text);
}

/// "1043, 1044"
QString numbers(const std::vector<std::int64_t>& joints) {
    QString out;
    for (const std::int64_t number : joints) {
        out += (out.isEmpty() ? "" : ", ") + QString::number(number);
    }
    return out;
}

} // namespace

QString logNotice(const SetAside& aside) {
    if (aside.finished) {
        return tr("The log was damaged and is kept aside; %1 tells what was taken over.")
            .arg(QFileInfo(fromUtf8(aside.note)).fileName());
    }
    if (aside.sameChain) {
        return tr("The log's file was damaged. Nothing is lost: the log goes on in a new file, the "
                  "old one is kept.");
    }
    std::vector<std::int64_t> goesOn;
    std::vector<std::int64_t> doubtful; // open, and not all its steps
    std::vector<std::int64_t> gone;
    for (const SetAsideWeld& weld : aside.welds) {
        if (weld.number > 0) {
            auto& kind = !weld.taken ? gone : weld.whole() ? goesOn : doubtful;
            kind.push_back(weld.number);
        }
    }
    QString out = tr("The log was damaged and is kept aside; a new one goes on.");
    if (!doubtful.empty()) {
        out += " " + tr("Joint %1: steps are lost, look at the bench before you go on.")
                         .arg(numbers(doubtful));
    } else if (!goesOn.empty()) {
        out += " " + tr("Joint %1: all steps are there.").arg(numbers(goesOn));
    }
    if (!gone.empty()) {
        out += " " + tr("Joint %1: not taken over.").arg(numbers(gone));
    }
    return out;
}

} // namespace seamclock
