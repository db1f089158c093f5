#include "report/settled.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>
#include <vector>

#include "base/text.hpp"
#include "report/parts.hpp"
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

namespace {

/// What a proof says, in lines, and of which properties.
struct Proof {
  std::vector<std::string> lines;
  std::vector<std::string> names;
};

// "once s5 is done, yard-3 has number 3 (s3, s4 before s5)."
std::string line_of(const Model& model, const std::string& fact, const std::vector<Part>& parts) {
  if (parts.empty()) return fact + ".";
  return fmt::format("{} ({}).", fact, fmt::join(names_in(model, parts), ", "));
}

}  // namespace

void tell_facts(Page& page, const Model& model, const Why& why) {
  std::vector<Proof> proofs;
  for (std::size_t i = 0; i < why.properties.size(); ++i) {
    const PropertyVerdict& p = why.report.properties[i];
    if (p.verdict != Verdict::proved || p.settled.facts.empty()) continue;
    Proof proof;
    for (std::size_t f = 0; f < p.settled.facts.size(); ++f) {
      const bool known = f < why.properties[i].facts.size();
      proof.lines.push_back(
          line_of(model, p.settled.facts[f], known ? why.properties[i].facts[f] : std::vector<Part>{}));
    }
    const auto same =
        std::find_if(proofs.begin(), proofs.end(), [&](const Proof& other) { return other.lines == proof.lines; });
    Proof& told = same == proofs.end() ? proofs.emplace_back(std::move(proof)) : *same;
    told.names.push_back(name_with_k(p.asked));
  }
  if (proofs.empty()) return;
  page.heading("The facts that the proofs stand on");
  for (const Proof& proof : proofs) {
    page.line();
    page.paragraph(2, listed(proof.names) + ":");
    for (const std::string& line : proof.lines) page.entry(4, "-", 2, line);
  }
  page.line();
  page.paragraph(2,
                 "Each holds at first and is kept by every event, which Z3 has shown with the state left free. In "
                 "brackets: what of the procedure makes it so.",
                 Tone::faint);
}

}  // namespace cairn::report
