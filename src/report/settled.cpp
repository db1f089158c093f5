#include "report/settled.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>
#include <vector>

#include "base/text.hpp"
#include "report/refutation.hpp"
#include "report/words.hpp"

namespace cairn::report {

namespace {

std::string way_of(const PropertyVerdict& p) {
  const Settled& settled = p.settled;
  switch (settled.by) {
    case Settled::By::refutation:
      return "the events were replayed, and satisfy the constraints";
    case Settled::By::facts:
      return fmt::format("proved by Z3 {}{}{}",
                         settled.facts.empty() ? "without any fact" : "from " + counted(settled.facts.size(), "fact"),
                         settled.any_number ? ", for any number of these faults" : "",
                         settled.confirmed ? "; every state visited agrees" : "; not every state was visited");
    case Settled::By::states:
      return fmt::format("every state visited{}", settled.confirmed ? ", and evaluated again with the formulas"
                                                                    : "; not evaluated again with the formulas");
    case Settled::By::unrolling:
      return fmt::format("by constraints on runs of up to {}, which no run exceeds", counted(settled.length, "event"));
  }
  return {};
}

}  // namespace

void tell_settled(Page& page, const Report& report) {
  std::vector<std::pair<std::string, std::vector<std::string>>> ways;
  for (const PropertyVerdict& p : report.properties) {
    if (p.verdict == Verdict::undecided) continue;
    const std::string way = way_of(p);
    const auto same = std::find_if(ways.begin(), ways.end(), [&](const auto& known) { return known.first == way; });
    if (same == ways.end()) {
      ways.push_back({way, {name_with_k(p.asked)}});
    } else {
      same->second.push_back(name_with_k(p.asked));
    }
  }
  if (!ways.empty()) page.line();
  const char* label = "Settled";
  for (const auto& [way, names] : ways) {
    page.entry(2, label, 16, fmt::format("{}: {}.", listed(names), way), Tone::faint);
    label = "";
  }
}

void tell_facts(Page& page, const Report& report) {
  std::vector<std::pair<std::vector<std::string>, std::vector<std::string>>> proofs;
  for (const PropertyVerdict& p : report.properties) {
    if (p.verdict != Verdict::proved || p.settled.facts.empty()) continue;
    const auto same =
        std::find_if(proofs.begin(), proofs.end(), [&](const auto& proof) { return proof.first == p.settled.facts; });
    if (same == proofs.end()) {
      proofs.push_back({p.settled.facts, {name_with_k(p.asked)}});
    } else {
      same->second.push_back(name_with_k(p.asked));
    }
  }
  if (proofs.empty()) return;
  page.heading("The facts that the proofs stand on");
  for (const auto& [facts, names] : proofs) {
    page.line();
    page.paragraph(2, listed(names) + ":");
    for (const std::string& fact : facts) page.entry(4, "-", 2, fact + ".");
  }
  page.line();
  page.paragraph(2, "Each holds at first and is kept by every event, which Z3 has shown with the state left free.",
                 Tone::faint);
}

}  // namespace cairn::report
