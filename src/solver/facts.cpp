#include "solver/facts.hpp"

#include <algorithm>
#include <iterator>
#include <memory>
#include <optional>
#include <utility>

#include "base/contradiction.hpp"

namespace cairn::solver {

using system::Term;

namespace {

void insert_all(Places& into, const Places& more) {
  Places both;
  std::set_union(into.begin(), into.end(), more.begin(), more.end(), std::back_inserter(both));
  into = std::move(both);
}

Places without(const Places& all, const Places& less) {
  Places rest;
  std::set_difference(all.begin(), all.end(), less.begin(), less.end(), std::back_inserter(rest));
  return rest;
}

/// Thrown where a search ends without an answer.
struct GivenUp {
  NoFactsProof why;
};

/// Thrown where a question is hard that need not be answered: more facts would make it easier.
struct Hard {};

}  // namespace

/// The search for a proof of one property.
class FactsProver::Search {
 public:
  Search(FactsProver& prover, const AskedProperty& asked) : prover_(prover), all_(prover.candidates_), asked_(asked) {}

  /// \throws GivenUp
  std::vector<Fact> proof() {
    close();
    minimise();
    return facts_of(taken_);
  }

 private:
  [[nodiscard]] bool is_built_in(std::size_t place) const { return bounds_values(all_[place].fact); }
  [[nodiscard]] std::vector<Fact> facts_of(const Places& places) const {
    std::vector<Fact> facts;
    for (const std::size_t place : places) facts.push_back(all_[place].fact);
    return facts;
  }
  /// The relation where those of the facts that bound values are built in.
  std::unique_ptr<NarrowedRelation> relation_of(const Places& facts) {
    return std::make_unique<NarrowedRelation>(prover_.subject_, all_, facts, prover_.scout_());
  }

  bool ask(NarrowedRelation& relation, const std::vector<Literal>& assumed) {
    if (questions_ >= prover_.bounds_.questions) throw GivenUp{{NoFactsProof::Why::too_costly, Cause::effort, {}}};
    ++questions_;
    Bounds bounds = prover_.bounds_.scout;
    bounds.seconds = prover_.deadline_.left();
    if (bounds.effort) bounds.effort = *bounds.effort - std::min(*bounds.effort, spent_);
    if (hard_) bounds.effort = std::min(*hard_, bounds.effort.value_or(*hard_));
    const std::uint64_t before = relation.solver().effort();
    const Outcome outcome = relation.solver().check(assumed, bounds);
    spent_ += relation.solver().effort() - before;
    switch (outcome) {
      case Outcome::satisfiable:
        return true;
      case Outcome::unsatisfiable:
        return false;
      case Outcome::unknown:
        break;
    }
    const Cause cause = relation.solver().cause();
    if (cause == Cause::failed) throw GivenUp{{NoFactsProof::Why::failed, cause, relation.solver().complaint()}};
    if (cause == Cause::effort && hard_) throw Hard{};
    throw GivenUp{{NoFactsProof::Why::too_costly, cause, {}}};
  }

  /// A state with the facts that is bad, or leads to what is. \param used  where there is none: facts that exclude it,
  /// beside those built in
  std::optional<Obligations::Bad> find_bad(NarrowedRelation& relation, const Places& facts, Places& used) {
    // The relation is that of the semantics only where its passes are enough.
    for (const Obligations::Bad& each : {relation.bad(asked_), {relation.obligations().unfinished(), true}}) {
      if (each.term == system::never) continue;
      std::vector<Literal> assumed = relation.assumptions(facts);
      assumed.push_back(relation.obligations().literal_of(each.term));
      if (each.on_the_way) assumed.push_back(relation.obligations().event());
      if (ask(relation, assumed)) return each;
      insert_all(used, relation.in_core());
    }
    return {};
  }

