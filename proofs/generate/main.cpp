// Writes the machine-checked part of the lemmas of proofs/ as SMT-LIB 2.6.
#include <array>
#include <cstdio>
#include <exception>
#include <string>

#include "questions.hpp"

namespace {

using namespace cairn::proofs;

constexpr std::array<Writer, 11> lemmas = {rank,       laws,         few_passes, settled_states,    loss,
                                           runs_end,   quiet_events, apart,      unasked_seniority, somebody_between,
                                           overwritten};

}  // namespace

int main(int count, char** arguments) {
  try {
    if (count != 3) {
      std::fputs("usage: generate_proofs DEVICES FOLDER\n", stderr);
      return 2;
    }
    const Questions questions(arguments[2], std::stoi(arguments[1]));
    for (const Writer write : lemmas) write(questions);
  } catch (const std::exception& error) {
    std::fprintf(stderr, "generate_proofs: %s\n", error.what());
    return 1;
  }
  return 0;
}
