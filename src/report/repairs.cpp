#include "report/repairs.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "base/text.hpp"
#include "report/narrate.hpp"
#include "report/refutation.hpp"
#include "report/words.hpp"

namespace cairn::report {

namespace {

// As many are told of one step, or of one kind; the JSON has them all.
constexpr std::size_t most_shown = 4;

std::string new_place(const Model& model, const Change& change) {
  return fmt::format("{} {}", change.behind ? "behind" : "before", model[change.anchor].id);
}

/// All changes of one step that prove everything.
struct StepChanges {
  StepId step;
  std::vector<std::string> values;
  std::vector<std::string> places;
  bool without = false;
};

std::vector<StepChanges> by_step(const Model& model, const std::vector<const Repair*>& repairs) {
  std::vector<StepChanges> steps;
  for (const Repair* repair : repairs) {
    const Change& change = repair->changes.front();
    if (steps.empty() || steps.back().step != change.step) steps.push_back({change.step, {}, {}, false});
    switch (change.kind) {
      case Change::Kind::value:
        steps.back().values.push_back(std::to_string(change.value));
        break;
      case Change::Kind::move:
        steps.back().places.push_back(new_place(model, change));
        break;
      case Change::Kind::remove:
        steps.back().without = true;
        break;
    }
  }
  return steps;
}

std::string briefly_or(std::vector<std::string> items) {
  if (items.size() > most_shown + 1) {
    const std::size_t others = items.size() - most_shown;
    items.resize(most_shown);
    items.push_back(fmt::format("{} others", others));
  }
  return listed(items, "or");
}

std::string in_words(const StepChanges& changes) {
  std::vector<std::string> ways;
  if (!changes.values.empty()) ways.push_back("set it to " + briefly_or(changes.values));
  if (!changes.places.empty()) ways.push_back("move it " + briefly_or(changes.places));
  if (changes.without) ways.emplace_back("leave it out");
  return capitalised(fmt::format("{}.", fmt::join(ways, "; ")));
}

/// What changes do to properties that they do not all prove.
std::string effect_in_words(const Report& before, const Repair& repair) {
  std::vector<std::string> proved;
  std::vector<std::string> still;
  std::vector<std::string> lost;
  std::vector<std::string> open;
  for (std::size_t i = 0; i < repair.verdicts.size(); ++i) {
    const PropertyVerdict& now = repair.verdicts[i];
    const Verdict was = before.properties[i].verdict;
    const std::string name = name_with_k(now.asked);
    if (now.verdict == Verdict::undecided) {
      open.push_back(name);
    } else if (now.verdict == Verdict::refuted) {
      (was == Verdict::refuted ? still : lost).push_back(name);
    } else if (!now.vacuous.empty() && before.properties[i].vacuous.empty()) {
      lost.push_back(name + " (holds of nothing)");
    } else if (was == Verdict::refuted) {
      proved.push_back(name);
    }
  }
  std::string text = fmt::format("{} {} proved", listed(proved), proved.size() == 1 ? "is" : "are");
  if (!still.empty()) text += fmt::format("; {} not", listed(still));
  if (!lost.empty()) text += fmt::format("; lost: {}", listed(lost));
  if (!open.empty()) text += fmt::format("; undecided: {}", listed(open));
  return text + ".";
}

std::size_t not_proved(const Repair& repair) {
  return static_cast<std::size_t>(
      std::count_if(repair.verdicts.begin(), repair.verdicts.end(),
                    [](const PropertyVerdict& p) { return p.verdict != Verdict::proved || !p.vacuous.empty(); }));
}

class Teller {
 public:
  Teller(Page& page, const Model& model, const Why& why) : page_(page), model_(model), why_(why) {
    for (const Repair& repair : why.repairs.found) {
      (!repair.all_proved ? partial_ : repair.changes.size() == 1 ? alone_ : pairs_).push_back(&repair);
    }
  }

