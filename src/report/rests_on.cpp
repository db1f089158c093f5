#include "report/rests_on.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/text.hpp"
#include "report/words.hpp"

namespace cairn::report {

namespace {

constexpr std::size_t label_width = 15;
constexpr std::size_t most_shown = 6;

void say(Page& page, std::string_view label, std::string_view text) {
  page.entry(2, label, label_width, text);
}

std::vector<std::string> names_where(const Report& report, bool with_faults) {
  std::vector<std::string> names;
  for (const PropertyVerdict& p : report.properties) {
    const std::string name(cairn::name_of(p.asked.property));
    if (asked_with_faults(p.asked.property) != with_faults) continue;
    if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
  }
  return names;
}

// 6, the column "faults": which properties were asked under faults, and which without.
void tell_faults(Page& page, const Report& report) {
  const std::vector<std::string> with = names_where(report, true);
  const std::vector<std::string> without = names_where(report, false);
  if (report.faults.none()) {
    say(page, "Faults", "None: all goes as planned, but for how long a start takes and which step comes first.");
  } else if (with.empty()) {
    say(page, "Faults",
        fmt::format("None: {} {} asked without faults.", listed(without), without.size() == 1 ? "is" : "are"));
  } else {
    say(page, "Faults",
        fmt::format("Up to {}, at any moment, for {}.{}", faults_in_words(report.faults), listed(with),
                    without.empty() ? "" : " None for the others."));
  }
}

// 6.8: "the k breaks", in the end, whatever the budget is.
std::vector<std::string> losses(const Report& report) {
  std::vector<std::string> losses;
  for (const PropertyVerdict& p : report.properties) {
    if (p.asked.property != Property::tolerates_loss) continue;
    losses.push_back(fmt::format("{} {}", p.asked.k, p.asked.k == 1 ? "cable" : "cables"));
  }
  return losses;
}

void tell_losses(Page& page, const Report& report) {
  const std::vector<std::string> all = losses(report);
  if (all.empty()) return;
  say(page, "Losses", fmt::format("Any {} at once, when every step is done, for tolerates-loss.", listed(all)));
}

void tell_faults_left_out(Page& page, const Report& report) {
  const FaultBudget& faults = report.faults;
  std::vector<std::string> left_out;
  if (faults.cable_breaks == 0)
    left_out.emplace_back(losses(report).empty() ? "cables that break" : "cables that break on the way");
  if (faults.crashes == 0) left_out.emplace_back("devices that crash");
  if (faults.omissions == 0) left_out.emplace_back("steps that are forgotten");
  if (faults.late_starts == 0) left_out.emplace_back("starts so late that a device leads by itself");
  if (faults.cable_breaks > 0 && !faults.mends) left_out.emplace_back("broken cables that work again");
  left_out.emplace_back("power that fails midway");
  left_out.emplace_back("power that returns to one device after another");
  say(page, "Left out", capitalised(listed(left_out)) + ".");
}

void tell_rules(Page& page, const Model& model) {
  say(page, "Platform", fmt::format("The rules of \"{}\", as its file states them.", model.platform.title));
  say(page, "All platforms",
      "Losers of a contest restart; a device whose number clashes is held; a device new to a stack never displaces its "
      "leader; each device keeps its own configuration.");
}

std::string ports_named(const Model& model, const std::vector<PortId>& ports) {
  std::vector<std::string> names;
  names.reserve(ports.size());
  for (const PortId p : ports) names.push_back(model[p].name.substr(model[model[p].device].name.size() + 1));
  return listed_briefly(names, most_shown);
}

// "number 1, w and e enabled"
std::string factory_items(const Model& model, const FactoryValues& values) {
  const Factory& factory = model.platform.factory;
  std::vector<std::string> items;
  if (values.number) items.push_back(fmt::format("number {}", factory.number));
  if (values.priority) items.push_back(fmt::format("priority {}", factory.priority));
  if (!values.enabled.empty()) {
    items.push_back(ports_named(model, values.enabled) + (factory.enabled ? " enabled" : " disabled"));
  }
  if (!values.side.empty()) {
    items.push_back(fmt::format("{} on {}",
                                factory.side == Side::none ? "no side" : fmt::format("side {}", name_of(factory.side)),
                                ports_named(model, values.side)));
  }
  return fmt::format("{}", fmt::join(items, ", "));
}

// Devices that have the same from their factory are told together.
void tell_factory(Page& page, const Model& model, const std::vector<FactoryValues>& factory) {
  std::vector<std::pair<std::string, std::vector<std::string>>> groups;
  for (const FactoryValues& values : factory) {
    std::string items = factory_items(model, values);
    const auto same =
        std::find_if(groups.begin(), groups.end(), [&](const auto& group) { return group.first == items; });
    if (same == groups.end()) {
      groups.emplace_back(std::move(items), std::vector{model[values.device].name});
    } else {
      same->second.push_back(model[values.device].name);
    }
  }
  if (groups.empty()) return;
  std::vector<std::string> told;
  told.reserve(groups.size());
  for (const auto& [items, devices] : groups) {
    told.push_back(fmt::format("{}: {}", listed_briefly(devices, most_shown), items));
  }
  if (told.size() > most_shown) {
    const std::size_t more = told.size() - most_shown;
    told.resize(most_shown);
    told.push_back(fmt::format("and {} more", more));
  }
  say(page, "Factory values", fmt::format("{}.", fmt::join(told, "; ")));
}

}  // namespace

std::string faults_in_words(const FaultBudget& faults) {
  std::vector<std::string> kinds;
  const auto add = [&](std::int64_t n, std::string_view one, std::string_view many) {
    if (n > 0) kinds.push_back(fmt::format("{} {}", n, n == 1 ? one : many));
  };
  add(faults.cable_breaks, "cable break", "cable breaks");
  add(faults.crashes, "crash", "crashes");
  add(faults.omissions, "forgotten step", "forgotten steps");
  add(faults.late_starts, "late start", "late starts");
  if (kinds.empty()) return "none";
  const bool mends = faults.mends && faults.cable_breaks > 0;
  return listed(kinds) + (mends ? ", where a broken cable may work again" : "");
}

void tell_ties(Page& page, const Model& model, const Report& report) {
  const std::vector<UnstatedTie>& ties = report.rests_on.ties;
  if (ties.empty()) return;
  std::vector<std::string> told;
  told.reserve(ties.size());
  for (const UnstatedTie& tie : ties) {
    told.push_back(fmt::format("{} before {} by {}", model[tie.winner].name, model[tie.loser].name,
                               tie.key == UnstatedTie::Key::address ? "address" : "time up"));
  }
  say(page, "Unstated ties",
      fmt::format("{}. The site does not state what decided; state it.", listed_briefly(told, most_shown)));
}

void tell_rests_on(Page& page, const Model& model, const Report& report) {
  page.heading("What this rests on");
  page.line();
  tell_faults(page, report);
  tell_losses(page, report);
  tell_faults_left_out(page, report);
  tell_rules(page, model);
  tell_ties(page, model, report);
  tell_factory(page, model, report.rests_on.factory);
  say(page, "Not modelled",
      "Traffic, bundles and uplinks over members, cables that fail in part, a configuration kept by the primary for "
      "the "
      "whole stack: docs/limits-of-the-model.md.");
  tell_caution(page);
}

void tell_caution(Page& page) {
  say(page, "Caution",
      "The answer is about the model. Confirm the platform's rules with its documentation and in a lab, and follow "
      "your "
      "change control and safety rules.");
}

}  // namespace cairn::report
