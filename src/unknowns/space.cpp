#include "unknowns/space.hpp"

#include <algorithm>
#include <utility>

namespace cairn::unknowns {

namespace {

using Kind = Assumption::Kind;

constexpr Range all_addresses{0, (std::int64_t{1} << 48) - 1};  // 9.b: 48 bits

Literal literal_of(const Assumption& comparison) {
  return Literal{comparison.left.quantity, comparison.right.quantity, Relation::of(comparison.sign)}.normal();
}

enum class Truth : std::uint8_t { no, yes, open };

Truth denied(Truth truth) {
  return truth == Truth::open ? Truth::open : truth == Truth::yes ? Truth::no : Truth::yes;
}

/// What an assumption is by three values, where `truth_of` tells of each comparison.
template <class TruthOf>
Truth truth_of(const Assumption& assumption, const TruthOf& truth_of_literal) {
  const auto joined = [&](Truth decides) {
    Truth all = denied(decides);
    for (const Assumption& part : assumption.parts) {
      const Truth truth = truth_of(part, truth_of_literal);
      if (truth == decides) return decides;
      if (truth == Truth::open) all = Truth::open;
    }
    return all;
  };
  switch (assumption.kind) {
    case Kind::comparison:
      return truth_of_literal(literal_of(assumption));
    case Kind::negation:
      return denied(truth_of(assumption.parts[0], truth_of_literal));
    case Kind::all:
      return joined(Truth::no);
    case Kind::any:
      return joined(Truth::yes);
    case Kind::implies: {
      const Truth premise = denied(truth_of(assumption.parts[0], truth_of_literal));
      const Truth conclusion = truth_of(assumption.parts[1], truth_of_literal);
      if (premise == Truth::yes || conclusion == Truth::yes) return Truth::yes;
      return premise == Truth::no && conclusion == Truth::no ? Truth::no : Truth::open;
    }
  }
  return Truth::open;
}

/// A comparison of the assumption that is open; there is one.
template <class TruthOf>
std::optional<Literal> open_literal(const Assumption& assumption, const TruthOf& truth_of_literal) {
  if (assumption.kind == Kind::comparison) {
    const Literal literal = literal_of(assumption);
    return truth_of_literal(literal) == Truth::open ? std::optional(literal) : std::nullopt;
  }
  for (const Assumption& part : assumption.parts) {
    if (truth_of(part, truth_of_literal) != Truth::open) continue;
    if (const auto literal = open_literal(part, truth_of_literal)) return literal;
  }
  return {};
}

}  // namespace

std::vector<Assumption> conjuncts_of(const std::optional<Assumption>& assume) {
  if (!assume) return {};
  if (assume->kind != Kind::all) return {*assume};
  std::vector<Assumption> parts;
  for (const Assumption& part : assume->parts) {
    for (Assumption& inner : conjuncts_of(part)) parts.push_back(std::move(inner));
  }
  return parts;
}

Space::Space(const Model& model) : Space(model, conjuncts_of(model.unknowns.assume)) {}

Space::Space(const Model& model, std::span<const Assumption> assumed) : parameters_(model.unknowns.parameters.size()) {
  for (const Parameter& parameter : model.unknowns.parameters) ranges_.push_back(parameter.range);
  ranges_.resize(model.unknowns.count(), all_addresses);
  for (std::size_t i = 0; i < model.site.devices.size(); ++i) {
    const bool open = std::ranges::find(model.unknowns.addresses, DeviceId(i)) != model.unknowns.addresses.end();
    if (!open) addresses_.push_back(static_cast<std::int64_t>(model.site.devices[i].address));
  }
  std::ranges::sort(addresses_);
  assume_.parts.assign(assumed.begin(), assumed.end());
  bound_all();
}

void Space::bound_all() {
  bounds_.emplace(size());
  const auto add = [this](const Literal& literal) {
    if (bounds_ && !bounds_->add(literal)) bounds_.reset();
  };
  for (std::size_t i = 0; i < size(); ++i) {
    const Quantity q = unknown(UnknownId(i));
    add({q, ranges_[i].low, Relation::greater() | Relation::equal()});
    add({q, ranges_[i].high, Relation::less() | Relation::equal()});
  }
  for (const Assumption& part : assume_.parts) {
    if (part.kind == Kind::comparison) add(literal_of(part));
  }
}

/// Splits what is not convex, and what is not decided, until the least integers are an instance. Each split decides for
/// good how two quantities stand to each other, so that it comes to an end.
class Space::Search {
 public:
  explicit Search(const Space& space) : space_(space) {}

