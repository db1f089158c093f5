/// \file
/// The models of the project, read from disk with what they state about themselves.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "cairn/model.hpp"
#include "cairn/verdict.hpp"

namespace cairn::test {

/// One line `# expect: PROPERTY[=K] proved [vacuous]` or `# expect: PROPERTY[=K] refuted EVENTS` (models/README.md).
struct Expectation {
  AskedProperty asked;
  Verdict verdict = Verdict::proved;
  bool vacuous = false;
  std::size_t events = 0;  ///< refuted: the length of a shortest refutation
};

/// Reads what follows `# expect: `, or nothing where the line does not keep to the syntax.
[[nodiscard]] std::optional<Expectation> read_expectation(std::string_view text);

/// The comment that a model file opens with.
struct Heading {
  std::vector<std::string> prose;  ///< its lines without the mark
  std::vector<Expectation> expectations;
  std::optional<std::string> mistake_of;  ///< the file name of the sound procedure that it spoils
  std::vector<std::string> malformed;     ///< lines that begin like an expectation and are none
};

[[nodiscard]] Heading read_heading(const std::string& text);

/// A procedure that was read and proved.
struct Proved {
  std::string path;  ///< from models/ on: "procedures/append-east.yaml"
  Heading heading;
  Model model;
  Report report;
};

/// Every file named *.yaml under models/, as a path from models/ on, sorted.
[[nodiscard]] std::vector<std::string> model_files();

/// The text of a file under models/.
[[nodiscard]] std::string model_text(const std::string& path);

/// The absolute path of a file under models/.
[[nodiscard]] std::string model_path(const std::string& path);

/// True for procedures/ and for the procedures of quickstart/.
[[nodiscard]] bool is_procedure(const std::string& path);

/// All procedures, read and proved once a process. One that cannot be read or proved fails the running test and is left
/// out.
[[nodiscard]] const std::vector<Proved>& shelf();

}  // namespace cairn::test
