#include "differential/compare.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "cairn/load.hpp"
#include "cairn/prove.hpp"
#include "cairn/walk.hpp"
#include "differential/order.hpp"
#include "differential/render.hpp"
#include "differential/resolve.hpp"
#include "naive/explore.hpp"
#include "support/engines.hpp"

namespace cairn::differential {

namespace {

/// A difference between the two; empty where there is none.
using Difference = std::string;

/// The library's passes leave out what changes nothing.
Difference compare_passes(const Model& model, const std::vector<naive::Pass>& ours, const std::vector<Pass>& theirs) {
  std::vector<const naive::Pass*> changes;
  for (const naive::Pass& pass : ours) {
    if (pass.before != pass.after) changes.push_back(&pass);
  }
  if (changes.size() != theirs.size()) {
    return fmt::format("{} passes change something by the reference, {} by the library", changes.size(), theirs.size());
  }
  for (std::size_t i = 0; i < theirs.size(); ++i) {
    const std::set<DeviceId> held(theirs[i].held.begin(), theirs[i].held.end());
    const std::set<DeviceId> restarted(theirs[i].restarted.begin(), theirs[i].restarted.end());
    if (held != changes[i]->held) return fmt::format("pass {} holds other devices", i + 1);
    if (restarted != changes[i]->restarted) return fmt::format("pass {} restarts other devices", i + 1);
    if (theirs[i].after != naive::as_state(model, changes[i]->after)) {
      return fmt::format("the state after pass {} differs", i + 1);
    }
  }
  return {};
}

/// Every state of the library's walk beside the reference's, as far as the events are those of section 5 (the breaks
/// of 6.8 are no events: nothing settles between them).
Difference compare_walk(const Model& model, const FaultBudget& budget, const Walk& walk, std::size_t events) {
  naive::Happening now = naive::begin(model, budget);
  if (walk.initial != naive::as_state(model, now.left)) return "the initial state differs";
  const Difference first = compare_passes(model, now.passes, walk.initial_passes);
  if (!first.empty()) return "while the initial state settles, " + first;
  for (std::size_t i = 0; i < events; ++i) {
    const Moment& moment = walk.moments[i];
    const std::string at = fmt::format("at event {} ({}) ", i + 1, tell(model, {moment.event}));
    if (moment.before != naive::as_state(model, now.settled())) return at + "the state before differs";
    now = naive::happen(model, now.settled(), moment.event);
    if (now.refused != (moment.refusal != Refusal::none)) return at + "only one of the two refuses the step";
    if (moment.left != naive::as_state(model, now.left)) return at + "the state that it leaves differs";
    const Difference passes = compare_passes(model, now.passes, moment.passes);
    if (!passes.empty()) return at + passes;
  }
  return {};
}

bool endless(const naive::Exploration& exploration) {
  return std::any_of(exploration.answers.begin(), exploration.answers.end(),
                     [](const naive::Answer& answer) { return answer.cycle; });
}

Difference compare_plain_walk(const Model& model, const naive::Exploration& exploration) {
  const Walk plain = walk(model);
  naive::Happening now = naive::begin(model, {});
  for (const Moment& moment : plain.moments) {
    const auto possible = naive::events(model, now.settled());
    if (std::find(possible.begin(), possible.end(), moment.event) == possible.end()) {
      return "the run without faults takes an event that cannot happen";
    }
    now = naive::happen(model, now.settled(), moment.event);
  }
  if (plain.end == Walk::End::endless) {
    if (!endless(exploration)) return "the run without faults is taken for endless";
  } else if (!naive::at_rest(model, now.settled())) {
    return "the run without faults ends before it is at rest";
  } else if (naive::complete(model, now.settled()) != (plain.end == Walk::End::complete)) {
    return "the run without faults ends otherwise";
  }
  return compare_walk(model, {}, plain, plain.moments.size());
}

/// One refutation, as the library gives it and as the library's own replay sees that of the reference.
Difference compare_refutation(const Model& model, const naive::Answer& answer, const Trace& theirs) {
  const FaultBudget budget = asked_with_faults(answer.asked.property) ? model.procedure.faults : FaultBudget{};
  if (answer.preferred.size() != theirs.size()) {
    return fmt::format("shortest: {} events by the reference ({}), {} by the library ({})", answer.preferred.size(),
                       tell(model, answer.preferred), theirs.size(), tell(model, theirs));
  }
  const std::string refusal = naive::replay(model, budget, answer.asked, theirs);
  if (!refusal.empty()) {
    return fmt::format("the reference does not accept the refutation ({}): {}", tell(model, theirs), refusal);
  }
  if (answer.preferred != theirs) {
    return fmt::format("preferred: ({}) by the reference, ({}) by the library", tell(model, answer.preferred),
                       tell(model, theirs));
  }
  const auto replayed = replay(model, model.procedure.faults, answer.asked, answer.preferred);
  if (const auto* no = std::get_if<NotARefutation>(&replayed)) {
    return fmt::format("the library does not accept the refutation ({}): {}", tell(model, theirs), no->why);
  }
  std::size_t events = theirs.size();
  if (answer.asked.property == Property::tolerates_loss) {
    while (events > 0 && theirs[events - 1].kind == Event::Kind::broke) --events;
  }
  return compare_walk(model, budget, std::get<Walk>(replayed), events);
}

Difference compare_verdict(const Model& model, const naive::Answer& answer, const PropertyVerdict& theirs) {
  if (theirs.asked != answer.asked) return "the properties are answered in another order";
  const bool contradiction = theirs.verdict == Verdict::undecided && theirs.reason == Reason::contradiction;
  if (answer.cycle && contradiction) return {};
  if (answer.cycle && !answer.refuted) {
    return fmt::format("a state can be reached from itself by the reference (semantics 5.k), {} by the library",
                       name_of(theirs.verdict));
  }
  if (theirs.verdict == Verdict::undecided)
    return "undecided by the library: " + std::string(name_of(theirs.reason)) + " " + theirs.contradiction;
  if ((theirs.verdict == Verdict::refuted) != answer.refuted) {
    return fmt::format("{} by the reference ({}), {} by the library ({})", answer.refuted ? "refuted" : "proved",
                       tell(model, answer.preferred), name_of(theirs.verdict), tell(model, theirs.events));
  }
  if (answer.refuted) return compare_refutation(model, answer, theirs.events);
  if (theirs.vacuous.empty() == answer.vacuous) {
    return fmt::format("{} by the reference, vacuous \"{}\" by the library", answer.vacuous ? "vacuous" : "not vacuous",
                       theirs.vacuous);
  }
  if (theirs.explored != answer.explored) {
    return fmt::format("{} states by the reference, {} by the library", answer.explored, theirs.explored);
  }
  return {};
}

/// Semantics 4.5.c. The lemma, like 5.k, rests on links that do not depend on other cables: where `side-leads-to:
/// one-neighbour` is the rule, a device that goes down can form a link between others, and one that comes up can cut
/// it again. There the two are counted, not demanded.
bool settles_slowly(const Model& model, const naive::Exploration& exploration) {
  return exploration.unsettled_passes > (model.platform.orphans == Orphans::carry_on ? 1 : 2);
}

Difference compare_answers(const Model& model, const naive::Exploration& exploration) {
  if (model.platform.side_leads_to == SideLeadsTo::any) {
    if (endless(exploration)) return "lemma 5.k: a state can be reached from itself";
    if (settles_slowly(model, exploration)) {
      return fmt::format("lemma 4.5.c: {} unsettled passes in a row", exploration.unsettled_passes);
    }
  }
  const auto report = prove(model, test::exploring());
  if (!report) return "the library refuses the question: " + report.problems().front().message;
  for (std::size_t i = 0; i < exploration.answers.size(); ++i) {
    const naive::Answer& answer = exploration.answers[i];
    const Difference difference = compare_verdict(model, answer, report.value().properties[i]);
    if (!difference.empty()) return std::string(name_of(answer.asked.property)) + ": " + difference;
  }
  return compare_plain_walk(model, exploration);
}

}  // namespace

std::string tell(const Model& model, const Trace& trace) {
  std::vector<std::string> words;
  for (const Event& event : trace) {
    switch (event.kind) {
      case Event::Kind::step:
        words.push_back(model[event.step()].id);
        break;
      case Event::Kind::omitted:
        words.push_back("omitted " + model[event.step()].id);
        break;
      case Event::Kind::started:
      case Event::Kind::crashed:
      case Event::Kind::started_late:
        words.push_back(fmt::format("{} {}", name_of(event.kind), model[event.device()].name));
        break;
      case Event::Kind::broke:
      case Event::Kind::mended:
        words.push_back(fmt::format("{} {}", name_of(event.kind), model[event.cable()].name));
        break;
      case Event::Kind::cold_start:
        words.emplace_back("cold start");
        break;
    }
  }
  return fmt::format("{}", fmt::join(words, ", "));
}

Comparison compare(const Model& model) {
  Comparison comparison;
  const auto exploration = naive::explore(model, most_states);
  if (!exploration) {
    comparison.outcome = Comparison::Outcome::too_large;
    return comparison;
  }
  comparison.states = exploration->states;
  comparison.settles_slowly = settles_slowly(model, *exploration);
  for (const naive::Answer& answer : exploration->answers) {
    comparison.verdicts.push_back({answer.asked, answer.refuted, answer.vacuous});
  }
  if (endless(*exploration)) comparison.outcome = Comparison::Outcome::endless;
  comparison.difference = compare_answers(model, *exploration);
  if (!comparison.difference.empty()) comparison.outcome = Comparison::Outcome::disagree;
  return comparison;
}

std::optional<Model> read(const Draft& draft) {
  const MemoryFiles files({{procedure_path, render(draft)}});
  auto model = load_procedure(procedure_path, files);
  if (!model) return std::nullopt;
  return std::move(model).value();
}

Comparison compare(const Draft& draft) {
  const auto model = read(draft);
  if (!model)
    return {.outcome = Comparison::Outcome::unreadable,
            .difference = {},
            .verdicts = {},
            .states = 0,
            .settles_slowly = false};
  std::string difference = model_difference(resolve(draft), *model);
  if (difference.empty() && !same_order(draft, *model))
    difference = "the steps wait for others than the procedure says";
  if (difference.empty()) return compare(*model);
  return {.outcome = Comparison::Outcome::disagree,
          .difference = "reading: " + difference,
          .verdicts = {},
          .states = 0,
          .settles_slowly = false};
}

}  // namespace cairn::differential
