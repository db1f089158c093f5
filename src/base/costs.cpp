#include "cairn/verdict.hpp"

namespace cairn {

void Timing::add(const Timing& other) {
  exploring += other.exploring;
  replaying += other.replaying;
  solving += other.solving;
  confirming += other.confirming;
}

void SolverWork::add(const SolverWork& other) {
  questions += other.questions;
  conflicts += other.conflicts;
  judging += other.judging;
}

void Cost::add(const Cost& other) {
  timing.add(other.timing);
  solving.add(other.solving);
}

SolverWork SolverWork::since(const SolverWork& before) const {
  return {questions - before.questions, conflicts - before.conflicts, judging - before.judging};
}

void Savings::add(const Savings& other) {
  outcomes += other.outcomes;
  by_seniority += other.by_seniority;
  by_settings += other.by_settings;
  by_budgets += other.by_budgets;
  by_alike += other.by_alike;
  events_left_out += other.events_left_out;
  states_left += other.states_left;
  states_alone += other.states_alone;
}

}  // namespace cairn
