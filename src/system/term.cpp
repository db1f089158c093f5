#include "system/term.hpp"

#include <algorithm>
#include <array>
#include <limits>
#include <stdexcept>
#include <utility>

namespace cairn::system {

namespace {

/// A conjunction of up to this many parts is flattened into the one that it is a part of, and rebuilt without the parts
/// that its neighbours tell. Flattening lets repeated and opposite parts meet; but in a ladder, where each conjunction
/// is the one before and one part more, it would write out a triangle. With four it costs such a ladder two parts a
/// rung, however long it is, and formulas stay as long as their builder wrote them.
constexpr std::size_t small = 4;

/// Parts with more parts of their own than this are not looked into.
constexpr std::size_t looked_at = 16;

std::uint32_t hash_of(Op op, std::span<const Term> parts) {
  std::uint64_t hash = static_cast<std::uint64_t>(op);
  for (const Term part : parts) {
    hash = (hash ^ part.code()) * 0x9E3779B97F4A7C15U;
    hash ^= hash >> 29U;
  }
  return static_cast<std::uint32_t>(hash >> 16U);
}

}  // namespace

Terms::Terms() : nodes_{{Op::constant, 0, 0}}, slots_(1024, Slot{0, 0}) {}

Term Terms::variable(std::string name) {
  const auto node = static_cast<std::uint32_t>(nodes_.size());
  if (node > std::numeric_limits<std::uint32_t>::max() / 2) throw std::length_error("too many terms");
  nodes_.push_back({Op::variable, static_cast<std::uint32_t>(names_.size()), 0});
  names_.push_back(std::move(name));
  return Term(node << 1U);
}

Term Terms::both(Term a, Term b) {
  gathered_.clear();
  gather(a);
  gather(b);
  return conjoin();
}

Term Terms::all(std::span<const Term> parts) {
  gathered_.clear();
  for (const Term part : parts) gather(part);
  return conjoin();
}

Term Terms::any(std::span<const Term> parts) {
  gathered_.clear();
  for (const Term part : parts) gather(!part);
  return !conjoin();
}

Term Terms::differ(Term a, Term b) {
  const bool negated = a.negated() != b.negated();
  a = a.plain();
  b = b.plain();
  if (a > b) std::swap(a, b);
  if (a == b) return negated ? always : never;
  if (a == never) return negated ? !b : b;
  if (is(b, Op::differ)) {  // what differs from a twice is left
    const auto inner = parts(b.node());
    if (inner[0] == a) return negated ? !inner[1] : inner[1];
    if (inner[1] == a) return negated ? !inner[0] : inner[0];
  }
  const Term term = intern(Op::differ, std::array{a, b});
  return negated ? !term : term;
}

Term Terms::choose(Term condition, Term then, Term otherwise) {
  if (condition == always) return then;
  if (condition == never) return otherwise;
  if (condition.negated()) {
    condition = !condition;
    std::swap(then, otherwise);
  }
  const Term opposite = !condition;
  if (then.plain() == condition) then = then == condition ? always : never;
  if (otherwise.plain() == condition) otherwise = otherwise == opposite ? always : never;
  then = given(then, Known({&condition, 1}));
  otherwise = given(otherwise, Known({&opposite, 1}));
  if (then == otherwise) return then;
  if (then == !otherwise) return differ(condition, otherwise);
  if (then == always) return either(condition, otherwise);
  if (then == never) return both(opposite, otherwise);
  if (otherwise == always) return either(opposite, then);
  if (otherwise == never) return both(condition, then);
  if (then.negated()) return !intern(Op::choose, std::array{condition, !then, !otherwise});
  return intern(Op::choose, std::array{condition, then, otherwise});
}

Term Terms::at_most_one(std::span<const Term> parts) {
  std::vector<Term> rungs;
  Term none_before = always;
  for (const Term part : parts) {
    rungs.push_back(either(!part, none_before));
    none_before = both(none_before, !part);
  }
  return all(rungs);
}

Term Terms::at_least(std::span<const Term> parts, std::int64_t count) {
  if (count <= 0) return always;
  if (static_cast<std::uint64_t>(count) > parts.size()) return never;
  const auto wanted = static_cast<std::size_t>(count);
  std::vector<Term> counted(wanted + 1, never);  // counted[j]: at least j of the parts so far
  counted[0] = always;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const std::size_t to_come = parts.size() - i - 1;
    const std::size_t least = wanted > to_come ? wanted - to_come : 1;
    for (std::size_t j = std::min(wanted, i + 1); j >= least; --j) {
      counted[j] = choose(parts[i], counted[j - 1], counted[j]);
    }
  }
  return counted[wanted];
}

