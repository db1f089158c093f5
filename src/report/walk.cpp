// A run for a person: what each event changes, how the stack looks after it, who leads, and what waits for what.
#include <fmt/format.h>

#include <algorithm>

#include "base/text.hpp"
#include "cairn/render.hpp"
#include "report/changes.hpp"
#include "report/narrate.hpp"
#include "report/picture.hpp"
#include "report/refutation.hpp"
#include "report/why.hpp"
#include "report/words.hpp"
#include "semantics/conditions.hpp"
#include "semantics/events.hpp"
#include "semantics/properties.hpp"

namespace cairn {

namespace {

using report::Page;
using report::Tone;
using semantics::World;

class WalkTeller {
 public:
  WalkTeller(const Model& model, const Walk& walk, const TextStyle& style)
      : world_(model), model_(model), walk_(walk), page_(style) {}

  std::string tell(const std::optional<AskedProperty>& asked) {
    tell_title(asked);
    tell_start();
    for (std::size_t i = 0; i < walk_.moments.size(); ++i) tell_moment(i);
    page_.line();
    if (walk_.breach) {
      page_.entry(0, "What broke", 12, explain(model_, *walk_.breach, walk_), Tone::heading);
    } else {
      tell_end();
    }
    return page_.take();
  }

 private:
  void tell_title(const std::optional<AskedProperty>& asked) {
    page_.heading(model_.procedure.title);
    page_.line();
    if (asked) {
      page_.paragraph(0, fmt::format("A run that breaks {}.", report::name_with_k(*asked)));
    } else {
      page_.paragraph(0,
                      "The run without faults, in the order of the file. A start completes when the procedure has to "
                      "wait for it.");
    }
    page_.paragraph(0, report::legend() + ".", Tone::faint);
    page_.line();
  }

  void tell_start() {
    const State& settled = walk_.initial_passes.empty() ? walk_.initial : walk_.initial_passes.back().after;
    for (const auto& change : report::settling(world_, walk_.initial, walk_.initial_passes)) {
      page_.entry(2, "at first", 14, change, Tone::faint);
    }
    tell_picture(settled);
    tell_waiting(settled);
  }

  void tell_moment(std::size_t i) {
    const Moment& moment = walk_.moments[i];
    page_.line();
    report::tell_moment(page_, world_, moment, i + 1);
    tell_note(moment.event);
    if (!report::look_alike(world_, moment.before, moment.after())) tell_picture(moment.after());
    tell_waiting(moment.after());
  }

  void tell_note(const Event& event) {
    if (event.kind != Event::Kind::step || model_[event.step()].note.empty()) return;
    page_.entry(16, "Note:", 6, model_[event.step()].note, Tone::faint, Tone::faint);
  }

  void tell_picture(const State& s) {
    for (const auto& line : report::draw(world_, {{"", &s}}, 16)) page_.line(line);
  }

  // What waits for what: steps that may come in any order, awaits that do not hold, and steps of which some of what
  // they follow is done and some is not.
  void tell_waiting(const State& s) {
    if (s.halted) return;
    const semantics::Derived derived = derive(world_, s);
    std::vector<std::string> next;
    std::vector<std::string> waiting;
    for (std::size_t i = 0; i < model_.procedure.steps.size(); ++i) {
      const Step& step = model_.procedure.steps[i];
      if (semantics::ready(world_, s, derived, StepId(i))) {
        next.push_back(step.id);
      } else if (semantics::has_turn(world_, s, StepId(i))) {
        waiting.push_back(fmt::format("{} waits for {}: {}", step.id, step.condition_text,
                                      report::why_false(world_, s, derived, step.condition)));
      } else if (const auto others = undone_before(s, step); !others.empty() && others.size() < step.after.size()) {
        waiting.push_back(fmt::format("{} waits for {}", step.id, report::listed(others)));
      }
    }
    if (next.size() > 1) waiting.push_back(fmt::format("next, in any order: {}", report::listed(next)));
    // Only what was not so before.
    for (const auto& text : waiting) {
      if (std::find(told_waiting_.begin(), told_waiting_.end(), text) == told_waiting_.end()) {
        page_.entry(16, "-", 2, text, Tone::faint);
      }
    }
    told_waiting_ = std::move(waiting);
  }

