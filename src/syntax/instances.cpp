#include "syntax/instances.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <span>
#include <utility>

#include "unknowns/space.hpp"
#include "unknowns/words.hpp"

namespace cairn::syntax {

namespace {

using unknowns::Space;

/// Parts that no instance keeps together, while without any one of them there is one: an unsat core, by leaving out one
/// after another.
std::vector<Assumption> core_of(const Model& model, std::vector<Assumption> parts) {
  for (std::size_t i = 0; i < parts.size();) {
    std::vector<Assumption> fewer = parts;
    fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
    if (Space(model, fewer).find({})) {
      ++i;
    } else {
      parts = std::move(fewer);
    }
  }
  return parts;
}

// "`$p < 180` holds for no choice", "no choice makes `$p < 180` and `$p > 200` hold together"
std::string words_of(const Model& model, const std::vector<Assumption>& core) {
  std::vector<std::string> parts;
  parts.reserve(core.size());
  for (const Assumption& part : core) parts.push_back("`" + unknowns::words_of(part, model) + "`");
  if (parts.size() == 1) return parts.front() + " holds for no choice of what is open";
  const std::string last = parts.back();
  parts.pop_back();
  return fmt::format("no choice of what is open makes {} and {} hold together", fmt::join(parts, ", "), last);
}

}  // namespace

void check_instances(const Model& model, const ProcedureDraft& draft, const Claims& claims, Problems& problems) {
  const Space space(model);
  if (!space.find({})) {
    const auto core = core_of(model, unknowns::conjuncts_of(model.unknowns.assume));
    problems.add(*draft.assume_place, words_of(model, core),
                 "an assumption that leaves at least one instance: of none, everything would be proved");
    return;
  }
  for (const Claim& claim : claims) {
    for (const unknowns::Literal& literal : claim.wrong) {
      const auto instance = space.find(std::span(&literal, 1));
      if (!instance) continue;
      problems.add(claim.place,
                   fmt::format("{} in an instance: {}", claim.message, unknowns::words_of(model, *instance)),
                   fmt::format("{}, in every instance that `assume` leaves", claim.expected));
      break;
    }
  }
}

}  // namespace cairn::syntax
