#include "verify/why_changes.hpp"

#include <algorithm>
#include <functional>
#include <set>

#include "semantics/precedence.hpp"
#include "verify/why_variants.hpp"

namespace cairn {

namespace {

using semantics::Precedence;
using verify::Order;

/// Puts a step that was taken out at its new place.
void put(Order& order, const Change& change) {
  if (!change.behind) {
    order[change.step.value] = std::move(order[change.anchor.value]);
    order[change.anchor.value] = {change.step};
    return;
  }
  for (std::vector<StepId>& after : order) {
    std::replace(after.begin(), after.end(), change.anchor, change.step);
    std::sort(after.begin(), after.end());
  }
  order[change.step.value] = {change.anchor};
}

/// Lists the places to which steps can move, each order once.
class Moves {
 public:
  explicit Moves(const Procedure& procedure)
      : precedence_(procedure), order_(verify::order_of(procedure)), known_{order_} {}

  std::vector<Change> of(StepId step) {
    found_.clear();
    rest_ = order_;
    verify::take_out(rest_, step);
    for (std::vector<StepId>& after : rest_) leave_out_redundant(after);
    for (std::size_t distance = 1; distance < order_.size(); ++distance) {
      if (step.value >= distance) try_beside(step, StepId(step.value - distance), false);
      if (step.value + distance < order_.size()) try_beside(step, StepId(step.value + distance), true);
    }
    return std::move(found_);
  }

 private:
  // What a step follows since another was taken out may already follow from the rest.
  void leave_out_redundant(std::vector<StepId>& after) const {
    const std::vector<StepId> all = after;
    std::erase_if(after, [&](StepId early) {
      return std::any_of(all.begin(), all.end(), [&](StepId late) { return precedence_.before(early, late); });
    });
  }

  // Among steps that may come before it or after it as they like, a step has no place.
  void try_beside(StepId step, StepId anchor, bool behind) {
    if (!precedence_.before(anchor, step) && !precedence_.before(step, anchor)) return;
    try_at({Change::Kind::move, step, 0, anchor, behind});
    try_at({Change::Kind::move, step, 0, anchor, !behind});
  }

  void try_at(const Change& change) {
    Order moved = rest_;
    put(moved, change);
    if (known_.insert(std::move(moved)).second) found_.push_back(change);
  }

