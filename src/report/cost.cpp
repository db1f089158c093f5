#include "report/cost.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string>

#include "base/text.hpp"
#include "report/refutation.hpp"
#include "report/words.hpp"

namespace cairn::report {

namespace {

constexpr std::size_t states_width = 14;
constexpr std::size_t seconds_width = 11;

std::string seconds(double amount) {
  return fmt::format("{:>{}.3f}", amount, seconds_width);
}

std::string row(std::string_view name, std::size_t name_width, const std::string& states, const Timing& timing) {
  return fmt::format("{}{:>{}}{}{}{}{}", padded(name, name_width), states, states_width, seconds(timing.exploring),
                     seconds(timing.replaying), seconds(timing.solving), seconds(timing.confirming));
}

// Seconds of what several properties were asked together in stand in the line of each.
void tell_table(Page& page, const Report& report, std::size_t name_width) {
  page.line(fmt::format("  {}{:>{}}{:>{}}{:>{}}{:>{}}{:>{}}", padded("", name_width), "states", states_width,
                        "exploring", seconds_width, "replaying", seconds_width, "solving", seconds_width, "confirming",
                        seconds_width));
  for (const PropertyVerdict& p : report.properties) {
    page.line("  " + row(name_with_k(p.asked), name_width, grouped(p.explored), p.cost.timing));
  }
  page.line("  " + row("in all", name_width, "", report.timing));
  page.paragraph(
      2,
      "Times are seconds. What several properties were asked together in stands in the line of each, and counts "
      "once in all.",
      Tone::faint);
}

// Questions to both; conflicts of the one that searches; what the judge counts in its own units.
void tell_solvers(Page& page, const Report& report, std::size_t name_width) {
  const auto asked = [](const PropertyVerdict& p) { return p.cost.solving.questions != 0; };
  if (std::none_of(report.properties.begin(), report.properties.end(), asked)) return;
  const auto line = [&](std::string_view name, const auto& questions, const auto& conflicts, const auto& judging) {
    page.line(fmt::format("  {}{:>{}}{:>{}}{:>{}}", padded(name, name_width), questions, states_width, conflicts,
                          2 * seconds_width, judging, 2 * seconds_width));
  };
  page.line();
  line("of the solvers", "questions", "conflicts", "units of judging");
  for (const PropertyVerdict& p : report.properties) {
    const SolverWork& work = p.cost.solving;
    if (asked(p)) {
      line(name_with_k(p.asked), grouped(work.questions), grouped(work.conflicts), grouped(work.judging));
    }
  }
}

// Only where something was reduced at all.
void tell_savings(Page& page, const Savings& savings) {
  if (savings.outcomes == 0) return;
  page.line();
  page.paragraph(2,
                 fmt::format("Events taken in the reduced explorations: {}. So many led to a state visited before, but "
                             "for what is never asked, or for which of several devices alike is which:",
                             grouped(savings.outcomes)));
  const auto tell = [&](std::string_view name, std::uint64_t spared) { page.entry(4, name, 12, grouped(spared)); };
  tell("seniority", savings.by_seniority);
  tell("settings", savings.by_settings);
  tell("budgets", savings.by_budgets);
  tell("alike", savings.by_alike);
  if (savings.events_left_out + savings.states_left + savings.states_alone == 0) return;
  page.entry(
      4, "orders", 12,
      fmt::format("events not taken: {}; states left as they are, since nothing asked can be broken from there "
                  "on: {}; states of parts, visited to choose by: {}",
                  grouped(savings.events_left_out), grouped(savings.states_left), grouped(savings.states_alone)));
}

}  // namespace

void tell_cost(Page& page, const Report& report) {
  std::size_t name_width = std::string_view("of the solvers").size();
  for (const PropertyVerdict& p : report.properties) name_width = std::max(name_width, name_with_k(p.asked).size());
  page.heading("What it cost");
  tell_table(page, report, name_width);
  tell_solvers(page, report, name_width);
  tell_savings(page, report.savings);
}

}  // namespace cairn::report
