#include "system/smtlib.hpp"

#include <algorithm>
#include <map>
#include <unordered_set>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include "base/text.hpp"

namespace cairn::system {

namespace {

constexpr std::size_t line_width = 100;
/// Expressions nest no deeper than this, so that a line can be read, and a reader that recurses can read it.
constexpr int deepest = 6;

std::string_view status_name(Status status) {
  switch (status) {
    case Status::sat:
      return "sat";
    case Status::unsat:
      return "unsat";
    case Status::unknown:
      break;
  }
  return "unknown";
}

/// Words with one blank between them, broken to lines of at most line_width where a word fits in one.
class Lines {
 public:
  /// \param first, next  how the first line and the lines after it begin
  Lines(std::string_view first, std::string_view next) : next_(next), text_(first), column_(count_code_points(first)) {}

  /// `glued`: no blank and no break before it.
  void put(std::string_view word, bool glued = false) {
    const std::size_t width = count_code_points(word);
    if (!glued && !fresh_ && column_ + 1 + width > line_width) {
      text_ += '\n';
      text_ += next_;
      column_ = count_code_points(next_);
      fresh_ = true;
    }
    if (!glued && !fresh_) {
      text_ += ' ';
      ++column_;
    }
    text_ += word;
    column_ += width;
    fresh_ = false;
  }

  [[nodiscard]] std::string end() && { return std::move(text_) + '\n'; }

 private:
  std::string_view next_;
  std::string text_;
  std::size_t column_;
  bool fresh_ = true;  ///< nothing stands on the line yet
};

std::string comment_line(const std::string& text) {
  if (trimmed(text).empty()) return ";\n";
  Lines lines("; ", "; ");
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t blank = std::min(text.find_first_of(" \t", at), text.size());
    if (blank > at) lines.put(std::string_view(text).substr(at, blank - at));
    at = blank + 1;
  }
  return std::move(lines).end();
}

std::string as_comment(std::string_view text) {
  std::string out;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    out += comment_line(printable(text.substr(at, end - at)));
    at = end + 1;
  }
  return out;
}

/// The names of one script: quoted symbols (SMT-LIB 2.6, section 3.1) that differ from each other and from what the
/// language calls its own. A symbol means the same with and without its bars.
class Names {
 public:
  Names() {
    // The symbols of the theory Core, and the reserved words of section 3.1 that are no commands.
    for (const std::string_view word :
         {"true",     "false", "not",  "=>",     "and",     "or",          "xor",     "=",
          "distinct", "ite",   "Bool", "!",      "_",       "as",          "exists",  "forall",
          "let",      "match", "par",  "BINARY", "DECIMAL", "HEXADECIMAL", "NUMERAL", "STRING"}) {
      taken_.emplace(word);
    }
  }

  /// A name without bars that was not given yet.
  std::string give(std::string_view wish) {
    std::string name = printable(wish);
    std::ranges::replace_if(
        name, [](char c) { return c == '|' || c == '\\'; }, '/');
    // Section 3.1: symbols that begin with @ or . are the solver's own.
    if (name.empty() || name[0] == '@' || name[0] == '.') name.insert(0, "~");
    if (taken_.insert(name).second) return name;
    std::size_t& last = last_suffix_[name];
    for (last = std::max<std::size_t>(last, 1);;) {
      std::string other = fmt::format("{}~{}", name, ++last);
      if (taken_.insert(other).second) return other;
    }
  }

 private:
  std::unordered_set<std::string> taken_;
  std::map<std::string, std::size_t> last_suffix_;
};

class Script {
 public:
  Script(const Terms& terms, std::span<const Assertion> assertions) : terms_(terms) {
    std::vector<Term> roots;
    for (const auto& assertion : assertions) roots.push_back(assertion.term);
    cone_ = cone_of(terms, roots);
    symbols_.resize(cone_.empty() ? 1 : cone_.back() + 1);
    name_variables();
    name_nodes(roots);
  }

  [[nodiscard]] std::string declarations() const {
    std::string out;
    for (const std::uint32_t node : cone_) {
      if (terms_.op(node) == Op::variable) out += fmt::format("(declare-const {} Bool)\n", symbols_[node]);
    }
    return out;
  }

