#include "syntax/condition_parser.hpp"

#include <doctest/doctest.h>

#include "support/read_yaml.hpp"

using namespace cairn;
using namespace cairn::syntax;
using cairn::test::Parsed;

namespace {

std::string_view word_of(Sign sign) {
  constexpr std::array<std::string_view, 6> words = {"=", "!=", "<", "<=", ">", ">="};
  return words[static_cast<std::size_t>(sign)];
}

std::string written(const AtomDraft& atom) {
  std::string out;
  for (const auto& r : atom.references) out += (out.empty() ? "" : ",") + r.text();
  if (atom.kind == Condition::Kind::number) {
    return out + std::string(word_of(atom.sign)) +
           (atom.value.parameter.empty() ? std::to_string(atom.value.number) : '$' + atom.value.parameter);
  }
  if (atom.kind == Condition::Kind::side)
    return out + std::string(word_of(atom.sign)) + std::to_string(static_cast<int>(atom.side));
  return out;
}

std::string written(const OperandDraft& operand) {
  if (operand.address) return "address " + operand.address->value;
  return operand.value->parameter.empty() ? std::to_string(operand.value->number) : '$' + operand.value->parameter;
}

std::string written(const ComparisonDraft& c) {
  return written(c.left) + std::string(word_of(c.sign)) + written(c.right);
}

/// The tree with every join in front of its parts.
template <class Atom>
std::string written(const Formula<Atom>& tree) {
  using Join = typename Formula<Atom>::Join;
  if (tree.join == Join::atom) return written(tree.atom);
  std::string out = tree.join == Join::negation ? "not"
                    : tree.join == Join::all    ? "and"
                    : tree.join == Join::any    ? "or"
                                                : "implies";
  for (const auto& part : tree.parts) out += ' ' + written(part);
  return '(' + out + ')';
}

/// The tree, or "COLUMN+LENGTH MESSAGE | EXPECTED" of the problem, columns within the condition.
template <class Read>
std::string read_with(const Read& read, std::string text) {
  Parsed parsed("x: " + std::move(text) + "\n");
  REQUIRE_MESSAGE(parsed.node, parsed.told());
  const auto tree = read(parsed.node->entries[0].value, parsed.problems);
  if (tree) return written(*tree);
  const auto all = parsed.problems.sorted({"m.yaml"});
  REQUIRE(all.size() == 1);
  return std::to_string(all[0].span.column - 3) + '+' + std::to_string(all[0].span.length) + ' ' + all[0].message +
         " | " + all[0].expected;
}

std::string condition(std::string text) {
  return read_with([](const Node& n, Problems& p) { return parse_condition(n, "`await`", p); }, std::move(text));
}

std::string assumption(std::string text) {
  return read_with([](const Node& n, Problems& p) { return parse_assumption(n, p); }, std::move(text));
}

}  // namespace

TEST_CASE("semantics 8: not binds closest, then and, or, implies; implies to the right") {
  CHECK(condition("up(a)") == "a");
  CHECK(condition("not up(a) and up(b)") == "(and (not a) b)");
  CHECK(condition("up(a) or up(b) and up(c)") == "(or a (and b c))");
  CHECK(condition("up(a) and up(b) or up(c) and up(d) or up(e)") == "(or (and a b) (and c d) e)");
  CHECK(condition("up(a) or up(b) implies up(c)") == "(implies (or a b) c)");
  CHECK(condition("up(a) implies up(b) implies up(c)") == "(implies a (implies b c))");
  CHECK(condition("(up(a) implies up(b)) implies up(c)") == "(implies (implies a b) c)");
  CHECK(condition("not not up(a)") == "(not (not a))");
  CHECK(condition("not (up(a) or up(b))") == "(not (or a b))");
  CHECK(condition("not(up(a))") == "(not a)");
}

TEST_CASE("every word, with what it takes") {
  for (const char* word : {"up", "held", "starting", "off", "primary", "follower", "saved", "done"}) {
    CHECK(condition(std::string(word) + "(a)") == "a");
  }
  for (const char* word : {"linked", "cable-up"}) {
    CHECK(condition(std::string(word) + "(a/p--b/q)") == "a/p--b/q");
    CHECK(condition(std::string(word) + "(splice)") == "splice");
  }
  CHECK(condition("together(a, b,c , a)") == "a,b,c,a");
  CHECK(condition("together(a)") == "a");
  CHECK(condition("enabled(a/p)") == "a/p");
  CHECK(condition("side(a/p) = east") == "a/p=1");
  CHECK(condition("side(a/p) != none") == "a/p!=0");
}

TEST_CASE("comparisons of numbers") {
  for (const char* sign : {"=", "!=", "<", "<=", ">", ">="}) {
    CHECK(condition(std::string("number(a) ") + sign + " 4") == std::string("a") + sign + "4");
    CHECK(condition(std::string("number(a)") + sign + "4") == std::string("a") + sign + "4");
  }
  CHECK(condition("number(a) = -4") == "a=-4");
  CHECK(condition("number(a) = +4") == "a=4");
  CHECK(condition("number(a) = $n-1") == "a=$n-1");
  CHECK(condition("number(a) < 9223372036854775807") == "a<9223372036854775807");
}

