/// \file
/// What the values of options mean, and what is wrong with those that mean nothing.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "cairn/options.hpp"
#include "cairn/property.hpp"

namespace cairn::cli {

/// "; did you mean `prove`?", or nothing where no known word is near.
[[nodiscard]] std::string perhaps(std::string_view word, std::span<const std::string_view> known);

/// A whole number with nothing around it, or nothing.
[[nodiscard]] std::optional<std::int64_t> whole_number(std::string_view text);

/// "explore"
[[nodiscard]] std::optional<Engine> engine_named(std::string_view name);

/// Memory to use where nobody says how much: most of what the machine has left; nothing where it does not tell.
[[nodiscard]] std::optional<std::uint64_t> usual_megabytes();

/// Threads that the machine runs side by side, at least 1.
[[nodiscard]] unsigned processors();
/// 1 to most_jobs, or nothing.
[[nodiscard]] std::optional<unsigned> jobs_named(std::string_view text);
inline constexpr unsigned most_jobs = 256;

// Each of those that follow answers what is wrong with the text, or nothing; the library prefixes the option.

[[nodiscard]] std::string at_least(std::int64_t least, const std::string& text);
[[nodiscard]] std::string check_jobs(const std::string& text);
[[nodiscard]] std::string check_seconds(const std::string& text);
[[nodiscard]] std::string check_format(const std::string& text);
[[nodiscard]] std::string check_engine(const std::string& text);
[[nodiscard]] std::string check_property_name(const std::string& text);
/// "no-split", "tolerates-loss=2"
std::string read_asked(const std::string& text, AskedProperty& asked);
[[nodiscard]] std::string check_asked(const std::string& text);
/// Of a refutation that is looked for: also "tolerates-loss" without its number.
[[nodiscard]] std::string check_wanted(const std::string& text);
/// "all", "none", "seniority,budgets"
std::string read_reductions(std::string_view text, Reductions& reductions);

}  // namespace cairn::cli