  /// Equations, not define-fun: solvers unfold that one, and Z3 4.8.12 then takes minutes and gigabytes where a term is
  /// some hundred deep.
  [[nodiscard]] std::string definitions() const {
    std::string out;
    for (const std::uint32_t node : cone_) {
      if (terms_.op(node) == Op::variable || symbols_[node].empty()) continue;
      out += fmt::format("(declare-const {} Bool)\n", symbols_[node]);
      Lines lines(fmt::format("(assert (= {} ", symbols_[node]), "    ");
      print_node(lines, node, false);
      lines.put("))", true);
      out += std::move(lines).end();
    }
    return out;
  }

  [[nodiscard]] std::string assertion(Term term) const {
    Lines lines("(assert ", "    ");
    print(lines, term);
    lines.put(")", true);
    return std::move(lines).end();
  }

 private:
  void name_variables() {
    for (const std::uint32_t node : cone_) {
      if (terms_.op(node) == Op::variable) symbols_[node] = '|' + names_.give(terms_.name(node)) + '|';
    }
  }

  void name_nodes(std::span<const Term> roots) {
    std::vector<std::uint32_t> uses(symbols_.size(), 0);
    for (const Term root : roots) ++uses[root.node()];
    for (const std::uint32_t node : cone_) {
      for (const Term part : terms_.parts(node)) ++uses[part.node()];
    }
    std::vector<int> depth(symbols_.size(), 0);  // of the expression in the place of the node
    std::size_t named = 0;
    for (const std::uint32_t node : cone_) {
      if (terms_.op(node) == Op::variable) continue;
      for (const Term part : terms_.parts(node)) depth[node] = std::max(depth[node], depth[part.node()] + 1);
      if (uses[node] < 2 && depth[node] < deepest) continue;
      depth[node] = 0;
      symbols_[node] = names_.give(fmt::format("n{}", ++named));
    }
  }

  // The depth of the recursion is bounded by `deepest`.
  void print(Lines& lines, Term term) const {
    const std::string& symbol = symbols_[term.node()];
    if (term.node() == never.node()) {
      lines.put(term.negated() ? "true" : "false");
    } else if (symbol.empty()) {
      print_node(lines, term.node(), term.negated());
    } else {
      lines.put(term.negated() ? fmt::format("(not {})", symbol) : symbol);
    }
  }

  /// The parts of a conjunction, or of the disjunction that its negation is; those of one in it that has no name as
  /// well.
  void print_parts(Lines& lines, std::span<const Term> parts, bool negated) const {
    for (const Term part : parts) {
      const bool within = !part.negated() && symbols_[part.node()].empty() && terms_.op(part.node()) == Op::all;
      if (within) {
        print_parts(lines, terms_.parts(part.node()), negated);
      } else {
        print(lines, negated ? !part : part);
      }
    }
  }

  /// A negation moves into a conjunction and a difference, and stays before a choice.
  void print_node(Lines& lines, std::uint32_t node, bool negated) const {
    const auto parts = terms_.parts(node);
    switch (terms_.op(node)) {
      case Op::constant:
      case Op::variable:
        break;
      case Op::all:
        lines.put(negated ? "(or" : "(and");
        print_parts(lines, parts, negated);
        lines.put(")", true);
        break;
      case Op::choose:
        lines.put(negated ? "(not (ite" : "(ite");
        for (const Term part : parts) print(lines, part);
        lines.put(negated ? "))" : ")", true);
        break;
      case Op::differ:
        lines.put(negated ? "(=" : "(xor");
        for (const Term part : parts) print(lines, part);
        lines.put(")", true);
        break;
    }
  }

  const Terms& terms_;
  Names names_;
  std::vector<std::uint32_t> cone_;
  std::vector<std::string> symbols_;  ///< per node; empty where it is written out
};

}  // namespace

std::string smtlib_question(const Terms& terms, std::string_view comment, Status status,
                            std::span<const Assertion> assertions) {
  const Script script(terms, assertions);
  std::string out = as_comment(comment);
  out += "(set-info :smt-lib-version 2.6)\n(set-logic QF_UF)\n";
  out += fmt::format("(set-info :status {})\n", status_name(status));
  out += script.declarations();
  out += script.definitions();
  for (const auto& [says, term] : assertions) {
    out += as_comment(says);
    out += script.assertion(term);
  }
  out += "(check-sat)\n(exit)\n";
  return out;
}

}  // namespace cairn::system
