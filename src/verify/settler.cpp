#include "verify/settler.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <exception>
#include <new>
#include <utility>

#include "base/contradiction.hpp"
#include "verify/audit.hpp"
#include "verify/by_constraints.hpp"
#include "verify/by_unrolling.hpp"
#include "verify/closed_set.hpp"
#include "verify/solver_limits.hpp"
#include "verify/vacuity.hpp"

namespace cairn::verify {

namespace {

std::vector<AskedProperty> asked_of(const Verdicts& verdicts) {
  std::vector<AskedProperty> asked;
  for (const PropertyVerdict* verdict : verdicts) asked.push_back(verdict->asked);
  return asked;
}

bool is_too_large(const explore::Exploration& all) {
  return all.cut_short || all.stopped == Reason::memory;
}

}  // namespace

/// Adds the time that a scope takes to a sum, and to that of each property which it is for.
class Settler::Timed {
 public:
  Timed(Settler& settler, double Timing::*part, const Verdicts& verdicts)
      : settler_(settler), part_(part), verdicts_(verdicts) {}
  Timed(const Timed&) = delete;
  Timed& operator=(const Timed&) = delete;
  ~Timed() {
    const double seconds = watch_.seconds();
    settler_.yield_.timing.*part_ += seconds;
    for (PropertyVerdict* verdict : verdicts_) verdict->cost.timing.*part_ += seconds;
  }

