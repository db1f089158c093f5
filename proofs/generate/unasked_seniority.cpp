// proofs/unasked-seniority.md
#include "aged_otherwise.hpp"

namespace cairn::proofs {

using system::Term;
using system::Terms;

namespace {

constexpr const char* page = "unasked-seniority.md";

// Where orphans restart: a pass, in any two states.
void any_pass(const Questions& questions) {
  AnyStack stack(questions.devices(), {.orphans = Orphans::restart});
  Terms& terms = stack.terms;
  const system::FreeState any = stack.any();
  const system::FreeState other = stack.any("'");
  const TwoOrders before(any.state, with_seniority_of(any.state, other.state));
  const TwoOrders after = before.after_pass(terms);
  const Term claim = terms.all({before.same_pass(terms), after.same_but_for_seniority(terms),
                                after.same_among(terms, contestants(terms, after.first))});
  questions.ask(
      terms,
      {"unasked-seniority.restart",
       page,
       {a_state(terms, any),
        another_order(terms, before, other),
        {"Devices that lead or are fresh have the same order of seniority among themselves in both states.",
         before.same_among(terms, contestants(terms, before.first)), "contestants"}},
       {"a pass holds, restarts and admits the same devices in both; and again those that lead or are fresh have the "
        "same order among themselves.",
        claim}});
}

// Where orphans carry on: an event in a settled state, and the passes that follow.
void one_event(const Questions& questions) {
  AnyStack stack(questions.devices(), {.orphans = Orphans::carry_on});
  Terms& terms = stack.terms;
  const system::FreeState any = stack.any();
  const system::FreeState other = stack.any("'");
  const TwoOrders before(any.state, with_seniority_of(any.state, other.state));
  const AnyEvent event(terms, stack.space);
  const TwoOrders left(event.take(terms, before.first, other.state), event.take(terms, before.second, other.state));
  const TwoOrders after = left.after_pass(terms);
  const system::Derived derived = derive(terms, after.first);
  const Term claim =
      terms.all({left.same_pass(terms), after.same_but_for_seniority(terms), settled(terms, after.first, derived),
                 after.same_among(terms, contestants(terms, after.first))});
  questions.ask(terms, {"unasked-seniority.carry-on",
                        page,
                        {a_state(terms, any),
                         another_order(terms, before, other),
                         is_settled(terms, any.state, "settled"),
                         {"Leaders have the same order of seniority among themselves in both states.",
                          before.same_among(terms, contestants(terms, before.first)), "leaders"},
                         event.is_possible(terms, before.first),
                         event.one_at_a_time(terms, before.first, left.first),
                         event.leaves_no_orphans(terms, before.first, left.first)},
                        {"the first pass holds, restarts and admits the same devices in both; after it all is settled; "
                         "and again leaders "
                         "have the same order among themselves.",
                         claim}});
}

}  // namespace

void unasked_seniority(const Questions& questions) {
  any_pass(questions);
  one_event(questions);
}

}  // namespace cairn::proofs
