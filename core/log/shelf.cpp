#include "core/log/shelf.h"

#include "core/log/fact_codec.h"
#include "core/log/log_reader.h"

#include <algorithm>
#include <utility>
#include <variant>

namespace seamclock {

namespace {

std::string idOf(const std::string& subject) {
    return subject.substr(subject.find(':') + 1);
}

bool contains(const std::vector<std::string>& names, const std::string& name) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

void withdraw(
    std::vector<Attestation>& attestations, const std::string& procedure,
    const AttestationWithdrawn& withdrawn) {
    for (Attestation& each : attestations) {
        if (each.procedure == procedure && (!withdrawn.doc || *withdrawn.doc == each.doc)) {
            each.cells.erase(
                std::remove_if(
                    each.cells.begin(), each.cells.end(),
                    [&withdrawn](const std::string& cell) {
                        return contains(withdrawn.cells, cell);
                    }),
                each.cells.end());
        }
    }
    attestations.erase(
        std::remove_if(
            attestations.begin(), attestations.end(),
            [](const Attestation& each) { return each.cells.empty(); }),
        attestations.end());
}

Result<ProcedureDocument> procedureOf(LogReader& reader, const std::string& sha256) {
    const auto document = reader.document(sha256);
    if (!document) {
        return tl::unexpected<Error>(document.error());
    }
    if (!*document) {
        return fail(ErrorCode::Damaged, "the log names the procedure " + sha256 + " and lacks it");
    }
    auto read = readProcedure("procedure of the log", (*document)->bytes);
    if (!read) {
        return fail(ErrorCode::Damaged, read.error().detail);
    }
    return read;
}

/// Puts what was said into procedures, reading each document that somebody attested once.
class Attesting {
public:
    Attesting(const Shelf& shelf, const Roster& roster, LogReader& reader)
        : m_shelf(shelf), m_roster(roster), m_reader(reader) {}

    Result<ProcedureDocument> operator()(ProcedureDocument document) {
        std::vector<AttestedCells> said;
        for (const Attestation& each : m_shelf.attestations) {
            if (each.procedure != document.procedure.id) {
                continue;
            }
            auto cells = saidBy(each);
            if (!cells) {
                return tl::unexpected<Error>(cells.error());
            }
            said.push_back(std::move(*cells));
        }
        document.procedure = attested(std::move(document.procedure), said);
        return document;
    }

private:
    /// The cells that an attestation names, as its document has them.
    Result<AttestedCells> saidBy(const Attestation& attestation) {
        auto known = m_cells.find(attestation.doc);
        if (known == m_cells.end()) {
            const auto document = procedureOf(m_reader, attestation.doc);
            if (!document) {
                return tl::unexpected<Error>(document.error());
            }
            known = m_cells.emplace(attestation.doc, cellsOf(document->procedure)).first;
        }
        const Person* foreman = findPerson(m_roster.people, attestation.by);
        AttestedCells said{
            foreman != nullptr ? foreman->name : attestation.by,
            attestation.date,
            attestation.edition,
            {}};
        for (const Cell& cell : known->second) {
            if (contains(attestation.cells, cell.name)) {
                said.cells.push_back(cell);
            }
        }
        return said;
    }

    const Shelf& m_shelf;
    const Roster& m_roster;
    LogReader& m_reader;
    std::map<std::string, std::vector<Cell>> m_cells; // by document
};

} // namespace

void take(Shelf& shelf, const Fact& fact) {
    const std::string id = idOf(fact.subject);
    if (const auto* bench = std::get_if<BenchSet>(&fact.d)) {
        shelf.benches[id] = bench->doc;
    } else if (const auto* procedure = std::get_if<ProcedureSet>(&fact.d)) {
        shelf.procedures[id] = procedure->doc;
    } else if (const auto* said = std::get_if<ProcedureAttested>(&fact.d)) {
        shelf.attestations.push_back(
            {id, said->doc, said->edition, said->cells, fact.by,
             toIsoDate(fact.at.utc, fact.at.offset)});
    } else if (const auto* withdrawn = std::get_if<AttestationWithdrawn>(&fact.d)) {
        withdraw(shelf.attestations, id, *withdrawn);
    }
}

Result<Shelf> readShelf(LogReader& reader) {
    Shelf out;
    for (const char* family : {"bench:", "procedure:"}) {
        const auto bodies = reader.bodiesFrom(family);
        if (!bodies) {
            return tl::unexpected<Error>(bodies.error());
        }
        for (const std::string& body : *bodies) {
            const auto fact = factFromBody(body);
            if (fact) { // else a kind that has no form here
                take(out, *fact);
            }
        }
    }
    return out;
}

Result<std::vector<ProcedureDocument>> proceduresInForce(
    const Shelf& shelf, const Roster& roster, LogReader& reader,
    std::vector<ProcedureDocument> shipped) {
    std::map<std::string, ProcedureDocument> byId;
    for (ProcedureDocument& each : shipped) {
        std::string id = each.procedure.id;
        byId.insert_or_assign(std::move(id), std::move(each));
    }
    for (const auto& [id, sha256] : shelf.procedures) {
        auto document = procedureOf(reader, sha256);
        if (!document) {
            return tl::unexpected<Error>(document.error());
        }
        byId.insert_or_assign(id, std::move(*document));
    }
    Attesting attesting(shelf, roster, reader);
    std::vector<ProcedureDocument> out;
    for (auto& [id, document] : byId) {
        auto held = attesting(std::move(document));
        if (!held) {
            return tl::unexpected<Error>(held.error());
        }
        out.push_back(std::move(*held));
    }
    return out;
}

Result<std::vector<ProcedureDocument>>
proceduresInForce(LogReader& reader, std::vector<ProcedureDocument> shipped) {
    const auto shelf = readShelf(reader);
    if (!shelf) {
        return tl::unexpected<Error>(shelf.error());
    }
    const auto roster = readRoster(reader);
    if (!roster) {
        return tl::unexpected<Error>(roster.error());
    }
    return proceduresInForce(*shelf, *roster, reader, std::move(shipped));
}

Result<ProcedureDocument> procedureOfLog(LogReader& reader, const std::string& sha256) {
    auto document = procedureOf(reader, sha256);
    if (!document) {
        return document;
    }
    const auto shelf = readShelf(reader);
    if (!shelf) {
        return tl::unexpected<Error>(shelf.error());
    }
    const auto roster = readRoster(reader);
    if (!roster) {
        return tl::unexpected<Error>(roster.error());
    }
    return Attesting(*shelf, *roster, reader)(std::move(*document));
}

} // namespace seamclock
