#include "verify/export_runs.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "base/text.hpp"

namespace cairn::verify {

using system::Assertion;
using system::Term;

namespace {

// Those that lead to the state at rest that a cold start or a loss meets.
std::size_t events_of_relation(const AskedProperty& asked, const Trace& events) {
  return static_cast<std::size_t>(std::ranges::count_if(events, [&](const Event& event) {
    const bool lost = asked.property == Property::tolerates_loss && event.kind == Event::Kind::broke;
    return !lost && event.kind != Event::Kind::cold_start;
  }));
}

}  // namespace

RunQuestions::RunQuestions(solver::Unroller& unroller, const AskedProperty& asked, std::size_t most_nodes)
    : unroller_(unroller), system_(unroller.system()), asked_(asked), most_nodes_(most_nodes) {
  if (speaks_of_goal(asked.property)) at_rest_ = system_.broken_at_rest(asked);
  if (!speaks_of_goal(asked.property)) on_the_way_ = system_.broken_on_the_way(asked.property);
}

bool RunQuestions::fits() const {
  return system_.terms.size() <= most_nodes_;
}

std::optional<std::vector<Assertion>> RunQuestions::run(std::size_t length) {
  std::vector<Assertion> assertions;
  for (std::size_t t = 0; t < length; ++t) {
    assertions.push_back(
        {fmt::format("Event {}: exactly one happens, and it may happen then.", t), unroller_.one_event(t)});
    const Term unfinished = unroller_.at(t, system_.unfinished);
    if (unfinished != system::never) {
      assertions.push_back({"The settling passes that the formulas have are enough after it.", !unfinished});
    }
    if (!fits()) return std::nullopt;
  }
  return assertions;
}

std::optional<Draft> RunQuestions::breaks(const Trace& events) {
  const std::size_t depth = events_of_relation(asked_, events);
  auto assertions = run(depth);
  if (!assertions) return std::nullopt;
  const std::string breach = breach_in_words(system_.space.model(), asked_);
  if (speaks_of_goal(asked_.property)) {
    const Term lost_few = !system_.terms.at_least(at_rest_.lost, static_cast<std::int64_t>(events.size() - depth) + 1);
    const Term enough = !unroller_.at(depth, at_rest_.unfinished);
    assertions->push_back({fmt::format("In the state after these events, {}.", breach),
                           system_.terms.all({unroller_.at(depth, at_rest_.broken), lost_few, enough})});
  } else {
    assertions->push_back({fmt::format("At the last event, or while the stack settles after it, {}.", breach),
                           unroller_.at(depth - 1, on_the_way_)});
  }
  if (!fits()) return std::nullopt;
  const std::string property = name_with_k(asked_);
  return Draft{fmt::format("run-of-{}-events-breaks-{}", events.size(), slug(property)),
               fmt::format("A run of {} breaks {}.", counted(events.size(), "event"), property), true,
               "such a run; the values of the variables that are true tell it", std::move(*assertions)};
}

Term RunQuestions::broken_at(std::size_t depth, std::size_t most) {
  if (!speaks_of_goal(asked_.property)) return unroller_.at(depth - 1, on_the_way_);
  const std::size_t left = most - depth - cold_start();
  const Term few_lost = !system_.terms.at_least(at_rest_.lost, static_cast<std::int64_t>(left) + 1);
  const Term broken = system_.terms.both(unroller_.at(depth, at_rest_.broken), few_lost);
  return system_.terms.either(broken, unroller_.at(depth, at_rest_.unfinished));
}

std::optional<Draft> RunQuestions::does_not_break(std::size_t most) {
  std::vector<Term> ways;
  Term run = system::always;
  const bool rests = speaks_of_goal(asked_.property);
  for (std::size_t depth = 0; depth + cold_start() <= most; ++depth) {
    if (depth > 0) {
      run = system_.terms.both(run, unroller_.one_event(depth - 1));
      ways.push_back(system_.terms.both(run, unroller_.at(depth - 1, system_.unfinished)));
    }
    if (rests || depth > 0) ways.push_back(system_.terms.both(run, broken_at(depth, most)));
    if (!fits()) return std::nullopt;
  }
  const std::string property = name_with_k(asked_);
  const std::string says = fmt::format(
      "After one of the first {} events, all of which happen and may, {}; or the settling passes that the "
      "formulas have are not enough.",
      most, breach_in_words(system_.space.model(), asked_));
  return Draft{fmt::format("no-run-of-up-to-{}-events-breaks-{}", most, slug(property)),
               fmt::format("No run of at most {} breaks {}.", counted(most, "event"), property),
               false,
               "no such run",
               {{says, system_.terms.any(ways)}}};
}

std::optional<Draft> RunQuestions::exists(std::size_t length) {
  auto assertions = run(length);
  if (!assertions) return std::nullopt;
  return Draft{fmt::format("there-are-runs-of-{}-events", length),
               fmt::format("There are runs of {}: that none breaks the property does not speak of nothing.",
                           counted(length, "event")),
               true, "such a run, the plain one for instance", std::move(*assertions)};
}

}  // namespace cairn::verify
