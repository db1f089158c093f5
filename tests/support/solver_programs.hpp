/// \file
/// Two programs that know SMT-LIB, none of ours: what they answer to a script.
#pragma once

#include <string>

namespace cairn::test {

enum class SolverProgram { z3, cvc5 };

/// All that the program prints, on either stream, when it reads the script with its strictest reading of the standard;
/// followed by its exit status where that is not 0.
[[nodiscard]] std::string answer_of(SolverProgram program, const std::string& script);

}  // namespace cairn::test
