#include "core/people/certificate.h"

#include "core/base/plain_number.h"

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cmath>
#include <optional>

namespace seamclock {

namespace {

constexpr double kThinnestMm = 0.1;
constexpr double kThickestMm = 1'000;
constexpr const char* kAllowed = "allowed: materials and a range, as in \"PE-HD, PP 3-20 mm\"";

std::string_view trimmed(std::string_view text) {
    const std::size_t from = text.find_first_not_of(' ');
    return from == std::string_view::npos
               ? std::string_view()
               : text.substr(from, text.find_last_not_of(' ') - from + 1);
}

std::string quoted(std::string_view text) {
    std::string out = "\"";
    for (const char sign : text.substr(0, kLongestCertificate)) {
        const auto byte = static_cast<unsigned char>(sign);
        out += byte < 0x20 || byte == 0x7F ? ' ' : sign;
    }
    return out + "\"";
}

std::optional<double> numberOf(std::string_view text) {
    double value = 0;
    const char* end = text.data() + text.size();
    const auto read = std::from_chars(text.data(), end, value);
    const bool whole = read.ec == std::errc() && read.ptr == end && std::isfinite(value);
    return whole ? std::optional(value) : std::nullopt;
}

std::optional<int> digitsOf(std::string_view text) {
    int value = 0;
    const char* end = text.data() + text.size();
    const auto read = std::from_chars(text.data(), end, value);
    return read.ec == std::errc() && read.ptr == end ? std::optional(value) : std::nullopt;
}

bool isDate(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') {
        return false;
    }
    const auto year = digitsOf(text.substr(0, 4));
    const auto month = digitsOf(text.substr(5, 2));
    const auto day = digitsOf(text.substr(8, 2));
    return year && month && day && *year >= 1 && *month >= 1 && *day >= 1 &&
           std::chrono::year_month_day{
               std::chrono::year{*year}, std::chrono::month{static_cast<unsigned>(*month)},
               std::chrono::day{static_cast<unsigned>(*day)}}
               .ok();
}

bool isMaterial(std::string_view name) {
    return !name.empty() && std::all_of(name.begin(), name.end(), [](char sign) {
        return (sign >= 'A' && sign <= 'Z') || (sign >= 'a' && sign <= 'z') ||
               (sign >= '0' && sign <= '9') || sign == '-';
    });
}

tl::unexpected<Error> wrongScope(std::string_view scope) {
    return fail(ErrorCode::Malformed, "the scope " + quoted(scope) + " can't be read; " + kAllowed);
}

} // namespace

std::string scopeOf(const Certificate& certificate) {
    std::string text;
    for (const std::string& material : certificate.materials) {
        text += (text.empty() ? "" : ", ") + material;
    }
    const auto mm = [](std::int64_t um) { return plainNumber(static_cast<double>(um) / 1e3); };
    return text + " " + mm(certificate.thinnestUm) + "-" + mm(certificate.thickestUm) + " mm";
}

