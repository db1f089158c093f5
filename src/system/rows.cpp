#include "system/rows.hpp"

#include <algorithm>
#include <utility>

#include "base/contradiction.hpp"

namespace cairn::system {

namespace {

/// A Boolean of a free state: that the variable has the value at `place` of its domain.
struct Boolean {
  VariableId variable;
  std::size_t place;
};

// In the order of free_state(): none of a variable with one value, one of a variable with two, else one a value.
std::vector<Boolean> booleans_over(const Coding& coding) {
  std::vector<Boolean> all;
  for (VariableId v = 0; v < coding.size(); ++v) {
    const std::size_t values = coding.domain(v).size();
    for (std::size_t place = values == 2 ? 1 : 0; values > 1 && place < values; ++place) all.push_back({v, place});
  }
  return all;
}

// Swaps two squares of bits, of which one lies in the upper halves of some words and the other in the lower halves of
// others, `distance` words on.
void swap_squares(Block& one, Block& other, unsigned distance, Lanes lower) {
  for (std::size_t g = 0; g < one.words.size(); ++g) {
    const Lanes moved = (one.words[g] >> distance ^ other.words[g]) & lower;
    one.words[g] ^= moved << distance;
    other.words[g] ^= moved;
  }
}

}  // namespace

std::vector<Block> booleans_of(const Coding& coding, const std::uint64_t* row) {
  std::vector<Block> booleans;
  for (const auto& [v, place] : booleans_over(coding)) {
    Block& all = booleans.emplace_back();
    if (coding.read(row, v) == coding.domain(v)[place]) all.words.fill(~Lanes{0});
  }
  return booleans;
}

void transpose(std::span<Block, 64> words) {
  Lanes lower = 0xffff'ffff;
  for (unsigned distance = 32; distance != 0; distance /= 2, lower ^= lower << distance) {
    for (unsigned square = 0; square < 64; square += 2 * distance) {
      for (unsigned i = square; i < square + distance; ++i) {
        swap_squares(words[i], words[i + distance], distance, lower);
      }
    }
  }
}

/// What a program is put together from.
struct RowProgram::Parts {
  Parts(Terms& terms, const FreeState& now, const Coding& coding, std::span<const Term> asked,
        const SymbolicState* after)
      : coding_(coding), flags(asked.size()), answers(asked.begin(), asked.end()) {
    if (after != nullptr) compute_bits(terms, now.state, *after);
    read_bits(terms, now);
    program.emplace(terms, variables, answers);
  }

  const Coding& coding_;
  std::size_t flags;
  std::vector<std::uint32_t> words_in, words_out;
  std::vector<Term> variables, answers;
  std::vector<Input> inputs;
  std::vector<std::uint32_t> outputs;
  std::vector<std::uint64_t> computed;
  std::optional<Program> program;

 private:
  // The place of a word among those that are used; words come in ascending order.
  static std::uint32_t slice_of(const Coding::Field& field, std::vector<std::uint32_t>& used) {
    if (used.empty() || used.back() != field.word) used.push_back(field.word);
    return static_cast<std::uint32_t>(used.size() - 1) * 64 + field.shift;
  }

  // One answer a bit of each variable that changes.
  void compute_bits(Terms& terms, const SymbolicState& before, const SymbolicState& after) {
    for (VariableId v = 0; v < coding_.size(); ++v) {
      if (after[v] == before[v]) continue;
      const Coding::Field& field = coding_.field(v);
      std::vector<std::vector<Term>> bits(field.width);
      for (const Value::Case& each : after[v].cases()) {
        const std::optional<std::size_t> place = coding_.place(v, each.value);
        if (!place) throw Contradiction("a state leaves the domains that it is coded by");
        for (std::size_t bit = 0; bit < bits.size(); ++bit) {
          if ((*place >> bit & 1) != 0) bits[bit].push_back(each.holds);
        }
      }
      if (bits.empty()) continue;
      const std::uint32_t slice = slice_of(field, words_out);
      computed.resize(words_out.size());
      for (std::uint32_t bit = 0; bit < field.width; ++bit) {
        answers.push_back(terms.any(bits[bit]));
        outputs.push_back(slice + bit);
        computed.back() |= std::uint64_t{1} << (field.shift + bit);
      }
    }
  }

