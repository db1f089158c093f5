#include "syntax/names.hpp"

#include <doctest/doctest.h>

using namespace cairn;
using namespace cairn::syntax;

TEST_CASE("a table keeps the first meaning of a name") {
  NameTable table("there is no device");
  CHECK(table.add("a", 0));
  CHECK(!table.add("a", 1));
  CHECK(table.find("a") == 0);
  CHECK(!table.find("b"));
}

TEST_CASE("an unknown name is reported with the nearest one") {
  const Source source("f", "yard-3\n");
  NameTable table("there is no device");
  table.add("quay-1", 0);
  table.add("yard-1", 1);
  Problems problems;
  CHECK(!table.look_up({"yard-3", {&source, 0, 6}}, problems));
  const auto all = problems.sorted({"f"});
  REQUIRE(all.size() == 1);
  CHECK(all[0].message == "there is no device `yard-3`");
  CHECK(all[0].nearest == "yard-1");
  CHECK(all[0].span.length == 6);
}

TEST_CASE("what could not be read is not looked up") {
  const Source source("f", "a\n");
  const Names names;
  Problems problems;
  CHECK(!names.device({"a", {&source, 0, 1}}, problems));
  CHECK(!names.step({"a", {&source, 0, 1}}, problems));
  CHECK(problems.none());
}
