#include "syntax/positions.hpp"

#include <doctest/doctest.h>

#include "support/read_yaml.hpp"

using namespace cairn;
using cairn::test::Parsed;

namespace {

/// Where `part` of the value of the only key stands.
std::string place_of(const std::string& yaml, const std::string& part) {
  const Parsed parsed(yaml);
  REQUIRE(parsed.node);
  const auto& scalar = parsed.node->entries[0].value;
  const auto at = scalar.text.find(part);
  REQUIRE(at != std::string::npos);
  const auto span = syntax::Positions(scalar).at(at, part.size()).span();
  return std::to_string(span.line) + ':' + std::to_string(span.column) + '+' + std::to_string(span.length);
}

}  // namespace

TEST_CASE("plain, on one line and on several") {
  CHECK(place_of("a: up(x) and up(y)\n", "up(y)") == "1:14+5");
  CHECK(place_of("a: up(x) and\n  up(y)\n", "up(y)") == "2:3+5");
  CHECK(place_of("a: up(x)\n\n  up(y)\n", "up(y)") == "3:3+5");
}

TEST_CASE("in quotes") {
  CHECK(place_of("a: \"up(x) and up(y)\"\n", "up(y)") == "1:15+5");
  CHECK(place_of("a: 'up(x) and\n  up(y)'\n", "up(y)") == "2:3+5");
}

TEST_CASE("in block scalars") {
  CHECK(place_of("a: >\n  up(x) and\n  up(y)\n", "up(y)") == "3:3+5");
  CHECK(place_of("a: |-  # comment\n    up(x) and\n    up(y)\n", "up(y)") == "3:5+5");
  CHECK(place_of("a: >-\n  up(x) and\n\n  up(y)\n", "up(y)") == "4:3+5");
}

TEST_CASE("a stretch over two lines ends with the first") {
  CHECK(place_of("a: up(x) and\n  up(y)\n", "and up") == "1:10+3");
}

TEST_CASE("with escapes the whole scalar is meant") {
  CHECK(place_of("a: \"\\x75p(x) and up(y)\"\n", "up(y)") == "1:4+20");
}

TEST_CASE("the end of the text is the place behind it") {
  for (const std::string yaml : {"a: up(x) and\n", "a: 'up(x) and'\n", "a: >-\n  up(x)\n  and\n"}) {
    const Parsed parsed(yaml);
    const auto& scalar = parsed.node->entries[0].value;
    const auto& text = parsed.source->text();
    CHECK(syntax::Positions(scalar).at(scalar.text.size(), 1).offset == text.find("and") + 3);
  }
}
