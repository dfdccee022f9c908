// Comma-separated values against RFC 4180 and an independent reader: the csv module of python3.
#include "core/report/separated.h"
#include "tests/support/scratch_folder.h"

#include <array>
#include <cstdio>
#include <fstream>
#include <gtest/gtest.h>
#include <memory>

namespace seamclock {
namespace {

TEST(Separated, QuotesAsTheExamplesOfRfc4180) {
    // RFC 4180, section 2, rules 2, 5, 6 and 7.
    EXPECT_EQ(separatedRow({"aaa", "bbb", "ccc"}), "aaa,bbb,ccc\r\n");
    EXPECT_EQ(separatedRow({"aaa", "b\r\nbb", "ccc"}), "aaa,\"b\r\nbb\",ccc\r\n");
    EXPECT_EQ(separatedRow({"aaa", "b\"bb", "ccc"}), "aaa,\"b\"\"bb\",ccc\r\n");
    EXPECT_EQ(separatedRow({"a,b", ""}), "\"a,b\",\r\n");
}

TEST(Separated, LeavesNoFormulaToASpreadsheet) {
    // The leading signs that spreadsheets take for a formula, as the testing guides for web
    // programs list them.
    const struct {
        const char* value;
        const char* cell;
    } rows[] = {
        {"=1+1", "'=1+1"},
        {"+cmd", "'+cmd"},
        {"-2+3", "'-2+3"},
        {"@sum(a1)", "'@sum(a1)"},
        {"\tx", "\"'\tx\""},
        {"\rx", "\"'\rx\""},
        {"\uFF1D1+1", "'\uFF1D1+1"},
        {"\uFF0B1", "'\uFF0B1"},
        {"\uFF0D1", "'\uFF0D1"},
        {"\uFF20sum", "'\uFF20sum"},
        {"=\"a\",b", "\"'=\"\"a\"\",b\""},
        // Where another sign than a comma is taken for the end of a cell, nothing runs behind it.
        {"a;=1+1", "\"a;'=1+1\""},
        {"a\t@sum(a1)", "\"a\t'@sum(a1)\""},
        {"a\n+cmd", "\"a\n'+cmd\""},
        {"a;\"=1\"", "\"a;'\"\"=1\"\"\""},
        {"a;\uFF1D1", "\"a;'\uFF1D1\""},
        {"a; b;c", "\"a; b;c\""},
        {"-", "'-"},
        {"+", "'+"},
        {"-.5", "'-.5"},
        {"-1e5", "'-1e5"},
        {"-1.2.3", "'-1.2.3"}};
    for (const auto& row : rows) {
        EXPECT_EQ(separatedCell(row.value), row.cell) << row.value;
    }
}

TEST(Separated, LeavesPlainNumbersAndWordsAlone) {
    for (const char* value : {"-12", "+0.5", "-0.05", "12", "a=b", "", "x-1", "±3"}) {
        EXPECT_EQ(separatedCell(value), value);
    }
}

TEST(Separated, IsReadBackByAnIndependentReader) {
    const std::vector<std::vector<std::string>> rows = {
        {"plain", "with,comma", "with \"quotes\"", "two\r\nlines", ""},
        {"Straße ± 0.15 N/mm²", "\"", ",", "\n", " blanks "},
        {"-1.5", "a\"\"b", "溶接", "'", "end"}};
    const test::ScratchFolder folder;
    const std::string csv = folder.file("rows.csv");
    {
        std::ofstream file(csv, std::ios::binary);
        for (const auto& row : rows) {
            file << separatedRow(row);
        }
    }
    // Each cell comes back as the hexadecimal of its UTF-8 bytes, so that no other quoting is
    // between.
    const std::string command =
        "python3 -c 'import csv,sys\n"
        "for row in csv.reader(open(sys.argv[1],encoding=\"utf-8\",newline=\"\"),strict=True):\n"
        "    print(\" \".join(c.encode().hex() or \"-\" for c in row))' '" +
        csv + "'";
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> pipe(
        ::popen(command.c_str(), "r"), ::pclose);
    ASSERT_TRUE(pipe);
    std::string read;
    std::array<char, 4096> block{};
    for (std::size_t n = 1; n > 0;) {
        n = std::fread(block.data(), 1, block.size(), pipe.get());
        read.append(block.data(), n);
    }
    std::string expected;
    for (const auto& row : rows) {
        std::string line;
        for (const std::string& cell : row) {
            line += line.empty() ? "" : " ";
            for (const char c : cell) {
                char hex[3];
                std::snprintf(hex, sizeof hex, "%02x", static_cast<unsigned char>(c));
                line += hex;
            }
            line += cell.empty() ? "-" : "";
        }
        expected += line + "\n";
    }
    EXPECT_EQ(read, expected);
}

} // namespace
} // namespace seamclock
