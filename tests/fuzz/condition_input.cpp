#include "inputs.hpp"
#include "syntax/condition_parser.hpp"

namespace cairn::test {

namespace {

using namespace syntax;

/// A tree has no more depth than promised, and every join has the parts that it needs.
template <class Atom>
bool is_whole(const Formula<Atom>& tree, int depth = 0) {
  using Join = typename Formula<Atom>::Join;
  if (depth > 3 * deepest_condition) return false;
  switch (tree.join) {
    case Join::atom:
      return tree.parts.empty();
    case Join::negation:
      if (tree.parts.size() != 1) return false;
      break;
    case Join::implies:
      if (tree.parts.size() != 2) return false;
      break;
    default:
      if (tree.parts.size() < 2) return false;
  }
  for (const auto& part : tree.parts) {
    if (!is_whole(part, depth + 1)) return false;
  }
  return true;
}

template <class Tree>
std::string fault_of(const std::optional<Tree>& tree, const Problems& problems) {
  if (tree.has_value() != problems.none()) return "neither a condition nor a problem, or both";
  if (problems.count() > 1) return "more than one syntax error";
  return tree && !is_whole(*tree) ? "the tree is not whole" : "";
}

}  // namespace

std::string try_condition(const std::string& text) {
  const Source source("input", text);
  Node node;
  node.kind = Node::Kind::plain;
  node.text = source.text();
  node.place = {&source, 0, 1};
  Problems of_condition, of_assumption;
  const auto fault = fault_of(parse_condition(node, "it", of_condition), of_condition);
  return fault.empty() ? fault_of(parse_assumption(node, of_assumption), of_assumption) : fault;
}

}  // namespace cairn::test
