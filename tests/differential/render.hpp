/// \file
/// A draft as YAML (docs/format.md).
#pragma once

#include "differential/draft.hpp"

namespace cairn::differential {

/// One document, with its site and its platform written in place.
std::string render(const Draft& draft);

/// Three documents by path; the procedure is at `procedure_path`.
std::map<std::string, std::string> render_files(const Draft& draft);
inline constexpr const char* procedure_path = "procedures/random.yaml";

std::string render(const ConditionDraft& condition);

}  // namespace cairn::differential
