/// \file
/// Random terms, and what a term is worth, told in the plainest way.
#pragma once

#include <cstdint>
#include <random>
#include <string>
#include <vector>

#include "system/term.hpp"

namespace cairn::system::test {

/// The values of a few variables: bit i is variable i's.
using Assignment = std::uint32_t;

/// One pool with its variables; terms are drawn together with a table of what they are worth under every assignment,
/// computed by the operation's definition and never by looking at the term.
class Garden {
 public:
  struct Plant {
    Term term;
    std::vector<bool> worth;  ///< by assignment
  };

  Garden(std::uint32_t seed, std::size_t variables) : random_(seed), variables_(variables) {
    for (std::size_t i = 0; i < variables; ++i) {
      Plant plant{terms.variable("v" + std::to_string(i)), {}};
      for (Assignment a = 0; a < assignments(); ++a) plant.worth.push_back((a >> i & 1U) != 0);
      inputs.push_back(plant.term);
      plants.push_back(plant);
    }
  }

  [[nodiscard]] Assignment assignments() const { return Assignment{1} << variables_; }
  std::size_t below(std::size_t bound) { return std::uniform_int_distribution<std::size_t>(0, bound - 1)(random_); }

  /// Any plant, or its negation, or now and then a constant.
  Plant pick() {
    if (below(20) == 0) {
      const bool value = below(2) == 1;
      return {value ? always : never, std::vector<bool>(assignments(), value)};
    }
    Plant plant = plants[below(plants.size())];
    if (below(2) == 1) {
      plant.term = !plant.term;
      plant.worth.flip();
    }
    return plant;
  }

  /// Puts a new plant, made of those there are, at the end.
  void grow();

  Terms terms;
  std::vector<Term> inputs;
  std::vector<Plant> plants;

 private:
  std::mt19937 random_;
  std::size_t variables_;
};

/// What the term is worth under an assignment, node by node as Op says.
inline bool worth(const Terms& terms, const std::vector<Term>& inputs, Term term, Assignment assignment) {
  std::vector<char> value(term.node() + 1, 0);
  for (std::size_t i = 0; i < inputs.size(); ++i) {
    if (inputs[i].node() < value.size()) value[inputs[i].node()] = static_cast<char>(assignment >> i & 1U);
  }
  const auto of = [&](Term part) { return (value[part.node()] != 0) != part.negated(); };
  for (const std::uint32_t node : cone_of(terms, {&term, 1})) {
    const auto parts = terms.parts(node);
    switch (terms.op(node)) {
      case Op::constant:
      case Op::variable:
        break;
      case Op::all: {
        bool all = true;
        for (const Term part : parts) all = all && of(part);
        value[node] = static_cast<char>(all);
        break;
      }
      case Op::choose:
        value[node] = static_cast<char>(of(of(parts[0]) ? parts[1] : parts[2]));
        break;
      case Op::differ:
        value[node] = static_cast<char>(of(parts[0]) != of(parts[1]));
        break;
    }
  }
  return of(term);
}

inline void Garden::grow() {
  const auto combine = [&](Term term, auto&& by) {
    Plant plant{term, {}};
    for (Assignment a = 0; a < assignments(); ++a) plant.worth.push_back(by(a));
    plants.push_back(std::move(plant));
  };
  switch (below(7)) {
    case 0: {
      const auto a = pick();
      const auto b = pick();
      return combine(terms.both(a.term, b.term), [&](Assignment x) { return a.worth[x] && b.worth[x]; });
    }
    case 1: {
      const auto a = pick();
      const auto b = pick();
      return combine(terms.either(a.term, b.term), [&](Assignment x) { return a.worth[x] || b.worth[x]; });
    }
    case 2: {
      const auto a = pick();
      const auto b = pick();
      return combine(terms.differ(a.term, b.term), [&](Assignment x) { return a.worth[x] != b.worth[x]; });
    }
    case 3:
    case 4: {
      const auto c = pick();
      const auto a = pick();
      const auto b = pick();
      return combine(terms.choose(c.term, a.term, b.term),
                     [&](Assignment x) { return c.worth[x] ? a.worth[x] : b.worth[x]; });
    }
    default: {
      std::vector<Plant> parts(below(8));
      std::vector<Term> those;
      for (Plant& part : parts) those.push_back((part = pick()).term);
      const auto count = [&](Assignment x) {
        std::size_t hold = 0;
        for (const Plant& part : parts) hold += part.worth[x] ? 1 : 0;
        return hold;
      };
      const std::size_t least = below(parts.size() + 2);
      switch (below(4)) {
        case 0:
          return combine(terms.all(those), [&](Assignment x) { return count(x) == parts.size(); });
        case 1:
          return combine(terms.any(those), [&](Assignment x) { return count(x) > 0; });
        case 2:
          return combine(terms.at_most_one(those), [&](Assignment x) { return count(x) <= 1; });
        default:
          return combine(terms.at_least(those, static_cast<std::int64_t>(least)),
                         [&](Assignment x) { return count(x) >= least; });
      }
    }
  }
}

}  // namespace cairn::system::test
