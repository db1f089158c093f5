/// \file
/// YAML text as nodes, written back in one line so that tests can compare it.
#pragma once

#include <memory>
#include <string>

#include "syntax/yaml.hpp"

namespace cairn::test {

/// `[a, "b", {k: v}]`: plain scalars as they are, quoted and block scalars in double quotes with \n and \t spelled
/// out, nothing as `-`.
inline std::string written(const syntax::Node& node) {
  using Kind = syntax::Node::Kind;
  std::string out;
  switch (node.kind) {
    case Kind::empty:
      return "-";
    case Kind::plain:
      return node.text;
    case Kind::quoted:
      for (const char c : node.text) out += c == '\n' ? "\\n" : c == '\t' ? "\\t" : std::string(1, c);
      return '"' + out + '"';
    case Kind::sequence:
      for (const auto& item : node.items) out += (out.empty() ? "" : ", ") + written(item);
      return '[' + out + ']';
    case Kind::mapping:
      for (const auto& [key, value] : node.entries) {
        out += (out.empty() ? "" : ", ") + written(key) + ": " + written(value);
      }
      return '{' + out + '}';
  }
  return out;
}

/// A text that was parsed, with all that its nodes point into.
struct Parsed {
  std::unique_ptr<syntax::Source> source;
  syntax::Problems problems;
  std::optional<syntax::Node> node;

  explicit Parsed(std::string text) : source(std::make_unique<syntax::Source>("m.yaml", std::move(text))) {
    node = syntax::parse_yaml(*source, problems);
  }

  /// What was read, or "LINE:COLUMN MESSAGE" of the first problem.
  [[nodiscard]] std::string told() const {
    if (node) return written(*node);
    const auto first = problems.sorted({"m.yaml"}).front();
    return std::to_string(first.span.line) + ':' + std::to_string(first.span.column) + ' ' + first.message;
  }
};

inline std::string yaml(std::string text) {
  return Parsed(std::move(text)).told();
}

}  // namespace cairn::test
