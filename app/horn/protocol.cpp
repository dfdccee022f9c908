#include "app/horn/protocol.h"

#include "core/base/overloaded.h"

#include <algorithm>
#include <charconv>
#include <fmt/format.h>
#include <limits>
#include <optional>

namespace seamclock {

namespace {

constexpr std::size_t kWordsOfSlot = 5;
constexpr std::int64_t kMost = std::numeric_limits<std::int64_t>::max();
// Far beyond any machine's uptime, and sums of it still fit.
constexpr std::int64_t kLatestMs = 1'000'000'000'000'000;
constexpr int kLastRank = kTickRank;
constexpr std::int64_t kMostRounds = 100'000'000;

std::vector<std::string_view> split(std::string_view text, char at) {
    std::vector<std::string_view> words;
    while (true) {
        const std::size_t end = text.find(at);
        words.push_back(text.substr(0, end));
        if (end == std::string_view::npos) {
            return words;
        }
        text.remove_prefix(end + 1);
    }
}

// What may be shown of a line in a sentence about it.
std::string shown(std::string_view word) {
    constexpr std::size_t kMostShown = 60;
    std::string out(word.substr(0, kMostShown));
    std::replace_if(
        out.begin(), out.end(), [](char c) { return c < ' ' || c > '~'; }, '?');
    return out;
}

Result<std::int64_t>
number(std::string_view name, std::string_view word, std::int64_t low, std::int64_t high) {
    std::int64_t value = 0;
    const char* const end = word.data() + word.size();
    const auto [stop, error] = std::from_chars(word.data(), end, value);
    if (error == std::errc::invalid_argument || stop != end) {
        return fail(
            ErrorCode::Malformed,
            fmt::format(
                "{} \"{}\" is no whole number; it is {} to {}", name, shown(word), low, high));
    }
    if (error != std::errc{} || value < low || value > high) {
        return fail(
            ErrorCode::OutOfRange,
            fmt::format("{} {} is not within {} to {}", name, shown(word), low, high));
    }
    return value;
}

// Of one word as ids and codes are.
Result<std::string> name(std::string_view what, std::string_view word, std::size_t most) {
    const bool plain =
        std::all_of(word.begin(), word.end(), [](char c) { return c > ' ' && c <= '~'; });
    if (word.empty() || word.size() > most || !plain) {
        return fail(
            ErrorCode::Malformed,
            fmt::format(
                "{} \"{}\" must be 1 to {} visible ASCII characters", what, shown(word), most));
    }
    return std::string(word);
}

std::optional<Sound> soundNamed(std::string_view word) {
    const auto* const found = std::find_if(
        kAllSounds.begin(), kAllSounds.end(), [&](Sound sound) { return toString(sound) == word; });
    return found == kAllSounds.end() ? std::nullopt : std::optional(*found);
}

Result<void> readPattern(std::string_view word, HornSlot& out) {
    constexpr std::size_t kParts = 4;
    const std::vector<std::string_view> parts = split(word, '/');
    if (parts.size() != kParts) {
        return fail(
            ErrorCode::Malformed,
            fmt::format(
                "pattern \"{}\" is not sound/round/position/length_ms, as get_ready/0/1/180",
                shown(word)));
    }
    const std::optional<Sound> sound = soundNamed(parts[0]);
    if (!sound) {
        return fail(
            ErrorCode::Malformed,
            fmt::format(
                "sound \"{}\" is none of those from program_lost to tick", shown(parts[0])));
    }
    const auto round = number("round", parts[1], 0, kMostRounds);
    if (!round) {
        return tl::unexpected(round.error());
    }
    const int soundSlots = slotCount(*sound, out.place, static_cast<int>(*round));
    if (soundSlots == 0) {
        return fail(
            ErrorCode::OutOfRange,
            fmt::format("{} at bench {} has no round {}", parts[0], out.place, *round));
    }
    const auto position = number("position", parts[2], 0, soundSlots - 1);
    if (!position) {
        return tl::unexpected(position.error());
    }
    const auto length =
        number("length_ms", parts[3], (kRise + kFall).count(), kLongestSlot.count());
    if (!length) {
        return tl::unexpected(length.error());
    }
    out.sound = *sound;
    out.round = static_cast<int>(*round);
    out.position = static_cast<int>(*position);
    out.length = Milliseconds{*length};
    return {};
}

Result<HornSlot> readSlot(const std::string_view* words) {
    HornSlot out;
    const auto id = name("id", words[0], kLongestSlotId);
    if (!id) {
        return tl::unexpected(id.error());
    }
    const auto start = number("boot_ms", words[1], -kLatestMs, kLatestMs);
    if (!start) {
        return tl::unexpected(start.error());
    }
    const auto rank = number("rank", words[2], 1, kLastRank);
    if (!rank) {
        return tl::unexpected(rank.error());
    }
    const auto place = number("bench", words[3], 0, kMostBenches);
    if (!place) {
        return tl::unexpected(place.error());
    }
    out.id = *id;
    out.start = Milliseconds{*start};
    out.rank = static_cast<int>(*rank);
    out.place = static_cast<int>(*place);
    if (const auto read = readPattern(words[4], out); !read) {
        return tl::unexpected(read.error());
    }
    return out;
}

Result<ToHorn> readSchedule(const std::vector<std::string_view>& words) {
    if (words.size() < 2 || (words.size() - 2) % kWordsOfSlot != 0) {
        return fail(
            ErrorCode::Malformed,
            fmt::format(
                "schedule with {} words after it; it takes a generation and {} for each slot",
                words.size() - 1, kWordsOfSlot));
    }
    const std::size_t count = (words.size() - 2) / kWordsOfSlot;
    if (count > kMostSlots) {
        return fail(
            ErrorCode::OutOfRange,
            fmt::format("schedule of {} soundSlots; {} at most", count, kMostSlots));
    }
    HornSchedule out;
    const auto generation = number("generation", words[1], 0, kMost);
    if (!generation) {
        return tl::unexpected(generation.error());
    }
    out.generation = *generation;
    out.soundSlots.reserve(count);
    for (std::size_t i = 0; i < count; ++i) {
        auto slot = readSlot(&words[2 + i * kWordsOfSlot]);
        if (!slot) {
            return tl::unexpected(slot.error());
        }
        out.soundSlots.push_back(*std::move(slot));
    }
    return ToHorn(std::move(out));
}

Result<void> expectWords(const std::vector<std::string_view>& words, std::size_t count) {
    if (words.size() != count) {
        return fail(
            ErrorCode::Malformed, fmt::format(
                                      "{} with {} words after it; it takes {}", shown(words[0]),
                                      words.size() - 1, count - 1));
    }
    return {};
}

Result<void> expectLine(std::string_view line) {
    if (line.size() > kLongestLine) {
        return fail(
            ErrorCode::OutOfRange,
            fmt::format("a line of {} bytes; {} at most", line.size(), kLongestLine));
    }
    return {};
}

tl::unexpected<Error> unknown(std::string_view word, std::string_view known) {
    return fail(ErrorCode::Malformed, fmt::format("\"{}\" is none of {}", shown(word), known));
}

Result<FromHorn> readAlive(const std::vector<std::string_view>& words) {
    const auto boot = number("boot_ms", words[1], 0, kLatestMs);
    if (!boot) {
        return tl::unexpected(boot.error());
    }
    const auto lead = number("lead_ms", words[2], -kLatestMs, kLatestMs);
    if (!lead) {
        return tl::unexpected(lead.error());
    }
    const auto underruns = number("underruns", words[3], 0, kMost);
    if (!underruns) {
        return tl::unexpected(underruns.error());
    }
    return FromHorn(HornAlive{Milliseconds{*boot}, Milliseconds{*lead}, *underruns});
}

Result<FromHorn> readHeard(const std::vector<std::string_view>& words) {
    auto id = name("id", words[1], kLongestSlotId);
    if (!id) {
        return tl::unexpected(id.error());
    }
    const auto boot = number("boot_ms", words[2], -kLatestMs, kLatestMs);
    if (!boot) {
        return tl::unexpected(boot.error());
    }
    return FromHorn(HornHeard{*std::move(id), Milliseconds{*boot}});
}

Result<FromHorn> readTrouble(const std::vector<std::string_view>& words) {
    constexpr std::size_t kLongestCode = 60;
    auto code = name("code", words[1], kLongestCode);
    if (!code) {
        return tl::unexpected(code.error());
    }
    return FromHorn(HornTrouble{*std::move(code)});
}

} // namespace

Result<ToHorn> readToHorn(std::string_view line) {
    if (const auto fits = expectLine(line); !fits) {
        return tl::unexpected(fits.error());
    }
    const std::vector<std::string_view> words = split(line, ' ');
    if (words[0] == "schedule") {
        return readSchedule(words);
    }
    if (words[0] != "beat" && words[0] != "bye") {
        return unknown(words[0], "schedule, beat and bye");
    }
    if (const auto right = expectWords(words, 1); !right) {
        return tl::unexpected(right.error());
    }
    return words[0] == "beat" ? ToHorn(HornBeat{}) : ToHorn(HornBye{});
}

Result<FromHorn> readFromHorn(std::string_view line) {
    if (const auto fits = expectLine(line); !fits) {
        return tl::unexpected(fits.error());
    }
    const std::vector<std::string_view> words = split(line, ' ');
    const bool alive = words[0] == "alive";
    const bool heard = words[0] == "heard";
    if (!alive && !heard && words[0] != "trouble") {
        return unknown(words[0], "alive, heard and trouble");
    }
    if (const auto right = expectWords(words, alive ? 4U : heard ? 3U : 2U); !right) {
        return tl::unexpected(right.error());
    }
    return alive ? readAlive(words) : heard ? readHeard(words) : readTrouble(words);
}

std::string lineOf(const ToHorn& message) {
    return std::visit(
        Overloaded{
            [](const HornSchedule& schedule) {
                std::string out = fmt::format("schedule {}", schedule.generation);
                for (const HornSlot& slot : schedule.soundSlots) {
                    fmt::format_to(
                        std::back_inserter(out), " {} {} {} {} {}/{}/{}/{}", slot.id,
                        slot.start.count(), slot.rank, slot.place, toString(slot.sound), slot.round,
                        slot.position, slot.length.count());
                }
                return out;
            },
            [](const HornBeat&) { return std::string("beat"); },
            [](const HornBye&) { return std::string("bye"); }},
        message);
}

std::string lineOf(const FromHorn& message) {
    return std::visit(
        Overloaded{
            [](const HornAlive& alive) {
                return fmt::format(
                    "alive {} {} {}", alive.boot.count(), alive.lead.count(), alive.underruns);
            },
            [](const HornHeard& heard) {
                return fmt::format("heard {} {}", heard.id, heard.boot.count());
            },
            [](const HornTrouble& trouble) { return fmt::format("trouble {}", trouble.code); }},
        message);
}

HornSlot slotOf(const Sounding& sounding) {
    HornSlot out;
    out.id = fmt::format("{}/{}/{}", sounding.request, sounding.round, sounding.position);
    // An id is one word on its line.
    std::replace_if(
        out.id.begin(), out.id.end(), [](char c) { return c <= ' ' || c > '~'; }, '_');
    out.start = sounding.start;
    out.rank = sounding.rank;
    out.place = sounding.place;
    out.sound = sounding.sound;
    out.round = sounding.round;
    out.position = sounding.position;
    out.length = sounding.length;
    return out;
}

PatternSlot toneOf(const HornSlot& slot) {
    Sounding sounding;
    sounding.length = slot.length;
    sounding.sound = slot.sound;
    sounding.place = slot.place;
    sounding.round = slot.round;
    sounding.position = slot.position;
    return toneOf(sounding);
}

} // namespace seamclock
