/// \file
/// Small models for the reports, read from text.
#pragma once

#include <doctest/doctest.h>

#include <cairn/cairn.hpp>
#include <sstream>
#include <string>
#include <vector>

/// Lists of lines, readable where a check fails.
template <>
struct doctest::StringMaker<std::vector<std::string>> {
  static doctest::String convert(const std::vector<std::string>& lines) {
    std::string out;
    for (const auto& line : lines) out += "\n  | " + line;
    return out.c_str();
  }
};

namespace cairn::test {

/// The text with its line breaks and indentation as blanks, so that wrapping does not matter.
inline std::string flowing(const std::string& text) {
  std::istringstream words(text);
  std::string out;
  for (std::string word; words >> word;) out += (out.empty() ? "" : " ") + word;
  return out;
}

inline bool has(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

/// Rules of the platform that a test may change.
struct QuayRules {
  std::string number_takes = "at-restart";
  std::string priority_takes = "at-restart";
  std::string settings_follow = "device";
  std::string side_takes = "on-apply";
  std::string side_leads_to = "any";
  std::string orphans = "carry-on";
  std::string election = "[priority, tenure, number]";
  std::string software = "any";
  std::string side_needs_disabled = "false";
};

/// A procedure at a chain of quay-1 and quay-2 (numbers 1 and 2, priorities 200 and 150), led by quay-1, with quay-3
/// off beside it, cabled by `run` to quay-2/e but not plugged. `rest` is what stands below `steps:`, and what follows
/// it.
inline std::string quay_text(const std::string& rest, const QuayRules& rules = {}) {
  return "procedure: At the quay\n"
         "site:\n"
         "  site: Quay\n"
         "  platform:\n"
         "    platform: Bollard\n"
         "    numbers: [1, 9]\n"
         "    priorities: [1, 255]\n"
         "    factory: {number: 1, priority: 100, enabled: true, side: none}\n"
         "    number-takes: " +
         rules.number_takes + "\n" + "    priority-takes: " + rules.priority_takes + "\n" +
         "    settings-follow: " + rules.settings_follow + "\n" + "    side-takes: " + rules.side_takes + "\n" +
         "    side-needs-disabled: " + rules.side_needs_disabled + "\n" + "    facing: opposite\n" +
         "    side-leads-to: " + rules.side_leads_to + "\n" + "    software: " + rules.software + "\n" +
         "    orphans: " + rules.orphans + "\n" + "    election: " + rules.election + "\n" +
         "  devices:\n"
         "    quay-1: {number: 1, priority: 200, tenure: 2, ports: {w: {}, e: {side: east}}}\n"
         "    quay-2: {number: 2, priority: 150, tenure: 1, ports: {w: {side: west}, e: {side: east}}}\n"
         "    quay-3: {power: off, number: 3, priority: 100, software: 2, ports: {w: {side: west}, e: {}}}\n"
         "  cables:\n"
         "    quay-1/e--quay-2/w: {id: span}\n"
         "    quay-2/e--quay-3/w: {id: run, plugged: false}\n"
         "  stack: {primary: quay-1, members: [quay-1, quay-2]}\n" +
         (rest.starts_with("  - ") ? "steps:\n" : "") + rest +
         (rest.find("goal:") == std::string::npos && rest.find("properties:") == std::string::npos
              ? "properties: [no-split, primary-stays, members-stay, no-clash, no-refusal]\n"
              : "");
}

/// docs/semantics-questions.md, 2: quay-2 and quay-3 restart one another for ever.
inline const std::string run_without_end = R"(procedure: Cable a second neighbour to a live side
site:
  site: Quay
  platform: {platform: Bollard, numbers: [1, 9], priorities: [1, 255], number-takes: at-restart,
             factory: {number: 1, priority: 100, enabled: true, side: none}, priority-takes: at-restart,
             settings-follow: device, side-takes: on-apply, side-needs-disabled: false, facing: opposite,
             side-leads-to: one-neighbour, software: any, orphans: restart, election: [priority]}
  devices:
    quay-1: {number: 1, priority: 200, ports: {p: {side: west}, q: {side: west}}}
    quay-2: {number: 2, ports: {e: {side: east}}}
    quay-3: {number: 3, power: off, ports: {e: {side: east}}}
  cables: {quay-2/e--quay-1/p: {}, quay-3/e--quay-1/q: {}}
  stack: {primary: quay-1, members: [quay-1, quay-2]}
steps:
  - power-on: quay-3
properties: [no-split]
)";

inline Model model_of(const std::string& text) {
  const MemoryFiles files({{"quay.yaml", text}});
  auto model = load_procedure("quay.yaml", files);
  if (!model) FAIL(render_diagnostics(model.problems()));
  return std::move(model).value();
}

inline Model quay(const std::string& rest, const QuayRules& rules = {}) {
  return model_of(quay_text(rest, rules));
}

inline Report proved(const Model& model, const ProveOptions& options = {}) {
  auto report = prove(model, options);
  if (!report) FAIL(render_diagnostics(report.problems()));
  return std::move(report).value();
}

inline ProveOptions asking(Property property) {
  ProveOptions options;
  options.properties = {{property, 0}};
  return options;
}

/// The walk that refutes `property`, which must be refuted.
inline Walk refuted(const Model& model, Property property, FaultBudget faults = {}, std::int64_t k = 0) {
  ProveOptions options;
  options.properties = {{property, k}};
  options.cable_breaks = faults.cable_breaks;
  options.crashes = faults.crashes;
  options.omissions = faults.omissions;
  options.late_starts = faults.late_starts;
  const Report report = proved(model, options);
  REQUIRE(report.properties.front().verdict == Verdict::refuted);
  auto walked = replay(model, report.faults, report.properties.front().asked, report.properties.front().events);
  REQUIRE(std::holds_alternative<Walk>(walked));
  return std::get<Walk>(std::move(walked));
}

}  // namespace cairn::test
