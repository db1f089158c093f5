#include "solver/narrowed_relation.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

namespace cairn::solver {

Places built_in(const Candidates& all, const Places& places) {
  Places some;
  std::ranges::copy_if(places, std::back_inserter(some),
                       [&](std::size_t place) { return bounds_values(all[place].fact); });
  return some;
}

namespace {

std::vector<Fact> facts_at(const Candidates& all, const Places& places) {
  std::vector<Fact> facts;
  for (const std::size_t place : places) facts.push_back(all[place].fact);
  return facts;
}

}  // namespace

NarrowedRelation::NarrowedRelation(const Subject& subject, const Candidates& all, const Places& facts,
                                   std::unique_ptr<Solver> solver)
    : all_(all),
      narrowed_to_(built_in(all, facts)),
      solver_(std::move(solver)),
      obligations_(subject, facts_at(all, narrowed_to_), *solver_),
      reader_(obligations_) {}

std::vector<Literal> NarrowedRelation::assumptions(const Places& facts) {
  std::vector<Literal> assumed;
  for (const std::size_t place : facts) {
    if (bounds_values(all_[place].fact)) continue;
    auto known = assumed_.find(place);
    if (known == assumed_.end()) {
      const Literal literal = solver_->declare();
      obligations_.demand_if(literal, all_[place].fact);
      place_of_[literal.variable()] = place;
      known = assumed_.emplace(place, literal).first;
    }
    assumed.push_back(known->second);
  }
  return assumed;
}

Literal NarrowedRelation::lost(std::size_t place) {
  auto known = lost_.find(place);
  if (known == lost_.end()) {
    const system::Term lost = obligations_.lost(all_[place].fact);
    known = lost_.emplace(place, obligations_.literal_of(lost)).first;
  }
  return known->second;
}

Places NarrowedRelation::in_core() {
  Places used;
  for (const Literal literal : solver_->core()) {
    const auto fact = place_of_.find(literal.variable());
    if (fact != place_of_.end()) used.push_back(fact->second);
  }
  std::sort(used.begin(), used.end());
  return used;
}

const Obligations::Bad& NarrowedRelation::bad(const AskedProperty& asked) {
  if (!bad_) bad_ = obligations_.bad(asked);
  return *bad_;
}

}  // namespace cairn::solver
