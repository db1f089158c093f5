#include "cli/terminal.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <string_view>

namespace cairn::cli {

namespace {

constexpr double seconds_between_drawings = 0.25;
constexpr std::string_view wipe = "\r\x1b[K";

bool is_terminal_with_colours(int descriptor) {
  const char* no_colour = std::getenv("NO_COLOR");
  const char* terminal = std::getenv("TERM");
  const bool refused = no_colour && *no_colour != '\0';
  const bool dumb = !terminal || *terminal == '\0' || std::string_view(terminal) == "dumb";
  return !refused && !dumb && isatty(descriptor) == 1;
}

/// Writes all of `text`; answers 0, or the errno of the write that failed.
int write_all(int descriptor, std::string_view text) {
  while (!text.empty()) {
    const ssize_t written = ::write(descriptor, text.data(), text.size());
    if (written < 0 && errno == EINTR) continue;
    if (written < 0) return errno;
    text.remove_prefix(static_cast<std::size_t>(written));
  }
  return 0;
}

// "12.3 million", "123 thousand": a figure for the eye.
std::string about(double n) {
  if (n >= 999.95e3) return fmt::format("{:.1f} million", n / 1e6);
  if (n >= 10e3) return fmt::format("{:.0f} thousand", n / 1e3);
  return fmt::format("{:.0f}", n);
}

}  // namespace

bool colours_on_output() {
  return is_terminal_with_colours(STDOUT_FILENO);
}
bool colours_on_errors() {
  return is_terminal_with_colours(STDERR_FILENO);
}

void Output::write(const std::string& text) {
  if (closed_ || !failure_.empty()) return;
  const int error = write_all(STDOUT_FILENO, text);
  if (error == EPIPE) {
    closed_ = true;
  } else if (error != 0) {
    failure_ = std::strerror(error);
  }
}

void complain(const std::string& text) {
  write_all(STDERR_FILENO, text);
}

ProgressLine::ProgressLine(bool wanted) : shown_(wanted && isatty(STDERR_FILENO) == 1) {}

ProgressLine::~ProgressLine() {
  if (drawn_) complain(std::string(wipe));
}

void ProgressLine::draw(const Progress& progress) {
  if (!shown_ || progress.seconds - last_ < seconds_between_drawings) return;
  last_ = progress.seconds;
  drawn_ = true;
  const double rate = static_cast<double>(progress.states) / std::max(progress.seconds, 1e-3);
  complain(fmt::format("{}{} states after {:.0f} s, {} a second, {} waiting, {} events deep", wipe,
                       about(static_cast<double>(progress.states)), progress.seconds, about(rate),
                       about(static_cast<double>(progress.waiting)), progress.depth));
}

}  // namespace cairn::cli
