#include "syntax/yaml.hpp"

#include <doctest/doctest.h>

#include "support/read_yaml.hpp"

using namespace cairn;
using cairn::test::Parsed;
using cairn::test::yaml;

namespace {

std::string repeated(const std::string& what, int n) {
  std::string out;
  for (int i = 0; i < n; ++i) out += what;
  return out;
}

std::string place_of(const syntax::Node& node) {
  const auto span = node.place.span();
  return std::to_string(span.line) + ':' + std::to_string(span.column) + '+' + std::to_string(span.length);
}

}  // namespace

TEST_CASE("every node knows where it stands") {
  const Parsed parsed("\xC3\xA9: [one, 'two', \"th\\tree\"]\nb: &x  four words here\nc:\n  d: |\n    e\n");
  REQUIRE(parsed.node);
  const auto& entries = parsed.node->entries;
  CHECK(place_of(entries[0].key) == "1:1+1");
  CHECK(place_of(entries[0].value) == "1:4+1");
  CHECK(place_of(entries[0].value.items[0]) == "1:5+3");
  CHECK(place_of(entries[0].value.items[1]) == "1:10+5");
  CHECK(place_of(entries[0].value.items[2]) == "1:17+9");
  CHECK(place_of(entries[1].value) == "2:8+15");
  CHECK(place_of(entries[2].value) == "4:3+1");
  CHECK(place_of(entries[2].value.entries[0].value) == "4:6+1");
}

TEST_CASE("an alias has the place of what it stands for") {
  const Parsed parsed("a: &x one\nb: *x\n");
  CHECK(place_of(parsed.node->entries[1].value) == "1:7+3");
}

TEST_CASE("nesting is bounded, however it is written") {
  CHECK(yaml(repeated("[", 200) + repeated("]", 200)).starts_with("[["));
  CHECK(yaml(repeated("[", 201) + repeated("]", 201)) == "1:201 lists and mappings are nested more than 200 deep");
  for (const char* opening : {"[", "{a: ", "- ", "? ", "[a, {b: ", "&x ["}) {
    CHECK(yaml(repeated(opening, 100000)).find("nested more than 200 deep") != std::string::npos);
  }
  std::string steps;
  for (int i = 0; i < 1000; ++i) steps += std::string(static_cast<std::size_t>(i), ' ') + "a:\n";
  CHECK(yaml(steps) == "201:201 lists and mappings are nested more than 200 deep");
}

TEST_CASE("aliases are replaced within a budget") {
  std::string bomb = "a: &a [x,x,x,x,x,x,x,x,x,x]\n";
  for (char c = 'b'; c < 'k'; ++c) {
    const char before = static_cast<char>(c - 1);
    bomb += std::string(1, c) + ": &" + c + " [" + repeated(std::string("*") + before + ",", 10) + "]\n";
  }
  CHECK(yaml(bomb) == "6:26 the document holds more than 1000000 values, aliases replaced by what they stand for");
  CHECK(yaml(repeated("[&a ", 3) + "x" + repeated("]", 3)) == "[[[x]]]");
}

TEST_CASE("values are bounded in all") {
  CHECK(yaml('[' + repeated("x,", 999'999) + ']').size() > 1'000'000);
  CHECK(yaml('[' + repeated("x,", 1'000'000) + ']') ==
        "1:2000000 the document holds more than 1000000 values, aliases replaced by what they stand for");
}

TEST_CASE("keys that stand twice are kept: who reads them reports them") {
  CHECK(yaml("a: 1\na: 2\n") == "{a: 1, a: 2}");
}

TEST_CASE("a merge key is a key like any other") {
  CHECK(yaml("a: &x {b: 1}\nc:\n  <<: *x\n") == "{a: {b: 1}, c: {<<: {b: 1}}}");
}
