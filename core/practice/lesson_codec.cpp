#include "core/practice/lesson_codec.h"

#include "core/base/json_reader.h"
#include "core/base/plain_number.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <set>

namespace seamclock {
namespace {

using OrderedJson = nlohmann::ordered_json;

constexpr const char* kFormat = "seamclock-lesson/1";
constexpr std::size_t kLongestId = 40;
constexpr std::size_t kLongestTitle = 60;
constexpr std::size_t kLongestText = 400;
constexpr std::int64_t kMostPlaces = 999;
constexpr std::int64_t kMostWelds = 20;
constexpr double kThinnestMm = 1;
constexpr double kThickestMm = 100;
constexpr double kShortestMm = 50;
constexpr double kLongestMm = 10'000;
constexpr double kLongestCallS = 600;
constexpr double kLatestCallS = 3600;

std::int64_t thousandths(double value) {
    return std::llround(value * 1e3);
}

/// Code points of a text that is sound UTF-8, as every parsed text is.
std::size_t letters(const std::string& text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
    }));
}

std::string textOf(JsonReader& reader, const char* key, std::size_t longest) {
    std::string text = reader.text(key);
    if (text.empty() && reader.has(key)) {
        reader.complain(key, "is empty");
    }
    if (const std::size_t many = letters(text); many > longest) {
        reader.complain(
            key,
            "has " + std::to_string(many) + " letters; allowed: up to " + std::to_string(longest));
    }
    return text;
}

std::string idOf(JsonReader& reader, const char* key) {
    std::string id = textOf(reader, key, kLongestId);
    const bool sound = std::all_of(id.begin(), id.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
    });
    if (!sound) {
        reader.complain(key, "\"" + id + "\" is no id; allowed: small letters, digits and hyphens");
    }
    return id;
}

void readPair(JsonReader& reader, const char* key, bool (&out)[2]) {
    auto child = reader.objectIf(key);
    if (!child) {
        return;
    }
    out[0] = child->flag("first");
    out[1] = child->flag("second");
    child->refuseUnknown();
}

BenchFaults readFaults(JsonReader& root) {
    BenchFaults faults;
    auto child = root.objectIf("faults");
    if (!child) {
        return faults;
    }
    JsonReader& reader = *child;
    // The ranges are the virtual bench's own.
    faults.plateOffsetK = reader.numberIf("plate_offset_K", -100, 60).value_or(0);
    if (auto spot = reader.objectIf("cold_spot")) {
        faults.coldSpotK = spot->number("K", 0, 150);
        faults.coldSpotAt = spot->number("at", 0, 1);
        faults.coldSpotWidth = spot->number("width", 0.01, 1);
        spot->refuseUnknown();
    }
    faults.plateDirty = reader.flagIf("plate_dirty").value_or(false);
    readPair(reader, "film_on", faults.filmOn);
    readPair(reader, "planed", faults.planed);
    faults.leanMm = reader.numberIf("lean_mm", -5, 5).value_or(0);
    faults.draught = reader.numberIf("draught", 0.1, 10).value_or(1);
    faults.zeroOff = reader.numberIf("zero_off", -20, 20).value_or(0);
    faults.lockCreepMmPerMin = reader.numberIf("lock_creep_mm_min", 0, 5).value_or(0);
    reader.refuseUnknown();
    return faults;
}

Handout readHandout(JsonReader& root) {
    Handout handout;
    auto child = root.objectIf("handout");
    if (!child) {
        return handout;
    }
    if (const auto mm = child->numberIf("thickness_mm", kThinnestMm, kThickestMm)) {
        handout.thicknessUm = thousandths(*mm);
    }
    handout.kgfForN = child->flagIf("kgf_for_N").value_or(false);
    child->refuseUnknown();
    return handout;
}

std::optional<PhoneCall> readCall(JsonReader& root) {
    auto child = root.objectIf("call");
    if (!child) {
        return std::nullopt;
    }
    PhoneCall call;
    call.intoSoak = Milliseconds(thousandths(child->number("into_soak_s", 0, kLatestCallS)));
    call.lasts = Milliseconds(thousandths(child->number("lasts_s", 1, kLongestCallS)));
    child->refuseUnknown();
    return call;
}

std::string allCodes() {
    std::string all;
    for (const Wrong wrong : allWrong()) {
        all += (all.empty() ? "" : ", ") + std::string(toString(wrong));
    }
    return all;
}

std::vector<Wrong> readNotice(JsonReader& root, const Lesson& lesson) {
    std::vector<Wrong> notice;
    if (!root.has("notice")) {
        return notice;
    }
    const std::vector<Wrong> there = wrongIn(lesson);
    for (const std::string& code : root.texts("notice")) {
        const auto wrong = wrongFromString(code);
        if (!wrong) {
            root.complain("notice", "\"" + code + "\" is not one of " + allCodes());
        } else if (std::find(notice.begin(), notice.end(), *wrong) != notice.end()) {
            root.complain("notice", "names \"" + code + "\" twice");
        } else if (std::find(there.begin(), there.end(), *wrong) == there.end()) {
            root.complain(
                "notice", "asks for \"" + code + "\", and nothing of that is wrong in this lesson");
        } else {
            notice.push_back(*wrong);
        }
    }
    return notice;
}