  /// Whether an event leads from a state with the facts to one without some of `kept`.
  bool finds_loss(NarrowedRelation& relation, const Places& facts, const Places& kept, Places& used) {
    std::vector<Literal> one_is_lost{!relation.solver().declare()};
    for (const std::size_t place : kept) one_is_lost.push_back(relation.lost(place));
    std::vector<Literal> assumed = relation.assumptions(facts);
    assumed.push_back(!one_is_lost.front());
    assumed.push_back(relation.obligations().event());
    relation.solver().add(one_is_lost);
    if (ask(relation, assumed)) return true;
    used = relation.in_core();
    return false;
  }

  /// Candidates that exclude the bad and that every event keeps: from below, which gives few; where that takes too many
  /// questions, from above.
  void close() {
    relation_ = relation_of(taken_);
    if (relation_->obligations().begins_bad(asked_)) throw GivenUp{{}};
    try {
      close_from_below();
    } catch (const GivenUp& end) {
      if (!prover_.bounds_.from_above || questions_ < prover_.bounds_.questions) throw;
      close_from_above();
    }
  }

  /// Takes up one candidate after another.
  void close_from_below() {
    hard_ = prover_.bounds_.hard;
    try {
      take_up();
    } catch (const Hard&) {
      take_up_helpers();
      take_up();
    }
  }

  /// Takes up all of them, and drops what an event loses until nothing is lost: the largest set that every event keeps.
  /// Of that, what the answers lean on.
  void close_from_above() {
    questions_ = 0;
    hard_.reset();
    helpers_.clear();
    taken_.clear();
    for (std::size_t place = 0; place < all_.size(); ++place) {
      if (all_[place].live) taken_.push_back(place);
    }
    relation_ = relation_of(taken_);
    for (Places used; finds_loss(*relation_, taken_, taken_, used);) {
      drop_lost(relation_->reader().after(relation_->reader().read(true)));
    }
    std::optional<Places> rest = leaned_on(*relation_, taken_);
    if (!rest) throw GivenUp{{}};
    taken_ = std::move(*rest);
    relation_ = relation_of(taken_);
  }

  /// Takes up all that bounds values further than what was taken up: the more is folded away, the easier the questions.
  void take_up_helpers() {
    hard_.reset();
    system::Domains domains = narrowed(prover_.subject_.widest, facts_of(taken_));
    for (std::size_t place = 0; place < all_.size(); ++place) {
      if (!all_[place].live || !is_built_in(place)) continue;
      system::Domains further = narrowed(domains, {all_[place].fact});
      if (further == domains) continue;
      domains = std::move(further);
      helpers_.push_back(place);
    }
    insert_all(taken_, helpers_);
    relation_ = relation_of(taken_);
  }

  void take_up() {
    bool is_excluded = false;  // once it is, more facts exclude it too
    while (true) {
      Places used;
      if (!is_excluded) {
        if (const auto found = find_bad(*relation_, taken_, used)) {
          if (!rule_out(relation_->reader().read(found->on_the_way), found->term)) throw GivenUp{{}};
          continue;
        }
        is_excluded = true;
      }
      if (!finds_loss(*relation_, taken_, taken_, used)) return;
      const StepReader::Step step = relation_->reader().read(true);
      const Values after = relation_->reader().after(step);
      const auto first =
          std::ranges::find_if(taken_, [&](std::size_t place) { return fails(all_[place].fact, after); });
      if (first == taken_.end()) throw Contradiction("a fact that an event loses is there when it is evaluated");
      if (rule_out(step, relation_->obligations().lost(all_[*first].fact))) continue;
      drop_lost(after);
      is_excluded = false;
    }
  }

  [[nodiscard]] bool fails(const Fact& fact, const Values& state) const {
    return fails_in(prover_.constants_, prover_.space_, fact, state);
  }

