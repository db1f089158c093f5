/// \file
/// What is wrong with an input, told so that it can be mended: where it stands, what was expected, what was perhaps
/// meant.
#pragma once

#include <string>
#include <vector>

namespace cairn {

/// A stretch of one line of one input file.
struct Span {
  std::string file;  ///< As the user wrote it, or joined with the naming file's folder; "-" is standard input.
  int line = 0;      ///< From 1; 0 where the whole file is meant.
  int column = 0;    ///< From 1, counted in characters (Unicode code points); 0 where the whole line is meant.
  int length = 1;    ///< Characters covered, at least 1.
};

/// One problem of an input.
struct Diagnostic {
  Span span;
  std::string message;      ///< One sentence without a full stop: what is wrong.
  std::string expected;     ///< What would have been right; may be empty.
  std::string nearest;      ///< The known name that is nearest to the one written; may be empty.
  std::string source_line;  ///< The offending line, without its line break; empty where no line is meant.
};

using Diagnostics = std::vector<Diagnostic>;

}  // namespace cairn
