#include "verify/mine.hpp"

#include <algorithm>
#include <bit>

#include "system/build.hpp"
#include "system/moves.hpp"
#include "system/steps.hpp"

namespace cairn::verify {

using solver::Fact;
using solver::Within;
using solver::within;
using system::Space;
using system::Variable;
using system::VariableId;
using Kind = Variable::Kind;

namespace {

Within is_done(const Space& space, StepId step, bool done) {
  return {space.done(step), {done ? 1 : 0}};
}

Fact law(system::Law which) {
  Fact fact;
  fact.kind = Fact::Kind::law;
  fact.place = static_cast<std::uint32_t>(which);
  return fact;
}

}  // namespace

namespace {

// Every variable within what the smallest domains allow.
void add_values(const Space& space, const system::Domains& smallest, std::vector<Fact>& facts) {
  facts.reserve(facts.size() + space.size());
  for (VariableId v = 0; v < space.size(); ++v) facts.push_back(within({v, smallest[v]}));
}

/// A step that touches a variable, and the values that it leaves there.
struct Touch {
  StepId step;
  std::vector<std::int64_t> values;
};

// What the steps leave in variables that nothing but steps changes: until the first of them is done, and from each on.
void add_touched(system::Moves& moves, std::vector<Fact>& facts) {
  const Space& space = moves.space;
  for (VariableId v = 0; v < space.size(); ++v) {
    const system::Value& now = moves.now.state[v];
    if (now.cases().size() < 2 || space[v].kind == Kind::done || moves.passed[v] != now) continue;
    std::vector<Touch> touches;
    bool only_steps = true;
    for (const system::Move& move : moves.events) {
      if (move.after[v] == now) continue;
      only_steps = only_steps && move.event.kind == Event::Kind::step;
      if (!only_steps) break;
      // Of a step that is not refused.
      const system::SymbolicState left = effect(moves.terms, moves.now.state, moves.now_derived, move.event.step());
      Touch touch{move.event.step(), {}};
      for (const system::Value::Case& each : left[v].cases()) touch.values.push_back(each.value);
      touches.push_back(std::move(touch));
    }
    if (!only_steps) continue;
    std::vector<solver::Within> none_done;
    none_done.reserve(touches.size());
    for (const Touch& touch : touches) none_done.push_back(is_done(space, touch.step, false));
    facts.push_back(within({v, {moves.first.end[v].cases().front().value}}, none_done));
    for (const Touch& touch : touches) {
      facts.push_back(within({v, touch.values}, {is_done(space, touch.step, true)}));
      for (const Touch& next : touches) {
        if (next.step.value <= touch.step.value) continue;
        facts.push_back(
            within({v, touch.values}, {is_done(space, touch.step, true), is_done(space, next.step, false)}));
      }
    }
  }
}

}  // namespace

std::vector<Fact> candidates_from_text(const Space& space, const system::Domains& domains) {
  std::vector<Fact> facts;
  for (std::uint32_t which = 0; which < system::law_count; ++which) facts.push_back(law(system::Law(which)));
  if (space.budget().cable_breaks > 0) {
    Fact spent;
    spent.kind = Fact::Kind::spent;
    facts.push_back(spent);
  }
  Fact order;
  order.kind = Fact::Kind::order;
  facts.push_back(order);
  add_values(space, system::static_domains(space.model(), space.budget()), facts);
  system::Moves moves(space.model(), space.budget(), domains, false);
  add_touched(moves, facts);
  return facts;
}

std::vector<bool> touched_by_steps(const Space& space, const system::Domains& domains) {
  const system::Moves moves(space.model(), space.budget(), domains, false);
  std::vector<bool> touched(space.size(), false);
  for (const system::Move& move : moves.events) {
    if (move.event.kind != Event::Kind::step) continue;
    for (VariableId v = 0; v < space.size(); ++v) {
      if (move.after[v] != moves.now.state[v]) touched[v] = true;
    }
  }
  return touched;
}

namespace {

/// What facts have in common that are told as one.
struct Family {
  Kind kind;
  std::size_t values;             ///< how many each variable may have
  std::vector<std::int64_t> all;  ///< these values, where every variable has the same
  auto operator<=>(const Family&) const = default;
};

// Everybody has a number and a priority of its own; of the rest, who are alike are told together.
Family family_of(const Space& space, const Within& claim) {
  Family family{space[claim.variable].kind, std::min<std::size_t>(claim.values.size(), 2), {}};
  switch (family.kind) {
    case Kind::number:
    case Kind::next_number:
    case Kind::priority:
    case Kind::startup_priority:
    case Kind::leader:
      break;
    default:
      family.all = claim.values;
  }
  return family;
}

}  // namespace

std::vector<Fact> gathered(const Space& space, const std::vector<bool>& touched, const std::vector<Fact>& facts) {
  std::vector<Fact> all;
  std::map<Family, std::size_t> places;
  for (const Fact& fact : facts) {
    if (!solver::bounds_values(fact) || (fact.holds.values.size() > 1 && touched[fact.holds.variable])) {
      all.push_back(fact);
      continue;
    }
    const auto [place, is_new] = places.emplace(family_of(space, fact.holds), all.size());
    if (is_new) {
      all.push_back(fact);
    } else {
      all[place->second].also.push_back(fact.holds);
    }
  }
  return all;
}

namespace {

// What the fact speaks of, in the order in which an engineer would think of it.
int remoteness(const Space& space, const Fact& fact) {
  switch (fact.kind) {
    case Fact::Kind::law:
      return 12;
    case Fact::Kind::order:
      return 6;
    case Fact::Kind::spent:
      return 13;
    case Fact::Kind::within:
      break;
  }
  switch (space[fact.holds.variable].kind) {
    case Kind::priority:
    case Kind::startup_priority:
      return 0;
    case Kind::power:
      return 1;
    case Kind::leader:
      return 2;
    case Kind::number:
    case Kind::next_number:
      return 4;
    case Kind::plugged:
      return 5;
    case Kind::broken:
    case Kind::left:
    case Kind::halted:
      return 9;
    case Kind::senior:
      return 11;
    default:
      return 7;
  }
}

}  // namespace

void sort_by_simplicity(const Space& space, std::vector<Fact>& facts) {
  std::stable_sort(facts.begin(), facts.end(), [&](const Fact& a, const Fact& b) {
    const auto key = [&](const Fact& fact) { return std::pair(fact.given.size(), remoteness(space, fact)); };
    return key(a) < key(b);
  });
}

Miner::Miner(const Space& space) : space_(space), values_(space.size()) {}

std::uint8_t Miner::place_of(VariableId v, std::int64_t value) {
  std::vector<std::int64_t>& known = values_[v];
  const auto place = std::find(known.begin(), known.end(), value);
  if (place == known.end()) {
    if (known.size() > most_values) return 0;
    known.push_back(value);
    if (known.size() > most_values) return 0;
    return static_cast<std::uint8_t>(known.size() - 1);
  }
  return static_cast<std::uint8_t>(place - known.begin());
}

void Miner::add(const State& s, bool in_pairs) {
  Row row(space_.size());
  for (VariableId v = 0; v < space_.size(); ++v) row[v] = place_of(v, space_.read(s, v));
  Seen& seen = at_point_.try_emplace(s.done, Seen(space_.size(), 0)).first->second;
  for (VariableId v = 0; v < space_.size(); ++v) seen[v] |= std::uint64_t{1} << row[v];
  if (in_pairs) rows_.push_back(std::move(row));
}

std::vector<std::int64_t> Miner::values(VariableId v, std::uint64_t seen) const {
  std::vector<std::int64_t> all;
  for (std::size_t i = 0; i < values_[v].size(); ++i) {
    if ((seen >> i & 1U) != 0) all.push_back(values_[v][i]);
  }
  std::sort(all.begin(), all.end());
  return all;
}

Miner::Seen Miner::seen_where(const Guard& guard) const {
  Seen all(space_.size(), 0);
  for (const auto& [point, seen] : at_point_) {
    const std::vector<std::uint8_t>& done = point;
    const bool in = std::all_of(guard.begin(), guard.end(), [&](const Within& step) {
      return done[space_[step.variable].place] == step.values.front();
    });
    if (!in) continue;
    for (VariableId v = 0; v < space_.size(); ++v) all[v] |= seen[v];
  }
  return all;
}

std::vector<Miner::Guard> Miner::guards_of_one_step() const {
  std::vector<Guard> guards;
  for (std::uint32_t s = 0; s < space_.steps(); ++s) {
    guards.push_back({is_done(space_, StepId(s), true)});
    guards.push_back({is_done(space_, StepId(s), false)});
  }
  return guards;
}

std::vector<Miner::Guard> Miner::guards_between_steps() const {
  std::vector<Guard> guards;
  for (std::uint32_t s = 0; s < space_.steps(); ++s) {
    for (const StepId before : space_.model()[StepId(s)].after) {
      guards.push_back({is_done(space_, before, true), is_done(space_, StepId(s), false)});
    }
  }
  return guards;
}

std::vector<Fact> Miner::single() const {
  std::vector<Fact> facts;
  if (at_point_.empty()) return facts;
  const Seen always = seen_where({});
  for (VariableId v = 0; v < space_.size(); ++v) {
    if (is_told(v)) facts.push_back(within({v, values(v, always[v])}));
  }
  std::map<Guard, Seen> known;
  for (const Guard& guard : guards_of_one_step()) {
    const Seen& seen = known[guard] = seen_where(guard);
    for (VariableId v = 0; v < space_.size(); ++v) {
      if (!is_told(v) || seen[v] == always[v] || space_[v].kind == Kind::done) continue;
      facts.push_back(within({v, values(v, seen[v])}, guard));
    }
  }
  for (const Guard& guard : guards_between_steps()) {
    const Seen seen = seen_where(guard);
    const Seen& since = known[{guard[0]}];
    const Seen& until = known[{guard[1]}];
    for (VariableId v = 0; v < space_.size(); ++v) {
      if (!is_told(v) || seen[v] == (since[v] & until[v]) || space_[v].kind == Kind::done) continue;
      facts.push_back(within({v, values(v, seen[v])}, guard));
    }
  }
  return facts;
}

bool Miner::holds(const Row& row, const Guard& guard) const {
  return std::all_of(guard.begin(), guard.end(), [&](const Within& step) {
    return values_[step.variable][row[step.variable]] == step.values.front();
  });
}

void Miner::pair_up(const Guard& guard, std::vector<Fact>& facts) const {
  std::vector<const Row*> rows;
  for (const Row& row : rows_) {
    if (holds(row, guard)) rows.push_back(&row);
  }
  Seen seen(space_.size(), 0);
  for (const Row* row : rows) {
    for (VariableId v = 0; v < space_.size(); ++v) seen[v] |= std::uint64_t{1} << (*row)[v];
  }
  std::vector<VariableId> varying;
  for (VariableId v = 0; v < space_.size(); ++v) {
    if (is_told(v) && std::popcount(seen[v]) > 1 && space_[v].kind != Kind::done) varying.push_back(v);
  }
  for (const VariableId v : varying) {
    std::vector<Seen> with(values_[v].size(), Seen(space_.size(), 0));
    for (const Row* row : rows) {
      Seen& together = with[(*row)[v]];
      for (const VariableId w : varying) together[w] |= std::uint64_t{1} << (*row)[w];
    }
    for (std::size_t value = 0; value < with.size(); ++value) {
      if ((seen[v] >> value & 1U) == 0) continue;
      for (const VariableId w : varying) {
        if (w == v || with[value][w] == seen[w]) continue;
        Guard given = guard;
        given.push_back({v, {values_[v][value]}});
        facts.push_back(within({w, values(w, with[value][w])}, std::move(given)));
      }
    }
  }
}

std::vector<Fact> Miner::paired() const {
  std::vector<Fact> facts;
  pair_up({}, facts);
  return facts;
}

std::vector<Fact> Miner::paired_between_steps() const {
  std::vector<Fact> facts;
  for (const Guard& guard : guards_between_steps()) pair_up(guard, facts);
  return facts;
}

}  // namespace cairn::verify