Term Terms::intern(Op op, std::span<const Term> parts) {
  const std::uint32_t hash = hash_of(op, parts);
  std::size_t at = hash & (slots_.size() - 1);
  for (; slots_[at].node != 0; at = (at + 1) & (slots_.size() - 1)) {
    if (slots_[at].hash != hash) continue;
    const std::uint32_t node = slots_[at].node;
    if (nodes_[node].op == op && std::ranges::equal(this->parts(node), parts)) return Term(node << 1U);
  }
  constexpr std::size_t most = std::numeric_limits<std::uint32_t>::max();
  if (nodes_.size() > most / 2 || parts_.size() + parts.size() > most) throw std::length_error("too many terms");
  const auto node = static_cast<std::uint32_t>(nodes_.size());
  nodes_.push_back({op, static_cast<std::uint32_t>(parts_.size()), static_cast<std::uint32_t>(parts.size())});
  parts_.insert(parts_.end(), parts.begin(), parts.end());
  slots_[at] = {hash, node};
  if (2 * nodes_.size() > slots_.size()) grow();
  return Term(node << 1U);
}

void Terms::grow() {
  std::vector<Slot> old(2 * slots_.size(), Slot{0, 0});
  old.swap(slots_);
  for (const Slot& slot : old) {
    if (slot.node == 0) continue;
    std::size_t at = slot.hash & (slots_.size() - 1);
    while (slots_[at].node != 0) at = (at + 1) & (slots_.size() - 1);
    slots_[at] = slot;
  }
}

Terms::Known::Known(std::span<const Term> ascending) : terms(ascending) {
  for (const Term term : terms) nodes |= std::uint64_t{1} << (term.node() % 64);
}

bool Terms::Known::holds(Term term) const {
  if ((nodes >> (term.node() % 64) & 1U) == 0) return false;
  return std::ranges::binary_search(terms, term);
}

void Terms::gather(Term part) {
  if (!part.negated() && is(part, Op::all) && nodes_[part.node()].count <= small) {
    const auto inner = parts(part.node());
    gathered_.insert(gathered_.end(), inner.begin(), inner.end());
  } else {
    gathered_.push_back(part);
  }
}

Term Terms::conjoin() {
  do {
    if (!tidy()) return never;
  } while (look_inside());
  if (gathered_.empty()) return always;
  if (gathered_.size() == 1) return gathered_[0];
  if (gathered_.size() == 2) {
    if (const auto choice = as_choice(gathered_[0], gathered_[1])) return *choice;
  }
  return intern(Op::all, gathered_);
}

bool Terms::tidy() {
  std::ranges::sort(gathered_);
  gathered_.erase(std::unique(gathered_.begin(), gathered_.end()), gathered_.end());
  if (gathered_.empty()) return true;
  if (gathered_[0] == never) return false;
  if (gathered_[0] == always) gathered_.erase(gathered_.begin());
  return std::ranges::adjacent_find(gathered_, [](Term a, Term b) { return a == !b; }) == gathered_.end();
}

// A part is simplified only by parts of its own, which are older nodes; the oldest of those that were used stay as they
// are, so that no two parts leave saying the same thing to each other.
bool Terms::look_inside() {
  before_.swap(gathered_);
  gathered_.clear();
  const Known known(before_);
  std::vector<Term> told;  // by a conjunction that is a part
  for (const Term part : before_) {
    const Term left = given(part, known);
    gather(left);
    if (left != part || part.negated() || !is(part, Op::all)) continue;
    for (const Term inner : parts(part.node())) {
      if (known.holds(inner)) told.push_back(inner);
    }
  }
  if (!told.empty()) std::erase_if(gathered_, [&](Term part) { return std::ranges::find(told, part) != told.end(); });
  return gathered_ != before_;
}

Term Terms::given(Term term, const Known& known) {
  const auto signed_as = [&](Term other) { return term.negated() ? !other : other; };
  switch (op(term.node())) {
    case Op::constant:
      return term;
    case Op::variable:
      break;
    case Op::all:
      return all_given(term, known);
    case Op::choose: {
      const auto inner = parts(term.node());
      if (known.holds(inner[0])) return signed_as(inner[1]);
      if (known.holds(!inner[0])) return signed_as(inner[2]);
      break;
    }
    case Op::differ: {
      const auto inner = parts(term.node());
      for (const std::size_t i : {0U, 1U}) {
        if (known.holds(inner[i])) return signed_as(!inner[1 - i]);
        if (known.holds(!inner[i])) return signed_as(inner[1 - i]);
      }
      break;
    }
  }
  return term;
}

