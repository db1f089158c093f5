// What becomes of the verdicts without each protection, for a person: the idle ones first, then what the others are
// for, and in the end the count.
#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "base/text.hpp"
#include "cairn/drop_one.hpp"
#include "cairn/render.hpp"
#include "report/findings.hpp"
#include "report/layout.hpp"
#include "report/narrate.hpp"
#include "report/outcomes.hpp"
#include "report/parts.hpp"
#include "report/refutation.hpp"
#include "report/rests_on.hpp"
#include "report/settled.hpp"
#include "report/words.hpp"

namespace cairn {

namespace {

using report::kind_of;
using report::listed;
using report::name_in;
using report::Page;
using report::Tone;

constexpr std::size_t label_width = 15;

// "line 14", "lines 14 and 15"; nothing where the model was not read from a file.
std::string place_of(const Model& model, const Part& part) {
  std::vector<std::string> lines;
  for (const int line : report::lines_of(model, part)) lines.push_back(std::to_string(line));
  return lines.empty() ? "" : fmt::format("{} {}", lines.size() == 1 ? "line" : "lines", listed(lines));
}

// "line 14: wait for up(yard-3)", "lines 13 and 14: switch on yard-3, and then wait for up(yard-3)"
std::string what_it_says(const Model& model, const Part& part) {
  const std::string place = place_of(model, part);
  const std::string step = report::what_to_do(model, model[part.step]);
  return fmt::format("{}{}{}", place, place.empty() ? "" : ": ",
                     part.before ? report::what_to_do(model, model[part.before]) + ", and then " + step : step);
}

std::vector<std::string> names_of(const Report& report, Verdict verdict) {
  std::vector<std::string> names;
  for (const PropertyVerdict& p : report.properties) {
    if (p.verdict == verdict) names.push_back(report::name_with_k(p.asked));
  }
  return names;
}

std::string are(const std::vector<std::string>& names) {
  return listed(names) + (names.size() == 1 ? " is" : " are");
}

class Teller {
 public:
  Teller(Page& page, const Model& model, const DropOne& answer)
      : page_(page),
        model_(model),
        answer_(answer),
        proved_(names_of(answer.report, Verdict::proved)),
        refuted_(names_of(answer.report, Verdict::refuted)),
        open_(names_of(answer.report, Verdict::undecided)) {
    for (const PropertyVerdict& p : answer.report.properties) {
      if (!p.vacuous.empty()) of_nothing_.push_back(report::name_with_k(p.asked));
    }
    for (const Dropped& dropped : answer.dropped) {
      switch (dropped.standing()) {
        case Standing::needed:
        case Standing::vacuous:
          protecting_.push_back(&dropped);
          break;
        case Standing::unknown:
          undecided_.push_back(&dropped);
          break;
        case Standing::used:
        case Standing::idle:
          idle_.push_back(&dropped);
          break;
      }
    }
    // What can be taken out of the file by its line, before what cannot.
    std::stable_partition(idle_.begin(), idle_.end(),
                          [](const Dropped* d) { return d->part.kind != Part::Kind::ordering; });
  }

  void tell() {
    page_.heading("Left out one at a time: every await, check, save and ordering");
    page_.line();
    tell_what_was_asked();
    tell_idle();
    tell_protecting();
    tell_undecided();
    tell_summary();
  }

 private:
  using Some = std::vector<const Dropped*>;

  void tell_what_was_asked() {
    if (proved_.empty()) {
      page_.paragraph(2, "Nothing was: no property is proved here, so there is none that a part could protect.");
    } else if (answer_.dropped.empty()) {
      page_.paragraph(2, "The procedure has none of them.");
    } else {
      const bool all = proved_.size() == answer_.report.properties.size();
      page_.paragraph(2, fmt::format("Each time {} asked again. Of an ordering that is left out either step may come "
                                     "first.{}",
                                     all ? "all of the above is" : are(proved_), where_lines_are()));
    }
    if (!of_nothing_.empty()) {
      page_.paragraph(2, fmt::format("{} proved of nothing with every part in its place. What seems to protect it may "
                                     "but keep runs from getting that far.",
                                     are(of_nothing_)));
    }
    if (!refuted_.empty()) {
      page_.paragraph(2,
                      fmt::format("{} refuted with every part in its place, and {} not asked again. Mend that first: "
                                  "`cairn why` without --drop-one tells how.",
                                  are(refuted_), refuted_.size() == 1 ? "was" : "were"));
    }
    if (!open_.empty()) {
      page_.paragraph(2, fmt::format("{} undecided with every part in its place, and {} not asked again.", are(open_),
                                     open_.size() == 1 ? "was" : "were"));
    }
  }

  [[nodiscard]] std::string where_lines_are() const {
    if (model_.files.empty()) return {};
    const std::string& file = model_.files.front();
    return fmt::format(" Lines are those of {}.", file == "-" ? "standard input" : file);
  }

  void tell_idle() {
    if (idle_.empty()) return;
    page_.heading("Idle: without any one of these, all that was asked again is still proved");
    page_.line();
    std::size_t longest = 0;
    for (const Dropped* dropped : idle_) longest = std::max(longest, name_in(model_, dropped->part).size());
    for (const Dropped* dropped : idle_) {
      page_.entry(2, name_in(model_, dropped->part), std::min(longest, std::size_t{24}) + 2,
                  what_it_says(model_, dropped->part), Tone::heading);
    }
  }

