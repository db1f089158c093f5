// YAML 1.2.2, chapter 9: documents. A model file holds one.
#include <doctest/doctest.h>

#include "support/read_yaml.hpp"

using cairn::test::yaml;

TEST_CASE("example 9.1: a prefix of comments") {
  CHECK(yaml("\xEF\xBB\xBF# comment\n# lines\na: b\n") == "{a: b}");
}

TEST_CASE("example 9.2: markers around a document") {
  CHECK(yaml("%YAML 1.2\n---\na: b\n... # the end\n") == "{a: b}");
}

TEST_CASE("example 9.3: `%` inside a document is content") {
  CHECK(yaml("|\n %!page\n") == R"("%!page\n")");
}

TEST_CASE("examples 9.3, 9.4 and 9.6: a second document is refused") {
  CHECK(yaml("a: b\n---\nc: d\n") == "2:1 a second document begins here");
  CHECK(yaml("a: b\n...\n---\nc: d\n") == "3:1 a second document begins here");
  CHECK(yaml("---\na\n---\n# empty\n...\n") == "3:1 a second document begins here");
}

TEST_CASE("section 9.1: nothing follows the document") {
  CHECK(yaml("[a, b] c\n") == "1:8 the document has ended, and this follows it");
}

TEST_CASE("section 9.1: markers do not stand inside quotes") {
  CHECK(yaml("\"a\n---\nb\"\n") == "2:1 a line of three dashes or dots stands inside a quoted text");
}

TEST_CASE("a stream without a document is no model") {
  CHECK(yaml("") == "0:0 the file holds no document");
  CHECK(yaml("---\n...\n") == "0:0 the file holds no document");
}