  Precedence precedence_;
  Order order_;
  Order rest_;             ///< without the step that moves
  std::set<Order> known_;  ///< the procedure's own, and those that were found
  std::vector<Change> found_;
};

/// Calls `visit` with every value that a condition compares the device's number, or priority, with.
void for_each_asked(const Condition& condition, DeviceId d, Condition::Kind kind,
                    const std::function<void(std::int64_t)>& visit) {
  for (const Condition& part : condition.parts) for_each_asked(part, d, kind, visit);
  if (condition.kind == kind && condition.devices.front() == d) visit(condition.value);
}

std::set<std::int64_t> asked_values(const Model& model, DeviceId d, Condition::Kind kind) {
  std::set<std::int64_t> asked;
  const auto add = [&](std::int64_t value) { asked.insert(value); };
  for (const Step& step : model.procedure.steps) for_each_asked(step.condition, d, kind, add);
  if (model.procedure.goal && model.procedure.goal->where) for_each_asked(*model.procedure.goal->where, d, kind, add);
  return asked;
}

/// What devices have, in the site or by a step other than `except`, that a number or a priority is compared with.
std::set<std::int64_t> values_in_use(const Model& model, StepId except) {
  const Verb verb = model[except].verb;
  std::set<std::int64_t> used;
  for (const Device& device : model.site.devices) {
    used.insert(verb == Verb::set_number ? device.number : device.priority);
    used.insert(verb == Verb::set_number ? device.next_number : device.startup_priority);
  }
  for (std::size_t i = 0; i < model.procedure.steps.size(); ++i) {
    if (StepId(i) != except && model.procedure.steps[i].verb == verb) used.insert(model.procedure.steps[i].value);
  }
  return used;
}

std::set<std::int64_t> other_numbers(const Range& range, const std::set<std::int64_t>& used, std::int64_t now) {
  std::set<std::int64_t> found;
  const auto free = [&](std::int64_t n) { return n != now && !used.contains(n); };
  const auto first_free = [&](std::int64_t from, std::int64_t to, std::int64_t step) {
    for (std::int64_t n = from; step > 0 ? n <= to : n >= to; n += step) {
      if (!free(n)) continue;
      found.insert(n);
      return;
    }
  };
  const std::int64_t inside = std::clamp(now, range.low, range.high);
  first_free(range.low, range.high, 1);
  first_free(range.high, range.low, -1);
  first_free(inside, range.high, 1);
  first_free(inside, range.low, -1);
  return found;
}

std::set<std::int64_t> other_priorities(const Range& range, const std::set<std::int64_t>& used, std::int64_t now) {
  std::set<std::int64_t> found;
  std::int64_t gap = range.low;  // where the gap before the next value begins
  const auto add_one_of = [&](std::int64_t low, std::int64_t high) {
    if (low <= high) found.insert(std::clamp(now, low, high));
  };
  for (const std::int64_t value : used) {
    if (!range.contains(value)) continue;
    add_one_of(gap, value - 1);
    found.insert(value);
    gap = value + 1;
  }
  add_one_of(gap, range.high);
  return found;
}

// As a number without a sign: the one that a step asks for may be any of 64 bits.
std::uint64_t distance(std::int64_t a, std::int64_t b) {
  return a < b ? static_cast<std::uint64_t>(b) - static_cast<std::uint64_t>(a)
               : static_cast<std::uint64_t>(a) - static_cast<std::uint64_t>(b);
}

}  // namespace

Model with_changes(const Model& model, const std::vector<Change>& changes) {
  Model variant = model;
  Order order = verify::order_of(model.procedure);
  std::vector<StepId> removed;
  for (const Change& change : changes) {
    switch (change.kind) {
      case Change::Kind::value:
        variant.procedure.steps[change.step.value].value = change.value;
        break;
      case Change::Kind::move:
        verify::take_out(order, change.step);
        put(order, change);
        break;
      case Change::Kind::remove:
        removed.push_back(change.step);
        break;
    }
  }
  verify::set_order(variant.procedure, std::move(order));
  std::sort(removed.rbegin(), removed.rend());
  for (const StepId step : removed) verify::drop_step(variant.procedure, step);
  return variant;
}

namespace verify {

std::vector<StepId> places_after(const Model& model, const std::vector<Change>& changes) {
  const auto removed = [&](StepId step) {
    return std::any_of(changes.begin(), changes.end(), [&](const Change& change) {
      return change.kind == Change::Kind::remove && change.step == step;
    });
  };
  std::vector<StepId> places;
  std::size_t next = 0;
  for (std::size_t i = 0; i < model.procedure.steps.size(); ++i) {
    places.push_back(removed(StepId(i)) ? StepId() : StepId(next++));
  }
  return places;
}

std::vector<std::int64_t> other_values(const Model& model, StepId id) {
  const Step& step = model[id];
  const bool number = step.verb == Verb::set_number;
  const Range& range = number ? model.platform.numbers : model.platform.priorities;
  const std::set<std::int64_t> used = values_in_use(model, id);
  std::set<std::int64_t> found =
      number ? other_numbers(range, used, step.value) : other_priorities(range, used, step.value);
  for (const std::int64_t asked :
       asked_values(model, step.device, number ? Condition::Kind::number : Condition::Kind::priority)) {
    if (range.contains(asked)) found.insert(asked);
  }
  found.erase(step.value);
  std::vector<std::int64_t> values(found.begin(), found.end());
  std::stable_sort(values.begin(), values.end(),
                   [&](std::int64_t a, std::int64_t b) { return distance(a, step.value) < distance(b, step.value); });
  return values;
}

std::vector<Change> changes_of(const Model& model) {
  Moves moves(model.procedure);
  std::vector<Change> changes;
  for (std::size_t i = 0; i < model.procedure.steps.size(); ++i) {
    const StepId id(i);
    const Verb verb = model[id].verb;
    if (verb == Verb::set_number || verb == Verb::set_priority) {
      for (const std::int64_t value : other_values(model, id))
        changes.push_back({Change::Kind::value, id, value, {}, {}});
    }
    for (const Change& move : moves.of(id)) changes.push_back(move);
    changes.push_back({Change::Kind::remove, id, 0, {}, {}});
  }
  return changes;
}

}  // namespace verify

}  // namespace cairn
