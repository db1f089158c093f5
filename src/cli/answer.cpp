#include "cli/answer.hpp"

#include <fmt/format.h>

#include "cli/exit_status.hpp"
#include "cli/terminal.hpp"

namespace cairn::cli {

int status_of(const Report& report) {
  if (report.contradicted()) return no_answer;
  if (report.interrupted()) return interrupted;
  switch (report.verdict()) {
    case Verdict::proved:
      return all_proved;
    case Verdict::refuted:
      return some_refuted;
    case Verdict::undecided:
      return some_undecided;
  }
  return no_answer;
}

void cry_out(const std::string& file, const Report& report) {
  for (const PropertyVerdict& p : report.properties) {
    if (p.verdict != Verdict::undecided || p.reason != Reason::contradiction) continue;
    complain(fmt::format("cairn: {}: contradiction on {}: {}. Nothing is claimed; please report this with the model.\n",
                         file, name_of(p.asked.property), p.contradiction));
  }
}

}  // namespace cairn::cli
