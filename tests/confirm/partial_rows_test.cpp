// Terms evaluated on the rows of partial states: what is told as known is so of each state that they stand for.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <random>

#include "confirm/sets.hpp"
#include "explore/quayside.hpp"
#include "system/rows.hpp"

using namespace cairn;
using system::Block;
using system::Rails;
using system::VariableId;

namespace {

/// The rows of some states of a model, with a few variables of each not known; and of every state that each stands for.
class Partial {
 public:
  Partial(system::Moves& moves, const std::vector<State>& states, std::uint64_t seed)
      : coding(moves.space, moves.domains), random_(seed) {
    system::StateWriter writer(coding);
    for (std::size_t i = 0; i < system::most_rows; ++i) {
      std::vector<std::uint64_t> row(coding.words());
      REQUIRE(writer.write(states[random_() % states.size()], row.data()));
      add(row);
    }
  }

  [[nodiscard]] bool is_known(const std::uint64_t* row, VariableId v) const {
    const system::Coding::Field& field = coding.field(v);
    return field.width == 0 || (row[coding.words() + field.word] >> field.shift & 1) == 0;
  }

  system::Coding coding;
  std::vector<std::uint64_t> rows;
  std::vector<std::vector<std::uint64_t>> completions;  ///< of each, the rows of the states that it stands for

 private:
  void add(const std::vector<std::uint64_t>& state) {
    std::vector<std::uint64_t> row = state;
    row.resize(2 * coding.words());
    std::vector<std::uint64_t> all = state;
    for (std::uint64_t left = 1 + random_() % 3; left > 0; --left) {
      const auto v = static_cast<VariableId>(random_() % coding.size());
      const system::Coding::Field& field = coding.field(v);
      const std::uint64_t mask = ((std::uint64_t{1} << field.width) - 1) << field.shift;
      row[field.word] &= ~mask;
      row[coding.words() + field.word] |= mask;
      std::vector<std::uint64_t> more;
      for (std::size_t place = 0; place < coding.domain(v).size(); ++place) {
        for (std::size_t base = 0; base < all.size(); base += coding.words()) {
          more.insert(more.end(), all.begin() + static_cast<std::ptrdiff_t>(base),
                      all.begin() + static_cast<std::ptrdiff_t>(base + coding.words()));
          std::uint64_t& word = *(more.end() - static_cast<std::ptrdiff_t>(coding.words() - field.word));
          word = (word & ~mask) | std::uint64_t{place} << field.shift;
        }
      }
      all = more;
    }
    rows.insert(rows.end(), row.begin(), row.end());
    completions.push_back(std::move(all));
  }

  std::mt19937_64 random_;
};

bool is_set(const Block& block, std::size_t row) {
  return (block.words[row / 64] >> row % 64 & 1) != 0;
}

}  // namespace

TEST_CASE("what an event and a pass do to a partial state they do to each state that it stands for") {
  Model model = test::append_to_chain(4);
  model.procedure.faults = {.crashes = 1, .omissions = 1, .late_starts = 1};
  const auto moves = test::parts_of(model, model.procedure.faults);
  const Partial all(*moves, test::reachable(model, model.procedure.faults), 5);
  const std::size_t words = all.coding.words();
  std::size_t known = 0;
  std::size_t unknown = 0;
  const auto ask = [&](system::Term flag, const system::SymbolicState& after) {
    const system::RowProgram program(moves->terms, moves->now, all.coding, std::array{flag}, &after);
    system::RowProgram::Scratch scratch;
    std::vector<std::uint64_t> partial(all.rows.size());
    Rails told;
    program.run_partial(all.rows.data(), system::most_rows, std::span(&told, 1), partial.data(), scratch);
    for (std::size_t i = 0; i < system::most_rows; ++i) {
      const std::uint64_t* const row = partial.data() + i * 2 * words;
      const std::size_t count = std::min(all.completions[i].size() / words, system::most_rows);
      std::vector<std::uint64_t> each(count * words);
      Block holds;
      program.run(all.completions[i].data(), count, std::span(&holds, 1), each.data(), scratch);
      for (std::size_t c = 0; c < count; ++c) {
        REQUIRE(is_set(is_set(holds, c) ? told.may_hold : told.may_fail, i));
        for (VariableId v = 0; v < all.coding.size(); ++v) {
          if (!all.is_known(row, v)) continue;
          REQUIRE(all.coding.read(row, v) == all.coding.read(each.data() + c * words, v));
        }
      }
      for (VariableId v = 0; v < all.coding.size(); ++v) ++(all.is_known(row, v) ? known : unknown);
    }
  };
  for (const system::Move& move : moves->events) ask(move.may_happen, move.after);
  ask(moves->pass.unsettled, moves->passed);
  CHECK(unknown > 0);
  CHECK(unknown * 10 < known);
}

