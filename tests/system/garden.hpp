/// \file
/// Random terms that come with what they are worth, and the worth of a term told in the plainest way.
#pragma once

#include <cstdint>
#include <random>
#include <span>
#include <vector>

#include "system/term.hpp"

namespace cairn::system::test {

/// The values of a few variables: bit i is variable i's.
using Assignment = std::uint32_t;

/// New variables x0, x1…
[[nodiscard]] std::vector<Term> variables(Terms& terms, std::size_t count);

/// What the term is worth under an assignment of `inputs`, node by node as Op says.
[[nodiscard]] bool worth(const Terms& terms, std::span<const Term> inputs, Term term, Assignment assignment);

/// A pool with terms drawn at random, each with a table of what it is worth under every assignment, computed by the
/// definition of the operation and never by looking at a term.
class Garden {
 public:
  struct Plant {
    Term term;
    std::vector<bool> table;  ///< by assignment
  };

  Garden(std::uint32_t seed, std::size_t count);

  /// Puts a new plant, made of those there are, at the end.
  void grow();
  /// Any plant, or its negation, or now and then a constant.
  [[nodiscard]] Plant pick();
  std::size_t below(std::size_t bound) { return std::uniform_int_distribution<std::size_t>(0, bound - 1)(random_); }
  [[nodiscard]] Assignment assignments() const { return Assignment{1} << inputs.size(); }

  Terms terms;
  std::vector<Term> inputs;
  std::vector<Plant> plants;  ///< the inputs first

 private:
  template <typename Meaning>
  void plant(Term term, const Meaning& meaning);
  void grow_of_many();

  std::mt19937 random_;
};

}  // namespace cairn::system::test
