// The plastics that ship with the program, for tests of what the heat model makes of them.
#pragma once

#include "core/heat/material_codec.h"
#include "tests/support/shipped.h"

#include <vector>

namespace seamclock::test {

inline const std::vector<Material>& materials() {
    static const std::vector<Material> kAll = [] {
        auto read = readMaterialFolder(resource("materials"));
        EXPECT_TRUE(read) << read.error().detail;
        return read ? *read : std::vector<Material>{};
    }();
    return kAll;
}

} // namespace seamclock::test
