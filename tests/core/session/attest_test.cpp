// What a foreman says of procedures, from his PIN through the log to the plan of the next weld.
#include "core/log/log_reader.h"
#include "core/log/verify.h"
#include "core/log/world.h"
#include "core/session/office.h"
#include "core/session/replan.h"
#include "core/session/session.h"
#include "tests/support/demo_order.h"
#include "tests/support/fake_clock.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <random>
#include <set>

namespace seamclock {
namespace {

using Names = std::vector<std::string>;

ProcedureDocument documentOf(const std::string& text) {
    auto read = readProcedure("test", text);
    EXPECT_TRUE(read) << read.error().detail;
    return read ? *read : ProcedureDocument{};
}

std::string shippedText(const std::string& id) {
    return test::textOf(test::resource("procedures/" + id + ".json"));
}

/// PP with the soak that its table lacks below 4.5 mm; the value is invented.
std::string filledPp(const std::string& lower = "60") {
    return test::replaced(
        shippedText("pp-dvs2207-11"),
        "{\"from_mm\": 4.5, \"to_mm\": 7, \"lower\": 135, \"upper\": 175}",
        "{\"from_mm\": 1.0, \"to_mm\": 4.5, \"lower\": " + lower +
            ", \"upper\": 135},\n"
            "{\"from_mm\": 4.5, \"to_mm\": 7, \"lower\": 135, \"upper\": 175}");
}

class Attest : public ::testing::Test {
protected:
    void SetUp() override {
        auto opened = LogWriter<Production>::open(folder.file("a.log"), clock);
        ASSERT_TRUE(opened) << opened.error().detail;
        writer.emplace(std::move(*opened));
        reopenOffice();
        ASSERT_TRUE(office->addFirstForeman("Ines Falk", pin("123456")));
        auto access = office->enter("person:ines-falk", pin("123456"));
        ASSERT_TRUE(access) << access.error().detail;
        ines.emplace(std::move(*access));
    }
    void reopenOffice() {
        auto made = Office::open(*writer, credentials, clock);
        ASSERT_TRUE(made) << made.error().detail;
        office.emplace(std::move(*made));
    }
    static Pin pin(const char* digits) { return std::move(*Pin::read(digits)); }
    LogReader reader() {
        EXPECT_TRUE(writer->flush());
        auto opened = LogReader::open(writer->path());
        EXPECT_TRUE(opened) << (opened ? "" : opened.error().detail);
        return std::move(*opened);
    }
    std::vector<ProcedureDocument> inForce() {
        auto log = reader();
        auto all = proceduresInForce(
            log,
            {documentOf(shippedText("pp-dvs2207-11")), documentOf(shippedText("pe-uni10520"))});
        EXPECT_TRUE(all) << (all ? "" : all.error().detail);
        return all ? *all : std::vector<ProcedureDocument>{};
    }
    ProcedureDocument pp() {
        for (const ProcedureDocument& one : inForce()) {
            if (one.procedure.id == "pp-dvs2207-11") {
                return one;
            }
        }
        ADD_FAILURE() << "no PP";
        return {};
    }
    std::set<std::string> held() {
        std::set<std::string> names;
        for (const Cell& cell : cellsOf(pp().procedure)) {
            if (cell.source.standing == Standing::Attested) {
                names.insert(cell.name);
            }
        }
        return names;
    }
    void set(const std::string& text) {
        const auto done = office->setProcedure(ines->who, documentOf(text));
        ASSERT_TRUE(done) << done.error().detail;
    }
    void attest(const Names& cells) {
        const auto done = office->attest(ines->who, pp(), "2016-03", cells);
        ASSERT_TRUE(done) << done.error().detail;
    }
    void withdraw(const Names& cells) {
        const auto done =
            office->withdrawAttestation(ines->who, "pp-dvs2207-11", "read again", cells);
        ASSERT_TRUE(done) << done.error().detail;
    }
    WeldOrder thinPp() {
        WeldOrder order = test::orderOf(test::kDemoSeams[3]);
        order.procedure = pp();
        order.request.thickness = millimetres(4);
        order.type = WeldType::Production;
        for (Sheet& sheet : order.sheets) {
            sheet.thicknessUm = 4000;
        }
        return order;
    }

