#include "verify/why_parts.hpp"

#include <algorithm>

namespace cairn::verify {

namespace {

Standing standing_of(const PropertyVerdict& before, const PropertyVerdict& outcome) {
  if (outcome.verdict == Verdict::refuted) return Standing::needed;
  if (outcome.verdict == Verdict::undecided) return Standing::unknown;
  return before.vacuous.empty() && !outcome.vacuous.empty() ? Standing::vacuous : Standing::idle;
}

bool fails(const LeftOut& left_out) {
  return left_out.standing == Standing::needed || left_out.standing == Standing::vacuous;
}

/// Leaves out together awaits without each of which one property holds.
class AwaitsTogether {
 public:
  AwaitsTogether(const Model& model, const PropertyVerdict& proof, const Trials& trials)
      : model_(model), proof_(proof), trials_(trials) {}

  std::vector<LeftOut> sets_that_fail(std::vector<Part> spared) const {
    std::vector<LeftOut> sets;
    while (spared.size() > 1) {
      LeftOut together = leave_out(spared);
      if (together.standing == Standing::idle) break;
      if (fails(together)) together = smallest(std::move(together));
      std::erase(spared, together.parts.front());
      sets.push_back(std::move(together));
      if (sets.back().standing == Standing::unknown) break;
    }
    return sets;
  }

 private:
  LeftOut leave_out(std::vector<Part> parts) const {
    PropertyVerdict outcome = trials_.ask(without(model_, parts), {proof_.asked}).properties.front();
    return {std::move(parts), standing_of(proof_, outcome), std::move(outcome)};
  }

  // Puts back every await without which the rest fails all the same.
  LeftOut smallest(LeftOut set) const {
    const std::vector<Part> all = set.parts;
    for (const Part& await : all) {
      std::vector<Part> fewer = set.parts;
      std::erase(fewer, await);
      LeftOut smaller = leave_out(std::move(fewer));
      if (fails(smaller)) set = std::move(smaller);
    }
    return set;
  }

  const Model& model_;
  const PropertyVerdict& proof_;
  const Trials& trials_;
};

/// Goes through the parts one by one, and asks of each all properties at once.
class PartTrials {
 public:
  PartTrials(const Model& model, const Report& proof, const Trials& trials, std::vector<PropertyWhy>& properties)
      : model_(model), proof_(proof), trials_(trials), properties_(properties) {
    for (std::size_t i = 0; i < proof.properties.size(); ++i) {
      if (proof.properties[i].verdict != Verdict::proved) continue;
      proved_.push_back(i);
      asked_.push_back(proof.properties[i].asked);
    }
  }

  void run() {
    if (proved_.empty()) return;
    for (const Part& part : parts_of(model_)) leave_out(part);
    for (const std::size_t i : proved_) leave_out_awaits_together(i);
  }

 private:
  void leave_out(const Part& part) {
    Report report = trials_.ask(without(model_, {part}), asked_);
    for (std::size_t i = 0; i < proved_.size(); ++i) {
      PropertyVerdict& outcome = report.properties[i];
      const Standing standing = standing_of(proof_.properties[proved_[i]], outcome);
      properties_[proved_[i]].parts.push_back({{part}, standing, std::move(outcome)});
    }
  }

  void leave_out_awaits_together(std::size_t property) {
    PropertyWhy& why = properties_[property];
    std::vector<Part> spared;
    for (const LeftOut& left_out : why.parts) {
      const Part& part = left_out.parts.front();
      if (left_out.standing == Standing::idle && part.kind == Part::Kind::await) spared.push_back(part);
    }
    why.one_of = AwaitsTogether(model_, proof_.properties[property], trials_).sets_that_fail(std::move(spared));
  }

  const Model& model_;
  const Report& proof_;
  const Trials& trials_;
  std::vector<PropertyWhy>& properties_;
  std::vector<std::size_t> proved_;
  std::vector<AskedProperty> asked_;  ///< of those
};

}  // namespace

void try_parts(const Model& model, const Report& proof, const Trials& trials, std::vector<PropertyWhy>& properties) {
  PartTrials(model, proof, trials, properties).run();
}

void tell_uses(const Uses& uses, std::vector<PropertyWhy>& properties) {
  const auto why = std::ranges::find(properties, uses.asked, &PropertyWhy::asked);
  why->facts = uses.by_fact;
  for (LeftOut& left_out : why->parts) {
    const bool is_used = std::ranges::find(uses.parts, left_out.parts.front()) != uses.parts.end();
    if (left_out.standing == Standing::idle && is_used) left_out.standing = Standing::used;
  }
}

}  // namespace cairn::verify
