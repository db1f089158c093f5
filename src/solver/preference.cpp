#include "solver/preference.hpp"

#include "solver/decode.hpp"

namespace cairn::solver {

using system::Term;
using system::Terms;

bool Preference::can(const std::vector<Literal>& assumed, Literal too) {
  std::vector<Literal> all = assumed;
  all.push_back(too);
  return allowance_.can(all);
}

std::size_t Preference::fewest(const std::vector<Term>& counted, Choice& choice) {
  Terms& terms = unroller_.system().terms;
  for (const Term each : counted) clauses_.literal_of(each);
  // Asked again, since the model is older than these clauses.
  bool better = allowance_.can(choice.assumed);
  std::int64_t count = 0;
  while (better) {
    choice.places = decode(unroller_, clauses_, choice.places.size());
    count = 0;
    for (const Term each : counted) count += clauses_.value_of(each) ? 1 : 0;
    better = count > 0 && can(choice.assumed, clauses_.literal_of(!terms.at_least(counted, count)));
  }
  choice.assumed.push_back(clauses_.literal_of(!terms.at_least(counted, count + 1)));
  return static_cast<std::size_t>(count);
}

std::vector<bool> Preference::first_ones(const std::vector<Term>& terms, Choice& choice) {
  std::vector<bool> are;
  for (const Term each : terms) {
    const Literal literal = clauses_.literal_of(each);
    are.push_back(can(choice.assumed, literal));
    choice.assumed.push_back(are.back() ? literal : !literal);
  }
  return are;
}

bool Preference::can_be_earlier(std::size_t t, Choice& choice) {
  std::vector<Term> earlier;
  for (std::size_t event = 0; event < choice.places[t]; ++event) earlier.push_back(unroller_.happens(t, event));
  const Term asked = unroller_.system().terms.any(earlier);
  if (asked == system::never || !can(choice.assumed, clauses_.literal_of(asked))) return false;
  choice.places = decode(unroller_, clauses_, choice.places.size());
  return true;
}

void Preference::earliest(Choice& choice) {
  for (std::size_t t = 0; t < choice.places.size(); ++t) {
    while (can_be_earlier(t, choice)) continue;
    choice.assumed.push_back(clauses_.literal_of(unroller_.happens(t, choice.places[t])));
  }
}

Term Preference::acts(std::size_t t, Actor actor) {
  const system::System& system = unroller_.system();
  std::vector<Term> events;
  for (std::size_t event = 0; event < system.events.size(); ++event) {
    if (actor_of(system.events[event].event.kind) == actor) events.push_back(unroller_.happens(t, event));
  }
  return unroller_.system().terms.any(events);
}

std::vector<Term> Preference::faults(std::size_t length) {
  std::vector<Term> all;
  for (std::size_t t = 0; t < length; ++t) all.push_back(acts(t, Actor::fault));
  return all;
}

std::vector<Term> Preference::switches(std::size_t length) {
  Terms& terms = unroller_.system().terms;
  std::vector<Term> all;
  for (std::size_t t = 1; t < length; ++t) {
    std::vector<Term> same;
    for (const Actor actor : {Actor::operator_, Actor::device, Actor::fault}) {
      same.push_back(terms.both(acts(t - 1, actor), acts(t, actor)));
    }
    all.push_back(!terms.any(same));
  }
  return all;
}

void Preference::choose(Choice& choice) {
  fewest(faults(choice.places.size()), choice);
  fewest(switches(choice.places.size()), choice);
  earliest(choice);
}

}  // namespace cairn::solver