Term Terms::all_given(Term term, const Known& known) {
  const auto inner = parts(term.node());
  if (inner.size() > looked_at) return term;
  std::size_t told = 0;
  for (const Term part : inner) {
    if (known.holds(!part)) return term.negated() ? always : never;
    if (known.holds(part)) ++told;
  }
  if (told == 0 || inner.size() > small) return term;
  std::array<Term, small> left;
  std::size_t count = 0;
  for (const Term part : inner) {
    if (!known.holds(part)) left[count++] = part;
  }
  const Term rest = count == 0 ? always : count == 1 ? left[0] : intern(Op::all, std::span(left.data(), count));
  return term.negated() ? !rest : rest;
}

// (c or p) and (not c or q) is p where c does not hold, else q.
std::optional<Term> Terms::as_choice(Term a, Term b) {
  if (!a.negated() || !b.negated() || !is(a, Op::all) || !is(b, Op::all)) return std::nullopt;
  const auto left = parts(a.node());
  const auto right = parts(b.node());
  if (left.size() != 2 || right.size() != 2) return std::nullopt;
  for (const std::size_t i : {0U, 1U}) {
    for (const std::size_t j : {0U, 1U}) {
      if (left[i] == !right[j]) return choose(left[i], !left[1 - i], !right[1 - j]);
    }
  }
  return std::nullopt;
}

void Substitution::put(Term variable, Term in_its_place) {
  remember(variable.node(), in_its_place);
}

void Substitution::remember(std::uint32_t node, Term term) {
  if (node >= known_.size()) {
    known_.resize(terms_->size(), 0);
    rebuilt_.resize(terms_->size());
  }
  known_[node] = 1;
  rebuilt_[node] = term;
}

Term Substitution::operator()(Term term) {
  waiting_.assign(1, term.plain());
  while (!waiting_.empty()) {
    const Term next = waiting_.back();
    const std::size_t before = waiting_.size();
    if (!known(next)) {
      for (const Term part : terms_->parts(next.node())) {
        if (!known(part)) waiting_.push_back(part.plain());
      }
    }
    if (waiting_.size() > before) continue;
    if (!known(next)) remember(next.node(), rebuild(next));
    waiting_.pop_back();
  }
  const Term whole = rebuilt_[term.node()];
  return term.negated() ? !whole : whole;
}

Term Substitution::rebuild(Term old) {
  parts_.clear();
  for (const Term part : terms_->parts(old.node())) {
    const Term rebuilt = rebuilt_[part.node()];
    parts_.push_back(part.negated() ? !rebuilt : rebuilt);
  }
  switch (terms_->op(old.node())) {
    case Op::constant:
    case Op::variable:
      break;
    case Op::all:
      return terms_->all(parts_);
    case Op::choose:
      return terms_->choose(parts_[0], parts_[1], parts_[2]);
    case Op::differ:
      return terms_->differ(parts_[0], parts_[1]);
  }
  return old;
}

std::vector<std::uint32_t> cone_of(const Terms& terms, std::span<const Term> roots) {
  std::uint32_t last = 0;
  for (const Term root : roots) last = std::max(last, root.node());
  // Parts are older than what they are parts of: one sweep from the newest node down meets each after all its users.
  std::vector<std::uint64_t> met(last / 64 + 1, 0);
  const auto meet = [&](Term term) { met[term.node() / 64] |= std::uint64_t{1} << (term.node() % 64); };
  for (const Term root : roots) meet(root);
  std::vector<std::uint32_t> cone;
  for (std::size_t word = met.size(); word-- > 0;) {
    for (int bit = 63; bit >= 0 && met[word] != 0; --bit) {
      if ((met[word] >> bit & 1U) == 0) continue;
      const auto node = static_cast<std::uint32_t>(word * 64 + static_cast<std::size_t>(bit));
      if (node == never.node()) continue;
      cone.push_back(node);
      for (const Term part : terms.parts(node)) meet(part);
    }
  }
  std::ranges::reverse(cone);
  return cone;
}

}  // namespace cairn::system