  // What a step directly follows and is not done.
  [[nodiscard]] std::vector<std::string> undone_before(const State& s, const Step& step) const {
    std::vector<std::string> ids;
    for (const StepId before : step.after) {
      if (!s.is_done(before)) ids.push_back(model_[before].id);
    }
    return ids;
  }

  void tell_end() {
    const std::size_t refused =
        static_cast<std::size_t>(std::count_if(walk_.moments.begin(), walk_.moments.end(),
                                               [](const Moment& moment) { return moment.refusal != Refusal::none; }));
    switch (walk_.end) {
      case Walk::End::complete:
        say("Complete", "Every step is done.");
        break;
      case Walk::End::halted:
        say("Halted", all_done() ? "A check failed." : fmt::format("A check failed, and {}.", steps_left()));
        break;
      case Walk::End::stuck:
        say("Stuck", fmt::format("The run ends early: {}.", steps_left()));
        break;
      case Walk::End::endless:
        say("Endless", fmt::format("The run comes back to where it was: {} restart one another for ever. Do not carry "
                                   "this procedure out (docs/semantics-questions.md).",
                                   report::listed(restarting())));
        break;
      case Walk::End::events:
        say("End", "Here the events end.");
        break;
    }
    for (const StepId id : walk_.waiting) tell_stuck(model_[id]);
    if (refused > 0)
      say("Refused", fmt::format("{} refused.", refused == 1 ? "1 step was" : fmt::format("{} steps were", refused)));
    tell_goal();
    tell_leaders();
  }

  // Of an endless run: whose starts lead from the state that it comes back to, to that state.
  [[nodiscard]] std::vector<std::string> restarting() const {
    std::vector<std::string> names;
    for (std::size_t i = walk_.moments.size(); i-- > 0;) {
      const Moment& moment = walk_.moments[i];
      const std::string& name = model_[moment.event.device()].name;
      if (std::find(names.begin(), names.end(), name) == names.end()) names.insert(names.begin(), name);
      if (moment.before == walk_.last()) break;
    }
    return names;
  }

  void tell_stuck(const Step& step) {
    const State& s = walk_.last();
    const semantics::Derived derived = derive(world_, s);
    say("", fmt::format("{} waits for ever for {}, because {}.", step.id, step.condition_text,
                        report::why_false(world_, s, derived, step.condition)));
  }

  void tell_goal() {
    if (!model_.procedure.goal || walk_.end != Walk::End::complete) return;
    const auto missed = semantics::goal_missed(world_, walk_.last(), derive(world_, walk_.last()));
    say("Goal", missed ? explain(model_, *missed, walk_) : "It holds.");
  }

  void tell_leaders() {
    const State& s = walk_.last();
    std::vector<std::string> leaders;
    for (std::size_t i = 0; i < s.devices.size(); ++i) {
      if (s.devices[i].leader == DeviceId(i)) leaders.push_back(model_.site.devices[i].name);
    }
    say("Leads", leaders.empty() ? "No device." : report::listed(leaders) + ".");
  }

  [[nodiscard]] bool all_done() const {
    const auto& done = walk_.last().done;
    return std::count(done.begin(), done.end(), 0) == 0;
  }

  [[nodiscard]] std::string steps_left() const {
    const auto& done = walk_.last().done;
    const auto left = static_cast<std::size_t>(std::count(done.begin(), done.end(), 0));
    return left == 1 ? "1 step is not done" : fmt::format("{} steps are not done", left);
  }

  void say(std::string_view label, std::string_view text) { page_.entry(0, label, 12, text, Tone::heading); }

  World world_;
  const Model& model_;
  const Walk& walk_;
  Page page_;
  std::vector<std::string> told_waiting_;  ///< after the moment before
};

}  // namespace

std::string render_walk(const Model& model, const Walk& walk, const std::optional<AskedProperty>& asked,
                        const TextStyle& style) {
  return WalkTeller(model, walk, style).tell(asked);
}

}  // namespace cairn
