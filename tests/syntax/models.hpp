/// \file
/// Models in memory: a platform and a site that are right, and procedures of a few lines.
#pragma once

#include <map>
#include <string>

#include <doctest/doctest.h>

#include "cairn/files.hpp"
#include "cairn/load.hpp"

namespace cairn::test {

inline const std::string harbour =
    "platform: Harbour family\n"
    "numbers: [1, 9]\n"
    "priorities: [1, 15]\n"
    "factory: {number: 1, priority: 7, enabled: true, side: none}\n"
    "number-takes: at-once\n"
    "priority-takes: at-restart\n"
    "settings-follow: device\n"
    "side-takes: at-once\n"
    "side-needs-disabled: false\n"
    "facing: any\n"
    "side-leads-to: one-neighbour\n"
    "software: any\n"
    "orphans: restart\n"
    "election: [tenure, priority, number]\n";

inline const std::string yard =
    "site: Quayside terminal, yard\n"
    "platform: harbour.yaml\n"
    "devices:\n"
    "  yard-1: {number: 4, ports: {t1: {side: west}, t2: {side: east}}}\n"
    "  yard-2: {number: 7, ports: {t1: {side: west}, t2: {}}}\n"
    "  yard-3: {power: off, ports: {t1: {}, t2: {}}}\n"
    "cables:\n"
    "  yard-1/t2--yard-2/t1: {}\n"
    "  yard-2/t2--yard-3/t1: {plugged: false, id: splice}\n"
    "stack: {primary: yard-1, members: [yard-1, yard-2]}\n";

inline const std::string title = "procedure: Append\nsite: yard.yaml\n";
/// For procedures without a goal.
inline const std::string asks = "properties: [no-split]\n";

/// `text` with the first `from` in it replaced. Demands that there is one.
inline std::string with(std::string text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  REQUIRE_MESSAGE(at != std::string::npos, from);
  return text.replace(at, from.size(), to);
}

/// Loads `procedure` beside the harbour platform and the yard, or others in their place.
inline Result<Model> load(const std::string& procedure, const std::string& site = yard,
                          const std::string& platform = harbour) {
  return load_procedure("p.yaml",
                        MemoryFiles({{"p.yaml", procedure}, {"yard.yaml", site}, {"harbour.yaml", platform}}));
}

/// "FILE:LINE:COLUMN MESSAGE (NEAREST)" of every problem, one a line; empty when there is none.
template <class T>
std::string told(const Result<T>& result) {
  std::string out;
  if (result) return out;
  for (const auto& p : result.problems()) {
    out += out.empty() ? "" : "\n";
    out += p.span.file + ':' + std::to_string(p.span.line) + ':' + std::to_string(p.span.column) + ' ' + p.message;
    if (!p.nearest.empty()) out += " (" + p.nearest + ')';
  }
  return out;
}

/// The problems of a procedure that consists of `rest` after its title.
inline std::string problems(const std::string& rest) {
  return told(load(title + asks + rest));
}

/// The model of a procedure that consists of `rest` after its title. Demands that it has no problem.
inline Model model(const std::string& rest, const std::string& site = yard, const std::string& platform = harbour) {
  const auto result = load(title + (rest.find("properties:") == std::string::npos ? asks : "") + rest, site, platform);
  REQUIRE_MESSAGE(result.ok(), told(result));
  return result.value();
}

}  // namespace cairn::test
