#include "explore/scout.hpp"

#include <algorithm>

#include "explore/tail.hpp"

namespace cairn::explore {

void Scout::explore(Stretch& out, const std::vector<AskedProperty>& at_rest, const Sentry& sentry,
                    const Sightings& seen, const AskLimits& ask) {
  out.eventful = out.completed = false;
  out.successors.clear();
  out.ends.clear();
  out.rows.clear();
  out.hashes.clear();
  out.forgotten.clear();
  out.savings = {};
  try {
    out.sentry.emplace(sentry);
    out.seen.emplace(seen);
    for (StateIndex index = out.begin; index < out.end && !out.eventful; ++index) expand(index, out, at_rest, ask);
  } catch (...) {
    out.eventful = true;
  }
}

void Scout::expand(StateIndex index, Stretch& out, const std::vector<AskedProperty>& at_rest, const AskLimits& ask) {
  expander_.open(store_[index]);
  out.seen->open(world_, expander_.state(), expander_.events());
  for (const Event& event : expander_.events()) {
    out.sentry->reset();
    out.sentry->note(expander_.state(), event, expander_.take(event, *out.sentry));
    if (out.sentry->alarmed()) {
      out.eventful = true;
      return;
    }
    out.seen->taken(event, expander_.next());
    const bool by_start = event.kind == Event::Kind::started;
    const std::uint64_t* const row = expander_.packed_next();
    const std::uint64_t hash = store_.hash_of(row);
    const std::optional<StateIndex> known = store_.find(row, hash);
    if (known) note_outcome(out.savings, expander_.forgotten(), true);
    if (known && !by_start) continue;
    out.successors.push_back({known.value_or(Stretch::newcomer), by_start});
    if (known) continue;
    out.rows.insert(out.rows.end(), row, row + words_);
    out.hashes.push_back(hash);
    out.forgotten.push_back(expander_.forgotten());
  }
  out.ends.push_back(static_cast<std::uint32_t>(out.successors.size()));
  if (!expander_.at_rest()) return;
  out.completed = out.completed || semantics::complete(expander_.state());
  out.eventful = std::any_of(at_rest.begin(), at_rest.end(), [&](const AskedProperty& asked) {
    return fatal_tail(world_, expander_.state(), expander_.derived(), asked, out.sentry->ties(), ask).has_value();
  });
}

}  // namespace cairn::explore
