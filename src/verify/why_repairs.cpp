#include "verify/why_repairs.hpp"

#include <algorithm>

#include "verify/why_changes.hpp"
#include "verify/why_follow.hpp"

namespace cairn::verify {

namespace {

std::vector<PropertyVerdict> refuted_ones(const std::vector<PropertyVerdict>& verdicts) {
  std::vector<PropertyVerdict> refuted;
  std::copy_if(verdicts.begin(), verdicts.end(), std::back_inserter(refuted),
               [](const PropertyVerdict& p) { return p.verdict == Verdict::refuted; });
  return refuted;
}

class Search {
 public:
  Search(const Model& model, const Report& report, const Trials& trials, const Effort& effort)
      : model_(model), report_(report), trials_(trials), left_(effort), refuted_(refuted_ones(report.properties)) {
    for (const PropertyVerdict& p : report.properties) asked_.push_back(p.asked);
  }

  Repairs run() {
    if (refuted_.empty()) return {};
    const std::vector<Change> changes = changes_of(model_);
    for (const Change& change : changes) {
      if (!avoids_any({change})) continue;
      if (!may_try()) return give_up();
      try_alone(change);
    }
    const auto proves_all = [](const Repair& repair) { return repair.all_proved; };
    if (std::none_of(found_.found.begin(), found_.found.end(), proves_all)) try_pairs(changes);
    return std::move(found_);
  }

 private:
  /// A change that avoids a refutation and leaves, or brings, others.
  struct Beginning {
    Change change;
    std::vector<PropertyVerdict> refuted;  ///< on the model with it
  };

  [[nodiscard]] bool may_try() const { return left_.tries > 0 && left_.states > 0; }

  Repairs give_up() {
    found_.all_tried = false;
    return std::move(found_);
  }

  [[nodiscard]] bool avoids_any(const std::vector<Change>& changes) const {
    return std::any_of(refuted_.begin(), refuted_.end(),
                       [&](const PropertyVerdict& p) { return avoids(model_, changes, report_.faults, p); });
  }

  [[nodiscard]] bool avoids_all(const Model& model, const Change& change,
                                const std::vector<PropertyVerdict>& refuted) const {
    return std::all_of(refuted.begin(), refuted.end(),
                       [&](const PropertyVerdict& p) { return avoids(model, {change}, report_.faults, p); });
  }

  void try_alone(const Change& change) {
    Repair repair = put_to_the_proof({change});
    std::vector<PropertyVerdict> refuted = refuted_ones(repair.verdicts);
    if (!refuted.empty()) beginnings_.push_back({change, std::move(refuted)});
    if (proves_one(repair)) {
      found_.found.push_back(std::move(repair));
    } else {
      ++found_.elsewhere;
    }
  }

  // A property that was refuted is proved, and not of nothing.
  [[nodiscard]] bool proves_one(const Repair& repair) const {
    for (std::size_t i = 0; i < asked_.size(); ++i) {
      const bool was_refuted = report_.properties[i].verdict == Verdict::refuted;
      const PropertyVerdict& now = repair.verdicts[i];
      if (was_refuted && now.verdict == Verdict::proved && now.vacuous.empty()) return true;
    }
    return false;
  }

  // The second change has to avoid all that is refuted after the first. Those that leave least to avoid come first.
  void try_pairs(const std::vector<Change>& changes) {
    std::stable_sort(beginnings_.begin(), beginnings_.end(),
                     [](const Beginning& a, const Beginning& b) { return a.refuted.size() < b.refuted.size(); });
    for (std::size_t i = 0; i < beginnings_.size(); ++i) {
      const Beginning& first = beginnings_[i];
      const Model begun = with_changes(model_, {first.change});
      const std::vector<StepId> places = places_after(model_, {first.change});
      for (const Change& second : changes) {
        if (second.step == first.change.step || began_before(second, i)) continue;
        if (left_.follows == 0 || !may_try()) {
          found_.all_tried = false;
          return;
        }
        --left_.follows;
        const auto moved = in_places(second, places);
        if (!moved || !avoids_all(begun, *moved, first.refuted)) continue;
        Repair repair = put_to_the_proof({first.change, second});
        if (repair.all_proved) found_.found.push_back(std::move(repair));
      }
    }
  }

  // Then the pair has been tried the other way round.
  [[nodiscard]] bool began_before(const Change& change, std::size_t end) const {
    return std::any_of(beginnings_.begin(), beginnings_.begin() + static_cast<std::ptrdiff_t>(end),
                       [&](const Beginning& earlier) { return earlier.change == change; });
  }

  // The change as it reads where another has been made; nothing where its anchor is gone.
  static std::optional<Change> in_places(Change change, const std::vector<StepId>& places) {
    change.step = places[change.step.value];
    if (!change.anchor) return change;
    change.anchor = places[change.anchor.value];
    return change.anchor ? std::optional(change) : std::nullopt;
  }

  Repair put_to_the_proof(std::vector<Change> changes) {
    Report now = trials_.ask(with_changes(model_, changes), asked_);
    ++found_.tried;
    --left_.tries;
    std::uint64_t states = 0;
    bool all_proved = true;
    for (std::size_t i = 0; i < asked_.size(); ++i) {
      const PropertyVerdict& p = now.properties[i];
      states = std::max(states, p.explored);
      all_proved = all_proved && p.verdict == Verdict::proved &&
                   (p.vacuous.empty() || p.vacuous == report_.properties[i].vacuous);
      if (p.verdict == Verdict::undecided) found_.all_tried = false;
    }
    left_.states -= std::min(left_.states, states);
    return {std::move(changes), std::move(now.properties), all_proved};
  }

  const Model& model_;
  const Report& report_;
  const Trials& trials_;
  Effort left_;
  std::vector<PropertyVerdict> refuted_;  ///< on the model as it is
  std::vector<AskedProperty> asked_;
  std::vector<Beginning> beginnings_;
  Repairs found_;
};

}  // namespace

Repairs find_repairs(const Model& model, const Report& report, const Trials& trials, const Effort& effort) {
  return Search(model, report, trials, effort).run();
}

}  // namespace cairn::verify
