#include "report/settled.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>
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

std::string_view evaluated_again(const Settled& settled) {
  if (settled.unclear) return "; evaluated again with the formulas, which could not tell of all of them";
  if (!settled.confirmed) return "; not evaluated again with the formulas";
  if (!settled.reduced) return ", and evaluated again with the formulas";
  return "; evaluated again with the formulas, each for all that differ from it in what is never asked";
}

std::string way_of(const PropertyVerdict& p) {
  const Settled& settled = p.settled;
  switch (settled.by) {
    case Settled::By::refutation:
      return "the events were replayed, and satisfy the constraints";
    case Settled::By::facts:
      return fmt::format("proved by Z3 {}{}{}",
                         settled.facts.empty() ? "without any fact" : "from " + counted(settled.facts.size(), "fact"),
                         settled.any_number ? ", for any number of these faults" : "",
                         settled.confirmed && settled.reduced
                             ? "; every state visited, but for those that make no difference, agrees"
                         : settled.confirmed ? "; every state visited agrees"
                         : p.explored == 0   ? "; no state was visited"
                                             : "; not every state was visited");
    case Settled::By::states:
      if (settled.every_instance) return "every state of every instance visited; not evaluated again with the formulas";
      return fmt::format("every state visited{}{}", settled.reduced ? ", but for those that make no difference" : "",
                         evaluated_again(settled));
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
    std::string words = way_of(p);
    if (!p.settled.not_by_facts.empty()) words += "; not by facts: " + p.settled.not_by_facts;
    if (!p.settled.not_compared.empty()) words += "; not compared: " + p.settled.not_compared;
    const auto same = std::find_if(ways.begin(), ways.end(),
                                   [&](const Way& way) { return way.words == words && way.facts == p.settled.facts; });
    Way& way = same == ways.end() ? ways.emplace_back(Way{words, p.settled.facts, {}}) : *same;
    way.names.push_back(name_with_k(p.asked));
  }
  if (!ways.empty()) page.gap();
  const char* label = "Settled";
  for (const Way& way : ways) {
    page.entry(2, label, 16, fmt::format("{}: {}.", listed(way.names), way.words), Tone::faint);
    label = "";
  }
}

namespace {

/// Facts of several proofs, each once, and numbers of them.
class Facts {
 public:
  /// From 1 on.
  std::size_t number_of(const std::string& line) {
    const auto known = std::ranges::find(lines_, line);
    if (known == lines_.end()) {
      lines_.push_back(line);
      return lines_.size();
    }
    return static_cast<std::size_t>(known - lines_.begin()) + 1;
  }

  [[nodiscard]] const std::vector<std::string>& lines() const { return lines_; }

 private:
  std::vector<std::string> lines_;
};

/// "1 to 4, 7": three or more in a row by the first and the last. Sorts them.
std::string numbers_in_words(std::vector<std::size_t>& numbers) {
  std::ranges::sort(numbers);
  std::vector<std::string> runs;
  for (std::size_t i = 0; i < numbers.size();) {
    std::size_t end = i + 1;
    while (end < numbers.size() && numbers[end] == numbers[end - 1] + 1) ++end;
    if (end - i > 2) {
      runs.push_back(fmt::format("{} to {}", numbers[i], numbers[end - 1]));
    } else {
      for (std::size_t j = i; j < end; ++j) runs.push_back(std::to_string(numbers[j]));
    }
    i = end;
  }
  return fmt::format("{}", fmt::join(runs, ", "));
}

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
  Facts facts;
  std::vector<std::pair<std::string, std::vector<std::string>>> proofs;  // which facts, of which properties
  bool all_known = true;
  for (std::size_t i = 0; i < why.properties.size(); ++i) {
    const PropertyVerdict& p = why.report.properties[i];
    if (p.verdict != Verdict::proved || p.settled.facts.empty()) continue;
    const bool known = !why.properties[i].facts.empty();
    all_known = all_known && known;
    std::vector<std::size_t> numbers;
    for (std::size_t f = 0; f < p.settled.facts.size(); ++f) {
      const std::vector<Part> parts = known ? why.properties[i].facts[f] : std::vector<Part>{};
      numbers.push_back(facts.number_of(line_of(model, p.settled.facts[f], parts)));
    }
    const std::string which = numbers_in_words(numbers);
    const auto same = std::ranges::find(proofs, which, [](const auto& proof) { return proof.first; });
    auto& names = same == proofs.end() ? proofs.emplace_back(which, std::vector<std::string>{}).second : same->second;
    names.push_back(name_with_k(p.asked));
  }
  if (proofs.empty()) return;
  page.heading("The facts that the proofs stand on");
  page.line();
  for (std::size_t i = 0; i < facts.lines().size(); ++i) page.entry(2, std::to_string(i + 1), 4, facts.lines()[i]);
  page.line();
  for (const auto& [which, names] : proofs) page.paragraph(2, fmt::format("{}: {}.", listed(names), which));
  page.line();
  page.paragraph(
      2,
      fmt::format("Those of a proof all hold at first, and no event ends one of them while all of them hold, "
                  "which Z3 has shown with the state left free. {}",
                  all_known ? "In brackets: the parts of the procedure that a fact speaks of, or needs "
                              "beside the other facts."
                            : "A limit was met before it was known which parts of the procedure they need."),
      Tone::faint);
}

}  // namespace cairn::report
