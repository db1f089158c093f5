/// \file
/// One stretch of time for many questions.
#pragma once

#include <algorithm>
#include <chrono>
#include <optional>

namespace cairn::solver {

/// The end of a stretch of wall-clock time that begins with the construction; without a length it never ends.
class Deadline {
 public:
  explicit Deadline(std::optional<double> seconds) : seconds_(seconds) {}

  /// The seconds that are left, 0 or more; nothing where time does not matter.
  [[nodiscard]] std::optional<double> left() const {
    if (!seconds_) return {};
    const std::chrono::duration<double> elapsed = std::chrono::steady_clock::now() - start_;
    return std::max(0.0, *seconds_ - elapsed.count());
  }

 private:
  std::optional<double> seconds_;
  std::chrono::steady_clock::time_point start_ = std::chrono::steady_clock::now();
};

}  // namespace cairn::solver
