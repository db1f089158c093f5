#include "base/text.hpp"

#include <array>

#include <doctest/doctest.h>

using namespace cairn;

TEST_CASE("UTF-8: RFC 3629, section 4, and its limits") {
  CHECK(!first_invalid_utf8("A\xE2\x89\xA2\xCE\x91."));                // RFC 3629, section 7, first example
  CHECK(!first_invalid_utf8("\xED\x95\x9C\xEA\xB5\xAD\xEC\x96\xB4"));  // second example
  CHECK(!first_invalid_utf8("\xF0\xA3\x8E\xB4"));                      // fourth example, after its byte order mark
  CHECK(first_invalid_utf8("ab\xC0\x80") == 2);                        // section 3: C0 80 is no NUL
  CHECK(first_invalid_utf8("\xED\xA1\x8C\xED\xBE\xB4") == 0);          // section 3: no surrogates
  CHECK(first_invalid_utf8("\xF4\x90\x80\x80") == 0);                  // above U+10FFFF
  CHECK(first_invalid_utf8("\xE0\x80\xAF") == 0);
  CHECK(first_invalid_utf8("\xF0\x80\x80\xAF") == 0);
  CHECK(first_invalid_utf8("a\x80") == 1);
  CHECK(first_invalid_utf8("a\xE2\x89") == 1);
  CHECK(first_invalid_utf8("\xFF") == 0);
  CHECK(!first_invalid_utf8("\xF4\x8F\xBF\xBF"));
}

TEST_CASE("code points are decoded and counted") {
  CHECK(code_point_at("A\xE2\x89\xA2", 1).value == 0x2262);  // RFC 3629, section 7
  CHECK(code_point_at("\xF0\xA3\x8E\xB4", 0).value == 0x233B4);
  CHECK(code_point_at("\xF0\xA3\x8E\xB4", 0).length == 4);
  CHECK(count_code_points("A\xE2\x89\xA2\xCE\x91.") == 4);
  CHECK(count_code_points("") == 0);
}

TEST_CASE("columns: combining marks take none, East Asian wide forms two (Unicode Standard Annex 11)") {
  CHECK(columns_of('a') == 1);
  CHECK(columns_of(0xE9) == 1);
  CHECK(columns_of(0x301) == 0);
  CHECK(columns_of(0x6F22) == 2);
  CHECK(columns_of(0xFF21) == 2);
}

TEST_CASE("printable keeps a terminal safe and its columns right") {
  CHECK(printable("a\tb") == "a\tb");
  CHECK(printable("a\x1b[2J") == "a\xEF\xBF\xBD[2J");
  CHECK(printable("caf\xE9") == "caf\xEF\xBF\xBD");
  CHECK(printable("\xC2\x9B") == "\xEF\xBF\xBD");
  for (const std::string text : {"a\x80\x80 b", "\xE2\x89", "\xFF\xFE", "\x80"}) {
    CHECK(!first_invalid_utf8(printable(text)));
  }
}

TEST_CASE("quoted shortens what is longer than a line, between characters") {
  CHECK(quoted("yard-1") == "`yard-1`");
  std::string longer;
  for (int i = 0; i < 100; ++i) longer += "\xC3\xA9";
  CHECK(count_code_points(quoted(longer)) < 60);
  CHECK(!first_invalid_utf8(quoted(longer)));
  CHECK(quoted(std::string(80, 'a')).size() == 82);
}

TEST_CASE("trimmed") {
  CHECK(trimmed(" \t a b\n\n") == "a b");
  CHECK(trimmed(" \n").empty());
  CHECK(trimmed("").empty());
}

TEST_CASE("lists and plurals") {
  constexpr std::array<std::string_view, 3> words = {"east", "west", "none"};
  CHECK(one_of(std::span(words).first(0)) == "");
  CHECK(one_of(std::span(words).first(1)) == "east");
  CHECK(one_of(std::span(words).first(2)) == "east or west");
  CHECK(one_of(words) == "east, west or none");
  CHECK(counted(0, "step") == "0 steps");
  CHECK(counted(1, "step") == "1 step");
  CHECK(counted(2, "step") == "2 steps");
}