Result<Certificate> readCertificate(std::string_view scope, std::string_view until) {
    std::string_view rest = trimmed(scope);
    if (rest.size() > kLongestCertificate) {
        return fail(
            ErrorCode::Malformed, "the scope has " + std::to_string(rest.size()) +
                                      " signs; allowed: up to " +
                                      std::to_string(kLongestCertificate));
    }
    if (rest.size() < 3 || rest.substr(rest.size() - 2) != "mm") {
        return wrongScope(scope);
    }
    rest = trimmed(rest.substr(0, rest.size() - 2));
    const std::size_t space = rest.rfind(' ');
    const std::size_t dash = rest.rfind('-');
    if (space == std::string_view::npos || dash == std::string_view::npos || dash < space) {
        return wrongScope(scope);
    }
    const auto from = numberOf(rest.substr(space + 1, dash - space - 1));
    const auto to = numberOf(rest.substr(dash + 1));
    if (!from || !to) {
        return wrongScope(scope);
    }
    if (!(*from >= kThinnestMm && *from <= *to && *to <= kThickestMm)) {
        return fail(
            ErrorCode::OutOfRange, "the scope " + quoted(scope) + " goes from " +
                                       plainNumber(*from) + " to " + plainNumber(*to) +
                                       " mm; allowed: 0.1 to 1000 mm, from thin to thick");
    }
    Certificate out;
    out.thinnestUm = std::llround(*from * 1e3);
    out.thickestUm = std::llround(*to * 1e3);
    std::string_view names = rest.substr(0, space);
    for (;;) {
        const std::size_t comma = names.find(',');
        const std::string_view name = trimmed(names.substr(0, comma));
        if (!isMaterial(name)) {
            return wrongScope(scope);
        }
        out.materials.emplace_back(name);
        if (comma == std::string_view::npos) {
            break;
        }
        names.remove_prefix(comma + 1);
    }
    if (!isDate(trimmed(until))) {
        return fail(
            ErrorCode::Malformed,
            "the last day " + quoted(until) + " is no date; allowed: as in \"2031-06-30\"");
    }
    out.until = trimmed(until);
    return out;
}

Result<Certificate> readCertificate(std::string_view line) {
    constexpr std::string_view kUntil = " until ";
    const std::size_t at = line.find(kUntil);
    if (at == std::string_view::npos) {
        return fail(
            ErrorCode::Malformed, quoted(line) + " names no last day; allowed: as in \"PE-HD, PP "
                                                 "3-20 mm until 2031-06-30\"");
    }
    return readCertificate(line.substr(0, at), line.substr(at + kUntil.size()));
}

void note(HeldCertificates& held, Certificate certificate) {
    const auto& newer = certificate.materials;
    const auto isNewers = [&newer](const std::string& one) {
        return std::find(newer.begin(), newer.end(), one) != newer.end();
    };
    for (Certificate& older : held) {
        auto& all = older.materials;
        all.erase(std::remove_if(all.begin(), all.end(), isNewers), all.end());
    }
    const auto isEmpty = [](const Certificate& one) { return one.materials.empty(); };
    held.erase(std::remove_if(held.begin(), held.end(), isEmpty), held.end());
    held.push_back(std::move(certificate));
}

const Certificate*
heldFor(const HeldCertificates& held, std::string_view material, std::int64_t thicknessUm) {
    const auto found = std::find_if(held.begin(), held.end(), [&](const Certificate& one) {
        return std::find(one.materials.begin(), one.materials.end(), material) !=
                   one.materials.end() &&
               one.thinnestUm <= thicknessUm && thicknessUm <= one.thickestUm;
    });
    return found == held.end() ? nullptr : &*found;
}

CertificateState certificateFor(
    const std::map<std::string, HeldCertificates>& known, const std::string& person,
    std::string_view material, std::int64_t thicknessUm, std::string_view today) {
    if (known.empty()) {
        return CertificateState::NotKept;
    }
    const auto found = known.find(person);
    if (found == known.end()) {
        return CertificateState::Missing;
    }
    const HeldCertificates& held = found->second;
    const Certificate* covers = heldFor(held, material, thicknessUm);
    if (covers != nullptr && today <= covers->until) {
        return CertificateState::Valid;
    }
    // What has expired says so also where nothing else was ever held.
    const bool over = std::all_of(
        held.begin(), held.end(), [today](const Certificate& one) { return today > one.until; });
    return covers != nullptr || over ? CertificateState::Expired : CertificateState::OutOfScope;
}

std::string_view flagOf(CertificateState state) {
    switch (state) {
    case CertificateState::NotKept:
    case CertificateState::Valid:
        return "";
    case CertificateState::Missing:
        return "certificate_missing";
    case CertificateState::Expired:
        return "certificate_expired";
    case CertificateState::OutOfScope:
        return "certificate_out_of_scope";
    }
    return "";
}

} // namespace seamclock
