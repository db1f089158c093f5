#include "verify/vacuity.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

#include "explore/sentry.hpp"
#include "semantics/events.hpp"
#include "semantics/state.hpp"
#include "verify/audit.hpp"
#include "verify/solver_limits.hpp"

namespace cairn::verify {

namespace {

using solver::ReachAnswer;
using solver::Sight;

/// What a run has to meet so that a proof of the property speaks of something; nothing where that is known without.
std::optional<Sight> sight_for(Property property) {
  switch (property) {
    case Property::primary_stays:
      return Sight::kept_device_leads;
    case Property::survives_cold_start:
    case Property::tolerates_loss:
      return Sight::complete_at_rest;
    default:
      return {};
  }
}

/// Whether the concrete semantics, too, meets the sight at the end of these events.
bool walks_to(Sight sight, const Model& model, const FaultBudget& faults, const Trace& events) {
  const semantics::World world(model);
  explore::Sentry sentry(world);
  semantics::Scratch scratch;
  State s = semantics::initial_state(world, faults);
  semantics::settle(world, s, scratch, sentry);
  std::vector<Event> possible;
  for (const Event& event : events) {
    events_in(world, s, scratch.derived, possible);
    if (std::find(possible.begin(), possible.end(), event) == possible.end()) return false;
    semantics::take(world, s, scratch.derived, event);
    semantics::settle(world, s, scratch, sentry);
  }
  if (sight == Sight::kept_device_leads) return sentry.a_kept_device_led();
  events_in(world, s, scratch.derived, possible);
  return semantics::complete(s) && semantics::at_rest(s, possible);
}

}  // namespace

std::string vacuity(const Model& model, Property property, const Met& met) {
  switch (property) {
    case Property::primary_stays:
      return met.kept_device_led ? "" : "no device of keep ever leads";
    case Property::no_refusal:
      return model.procedure.steps.empty() ? "there is no step" : "";
    case Property::survives_cold_start:
    case Property::tolerates_loss:
      return met.run_completed ? "" : "no run is complete";
    default:
      return "";
  }
}

void settle_vacuity(ByUnrolling& unrolling, const Limits& limits, PropertyVerdict& verdict) {
  Met met;
  if (const auto sight = sight_for(verdict.asked.property)) {
    ReachAnswer answer = unrolling.look_for(*sight, limits);
    if (answer.outcome == ReachAnswer::Outcome::unknown) {
      return leave_undecided(answer.cause, std::move(answer.complaint), verdict);
    }
    const bool is_met = answer.outcome == ReachAnswer::Outcome::met;
    if (is_met && !walks_to(*sight, unrolling.model(), unrolling.faults(), answer.events)) {
      return claim_nothing(fmt::format("the constraints have a run of {} events that makes the proof speak of "
                                       "something; replayed, it does not",
                                       answer.events.size()),
                           verdict);
    }
    met = {is_met, is_met};
  }
  verdict.vacuous = vacuity(unrolling.model(), verdict.asked.property, met);
}

}  // namespace cairn::verify