TEST_CASE("blanks are free") {
  CHECK(condition("  up ( a )and  up(b)  ") == "(and a b)");
  CHECK(condition("up(a)and(up(b))") == "(and a b)");
  CHECK(condition(">\n    up(a)\n    and up(b)") == "(and a b)");
}

TEST_CASE("syntax errors, at their place in the condition") {
  CHECK(condition("upp(a)") ==
        "1+3 `upp` cannot stand here in a condition | not, up, held, starting, off, linked, cable-up, together, "
        "primary, follower, number, priority, saved, enabled, side or done");
  CHECK(condition("up(a) up(b)") ==
        "7+2 `up` cannot stand here in a condition | and, or, implies or the end of the condition");
  CHECK(condition("up(a) and") == "10+1 the condition ends too early | a condition, such as up(DEVICE)");
  CHECK(condition("up(a") == "5+1 the condition ends too early | `)`");
  CHECK(condition("up a") == "4+1 `a` cannot stand here in a condition | `(` after up");
  CHECK(condition("(up(a)") == "7+1 the condition ends too early | `)`, and, or or implies");
  CHECK(condition("up(a))") ==
        "6+1 `)` cannot stand here in a condition | and, or, implies or the end of the condition");
  CHECK(condition("up()") == "4+1 `)` cannot stand here in a condition | a name");
  CHECK(condition("up(a, b)") == "7+1 up takes one device | up(…) with one device");
  CHECK(condition("up(a/p)") == "4+3 up takes one device | up(…) with one device");
  CHECK(condition("enabled(a)") == "9+1 enabled takes one port, DEVICE/PORT | enabled(…) with one port, DEVICE/PORT");
  CHECK(condition("linked(a/p)") ==
        "8+3 linked takes one cable, its id or DEVICE/PORT--DEVICE/PORT | linked(…) with one cable, its id or "
        "DEVICE/PORT--DEVICE/PORT");
  CHECK(condition("number(a)") == "10+1 the condition ends too early | =, !=, <, <=, > or >=");
  CHECK(condition("number(a) == 4") ==
        "12+1 `=` cannot stand here in a condition | an integer of 64 bits or `$` and the name of a parameter");
  CHECK(condition("number(a) = 9x") ==
        "13+2 `9x` cannot stand here in a condition | an integer of 64 bits or `$` and the name of a parameter");
  CHECK(condition("number(a) = 9223372036854775808").starts_with("13+19 "));
  CHECK(condition("number(a) = $") == "13+1 `$` cannot stand here in a condition | `$` and the name of a parameter");
  CHECK(condition("up(a) = 4") == "7+1 up is compared with nothing | and, or, implies or the end of the condition");
  CHECK(condition("side(a/p) < east") == "11+1 a side is neither less nor more than another | = or !=");
  CHECK(condition("side(a/p) = north") == "13+5 `north` cannot stand here in a condition | none, east or west");
  CHECK(condition("up(a) && up(b)") ==
        "7+1 `&` cannot stand here in a condition | and, or, implies or the end of the condition");
  CHECK(condition("AND up(a)").starts_with("1+3 `AND` cannot stand here"));
  CHECK(condition("\"\"").ends_with("the condition ends too early | a condition, such as up(DEVICE)"));
  CHECK(condition("[up(a)]") == "1+1 `await` is a list | a condition, such as up(DEVICE)");
  CHECK(condition("up(\xC3\xA9)") == "4+1 `\xC3\xA9` cannot stand here in a condition | a name");
}

TEST_CASE("nesting is bounded, length is not") {
  const auto nested = [](const std::string& opening, int n, const std::string& end) {
    std::string out;
    for (int i = 0; i < n; ++i) out += opening;
    return out + end;
  };
  CHECK(condition(nested("not ", 199, "up(a)")).starts_with("(not (not"));
  for (const char* opening : {"not ", "(", "up(a) implies ", "not ( "}) {
    CHECK(condition(nested(opening, 100000, "up(a)")).find("the condition is nested more than 200 deep") !=
          std::string::npos);
  }
  CHECK(condition(nested("up(a) and ", 20000, "up(b)")).starts_with("(and a a"));
}

TEST_CASE("assumptions compare parameters and integers, and addresses with each other") {
  CHECK(assumption("$n != 4 and $n != 7 and $p < 180") == "(and $n!=4 $n!=7 $p<180)");
  CHECK(assumption("address(a) < address(b) or 3 >= $n") == "(or address a<address b 3>=$n)");
  CHECK(assumption("not ($n = $p implies $n > -1)") == "(not (implies $n=$p $n>-1))");
  CHECK(assumption("address(a) < 4") ==
        "14+1 an address is compared with addresses alone, a number with numbers | address(DEVICE)");
  CHECK(assumption("4 < address(a)") ==
        "5+7 an address is compared with addresses alone, a number with numbers | an integer or a parameter");
  CHECK(assumption("$n") == "3+1 the condition ends too early | =, !=, <, <=, > or >=");
  CHECK(assumption("n = 4") ==
        "1+1 `n` cannot stand here in a condition | an integer, `$` and the name of a parameter, or address(DEVICE)");
  CHECK(assumption("address(a/p) = address(b)") == "9+3 address takes one device | address(DEVICE)");
}
