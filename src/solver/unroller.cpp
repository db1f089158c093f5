#include "solver/unroller.hpp"

#include <algorithm>
#include <string>
#include <utility>

#include "base/contradiction.hpp"

namespace cairn::solver {

using system::Substitution;
using system::SymbolicState;
using system::Term;
using system::Value;
using system::VariableId;

Unroller::Unroller(system::System& system) : system_(system) {
  for (VariableId v = 0; v < system.space.size(); ++v) {
    if (system.strays(v) != system::never) {
      throw Contradiction("the relation leaves its domains at: " + system.space.name(v));
    }
  }
  add_frame(system.first.end);
}

// A variable of the free state stands for one of its values, or for its opposite where there are two.
void Unroller::put_state(Substitution& put, const SymbolicState& state) const {
  for (VariableId v = 0; v < system_.space.size(); ++v) {
    for (const Value::Case& each : system_.now.state[v].cases()) {
      const bool variable = system_.terms.op(each.holds.node()) == system::Op::variable;
      if (variable && !each.holds.negated()) put.put(each.holds, state[v].is(each.value));
    }
  }
}

void Unroller::add_frame(SymbolicState state) {
  Substitution guards(system_.terms);
  put_state(guards, state);
  std::vector<Term> may;
  for (const system::Occurrence& each : system_.events) may.push_back(guards(each.may_happen));

  const auto impossible = std::count(may.begin(), may.end(), system::never);
  const bool forced = static_cast<std::size_t>(impossible) + 1 == may.size();
  Frame frame{std::move(state), {}, Substitution(system_.terms)};
  put_state(frame.put, frame.state);
  const std::string depth = " @" + std::to_string(frames_.size());
  for (std::size_t event = 0; event < may.size(); ++event) {
    const system::Occurrence& each = system_.events[event];
    Term happens = system::never;
    if (may[event] != system::never) {
      happens = forced ? system::always
                       : system_.terms.variable(std::string(system_.terms.name(each.happens.node())) + depth);
    }
    frame.happens.push_back(happens);
    frame.put.put(each.happens, happens);
  }
  frames_.push_back(std::move(frame));
}

SymbolicState Unroller::after(Frame& frame) const {
  SymbolicState next = frame.state;
  for (VariableId v = 0; v < system_.space.size(); ++v) {
    std::vector<Value::Case> cases;
    for (const Value::Case& each : system_.next[v].cases()) cases.push_back({each.value, frame.put(each.holds)});
    next[v] = Value(std::move(cases));
  }
  return next;
}

Unroller::Frame& Unroller::frame(std::size_t t) {
  while (frames_.size() <= t) add_frame(after(frames_.back()));
  return frames_[t];
}

const SymbolicState& Unroller::state(std::size_t t) {
  return frame(t).state;
}

Term Unroller::happens(std::size_t t, std::size_t event) {
  return frame(t).happens[event];
}

Term Unroller::one_event(std::size_t t) {
  return frame(t).put(system_.one_event);
}

Term Unroller::at(std::size_t t, Term term) {
  return frame(t).put(term);
}

}  // namespace cairn::solver
