/// \file
/// 6.7 and 6.8 by evaluation, of states that are complete and at rest.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

#include "solver/row_evaluator.hpp"
#include "system/moves.hpp"

namespace cairn::solver {

/// 6.7: every device that is not off starts at once, and the stack settles.
class ColdStart {
 public:
  /// Demands that `moves` has the cold start and its procedure a goal.
  ColdStart(system::Moves& moves, const system::Coding& coding);

  struct Outcome {
    system::Block missed;                ///< rows after whose cold start the goal does not hold
    system::Block endless;               ///< rows after whose cold start the passes do not come to an end
    system::Block unclear;               ///< rows of partial states of which neither is known, nor that all is well
    std::vector<std::uint64_t> reached;  ///< the rows that the passes lead to
  };
  /// \param rows  `count` rows of the evaluator's kind, at most system::most_rows
  [[nodiscard]] Outcome run(RowEvaluator& evaluator, const std::uint64_t* rows, std::size_t count,
                            std::uint64_t& passes) const;

 private:
  std::size_t most_passes_;
  system::RowProgram cold_, pass_, goal_;
};

/// 6.8: k cables that are plugged and unbroken break at once, all of them where there are fewer.
class Losses {
 public:
  Losses(system::Moves& moves, const system::Coding& coding, std::int64_t k);

  struct Fatal {
    std::vector<CableId> cables;
    bool sure;  ///< else it may be fatal, as far as is known of a partial state
  };
  /// Of one row, every loss is tried; the first that is fatal is the answer, else one that may be, else nothing.
  /// \param foretell  told how many losses are tried next; it may throw to end the search
  [[nodiscard]] std::optional<Fatal> find_fatal(RowKind kind, const std::uint64_t* row,
                                                const std::function<void(std::size_t)>& foretell) const;

 private:
  /// \tparam Word  Block or Rails
  template <class Word>
  [[nodiscard]] std::optional<Fatal> find_fatal(std::vector<Word> inputs,
                                                const std::function<void(std::size_t)>& foretell) const;
  /// Nothing where it is not known.
  template <class Word>
  [[nodiscard]] std::optional<std::vector<std::uint32_t>> breakable(const std::vector<Word>& state) const;

  const system::Coding& coding_;
  std::int64_t k_;
  std::size_t cables_;
  system::RestBreach breach_;
  system::Program breakable_;  ///< per cable, of the Booleans of the state
  system::Program fatal_;      ///< of the Booleans of the state, then of those that say which cables are lost
};

}  // namespace cairn::solver
