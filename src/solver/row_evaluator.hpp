/// \file
/// Programs run on the rows of states, or of partial states, for those who handle both alike.
#pragma once

#include <algorithm>
#include <vector>

#include "solver/blocks.hpp"
#include "system/rows.hpp"

namespace cairn::solver {

/// What the rows are of.
enum class RowKind : std::uint8_t { whole, partial };

/// Runs programs and keeps the flags of the run before. Of whole states a flag holds exactly where it may hold.
class RowEvaluator {
 public:
  RowEvaluator(const system::Coding& coding, RowKind kind)
      : partial_(kind == RowKind::partial), words_(partial_ ? 2 * coding.words() : coding.words()) {}

  [[nodiscard]] bool partial() const { return partial_; }
  /// Words a row.
  [[nodiscard]] std::size_t words() const { return words_; }

  /// As RowProgram::run.
  void run(const system::RowProgram& program, const std::uint64_t* rows, std::size_t count, std::uint64_t* after) {
    if (partial_) {
      rails_.resize(std::max(rails_.size(), program.flags()));
      program.run_partial(rows, count, rails_, after, scratch_);
    } else {
      flags_.resize(std::max(flags_.size(), program.flags()));
      program.run(rows, count, flags_, after, scratch_);
    }
  }

  /// The rows for which the flag holds, however what is not known is chosen.
  [[nodiscard]] system::Block holds(std::size_t flag) const {
    return partial_ ? without(rails_[flag].may_hold, rails_[flag].may_fail) : flags_[flag];
  }
  /// The rows for which it is not known that the flag fails.
  [[nodiscard]] const system::Block& may_hold(std::size_t flag) const {
    return partial_ ? rails_[flag].may_hold : flags_[flag];
  }

 private:
  bool partial_;
  std::size_t words_;
  std::vector<system::Block> flags_;
  std::vector<system::Rails> rails_;
  system::RowProgram::Scratch scratch_;
};

}  // namespace cairn::solver
