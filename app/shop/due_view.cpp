#include "app/shop/due_view.h"

#include "app/text/dates.h"
#include "app/text/words.h"

#include <QCoreApplication>

namespace seamclock {
namespace {

struct Due {
    Q_DECLARE_TR_FUNCTIONS(Due)
};

QString tr(const char* text) {
    return Due::tr(text);
}

QString what(const DueItem& item, const DayNames& names) {
    switch (item.kind) {
    case DueKind::Calibration: {
        const std::string id = item.subject.substr(item.subject.find(':') + 1);
        return tr("Calibration of bench %1").arg(names.bench(id));
    }
    case DueKind::Certificate:
        return tr("Certificate of %1").arg(fromUtf8(item.name));
    case DueKind::Attestation:
        break;
    }
    return tr("Attested values of %1").arg(fromUtf8(item.name));
}

QString more(const DueItem& item) {
    switch (item.kind) {
    case DueKind::Calibration:
        return fromUtf8(item.name);
    case DueKind::Certificate:
        return fromUtf8(item.what);
    case DueKind::Attestation:
        break;
    }
    const QString count = fromUtf8(item.what).section(QLatin1Char(' '), 0, 0); // "12 values"
    return count == QLatin1String("1") ? tr("1 value") : tr("%1 values").arg(count);
}

} // namespace

ListRowView dueRow(const DueItem& item, const DayNames& names) {
    ListRowView row;
    row.enabled = false;
    row.text = what(item, names);
    row.second = more(item);
    if (item.date.empty()) {
        row.mark = Mark::Trouble;
        row.tone = Tone::Soon;
        row.third = item.kind == DueKind::Attestation ? tr("Changed since they were attested.")
                                                      : tr("There is none at all.");
        return row;
    }
    const QString date = fullDayWords(item.date);
    if (item.kind == DueKind::Attestation) { // it holds on: the year is chosen
        const bool soon = item.days <= kSoonDays;
        row.mark = soon ? Mark::Soon : Mark::Wait;
        row.tone = soon ? Tone::Soon : Tone::Normal;
        row.third = item.days < 0 ? tr("Attested over a year ago: look again (since %1).").arg(date)
                                  : tr("Look again by %1.").arg(date);
        return row;
    }
    if (item.days < 0) {
        row.mark = Mark::Late;
        row.tone = Tone::Late;
        row.third = item.days == -1 ? tr("Over since yesterday (%1).").arg(date)
                                    : tr("Over for %1 days (%2).").arg(-item.days).arg(date);
    } else if (item.days <= kSoonDays) {
        row.mark = Mark::Soon;
        row.tone = Tone::Soon;
        row.third = item.days == 0   ? tr("Holds to the end of today.")
                    : item.days == 1 ? tr("Holds to the end of tomorrow.")
                                     : tr("Holds for %1 days, to %2.").arg(item.days).arg(date);
    } else {
        row.mark = Mark::Wait;
        row.tone = Tone::Normal;
        row.third = tr("Holds for %1 days, to %2.").arg(item.days).arg(date);
    }
    return row;
}

ListView dueList(const std::vector<DueItem>& items, std::int64_t within, const DayNames& names) {
    ListView view;
    view.title = tr("What is due");
    view.under = items.empty()
                     ? tr("Nothing is due within %1 days.").arg(within)
                     : tr("Calibrations, certificates, attestations within %1 days.").arg(within);
    for (const DueItem& item : items) {
        view.rows.push_back(dueRow(item, names));
    }
    view.columns = 2;
    view.back = plainSlot(tr("%1 days").arg(furtherDays(within)), tr("look so far ahead"));
    view.stop = hiddenSlot();
    view.step = stepSlot(tr("Back to the shop"), false);
    return view;
}

std::int64_t furtherDays(std::int64_t within) {
    return within == 30 ? 90 : within == 90 ? 365 : 30;
}

} // namespace seamclock