 private:
  Settler& settler_;
  double Timing::*part_;
  Verdicts verdicts_;
  explore::Watch watch_;
};

Settler::Settler(const semantics::World& world, const ProveOptions& options, const FaultBudget& allowed,
                 const FaultBudget& faults, const explore::Guard& guard)
    : world_(world),
      model_(world.model()),
      options_(options),
      allowed_(allowed),
      faults_(faults),
      guard_(guard),
      searcher_(world, options, faults, guard),
      yield_{Emptinesses(world.model()), {}, {}, {}, {}} {}

void Settler::settle(const Verdicts& verdicts) {
  try {
    if (options_.engine == Engine::solver) {
      by_constraints(verdicts);
      yield_.empty.add_nothing();
    } else {
      by_states(verdicts);
    }
    if (options_.engine == Engine::both) compare(verdicts);
  } catch (const Contradiction& contradiction) {
    yield_.empty.add_nothing();
    claim_nothing_more(contradiction.what(), verdicts);
  } catch (const std::bad_alloc&) {
    yield_.empty.add_nothing();
    for (PropertyVerdict* verdict : verdicts) {
      const bool by_facts = verdict->verdict == Verdict::proved && verdict->settled.by == Settled::By::facts;
      if (verdict->verdict != Verdict::refuted && !by_facts) leave_for_want_of_memory(*verdict);
    }
  }
}

void Settler::leave_for_want_of_memory(PropertyVerdict& verdict) {
  leave_undecided(solver::Cause::memory, {}, verdict);
  verdict.vacuous.clear();
}

// What is refuted stands: it was replayed.
void Settler::claim_nothing_more(const std::string& why, const Verdicts& verdicts) {
  for (PropertyVerdict* verdict : verdicts) {
    if (verdict->verdict != Verdict::refuted) claim_nothing(why, *verdict);
  }
}

// A set of states that nothing was left out of can be confirmed, and mined for facts.
void Settler::by_states(const Verdicts& asked) {
  Verdicts verdicts = asked;
  {
    const explore::Exploration all =
        taken(searcher_.search(asked_of(verdicts), Reductions::none(), options_.confirm_limit), verdicts);
    take_refutations(all, verdicts);
    if (!verdicts.empty() && options_.engine == Engine::automatic) by_facts(all, verdicts);
    if (!is_too_large(all) || verdicts.empty()) return conclude(all, asked, verdicts);
    go_on_after(all, verdicts);
  }
  if (!is_settled_by_forgetting(asked, verdicts)) by_leaving_out(asked, verdicts);
}

Reductions Settler::forgetting() const {
  Reductions reductions = options_.reductions;
  reductions.orders = reductions.alike = false;
  return reductions;
}

// What is left where states are forgotten, and not left out, can be confirmed too.
bool Settler::is_settled_by_forgetting(const Verdicts& asked, Verdicts& verdicts) {
  const bool may_leave_out = options_.reductions != forgetting();
  const std::uint64_t most_states = may_leave_out ? options_.forgetting_limit : explore::Manner().most_states;
  const std::uint64_t known_not_to_do = forgetting() == Reductions::none() ? options_.confirm_limit : 0;
  if (most_states <= known_not_to_do) return false;
  const explore::Exploration all = taken(searcher_.search(asked_of(verdicts), forgetting(), most_states), verdicts);
  take_refutations(all, verdicts);
  if (may_leave_out && is_too_large(all) && !verdicts.empty()) {
    go_on_after(all, verdicts);
    return false;
  }
  conclude(all, asked, verdicts);
  return true;
}

// Each search leaves out the more, the less it asks for.
void Settler::by_leaving_out(const Verdicts& asked, const Verdicts& verdicts) {
  std::vector<Verdicts> searches = searched_together(verdicts);
  std::vector<std::vector<AskedProperty>> asked_together;
  asked_together.reserve(searches.size());
  for (const Verdicts& together : searches) asked_together.push_back(asked_of(together));
  std::vector<Found> found = searcher_.search_each(asked_together, options_.reductions);
  std::vector<explore::Exploration> explored;
  Verdicts open;
  std::exception_ptr failure;
  for (std::size_t i = 0; i < searches.size(); ++i) {
    if (found[i].failure) {
      failure = found[i].failure;
      continue;
    }
    explored.push_back(take_reduced(taken(std::move(found[i]), searches[i]), searches[i]));
    open.insert(open.end(), searches[i].begin(), searches[i].end());
  }
  if (failure) std::rethrow_exception(failure);  // what the others have refuted stands
  const bool leave_out = std::ranges::any_of(explored, &explore::Exploration::leaves_states_out);
  if (leave_out && options_.engine == Engine::automatic) by_facts_of_what_is_left(open);
  for (std::size_t i = 0; i < searches.size(); ++i) {
    std::erase_if(searches[i], [&](PropertyVerdict* v) { return std::ranges::find(open, v) == open.end(); });
    conclude(explored[i], asked, searches[i]);
  }
}

// A set that orders were left out of, or all but one of several states that are alike, is not closed, so that it cannot
// be confirmed as it is. But it shows each part of the devices in all that it goes through, where nothing else is asked
// of it than the states at rest: what is drawn from that, and kept by every event of the full relation, is a proof.
void Settler::by_facts_of_what_is_left(Verdicts& verdicts) {
  if (verdicts.empty()) return;
  const explore::Exploration shown = taken(searcher_.search({}, options_.reductions), {});
  if (shown.every_state_visited) by_facts(shown, verdicts);
}

// What is left open is left in `verdicts`.
explore::Exploration Settler::take_reduced(explore::Exploration all, Verdicts& verdicts) {
  take_refutations(all, verdicts);
  if (!all.orders_left_out || verdicts.empty() || !may_be_vacuous_by_orders(all, verdicts)) return all;
  Reductions in_every_order = options_.reductions;
  in_every_order.orders = false;
  all = taken(searcher_.search(asked_of(verdicts), in_every_order), verdicts);
  if (all.answers.front().refutation) {
    throw Contradiction("orders that make no difference were left out, and a breach was missed");
  }
  return all;
}

// All that asks states at rest, and each of the others by itself; where no order is left out, all of them.
std::vector<Verdicts> Settler::searched_together(const Verdicts& verdicts) const {
  if (!options_.reductions.orders) return {verdicts};
  std::vector<Verdicts> searches;
  Verdicts at_rest;
  for (PropertyVerdict* verdict : verdicts) {
    if (speaks_of_goal(verdict->asked.property)) {
      at_rest.push_back(verdict);
    } else {
      searches.push_back({verdict});
    }
  }
  if (!at_rest.empty()) searches.push_back(at_rest);
  return searches;
}

// Whether a device of keep ever leads (6.e) is seen only where no state is left out. Runs that end complete are seen.
bool Settler::may_be_vacuous_by_orders(const explore::Exploration& all, const Verdicts& verdicts) const {
  return verdicts.front()->asked.property == Property::primary_stays &&
         !vacuity_of(all, Property::primary_stays).empty();
}

// What decided a contest in a part of the states decides it in the whole.
void Settler::go_on_after(const explore::Exploration& all, const Verdicts& left) {
  const auto cold = [](const AskedProperty& asked) { return asked.property == Property::survives_cold_start; };
  const bool asked = std::ranges::any_of(all.answers, cold, &explore::Answer::asked);
  const bool open = std::ranges::any_of(asked_of(left), cold);
  yield_.ties.insert(yield_.ties.end(), all.ties.begin(), all.ties.end());
  yield_.empty.add_part(all, !asked || open);
}

// A run without end takes back whatever was proved of `asked`.
void Settler::conclude(const explore::Exploration& all, const Verdicts& asked, const Verdicts& left) {
  yield_.empty.add(all, faults_);
  yield_.ties.insert(yield_.ties.end(), all.ties.begin(), all.ties.end());
  if (!all.endless.empty()) return claim_nothing_more(endless_run(all.endless), asked);
  take_proofs(all, left);
}

explore::Exploration Settler::taken(Found found, const Verdicts& verdicts) {
  yield_.timing.exploring += found.seconds;
  yield_.savings.add(found.all->savings);
  for (PropertyVerdict* verdict : verdicts) {
    verdict->explored = found.all->explored;
    verdict->cost.timing.exploring += found.seconds;
  }
  return std::move(*found.all);
}

// A refutation stands by itself, whatever else is amiss: it is replayed, and put to the formulas. What is left is not
// refuted.
void Settler::take_refutations(const explore::Exploration& all, Verdicts& verdicts) {
  Verdicts left;
  for (std::size_t i = 0; i < verdicts.size(); ++i) {
    if (all.answers[i].refutation) {
      take_refutation(*all.answers[i].refutation, *verdicts[i]);
    } else {
      left.push_back(verdicts[i]);
    }
  }
  verdicts = left;
}

void Settler::take_refutation(const Trace& events, PropertyVerdict& verdict) {
  {
    const Timed timed(*this, &Timing::replaying, {&verdict});
    judge_refutation(model_, allowed_, events, verdict);
  }
  if (verdict.verdict != Verdict::refuted) return;
  const Timed timed(*this, &Timing::confirming, {&verdict});
  confirm_refutation(model_, allowed_, verdict);
}

// Proved by facts are those that can be; they are taken out of `verdicts`.
void Settler::by_facts(const explore::Exploration& all, Verdicts& verdicts) {
  if (all.stopped || !all.endless.empty()) return;
  Limits limits = guard_.left();
  // Time has to be left for what settles without facts: the confirmation of the states, or a reduced search.
  if (limits.seconds) *limits.seconds /= 2;
  Verdicts left;
  try {
    ByFacts facts(model_, faults_, limits);
    facts.see(all);
    while (!verdicts.empty()) {
      if (!is_proved_by_facts(facts, all, *verdicts.front())) left.push_back(verdicts.front());
      verdicts.erase(verdicts.begin());
    }
  } catch (const std::bad_alloc&) {  // whatever the solvers are at then is not to be believed
    leave_for_want_of_memory(*verdicts.front());
  }
  verdicts.insert(verdicts.begin(), left.begin(), left.end());
}

bool Settler::is_proved_by_facts(ByFacts& facts, const explore::Exploration& all, PropertyVerdict& verdict) {
  const Property property = verdict.asked.property;
  const bool may_be_endless = !all.every_state_visited && !ends_for_sure(model_);
  if (may_be_vacuous(all, property) || (may_be_endless && speaks_of_goal(property))) return false;
  const auto answer = proved(facts, verdict);
  const auto* proof = std::get_if<solver::FactsProof>(&answer);
  if (proof == nullptr) {
    verdict.settled.not_by_facts = words_of(std::get<solver::NoFactsProof>(answer));
    return false;
  }
  tell(*proof, facts.space(), verdict);
  yield_.proofs.push_back({verdict.asked, faults_, proof->facts});
  verdict.settled.confirmed = all.every_state_visited;
  verdict.settled.reduced = all.reduced;
  verdict.vacuous = vacuity_of(all, property);
  return true;
}

std::variant<solver::FactsProof, solver::NoFactsProof> Settler::proved(ByFacts& facts, PropertyVerdict& verdict) {
  const Timed timed(*this, &Timing::solving, {&verdict});
  const SolverWork before = facts.work();
  auto answer = facts.prove(verdict.asked);
  verdict.cost.solving.add(facts.work().since(before));
  return answer;
}

// Whether a proof would hold of nothing (6.e) is not known before every state is visited.
bool Settler::may_be_vacuous(const explore::Exploration& all, Property property) const {
  return (!all.every_state_visited || all.orders_left_out) && !vacuity_of(all, property).empty();
}

void Settler::take_proofs(const explore::Exploration& all, const Verdicts& verdicts) {
  if (verdicts.empty()) return;
  for (PropertyVerdict* verdict : verdicts) {
    verdict->verdict = all.stopped ? Verdict::undecided : Verdict::proved;
    verdict->settled.reduced = all.reduced;
    if (all.stopped) verdict->reason = *all.stopped;
    if (!all.stopped) verdict->vacuous = vacuity_of(all, verdict->asked.property);
  }
  if (!all.stopped && !all.leaves_states_out()) confirm(all, verdicts);
}

// The closed set is evaluated again with the formulas; a reduced one as a set of partial states.
void Settler::confirm(const explore::Exploration& all, const Verdicts& verdicts) {
  const Timed timed(*this, &Timing::confirming, verdicts);
  const std::vector<AskedProperty> asked = asked_of(verdicts);
  using Outcome = solver::SetConfirmation::Outcome;
  const solver::SetConfirmation again =
      all.reduced
          ? confirm_reduced_set(world_, faults_, asked, *all.visited, forgetting(), options_.confirm_limit, guard_)
          : confirm_closed_set(world_, faults_, asked, *all.visited, options_.confirm_limit, guard_);
  for (PropertyVerdict* verdict : verdicts) {
    verdict->settled.confirmed = again.outcome == Outcome::agrees;
    verdict->settled.unclear = again.outcome == Outcome::unclear;
    if (again.outcome == Outcome::differs) {
      claim_nothing(told(world_, faults_, *again.difference), *verdict);
    }
  }
}

void Settler::by_constraints(const Verdicts& verdicts) {
  std::size_t settled = 0;
  try {
    ByFacts facts(model_, faults_, guard_.left());
    ByUnrolling unrolling(model_, faults_);
    for (; settled < verdicts.size(); ++settled) by_constraints(facts, unrolling, *verdicts[settled]);
  } catch (const std::bad_alloc&) {  // whatever the solvers are at then is not to be believed
    for (; settled < verdicts.size(); ++settled) leave_for_want_of_memory(*verdicts[settled]);
  }
}

void Settler::by_constraints(ByFacts& facts, ByUnrolling& unrolling, PropertyVerdict& verdict) {
  {
    const Timed timed(*this, &Timing::solving, {&verdict});
    const SolverWork by_facts = facts.work();
    const SolverWork by_unrolling = unrolling.work();
    auto proof = settle_by_constraints(facts, unrolling, guard_.left(), verdict);
    verdict.cost.solving.add(facts.work().since(by_facts));
    verdict.cost.solving.add(unrolling.work().since(by_unrolling));
    if (proof) yield_.proofs.push_back({verdict.asked, faults_, std::move(proof->facts)});
  }
  if (verdict.verdict == Verdict::refuted) take_refutation(Trace(verdict.events), verdict);
}

// Both ways must agree on verdict, length and vacuity; where one is undecided, the other stands, not confirmed.
void Settler::compare(const Verdicts& verdicts) {
  std::vector<PropertyVerdict> others;
  for (const PropertyVerdict* verdict : verdicts) others.emplace_back().asked = verdict->asked;
  Verdicts by_solver;
  for (PropertyVerdict& other : others) by_solver.push_back(&other);
  by_constraints(by_solver);
  for (std::size_t i = 0; i < verdicts.size(); ++i) {
    Cost cost = verdicts[i]->cost;
    cost.add(others[i].cost);
    reconcile(others[i], *verdicts[i]);
    verdicts[i]->cost = cost;
  }
}

// Semantics 5.k. The lemma has counterexamples: docs/semantics-questions.md.
std::string Settler::endless_run(const std::vector<DeviceId>& devices) const {
  std::vector<std::string_view> names;
  names.reserve(devices.size());
  for (const DeviceId d : devices) names.push_back(model_[d].name);
  return fmt::format(
      "a run need not end: {} restart one another for ever, where semantics 5.k says that every run ends (see "
      "docs/semantics-questions.md). Such a stack never comes to rest: do not carry this procedure out",
      fmt::join(names, " and "));
}

// Semantics 6.e
std::string Settler::vacuity_of(const explore::Exploration& all, Property property) const {
  return vacuity(model_, property, {all.a_kept_device_led, all.a_run_completed});
}

}  // namespace cairn::verify