  /// Takes up the first live candidate that the step's state is without, if possible one that the reason for `target`
  /// is without; false where there is none.
  bool rule_out(const StepReader::Step& step, Term target) {
    Known reason;
    if (!ask(*relation_, relation_->reader().denial(step, target))) {
      reason = relation_->reader().told(relation_->solver().core());
    }
    const auto first_where = [&](const auto& holds) {
      std::size_t place = 0;
      while (place < all_.size() && !(all_[place].live && holds(all_[place].fact))) ++place;
      return place;
    };
    std::size_t chosen = first_where([&](const Fact& fact) { return fails_where(prover_.space_, fact, reason); });
    if (chosen == all_.size()) chosen = first_where([&](const Fact& fact) { return fails(fact, step.before); });
    if (chosen == all_.size()) return false;
    taken_.insert(std::lower_bound(taken_.begin(), taken_.end(), chosen), chosen);
    if (is_built_in(chosen)) relation_ = relation_of(taken_);
    return true;
  }

  /// What of the facts does not hold in the state is a candidate no more.
  void drop_lost(const Values& after) {
    bool narrowed_less = false;
    for (const std::size_t place : taken_) {
      if (!fails(all_[place].fact, after)) continue;
      narrowed_less = narrowed_less || is_built_in(place);
      all_[place].live = is_built_in(place) && keep_the_rest(all_[place].fact, after);
    }
    std::erase_if(taken_, [this](std::size_t place) { return !all_[place].live; });
    if (narrowed_less) relation_ = relation_of(taken_);
  }

  /// Of a fact that claims several things, those that hold in the state; false where none does.
  bool keep_the_rest(Fact& fact, const Values& state) const {
    std::vector<Within> claims = claims_of(fact);
    std::erase_if(claims, [&](const Within& claim) { return fails(within(claim), state); });
    if (claims.empty()) return false;
    fact.holds = claims.front();
    fact.also.assign(claims.begin() + 1, claims.end());
    return true;
  }

  /// Those of `facts` that the answers lean on, where events keep them; else, as `facts`, those that are not lost at
  /// once. \returns nothing where they do not exclude the bad
  std::optional<Places> leaned_on(NarrowedRelation& relation, Places& facts) {
    Places needed;
    if (find_bad(relation, facts, needed)) return std::nullopt;
    insert_all(needed, built_in(all_, facts));
    Places pending = needed;
    while (!pending.empty()) {
      Places used;
      if (finds_loss(relation, facts, pending, used)) {
        const Values after = relation.reader().after(relation.reader().read(true));
        std::erase_if(facts, [&](std::size_t place) { return fails(all_[place].fact, after); });
        return needed;
      }
      pending = without(used, needed);
      insert_all(needed, used);
    }
    return needed;
  }

  /// Does without one fact after another, until none can be spared. Where that costs too much the facts that are left
  /// are a proof as well.
  void minimise() {
    spent_ = 0;
    hard_ = prover_.bounds_.sparing;
    try {
      spare_some_of(std::exchange(helpers_, {}));
      bool spared = true;
      while (std::exchange(spared, false)) {
        for (std::size_t i = taken_.size(); i-- > 0;) {
          if (i < taken_.size() && spare({taken_[i]})) spared = true;
        }
      }
    } catch (const GivenUp& end) {
      if (end.why.why == NoFactsProof::Why::failed) throw;
    }
  }

  /// Does without as many of these as possible, where most can be spared.
  void spare_some_of(const Places& places) {
    if (places.empty() || spare(places) || places.size() == 1) return;
    const auto middle = places.begin() + static_cast<std::ptrdiff_t>(places.size() / 2);
    spare_some_of({middle, places.end()});
    spare_some_of({places.begin(), middle});
  }

