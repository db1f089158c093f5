// YAML 1.2.2, chapter 10, and where the model format (docs/format.md, "Scalars") departs from its schemas on purpose:
// booleans are `true` and `false` alone (as in 10.2, the JSON schema), integers are decimal with an optional sign, and
// where text is wanted a plain scalar is taken as written, so that neither `null` nor `off` nor `9.2` changes.
#include <doctest/doctest.h>

#include "support/read_yaml.hpp"
#include "syntax/reader.hpp"

using namespace cairn;
using cairn::test::Parsed;

namespace {

std::optional<bool> boolean(const std::string& text) {
  Parsed parsed(text);
  return syntax::read_boolean(*parsed.node, "it", parsed.problems);
}

std::optional<std::int64_t> integer(const std::string& text) {
  Parsed parsed(text);
  return syntax::read_integer(*parsed.node, "it", {std::numeric_limits<std::int64_t>::min(), syntax::no_limit},
                              parsed.problems);
}

std::optional<std::string> text_of(const std::string& text) {
  Parsed parsed(text);
  const auto read = syntax::read_text(*parsed.node, "it", parsed.problems);
  if (!read) return std::nullopt;
  return read->value;
}

}  // namespace

TEST_CASE("section 10.2.1.2: booleans") {
  CHECK(boolean("true") == true);
  CHECK(boolean("false") == false);
  // 10.3.2 (core schema) would take these; YAML 1.1 would take the last four.
  for (const char* other : {"True", "FALSE", "\"true\"", "'false'", "yes", "no", "on", "off"}) CHECK(!boolean(other));
}

TEST_CASE("section 10.2.1.3: integers") {
  CHECK(integer("0") == 0);
  CHECK(integer("-0") == 0);
  CHECK(integer("3") == 3);
  CHECK(integer("-19") == -19);
  CHECK(integer("+12") == 12);
  CHECK(integer("007") == 7);
  CHECK(integer("9223372036854775807") == std::numeric_limits<std::int64_t>::max());
  CHECK(integer("-9223372036854775808") == std::numeric_limits<std::int64_t>::min());
}

TEST_CASE("example 10.8 and 10.9: what is no decimal integer of 64 bits") {
  for (const char* other : {"0o7", "0x3A", "1.0", "12e03", "1_000", "9223372036854775808", "-9223372036854775809",
                            "\"5\"", "'5'", "+-5", "--5", ".inf", "null", "~", "5 6"}) {
    CHECK_MESSAGE(!integer(other), other);
  }
}

TEST_CASE("example 10.9: plain scalars where text is wanted") {
  for (const char* plain : {"null", "~", "true", "off", "9.2", "0x3A", "1e3"}) CHECK(text_of(plain) == plain);
  CHECK(text_of("\"9.2\"") == "9.2");
  CHECK(text_of("\"\"") == "");
}
