/// \file
/// Terms as SMT-LIB 2.6 text, core theory alone.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "system/term.hpp"

namespace cairn::system {

/// What is known of the answer to a question.
enum class Status : std::uint8_t { sat, unsat, unknown };

/// A named assertion; the name is printed as a comment above it.
struct Assertion {
  std::string says;
  Term term;
};

/// One question: are the assertions satisfiable together? `comment` is told at the top, wrapped to 100 columns; every
/// variable is declared under its own name (made to differ by a suffix where two share one), shared nodes are named by
/// define-fun in the order of the pool.
[[nodiscard]] std::string smtlib_question(const Terms& terms, std::string_view comment, Status status,
                                          std::span<const Assertion> assertions);

}  // namespace cairn::system
