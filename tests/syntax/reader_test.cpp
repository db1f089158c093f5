#include "syntax/reader.hpp"

#include <doctest/doctest.h>

#include "support/read_yaml.hpp"

using namespace cairn;
using namespace cairn::syntax;
using cairn::test::Parsed;

namespace {

std::string first_problem(const Problems& problems) {
  if (problems.none()) return "none";
  const auto first = problems.sorted({"m.yaml"}).front();
  return first.message + " | " + first.expected + " | " + first.nearest;
}

}  // namespace

TEST_CASE("names: ASCII letters, digits, `-`, `_` and `.`, a letter or digit first") {
  for (const char* name : {"a", "9", "yard-1", "A_b.c", "a--b", "1-"}) CHECK(!not_a_name(name, false));
  for (const char* name : {"", "-a", "_a", ".a", "a b", "a/b", "\xC3\xA9", "a\n", "$a"}) CHECK(not_a_name(name, false));
  CHECK(not_a_name("a--b", true));
  CHECK(!not_a_name("a-b-", true));
}

TEST_CASE("ranges") {
  const auto read = [](const std::string& text) {
    Parsed parsed(text);
    const auto range = read_range(*parsed.node, "`numbers`", 0, parsed.problems);
    return range ? std::to_string(range->low) + ".." + std::to_string(range->high) : first_problem(parsed.problems);
  };
  CHECK(read("[1, 9]") == "1..9");
  CHECK(read("[4, 4]") == "4..4");
  CHECK(read("[4, 3]") == "the highest of `numbers` is `3` | an integer of 4 or more | ");
  CHECK(read("[-1, 3]") == "the lowest of `numbers` is `-1` | an integer of 0 or more | ");
  CHECK(read("[1]") == "`numbers` is a list | a list of two integers, the lowest and the highest | ");
  CHECK(read("9") == "`numbers` is `9` | a list of two integers, the lowest and the highest | ");
}

TEST_CASE("integers or parameters") {
  const auto read = [](const std::string& text) {
    Parsed parsed(text);
    const auto value = read_value(*parsed.node, "`to`", parsed.problems);
    if (!value) return first_problem(parsed.problems);
    return value->parameter.empty() ? std::to_string(value->number) : '$' + value->parameter;
  };
  CHECK(read("-3") == "-3");
  CHECK(read("$n-1") == "$n-1");
  CHECK(read("$") == "`$` names no parameter | `$` and a name: a name is not empty | ");
  CHECK(read("\"$n\"") == "`to` is the text `$n` | an integer of 64 bits | ");
  CHECK(read("1 + $n") == "`to` is `1 + $n` | an integer of 64 bits | ");
}

TEST_CASE("lists of names") {
  const auto read = [](const std::string& text, bool may_be_empty) {
    Parsed parsed(text);
    const auto names = read_names(*parsed.node, "`keep`", "device", may_be_empty, parsed.problems);
    return parsed.problems.none() ? std::to_string(names->size()) : first_problem(parsed.problems);
  };
  CHECK(read("[a, b]", false) == "2");
  CHECK(read("[]", true) == "0");
  CHECK(read("[]", false) == "`keep` is an empty list | at least one device | ");
  CHECK(read("[a, b, a]", false) == "`a` stands twice in `keep` | each device once | ");
  CHECK(read("[a, ]", false) == "1");
  CHECK(read("[a, [b]]", false) == "an element of `keep` is a list | a name | ");
  CHECK(read("a", false) == "`keep` is `a` | a list of devices | ");
}

TEST_CASE("fields: unknown, repeated and missing keys") {
  Parsed parsed("name: a\nnmae: b\nname: c\ncolor: d\n[x]: e\n");
  Fields fields(*parsed.node, "a thing", {"name", "size", "colour"}, parsed.problems);
  fields.require("size");
  fields.require("colour");
  CHECK(fields.find("name")->text == "a");
  std::string told;
  for (const auto& p : parsed.problems.sorted({"m.yaml"})) told += p.message + '\n';
  CHECK(told ==
        "`size` is missing: a thing needs it\n"
        "`nmae` is no key of a thing\n"
        "the key `name` stands twice\n"
        "`color` is no key of a thing\n"  // and `colour` is not reported as missing
        "a key of a thing is a list\n");
}

TEST_CASE("fields of something that is no mapping: one problem, not one for each key") {
  Parsed parsed("- a\n");
  Fields fields(*parsed.node, "a thing", {"name"}, parsed.problems);
  CHECK(fields.require("name") == nullptr);
  CHECK(parsed.problems.count() == 1);
  CHECK(first_problem(parsed.problems) == "a thing is a list | a mapping | ");
}

TEST_CASE("text with a control character is refused, with line breaks it is not") {
  Parsed bad("\"a\\eb\"");
  CHECK(!read_text(*bad.node, "`note`", bad.problems));
  Parsed good("|\n  a\n  b\n");
  CHECK(read_text(*good.node, "`note`", good.problems)->value == "a\nb\n");
}
