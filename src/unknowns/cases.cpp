#include "unknowns/cases.hpp"

#include <algorithm>
#include <utility>

#include "base/contradiction.hpp"

namespace cairn::unknowns {

namespace {

std::size_t mixed(std::size_t hash, std::uint64_t value) {
  return (hash ^ value) * 0x9e3779b97f4a7c15U + (hash >> 29);
}

std::size_t mixed(std::size_t hash, const Literal& literal) {
  hash = mixed(hash, static_cast<std::uint64_t>(literal.left));
  hash = mixed(hash, static_cast<std::uint64_t>(literal.right));
  return mixed(hash, literal.relation.bits());
}

bool on_the_same(const Literal& a, const Literal& b) {
  return a.left == b.left && a.right == b.right;
}

}  // namespace

std::size_t Cases::Hash::operator()(const Refinement& refinement) const {
  return mixed(refinement.from, refinement.literal);
}

std::size_t Cases::Hash::operator()(const std::vector<Literal>& literals) const {
  std::size_t hash = literals.size();
  for (const Literal& literal : literals) hash = mixed(hash, literal);
  return hash;
}

Cases::Cases(const Space& space) : space_(space) {
  auto instance = space.find({});
  if (!instance) throw Contradiction("a template without instances was to be explored");
  cases_.push_back({{}, std::move(*instance)});
  known_.emplace(std::vector<Literal>{}, undecided);
}

std::uint64_t Cases::bytes() const {
  constexpr std::uint64_t per_entry = 4 * sizeof(void*);  // of a table by hash
  const std::uint64_t per_case = sizeof(Case) + space_.size() * sizeof(std::int64_t) + per_entry;
  return cases_.size() * per_case + literals_ * 2 * sizeof(Literal) +
         refined_.size() * (sizeof(Refinement) + sizeof(CaseId) + per_entry) + within_.size() * (16 + per_entry) +
         bounds_.size() * (space_.size() + 1) * (space_.size() + 1) * 16;
}

const Bounds& Cases::bounds_of(CaseId in) {
  constexpr std::size_t enough = 4096;
  if (const auto known = bounds_.find(in); known != bounds_.end()) return known->second;
  if (bounds_.size() == enough) bounds_.clear();
  Bounds bounds = *space_.bounds();
  for (const Literal& literal : cases_[in].literals) {
    if (!bounds.add(literal)) throw Contradiction("a path condition leaves no instance");
  }
  return bounds_.emplace(in, std::move(bounds)).first->second;
}

// What was decided of just these two.
Relation Cases::told(CaseId in, const Literal& literal) const {
  const std::vector<Literal>& literals = cases_[in].literals;
  const auto found = std::ranges::find_if(literals, [&](const Literal& l) { return on_the_same(l, literal); });
  return found == literals.end() ? Relation::any() : found->relation;
}

Relation Cases::possible(CaseId in, Quantity a, Quantity b) {
  const Literal pair = Literal{a, b, Relation::any()}.normal();
  const Relation relation = bounds_of(in).possible(pair.left, pair.right) & told(in, pair);
  return pair.left == a ? relation : relation.flipped();
}

std::optional<CaseId> Cases::refine(CaseId from, const Literal& literal) {
  const Literal normal = literal.normal();
  if (is_known(normal.left)) return holds(normal, {}) ? std::optional(from) : std::nullopt;
  const Refinement key{from, normal};
  if (const auto known = refined_.find(key); known != refined_.end()) return known->second;
  const std::optional<CaseId> refined = refine_anew(from, normal);
  refined_.emplace(key, refined);
  return refined;
}

std::optional<CaseId> Cases::refine_anew(CaseId from, const Literal& literal) {
  const Relation relation = possible(from, literal.left, literal.right);
  if (relation.within(literal.relation)) return from;
  if ((relation & literal.relation).none()) return {};
  std::vector<Literal> literals = cases_[from].literals;
  const auto place = std::ranges::find_if(literals, [&](const Literal& l) { return on_the_same(l, literal); });
  if (place != literals.end()) {
    place->relation = place->relation & literal.relation;
  } else {
    literals.insert(std::ranges::lower_bound(literals, literal), literal);
  }
  if (const auto known = known_.find(literals); known != known_.end()) return known->second;
  std::optional<Instance> instance = cases_[from].instance;
  if (!holds(literal, instance->values)) instance = space_.find(literals);
  if (!instance) return {};
  const auto id = static_cast<CaseId>(cases_.size());
  literals_ += literals.size();
  cases_.push_back({literals, std::move(*instance)});
  known_.emplace(std::move(literals), id);
  return id;
}

std::optional<CaseId> Cases::both(CaseId a, CaseId b) {
  if (is_within(a, b)) return a;
  const std::vector<Literal> literals = cases_[b].literals;
  std::optional<CaseId> both = a;
  for (const Literal& literal : literals) {
    if (both) both = refine(*both, literal);
  }
  return both;
}

bool Cases::is_within(CaseId narrow, CaseId wide) {
  if (narrow == wide || wide == undecided) return true;
  const std::uint64_t key = std::uint64_t{narrow} << 32 | wide;
  if (const auto known = within_.find(key); known != within_.end()) return known->second;
  const bool within = std::ranges::all_of(cases_[wide].literals, [&](const Literal& literal) {
    return possible(narrow, literal.left, literal.right).within(literal.relation);
  });
  within_.emplace(key, within);
  return within;
}

}  // namespace cairn::unknowns
