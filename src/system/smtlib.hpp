/// \file
/// Terms as SMT-LIB 2.6 text, core theory alone.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

#include "system/term.hpp"

namespace cairn::system {

/// What is known of the answer to a question.
enum class Status : std::uint8_t { sat, unsat, unknown };

/// An assertion and what it says, in words.
struct Assertion {
  std::string says;
  Term term;
};

/// One question: are the assertions satisfiable together? Logic QF_UF, Booleans alone, nothing that the standard does
/// not have. `comment` is told at the top and `says` above each assertion, as comments wrapped to 100 columns.
///
/// Every variable that an assertion is built from is declared under its own name, `|` and `\` in it replaced by `/`;
/// where two would be called the same, or one like a word of the language, a suffix `~2`, `~3`… tells them apart. Nodes
/// that are used more than once, or that nest deeply, are declared as n1, n2… in the order of the pool, each with an
/// equation that says what it is.
[[nodiscard]] std::string smtlib_question(const Terms& terms, std::string_view comment, Status status,
                                          std::span<const Assertion> assertions);

}  // namespace cairn::system
