#include "core/practice/practice_shop.h"

#include "core/bench/bench_codec.h"
#include "core/heat/material_codec.h"
#include "core/log/shelf.h"
#include "core/procedure/procedure_codec.h"

#include <algorithm>
#include <filesystem>

namespace seamclock {
namespace {

Result<std::vector<BenchDocument>> demoBenches(const std::string& folder) {
    std::error_code trouble;
    std::vector<std::string> paths;
    for (std::filesystem::directory_iterator file(folder, trouble), end; !trouble && file != end;
         file.increment(trouble)) {
        const std::string name = file->path().filename().string();
        if (name.rfind("bench-", 0) == 0 && file->path().extension() == ".json") {
            paths.push_back(file->path().string());
        }
    }
    if (trouble) {
        return fail(ErrorCode::Unreadable, folder + ": no such folder, or not readable");
    }
    std::sort(paths.begin(), paths.end());
    std::vector<BenchDocument> benches;
    for (const std::string& path : paths) {
        auto bench = readBenchFile(path);
        if (!bench) {
            return tl::unexpected<Error>(bench.error());
        }
        benches.push_back(std::move(*bench));
    }
    return benches;
}

Result<void> addBenchesOf(LogReader& log, std::vector<BenchDocument>& benches) {
    const auto shelf = readShelf(log);
    if (!shelf) {
        return tl::unexpected<Error>(shelf.error());
    }
    for (const auto& [id, sha256] : shelf->benches) {
        const auto document = log.document(sha256);
        if (!document) {
            return tl::unexpected<Error>(document.error());
        }
        if (!*document) {
            return fail(ErrorCode::Damaged, log.path() + ": the document " + sha256 + " is gone");
        }
        auto bench = readBench(id, (*document)->bytes);
        if (!bench) {
            return fail(ErrorCode::Damaged, bench.error().detail);
        }
        benches.erase(
            std::remove_if(
                benches.begin(), benches.end(),
                [&](const BenchDocument& each) { return each.bench.id == bench->bench.id; }),
            benches.end());
        benches.push_back(std::move(*bench));
    }
    return {};
}

} // namespace

Result<PracticeShop> practiceShop(const std::string& resources, LogReader* log) {
    PracticeShop shop;
    auto procedures = readProcedureFolder(resources + "/procedures");
    if (procedures && log != nullptr) {
        procedures = proceduresInForce(*log, std::move(*procedures));
    }
    if (!procedures) {
        return tl::unexpected<Error>(procedures.error());
    }
    shop.procedures = std::move(*procedures);
    auto benches = demoBenches(resources + "/demo");
    if (!benches) {
        return tl::unexpected<Error>(benches.error());
    }
    shop.benches = std::move(*benches);
    if (log != nullptr) {
        if (const auto added = addBenchesOf(*log, shop.benches); !added) {
            return tl::unexpected<Error>(added.error());
        }
    }
    auto materials = readMaterialFolder(resources + "/materials");
    if (!materials) {
        return tl::unexpected<Error>(materials.error());
    }
    shop.materials = std::move(*materials);
    return shop;
}

} // namespace seamclock