  // The Booleans that the answers are built from, which free_state() makes in the order of the space.
  void read_bits(const Terms& terms, const FreeState& now) {
    std::vector<std::uint8_t> needed(terms.size(), 0);
    for (const std::uint32_t node : cone_of(terms, answers)) needed[node] = 1;
    auto boolean = now.booleans.begin();
    for (const auto& [v, place] : booleans_over(coding_)) {
      if (needed[boolean->node()] != 0) {
        variables.push_back(*boolean);
        inputs.push_back({slice_of(coding_.field(v), words_in), coding_.field(v).width, place});
      }
      ++boolean;
    }
  }
};

RowProgram::RowProgram(Terms& terms, const FreeState& now, const Coding& coding, std::span<const Term> flags,
                       const SymbolicState* after)
    : RowProgram(Parts(terms, now, coding, flags, after)) {}

RowProgram::RowProgram(Parts parts)
    : words_(parts.coding_.words()),
      flags_(parts.flags),
      words_in_(std::move(parts.words_in)),
      words_out_(std::move(parts.words_out)),
      inputs_(std::move(parts.inputs)),
      outputs_(std::move(parts.outputs)),
      computed_(std::move(parts.computed)),
      program_(std::move(*parts.program)) {}

void RowProgram::run(const std::uint64_t* rows, std::size_t count, std::span<Block> flags, std::uint64_t* after,
                     Scratch& scratch) const {
  turn_in(rows, count, scratch);
  scratch.outputs.resize(program_.outputs());
  program_.run(scratch.inputs, scratch.outputs, scratch.registers);
  std::copy_n(scratch.outputs.begin(), flags_, flags.begin());
  if (after != nullptr) turn_out(rows, count, after, scratch);
}

void RowProgram::turn_in(const std::uint64_t* rows, std::size_t count, Scratch& scratch) const {
  scratch.slices.resize(std::max(words_in_.size(), words_out_.size()) * 64);
  for (std::size_t w = 0; w < words_in_.size(); ++w) {
    const std::span<Block, 64> slices(scratch.slices.data() + w * 64, 64);
    if (count < most_rows) std::fill(slices.begin(), slices.end(), Block{});
    for (std::size_t i = 0; i < count; ++i) slices[i % 64].words[i / 64] = rows[i * words_ + words_in_[w]];
    transpose(slices);
  }
  scratch.inputs.resize(inputs_.size());
  for (std::size_t i = 0; i < inputs_.size(); ++i) {
    const Input& input = inputs_[i];
    for (std::size_t g = 0; g < 8; ++g) {
      Lanes spells = ~Lanes{0};
      for (std::uint32_t bit = 0; bit < input.width; ++bit) {
        const Lanes wanted = Lanes{input.place >> bit & 1} - 1;  // no bit where it is 1, else all
        spells &= scratch.slices[input.slice + bit].words[g] ^ wanted;
      }
      scratch.inputs[i].words[g] = spells;
    }
  }
}

void RowProgram::turn_out(const std::uint64_t* rows, std::size_t count, std::uint64_t* after, Scratch& scratch) const {
  if (after != rows) std::copy_n(rows, count * words_, after);
  const std::span<Block> slices(scratch.slices.data(), words_out_.size() * 64);
  std::fill(slices.begin(), slices.end(), Block{});
  for (std::size_t i = 0; i < outputs_.size(); ++i) slices[outputs_[i]] = scratch.outputs[flags_ + i];
  for (std::size_t w = 0; w < words_out_.size(); ++w) {
    const auto turned = slices.subspan(w * 64).first<64>();
    transpose(turned);
    for (std::size_t i = 0; i < count; ++i) {
      std::uint64_t& word = after[i * words_ + words_out_[w]];
      word = (word & ~computed_[w]) | turned[i % 64].words[i / 64];
    }
  }
}

}  // namespace cairn::system
