/// \file
/// A question on a system, and its text: what its comment tells a reader who knows logic and not cairn.
#pragma once

#include <string>
#include <vector>

#include "cairn/export.hpp"
#include "system/build.hpp"
#include "system/smtlib.hpp"

namespace cairn::verify {

/// A question that is not written yet.
struct Draft {
  std::string name;  ///< as ExportedQuestion has it
  std::string says;
  bool satisfiable = false;
  std::string expected;  ///< what the expected answer means, after "there is": "no state in which all facts hold"
  std::vector<system::Assertion> assertions;
};

/// The draft as a file.
[[nodiscard]] ExportedQuestion written(const system::System& system, const AskedProperty& asked, const Draft& draft);

/// `words` as part of a file name: letters, digits and single dashes, at most 60 of them.
[[nodiscard]] std::string slug(const std::string& words);

/// "no-split", "tolerates-loss=2"
[[nodiscard]] std::string name_with_k(const AskedProperty& asked);

/// What breaks the property, as a clause about a state, an event and what settling makes of it: "a device is held, or
/// …".
[[nodiscard]] std::string breach_in_words(const Model& model, const AskedProperty& asked);

}  // namespace cairn::verify