Lesson readAll(JsonReader& root) {
    if (const std::string format = root.text("format"); !format.empty() && format != kFormat) {
        root.complain("format", "\"" + format + "\" is not \"" + kFormat + "\"");
    }
    Lesson lesson;
    lesson.id = idOf(root, "id");
    lesson.place = static_cast<int>(root.integer("place", 1, kMostPlaces));
    lesson.title = textOf(root, "title", kLongestTitle);
    lesson.teaches = textOf(root, "teaches", kLongestText);
    lesson.after = textOf(root, "after", kLongestText);
    lesson.procedure = idOf(root, "procedure");
    lesson.bench = idOf(root, "bench");
    lesson.material = idOf(root, "material");
    lesson.thicknessUm = thousandths(root.number("thickness_mm", kThinnestMm, kThickestMm));
    lesson.lengthUm = thousandths(root.number("length_mm", kShortestMm, kLongestMm));
    if (const auto celsius = root.numberIf("ambient_C", -20, 50)) {
        lesson.ambientMc = thousandths(*celsius);
    }
    lesson.dragMn = thousandths(root.number("drag_N", 0, 2000));
    lesson.welds = static_cast<int>(root.integerIf("welds", 1, kMostWelds).value_or(1));
    lesson.plateWarm = root.flagIf("plate_warm").value_or(true);
    lesson.faults = readFaults(root);
    lesson.handout = readHandout(root);
    if (lesson.handout.thicknessUm == lesson.thicknessUm && root.has("handout")) {
        root.complain("handout", "hands out the right row; leave thickness_mm out");
    }
    lesson.call = readCall(root);
    lesson.notice = readNotice(root, lesson);
    root.refuseUnknown();
    return lesson;
}

Result<Lesson> lessonOf(const JsonText& text) {
    JsonReader root(text);
    Lesson lesson = readAll(root);
    if (const auto sound = root.verdict(); !sound) {
        return tl::unexpected<Error>(sound.error());
    }
    return lesson;
}

double inThousands(std::int64_t value) {
    return static_cast<double>(value) / 1e3;
}

OrderedJson pairJson(const bool (&pair)[2]) {
    return {{"first", pair[0]}, {"second", pair[1]}};
}

OrderedJson faultsJson(const BenchFaults& faults) {
    const BenchFaults none;
    OrderedJson json = OrderedJson::object();
    if (faults.plateOffsetK != none.plateOffsetK) {
        json["plate_offset_K"] = faults.plateOffsetK;
    }
    if (faults.coldSpotK != none.coldSpotK || faults.coldSpotAt != none.coldSpotAt ||
        faults.coldSpotWidth != none.coldSpotWidth) {
        json["cold_spot"] = {
            {"K", faults.coldSpotK}, {"at", faults.coldSpotAt}, {"width", faults.coldSpotWidth}};
    }
    if (faults.plateDirty) {
        json["plate_dirty"] = true;
    }
    if (!faults.filmOn[0] || !faults.filmOn[1]) {
        json["film_on"] = pairJson(faults.filmOn);
    }
    if (faults.planed[0] || faults.planed[1]) {
        json["planed"] = pairJson(faults.planed);
    }
    if (faults.leanMm != none.leanMm) {
        json["lean_mm"] = faults.leanMm;
    }
    if (faults.draught != none.draught) {
        json["draught"] = faults.draught;
    }
    if (faults.zeroOff != none.zeroOff) {
        json["zero_off"] = faults.zeroOff;
    }
    if (faults.lockCreepMmPerMin != none.lockCreepMmPerMin) {
        json["lock_creep_mm_min"] = faults.lockCreepMmPerMin;
    }
    return json;
}

OrderedJson handoutJson(const Handout& handout) {
    OrderedJson json = OrderedJson::object();
    if (handout.thicknessUm) {
        json["thickness_mm"] = inThousands(*handout.thicknessUm);
    }
    if (handout.kgfForN) {
        json["kgf_for_N"] = true;
    }
    return json;
}

Result<std::vector<std::string>> lessonFiles(const std::string& folder) {
    std::error_code trouble;
    std::vector<std::string> paths;
    for (std::filesystem::directory_iterator file(folder, trouble), end; !trouble && file != end;
         file.increment(trouble)) {
        if (file->path().extension() == ".json") {
            paths.push_back(file->path().string());
        }
    }
    if (trouble) {
        return fail(ErrorCode::Unreadable, folder + ": no such folder, or not readable");
    }
    std::sort(paths.begin(), paths.end());
    return paths;
}

std::string idIsTaken(const std::string& id) {
    return ": the id \"" + id + "\" is another file's too";
}

template <class Place>
void sortByPlace(Place from, Place to) {
    std::sort(from, to, [](const Lesson& a, const Lesson& b) {
        return std::tie(a.place, a.id) < std::tie(b.place, b.id);
    });
}

} // namespace

