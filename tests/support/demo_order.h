// The demo's seams (resources/demo) as orders, for tests that weld them. What is asked of each is
// in the job file; this repeats the few numbers that a plan needs.
#pragma once

#include "core/session/order.h"

#include <array>
#include <gtest/gtest.h>
#include <string>

namespace seamclock::test {

struct DemoSeam {
    const char* label;
    const char* procedure;
    const char* bench;
    double thicknessMm;
    double lengthMm;
    double dragN;
    double ambientC;
};

inline constexpr std::array kDemoSeams{
    DemoSeam{"S1", "pe-hd-dvs2207-1-2005", "bench-east", 15, 1130, 55, 19},
    DemoSeam{"S2", "pe-hd-dvs2207-1-2005", "bench-west", 8, 1380, 70, 19},
    DemoSeam{"S4", "pe-hd-dvs2207-1-2005", "bench-west", 8, 1380, 85, 20},
    DemoSeam{"S5", "pp-dvs2207-11", "bench-east", 6, 860, 24, 20},
    DemoSeam{"S6", "pp-dvs2207-11", "bench-west", 6, 1760, 62, 21},
};

inline WeldOrder orderOf(const DemoSeam& seam) {
    const std::string resources = std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/";
    const auto procedure = readProcedureFile(resources + "procedures/" + seam.procedure + ".json");
    const auto bench = readBenchFile(resources + "demo/" + seam.bench + ".json");
    WeldOrder order;
    if (!procedure || !bench) {
        ADD_FAILURE() << (procedure ? bench.error().detail : procedure.error().detail);
        return order;
    }
    order.procedure = *procedure;
    order.bench = *bench;
    order.request.thickness = millimetres(seam.thicknessMm);
    order.request.lengths = {millimetres(seam.lengthMm)};
    order.request.ambient = Temperature::celsius(seam.ambientC);
    order.request.drag = newtons(seam.dragN);
    order.type = WeldType::Practice;
    order.seam = seam.label;
    order.sheets = {
        {procedure->procedure.material,
         {},
         "Velmorra Sheet",
         "V-1",
         static_cast<std::int64_t>(seam.thicknessMm * 1e3),
         {}},
        {procedure->procedure.material,
         {},
         "Velmorra Sheet",
         "V-2",
         static_cast<std::int64_t>(seam.thicknessMm * 1e3),
         {}}};
    order.shielded = true;
    return order;
}

} // namespace seamclock::test
