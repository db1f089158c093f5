/// \file
/// Everything that cairn offers to a program. A worked example, from a file to a verdict:
///
/// \code
/// #include <cairn/cairn.hpp>
/// #include <iostream>
///
/// int main() {
///   const cairn::DiskFiles disk;
///   const auto model = cairn::load_procedure("append.yaml", disk);
///   if (!model) {
///     std::cerr << cairn::render_diagnostics(model.problems());
///     return 2;
///   }
///   const auto report = cairn::prove(model.value());
///   if (!report) {
///     std::cerr << cairn::render_diagnostics(report.problems());
///     return 2;
///   }
///   std::cout << cairn::render_text(model.value(), report.value());
///   return report.value().verdict() == cairn::Verdict::proved ? 0 : 1;
/// }
/// \endcode
#pragma once

#include "cairn/condition.hpp"
#include "cairn/diagnostic.hpp"
#include "cairn/drop_one.hpp"
#include "cairn/export.hpp"
#include "cairn/files.hpp"
#include "cairn/ids.hpp"
#include "cairn/lint.hpp"
#include "cairn/load.hpp"
#include "cairn/memory.hpp"
#include "cairn/model.hpp"
#include "cairn/nearest.hpp"
#include "cairn/options.hpp"
#include "cairn/property.hpp"
#include "cairn/prove.hpp"
#include "cairn/quantity.hpp"
#include "cairn/render.hpp"
#include "cairn/result.hpp"
#include "cairn/state.hpp"
#include "cairn/unknowns.hpp"
#include "cairn/verdict.hpp"
#include "cairn/version.hpp"
#include "cairn/walk.hpp"
#include "cairn/why.hpp"
