#include "confront/relation.hpp"

#include <algorithm>
#include <utility>

#include "confront/states.hpp"

namespace cairn::confront {

namespace {

bool among(const std::vector<Event>& events, const Event& event) {
  return std::find(events.begin(), events.end(), event) != events.end();
}

}  // namespace

Relation::Relation(const semantics::World& world, system::System& system, std::string name, Tally& tally)
    : world_(world), system_(system), name_(std::move(name)), course_(world), sheet_(ask(tally)) {}

Sheet Relation::ask(Tally& tally) {
  std::vector<system::Term> inputs = system_.now.booleans;
  for (const system::Occurrence& each : system_.events) inputs.push_back(each.happens);
  Sheet sheet(system_.terms, std::move(inputs), tally);
  settled_ = sheet.ask("settled", "", system_.settled);
  one_event_ = sheet.ask("one event", "", system_.one_event);
  stirs_ = sheet.ask("stirs", "", system_.stirs);
  unfinished_ = sheet.ask("unfinished", "", system_.unfinished);
  for (const system::Occurrence& each : system_.events) {
    may_happen_.push_back(sheet.ask("may happen", std::string(name_of(each.event.kind)), each.may_happen));
  }
  for (const Property property : on_the_way) {
    broken_.push_back(sheet.ask(std::string(name_of(property)), "on the way", system_.broken_on_the_way(property)));
  }
  leads_ = sheet.ask("6.e a kept device leads", "on the way", system_.kept_device_leads_on_the_way());
  next_ = sheet.ask("next", "", system_.now.state, system_.next);
  for (system::VariableId v = 0; v < system_.space.size(); ++v) {
    strays_.push_back(sheet.ask("strays", system_.space.name(v), system_.strays(v)));
  }
  return sheet;
}

// Where faults are not counted, each kind that the budget allows is left as often as one likes.
State Relation::as_counted(const State& s) const {
  if (system_.space.counts_faults()) return s;
  const FaultBudget& budget = system_.space.budget();
  const auto plenty = [](std::int64_t allowed) { return allowed > 0 ? std::int64_t{99} : 0; };
  State counted = s;
  counted.left = {plenty(budget.cable_breaks), plenty(budget.crashes), plenty(budget.omissions),
                  plenty(budget.late_starts), budget.mends};
  return counted;
}

std::vector<Event> Relation::events_in(const State& s) const {
  std::vector<Event> events;
  semantics::events_in(world_, as_counted(s), semantics::derive(world_, s), events);
  return events;
}

void Relation::open(const State& s) {
  sheet_.open(assignment_of(system_.domains, values_of(system_.space, s)),
              [this, s] { return name_ + ": " + told(system_.space, s); });
}

std::size_t Relation::place_of(const Event& event) const {
  const auto found = std::find_if(system_.events.begin(), system_.events.end(),
                                  [&](const system::Occurrence& each) { return each.event == event; });
  return static_cast<std::size_t>(found - system_.events.begin());
}

void Relation::answer_state(const State& s, bool is_settled) {
  const std::vector<Event> events = events_in(s);
  open(s);
  sheet_.answer(settled_, is_settled);
  sheet_.answer(one_event_, false);  // none happens
  for (std::size_t i = 0; i < system_.events.size(); ++i) {
    sheet_.answer(may_happen_[i], among(events, system_.events[i].event));
  }
}

void Relation::answer_choice(const State& s, Random& random) {
  const std::vector<Event> events = events_in(s);
  if (system_.events.size() < 2) return;
  const std::size_t first = below(random, system_.events.size());
  const std::size_t second = (first + 1 + below(random, system_.events.size() - 1)) % system_.events.size();
  open(s);
  happens(first);
  sheet_.answer(one_event_, among(events, system_.events[first].event));
  open(s);
  happens(first);
  happens(second);
  sheet_.answer(one_event_, false);
}

void Relation::answer_events(const State& s) {
  for (const Event& event : events_in(s)) {
    const std::size_t place = place_of(event);
    open(s);
    if (place == system_.events.size()) {
      sheet_.differs(std::string(name_of(event.kind)) + " may happen and is left out");
      continue;
    }
    happens(place);
    sheet_.answer(one_event_, true);
    answer_event(s, place);
  }
}

void Relation::answer_event(const State& s, std::size_t place) {
  const system::Occurrence& occurrence = system_.events[place];
  State after = as_counted(s);
  const FaultBudget before = after.left;
  course_.take(after, occurrence.event);
  // What is left goes down by what was spent, and no lower than to nothing.
  const auto left = [&](std::int64_t FaultBudget::*kind) {
    return std::max<std::int64_t>(s.left.*kind - (before.*kind - after.left.*kind), 0);
  };
  after.left = {left(&FaultBudget::cable_breaks), left(&FaultBudget::crashes), left(&FaultBudget::omissions),
                left(&FaultBudget::late_starts), s.left.mends};
  const bool more_needed = course_.unsettled >= static_cast<std::size_t>(system_.passes);
  sheet_.answer(stirs_, occurrence.stirs);
  sheet_.answer(unfinished_, more_needed);
  if (!occurrence.stirs && course_.passes != 0) sheet_.differs("a pass follows on an event that does not stir");
  if (more_needed) return;
  for (std::size_t i = 0; i < on_the_way.size(); ++i) sheet_.answer(broken_[i], course_.broken.at(i));
  sheet_.answer(leads_, course_.a_kept_device_led());
  sheet_.answer(next_, s, after);
  for (system::VariableId v = 0; v < system_.space.size(); ++v) {
    const std::vector<std::int64_t>& values = system_.domains[v];
    sheet_.answer(strays_[v], !std::binary_search(values.begin(), values.end(), system_.space.read(after, v)));
  }
}

}  // namespace cairn::confront
