#include "syntax/problems.hpp"

#include <doctest/doctest.h>

using namespace cairn::syntax;

TEST_CASE("problems are sorted by file in the order given, then by line and column; repetitions are told once") {
  const Source first("b", "one\ntwo\n"), second("a", "three\n");
  Problems problems;
  problems.add({&second, 0, 1}, "z");
  problems.add({&first, 4, 1}, "y");
  problems.add({&first, 1, 1}, "x");
  problems.add({&first, 4, 1}, "y");
  problems.add("b", "w");
  const auto all = problems.sorted({"b", "a"});
  REQUIRE(all.size() == 4);
  CHECK(all[0].message == "w");
  CHECK(all[1].message == "x");
  CHECK(all[2].message == "y");
  CHECK(all[3].message == "z");
  CHECK(all[2].source_line == "two");
}

TEST_CASE("beyond the most that are kept, problems are counted") {
  const Source source("f", std::string(Problems::most + 5, 'x'));
  Problems problems;
  for (std::uint32_t i = 0; i < Problems::most + 5; ++i) problems.add({&source, i, 1}, "x");
  CHECK(problems.count() == Problems::most + 5);
  const auto all = problems.sorted({"f"});
  REQUIRE(all.size() == Problems::most + 1);
  CHECK(all.back().message == "5 further problems are left out here");
}

TEST_CASE("the search for nearest names ends with its budget") {
  Problems problems;
  const std::vector<std::string_view> many(1'000'001, "yard-1");
  CHECK(problems.nearest_to("yard-2", many) == "yard-1");
  CHECK(problems.nearest_to("yard-2", many).empty());
}
