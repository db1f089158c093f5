#include "report/findings.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace cairn::report {

namespace {

std::string never_strikes(Event::Kind fault) {
  switch (fault) {
    case Event::Kind::broke:
      return "No cable ever breaks: none is ever plugged and whole.";
    case Event::Kind::crashed:
      return "No device ever crashes: none is ever up.";
    case Event::Kind::omitted:
      return "No step is ever forgotten: there is none to forget.";
    case Event::Kind::started_late:
      return "No start is ever late: no device starts.";
    default:
      return "No cable ever works again: none breaks.";
  }
}

}  // namespace

std::string in_words(const Model& model, const Emptiness& finding) {
  switch (finding.kind) {
    case Emptiness::Kind::never_waits:
      return fmt::format("{} never waits: {} holds whenever its turn comes.", model[finding.step].id,
                         model[finding.step].condition_text);
    case Emptiness::Kind::cannot_fail:
      return fmt::format("{} cannot fail: {} holds whenever its turn comes.", model[finding.step].id,
                         model[finding.step].condition_text);
    case Emptiness::Kind::never_strikes:
      return never_strikes(finding.fault);
    case Emptiness::Kind::no_contest:
      return "No contest: no priority, tenure, number or address ever decides who leads.";
  }
  return {};
}

std::vector<std::string> findings_in_words(const Model& model, const Report& report) {
  std::vector<std::string> sentences;
  if (!report.findings) return sentences;
  for (const Emptiness& finding : *report.findings) sentences.push_back(in_words(model, finding));
  const bool with_faults = std::any_of(report.properties.begin(), report.properties.end(),
                                       [](const PropertyVerdict& p) { return asked_with_faults(p.asked.property); });
  if (!sentences.empty() && !report.faults.none() && !with_faults) {
    sentences.emplace_back("That is said of runs without faults.");
  }
  return sentences;
}

}  // namespace cairn::report