  void tell() {
    page_.heading("How to avoid what is refuted");
    page_.line();
    if (!alone_.empty()) {
      page_.paragraph(2, fmt::format("Everything asked is proved with {}:", one_of(alone_.size())));
      tell_alone();
    } else if (!pairs_.empty()) {
      page_.paragraph(2, fmt::format("No change of one step proves everything asked. {}:",
                                     pairs_.size() == 1 ? "These two together do" : "Each of these pairs does"));
      tell_pairs();
    } else {
      page_.paragraph(2, none_proves_all());
      tell_partial();
    }
    tell_effort();
  }

 private:
  static std::string one_of(std::size_t count) { return count == 1 ? "this change" : "any one of these changes"; }

  void tell_alone() {
    for (const StepChanges& changes : by_step(model_, alone_)) {
      const Step& step = model_[changes.step];
      page_.entry(4, step.id, std::max<std::size_t>(4, step.id.size() + 2), what_to_do(model_, step), Tone::heading);
      page_.paragraph(8, in_words(changes));
    }
  }

  void tell_pairs() {
    for (std::size_t i = 0; i < std::min(pairs_.size(), most_shown); ++i) {
      page_.entry(4, "-", 2, capitalised(changes_in_words(model_, pairs_[i]->changes)) + ".");
    }
    if (pairs_.size() > most_shown) page_.paragraph(6, fmt::format("And {} more.", pairs_.size() - most_shown));
  }

  // Those first that leave least, and of each step the first.
  void tell_partial() {
    std::vector<const Repair*> best = partial_;
    std::stable_sort(best.begin(), best.end(),
                     [](const Repair* a, const Repair* b) { return not_proved(*a) < not_proved(*b); });
    if (best.empty()) return;
    page_.paragraph(2, fmt::format("{} prove{} a part of it, at a price:", capitalised(counted(best.size(), "change")),
                                   best.size() == 1 ? "s" : ""));
    std::set<StepId> told;
    std::erase_if(best, [&](const Repair* repair) { return !told.insert(repair->changes.front().step).second; });
    for (std::size_t i = 0; i < std::min(best.size(), most_shown); ++i) {
      page_.entry(4, "-", 2,
                  fmt::format("{}: {}", capitalised(changes_in_words(model_, best[i]->changes)),
                              effect_in_words(why_.report, *best[i])));
    }
    if (partial_.size() > std::min(best.size(), most_shown)) {
      page_.paragraph(6, "The others leave as much to prove, or more.");
    }
  }

  [[nodiscard]] std::string none_proves_all() const {
    if (why_.repairs.tried == 0 && why_.repairs.all_tried) {
      return "No change of one step's place, presence or number avoids any of the refutations.";
    }
    return fmt::format(
        "{}o change of one step's place, presence or number proves everything asked, nor do two of them. Perhaps "
        "something is missing; `cairn prove` may tell a way out.",
        why_.repairs.all_tried ? "N" : "So far as was tried, n");
  }

  void tell_effort() {
    if (why_.repairs.tried == 0) return;
    page_.paragraph(2,
                    fmt::format("{} put to the proof{}. Each is about the model alone: see that it is what you want.",
                                capitalised(counted(why_.repairs.tried, "changed procedure") +
                                            (why_.repairs.tried == 1 ? " was" : " were")),
                                why_.repairs.all_tried ? "" : ", not all that there are"),
                    Tone::faint);
  }

  Page& page_;
  const Model& model_;
  const Why& why_;
  std::vector<const Repair*> alone_;
  std::vector<const Repair*> pairs_;
  std::vector<const Repair*> partial_;
};

}  // namespace

std::string changes_in_words(const Model& model, const std::vector<Change>& changes) {
  std::vector<std::string> words;
  words.reserve(changes.size());
  for (const Change& change : changes) {
    const std::string& id = model[change.step].id;
    switch (change.kind) {
      case Change::Kind::value:
        words.push_back(fmt::format("set {} to {}", id, change.value));
        break;
      case Change::Kind::move:
        words.push_back(fmt::format("move {} {}", id, new_place(model, change)));
        break;
      case Change::Kind::remove:
        words.push_back(fmt::format("leave out {}", id));
        break;
    }
  }
  return listed(words);
}

void tell_repairs(Page& page, const Model& model, const Why& why) {
  if (why.report.verdict() == Verdict::refuted) Teller(page, model, why).tell();
}

}  // namespace cairn::report
