/// \file
/// Terms under assignments: 64 at a time, one bit of a machine word each, or 512, a block of words at a time; and under
/// partial assignments, in Kleene's strong three-valued logic.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

#include "system/term.hpp"

namespace cairn::system {

/// 64 Booleans, one an assignment.
using Lanes = std::uint64_t;

/// 512 Booleans, one an assignment. A run on blocks takes about three times as long as one on lanes.
struct alignas(64) Block {
  std::array<Lanes, 8> words{};
};

/// What is known of 512 Booleans under partial assignments, on two rails: a Boolean that may hold and may fail is not
/// known. As it stands: all fail.
struct Rails {
  Block may_hold;
  Block may_fail{.words = {~Lanes{0}, ~Lanes{0}, ~Lanes{0}, ~Lanes{0}, ~Lanes{0}, ~Lanes{0}, ~Lanes{0}, ~Lanes{0}}};
};

/// The straight-line program that computes some terms from the values of some variables. Made once, run often; runs may
/// go side by side, each with a scratch of its own.
class Program {
 public:
  /// \param inputs   variables (not negated) that run() gets the values of; every variable that the outputs are built
  ///                 from is among them, else Contradiction is thrown
  /// \param outputs  any terms of the same pool
  Program(const Terms& terms, std::span<const Term> inputs, std::span<const Term> outputs);

  [[nodiscard]] std::size_t inputs() const { return inputs_; }
  [[nodiscard]] std::size_t outputs() const { return outputs_.size(); }
  /// Operations a run takes.
  [[nodiscard]] std::size_t length() const { return code_.size(); }
  /// Words, or blocks, of scratch a run takes.
  [[nodiscard]] std::size_t registers() const { return registers_; }

  /// Computes outputs()[i] of 64 assignments at once. `scratch` is grown as needed and may be shared from run to run.
  void run(std::span<const Lanes> inputs, std::span<Lanes> outputs, std::vector<Lanes>& scratch) const;
  /// The same of 512 assignments.
  void run(std::span<const Block> inputs, std::span<Block> outputs, std::vector<Block>& scratch) const;
  /// What is known of outputs()[i] under 512 partial assignments. What is told as known is so however the inputs that
  /// are not known are chosen; what hangs together by more than the terms show may be told as not known.
  void run(std::span<const Rails> inputs, std::span<Rails> outputs, std::vector<Rails>& scratch) const;

 private:
  /// A register times two, plus one where its content is negated. Register 0 is false, then come the inputs.
  using Operand = std::uint32_t;
  /// to := condition ? then : otherwise. A conjunction is one with a false `otherwise`, a difference one with opposite
  /// branches: one operation for all costs less than telling three apart.
  struct Instruction {
    std::uint32_t to;
    Operand condition, then, otherwise;
  };
  class Compiler;

  template <typename Word>
  void run_on(std::span<const Word> inputs, std::span<Word> outputs, std::vector<Word>& scratch) const;

  std::size_t inputs_ = 0;
  std::size_t registers_ = 1;
  std::vector<Instruction> code_;
  std::vector<Operand> outputs_;
};

}  // namespace cairn::system
