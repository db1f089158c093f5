// Terms evaluated on rows: 512 states at a time give what each state gives by itself.
#include "system/rows.hpp"

#include <doctest/doctest.h>

#include <array>
#include <random>

#include "base/contradiction.hpp"
#include "confirm/sets.hpp"
#include "explore/quayside.hpp"

using namespace cairn;
using system::Block;
using system::Lanes;

TEST_CASE("a block of words is turned round") {
  std::mt19937_64 random(7);
  std::array<Block, 64> words;
  for (Block& word : words) {
    for (Lanes& lanes : word.words) lanes = random();
  }
  std::array<Block, 64> turned = words;
  system::transpose(turned);
  for (std::size_t g = 0; g < 8; ++g) {
    for (std::size_t i = 0; i < 64; ++i) {
      for (std::size_t j = 0; j < 64; ++j) {
        REQUIRE((turned[j].words[g] >> i & 1) == (words[i].words[g] >> j & 1));
      }
    }
  }
}

TEST_CASE("rows are visited in order, and none beyond the count") {
  Block holds;
  holds.words.fill(~Lanes{0});
  for (const std::size_t count : {std::size_t{0}, std::size_t{1}, std::size_t{64}, std::size_t{65}, std::size_t{512}}) {
    std::vector<std::size_t> seen;
    for_each_row(holds, count, [&](std::size_t row) { seen.push_back(row); });
    REQUIRE(seen.size() == count);
    for (std::size_t i = 0; i < count; ++i) REQUIRE(seen[i] == i);
  }
  holds = {};
  holds.words[1] = 0b1010;
  std::vector<std::size_t> seen;
  for_each_row(holds, 512, [&](std::size_t row) { seen.push_back(row); });
  CHECK(seen == std::vector<std::size_t>{65, 67});
}

namespace {

/// Each event of a model asked of its states: by rows, and one state at a time.
struct ByRows {
  explicit ByRows(const Model& model)
      : moves(test::parts_of(model, model.procedure.faults)),
        coding(moves->space, moves->domains),
        states(test::reachable(model, model.procedure.faults)) {
    system::StateWriter writer(coding);
    rows.resize(states.size() * coding.words());
    for (std::size_t i = 0; i < states.size(); ++i) REQUIRE(writer.write(states[i], row(i)));
  }
  [[nodiscard]] std::uint64_t* row(std::size_t i) { return rows.data() + i * coding.words(); }

  std::unique_ptr<system::Moves> moves;
  system::Coding coding;
  std::vector<State> states;
  std::vector<std::uint64_t> rows;
};

}  // namespace

TEST_CASE("an event does to each of many rows what it does to the state by itself") {
  Model model = test::append_to_chain(5);
  model.procedure.faults.crashes = 1;
  ByRows all(model);
  REQUIRE(all.states.size() > system::most_rows);
  system::Moves& moves = *all.moves;
  system::RowProgram::Scratch scratch;
  for (const system::Move& move : moves.events) {
    const std::array flags{move.may_happen, system::always, system::never};
    const system::RowProgram program(moves.terms, moves.now, all.coding, flags, &move.after);
    std::vector<system::Term> answers{move.may_happen};
    std::vector<std::vector<std::size_t>> cases;
    for (system::VariableId v = 0; v < all.coding.size(); ++v) {
      cases.emplace_back();
      for (const system::Value::Case& each : move.after[v].cases()) {
        cases.back().push_back(answers.size());
        answers.push_back(each.holds);
      }
    }
    const system::Program single(moves.terms, moves.now.booleans, answers);
    for (const std::size_t count : {std::size_t{1}, std::size_t{70}, system::most_rows}) {
      std::array<Block, 3> told;
      std::vector<std::uint64_t> after(count * all.coding.words());
      program.run(all.row(0), count, told, after.data(), scratch);
      std::vector<Block> values(answers.size());
      for (std::size_t i = 0; i < count; i += 7) {
        single.run(booleans_of(all.coding, all.row(i)), values, scratch.registers);
        const auto holds = [&](const Block& block) { return (block.words[i / 64] >> i % 64 & 1) != 0; };
        REQUIRE(holds(told[0]) == holds(values[0]));
        REQUIRE(holds(told[1]));
        REQUIRE_FALSE(holds(told[2]));
        for (system::VariableId v = 0; v < all.coding.size(); ++v) {
          const std::int64_t value = all.coding.read(after.data() + i * all.coding.words(), v);
          for (std::size_t c = 0; c < cases[v].size(); ++c) {
            REQUIRE(holds(values[cases[v][c]]) == (move.after[v].cases()[c].value == value));
          }
        }
      }
    }
  }
}

TEST_CASE("rows can be computed where they are read") {
  const Model model = test::append_to_chain(3);
  ByRows all(model);
  system::Moves& moves = *all.moves;
  const system::RowProgram program(moves.terms, moves.now, all.coding, {}, &moves.events.front().after);
  system::RowProgram::Scratch scratch;
  std::vector<std::uint64_t> after(all.rows.size());
  program.run(all.row(0), all.states.size(), {}, after.data(), scratch);
  program.run(all.row(0), all.states.size(), {}, all.row(0), scratch);
  CHECK(after == all.rows);
}

TEST_CASE("a program whose outcome the rows cannot hold is not made") {
  const Model model = test::append_to_chain(3);
  const auto moves = test::parts_of(model, {});
  const system::Coding coding(moves->space, moves->domains);
  system::SymbolicState after = moves->now.state;
  after[0] = system::Value(77);
  CHECK_THROWS_AS(system::RowProgram(moves->terms, moves->now, coding, {}, &after), Contradiction);
}
