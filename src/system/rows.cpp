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

std::vector<Rails> rails_of(const Coding& coding, const std::uint64_t* row) {
  std::vector<Rails> rails;
  const std::vector<Block> booleans = booleans_of(coding, row);
  auto boolean = booleans.begin();
  for (const auto& [v, place] : booleans_over(coding)) {
    const Coding::Field& field = coding.field(v);
    const Lanes unknown = Lanes{0} - (row[coding.words() + field.word] >> field.shift & 1);
    Rails& all = rails.emplace_back();
    for (std::size_t g = 0; g < all.may_hold.words.size(); ++g) {
      all.may_hold.words[g] = boolean->words[g] | unknown;
      all.may_fail.words[g] = ~boolean->words[g] | unknown;
    }
    ++boolean;
  }
  return rails;
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
  std::vector<Output> outputs;
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
      outputs.push_back({slice, field.width});
      for (std::uint32_t bit = 0; bit < field.width; ++bit) {
        answers.push_back(terms.any(bits[bit]));
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
  turn_in(rows, words_, count, scratch.slices);
  scratch.inputs.resize(inputs_.size());
  for (std::size_t i = 0; i < inputs_.size(); ++i) scratch.inputs[i] = spelt(inputs_[i], scratch.slices);
  scratch.outputs.resize(program_.outputs());
  program_.run(scratch.inputs, scratch.outputs, scratch.registers);
  std::copy_n(scratch.outputs.begin(), flags_, flags.begin());
  if (after == nullptr) return;
  if (after != rows) std::copy_n(rows, count * words_, after);
  clear(scratch.slices);
  std::size_t answer = flags_;
  for (const Output& output : outputs_) {
    for (std::uint32_t bit = 0; bit < output.width; ++bit) {
      scratch.slices[output.slice + bit] = scratch.outputs[answer++];
    }
  }
  turn_out(scratch.slices, after, words_, count);
}

void RowProgram::run_partial(const std::uint64_t* rows, std::size_t count, std::span<Rails> flags, std::uint64_t* after,
                             Scratch& scratch) const {
  const std::size_t stride = 2 * words_;
  turn_in(rows, stride, count, scratch.slices);
  turn_in(rows + words_, stride, count, scratch.unknown);
  scratch.rails_in.resize(inputs_.size());
  for (std::size_t i = 0; i < inputs_.size(); ++i) {
    const Block holds = spelt(inputs_[i], scratch.slices);
    const Block& unknown = scratch.unknown[inputs_[i].slice];
    for (std::size_t g = 0; g < holds.words.size(); ++g) {
      scratch.rails_in[i].may_hold.words[g] = holds.words[g] | unknown.words[g];
      scratch.rails_in[i].may_fail.words[g] = ~holds.words[g] | unknown.words[g];
    }
  }
  scratch.rails_out.resize(program_.outputs());
  program_.run(scratch.rails_in, scratch.rails_out, scratch.rails);
  std::copy_n(scratch.rails_out.begin(), flags_, flags.begin());
  if (after == nullptr) return;
  if (after != rows) std::copy_n(rows, count * stride, after);
  clear(scratch.slices);
  clear(scratch.unknown);
  for (auto [answer, output] = std::pair(flags_, outputs_.begin()); output != outputs_.end(); ++output) {
    Block unknown;
    for (std::size_t g = 0; g < unknown.words.size(); ++g) {
      for (std::uint32_t bit = 0; bit < output->width; ++bit) {
        const Rails& rails = scratch.rails_out[answer + bit];
        unknown.words[g] |= rails.may_hold.words[g] & rails.may_fail.words[g];
      }
    }
    for (std::uint32_t bit = 0; bit < output->width; ++bit, ++answer) {
      Block& holds = scratch.slices[output->slice + bit];
      holds = scratch.rails_out[answer].may_hold;
      for (std::size_t g = 0; g < holds.words.size(); ++g) holds.words[g] &= ~unknown.words[g];
      scratch.unknown[output->slice + bit] = unknown;
    }
  }
  turn_out(scratch.slices, after, stride, count);
  turn_out(scratch.unknown, after + words_, stride, count);
}

void RowProgram::turn_in(const std::uint64_t* rows, std::size_t stride, std::size_t count,
                         std::vector<Block>& slices) const {
  slices.resize(std::max(words_in_.size(), words_out_.size()) * 64);
  for (std::size_t w = 0; w < words_in_.size(); ++w) {
    const std::span<Block, 64> turned(slices.data() + w * 64, 64);
    if (count < most_rows) std::fill(turned.begin(), turned.end(), Block{});
    for (std::size_t i = 0; i < count; ++i) turned[i % 64].words[i / 64] = rows[i * stride + words_in_[w]];
    transpose(turned);
  }
}

Block RowProgram::spelt(const Input& input, const std::vector<Block>& slices) {
  Block all;
  for (std::size_t g = 0; g < all.words.size(); ++g) {
    Lanes spells = ~Lanes{0};
    for (std::uint32_t bit = 0; bit < input.width; ++bit) {
      const Lanes wanted = Lanes{input.place >> bit & 1} - 1;  // no bit where it is 1, else all
      spells &= slices[input.slice + bit].words[g] ^ wanted;
    }
    all.words[g] = spells;
  }
  return all;
}

void RowProgram::clear(std::vector<Block>& slices) const {
  std::fill_n(slices.begin(), words_out_.size() * 64, Block{});
}

void RowProgram::turn_out(std::vector<Block>& slices, std::uint64_t* after, std::size_t stride,
                          std::size_t count) const {
  for (std::size_t w = 0; w < words_out_.size(); ++w) {
    const auto turned = std::span(slices).subspan(w * 64).first<64>();
    transpose(turned);
    for (std::size_t i = 0; i < count; ++i) {
      std::uint64_t& word = after[i * stride + words_out_[w]];
      word = (word & ~computed_[w]) | turned[i % 64].words[i / 64];
    }
  }
}

}  // namespace cairn::system
