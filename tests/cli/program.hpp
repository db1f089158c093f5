/// \file
/// The program as its caller sees it: started with arguments, watched until it ends.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace cairn::test {

struct Ran {
  int status = -1;  ///< The exit status, or 128 and the signal that ended it, as a shell tells it.
  std::string out;
  std::string err;
};

struct Start {
  std::vector<std::string> arguments;
  std::string input = {};                     ///< standard input
  std::vector<std::string> environment = {};  ///< NAME=VALUE, on top of an otherwise empty environment
  std::string output_file = {};               ///< standard output goes there instead
  bool close_output = false;                  ///< nobody reads standard output
  std::uint64_t address_space = 0;            ///< bytes, where it is limited
  bool on_terminal = false;                   ///< output and errors are one terminal; `out` holds what it shows
  /// Called with the process id once the program runs.
  std::function<void(int)> meanwhile = {};
};

/// Runs the program to its end.
[[nodiscard]] Ran run(const Start& start);

/// Runs the program with these arguments and nothing else.
[[nodiscard]] Ran run(std::vector<std::string> arguments);

/// A new directory for files of a test, gone when the object is.
class Workplace {
 public:
  Workplace();
  Workplace(const Workplace&) = delete;
  Workplace& operator=(const Workplace&) = delete;
  ~Workplace();

  /// Writes a file; answers its path.
  std::string write(const std::string& name, const std::string& content) const;
  [[nodiscard]] const std::string& path() const { return path_; }

 private:
  std::string path_;
};

}  // namespace cairn::test
