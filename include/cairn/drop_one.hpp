/// \file
/// Idle protection: what of a procedure's awaits, checks, saves and orderings protects nothing that is asked. Each is
/// left out by itself, and all that is proved is proved again without it.
#pragma once

#include <vector>

#include "cairn/model.hpp"
#include "cairn/options.hpp"
#include "cairn/result.hpp"
#include "cairn/verdict.hpp"
#include "cairn/why.hpp"

namespace cairn {

/// What a procedure has for its own protection: its awaits, checks, saves and orderings, as `parts_of` lists them.
[[nodiscard]] std::vector<Part> protections_of(const Model& model);

/// A protection that was left out by itself.
struct Dropped {
  Part part;
  std::vector<LeftOut> proofs;  ///< what becomes of each property that is proved, in the order asked; at least one

  /// Of all of them together: needed where one is, else vacuous where one is, else unknown where one is, else idle.
  /// Never used.
  [[nodiscard]] Standing standing() const;
};

struct DropOne {
  Report report;  ///< what `prove` says of the procedure itself
  /// One a protection, as `protections_of` lists them; none where no property is proved, for then nothing can be lost.
  /// What is refuted or undecided in the procedure itself is asked of no variant.
  std::vector<Dropped> dropped;
};

/// Settles every asked property, and proves without each protection what is proved with it. The limits are for all of
/// it: what is not settled by then is unknown. An error where `prove` has one.
[[nodiscard]] Result<DropOne> drop_one(const Model& model, const ProveOptions& options = {});

}  // namespace cairn
