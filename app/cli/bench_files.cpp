#include "app/cli/bench_files.h"

#include "core/log/log_reader.h"
#include "core/log/shelf.h"

#include <algorithm>
#include <utility>

namespace seamclock {
namespace {

void addOnce(BenchDocument bench, std::vector<BenchDocument>& out) {
    const bool known = std::any_of(out.begin(), out.end(), [&bench](const BenchDocument& one) {
        return one.bench.id == bench.bench.id;
    });
    if (!known) {
        out.push_back(std::move(bench));
    }
}

} // namespace

Result<std::vector<BenchDocument>>
benchesOf(const std::vector<std::string>& files, LogReader* log) {
    std::vector<BenchDocument> out;
    for (const std::string& file : files) {
        auto bench = readBenchFile(file);
        if (!bench) {
            return tl::unexpected(bench.error());
        }
        addOnce(std::move(*bench), out);
    }
    if (log == nullptr) {
        return out;
    }
    const auto shelf = readShelf(*log);
    if (!shelf) {
        return tl::unexpected(shelf.error());
    }
    for (const auto& [id, sha256] : shelf->benches) {
        const auto document = log->document(sha256);
        if (!document) {
            return tl::unexpected(document.error());
        }
        if (!*document) {
            continue; // log verify tells of it
        }
        auto bench = readBench("bench " + id, (*document)->bytes);
        if (!bench) {
            return tl::unexpected(bench.error());
        }
        addOnce(std::move(*bench), out);
    }
    return out;
}

} // namespace seamclock
