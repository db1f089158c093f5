#include "solver/clauses.hpp"

#include <cassert>

namespace cairn::solver {

using system::Op;
using system::Term;

Literal Clauses::literal_of(Term term) {
  std::vector<std::uint32_t> waiting{term.node()};
  while (!waiting.empty()) {
    const std::uint32_t node = waiting.back();
    const std::size_t depth = waiting.size();
    if (!known(node)) {
      for (const Term part : terms_.parts(node)) {
        if (!known(part.node())) waiting.push_back(part.node());
      }
    }
    if (waiting.size() > depth) continue;  // parts first
    waiting.pop_back();
    if (!known(node)) translate(node);
  }
  return at(term);
}

// Demands that the parts are translated.
void Clauses::translate(std::uint32_t node) {
  if (literals_.size() < terms_.size()) literals_.resize(terms_.size());
  const Literal self = solver_.declare();
  literals_[node] = self;
  const std::span<const Term> parts = terms_.parts(node);
  switch (terms_.op(node)) {
    case Op::constant:
      solver_.add({!self});
      break;
    case Op::variable:
      break;
    case Op::all: {
      std::vector<Literal> if_all{self};
      for (const Term part : parts) {
        solver_.add({!self, at(part)});
        if_all.push_back(!at(part));
      }
      solver_.add(if_all);
      break;
    }
    case Op::choose: {
      const Literal condition = at(parts[0]), then = at(parts[1]), otherwise = at(parts[2]);
      solver_.add({!condition, !then, self});
      solver_.add({!condition, then, !self});
      solver_.add({condition, !otherwise, self});
      solver_.add({condition, otherwise, !self});
      // These follow from the others, and let the solver see it before the condition is decided.
      solver_.add({!then, !otherwise, self});
      solver_.add({then, otherwise, !self});
      break;
    }
    case Op::differ: {
      const Literal a = at(parts[0]), b = at(parts[1]);
      solver_.add({!self, a, b});
      solver_.add({!self, !a, !b});
      solver_.add({self, !a, b});
      solver_.add({self, a, !b});
      break;
    }
  }
}

void Clauses::demand(Term term, std::optional<Literal> unless) {
  std::vector<Literal> clause;
  if (unless) clause.push_back(*unless);
  std::vector<Term> waiting{term};
  while (!waiting.empty()) {
    const Term each = waiting.back();
    waiting.pop_back();
    if (each == system::always) continue;
    const std::span<const Term> parts = terms_.parts(each.node());
    if (terms_.op(each.node()) == Op::all && !each.negated() && !known(each.node())) {
      waiting.insert(waiting.end(), parts.rbegin(), parts.rend());
    } else if (terms_.op(each.node()) == Op::choose && !known(each.node())) {
      const Term then = each.negated() ? !parts[1] : parts[1];
      const Term otherwise = each.negated() ? !parts[2] : parts[2];
      std::vector<Literal> with_condition = clause;
      with_condition.push_back(!literal_of(parts[0]));
      demand_one_of(then, with_condition);
      with_condition.back() = literal_of(parts[0]);
      demand_one_of(otherwise, with_condition);
    } else {
      demand_one_of(each, clause);
    }
  }
}

// One clause: a literal of `unless`, or `first`, of which disjunctions within disjunctions become literals of their
// own.
void Clauses::demand_one_of(Term first, std::vector<Literal> unless) {
  std::vector<Term> waiting{first};
  while (!waiting.empty()) {
    const Term each = waiting.back();
    waiting.pop_back();
    if (each == system::never) continue;
    if (terms_.op(each.node()) == Op::all && each.negated() && !known(each.node())) {
      for (const Term part : terms_.parts(each.node())) waiting.push_back(!part);
    } else {
      unless.push_back(literal_of(each));
    }
  }
  solver_.add(unless);
}

bool Clauses::value_of(Term term) const {
  if (term.node() == system::never.node()) return term.negated();
  if (known(term.node())) return solver_.value(at(term));
  assert(terms_.op(term.node()) == Op::variable);
  return term.negated();
}

}  // namespace cairn::solver
