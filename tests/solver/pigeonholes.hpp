/// \file
/// The pigeonhole formulas: more pigeons than holes, no two in one hole. Unsatisfiable, and hard for resolution.
///
/// Source: A. Haken, "The intractability of resolution", Theoretical Computer Science 39 (1985), 297-308, on formulas
/// by S. Cook. Their sizes are those of the benchmarks hole6 to hole10 of the second DIMACS challenge (1993). Both from
/// memory.
#pragma once

#include <cstdint>
#include <vector>

#include "solver/solver.hpp"

namespace cairn::test {

struct Pigeonholes {
  /// sits[i][j]: pigeon i sits in hole j.
  std::vector<std::vector<solver::Literal>> sits;
};

/// Adds the formula. With as many holes as pigeons, or more, it is satisfiable.
Pigeonholes add_pigeonholes(solver::Solver& solver, std::size_t pigeons, std::size_t holes);

}  // namespace cairn::test
