// Comma-separated values by RFC 4180: comma, CRLF, quotes where needed. A spreadsheet runs a cell
// that begins with = + - @, with their wide forms or with a tab or CR as a formula, and remarks
// and batch numbers are typed by people: such a cell gets an apostrophe in front, unless it is a
// plain number.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

std::string separatedCell(std::string_view value);
/// One line with its CRLF.
std::string separatedRow(const std::vector<std::string>& cells);
std::string separatedRow(std::initializer_list<std::string_view> cells);

} // namespace seamclock
