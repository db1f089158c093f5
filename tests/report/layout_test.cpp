#include "report/layout.hpp"

#include <doctest/doctest.h>

#include "report/words.hpp"

using namespace cairn;
using namespace cairn::report;

TEST_CASE("text is wrapped at blanks, and no word is cut") {
  CHECK(wrapped("one two three", 7) == std::vector<std::string>{"one two", "three"});
  CHECK(wrapped("one two three", 13) == std::vector<std::string>{"one two three"});
  CHECK(wrapped("a very-long-word b", 6) == std::vector<std::string>{"a", "very-long-word", "b"});
  CHECK(wrapped("  blanks   go  ", 20) == std::vector<std::string>{"blanks go"});
  CHECK(wrapped("", 20) == std::vector<std::string>{""});
}

TEST_CASE("nothing that a terminal acts upon gets through") {
  // C0 and C1 control characters: ECMA-48, sections 5.2 and 5.3.
  CHECK(in_one_line("a\x1b[31mb") == "a\uFFFD[31mb");
  CHECK(in_one_line("a\nb\tc\rd") == "a b c d");
  CHECK(in_one_line("a\u009bb") == "a\uFFFDb");
  CHECK(in_one_line("Quai \u00e0 conteneurs") == "Quai \u00e0 conteneurs");
  CHECK(in_one_line("\xff") == "\uFFFD");
}

TEST_CASE("columns are counted, not bytes") {
  CHECK(width_of("quay") == 4);
  CHECK(width_of("\u00e9t\u00e9") == 3);
  // Unicode Standard Annex #11: CJK ideographs are wide.
  CHECK(width_of("\u6e2f") == 2);
  CHECK(padded("\u00e9", 3) == "\u00e9  ");
  CHECK(padded("long", 2) == "long");
}

TEST_CASE("a long name keeps its head and its tail") {
  CHECK(shortened("yard-1", 10) == "yard-1");
  CHECK(shortened("distribution-switch-17", 12) == "distr..ch-17");
  CHECK(shortened("distribution-switch-17", 12).size() == 12);
}

TEST_CASE("a label stands beside its text, or above it where it is too long") {
  Page page(TextStyle{});
  page.entry(2, "Faults", 8, "none of them");
  page.entry(2, "All platforms", 8, "the same");
  CHECK(page.take() == "  Faults  none of them\n  All platforms\n          the same\n");
}

TEST_CASE("colours come in pairs, and only where they are asked for") {
  CHECK(Page(TextStyle{}).painted("word", Tone::bad) == "word");
  CHECK(Page(TextStyle{true, false, false}).painted("word", Tone::bad) == "\x1b[1;31mword\x1b[0m");
  CHECK(Page(TextStyle{true, false, false}).painted("word", Tone::plain) == "word");
}

TEST_CASE("lists and figures") {
  CHECK(listed({}) == "");
  CHECK(listed({"a"}) == "a");
  CHECK(listed({"a", "b"}) == "a and b");
  CHECK(listed({"a", "b", "c"}, "or") == "a, b or c");
  CHECK(listed_briefly({"a", "b", "c", "d"}, 2) == "a, b and 2 more");
  CHECK(grouped(7) == "7");
  CHECK(grouped(1000) == "1,000");
  CHECK(grouped(12345678) == "12,345,678");
  CHECK(subject({"a"}, "restart") == "a restarts");
  CHECK(subject({"a", "b"}, "restart") == "a and b restart");
  CHECK(capitalised("the end") == "The end");
}