  void tell_protecting() {
    if (protecting_.empty()) return;
    page_.heading("Protecting: without any one of these, something is lost");
    page_.line();
    for (const Dropped* dropped : protecting_) {
      const std::string name = name_in(model_, dropped->part);
      page_.entry(2, name, name.size() + 2, what_it_says(model_, dropped->part), Tone::heading, Tone::heading);
      tell_outcomes(*dropped);
    }
  }

  void tell_outcomes(const Dropped& dropped) {
    std::vector<PropertyVerdict> lost;
    for (const LeftOut& proof : dropped.proofs) {
      if (proof.standing != Standing::idle) lost.push_back(proof.outcome);
    }
    const Model variant = without(model_, {dropped.part});
    for (const auto& text : report::outcomes_in_words(variant, answer_.report.faults, lost, report::Telling::run)) {
      page_.paragraph(6, text);
    }
  }

  void tell_undecided() {
    if (undecided_.empty()) return;
    page_.heading("Undecided: whether something is lost without these is not known");
    page_.line();
    // A limit that was met is met again: what is undecided alike is told together.
    std::vector<std::pair<std::string, std::vector<std::string>>> by_reason;
    for (const Dropped* dropped : undecided_) {
      std::vector<PropertyVerdict> open;
      for (const LeftOut& proof : dropped->proofs) {
        if (proof.standing == Standing::unknown) open.push_back(proof.outcome);
      }
      const auto texts = report::outcomes_in_words(without(model_, {dropped->part}), answer_.report.faults, open);
      const std::string reason = fmt::format("{}", fmt::join(texts, " "));
      const auto same = std::ranges::find(by_reason, reason, [](const auto& known) { return known.first; });
      auto& names =
          same == by_reason.end() ? by_reason.emplace_back(reason, std::vector<std::string>{}).second : same->second;
      names.push_back(name_in(model_, dropped->part));
    }
    for (const auto& [reason, names] : by_reason) {
      page_.paragraph(2, fmt::format("{}", fmt::join(names, ", ")), Tone::heading);
      page_.paragraph(6, reason);
    }
  }

  void tell_summary() {
    page_.heading(answer_.dropped.empty() ? "Mind also" : "In short");
    page_.line();
    if (!answer_.dropped.empty()) {
      say("Left out", counts() + ".");
      say_which("Idle", idle_);
      say("Protecting", fmt::format("{}.", protecting_.size()));
      say_which("Undecided", undecided_);
    }
    const char* label = "Findings";
    for (const std::string& sentence : report::findings_in_words(model_, answer_.report)) {
      say(label, sentence);
      label = "";
    }
    report::tell_ties(page_, model_, answer_.report);
    if (!idle_.empty()) tell_what_idle_is_not();
    report::tell_caution(page_);
  }

  void say(std::string_view label, std::string_view text) { page_.entry(2, label, label_width, text); }

  // "3: s6 (line 17), s1 before s2 (lines 12 and 13)."
  void say_which(std::string_view label, const Some& some) {
    if (some.empty()) {
      if (&some == &idle_) say(label, undecided_.empty() ? "None." : "None known.");
      return;
    }
    std::vector<std::string> names;
    for (const Dropped* dropped : some) {
      const std::string place = place_of(model_, dropped->part);
      names.push_back(name_in(model_, dropped->part) + (place.empty() ? "" : fmt::format(" ({})", place)));
    }
    say(label, fmt::format("{}: {}.", some.size(), listed(names)));
  }

  // "10 parts: 2 awaits, 1 save and 7 orderings"
  [[nodiscard]] std::string counts() const {
    std::vector<std::string> kinds;
    for (const std::string_view kind : {"await", "check", "save", "ordering"}) {
      const auto n = std::count_if(answer_.dropped.begin(), answer_.dropped.end(),
                                   [&](const Dropped& dropped) { return kind_of(model_, dropped.part) == kind; });
      if (n > 0) kinds.push_back(counted(static_cast<std::size_t>(n), kind));
    }
    return fmt::format("{}: {}", counted(answer_.dropped.size(), "part"), listed(kinds));
  }

  void tell_what_idle_is_not() {
    say("Idle alone",
        "Each idle part may go by itself, not all of them together: two may stand in for each other. After taking one "
        "out, ask again. `cairn why` without --drop-one tells of which awaits one has to stay.");
    std::vector<std::string> not_asked = refuted_;
    not_asked.insert(not_asked.end(), open_.begin(), open_.end());
    say("Idle here",
        fmt::format(
            "Idle means that nothing asked again breaks, under the faults allowed here ({}).{} A part may still "
            "protect against other faults, or a property that was not asked: try it with them before taking it "
            "out.",
            report::faults_in_words(answer_.report.faults),
            not_asked.empty() ? "" : fmt::format(" It says nothing of {}.", listed(not_asked))));
  }

  Page& page_;
  const Model& model_;
  const DropOne& answer_;
  std::vector<std::string> proved_;  ///< in the procedure itself, as the next three
  std::vector<std::string> of_nothing_;
  std::vector<std::string> refuted_;
  std::vector<std::string> open_;
  Some idle_;
  Some protecting_;
  Some undecided_;
};

}  // namespace

std::string render_drop_one_text(const Model& model, const DropOne& answer, const TextStyle& style) {
  std::string verdicts = render_text(model, answer.report, {style.colour, false, true});
  if (answer.report.contradicted()) return verdicts;
  Page page(style);
  report::tell_settled(page, answer.report);
  Teller(page, model, answer).tell();
  return verdicts + "\n" + page.take();
}

}  // namespace cairn