TEST_CASE("rows of partial states of which all is known give what rows of states give") {
  Model model = test::append_to_chain(4);
  model.procedure.faults.crashes = 1;
  const auto moves = test::parts_of(model, model.procedure.faults);
  const system::Coding coding(moves->space, moves->domains);
  const std::vector<State> states = test::reachable(model, model.procedure.faults);
  const std::size_t count = std::min(states.size(), system::most_rows);
  system::StateWriter writer(coding);
  std::vector<std::uint64_t> whole(count * coding.words());
  std::vector<std::uint64_t> partial(count * 2 * coding.words());
  for (std::size_t i = 0; i < count; ++i) {
    REQUIRE(writer.write(states[i], whole.data() + i * coding.words()));
    std::copy_n(whole.data() + i * coding.words(), coding.words(), partial.data() + i * 2 * coding.words());
  }
  system::RowProgram::Scratch scratch;
  for (const system::Move& move : moves->events) {
    const system::RowProgram program(moves->terms, moves->now, coding, std::array{move.may_happen}, &move.after);
    Block holds;
    Rails told;
    std::vector<std::uint64_t> after(whole.size());
    std::vector<std::uint64_t> partial_after(partial.size());
    program.run(whole.data(), count, std::span(&holds, 1), after.data(), scratch);
    program.run_partial(partial.data(), count, std::span(&told, 1), partial_after.data(), scratch);
    for (std::size_t i = 0; i < count; ++i) {
      REQUIRE(is_set(told.may_hold, i) == is_set(holds, i));
      REQUIRE(is_set(told.may_fail, i) == !is_set(holds, i));
      const std::uint64_t* const row = partial_after.data() + i * 2 * coding.words();
      REQUIRE(std::equal(row, row + coding.words(), after.data() + i * coding.words()));
      REQUIRE(std::all_of(row + coding.words(), row + 2 * coding.words(), [](std::uint64_t w) { return w == 0; }));
    }
  }
}

TEST_CASE("the Booleans of a partial state are known where its variables are") {
  const Model model = test::append_to_chain(3);
  const auto moves = test::parts_of(model, {});
  const Partial all(*moves, test::reachable(model, {}), 6);
  const std::size_t words = all.coding.words();
  for (std::size_t i = 0; i < 50; ++i) {
    const std::vector<Rails> rails = rails_of(all.coding, all.rows.data() + i * 2 * words);
    std::vector<Rails> seen(rails.size());
    for (Rails& each : seen) each.may_fail = {};
    for (std::size_t c = 0; c < all.completions[i].size(); c += words) {
      const std::vector<Block> booleans = booleans_of(all.coding, all.completions[i].data() + c);
      REQUIRE(booleans.size() == rails.size());
      for (std::size_t b = 0; b < booleans.size(); ++b) {
        (is_set(booleans[b], 0) ? seen[b].may_hold : seen[b].may_fail).words.fill(~system::Lanes{0});
      }
    }
    for (std::size_t b = 0; b < rails.size(); ++b) {
      REQUIRE(rails[b].may_hold.words == seen[b].may_hold.words);
      REQUIRE(rails[b].may_fail.words == seen[b].may_fail.words);
    }
  }
}
