#include "verify/export_draft.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <set>

#include "base/text.hpp"

namespace cairn::verify {

using system::System;
using system::Term;

namespace {

// The variables that a question is about: which kinds are there to be explained?
class Vocabulary {
 public:
  Vocabulary(const System& system, const Draft& draft) : system_(system) {
    std::vector<Term> roots;
    for (const system::Assertion& assertion : draft.assertions) roots.push_back(assertion.term);
    for (const std::uint32_t node : cone_of(system.terms, roots)) {
      if (system.terms.op(node) == system::Op::variable)
        names_.emplace(system.terms.name(node));
      else
        composite_ = true;
    }
  }

  [[nodiscard]] std::string told() const {
    std::string text;
    if (speaks_of_runs()) text += runs();
    if (speaks_of_events()) text += events();
    if (speaks_of_states()) text += states();
    if (composite_) text += "n1, n2, ... are abbreviations, each given by an equation.\n";
    return text;
  }

 private:
  [[nodiscard]] bool any(const auto& is) const { return std::any_of(names_.begin(), names_.end(), is); }
  [[nodiscard]] bool speaks_of_runs() const {
    return any([](const std::string& name) { return name.find(" @") != std::string::npos; });
  }
  [[nodiscard]] bool speaks_of_events() const {
    return std::ranges::any_of(system_.events, [&](const system::Occurrence& each) {
      return names_.contains(std::string(system_.terms.name(each.happens.node())));
    });
  }
  [[nodiscard]] bool speaks_of_states() const {
    return std::ranges::any_of(system_.now.booleans, [&](Term boolean) {
      const std::string name(system_.terms.name(boolean.node()));
      return any([&](const std::string& other) { return other.starts_with(name); });
    });
  }

  static std::string runs() {
    return "`step s1 @4` says that the event number 4 of the run, counted from 0, is the step s1 of the procedure; "
           "`started d @4` that the device d completes its start then, `started-late d @4` that it does so too late to "
           "join; `omitted s1 @4` that the step is forgotten; `crashed d @4`, `broke c @4` and `mended c @4` that a "
           "device crashes and that a cable breaks or works again. Where one event alone can come next, it has no "
           "variable. All else, the states between the events and how the stack settles in them, follows from the "
           "events "
           "and from the state at the start, and is written out.\n";
  }
  static std::string events() {
    return "`step s1` says that the event that happens is the step s1 of the procedure; `started d` that the device d "
           "completes its start, `started-late d` that it does so too late to join; `omitted s1` that the step is "
           "forgotten; `crashed d`, `broke c` and `mended c` that a device crashes and that a cable breaks or works "
           "again.\n";
  }
  [[nodiscard]] std::string states() const {
    std::string text =
        "The other variables say what holds in a state of the stack and of the procedure. A quantity that can have two "
        "values has one variable, one that can have more has a variable a value, and one that can have a single value "
        "has none.";
    if (any([](const std::string& name) { return name.ends_with('\''); })) {
      text += " With ' at its end a variable speaks of the state after the event, once the stack has settled.";
    }
    if (any([](const std::string& name) { return name.ends_with(" at the start"); })) {
      text += " With \"at the start\" at its end a variable speaks of the state that the site file describes.";
    }
    return text + '\n' + opposites();
  }
  // What holds where a variable of two values does not.
  [[nodiscard]] std::string opposites() const {
    std::string text;
    for (system::VariableId v = 0; v < system_.space.size(); ++v) {
      const auto& cases = system_.now.state[v].cases();
      if (cases.size() != 2 || system_.space.is_truth(v)) continue;
      const auto& named = cases[0].holds.negated() ? cases[1] : cases[0];
      const auto& other = cases[0].holds.negated() ? cases[0] : cases[1];
      if (!names_.contains(std::string(system_.terms.name(named.holds.node())))) continue;
      text += fmt::format("  Where `{}` is false, it is {}.\n", system_.terms.name(named.holds.node()),
                          system_.space.value_name(v, other.value));
    }
    return text;
  }

  const System& system_;
  std::set<std::string> names_;
  bool composite_ = false;
};

std::string comment_of(const System& system, const AskedProperty& asked, const Draft& draft) {
  return fmt::format(
      "{}\n\n{}\n\nExpected: {}. There is {}.\n\nOne of the questions on {} of the procedure \"{}\", by which a stack "
      "of "
      "network switches is changed; README.txt beside it lists them all. How a stack settles after an event, and all "
      "else "
      "that the formulas are made from, is told in docs/semantics.md of cairn.\n\n{}",
      export_mark, draft.says, draft.satisfiable ? "sat" : "unsat", draft.expected, name_with_k(asked),
      system.space.model().procedure.title, Vocabulary(system, draft).told());
}

}  // namespace

ExportedQuestion written(const System& system, const AskedProperty& asked, const Draft& draft) {
  const system::Status status = draft.satisfiable ? system::Status::sat : system::Status::unsat;
  return {draft.name, draft.says, draft.satisfiable,
          smtlib_question(system.terms, comment_of(system, asked, draft), status, draft.assertions)};
}

std::string slug(const std::string& words) {
  constexpr std::size_t longest = 60;
  std::string out;
  for (const char c : words) {
    const auto byte = static_cast<unsigned char>(c);
    if (byte < 128 && std::isalnum(byte) != 0) {
      out += static_cast<char>(std::tolower(byte));
    } else if (!out.empty() && out.back() != '-' && c != '\'') {
      out += '-';
    }
  }
  if (out.size() > longest) {
    const std::size_t end = out.rfind('-', longest);
    out.resize(end == std::string::npos ? longest : end);
  }
  while (out.ends_with('-')) out.pop_back();
  return out;
}

std::string name_with_k(const AskedProperty& asked) {
  if (asked.property != Property::tolerates_loss) return std::string(name_of(asked.property));
  return fmt::format("{}={}", name_of(asked.property), asked.k);
}

std::string breach_in_words(const Model& model, const AskedProperty& asked) {
  std::vector<std::string> kept;
  for (const DeviceId d : model.procedure.keep) kept.push_back(model[d].name);
  const std::string keep = kept.empty() ? "no device" : fmt::format("{}", fmt::join(kept, ", "));
  switch (asked.property) {
    case Property::no_split:
      return fmt::format(
          "of the devices to keep ({}) that are up and have a leader two follow different leaders, or one is not "
          "together with every device that follows the same leader, or one of those to keep is held",
          keep);
    case Property::primary_stays:
      return fmt::format(
          "settling restarts or holds a device to keep ({}) that leads itself at that moment, or a step takes one down",
          keep);
    case Property::members_stay:
      return fmt::format(
          "settling restarts or holds a device to keep ({}), or a step takes one down that is up or held", keep);
    case Property::no_clash:
      return "a device is held, or two devices that have a leader and are together have the same number";
    case Property::no_refusal:
      return "a device refuses the step that happens";
    case Property::reaches_goal:
      return "the state is at rest, and the procedure is not complete or its goal does not hold or a stack has more "
             "members than the platform allows";
    case Property::survives_cold_start:
      return "the state is at rest and complete, and after all power fails and returns at once and the stack has "
             "settled "
             "the goal does not hold";
    case Property::tolerates_loss:
      return fmt::format(
          "the state is at rest and complete, and {} of the cables that are plugged and unbroken, or all where there "
          "are "
          "fewer, are such that the devices of the goal's stack are not together once they have broken",
          asked.k);
  }
  return {};
}

}  // namespace cairn::verify
