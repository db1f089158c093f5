#include "explore/tail.hpp"

#include <algorithm>

#include "semantics/events.hpp"
#include "semantics/loss.hpp"
#include "semantics/properties.hpp"

namespace cairn::explore {

namespace {

std::optional<Trace> tail_of_loss(const semantics::World& world, const State& s, std::int64_t k, const AskLimits& ask) {
  std::optional<Reason> met;
  const auto must_stop = [&] { return (met = ask()).has_value(); };
  const semantics::Loss loss = semantics::find_fatal_loss(world, s, k, must_stop);
  if (loss.interrupted) throw Stopped{*met};
  if (!loss.fatal) return {};
  Trace tail;
  for (const CableId c : *loss.fatal) tail.push_back({Event::Kind::broke, c.value});
  return tail;
}

}  // namespace

std::optional<Trace> fatal_tail(const semantics::World& world, const State& s, const semantics::Derived& derived,
                                const AskedProperty& asked, semantics::Watcher& watcher, const AskLimits& ask) {
  if (asked.property == Property::reaches_goal) {
    return semantics::broken_at_rest(world, s, derived) ? std::optional<Trace>(Trace()) : std::nullopt;
  }
  if (!semantics::complete(s)) return {};
  if (asked.property == Property::tolerates_loss) return tail_of_loss(world, s, asked.k, ask);
  State after = s;
  semantics::Scratch scratch;
  if (!semantics::broken_by_cold_start(world, after, scratch, watcher)) return {};
  return Trace{{Event::Kind::cold_start, 0}};
}

std::size_t longest_tail(const semantics::World& world, const AskedProperty& asked) {
  if (asked.property == Property::survives_cold_start) return 1;
  if (asked.property != Property::tolerates_loss) return 0;
  return static_cast<std::size_t>(std::min(asked.k, static_cast<std::int64_t>(world.cable_count())));
}

}  // namespace cairn::explore