std::vector<LessonFinding> checkLesson(std::string_view name, std::string_view text) {
    const auto scanned = scanJson(name, text);
    if (!scanned) {
        return {{scanned.error().line, "", scanned.error().reason}};
    }
    JsonReader root(*scanned);
    readAll(root);
    std::vector<LessonFinding> findings;
    for (const JsonReader::Finding& finding : root.findings()) {
        findings.push_back({finding.line, finding.field, finding.reason});
    }
    std::stable_sort(
        findings.begin(), findings.end(),
        [](const LessonFinding& a, const LessonFinding& b) { return a.line < b.line; });
    return findings;
}

Result<Lesson> readLesson(std::string_view name, std::string_view text) {
    return parseJson(name, text).and_then(lessonOf);
}

Result<Lesson> readLessonFile(const std::string& path) {
    return parseJsonFile(path).and_then(lessonOf);
}

Result<std::vector<Lesson>> readLessonFolder(const std::string& folder) {
    const auto paths = lessonFiles(folder);
    if (!paths) {
        return tl::unexpected<Error>(paths.error());
    }
    if (paths->empty()) {
        return fail(ErrorCode::Missing, folder + ": holds no lesson (*.json)");
    }
    std::vector<Lesson> lessons;
    std::set<std::string> ids;
    for (const std::string& path : *paths) {
        auto read = readLessonFile(path);
        if (!read) {
            return tl::unexpected<Error>(read.error());
        }
        if (!ids.insert(read->id).second) {
            return fail(ErrorCode::Conflict, path + idIsTaken(read->id));
        }
        lessons.push_back(std::move(*read));
    }
    sortByPlace(lessons.begin(), lessons.end());
    return lessons;
}

std::string ownLessonFolder(const std::string& practiceLog) {
    return (std::filesystem::path(practiceLog).parent_path() / "lessons").string();
}

Result<LessonShelf> readLessons(const std::string& shipped, const std::string& own) {
    auto lessons = readLessonFolder(shipped);
    if (!lessons) {
        return tl::unexpected<Error>(lessons.error());
    }
    LessonShelf shelf{std::move(*lessons), {}};
    std::error_code trouble;
    if (own.empty() || !std::filesystem::exists(own, trouble)) {
        return shelf;
    }
    const auto paths = lessonFiles(own);
    if (!paths) {
        shelf.leftOut.push_back(paths.error().detail);
        return shelf;
    }
    std::set<std::string> ids;
    for (const Lesson& lesson : shelf.lessons) {
        ids.insert(lesson.id);
    }
    const auto count = static_cast<std::ptrdiff_t>(shelf.lessons.size());
    for (const std::string& path : *paths) {
        auto read = readLessonFile(path);
        if (!read) {
            shelf.leftOut.push_back(read.error().detail);
        } else if (!ids.insert(read->id).second) {
            shelf.leftOut.push_back(path + idIsTaken(read->id));
        } else {
            shelf.lessons.push_back(std::move(*read));
        }
    }
    sortByPlace(shelf.lessons.begin() + count, shelf.lessons.end());
    int place = count == 0 ? 0 : shelf.lessons[static_cast<std::size_t>(count - 1)].place;
    for (auto lesson = shelf.lessons.begin() + count; lesson != shelf.lessons.end(); ++lesson) {
        lesson->place = ++place;
    }
    return shelf;
}

std::string lessonText(const Lesson& lesson) {
    OrderedJson json{
        {"format", kFormat},
        {"id", lesson.id},
        {"place", lesson.place},
        {"title", lesson.title},
        {"teaches", lesson.teaches},
        {"after", lesson.after},
        {"procedure", lesson.procedure},
        {"bench", lesson.bench},
        {"material", lesson.material},
        {"thickness_mm", inThousands(lesson.thicknessUm)},
        {"length_mm", inThousands(lesson.lengthUm)}};
    if (lesson.ambientMc) {
        json["ambient_C"] = inThousands(*lesson.ambientMc);
    }
    json["drag_N"] = inThousands(lesson.dragMn);
    if (lesson.welds != 1) {
        json["welds"] = lesson.welds;
    }
    if (!lesson.plateWarm) {
        json["plate_warm"] = false;
    }
    if (OrderedJson faults = faultsJson(lesson.faults); !faults.empty()) {
        json["faults"] = std::move(faults);
    }
    if (OrderedJson handout = handoutJson(lesson.handout); !handout.empty()) {
        json["handout"] = std::move(handout);
    }
    if (lesson.call) {
        json["call"] = {
            {"into_soak_s", inThousands(lesson.call->intoSoak.count())},
            {"lasts_s", inThousands(lesson.call->lasts.count())}};
    }
    if (!lesson.notice.empty()) {
        json["notice"] = OrderedJson::array();
        for (const Wrong wrong : lesson.notice) {
            json["notice"].push_back(toString(wrong));
        }
    }
    return json.dump(2, ' ', false, OrderedJson::error_handler_t::replace) + "\n";
}

} // namespace seamclock
