#include "system/evaluate.hpp"

#include <array>
#include <random>
#include <vector>

#include <doctest/doctest.h>

#include "base/contradiction.hpp"
#include "system/garden.hpp"

using namespace cairn::system;
using namespace cairn::system::test;

namespace {

/// Lane l of word w is assignment 64 w + l: what variable i is there.
Lanes lanes_of(std::size_t variable, std::size_t word) {
  Lanes lanes = 0;
  for (std::size_t lane = 0; lane < 64; ++lane) lanes |= Lanes{(64 * word + lane) >> variable & 1U} << lane;
  return lanes;
}

struct Outputs {
  std::vector<Term> terms;
  explicit Outputs(const Garden& garden) {
    for (const auto& plant : garden.plants) terms.push_back(terms.size() % 2 == 0 ? plant.term : !plant.term);
    terms.push_back(never);
    terms.push_back(always);
  }
  [[nodiscard]] static bool expected(const Garden& garden, std::size_t output, Assignment a) {
    if (output >= garden.plants.size()) return output > garden.plants.size();
    return garden.plants[output].table[a] == (output % 2 == 0);
  }
};

}  // namespace

TEST_CASE("64 assignments at once are worth what each is worth alone") {
  std::vector<Lanes> scratch(10, ~Lanes{0});  // shared from run to run: nothing that is in it may reach a result
  for (std::uint32_t seed = 1; seed <= 300; ++seed) {
    INFO("seed " << seed);
    Garden garden(seed, 6);
    for (int i = 0; i < 60; ++i) garden.grow();
    const Outputs outputs(garden);
    const Program program(garden.terms, garden.inputs, outputs.terms);
    REQUIRE(program.inputs() == 6);
    REQUIRE(program.outputs() == outputs.terms.size());
    std::vector<Lanes> in;
    for (std::size_t i = 0; i < 6; ++i) in.push_back(lanes_of(i, 0));
    std::vector<Lanes> out(outputs.terms.size());
    program.run(in, out, scratch);
    for (std::size_t o = 0; o < out.size(); ++o) {
      for (Assignment a = 0; a < 64; ++a) REQUIRE((out[o] >> a & 1U) == Lanes{Outputs::expected(garden, o, a)});
    }
  }
}

TEST_CASE("512 assignments at once are worth what each is worth alone") {
  std::vector<Block> scratch;
  for (std::uint32_t seed = 1; seed <= 60; ++seed) {
    INFO("seed " << seed);
    Garden garden(seed, 9);
    for (int i = 0; i < 80; ++i) garden.grow();
    const Outputs outputs(garden);
    const Program program(garden.terms, garden.inputs, outputs.terms);
    std::vector<Block> in(9);
    for (std::size_t i = 0; i < 9; ++i) {
      for (std::size_t word = 0; word < 8; ++word) in[i].words[word] = lanes_of(i, word);
    }
    std::vector<Block> out(outputs.terms.size());
    program.run(in, out, scratch);
    for (std::size_t o = 0; o < out.size(); ++o) {
      for (Assignment a = 0; a < 512; ++a) {
        REQUIRE((out[o].words[a / 64] >> a % 64 & 1U) == Lanes{Outputs::expected(garden, o, a)});
      }
    }
  }
}

TEST_CASE("what is known under a partial assignment is so under everyone that completes it") {
  std::mt19937_64 random(4);
  std::vector<Rails> scratch;
  std::size_t known = 0;
  std::size_t all_told = 0;
  for (std::uint32_t seed = 1; seed <= 20; ++seed) {
    INFO("seed " << seed);
    Garden garden(seed, 6);
    for (int i = 0; i < 60; ++i) garden.grow();
    const Outputs outputs(garden);
    const Program program(garden.terms, garden.inputs, outputs.terms);
    std::array<Assignment, 512> values{};
    std::array<Assignment, 512> unknown{};  // the variables that are not known; of the first 64 none
    std::vector<Rails> in(6);
    for (std::size_t lane = 0; lane < 512; ++lane) {
      values[lane] = static_cast<Assignment>(lane < 64 ? lane : random() % 64);
      unknown[lane] = static_cast<Assignment>(lane < 64 ? 0 : random() % 64 & random() % 64);
      for (std::size_t i = 0; i < 6; ++i) {
        const bool open = (unknown[lane] >> i & 1U) != 0;
        const bool holds = (values[lane] >> i & 1U) != 0;
        if (open || holds) in[i].may_hold.words[lane / 64] |= Lanes{1} << lane % 64;
        if (!open && holds) in[i].may_fail.words[lane / 64] &= ~(Lanes{1} << lane % 64);
      }
    }
    std::vector<Rails> out(outputs.terms.size());
    program.run(in, out, scratch);
    for (std::size_t o = 0; o < out.size(); ++o) {
      for (std::size_t lane = 0; lane < 512; ++lane) {
        const bool may_hold = (out[o].may_hold.words[lane / 64] >> lane % 64 & 1U) != 0;
        const bool may_fail = (out[o].may_fail.words[lane / 64] >> lane % 64 & 1U) != 0;
        bool sound = may_hold || may_fail;
        if (unknown[lane] == 0) sound = sound && may_hold != may_fail;
        for (Assignment a = 0; a < 64; ++a) {
          if (((a ^ values[lane]) & ~unknown[lane]) != 0) continue;
          sound = sound && (Outputs::expected(garden, o, a) ? may_hold : may_fail);
        }
        REQUIRE(sound);
        known += may_hold != may_fail && unknown[lane] != 0 ? 1 : 0;
        all_told += unknown[lane] != 0 ? 1 : 0;
      }
    }
  }
  CHECK(known * 2 > all_told);
}

