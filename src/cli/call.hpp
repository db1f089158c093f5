/// \file
/// What the command line asks for, as data.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "cairn/options.hpp"
#include "cairn/property.hpp"

namespace cairn::cli {

/// cairn prove
struct ProveCall {
  std::vector<std::string> files;
  ProveOptions options;
  bool json = false;
  bool quiet = false;
  bool timing = false;
};

/// cairn why
struct WhyCall {
  std::string file;
  ProveOptions options;
  bool json = false;
  bool drop_one = false;  ///< what each protection protects, and nothing else
};

/// cairn export
struct ExportCall {
  std::string file;
  std::string folder;
  ProveOptions options;  ///< with one property
};

/// cairn walk
struct WalkCall {
  std::string file;
  std::optional<std::string> verdict;  ///< a document with a refutation to walk
  std::optional<Property> property;    ///< which of its refutations
  std::optional<std::int64_t> k;       ///< of tolerates-loss, the one with this number of cables
};

/// cairn lint
struct LintCall {
  std::vector<std::string> files;
  Limits limits;
};

/// --help and --version: a text for standard output.
struct Show {
  std::string text;
};

/// A call that is wrong: what is wrong with it, for standard error.
struct Misuse {
  std::string text;
};

using Call = std::variant<ProveCall, WhyCall, ExportCall, WalkCall, LintCall, Show, Misuse>;

/// Reads the command line. Never throws on account of it.
[[nodiscard]] Call read_call(int argc, const char* const* argv);

}  // namespace cairn::cli
