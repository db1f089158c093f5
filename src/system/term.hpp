/// \file
/// Shared, folded Boolean expressions that belong to no solver.
#pragma once

#include <compare>
#include <cstddef>
#include <cstdint>
#include <deque>
#include <initializer_list>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace cairn::system {

/// An expression of a pool, or its negation, which costs nothing. A default-constructed Term is `false` of any pool.
class Term {
 public:
  constexpr Term() = default;
  constexpr Term operator!() const { return Term(code_ ^ 1U); }
  /// The place of its node in the pool; a term and its negation share one.
  [[nodiscard]] constexpr std::uint32_t node() const { return code_ >> 1U; }
  [[nodiscard]] constexpr bool negated() const { return (code_ & 1U) != 0; }
  /// The same node, not negated.
  [[nodiscard]] constexpr Term plain() const { return Term(code_ & ~1U); }
  [[nodiscard]] constexpr std::uint32_t code() const { return code_; }
  constexpr auto operator<=>(const Term&) const = default;

 private:
  friend class Terms;
  constexpr explicit Term(std::uint32_t code) : code_(code) {}
  std::uint32_t code_ = 0;
};

/// The two constants, the same in every pool: node 0 is `false`.
inline constexpr Term never = Term();
inline constexpr Term always = !never;

/// What a node is.
enum class Op : std::uint8_t {
  constant,  ///< node 0: false
  variable,  ///< a free Boolean
  all,       ///< the conjunction of two or more parts, ascending, no two of one node
  choose,    ///< parts: condition, then, else; the condition and the second part are not negated
  differ,    ///< exactly one of two parts, which are not negated and ascend
};

/// The pool. Equal expressions are built once. What can be told at once is told at once: constants, repeated and
/// opposite parts, small conjunctions within conjunctions, choices between equals, and what a part says of the parts
/// of its neighbours. Terms of one pool never mix with another's. Nodes are only ever added, parts before the nodes
/// that use them. A pool that outgrows 2^31 nodes throws std::length_error.
class Terms {
 public:
  Terms();

  /// A new free variable; `name` is what printing calls it and need not differ from others.
  Term variable(std::string name);

  Term both(Term a, Term b);
  Term either(Term a, Term b) { return !both(!a, !b); }
  /// True where there are none.
  Term all(std::span<const Term> parts);
  /// False where there are none.
  Term any(std::span<const Term> parts);
  Term all(std::initializer_list<Term> parts) { return all(std::span(parts.begin(), parts.size())); }
  Term any(std::initializer_list<Term> parts) { return any(std::span(parts.begin(), parts.size())); }
  Term implies(Term a, Term b) { return !both(a, !b); }
  Term differ(Term a, Term b);
  Term same(Term a, Term b) { return !differ(a, b); }
  /// `then` where `condition` holds, else `otherwise`.
  Term choose(Term condition, Term then, Term otherwise);
  /// No two of them hold; a term that is given twice does not hold.
  Term at_most_one(std::span<const Term> parts);
  /// At least `count` of them hold, a term that is given twice counted twice; true where count is 0 or less.
  Term at_least(std::span<const Term> parts, std::int64_t count);

  /// Nodes in the pool, the constant included.
  [[nodiscard]] std::size_t size() const { return nodes_.size(); }
  [[nodiscard]] Op op(std::uint32_t node) const { return nodes_[node].op; }
  /// What the node is made of; valid until the pool grows.
  [[nodiscard]] std::span<const Term> parts(std::uint32_t node) const {
    if (nodes_[node].count == 0) return {};
    return {parts_.data() + nodes_[node].first, nodes_[node].count};
  }
  /// Demands that the node is a variable. Valid as long as the pool.
  [[nodiscard]] std::string_view name(std::uint32_t node) const { return names_[nodes_[node].first]; }

 private:
  struct Node {
    Op op;
    std::uint32_t first;  ///< its parts in parts_; of a variable its name in names_
    std::uint32_t count;
  };
  /// Terms that are known to hold, ascending, and a set of their nodes modulo 64, which answers most questions.
  struct Known {
    std::span<const Term> terms;
    std::uint64_t nodes = 0;
    explicit Known(std::span<const Term> ascending);
    [[nodiscard]] bool holds(Term term) const;
  };
  struct Slot {
    std::uint32_t hash;
    std::uint32_t node;  ///< 0 where the slot is free
  };

  Term intern(Op op, std::span<const Term> parts);
  void grow();
  [[nodiscard]] bool is(Term term, Op op) const { return nodes_[term.node()].op == op; }
  /// Puts a part of a conjunction into gathered_, small conjunctions as their parts.
  void gather(Term part);
  /// The conjunction of what was gathered.
  Term conjoin();
  /// Sorts gathered_ and drops what is told twice; false where the parts exclude each other.
  bool tidy();
  /// Replaces each part by what is left to say given the others; true where something changed.
  bool look_inside();
  /// What is left of `term`, one level deep, where `known` holds.
  Term given(Term term, const Known& known);
  Term all_given(Term term, const Known& known);
  /// A conjunction of two disjunctions as the choice that it is; none where it is none.
  std::optional<Term> as_choice(Term a, Term b);

  std::vector<Node> nodes_;
  std::vector<Term> parts_;
  std::deque<std::string> names_;  ///< never move, so that name() stays valid
  std::vector<Slot> slots_;        ///< open addressing, a power of two long, at most half full
  std::vector<Term> gathered_, before_;
};

/// Puts terms in the place of variables, all at once, over and over: what was rebuilt once is remembered.
class Substitution {
 public:
  explicit Substitution(Terms& terms) : terms_(&terms) {}
  /// Demands that nothing was rebuilt yet, and that `variable` is one and not negated.
  void put(Term variable, Term in_its_place);
  /// The term with every variable that was put replaced, folded anew; other variables stay.
  [[nodiscard]] Term operator()(Term term);

 private:
  [[nodiscard]] bool known(Term term) const { return term.node() < known_.size() && known_[term.node()] != 0; }
  void remember(std::uint32_t node, Term term);
  [[nodiscard]] Term rebuild(Term old);

  Terms* terms_;
  std::vector<Term> rebuilt_;        ///< per node
  std::vector<std::uint8_t> known_;  ///< per node: rebuilt_ holds it
  std::vector<Term> parts_, waiting_;
};

/// The nodes that the roots are built from, roots included, parts before the nodes that use them; the constant left
/// out.
[[nodiscard]] std::vector<std::uint32_t> cone_of(const Terms& terms, std::span<const Term> roots);

}  // namespace cairn::system
