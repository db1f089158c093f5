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

constexpr std::size_t label_width = 12;
constexpr std::size_t number_width = 4;
constexpr std::size_t actor_width = 10;
constexpr std::size_t table_indent = 2 + number_width;

// Of the states while all settles only those are worth a drawing in which a device is about to go down.
bool takes_devices_down(const std::vector<Pass>& passes) {
  return std::any_of(passes.begin(), passes.end(),
                     [](const Pass& pass) { return !pass.held.empty() || !pass.restarted.empty(); });
}

void tell_pictures(Page& page, const World& world, const Walk& walk, bool with_legend) {
  std::vector<Snapshot> snapshots;
  if (walk.moments.empty()) {
    snapshots = {{"at first", &walk.initial}, {"then", &walk.last()}};
  } else {
    const Moment& last = walk.moments.back();
    snapshots.push_back({"before", &state_before_end(walk, *walk.breach)});
    if (takes_devices_down(last.passes)) snapshots.push_back({"then", &last.left});
    snapshots.push_back({"after", &last.after()});
    // What looks alike is drawn once, and then it is neither.
    if (snapshots.size() == 2 && look_alike(world, *snapshots[0].state, last.after()))
      snapshots[0].caption = "as it is";
  }
  page.line();
  for (const auto& line : draw(world, snapshots)) page.line(line);
  if (!with_legend) return;
  page.line();
  page.paragraph(2, legend() + ".", Tone::faint);
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
  const char* label = "What broke";
  for (const auto& [sentence, names] : sentences) {
    page.entry(2, label, label_width, sentences.size() == 1 ? sentence : fmt::format("{}: {}", listed(names), sentence),
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
    page.entry(2, label, label_width, way, Tone::heading);
    label = "";
  }
}

}  // namespace

std::string name_with_k(const AskedProperty& asked) {
  const std::string name(cairn::name_of(asked.property));
  return asked.property == Property::tolerates_loss ? fmt::format("{}={}", name, asked.k) : name;
}

std::string length_in_words(Property property, const Trace& events) {
  if (property == Property::survives_cold_start) {
    return "a power cut after " + counted(events.size() - 1, "event");
  }
  if (property == Property::tolerates_loss) {
    const auto is_break = [](const Event& e) { return e.kind == Event::Kind::broke; };
    const auto body = std::find_if_not(events.rbegin(), events.rend(), is_break).base() - events.begin();
    const std::size_t before = static_cast<std::size_t>(body);
    return fmt::format("the loss of {} after {}", counted(events.size() - before, "cable"), counted(before, "event"));
  }
  if (events.empty()) return "no event at all, at the start";
  const auto faults =
      std::count_if(events.begin(), events.end(), [](const Event& e) { return actor_of(e.kind) == Actor::fault; });
  const std::string length = counted(events.size(), "event");
  if (events.size() == 1) return length + (faults == 0 ? ", no fault" : ", a fault");
  if (faults == 0) return length + ", no fault among them";
  if (faults == 1) return length + ", one of them a fault";
  if (static_cast<std::size_t>(faults) == events.size())
    return length + (faults == 2 ? ", both faults" : ", all faults");
  return fmt::format("{}, {} of them faults", length, faults);
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

void tell_refutation(Page& page, const World& world, const std::vector<Refuted>& refuted, const std::string& instance,
                     const ToldBefore& told_before, bool with_legend) {
  const Walk& walk = refuted.front().walk;
  std::vector<std::string> names;
  Trace events;
  names.reserve(refuted.size());
  events.reserve(walk.moments.size());
  for (const Refuted& one : refuted) names.push_back(name_with_k(one.asked));
  for (const Moment& moment : walk.moments) events.push_back(moment.event);
  page.heading(fmt::format("How {} break{}: {}", listed(names), names.size() == 1 ? "s" : "",
                           length_in_words(refuted.front().asked.property, events)));
  page.line();
  if (!instance.empty()) page.paragraph(2, fmt::format("In the instance {}.", instance));
  tell_what_broke(page, world, refuted);
  tell_ways_out(page, world, refuted);
  page.line();
  if (told_before.events > 0) {
    page.paragraph(2, fmt::format("1 to {} as above, where {} break{}.", told_before.events, told_before.where,
                                  told_before.where.find(' ') == std::string::npos ? "s" : ""));
  } else {
    for (const auto& change : settling(world, walk.initial, walk.initial_passes)) {
      page.entry(table_indent, "at first", actor_width, change);
    }
  }
  for (std::size_t i = told_before.events; i < walk.moments.size(); ++i) {
    tell_moment(page, world, walk.moments[i], i + 1);
  }
  tell_pictures(page, world, walk, with_legend);
}

}  // namespace cairn::report
