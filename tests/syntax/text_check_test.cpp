#include "syntax/text_check.hpp"

#include <doctest/doctest.h>

using namespace cairn::syntax;

namespace {

std::string checked(std::string text) {
  const Source source("f", std::move(text));
  Problems problems;
  if (is_text(source, problems)) return "text";
  const auto all = problems.sorted({"f"});
  return std::to_string(all.size()) + " at " + std::to_string(all[0].span.line) + ':' +
         std::to_string(all[0].span.column);
}

}  // namespace

TEST_CASE("tabs, line breaks and printable characters are text") {
  CHECK(checked("a\tb\r\nc\n\xC2\x85\xC2\xA0\xF0\x9F\x8F\x97") == "text");
  CHECK(checked("") == "text");
}

TEST_CASE("the first of what is no text is reported, and no more") {
  CHECK(checked(std::string("a\n\0\0", 4)) == "1 at 2:1");
  CHECK(checked("\x7F\x01") == "1 at 1:1");
  CHECK(checked("\xC3\xA9\xC2\x80") == "1 at 1:2");
  CHECK(checked("a\r") == "1 at 1:2");
  CHECK(checked("a\x04") == "1 at 1:2");  // which the library would take for the end of the file
}
