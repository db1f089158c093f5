/// \file
/// Terms of a free state evaluated on rows (coding.hpp), 512 states at a time; also of partial states, of which some
/// variables are not known.
///
/// The row of a partial state is twice as long: first the row of a state, with no bit set in the fields of variables
/// that are not known, then the same number of words with every bit set in those fields and no other.
#pragma once

#include <bit>
#include <cstdint>
#include <span>
#include <vector>

#include "system/coding.hpp"
#include "system/evaluate.hpp"

namespace cairn::system {

/// Rows that one run takes at most.
inline constexpr std::size_t most_rows = 512;

/// Calls visit(place) for each row, among the first `count`, for which the Boolean holds, in ascending order. Row i is
/// bit i % 64 of word i / 64.
template <class Visit>
void for_each_row(const Block& holds, std::size_t count, Visit visit) {
  for (std::size_t base = 0; base < count; base += 64) {
    Lanes left = holds.words[base / 64];
    if (count - base < 64) left &= (Lanes{1} << (count - base)) - 1;
    for (; left != 0; left &= left - 1) visit(base + static_cast<std::size_t>(std::countr_zero(left)));
  }
}

/// The Booleans of a free state (free_state()) over the domains of `coding`, in its order, each the same in all lanes.
[[nodiscard]] std::vector<Block> booleans_of(const Coding& coding, const std::uint64_t* row);

/// The same of the row of a partial state.
[[nodiscard]] std::vector<Rails> rails_of(const Coding& coding, const std::uint64_t* row);

/// Turns a block of 512 words of 64 bits round: bit j of `words[i].words[g]` becomes bit i of `words[j].words[g]`.
void transpose(std::span<Block, 64> words);

/// Made once for a free state and some questions about it, run often; runs may go side by side, each with a scratch of
/// its own.
class RowProgram {
 public:
  /// What a run works in; may be shared from run to run, and by several programs.
  struct Scratch {
    std::vector<Block> slices, inputs, outputs, registers;
    std::vector<Block> unknown;  ///< as slices, of the bits that tell what is not known
    std::vector<Rails> rails_in, rails_out, rails;
  };

  /// \param now    the state that rows are of, coded by `coding`, whose domains are those of `now`
  /// \param flags  terms on `now`
  /// \param after  where given, what becomes of the state, by terms on `now`
  /// \throws Contradiction  where a value of `after` is not in its domain
  RowProgram(Terms& terms, const FreeState& now, const Coding& coding, std::span<const Term> flags,
             const SymbolicState* after);

  [[nodiscard]] std::size_t flags() const { return flags_; }
  /// Operations that a run takes for 512 rows, beside those that turn rows round.
  [[nodiscard]] std::size_t length() const { return program_.length(); }

  /// \param rows   `count` rows, one after another; at most most_rows
  /// \param flags  of each flag the rows for which it holds; beyond `count` the bits mean nothing
  /// \param after  where the program has one, `count` rows; may be where `rows` are
  void run(const std::uint64_t* rows, std::size_t count, std::span<Block> flags, std::uint64_t* after,
           Scratch& scratch) const;
  /// The same of rows of partial states. A variable of `after` is known where each bit of its field is.
  void run_partial(const std::uint64_t* rows, std::size_t count, std::span<Rails> flags, std::uint64_t* after,
                   Scratch& scratch) const;

 private:
  /// A Boolean of the free state: that some bits of the row spell `place`.
  struct Input {
    std::uint32_t slice;  ///< the first of them, where the words that are read follow one another
    std::uint32_t width;
    std::size_t place;
  };
  /// A variable that changes: where its field is in the slices of words_out_.
  struct Output {
    std::uint32_t slice;
    std::uint32_t width;
  };
  struct Parts;
  explicit RowProgram(Parts parts);

  /// Rows that stand `stride` words apart.
  void turn_in(const std::uint64_t* rows, std::size_t stride, std::size_t count, std::vector<Block>& slices) const;
  void turn_out(std::vector<Block>& slices, std::uint64_t* after, std::size_t stride, std::size_t count) const;
  /// Of all rows, those whose bits spell the place.
  [[nodiscard]] static Block spelt(const Input& input, const std::vector<Block>& slices);
  void clear(std::vector<Block>& slices) const;

  std::size_t words_;
  std::size_t flags_;
  std::vector<std::uint32_t> words_in_, words_out_;  ///< of a row, those that are read and those that are computed
  std::vector<Input> inputs_;
  std::vector<Output> outputs_;          ///< behind the flags: the bits of each, the lowest first
  std::vector<std::uint64_t> computed_;  ///< of each of words_out_, the bits that are computed
  Program program_;
};

}  // namespace cairn::system
