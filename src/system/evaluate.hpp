/// \file
/// Terms under assignments: 64 at a time, one bit of a machine word each.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "system/term.hpp"

namespace cairn::system {

/// 64 Booleans, one an assignment.
using Lanes = std::uint64_t;

/// The straight-line program that computes some terms from the values of some variables. Made once, run often.
class Program {
 public:
  /// \param inputs   variables (not negated) that run() gets the values of; every variable that the outputs are built
  ///                 from is among them
  /// \param outputs  any terms of the same pool
  Program(const Terms& terms, std::span<const Term> inputs, std::span<const Term> outputs);

  [[nodiscard]] std::size_t inputs() const { return inputs_; }
  [[nodiscard]] std::size_t outputs() const { return outputs_.size(); }
  /// Operations a run takes.
  [[nodiscard]] std::size_t length() const { return code_.size(); }

  /// Computes outputs()[i] of 64 assignments at once. `scratch` is grown as needed and may be shared from run to run.
  void run(std::span<const Lanes> inputs, std::span<Lanes> outputs, std::vector<Lanes>& scratch) const;

 private:
  struct Instruction {
    enum class What : std::uint8_t { both, choose, differ };
    What what;
    std::uint32_t a, b, c;  ///< registers times two, plus one where the operand is negated
  };
  std::size_t inputs_ = 0;
  std::size_t registers_ = 0;
  std::vector<Instruction> code_;
  std::vector<std::uint32_t> outputs_;  ///< registers times two plus negation
};

}  // namespace cairn::system
