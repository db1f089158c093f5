/// \file
/// Shared, folded Boolean expressions that belong to no solver.
#pragma once

#include <compare>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <initializer_list>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
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

/// The pool. Equal expressions are built once; what can be told at once is told at once (constants, repeated and
/// opposite parts, conjunctions within conjunctions, choices between equals). Terms of one pool never mix with
/// another's. Nodes are only ever added, parts before the nodes that use them.
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
  /// No two of them hold.
  Term at_most_one(std::span<const Term> parts);
  /// At least `count` of them hold; true where count is 0 or less.
  Term at_least(std::span<const Term> parts, std::int64_t count);

  /// Nodes in the pool, the constant included.
  [[nodiscard]] std::size_t size() const { return nodes_.size(); }
  [[nodiscard]] Op op(std::uint32_t node) const { return nodes_[node].op; }
  [[nodiscard]] std::span<const Term> parts(std::uint32_t node) const {
    return {parts_.data() + nodes_[node].first, nodes_[node].count};
  }
  /// Demands that the node is a variable.
  [[nodiscard]] std::string_view name(std::uint32_t node) const { return names_[nodes_[node].first]; }

 private:
  struct Node {
    Op op;
    std::uint32_t first;  ///< its parts in parts_; of a variable its name in names_
    std::uint32_t count;
  };
  Term intern(Op op, std::span<const Term> parts);

  std::vector<Node> nodes_;
  std::vector<Term> parts_;
  std::vector<std::string> names_;
  std::unordered_multimap<std::uint64_t, std::uint32_t> index_;  ///< hash of op and parts to nodes
};

/// Puts terms in the place of variables, over and over: what was rebuilt once is remembered.
class Substitution {
 public:
  explicit Substitution(Terms& terms) : terms_(&terms) {}
  /// Demands that nothing was rebuilt yet, and that `variable` is one and not negated.
  void put(Term variable, Term in_its_place);
  /// The term with every variable that was put replaced, folded anew; other variables stay.
  [[nodiscard]] Term operator()(Term term);

 private:
  Terms* terms_;
  std::vector<Term> rebuilt_;       ///< per node
  std::vector<std::uint8_t> known_;  ///< per node: rebuilt_ holds it
};

/// The nodes that the roots are built from, roots included, parts before the nodes that use them; the constant left out.
[[nodiscard]] std::vector<std::uint32_t> cone_of(const Terms& terms, std::span<const Term> roots);

}  // namespace cairn::system
