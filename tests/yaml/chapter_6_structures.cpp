// YAML 1.2.2, chapter 6: structural productions. Each check names the example that has the same corner.
#include <doctest/doctest.h>

#include "support/read_yaml.hpp"

using cairn::test::yaml;

TEST_CASE("example 6.1: indentation") {
  CHECK(yaml("  # a comment before\n\nyard:\n By one blank: |\n    By four\n      blanks\n Flow: [    # a comment "
             "inside\n   two,\n  "
             "three\n    ]\n") == R"({yard: {By one blank: "By four\n  blanks\n", Flow: [two, three]}})");
}

TEST_CASE("example 6.1: no tab in the indentation") {
  CHECK(yaml("a:\n\tb: c\n") == "2:1 a tab stands in the indentation");
}

TEST_CASE("example 6.2: `- ` counts as indentation") {
  CHECK(yaml("? a\n: - b\n  -  - c\n     - d\n") == "{a: [b, [c, d]]}");
}

TEST_CASE("example 6.4: prefixes of lines") {
  CHECK(yaml("plain: text\n  lines\nquoted: \"text\n  lines\"\nblock: |\n  text\n   lines\n") ==
        R"({plain: text lines, quoted: "text lines", block: "text\n lines\n"})");
}

TEST_CASE("example 6.5: empty lines fold to line feeds") {
  CHECK(yaml("folding:\n  \"one\n\n  two\"\n") == R"({folding: "one\ntwo"})");
}

TEST_CASE("example 6.9: `#` begins a comment only after a blank") {
  CHECK(yaml("key:    # comment\n  value#no-comment\n") == "{key: value#no-comment}");
  CHECK(yaml("key: \"value\"#no-comment\n") == "1:13 a comment begins after a blank only");
}

TEST_CASE("example 6.12: a flow mapping as a key") {
  CHECK(yaml("? { first: one }\n: two\n") == "{{first: one}: two}");
}

TEST_CASE("example 6.13: reserved directives are passed over") {
  CHECK(yaml("%FOO  bar baz\n--- \"foo\"\n") == R"("foo")");
}

TEST_CASE("example 6.14 and 6.15: the YAML directive, once") {
  CHECK(yaml("%YAML 1.2\n---\na: b\n") == "{a: b}");
  CHECK(yaml("%YAML 2.0\n---\na: b\n") == "1:1 this is a later YAML than 1.2");
  CHECK(yaml("%YAML 1.2\n%YAML 1.1\n---\na\n") == "2:1 this is no YAML: repeated YAML directive");
}

TEST_CASE("examples 6.23 to 6.28: explicit tags are refused, the non-specific one too") {
  CHECK(yaml("!!str a: b\n") == "1:1 models have no tags");
  CHECK(yaml("a: !<tag:yaml.org,2002:str> b\n") == "1:4 models have no tags");
  CHECK(yaml("a: ! 12\n") == "1:4 models have no tags");
  CHECK(yaml("a: &x\n  !!map\n  b: c\n") == "2:3 models have no tags");
}

TEST_CASE("example 6.29: anchors") {
  CHECK(yaml("first: &a Value\nsecond: *a\n") == "{first: Value, second: Value}");
}
