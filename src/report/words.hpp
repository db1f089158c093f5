/// \file
/// Small words: lists, counts and the names of roles.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "cairn/model.hpp"
#include "cairn/state.hpp"

namespace cairn::report {

/// "a", "a and b", "a, b and c"; `last` is the word before the last one.
[[nodiscard]] std::string listed(const std::vector<std::string>& items, std::string_view last = "and");

/// As `listed`, but of more than `most` items only the first ones and how many there are besides.
[[nodiscard]] std::string listed_briefly(const std::vector<std::string>& items, std::size_t most);

/// "12,345,678"
[[nodiscard]] std::string grouped(std::uint64_t n);

[[nodiscard]] std::string_view name_of(Side side);

/// The two devices that a cable joins.
[[nodiscard]] inline DeviceId device_a(const Model& model, CableId c) {
  return model[model[c].a].device;
}
[[nodiscard]] inline DeviceId device_b(const Model& model, CableId c) {
  return model[model[c].b].device;
}

[[nodiscard]] std::vector<std::string> names_of(const Model& model, const std::vector<DeviceId>& devices);

/// "yard-1 restarts", "yard-1 and yard-2 restart".
[[nodiscard]] std::string subject(const std::vector<std::string>& names, std::string_view verb_of_many);

/// `text` with its first letter in upper case, where it is ASCII.
[[nodiscard]] std::string capitalised(std::string text);

}  // namespace cairn::report
