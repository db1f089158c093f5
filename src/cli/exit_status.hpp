/// \file
/// What the program tells its caller by its exit status (docs/format.md).
#pragma once

namespace cairn::cli {

enum ExitStatus : int {
  all_proved = 0,
  some_refuted = 1,
  wrong_input = 2,  ///< the input or the call; nothing was analysed
  some_undecided = 3,
  no_answer = 70,  ///< cairn contradicts itself, or could not write its answer
  interrupted = 130,
};

}  // namespace cairn::cli
