#include "verify/why_parts.hpp"

#include <algorithm>

#include "verify/why_proved.hpp"

namespace cairn::verify {

namespace {

bool fails(const LeftOut& left_out) {
  return left_out.standing == Standing::needed || left_out.standing == Standing::vacuous;
}

/// Leaves out together awaits without each of which one property holds.
class AwaitsTogether {
 public:
  explicit AwaitsTogether(const ProvedOnes& property) : property_(property) {}

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
  LeftOut leave_out(const std::vector<Part>& parts) const { return property_.leave_out(parts).front(); }

  // Puts back every await without which the rest fails all the same.
  LeftOut smallest(LeftOut set) const {
    const std::vector<Part> all = set.parts;
    for (const Part& await : all) {
      std::vector<Part> fewer = set.parts;
      std::erase(fewer, await);
      LeftOut smaller = leave_out(fewer);
      if (fails(smaller)) set = std::move(smaller);
    }
    return set;
  }

  const ProvedOnes& property_;
};

std::vector<LeftOut> awaits_together(const Model& model, const PropertyVerdict& proof, const Trials& trials,
                                     const std::vector<LeftOut>& one_by_one) {
  std::vector<Part> spared;
  for (const LeftOut& left_out : one_by_one) {
    const Part& part = left_out.parts.front();
    if (left_out.standing == Standing::idle && part.kind == Part::Kind::await) spared.push_back(part);
  }
  const std::vector<PropertyVerdict> alone{proof};
  const ProvedOnes property(model, alone, trials);
  return AwaitsTogether(property).sets_that_fail(std::move(spared));
}

}  // namespace

void try_parts(const Model& model, const Report& proof, const Trials& trials, std::vector<PropertyWhy>& properties) {
  const ProvedOnes all(model, proof.properties, trials);
  if (all.empty()) return;
  std::vector<std::size_t> proved;
  for (std::size_t i = 0; i < proof.properties.size(); ++i) {
    if (proof.properties[i].verdict == Verdict::proved) proved.push_back(i);
  }
  for (const Part& part : parts_of(model)) {
    std::vector<LeftOut> outcomes = all.leave_out({part});
    for (std::size_t i = 0; i < proved.size(); ++i) properties[proved[i]].parts.push_back(std::move(outcomes[i]));
  }
  for (const std::size_t i : proved) {
    properties[i].one_of = awaits_together(model, proof.properties[i], trials, properties[i].parts);
  }
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
