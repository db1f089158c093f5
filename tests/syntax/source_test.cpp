#include "syntax/source.hpp"

#include <doctest/doctest.h>

using cairn::syntax::Source;

namespace {
std::string told(const cairn::Span& s) {
  return std::to_string(s.line) + ':' + std::to_string(s.column) + '+' + std::to_string(s.length);
}
}  // namespace

TEST_CASE("lines and columns count from 1, columns in characters") {
  const Source source("f", "ab\n\xC3\xA9\xC3\xA9 c\r\n\nd");
  CHECK(told(source.span(0, 2)) == "1:1+2");
  CHECK(told(source.span(3, 4)) == "2:1+2");
  CHECK(told(source.span(8, 1)) == "2:4+1");
  CHECK(told(source.span(11, 1)) == "3:1+1");
  CHECK(told(source.span(12, 1)) == "4:1+1");
  CHECK(source.line(8) == "\xC3\xA9\xC3\xA9 c");
}

TEST_CASE("a stretch ends with its line, and lies within the text") {
  const Source source("f", "ab\ncd");
  CHECK(told(source.span(1, 9)) == "1:2+1");
  CHECK(told(source.span(2, 9)) == "1:3+1");
  CHECK(told(source.span(99, 9)) == "2:3+1");
  CHECK(source.line(99) == "cd");
}

TEST_CASE("a byte order mark is taken off") {
  const Source source("f",
                      "\xEF\xBB\xBF"
                      "ab");
  CHECK(source.text() == "ab");
  CHECK(told(source.span(1, 1)) == "1:2+1");
}

TEST_CASE("columns in a line that is longer than a block") {
  std::string text;
  for (int i = 0; i < 3000; ++i) text += "\xC3\xA9";
  const Source source("f", text + "x");
  CHECK(told(source.span(6000, 1)) == "1:3001+1");
  CHECK(source.line(0).empty());
}

TEST_CASE("an empty text has one empty line") {
  const Source source("f", "");
  CHECK(told(source.span(0, 1)) == "1:1+1");
  CHECK(source.line(0).empty());
}
