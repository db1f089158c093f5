// YAML 1.2.2 (yaml.org, revision of 2021-10-01), chapter 5: characters. Each check names the example of the
// specification that has the same corner; the texts are our own.
#include <doctest/doctest.h>

#include "support/read_yaml.hpp"

using cairn::test::yaml;

TEST_CASE("example 5.1: a byte order mark at the start is no content") {
  CHECK(yaml("\xEF\xBB\xBF"
             "a: b\n") == "{a: b}");
}

TEST_CASE("example 5.3: block indicators") {
  CHECK(yaml("sequence:\n- one\n- two\nmapping:\n  ? up\n  : yes\n  down : no\n") ==
        "{sequence: [one, two], mapping: {up: yes, down: no}}");
}

TEST_CASE("example 5.4: flow indicators, and a comma at the end") {
  CHECK(yaml("sequence: [ one, two, ]\nmapping: { up: yes, down: no, }\n") ==
        "{sequence: [one, two], mapping: {up: yes, down: no}}");
}

TEST_CASE("example 5.5: a text of comments holds no document") {
  CHECK(yaml("# nothing else\n") == "0:0 the file holds no document");
}

TEST_CASE("example 5.6: an anchor and an alias; a tag is refused") {
  CHECK(yaml("first: &crane value\nsecond: *crane\n") == "{first: value, second: value}");
  CHECK(yaml("first: !local &crane value\n") == "1:8 models have no tags");
}

TEST_CASE("example 5.7: block scalars") {
  CHECK(yaml("literal: |\n  some\n  text\nfolded: >\n  some\n  text\n") ==
        R"({literal: "some\ntext\n", folded: "some text\n"})");
}

TEST_CASE("example 5.8: quotes make text of what they hold") {
  CHECK(yaml("single: '5'\ndouble: \"true\"\n") == R"({single: "5", double: "true"})");
}

TEST_CASE("example 5.10: the reserved indicators begin no plain scalar") {
  CHECK(yaml("at: @text\n") == "1:5 no value can begin with this character");
  CHECK(yaml("grave: `text\n") == "1:8 no value can begin with this character");
}

TEST_CASE("example 5.11: lines end with LF or CRLF") {
  CHECK(yaml("a: b\r\nc: |\r\n  d\r\n  e\r\n") == R"({a: b, c: "d\ne\n"})");
}

TEST_CASE("section 5.4 departs: a CR alone, which the specification takes for a line break, is refused") {
  CHECK(yaml("a: b\rc: d\n") == "1:5 a carriage return without a line feed");
}

TEST_CASE("example 5.12: tabs separate, and stay in text") {
  CHECK(yaml("quoted: \"Crane \t\"\nplain:\tone\t# comment\n") == R"({quoted: "Crane \t", plain: one})");
}

TEST_CASE("example 5.13: escapes") {
  CHECK(yaml(R"(["\\", "\"", "\x41\u0041\U00000041", "a\tb\nc", "\/"])") == R"(["\", """, "AAA", "a\tb\nc", "/"])");
}

TEST_CASE("example 5.14: escapes that there are not") {
  CHECK(yaml("bad: \"\\c\"\n") == "1:9 there is no such escape");
  CHECK(yaml("bad: \"\\xq-\"\n") == "1:11 this escape holds a character that is no hexadecimal digit");
}

TEST_CASE("section 5.1: control characters, surrogates and bytes that are no UTF-8 are no text") {
  CHECK(yaml(std::string("a: b\0c", 6)) == "1:5 the control character U+0000 has no place in a model");
  CHECK(yaml("a: \x1b[31m\n") == "1:4 the control character U+001B has no place in a model");
  CHECK(yaml("a: \xC2\x9B\n") == "1:4 the control character U+009B has no place in a model");
  CHECK(yaml("a: \xEF\xBF\xBE\n") == "1:4 the control character U+FFFE has no place in a model");
  CHECK(yaml("\xC3\xA9: \xFF\n") == "1:4 the byte 0xff is no UTF-8");
  CHECK(yaml("a: \xED\xA0\x80\n") == "1:4 the byte 0xed is no UTF-8");
  CHECK(yaml("a: \xC0\xAF\n") == "1:4 the byte 0xc0 is no UTF-8");
  CHECK(yaml("a: \xE2\x98\x83\n") == "{a: \xE2\x98\x83}");
}

TEST_CASE("section 5.2 departs: UTF-16 is recognised and refused") {
  CHECK(yaml(std::string("\xFF\xFE"
                         "a\0:\0",
                         6)) == "1:1 this looks like UTF-16");
}
