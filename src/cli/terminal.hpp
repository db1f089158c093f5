/// \file
/// Standard output and standard error: who watches, colours, progress, and writes that may fail.
#pragma once

#include <string>

#include "cairn/options.hpp"

namespace cairn::cli {

/// Colours go to a terminal that has them, unless NO_COLOR is set to anything but nothing (https://no-color.org).
[[nodiscard]] bool colours_on_output();
[[nodiscard]] bool colours_on_errors();

/// Standard output. A reader that has gone away is no error: what is left is not written. Any other failure is kept.
class Output {
 public:
  void write(const std::string& text);
  /// Why the answer could not be written; empty where it could.
  [[nodiscard]] const std::string& failure() const { return failure_; }

 private:
  bool closed_ = false;
  std::string failure_;
};

/// Writes to standard error; nothing can be done where that fails.
void complain(const std::string& text);

/// One line on standard error that shows how far an exploration has come, while a terminal watches. It is gone when
/// the object is.
class ProgressLine {
 public:
  explicit ProgressLine(bool wanted);
  ProgressLine(const ProgressLine&) = delete;
  ProgressLine& operator=(const ProgressLine&) = delete;
  ~ProgressLine();

  [[nodiscard]] bool shown() const { return shown_; }
  /// Called as often as it likes; draws a few times a second.
  void draw(const Progress& progress);

 private:
  bool shown_;
  bool drawn_ = false;
  double last_ = 0;
};

}  // namespace cairn::cli
