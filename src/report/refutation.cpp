#include "report/refutation.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/text.hpp"
#include "cairn/render.hpp"
#include "report/advice.hpp"
#include "report/changes.hpp"
#include "report/fatal.hpp"
#include "report/narrate.hpp"
#include "report/picture.hpp"
#include "report/words.hpp"

namespace cairn::report {

namespace {

using semantics::World;

constexpr std::size_t number_width = 4;
constexpr std::size_t actor_width = 10;
constexpr std::size_t table_indent = 2 + number_width;

void tell_pictures(Page& page, const World& world, const Walk& walk) {
  std::vector<Snapshot> snapshots;
  if (walk.moments.empty()) {
    snapshots = {{"at first", &walk.initial}, {"then", &walk.last()}};
  } else {
    const Moment& last = walk.moments.back();
    snapshots = {{"before", &state_before_end(walk, *walk.breach)}, {"then", &last.left}, {"after", &last.after()}};
    // Of two that look alike the last word is "after".
    if (look_alike(world, last.left, last.after())) snapshots.erase(snapshots.begin() + 1);
  }
  page.line();
  for (const auto& line : draw(world, snapshots)) page.line(line);
  page.line();
  page.paragraph(2, legend(), Tone::faint);
}

// The properties that break, each with its sentence; those with the same sentence together.
void tell_what_broke(Page& page, const World& world, const std::vector<Refuted>& refuted) {
  std::vector<std::pair<std::string, std::vector<std::string>>> sentences;
  for (const Refuted& one : refuted) {
    const std::string sentence = explain(world.model(), *one.walk.breach, one.walk);
    const auto same =
        std::find_if(sentences.begin(), sentences.end(), [&](const auto& s) { return s.first == sentence; });
    if (same == sentences.end()) {
      sentences.push_back({sentence, {name_with_k(one.asked)}});
    } else {
      same->second.push_back(name_with_k(one.asked));
    }
  }
  page.line();
  const char* label = "What broke";
  for (const auto& [sentence, names] : sentences) {
    page.entry(2, label, 12, sentences.size() == 1 ? sentence : fmt::format("{}: {}", listed(names), sentence),
               Tone::heading);
    label = "";
  }
}

void tell_ways_out(Page& page, const World& world, const std::vector<Refuted>& refuted) {
  std::vector<std::string> told;
  for (const Refuted& one : refuted) {
    for (auto& way : ways_out(world, one.walk, *one.walk.breach)) {
      if (std::find(told.begin(), told.end(), way) == told.end()) told.push_back(std::move(way));
    }
  }
  const char* label = "A way out";
  for (const auto& way : told) {
    page.entry(2, label, 12, way, Tone::heading);
    label = "";
  }
}

}  // namespace

std::string name_with_k(const AskedProperty& asked) {
  const std::string name(cairn::name_of(asked.property));
  return asked.property == Property::tolerates_loss ? fmt::format("{}={}", name, asked.k) : name;
}

std::string length_in_words(const Trace& events) {
  if (events.empty()) return "no event at all, at the start";
  const auto faults =
      std::count_if(events.begin(), events.end(), [](const Event& e) { return actor_of(e.kind) == Actor::fault; });
  std::string out = counted(events.size(), "event");
  if (faults == 0) return out + ", none of them a fault";
  if (faults == 1) return out + (events.size() == 1 ? ", a fault" : ", one of them a fault");
  return fmt::format("{}, {} of them faults", out, faults);
}

void tell_moment(Page& page, const World& world, const Moment& moment, std::size_t number) {
  const Actor actor = actor_of(moment.event.kind);
  const Tone tone = actor == Actor::fault ? Tone::fault : Tone::plain;
  const std::string label = fmt::format("{:>{}}  {}", number, number_width, name_of(actor));
  page.entry(0, label, table_indent + actor_width, what_happens(world.model(), moment), tone, tone);
  for (const auto& change : changes(world, moment)) {
    page.entry(table_indent + actor_width, "-", 2, change, Tone::faint);
  }
}

void tell_refutation(Page& page, const World& world, const std::vector<Refuted>& refuted) {
  const Walk& walk = refuted.front().walk;
  std::vector<std::string> names;
  Trace events;
  for (const Refuted& one : refuted) names.push_back(name_with_k(one.asked));
  for (const Moment& moment : walk.moments) events.push_back(moment.event);
  page.heading(fmt::format("How {} break{}: {}", listed(names), names.size() == 1 ? "s" : "", length_in_words(events)));
  page.line();
  const std::vector<std::string> at_start = settling(world, walk.initial, walk.initial_passes);
  for (const auto& change : at_start) page.entry(table_indent, "at first", actor_width, change);
  for (std::size_t i = 0; i < walk.moments.size(); ++i) tell_moment(page, world, walk.moments[i], i + 1);
  tell_pictures(page, world, walk);
  tell_what_broke(page, world, refuted);
  tell_ways_out(page, world, refuted);
}

}  // namespace cairn::report
