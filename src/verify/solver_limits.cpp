#include "verify/solver_limits.hpp"

#include <utility>

#include "verify/audit.hpp"

namespace cairn::verify {

namespace {

Reason reason_of(solver::Cause cause) {
  switch (cause) {
    case solver::Cause::memory:
      return Reason::memory;
    case solver::Cause::interrupted:
      return Reason::interrupted;
    case solver::Cause::none:
    case solver::Cause::failed:
      return Reason::contradiction;
    case solver::Cause::time:
    case solver::Cause::effort:
      return Reason::time;
  }
  return Reason::contradiction;
}

}  // namespace

solver::Bounds bounds_of(const Limits& limits) {
  return {.seconds = limits.seconds, .effort = {}, .megabytes = limits.megabytes};
}

void leave_undecided(solver::Cause cause, std::string complaint, PropertyVerdict& verdict) {
  const Reason reason = reason_of(cause);
  if (reason == Reason::contradiction) return claim_nothing(std::move(complaint), verdict);
  verdict.verdict = Verdict::undecided;
  verdict.reason = reason;
  verdict.settled = {};
}

}  // namespace cairn::verify
