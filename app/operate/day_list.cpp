#include "app/operate/day_list.h"

#include "app/text/words.h"
#include "core/log/log_reader.h"
#include "core/weld/record.h"

#include <QCoreApplication>
#include <algorithm>

namespace seamclock {
namespace {

struct Day {
    Q_DECLARE_TR_FUNCTIONS(Day)
};

} // namespace

void DayList::begin() {
    m_leaves.clear();
    m_chosen = 0;
}

void DayList::older() {
    if (m_more && !m_lines.empty()) {
        m_leaves.push_back(keyOf(m_lines.back()));
        m_chosen = 0;
    }
}

void DayList::newer() {
    if (!m_leaves.empty()) {
        m_leaves.pop_back();
        m_chosen = 0;
    }
}

void DayList::choose(int row) {
    if (row < static_cast<int>(m_lines.size())) {
        m_chosen = row;
    }
}

void DayList::showOn(DayPage& page, const std::vector<Post>& posts) {
    m_lines.clear();
    m_more = false;
    auto reader = LogReader::open(m_log);
    if (!reader) {
        page.showNothing(fromUtf8(reader.error().detail));
        return;
    }
    JointFilter filter;
    const auto leaf = static_cast<std::size_t>(page.perLeaf());
    filter.limit = leaf + 1;
    if (!m_leaves.empty()) {
        filter.after = m_leaves.back();
    }
    auto lines = reader->joints(filter);
    if (!lines) {
        page.showNothing(fromUtf8(lines.error().detail));
        return;
    }
    m_more = lines->size() > leaf;
    if (m_more) {
        lines->resize(leaf);
    }
    m_lines = std::move(*lines);
    if (m_lines.empty()) {
        page.showNothing(Day::tr("No joint is in this log yet."));
        return;
    }
    std::vector<JointRowView> rows;
    for (std::size_t i = 0; i < m_lines.size(); ++i) {
        std::string reason;
        const auto events = reader->weldEvents(m_lines[i].weld);
        const auto weld =
            events ? fold(*events) : Result<Weld>(tl::unexpected<Error>(events.error()));
        if (weld) {
            const WeldRecord joint = record(*weld);
            reason = joint.aborted ? joint.aborted->text
                                   : firstReason(joint.verdict, joint.plan).toStdString();
            if (static_cast<int>(i) == m_chosen) {
                const auto bench = std::find_if(posts.begin(), posts.end(), [&](const Post& post) {
                    return post.bench.bench.id == joint.opened.bench;
                });
                page.showJoint(
                    jointView(joint, bench == posts.end() ? nullptr : &bench->bench.bench));
            }
        }
        JointRowView row = jointRow(m_lines[i], reason);
        row.chosen = static_cast<int>(i) == m_chosen;
        rows.push_back(row);
    }
    page.showList(rows, m_more, !m_leaves.empty());
}

} // namespace seamclock