    test::ScratchFolder folder;
    test::FakeClock clock;
    Credentials credentials{folder.file("a.log.credentials")};
    std::optional<LogWriter<Production>> writer;
    std::optional<Office> office;
    std::optional<Access> ines;
};

TEST_F(Attest, HoldsInTheLogUnderTheForemansName) {
    EXPECT_TRUE(held().empty());
    attest({"plate", "soak_s.table[7..12]"});
    EXPECT_EQ(held(), (std::set<std::string>{"plate", "soak_s.table[7..12]"}));
    EXPECT_EQ(
        pp().procedure.plate->source.text,
        "DVS 2207-11: 210 ± 10 °C; attested by Ines Falk, 2030-01-07, against edition 2016-03");
    EXPECT_EQ(inForce().size(), 2U);
    EXPECT_EQ(inForce()[0].procedure.id, "pe-uni10520");
    const auto checked = verifyLog(writer->path());
    ASSERT_TRUE(checked) << checked.error().detail;
    EXPECT_TRUE(checked->ok);
}

TEST_F(Attest, IsRefusedWithOneSentence) {
    ASSERT_TRUE(office->addPerson(ines->who, "Lea", Role::Operator, pin("4711")));
    const auto lea = office->enter("person:lea", pin("4711"));
    ASSERT_TRUE(lea);
    const ProcedureDocument document = pp();
    const auto said = [](const Result<void>& result) {
        EXPECT_FALSE(result);
        return result ? std::string() : result.error().detail;
    };
    EXPECT_EQ(
        said(office->attest(lea->who, document, "1", {"plate"})),
        "person:lea is no foreman; only a foreman may do that");
    EXPECT_EQ(
        said(office->withdrawAttestation(lea->who, "pp-dvs2207-11", "why", {"plate"})),
        "person:lea is no foreman; only a foreman may do that");
    EXPECT_EQ(
        said(office->attest(ines->who, document, "", {"plate"})),
        "no edition is named; allowed: the edition of the shop's copy of the standard, as it is "
        "printed on it");
    EXPECT_EQ(
        said(office->attest(ines->who, document, "1", {})),
        "no cell is named; allowed: one or more cells of pp-dvs2207-11");
    EXPECT_EQ(
        said(office->attest(ines->who, document, "1", {"plate", "table 2"})),
        "\"table 2\" is no cell of pp-dvs2207-11; allowed: a name that the procedure's list of "
        "cells shows");
    EXPECT_EQ(
        said(office->withdrawAttestation(ines->who, "pp-dvs2207-11", "why", {"plate"})),
        "nobody attested \"plate\" of pp-dvs2207-11; allowed: a cell that is attested");
    EXPECT_EQ(
        said(office->withdrawAttestation(ines->who, "pp-dvs2207-11", "", {"plate"})),
        "no reason is given; allowed: a few words why");
    EXPECT_TRUE(held().empty());
    EXPECT_TRUE(office->shelf().attestations.empty());
}

// The issue's own case: one cell attested, another changed.
TEST_F(Attest, AChangeWithdrawsWhatChangedAndChangingBackRestoresIt) {
    set(filledPp());
    attest({"soak_s.table[1..4.5]", "plate"});
    const std::set<std::string> both{"plate", "soak_s.table[1..4.5]"};
    EXPECT_EQ(held(), both);
    set(filledPp("61"));
    EXPECT_EQ(held(), std::set<std::string>{"plate"});
    set(filledPp());
    EXPECT_EQ(held(), both);
    set(test::replaced(filledPp(), "\"max_C\": 220", "\"max_C\": 219"));
    EXPECT_EQ(held(), std::set<std::string>{"soak_s.table[1..4.5]"});
}

TEST_F(Attest, WhatWasWithdrawnStaysSoUntilItIsAttestedAgain) {
    attest({"plate", "half_cooling"});
    withdraw({"plate"});
    EXPECT_EQ(held(), std::set<std::string>{"half_cooling"});
    set(test::replaced(shippedText("pp-dvs2207-11"), "\"max_C\": 220", "\"max_C\": 219"));
    set(shippedText("pp-dvs2207-11"));
    EXPECT_EQ(held(), std::set<std::string>{"half_cooling"});
    attest({"plate"});
    EXPECT_EQ(held(), (std::set<std::string>{"half_cooling", "plate"}));
    reopenOffice();
    EXPECT_EQ(office->shelf().attestations.size(), 2U);
    auto log = reader();
    EXPECT_EQ(*readShelf(log), office->shelf()) << "a fold is the same live and read anew";
}

// Random words of foremen against a plain account of them: per cell, the contents that somebody
// attested and nobody withdrew since.
TEST_F(Attest, AgreesWithAPlainAccountOfWhatWasSaid) {
    std::mt19937 random(7);
    const auto chosen = [&random](std::size_t count) {
        return std::uniform_int_distribution<std::size_t>(0, count - 1)(random);
    };
    const Names cells{"plate", "soak_s.table[1..4.5]", "reference_ambient", "half_cooling"};
    std::map<std::string, std::set<std::string>> account; // cell: contents
    const auto contents = [this] {
        std::map<std::string, std::string> out;
        for (const Cell& cell : cellsOf(pp().procedure)) {
            out[cell.name] = cell.content;
        }
        return out;
    };
    set(filledPp());
    for (int round = 0; round < 60; ++round) {
        const std::string cell = cells[chosen(cells.size())];
        const std::size_t act = chosen(3);
        if (act == 0) {
            std::string text = filledPp(std::to_string(60 + chosen(2)));
            if (chosen(2) == 0) {
                text = test::replaced(text, "\"max_C\": 220", "\"max_C\": 218");
            }
            set(text);
        } else if (act == 1) {
            attest({cell});
            account[cell].insert(contents()[cell]);
        } else if (!account[cell].empty()) {
            withdraw({cell});
            account[cell].clear();
        }
        std::set<std::string> expected;
        for (const auto& [name, content] : contents()) {
            if (account[name].count(content) > 0) {
                expected.insert(name);
            }
        }
        ASSERT_EQ(held(), expected) << "round " << round;
    }
}

TEST_F(Attest, MakesAFilledProcedureReadyToWeld) {
    auto session = Session<Production>::start(*writer, clock);
    ASSERT_TRUE(session);
    const auto lacking = session->open(thinPp(), "person:ines-falk");
    ASSERT_FALSE(lacking);
    EXPECT_EQ(
        lacking.error().detail, "procedure pp-dvs2207-11 can't be welded with yet: it lacks "
                                "soak_s, which the shop fills and attests first");
    set(filledPp());
    const auto filled = session->open(thinPp(), "person:ines-falk");
    ASSERT_FALSE(filled);
    EXPECT_EQ(
        filled.error().detail, "procedure pp-dvs2207-11 can't be welded with yet: the shop filled "
                               "in soak_s, which a foreman attests first");
    attest({"soak_s.table[1..4.5]"});
    const auto weld = session->open(thinPp(), "person:ines-falk");
    ASSERT_TRUE(weld) << weld.error().detail;
    const auto source = std::find_if(
        weld->plan.sources.begin(), weld->plan.sources.end(),
        [](const PlanSource& each) { return each.value == "soak_s"; });
    ASSERT_NE(source, weld->plan.sources.end());
    EXPECT_EQ(source->source.standing, Standing::Attested);
    EXPECT_NE(source->source.text.find("; attested by Ines Falk, 2030-01-07"), std::string::npos);
}

// Somebody changes the procedure in Set-up while a weld is being prepared: its drag still comes in,
// by the procedure that it was opened with and the attestations of that one.
TEST_F(Attest, OfTheDocumentThatAWeldWasOpenedWithServesItsPlanAgain) {
    set(filledPp());
    attest({"soak_s.table[1..4.5]"});
    auto session = Session<Production>::start(*writer, clock);
    ASSERT_TRUE(session);
    WeldOrder order = thinPp();
    order.request.plateTarget = Temperature::celsius(208);
    const auto weld = session->open(order, "person:ines-falk");
    ASSERT_TRUE(weld) << weld.error().detail;
    const ProcedureDocument before = pp();
    EXPECT_EQ(procedureOf(*weld, inForce(), writer->path())->sha256, before.sha256);
    set(filledPp("77"));
    ASSERT_TRUE(writer->flush());
    const auto procedure = procedureOf(*weld, inForce(), writer->path());
    ASSERT_TRUE(procedure) << procedure.error().detail;
    EXPECT_EQ(procedure->sha256, before.sha256);
    Measured measured;
    measured.drag = newtons(31);
    const auto again = planAgain(*weld, procedure->procedure, order.bench.bench, measured);
    ASSERT_TRUE(again) << again.error().detail;
    EXPECT_EQ(again->dragMn, 31'000);
    EXPECT_TRUE(again->isReady());
    EXPECT_EQ(again->soak, weld->plan.soak);
    EXPECT_EQ(again->plate->targetMc, 208'000);
    EXPECT_EQ(again->ambientMc, weld->plan.ambientMc);
    measured.ambient = Temperature::celsius(14);
    EXPECT_EQ(
        planAgain(*weld, procedure->procedure, order.bench.bench, measured)->ambientMc, 14'000);
}

TEST_F(Attest, OfHalfTheCoolingStaysWithThePlanMadeAgain) {
    auto session = Session<Production>::start(*writer, clock);
    ASSERT_TRUE(session);
    WeldOrder order = thinPp();
    order.request.thickness = millimetres(15);
    order.request.lengths = {millimetres(600)};
    order.request.halfCooling = HalfCooling{true, true};
    const auto weld = session->open(order, "person:ines-falk");
    ASSERT_TRUE(weld) << weld.error().detail;
    Measured measured;
    measured.drag = newtons(40);
    const auto again = planAgain(*weld, pp().procedure, order.bench.bench, measured);
    ASSERT_TRUE(again) << again.error().detail;
    EXPECT_TRUE(again->halfCooling);
    EXPECT_EQ(again->cooling, weld->plan.cooling);
}

TEST_F(Attest, OfAProcedureThatNobodyHasIsMissing) {
    auto session = Session<Production>::start(*writer, clock);
    ASSERT_TRUE(session);
    WeldOrder order = thinPp();
    order.request.thickness = millimetres(8);
    auto weld = session->open(order, "station");
    ASSERT_TRUE(weld) << weld.error().detail;
    auto elsewhere = LogWriter<Production>::open(folder.file("b.log"), clock);
    ASSERT_TRUE(elsewhere);
    const auto none = procedureOf(*weld, {}, elsewhere->path());
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().code, ErrorCode::Missing);
    EXPECT_EQ(
        none.error().detail, "the procedure of this weld, pp-dvs2207-11, is neither on this tablet "
                             "nor in its log");
}

} // namespace
} // namespace seamclock
