// The parts of a procedure's file that its columns are made of, for procedure_codec.cpp: ranges,
// rows, formulas, sources. What is wrong is complained of where it stands.
#pragma once

#include "core/base/json_reader.h"
#include "core/procedure/column.h"

#include <optional>

namespace seamclock {

/// What a value can plausibly be in its unit: wide enough for any sheet and plastic, narrow enough
/// to catch a value in another unit, of which `aside` says what it would be.
struct Plausible {
    double low;
    double high;
    JsonReader::Aside aside; // "", or " °C; 392 °F would be 200 °C"
};
const Plausible& plausibleThickness();  // [mm]
const Plausible& plausiblePressure();   // [N/mm²]
const Plausible& plausiblePlate();      // [°C]
const Plausible& plausibleAmbient();    // [°C]
const Plausible& plausibleBead();       // [mm]
const Plausible& plausibleSoak();       // [s]
const Plausible& plausibleChangeover(); // [s]
const Plausible& plausibleBuildUp();    // [s]
const Plausible& plausibleCooling();    // [min]

double readNumber(JsonReader& reader, const char* key, const Plausible& plausible);
std::optional<double> readNumberIf(JsonReader& reader, const char* key, const Plausible& plausible);

/// `source` and `standing`. A file can't say "attested": that is said in a log, with a PIN.
Source readSource(JsonReader& reader);

// A value that was refused is replaced by the end of its range; nothing more is to be concluded
// from it.
class Untroubled {
public:
    explicit Untroubled(const JsonReader& reader)
        : m_reader(reader), m_before(reader.findings().size()) {}
    explicit operator bool() const { return m_reader.findings().size() == m_before; }

private:
    const JsonReader& m_reader;
    std::size_t m_before;
};

struct Range {
    double from;
    double to;
};
/// from_mm and to_mm; complains of an empty or reversed range.
Range readRange(JsonReader& reader);

/// `reader` stands on an object with a table, a formula or both, and their source.
Column readColumn(JsonReader& reader, const Plausible& plausible);
std::optional<Column> readColumnIf(JsonReader& reader, const char* key, const Plausible& plausible);

} // namespace seamclock
