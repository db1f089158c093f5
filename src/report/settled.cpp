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

/// How some properties were settled: in the same words, and by the same facts.
struct Way {
  std::string words;
  std::vector<std::string> facts;
  std::vector<std::string> names;
};

std::string way_of(const PropertyVerdict& p) {
  const Settled& settled = p.settled;
  switch (settled.by) {
    case Settled::By::refutation:
      return "the events were replayed, and satisfy the constraints";
    case Settled::By::facts:
      return fmt::format("proved by Z3 {}{}{}",
                         settled.facts.empty() ? "without any fact" : "from " + counted(settled.facts.size(), "fact"),
                         settled.any_number ? ", for any number of these faults" : "",
                         settled.confirmed ? "; every state visited agrees"
                         : p.explored == 0 ? "; no state was visited"
                                           : "; not every state was visited");
    case Settled::By::states:
      return fmt::format("every state visited{}", settled.confirmed ? ", and evaluated again with the formulas"
                                                                    : "; not evaluated again with the formulas");
    case Settled::By::unrolling:
      return fmt::format("by constraints on runs of up to {}, which no run exceeds{}", counted(settled.length, "event"),
                         settled.confirmed ? "; every state visited agrees" : "");
  }
  return {};
}

}  // namespace

void tell_settled(Page& page, const Report& report) {
  std::vector<Way> ways;
  for (const PropertyVerdict& p : report.properties) {
    if (p.verdict == Verdict::undecided) continue;
    const std::string words = way_of(p);
    const auto same = std::find_if(ways.begin(), ways.end(),
                                   [&](const Way& way) { return way.words == words && way.facts == p.settled.facts; });
    Way& way = same == ways.end() ? ways.emplace_back(Way{words, p.settled.facts, {}}) : *same;
    way.names.push_back(name_with_k(p.asked));
  }
  if (!ways.empty()) page.line();
  const char* label = "Settled";
  for (const Way& way : ways) {
    page.entry(2, label, 16, fmt::format("{}: {}.", listed(way.names), way.words), Tone::faint);
    label = "";
  }
}

namespace {

/// What a proof says, in lines, and of which properties.
struct Proof {
  std::vector<std::string> lines;
  std::vector<std::string> names;
  bool parts_known = true;
};

// "once s5 is done, yard-3 has number 3 (s3; s4 before s5)."
std::string line_of(const Model& model, const std::string& fact, const std::vector<Part>& parts) {
  if (parts.empty()) return fact + ".";
  std::vector<std::string> steps;
  std::vector<std::string> orderings;
  for (const Part& part : parts) {
    (part.kind == Part::Kind::ordering ? orderings : steps).push_back(name_in(model, part));
  }
  return fmt::format("{} ({}{}{}).", fact, fmt::join(steps, ", "), steps.empty() || orderings.empty() ? "" : "; ",
                     fmt::join(orderings, ", "));
}

}  // namespace

void tell_facts(Page& page, const Model& model, const Why& why) {
  std::vector<Proof> proofs;
  for (std::size_t i = 0; i < why.properties.size(); ++i) {
    const PropertyVerdict& p = why.report.properties[i];
    if (p.verdict != Verdict::proved || p.settled.facts.empty()) continue;
    Proof proof;
    proof.parts_known = !why.properties[i].facts.empty();
    for (std::size_t f = 0; f < p.settled.facts.size(); ++f) {
      proof.lines.push_back(
          line_of(model, p.settled.facts[f], proof.parts_known ? why.properties[i].facts[f] : std::vector<Part>{}));
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
  const bool all_known =
      std::all_of(proofs.begin(), proofs.end(), [](const Proof& proof) { return proof.parts_known; });
  page.paragraph(2,
                 fmt::format("All hold at first, and no event ends one of them while all hold, which Z3 has shown with "
                             "the state left free. {}",
                             all_known ? "In brackets: the parts of the procedure that a fact speaks of, or needs "
                                         "beside the other facts."
                                       : "A limit was met before it was known which parts of the procedure they need."),
                 Tone::faint);
}

}  // namespace cairn::report
