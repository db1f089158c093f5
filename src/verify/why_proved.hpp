/// \file
/// What is proved of a procedure, asked once more of the procedure without some of its parts.
#pragma once

#include <vector>

#include "cairn/why.hpp"
#include "verify/why_trials.hpp"

namespace cairn::verify {

/// The properties that are proved of a model. The model, the verdicts and the trials have to outlive it.
class ProvedOnes {
 public:
  /// \param verdicts  those on `model` itself; only what is proved among them is asked
  ProvedOnes(const Model& model, const std::vector<PropertyVerdict>& verdicts, const Trials& trials);

  /// True where nothing is proved.
  [[nodiscard]] bool empty() const { return proved_.empty(); }

  /// What becomes of each without the parts, in the order of the verdicts; never `used`. All are put to one proof.
  [[nodiscard]] std::vector<LeftOut> leave_out(const std::vector<Part>& parts) const;

 private:
  const Model& model_;
  const Trials& trials_;
  std::vector<const PropertyVerdict*> proved_;
  std::vector<AskedProperty> asked_;  ///< of those
};

}  // namespace cairn::verify
