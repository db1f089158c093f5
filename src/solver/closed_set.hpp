/// \file
/// A set of states put to the formulas: that the first state is in it, that no event leads out of it, and that nothing
/// in it is bad. Whoever found the set, and how, plays no part.
///
/// Each state of the set is looked at once, settled and quiet under a pass, with the events that may happen in it. Each
/// of those events is taken; where what it leaves is in the set, it is settled as well, else passes follow until it is.
/// All of this is evaluation, 512 states at a time: nothing is asked of a solver.
///
/// A set may also be of partial states, each of which stands for all states that differ in some variables alone. Then
/// the same is asked in three-valued logic, of all that they stand for at once: docs/reductions.md, What a reduced set
/// proves.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

#include "cairn/state.hpp"
#include "cairn/verdict.hpp"
#include "system/moves.hpp"

namespace cairn::solver {

/// States of one model, in any order, none of them settling any more.
class StateSet {
 public:
  virtual ~StateSet() = default;
  [[nodiscard]] virtual std::uint64_t size() const = 0;
  /// Demands index < size(). Valid until the next call.
  [[nodiscard]] virtual const State& at(std::uint64_t index) = 0;
};

/// Partial states: at() gives one of the states that each stands for. What is hinted is of no account for what is
/// proved: a wrong hint proves nothing, it is found not to fit.
class PartialStateSet : public StateSet {
 public:
  /// The variables that are not known of the partial state; `out` is cleared first.
  virtual void unknown(std::uint64_t index, std::vector<system::VariableId>& out) = 0;
  /// A hint: where an event leads.
  struct Way {
    Event event;
    std::uint64_t to;
  };
  /// Of events that may happen in the partial state; `out` is cleared first.
  virtual void ways(std::uint64_t index, std::vector<Way>& out) = 0;
};

/// Where the formulas tell otherwise than whoever found the set.
struct Difference {
  enum class Kind : std::uint8_t {
    first_missing,  ///< the initial state, settled, is not in the set
    strange,        ///< `state` holds a value that no event, no pass and no site entry gives
    unsettled,      ///< a pass changes `state`
    leads_out,      ///< `events` lead from `state` to a state that is not in the set
    endless,        ///< after `events`, the passes do not come to an end
    broken,         ///< `property` is broken: in `state`, or by `events` from there on; at depth zero without a state
  };
  Kind kind = Kind::leads_out;
  std::optional<State> state;  ///< one of the set
  Trace events;                ///< what follows on it: one event, or the breaks of a loss
  std::optional<AskedProperty> property;
  /// Per variable of the space, the state that the formulas lead to, as far as they were followed; empty where `state`
  /// itself is in question. Nothing where the value is not known.
  std::vector<std::optional<std::int64_t>> reached;
};

/// How much was done.
struct SetEffort {
  std::uint64_t states = 0;  ///< looked at
  std::uint64_t events = 0;  ///< taken
  std::uint64_t passes = 0;  ///< carried out
  std::uint64_t losses = 0;  ///< of cables, looked at
};

struct SetConfirmation {
  enum class Outcome : std::uint8_t {
    agrees,     ///< the set is closed, and nothing in it is bad
    differs,    ///< `difference` tells where
    unclear,    ///< nothing speaks against a set of partial states, but what is not known leaves it open
    too_large,  ///< there is more to look at than was allowed
    stopped,    ///< by the limit `reason`
  };
  Outcome outcome = Outcome::agrees;
  std::optional<Difference> difference;
  /// What was left open first: there may be such a difference, or none.
  std::optional<Difference> doubt;
  Reason reason{};
  SetEffort effort;
};

/// Asked now and then with the bytes that are in use or about to be: the limit that is met, or nothing.
using AskLimits = std::function<std::optional<Reason>(std::uint64_t bytes)>;

/// Confirms `set` for some properties, under the budget of `moves`. Of several differences the one is told that is met
/// first, the same in every run.
/// \param moves  the parts of the model; with a cold start where 6.7 is asked
/// \param asked  what the set is said to keep; 6.6 to 6.8 demand a goal
/// \param most   states, and losses of 6.8, that may be looked at
[[nodiscard]] SetConfirmation confirm_closed_set(system::Moves& moves, StateSet& set,
                                                 const std::vector<AskedProperty>& asked, std::uint64_t most,
                                                 const AskLimits& ask);

/// The same of partial states. That it agrees means: every reachable state is among those that they stand for, and
/// nothing in these is bad.
[[nodiscard]] SetConfirmation confirm_partial_set(system::Moves& moves, PartialStateSet& set,
                                                  const std::vector<AskedProperty>& asked, std::uint64_t most,
                                                  const AskLimits& ask);

}  // namespace cairn::solver
