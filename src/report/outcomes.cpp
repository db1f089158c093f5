#include "report/outcomes.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "cairn/render.hpp"
#include "report/refutation.hpp"
#include "report/words.hpp"

namespace cairn::report {

namespace {

/// Properties of which the same is to be said, in the order in which it is first to be said.
using Said = std::vector<std::pair<std::string, std::vector<std::string>>>;

void say(Said& said, const AskedProperty& asked, const std::string& what) {
  const auto same = std::find_if(said.begin(), said.end(), [&](const auto& s) { return s.first == what; });
  if (same == said.end()) {
    said.push_back({what, {name_with_k(asked)}});
  } else {
    same->second.push_back(name_with_k(asked));
  }
}

std::string in_brief(const Model& model, const Event& event) {
  switch (event.kind) {
    case Event::Kind::step:
      return model[event.step()].id;
    case Event::Kind::started:
      return model[event.device()].name + " completes its start";
    case Event::Kind::broke:
      return model[event.cable()].name + " breaks";
    case Event::Kind::mended:
      return model[event.cable()].name + " works again";
    case Event::Kind::crashed:
      return model[event.device()].name + " crashes";
    case Event::Kind::omitted:
      return model[event.step()].id + " is forgotten";
    case Event::Kind::started_late:
      return model[event.device()].name + " completes its start late";
    case Event::Kind::cold_start:
      return "the power cut";
  }
  return {};
}

// ": s1, s3, yard-3 completes its start, s5"; nothing where no event happens.
std::string run_in_brief(const Model& model, const Trace& events) {
  std::string text;
  for (const Event& event : events) text += (text.empty() ? ": " : ", ") + in_brief(model, event);
  return text;
}

// "by 5 events, no fault among them. When the operator …": a refutation has been replayed before, and walks again.
std::string how_refuted(const Model& variant, const FaultBudget& faults, const PropertyVerdict& p, Telling telling) {
  const auto walked = replay(variant, faults, p.asked, p.events);
  const auto* walk = std::get_if<Walk>(&walked);
  return fmt::format("by {}{}.{}", length_in_words(p.asked.property, p.events),
                     telling == Telling::run ? run_in_brief(variant, p.events) : "",
                     walk != nullptr ? " " + explain(variant, *walk->breach, *walk) : "");
}

std::string_view is_or_are(const std::vector<std::string>& names) {
  return names.size() == 1 ? "is" : "are";
}

// All but the first by name alone.
std::vector<std::string> refuted_in_words(const Said& refuted) {
  std::vector<std::string> texts;
  std::vector<std::string> also;
  for (const auto& [how, names] : refuted) {
    if (texts.empty()) {
      texts.push_back(fmt::format("{} {} refuted {}", listed(names), is_or_are(names), how));
    } else {
      also.insert(also.end(), names.begin(), names.end());
    }
  }
  if (!also.empty()) texts.back() += fmt::format(" Also refuted: {}.", listed(also));
  return texts;
}

}  // namespace

std::string reason_in_words(const PropertyVerdict& verdict) {
  switch (verdict.reason) {
    case Reason::time:
      return "the time limit was met first";
    case Reason::memory:
      return "the memory limit was met first";
    case Reason::interrupted:
      return "interrupted first";
    case Reason::contradiction:
      return "cairn contradicts itself: " + verdict.contradiction;
  }
  return {};
}

std::vector<std::string> outcomes_in_words(const Model& variant, const FaultBudget& faults,
                                           const std::vector<PropertyVerdict>& verdicts, Telling telling) {
  Said refuted;
  Said others;
  for (const PropertyVerdict& p : verdicts) {
    switch (p.verdict) {
      case Verdict::refuted:
        say(refuted, p.asked, how_refuted(variant, faults, p, telling));
        break;
      case Verdict::undecided:
        say(others, p.asked, "undecided: " + reason_in_words(p));
        break;
      case Verdict::proved:
        say(others, p.asked, p.vacuous.empty() ? "proved" : "proved of nothing: " + p.vacuous);
        break;
    }
  }
  std::vector<std::string> texts = refuted_in_words(refuted);
  for (const auto& [what, names] : others)
    texts.push_back(fmt::format("{} {} {}.", listed(names), is_or_are(names), what));
  return texts;
}

}  // namespace cairn::report
