/// \file
/// States that differ only in what nothing will ever ask count as one (docs/reductions.md).
#pragma once

#include <utility>
#include <vector>

#include "cairn/options.hpp"
#include "cairn/state.hpp"
#include "explore/reduce/overwritten.hpp"
#include "explore/reduce/seniority.hpp"
#include "explore/reduce/unspent.hpp"
#include "semantics/world.hpp"

namespace cairn::explore {

/// Which reductions have changed a state.
struct Forgotten {
  bool seniority = false, settings = false, budgets = false;
  bool alike = false;  ///< by another reduction (alike.hpp), which forgets which device is which
};

/// What will never be asked of a settled state, or not before it is made anew.
struct Unasked {
  std::vector<std::pair<DeviceId, DeviceId>> seniority;  ///< which of the two, both up or held, is senior
  std::vector<DeviceId> settings;                        ///< in force on the device (docs/reductions.md, Settings)
  bool numbers = false;                                  ///< its number as well
  bool omissions = false;                                ///< how many are left
  bool late_starts = false;                              ///< how many are left
};

/// Replaces a settled state by one that stands for all those that differ from it only in what will never be asked. From
/// either the same events may follow, with the same outcomes in every property, to the end; so lengths of refutations,
/// the choice among them, and states at rest stay as they are.
class Forgetter {
 public:
  Forgetter(const semantics::World& world, const Reductions& reductions)
      : reductions_(reductions), seniority_(world), overwritten_(world), unspent_(world) {}

  Forgotten forget(State& s) {
    Forgotten forgotten;
    forgotten.budgets = reductions_.budgets && unspent_.strike_off(s);
    forgotten.settings = reductions_.settings && overwritten_.replace(s);
    forgotten.seniority = reductions_.seniority && seniority_.level(s);
    return forgotten;
  }

  /// Of a state that forget() has made: what it forgot.
  [[nodiscard]] Unasked unasked(const State& s) {
    Unasked all;
    if (reductions_.budgets) {
      all.omissions = !unspent_.may_omit(s);
      all.late_starts = !unspent_.may_start(s);
    }
    if (reductions_.settings) {
      all.settings = overwritten_.unread(s);
      all.numbers = overwritten_.number_unread();
    }
    if (reductions_.seniority) all.seniority = seniority_.unasked(s);
    return all;
  }

 private:
  Reductions reductions_;
  Seniority seniority_;
  Overwritten overwritten_;
  Unspent unspent_;
};

}  // namespace cairn::explore