  std::optional<Instance> find(std::span<const Literal> literals) {
    if (!space_.bounds_) return {};
    Node node{*space_.bounds_, {}};
    for (const Literal& literal : literals) {
      if (!node.add(literal.normal())) return {};
    }
    return find(std::move(node));
  }

 private:
  struct Node {
    Bounds bounds;
    std::vector<Literal> unequal;  ///< that two are not equal, where it was not decided which is less

    bool add(const Literal& literal) {
      if (literal.relation == Relation::not_equal()) unequal.push_back(literal);
      return bounds.add(literal);
    }
  };

  // NOLINTNEXTLINE(misc-no-recursion): as deep as there are pairs of quantities
  std::optional<Instance> find(Node node) {
    const std::vector<std::int64_t> values = node.bounds.least();
    const auto under = [&](const Literal& literal) { return decided(node, literal); };
    const Truth assumed = truth_of(space_.assume_, under);
    if (assumed == Truth::no) return {};
    if (const auto pair = equal_ones(node, values)) return in_either(node, *pair);
    const auto here = [&](const Literal& literal) { return holds(literal, values) ? Truth::yes : Truth::no; };
    if (assumed == Truth::yes || truth_of(space_.assume_, here) == Truth::yes) return Instance{values};
    const Literal open = *open_literal(space_.assume_, under);
    Node other = node;
    if (node.add(open)) {
      if (auto found = find(std::move(node))) return found;
    }
    if (!other.add(open.denied())) return {};
    return find(std::move(other));
  }

  static Truth decided(const Node& node, const Literal& literal) {
    Relation possible = node.bounds.possible(literal.left, literal.right);
    for (const Literal& pair : node.unequal) {
      if (pair.left == literal.left && pair.right == literal.right) possible = possible & Relation::not_equal();
    }
    if (possible.within(literal.relation)) return Truth::yes;
    return (possible & literal.relation).none() ? Truth::no : Truth::open;
  }

  // Two that must differ, and do not: of those that were told apart, or of the addresses (9.b).
  [[nodiscard]] std::optional<Literal> equal_ones(const Node& node, const std::vector<std::int64_t>& values) const {
    for (const Literal& pair : node.unequal) {
      if (!holds(pair, values)) return pair;
    }
    for (std::size_t i = space_.parameters_; i < values.size(); ++i) {
      const Quantity q = unknown(UnknownId(i));
      for (std::size_t j = i + 1; j < values.size(); ++j) {
        if (values[i] == values[j]) return Literal{q, unknown(UnknownId(j)), Relation::not_equal()};
      }
      if (std::ranges::binary_search(space_.addresses_, values[i])) return Literal{q, values[i], Relation::not_equal()};
    }
    return {};
  }

  // The one with more room above is raised first.
  // NOLINTNEXTLINE(misc-no-recursion): see find
  std::optional<Instance> in_either(const Node& node, const Literal& pair) {
    const bool left_rises = is_known(pair.right) ||
                            node.bounds.highest(unknown_of(pair.left)) > node.bounds.highest(unknown_of(pair.right));
    for (const bool greater : {left_rises, !left_rises}) {
      Node next = node;
      const Literal decided{pair.left, pair.right, greater ? Relation::greater() : Relation::less()};
      if (!next.add(decided)) continue;
      if (auto found = find(std::move(next))) return found;
    }
    return {};
  }

  const Space& space_;
};

std::optional<Instance> Space::find(std::span<const Literal> literals) const {
  return Search(*this).find(literals);
}

}  // namespace cairn::unknowns
