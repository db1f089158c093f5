#include "cli/values.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <limits>
#include <span>
#include <thread>
#include <utility>
#include <vector>

#include "cairn/memory.hpp"
#include "cairn/nearest.hpp"

namespace cairn::cli {

namespace {

std::vector<std::string_view> property_names() {
  std::vector<std::string_view> names;
  names.reserve(property_count);
  for (int i = 0; i < property_count; ++i) names.push_back(name_of(static_cast<Property>(i)));
  return names;
}

constexpr std::array<std::pair<std::string_view, Engine>, 4> engines{
    {{"auto", Engine::automatic}, {"explore", Engine::explore}, {"solver", Engine::solver}, {"both", Engine::both}}};

constexpr std::array<std::pair<std::string_view, bool Reductions::*>, 5> reductions_by_name{
    {{"seniority", &Reductions::seniority},
     {"settings", &Reductions::settings},
     {"budgets", &Reductions::budgets},
     {"orders", &Reductions::orders},
     {"alike", &Reductions::alike}}};

/// Takes what stands before the first comma off `text`.
std::string_view cut_name(std::string_view& text) {
  const std::size_t comma = text.find(',');
  const std::string_view name = text.substr(0, comma);
  text = comma == std::string_view::npos ? std::string_view() : text.substr(comma + 1);
  return name;
}

}  // namespace

std::string perhaps(std::string_view word, std::span<const std::string_view> known) {
  const std::string near = nearest(word, known);
  return near.empty() ? "" : fmt::format("; did you mean `{}`?", near);
}

std::optional<std::int64_t> whole_number(std::string_view text) {
  std::int64_t n = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), n);
  if (error != std::errc() || end != text.data() + text.size()) return {};
  return n;
}

std::string at_least(std::int64_t least, const std::string& text) {
  const auto n = whole_number(text);
  if (n && *n >= least) return {};
  const bool too_large = !text.empty() && text.find_first_not_of("0123456789") == std::string::npos && !n;
  return too_large ? fmt::format("{} is too large: at most {} is read", text, std::numeric_limits<std::int64_t>::max())
                   : fmt::format("a whole number of {} or more is wanted, not `{}`", least, text);
}

// What is left over is for what is not counted, and for others.
std::optional<std::uint64_t> usual_megabytes() {
  const std::optional<std::uint64_t> left = memory_left();
  if (!left) return {};
  return std::max<std::uint64_t>(1, *left / 10 * 7 / 1'000'000);
}

unsigned processors() {
  return std::clamp(std::thread::hardware_concurrency(), 1U, most_jobs);
}

std::optional<unsigned> jobs_named(std::string_view text) {
  const auto n = whole_number(text);
  if (!n || *n < 1 || *n > std::int64_t{most_jobs}) return {};
  return static_cast<unsigned>(*n);
}

std::string check_jobs(const std::string& text) {
  return jobs_named(text) ? "" : fmt::format("a whole number from 1 to {} is wanted, not `{}`", most_jobs, text);
}

std::string check_seconds(const std::string& text) {
  double seconds = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), seconds);
  const bool whole = error == std::errc() && end == text.data() + text.size();
  const bool number = whole && std::isfinite(seconds) && seconds >= 0;
  return number ? "" : fmt::format("seconds are wanted, 0 or more, not `{}`", text);
}

std::string check_format(const std::string& text) {
  return text == "text" || text == "json" ? "" : fmt::format("`text` or `json` is wanted, not `{}`", text);
}

std::optional<Engine> engine_named(std::string_view name) {
  for (const auto& [known, engine] : engines) {
    if (known == name) return engine;
  }
  return {};
}

std::string check_engine(const std::string& text) {
  return engine_named(text) ? "" : fmt::format("`auto`, `explore`, `solver` or `both` is wanted, not `{}`", text);
}

std::string read_reductions(std::string_view text, Reductions& reductions) {
  if (text == "all" || text == "none") {
    reductions = text == "all" ? Reductions::all() : Reductions::none();
    return {};
  }
  std::vector<std::string_view> names;
  names.reserve(reductions_by_name.size());
  for (const auto& [name, member] : reductions_by_name) names.push_back(name);
  reductions = Reductions::none();
  do {
    const std::string_view name = cut_name(text);
    if (name == "all" || name == "none") return fmt::format("`{}` stands alone, without other names", name);
    if (name.empty()) return "a name is missing: give some of " + fmt::format("{}", fmt::join(names, ", "));
    const auto known = std::ranges::find(reductions_by_name, name, [](const auto& each) { return each.first; });
    if (known == reductions_by_name.end()) {
      return fmt::format("there is no reduction `{}`{}\nGive `all`, `none`, or some of {}, with commas between.", name,
                         perhaps(name, names), fmt::join(names, ", "));
    }
    reductions.*known->second = true;
  } while (!text.empty());
  return {};
}

std::string check_property_name(const std::string& text) {
  if (property_named(text)) return {};
  const auto names = property_names();
  return fmt::format("there is no property `{}`{}\nThe properties are {}.", text, perhaps(text, names),
                     fmt::join(names, ", "));
}

std::string read_asked(const std::string& text, AskedProperty& asked) {
  const std::size_t sign = text.find('=');
  const std::string name = text.substr(0, sign);
  if (std::string wrong = check_property_name(name); !wrong.empty()) return wrong;
  asked.property = *property_named(name);
  const bool takes_number = asked.property == Property::tolerates_loss;
  if (!takes_number) return sign == std::string::npos ? "" : fmt::format("{} takes no number", name);
  if (sign == std::string::npos) return "tolerates-loss needs a number of cables, as in `tolerates-loss=1`";
  if (std::string wrong = at_least(1, text.substr(sign + 1)); !wrong.empty()) return "after tolerates-loss=, " + wrong;
  asked.k = *whole_number(std::string_view(text).substr(sign + 1));
  return {};
}

std::string check_wanted(const std::string& text) {
  if (text.find('=') == std::string::npos) return check_property_name(text);
  AskedProperty asked;
  return read_asked(text, asked);
}

std::string check_asked(const std::string& text) {
  AskedProperty asked;
  return read_asked(text, asked);
}

}  // namespace cairn::cli
