/// \file
/// Two ways to the same answer disagree: an error in cairn, never in the input. Exit status 70.
#pragma once

#include <stdexcept>

namespace cairn {

/// A promise inside cairn that does not hold. `what()` says which, for a bug report.
class Contradiction : public std::logic_error {
 public:
  using std::logic_error::logic_error;
};

}  // namespace cairn
