#include "system/value.hpp"

#include <algorithm>
#include <functional>
#include <utility>

namespace cairn::system {

Value::Value(std::vector<Case> cases) {
  std::erase_if(cases, [](const Case& one) { return one.holds == never; });
  cases_ = std::make_shared<const std::vector<Case>>(std::move(cases));
}

Term Value::is(std::int64_t value) const {
  const auto found = std::ranges::lower_bound(*cases_, value, std::less{}, &Case::value);
  return found != cases_->end() && found->value == value ? found->holds : never;
}

Value free_value(const std::vector<std::int64_t>& values, const std::function<Term(std::int64_t)>& declare) {
  if (values.size() == 1) return Value(values.front());
  if (values.size() == 2) {
    const Term second = declare(values[1]);
    return Value({{values[0], !second}, {values[1], second}});
  }
  std::vector<Value::Case> cases;
  cases.reserve(values.size());
  for (const std::int64_t value : values) cases.push_back({value, declare(value)});
  return Value(std::move(cases));
}

Value choose(Terms& terms, Term condition, const Value& then, const Value& otherwise) {
  std::vector<Value::Case> cases;
  auto a = then.cases().begin();
  auto b = otherwise.cases().begin();
  while (a != then.cases().end() || b != otherwise.cases().end()) {
    const bool of_a = b == otherwise.cases().end() || (a != then.cases().end() && a->value <= b->value);
    const std::int64_t value = of_a ? a->value : b->value;
    const Term in_a = of_a ? (a++)->holds : never;
    const bool of_b = b != otherwise.cases().end() && b->value == value;
    const Term in_b = of_b ? (b++)->holds : never;
    cases.push_back({value, terms.choose(condition, in_a, in_b)});
  }
  return Value(std::move(cases));
}

Term equal(Terms& terms, const Value& a, const Value& b) {
  if (a == b) return always;
  std::vector<Term> alike;
  for (const auto& [value, holds] : a.cases()) alike.push_back(terms.both(holds, b.is(value)));
  return terms.any(alike);
}

Term less(Terms& terms, const Value& a, const Value& b) {
  if (a == b) return never;
  std::vector<Term> ways;
  Term b_above = never;  // b is above the case of a that is looked at
  auto next = b.cases().rbegin();
  for (auto one = a.cases().rbegin(); one != a.cases().rend(); ++one) {
    for (; next != b.cases().rend() && next->value > one->value; ++next) b_above = terms.either(b_above, next->holds);
    ways.push_back(terms.both(one->holds, b_above));
  }
  return terms.any(ways);
}

Value less_one(Terms& terms, const Value& a) {
  std::vector<Value::Case> cases;
  for (const auto& [value, holds] : a.cases()) {
    const std::int64_t less = std::max<std::int64_t>(value - 1, 0);
    if (!cases.empty() && cases.back().value == less) {
      cases.back().holds = terms.either(cases.back().holds, holds);
    } else {
      cases.push_back({less, holds});
    }
  }
  return Value(std::move(cases));
}

}  // namespace cairn::system
