#include "report/words.hpp"

#include <fmt/format.h>

namespace cairn::report {

std::string listed(const std::vector<std::string>& items, std::string_view last) {
  std::string out;
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (i > 0) out += i + 1 == items.size() ? fmt::format(" {} ", last) : ", ";
    out += items[i];
  }
  return out;
}

std::string listed_briefly(const std::vector<std::string>& items, std::size_t most) {
  if (items.size() <= most) return listed(items);
  std::vector<std::string> shown(items.begin(), items.begin() + static_cast<std::ptrdiff_t>(most));
  shown.push_back(fmt::format("{} more", items.size() - most));
  return listed(shown);
}

std::string grouped(std::uint64_t n) {
  std::string digits = std::to_string(n);
  for (std::size_t at = digits.size(); at > 3; at -= 3) digits.insert(at - 3, ",");
  return digits;
}

std::string_view name_of(Side side) {
  switch (side) {
    case Side::none:
      return "none";
    case Side::east:
      return "east";
    case Side::west:
      return "west";
  }
  return {};
}

std::vector<std::string> names_of(const Model& model, const std::vector<DeviceId>& devices) {
  std::vector<std::string> names;
  names.reserve(devices.size());
  for (const DeviceId d : devices) names.push_back(model[d].name);
  return names;
}

std::string subject(const std::vector<std::string>& names, std::string_view verb_of_many) {
  return fmt::format("{} {}{}", listed(names), verb_of_many, names.size() == 1 ? "s" : "");
}

std::string capitalised(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

}  // namespace cairn::report
