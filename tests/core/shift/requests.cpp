#include "tests/core/shift/requests.h"

namespace seamclock {

Request cueOf(
    CueKind kind, int place, std::int64_t onsetMs, std::optional<std::int64_t> untilMs, int count) {
    std::string id(1, place == 0 ? '-' : static_cast<char>('A' + place - 1));
    id.append("/").append(toString(kind)).append("/").append(std::to_string(count));
    const std::optional<Milliseconds> until =
        untilMs ? std::optional(Milliseconds{*untilMs}) : std::nullopt;
    return *requestFor(kind, place, std::move(id), Milliseconds{onsetMs}, until);
}

void addStory(std::vector<Request>& requests, const BenchStory& story, int place) {
    if (story.kind == BenchStory::Kind::Idle) {
        return;
    }
    const std::int64_t zero = story.soakEnd;
    if (story.kind == BenchStory::Kind::Reminded) {
        requests.push_back(cueOf(CueKind::GetReady, place, zero, zero + 60'000));
        return;
    }
    requests.push_back(cueOf(CueKind::GetReady, place, zero - 10'000, zero));
    for (int count = 3; count >= 1; --count) {
        const std::int64_t onset = zero - 1'000 * count;
        requests.push_back(cueOf(CueKind::CountIn, place, onset, onset + 1'000, count));
    }
    const std::int64_t out = zero + story.plateOut;
    requests.push_back(cueOf(CueKind::ActNow, place, zero, out));
    const std::int64_t met = out + story.facesMet;
    if (story.facesMet > story.changeover) {
        const std::int64_t over = out + story.changeover + 1;
        requests.push_back(cueOf(CueKind::ChangeoverOverrun, place, over, met));
    }
    const std::int64_t late = met + story.buildUp + 1;
    requests.push_back(cueOf(CueKind::BuildUpLate, place, late, late + 3'000));
}

std::vector<Request> requestsOf(const std::vector<BenchStory>& stories) {
    std::vector<Request> out;
    int place = 0;
    for (const BenchStory& story : stories) {
        addStory(out, story, ++place);
    }
    return out;
}

void PrintTo(const Request& request, std::ostream* out) {
    *out << request.id << " at " << request.onset.count();
}

void PrintTo(const Sounding& sounding, std::ostream* out) {
    *out << sounding.request << " " << sounding.round << "." << sounding.position << " "
         << sounding.start.count() << " to " << sounding.end().count();
}

void PrintTo(const Dropped& dropped, std::ostream* out) {
    *out << dropped.request << (dropped.reason == DropReason::Stale ? " stale" : " over") << " at "
         << dropped.at.count() << ", held by " << dropped.heldBy;
}

} // namespace seamclock
