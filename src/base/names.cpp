#include <algorithm>
#include <array>

#include "cairn/lint.hpp"
#include "cairn/property.hpp"
#include "cairn/verdict.hpp"

namespace cairn {

namespace {

constexpr std::array<std::string_view, property_count> property_names = {
    "no-split",   "primary-stays", "members-stay",        "no-clash",
    "no-refusal", "reaches-goal",  "survives-cold-start", "tolerates-loss",
};

}  // namespace

std::string_view name_of(Property property) {
  return property_names[static_cast<std::size_t>(property)];
}

std::optional<Property> property_named(std::string_view name) {
  const auto found = std::find(property_names.begin(), property_names.end(), name);
  if (found == property_names.end()) return std::nullopt;
  return static_cast<Property>(found - property_names.begin());
}

Actor actor_of(Event::Kind kind) {
  switch (kind) {
    case Event::Kind::step:
      return Actor::operator_;
    case Event::Kind::started:
      return Actor::device;
    default:
      return Actor::fault;
  }
}

std::string_view name_of(Event::Kind kind) {
  switch (kind) {
    case Event::Kind::step:
      return "step";
    case Event::Kind::started:
      return "started";
    case Event::Kind::broke:
      return "broke";
    case Event::Kind::mended:
      return "mended";
    case Event::Kind::crashed:
      return "crashed";
    case Event::Kind::omitted:
      return "omitted";
    case Event::Kind::started_late:
      return "started-late";
    case Event::Kind::cold_start:
      return "cold-start";
  }
  return {};
}

std::string_view name_of(Emptiness::Kind kind) {
  switch (kind) {
    case Emptiness::Kind::never_waits:
      return "never-waits";
    case Emptiness::Kind::cannot_fail:
      return "cannot-fail";
    case Emptiness::Kind::never_strikes:
      return "never-strikes";
    case Emptiness::Kind::no_contest:
      return "no-contest";
  }
  return {};
}

std::string_view name_of(Verdict verdict) {
  switch (verdict) {
    case Verdict::proved:
      return "proved";
    case Verdict::refuted:
      return "refuted";
    case Verdict::undecided:
      return "undecided";
  }
  return {};
}

std::string_view name_of(Reason reason) {
  switch (reason) {
    case Reason::time:
      return "time";
    case Reason::memory:
      return "memory";
    case Reason::interrupted:
      return "interrupted";
    case Reason::contradiction:
      return "contradiction";
  }
  return {};
}

std::string_view name_of(Finding::Kind kind) {
  switch (kind) {
    case Finding::Kind::never_reached:
      return "never-reached";
    case Finding::Kind::never_waits:
      return "never-waits";
    case Finding::Kind::cannot_fail:
      return "cannot-fail";
    case Finding::Kind::changes_nothing:
      return "changes-nothing";
    case Finding::Kind::never_applied:
      return "never-applied";
    case Finding::Kind::goal_from_the_start:
      return "goal-from-the-start";
    case Finding::Kind::number_in_use:
      return "number-in-use";
    case Finding::Kind::out_of_range:
      return "out-of-range";
    case Finding::Kind::console_lost:
      return "console-lost";
  }
  return {};
}

Verdict Report::verdict() const {
  Verdict whole = Verdict::proved;
  for (const auto& p : properties) {
    if (p.verdict == Verdict::refuted) return Verdict::refuted;
    if (p.verdict == Verdict::undecided) whole = Verdict::undecided;
  }
  return whole;
}

namespace {

bool undecided_by(const Report& report, Reason reason) {
  return std::any_of(report.properties.begin(), report.properties.end(),
                     [&](const PropertyVerdict& p) { return p.verdict == Verdict::undecided && p.reason == reason; });
}

}  // namespace

bool Report::contradicted() const {
  return undecided_by(*this, Reason::contradiction);
}
bool Report::interrupted() const {
  return undecided_by(*this, Reason::interrupted);
}

std::string_view name_of(Settled::By by) {
  switch (by) {
    case Settled::By::refutation:
      return "refutation";
    case Settled::By::facts:
      return "facts";
    case Settled::By::states:
      return "states";
    case Settled::By::unrolling:
      return "unrolling";
  }
  return "";
}

}  // namespace cairn