TEST_CASE("three-valued logic is Kleene's strong one") {
  Terms terms;
  const Term a = terms.variable("a");
  const Term b = terms.variable("b");
  const Term c = terms.variable("c");
  const Program program(
      terms, std::vector{a, b, c},
      std::vector{!a, terms.both(a, b), terms.either(a, b), terms.differ(a, b), terms.choose(a, b, c)});
  // Digit l of the number, in base 3: 0 fails, 1 holds, 2 is not known.
  constexpr std::array<std::size_t, 3> thirds{1, 3, 9};
  std::vector<Rails> in(3);
  for (std::size_t i = 0; i < 3; ++i) {
    for (std::size_t lane = 0; lane < 27; ++lane) {
      const std::size_t digit = lane / thirds[i] % 3;
      if (digit != 0) in[i].may_hold.words[0] |= Lanes{1} << lane;
      if (digit == 1) in[i].may_fail.words[0] &= ~(Lanes{1} << lane);
    }
  }
  std::vector<Rails> out(5);
  std::vector<Rails> scratch;
  program.run(in, out, scratch);
  for (std::size_t lane = 0; lane < 27; ++lane) {
    const std::size_t x = lane % 3;
    const std::size_t y = lane / 3 % 3;
    const std::size_t z = lane / 9;
    const std::array<std::size_t, 5> expected{
        x == 2 ? 2U : 1U - x,
        x == 0 || y == 0   ? 0U
        : x == 1 && y == 1 ? 1U
                           : 2U,
        x == 1 || y == 1   ? 1U
        : x == 0 && y == 0 ? 0U
                           : 2U,
        x == 2 || y == 2 ? 2U : x ^ y,
        x == 1   ? y
        : x == 0 ? z
        : y == z ? y
                 : 2U,
    };
    for (std::size_t o = 0; o < 5; ++o) {
      CAPTURE(lane);
      CAPTURE(o);
      CHECK((out[o].may_hold.words[0] >> lane & 1U) == (expected[o] != 0 ? 1U : 0U));
      CHECK((out[o].may_fail.words[0] >> lane & 1U) == (expected[o] != 1 ? 1U : 0U));
    }
  }
}

TEST_CASE("inputs that nothing is built from, or that are outputs themselves, do no harm") {
  Terms terms;
  const Term a = terms.variable("a");
  const Term b = terms.variable("b");
  const Term late = terms.variable("late");
  const Program program(terms, std::vector{late, b, a}, std::vector{!a, terms.both(a, b), a, a});
  std::vector<Lanes> scratch;
  std::vector<Lanes> out(4);
  program.run(std::vector<Lanes>{~Lanes{0}, 0b1010, 0b1100}, out, scratch);
  CHECK(out == std::vector<Lanes>{~Lanes{0b1100}, 0b1000, 0b1100, 0b1100});
  const Program nothing(terms, {}, {});
  nothing.run(std::vector<Lanes>{}, {}, scratch);
  CHECK(nothing.length() == 0);
}

TEST_CASE("a variable that is no input is no value out of thin air") {
  Terms terms;
  const Term a = terms.variable("a");
  const Term b = terms.variable("b");
  CHECK_THROWS_AS(Program(terms, std::vector{a}, std::vector{terms.both(a, b)}), cairn::Contradiction);
}

TEST_CASE("a program is as long as its terms ask, and keeps few values at a time") {
  Terms terms;
  const auto x = variables(terms, 64);
  SUBCASE("a wide conjunction takes an operation less than it has parts") {
    CHECK(Program(terms, x, std::vector{terms.all(x)}).length() == 63);
  }
  SUBCASE("a term 200,000 deep takes a handful of registers beside its inputs") {
    Term deep = x[0];
    for (std::size_t i = 1; i < 200'000; ++i) {
      deep = terms.choose(x[i % 64], terms.differ(deep, x[(i + 13) % 64]), x[(i * 7 + 2) % 64]);
      if (i % 4 == 0) deep = terms.all({!deep, x[(i + 5) % 64], x[(i + 6) % 64], x[(i + 7) % 64]});
    }
    const Program program(terms, x, std::vector{deep});
    CHECK(program.length() >= 300'000);
    CHECK(program.registers() <= 64 + 8);
  }
}