  /// Does without these, and without what events do not keep then, if what is left is a proof that is not hard to
  /// check.
  bool spare(const Places& places) {
    Places fewer = without(taken_, places);
    std::unique_ptr<NarrowedRelation> wider;
    try {
      while (spent_ < prover_.bounds_.minimising) {
        const Places tried = fewer;
        if (built_in(all_, tried) != (wider ? *wider : *relation_).narrowed_to()) wider = relation_of(tried);
        const std::optional<Places> rest = leaned_on(wider ? *wider : *relation_, fewer);
        if (!rest) return false;
        if (fewer != tried) continue;
        taken_ = *rest;
        if (wider) relation_ = std::move(wider);
        return true;
      }
    } catch (const Hard&) {
      return false;
    }
    return false;
  }

  FactsProver& prover_;
  Candidates& all_;
  AskedProperty asked_;
  Places taken_;
  Places helpers_;                              ///< of those, what was taken up to make questions easier
  std::optional<std::uint64_t> hard_;           ///< the effort above which a question need not be answered
  std::uint64_t questions_ = 0;                 ///< that were asked
  std::uint64_t spent_ = 0;                     ///< effort
  std::unique_ptr<NarrowedRelation> relation_;  ///< of `taken_`
};

FactsProver::FactsProver(Subject subject, SolverMaker scout, SolverMaker judge, const FactsBounds& bounds)
    : subject_(std::move(subject)),
      scout_(std::move(scout)),
      judge_(std::move(judge)),
      bounds_(bounds),
      deadline_(bounds.scout.seconds),
      space_(subject_.model, subject_.faults, subject_.counting),
      start_(settle_to_the_end(constants_, initial_state(space_)).end) {}

void FactsProver::offer(const std::vector<Fact>& candidates) {
  const auto says_nothing = [this](const Within& claim) {
    return std::ranges::includes(claim.values, subject_.widest[claim.variable]);
  };
  for (Fact fact : candidates) {
    if (term_of(constants_, start_, fact) != system::always) continue;
    if (fact.kind == Fact::Kind::within) {
      std::vector<Within> claims = claims_of(fact);
      std::erase_if(claims, says_nothing);
      if (claims.empty()) continue;
      fact.holds = claims.front();
      fact.also.assign(claims.begin() + 1, claims.end());
    }
    candidates_.push_back({std::move(fact), true});
  }
}

bool FactsProver::holds_uncounted(const AskedProperty& asked, const std::vector<Fact>& facts) const {
  const auto counts = [this](const Fact& fact) { return counts_faults(space_, fact); };
  if (subject_.faults.none() || std::ranges::any_of(facts, counts)) return false;
  Subject uncounted = subject_;
  uncounted.counting = system::Counting::uncounted;
  const std::unique_ptr<Solver> judge = judge_();
  Bounds bounds = bounds_.judge;
  // What is not needed may not use up the time of what is.
  if (const auto left = deadline_.left()) bounds.seconds = *left / 2;
  return find_hole(uncounted, asked, facts, *judge, bounds) == Outcome::unsatisfiable;
}

std::variant<FactsProof, NoFactsProof> FactsProver::judged(const AskedProperty& asked, std::vector<Fact> facts) {
  if (holds_uncounted(asked, facts)) return FactsProof{std::move(facts), true};
  const std::unique_ptr<Solver> judge = judge_();
  Bounds bounds = bounds_.judge;
  bounds.seconds = deadline_.left();
  switch (find_hole(subject_, asked, facts, *judge, bounds)) {
    case Outcome::unsatisfiable:
      return FactsProof{std::move(facts), false};
    case Outcome::satisfiable:
      throw Contradiction("two solvers disagree on the proof of a property by facts");
    case Outcome::unknown:
      break;
  }
  if (judge->cause() == Cause::failed)
    return NoFactsProof{NoFactsProof::Why::failed, Cause::failed, judge->complaint()};
  return NoFactsProof{NoFactsProof::Why::too_costly, judge->cause(), {}};
}

std::variant<FactsProof, NoFactsProof> FactsProver::prove(const AskedProperty& asked) {
  try {
    return judged(asked, Search(*this, asked).proof());
  } catch (const GivenUp& end) {
    return end.why;
  }
}

}  // namespace cairn::solver
