#include "solver/pigeonholes.hpp"

namespace cairn::test {

Pigeonholes add_pigeonholes(solver::Solver& solver, std::size_t pigeons, std::size_t holes) {
  Pigeonholes made;
  for (std::size_t i = 0; i < pigeons; ++i) {
    made.sits.emplace_back();
    for (std::size_t j = 0; j < holes; ++j) made.sits[i].push_back(solver.declare());
    solver.add(made.sits[i]);
  }
  for (std::size_t j = 0; j < holes; ++j) {
    for (std::size_t a = 0; a < pigeons; ++a) {
      for (std::size_t b = a + 1; b < pigeons; ++b) solver.add({!made.sits[a][j], !made.sits[b][j]});
    }
  }
  return made;
}

}  // namespace cairn::test
