#include "unknowns/words.hpp"

#include <doctest/doctest.h>

#include "unknowns/open_model.hpp"

using namespace cairn;
using namespace cairn::unknowns;
using test::open_model;
using test::q;

TEST_CASE("what is decided is told in the language of `assume`") {
  const Model model = open_model({{0, 9}, {0, 9}}, {7}, 1);
  CHECK(words_of(model, Literal{q(0), 5, Relation::less()}) == "$a < 5");
  CHECK(words_of(model, Literal{q(0), q(1), Relation::of(Sign::greater_or_equal)}) == "$a >= $b");
  CHECK(words_of(model, Literal{q(2), 7, Relation::greater()}) == "address(d1) > address(d0)");
  CHECK(words_of(model, Instance{{3, 4, 0x0200'0000'00ff}}) == "a = 3, b = 4, d1 at 02:00:00:00:00:ff");
}

TEST_CASE("an assumption is told with the parentheses that it needs") {
  const Model model = open_model({{0, 9}, {0, 9}});
  const auto compare = [](Quantity left, Sign sign, Quantity right) {
    Assumption a;
    a.kind = Assumption::Kind::comparison;
    a.left.quantity = left;
    a.sign = sign;
    a.right.quantity = right;
    return a;
  };
  const auto join = [](Assumption::Kind kind, std::vector<Assumption> parts) {
    Assumption a;
    a.kind = kind;
    a.parts = std::move(parts);
    return a;
  };
  using Kind = Assumption::Kind;
  const Assumption low = compare(q(0), Sign::less, 5);
  const Assumption same = compare(q(0), Sign::equal, q(1));
  CHECK(words_of(join(Kind::all, {low, join(Kind::any, {same, low})}), model) == "$a < 5 and ($a = $b or $a < 5)");
  CHECK(words_of(join(Kind::any, {low, join(Kind::all, {same, low})}), model) == "$a < 5 or $a = $b and $a < 5");
  CHECK(words_of(join(Kind::negation, {join(Kind::all, {low, same})}), model) == "not ($a < 5 and $a = $b)");
  CHECK(words_of(join(Kind::implies, {low, same}), model) == "$a < 5 implies $a = $b");
}
