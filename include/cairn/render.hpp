/// \file
/// Answers as text for people and as JSON for programs. Same input, same bytes.
#pragma once

#include <optional>
#include <string>

#include "cairn/diagnostic.hpp"
#include "cairn/drop_one.hpp"
#include "cairn/export.hpp"
#include "cairn/lint.hpp"
#include "cairn/model.hpp"
#include "cairn/result.hpp"
#include "cairn/verdict.hpp"
#include "cairn/walk.hpp"
#include "cairn/why.hpp"

namespace cairn {

struct TextStyle {
  bool colour = false;  ///< ANSI colours; never the only carrier of a meaning.
  bool timing = false;  ///< Times, which differ from run to run.
  bool brief = false;   ///< The verdicts alone (`--quiet`).
};

/// The report on one procedure for a person: verdict first.
[[nodiscard]] std::string render_text(const Model& model, const Report& report, const TextStyle& style = {});

/// One line on one procedure, for the end of a run over several.
[[nodiscard]] std::string render_summary_line(const std::string& path, const Model& model, const Report& report,
                                              const TextStyle& style = {});

/// The verdict as one line of JSON, schema cairn/verdict/1 (docs/format.md), without a line break at its end.
[[nodiscard]] std::string render_json(const Model& model, const Report& answer, bool timing = false);

/// Why the verdicts are what they are, for a person.
[[nodiscard]] std::string render_why_text(const Model& model, const Why& why, const TextStyle& style = {});

/// The same as one line of JSON, schema cairn/why/1 (docs/cli.md), without a line break at its end.
[[nodiscard]] std::string render_why_json(const Model& model, const Why& why);

/// Which protections of a procedure idle, and what breaks without the others, for a person.
[[nodiscard]] std::string render_drop_one_text(const Model& model, const DropOne& answer, const TextStyle& style = {});

/// The same as one line of JSON, schema cairn/why/1 (docs/cli.md), without a line break at its end.
[[nodiscard]] std::string render_drop_one_json(const Model& model, const DropOne& answer);

/// README.txt beside exported questions: what they are, what they show together, and which answer is expected of each.
[[nodiscard]] std::string render_export_index(const Model& model, const Export& all);

/// What was exported to `folder`, for the one who asked.
[[nodiscard]] std::string render_export_summary(const Model& model, const Export& all, const std::string& folder,
                                                const TextStyle& style = {});

/// Every problem with its line and a caret.
[[nodiscard]] std::string render_diagnostics(const Diagnostics& problems, const TextStyle& style = {});

/// A run, moment by moment. `asked` is the property that a refutation breaks.
[[nodiscard]] std::string render_walk(const Model& model, const Walk& walk,
                                      const std::optional<AskedProperty>& asked = {}, const TextStyle& style = {});

/// Problems and findings of one file.
[[nodiscard]] std::string render_lint(const std::string& path, const LintReport& report, const TextStyle& style = {});

/// What broke, and why, in one plain sentence.
[[nodiscard]] std::string explain(const Model& model, const Breach& breach, const Walk& walk);

/// A refutation read back from a verdict.
struct Refutation {
  AskedProperty asked;
  FaultBudget faults;
  Trace events;
};

/// The first refutation in a verdict document (of `property` and, for tolerates-loss, of `k`, where given). `file`
/// names the document in problems.
[[nodiscard]] Result<Refutation> read_refutation(const Model& model, const std::string& text, const std::string& file,
                                                 const std::optional<Property>& property = {},
                                                 const std::optional<std::int64_t>& k = {});

}  // namespace cairn
