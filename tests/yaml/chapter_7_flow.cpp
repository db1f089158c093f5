// YAML 1.2.2, chapter 7: flow styles. Each check names the example that has the same corner.
#include <doctest/doctest.h>

#include "support/read_yaml.hpp"

using cairn::test::yaml;

TEST_CASE("example 7.1: an anchor may be given again") {
  CHECK(yaml("- &a one\n- *a\n- &a two\n- *a\n") == "[one, one, two, two]");
}

TEST_CASE("section 7.1: an alias without its anchor, and one inside what it stands for") {
  CHECK(yaml("- *a\n") == "1:3 this alias stands for no anchor above it");
  CHECK(yaml("a: &x [*x]\n") == "1:8 this alias stands inside the value that it stands for");
}

TEST_CASE("examples 7.2 and 7.3: empty nodes") {
  CHECK(yaml("{\n  ? foo :,\n  : bar,\n}\n") == "{foo: -, -: bar}");
  CHECK(yaml("a:\nb: {c: , d}\n") == "{a: -, b: {c: -, d: -}}");
}

TEST_CASE("section 7.2: an empty value before a key that is called null") {
  CHECK(yaml("a:\nnull: 5\n") == "{a: -, null: 5}");
  CHECK(yaml("a:\n  b:\nnull: 5\n") == "{a: {b: -}, null: 5}");
  CHECK(yaml("a:\n- b:\n  null:\n-\nnull: ~\n") == "{a: [{b: -, null: -}, -], null: ~}");
  CHECK(yaml("a: &x\nnull: 5\n") == "{a: -, null: 5}");
  CHECK(yaml("a:\n&x null: 5\n") == "{a: -, null: 5}");
  CHECK(yaml("a: &x null\nb:\n  &y ~\n") == "{a: null, b: ~}");
  CHECK(yaml("[null, a: null, ~]\n") == "[null, {a: null}, ~]");
}

TEST_CASE("examples 7.4 and 7.8: quoted keys") {
  CHECK(yaml("\"block key\" : [\n  'flow key' : value,\n ]\n") == R"({"block key": [{"flow key": value}]})");
}

TEST_CASE("example 7.5: line breaks in double quotes") {
  CHECK(yaml("\"folded \nto a blank,\n \nto a line feed, or \\\n \\ no break\"\n") ==
        R"("folded to a blank,\nto a line feed, or  no break")");
}

TEST_CASE("examples 7.6 and 7.9: lines in quotes") {
  CHECK(yaml("\" first\n\n second \n third \"\n") == R"(" first\nsecond third ")");
  CHECK(yaml("' first\n\n second \n third '\n") == R"(" first\nsecond third ")");
}

TEST_CASE("example 7.7: a quote in single quotes") {
  CHECK(yaml("'here''s a \"crane\"'\n") == R"("here's a "crane"")");
}

TEST_CASE("example 7.10: plain characters") {
  CHECK(yaml("- ::vector\n- \": - ()\"\n- Up, up, and off!\n- -123\n- proto://quay#gate\n") ==
        R"x([::vector, ": - ()", Up, up, and off!, -123, proto://quay#gate])x");
  CHECK(yaml("[ ::vector, -123, proto://quay#gate ]\n") == "[::vector, -123, proto://quay#gate]");
}

TEST_CASE("section 7.3.3: what no plain scalar holds") {
  CHECK(yaml("a: b: c\n") == "1:5 a `: ` cannot stand here");
  CHECK(yaml("a: - b\n") == "1:4 a list cannot begin here");
  CHECK(yaml("a: %b\n") == "1:4 no value can begin with this character");
}

TEST_CASE("example 7.12: plain lines") {
  CHECK(yaml("first\n\n second \n third\n") == "first\nsecond third");
}

TEST_CASE("examples 7.13 and 7.15: flow collections") {
  CHECK(yaml("- [ one, two, ]\n- [three ,four]\n") == "[[one, two], [three, four]]");
  CHECK(yaml("- { one : two , three: four , }\n- {five: six,seven : eight}\n") ==
        "[{one: two, three: four}, {five: six, seven: eight}]");
}

TEST_CASE("example 7.14: entries of a flow sequence") {
  CHECK(yaml("[\n\"double\n quoted\", 'single\n  quoted',\nplain\n text, [ nested ],\nsingle: pair,\n]\n") ==
        R"(["double quoted", "single quoted", plain text, [nested], {single: pair}])");
}

TEST_CASE("examples 7.17 and 7.18: values of a flow mapping") {
  CHECK(yaml("{\nunquoted : \"separate\",\nproto://quay,\nomitted value:,\n}\n") ==
        R"({unquoted: "separate", proto://quay: -, omitted value: -})");
  CHECK(yaml("{\n\"adjacent\":value,\n\"readable\": value,\n\"empty\":\n}\n") ==
        R"({"adjacent": value, "readable": value, "empty": -})");
}

TEST_CASE("examples 7.19 and 7.20: single pairs") {
  CHECK(yaml("[\nfoo: bar\n]\n") == "[{foo: bar}]");
  CHECK(yaml("[\n? foo\n bar : baz\n]\n") == "[{foo bar: baz}]");
}

TEST_CASE("section 7.4: brackets that do not match") {
  CHECK(yaml("a: [b, c\n") == "1:4 this `[` is never closed, or a comma is missing before here");
  CHECK(yaml("a: {b: c\n") == "1:4 this `{` is never closed, or a comma is missing before here");
  CHECK(yaml("a: [b]\n]\n") == "2:1 this bracket closes nothing");
  CHECK(yaml("a: \"b\n") == "1:4 this quote is never closed");
  CHECK(yaml("a: 'b\n") == "1:4 this quote is never closed");
  CHECK(yaml("a: \"b\\\"\n") == "1:4 this quote is never closed");
  CHECK(yaml("a: 'b''\n") == "1:4 this quote is never closed");
  CHECK(yaml("a: \"b") == "1:6 the file ends inside a quoted text");
}
