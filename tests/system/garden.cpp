#include "system/garden.hpp"

#include <algorithm>
#include <string>
#include <utility>

namespace cairn::system::test {

std::vector<Term> variables(Terms& terms, std::size_t count) {
  std::vector<Term> out;
  out.reserve(count);
  for (std::size_t i = 0; i < count; ++i) out.push_back(terms.variable("x" + std::to_string(i)));
  return out;
}

bool worth(const Terms& terms, std::span<const Term> inputs, Term term, Assignment assignment) {
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
      case Op::all:
        value[node] = static_cast<char>(std::ranges::all_of(parts, of));
        break;
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

Garden::Garden(std::uint32_t seed, std::size_t count) : inputs(variables(terms, count)), random_(seed) {
  for (std::size_t i = 0; i < count; ++i) {
    plant(inputs[i], [&](Assignment a) { return (a >> i & 1U) != 0; });
  }
}

Garden::Plant Garden::pick() {
  if (below(20) == 0) {
    const bool value = below(2) == 1;
    return {value ? always : never, std::vector<bool>(assignments(), value)};
  }
  Plant plant = plants[below(plants.size())];
  if (below(2) == 1) {
    plant.term = !plant.term;
    plant.table.flip();
  }
  return plant;
}

template <typename Meaning>
void Garden::plant(Term term, const Meaning& meaning) {
  Plant plant{term, {}};
  for (Assignment a = 0; a < assignments(); ++a) plant.table.push_back(meaning(a));
  plants.push_back(std::move(plant));
}

void Garden::grow() {
  const Plant c = pick();
  const Plant a = pick();
  const Plant b = pick();
  switch (below(8)) {
    case 0:
      return plant(terms.both(a.term, b.term), [&](Assignment x) { return a.table[x] && b.table[x]; });
    case 1:
      return plant(terms.either(a.term, b.term), [&](Assignment x) { return a.table[x] || b.table[x]; });
    case 2:
      return plant(terms.differ(a.term, b.term), [&](Assignment x) { return a.table[x] != b.table[x]; });
    case 3:
      return plant(terms.same(a.term, b.term), [&](Assignment x) { return a.table[x] == b.table[x]; });
    case 4:
      return plant(terms.implies(a.term, b.term), [&](Assignment x) { return !a.table[x] || b.table[x]; });
    case 5:
      return plant(terms.choose(c.term, a.term, b.term),
                   [&](Assignment x) { return c.table[x] ? a.table[x] : b.table[x]; });
    default:
      return grow_of_many();
  }
}

void Garden::grow_of_many() {
  std::vector<Plant> parts(below(8));
  std::vector<Term> all;
  for (Plant& part : parts) {
    part = pick();
    all.push_back(part.term);
  }
  const auto count = [&](Assignment x) {
    return std::ranges::count_if(parts, [&](auto& part) { return part.table[x]; });
  };
  const auto size = static_cast<std::ptrdiff_t>(parts.size());
  const auto least = static_cast<std::ptrdiff_t>(below(parts.size() + 2));
  switch (below(4)) {
    case 0:
      return plant(terms.all(all), [&](Assignment x) { return count(x) == size; });
    case 1:
      return plant(terms.any(all), [&](Assignment x) { return count(x) > 0; });
    case 2:
      return plant(terms.at_most_one(all), [&](Assignment x) { return count(x) <= 1; });
    default:
      return plant(terms.at_least(all, least), [&](Assignment x) { return count(x) >= least; });
  }
}

}  // namespace cairn::system::test
