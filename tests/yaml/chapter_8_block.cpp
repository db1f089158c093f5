// YAML 1.2.2, chapter 8: block styles. Each check names the example that has the same corner.
#include <doctest/doctest.h>

#include "support/read_yaml.hpp"

using cairn::test::yaml;

TEST_CASE("example 8.1: headers of block scalars") {
  CHECK(yaml("- | # nothing in the header\n literal\n- >1 # indentation\n  folded\n- |+ # keep\n keep\n\n- >1- # "
             "both\n  strip\n") == R"(["literal\n", " folded\n", "keep\n\n", " strip"])");
}

TEST_CASE("example 8.3: what cannot follow the indicator") {
  CHECK(yaml("a: | text\n") == "1:6 this cannot follow `|` or `>` on its line");
  CHECK(yaml("a: |0\n  text\n") == "1:6 the indentation of a block text is at least 1");
}

TEST_CASE("examples 8.4 and 8.5: the end of a block scalar") {
  CHECK(yaml("strip: |-\n  text\nclip: |\n  text\nkeep: |+\n  text\n") ==
        R"({strip: "text", clip: "text\n", keep: "text\n"})");
  CHECK(yaml("strip: |-\n  text\n\n\nclip: |\n  text\n\n\nkeep: |+\n  text\n\n\n") ==
        R"({strip: "text", clip: "text\n", keep: "text\n\n\n"})");
}

TEST_CASE("example 8.6: block scalars of nothing") {
  CHECK(yaml("strip: >-\n\nclip: >\n\nkeep: |+\n\n") == R"({strip: "", clip: "", keep: "\n"})");
}

TEST_CASE("examples 8.7 and 8.8: literal") {
  CHECK(yaml("|\n literal\n \ttext\n\n") == R"("literal\n\ttext\n")");
  CHECK(yaml("|\n \n  \n  literal\n   \n  \n  text\n\n # comment\n") == R"("\n\nliteral\n \n\ntext\n")");
}

TEST_CASE("examples 8.10 to 8.12: folded lines, and more indented ones that do not fold") {
  CHECK(yaml(">\n\n folded\n line\n\n next\n line\n   * one\n\n   * two\n\n last\n line\n") ==
        R"("\nfolded line\nnext line\n  * one\n\n  * two\n\nlast line\n")");
}

TEST_CASE("example 8.14: a block sequence in a mapping, indented or not") {
  CHECK(yaml("list:\n  - one\n  - two : three\n") == "{list: [one, {two: three}]}");
  CHECK(yaml("list:\n- one\n- two : three\nmore: x\n") == "{list: [one, {two: three}], more: x}");
}

TEST_CASE("example 8.15: entries of a block sequence") {
  CHECK(yaml("- # empty\n- |\n block node\n- - one # compact\n  - two # sequence\n- one: two # compact mapping\n") ==
        R"([-, "block node\n", [one, two], {one: two}])");
}

TEST_CASE("example 8.17: explicit keys") {
  CHECK(yaml("? explicit key # empty value\n? |\n  block key\n: - one\n  - two\n") ==
        R"({explicit key: -, "block key\n": [one, two]})");
}

TEST_CASE("example 8.18: implicit keys, one of them empty") {
  CHECK(yaml("plain key: in-line value\n: # both empty\n\"quoted key\":\n- entry\n") ==
        R"({plain key: in-line value, -: -, "quoted key": [entry]})");
}

TEST_CASE("example 8.19: compact mappings") {
  CHECK(yaml("- sun: yellow\n- ? earth: blue\n  : moon: white\n") == "[{sun: yellow}, {{earth: blue}: {moon: white}}]");
}

TEST_CASE("section 8.2: indentation that fits nowhere") {
  CHECK(yaml("a: 1\n b: 2\n") == "2:3 a `: ` cannot stand here");
  CHECK(yaml("a:\n  b: 1\n c: 2\n") == "3:2 this does not continue the mapping that it stands in");
  CHECK(yaml("- a\nb: c\n") == "2:1 the document has ended, and this follows it");
}

TEST_CASE("section 8.2.2: an implicit key has its colon") {
  CHECK(yaml("a: 1\nb\n") == "2:1 this stands where a key is wanted, and no `:` follows it");
  CHECK(yaml("a: 1\n\"b\"\n") == "2:1 this does not continue the mapping that it stands in");
  CHECK(yaml("a:\n  - 1\nb # c: d\n") == "3:1 this does not continue the mapping that it stands in");
  CHECK(yaml("a: 1\n\"b\" :\nc\t:\n? d\n?\n  e\n&x f:\n'g:h':\n*x :\n") ==
        R"({a: 1, "b": -, c: -, d: -, e: -, f: -, "g:h": -, f: -})");
}
