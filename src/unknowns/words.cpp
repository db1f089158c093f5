#include "unknowns/words.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <vector>

namespace cairn::unknowns {

namespace {

using Kind = Assumption::Kind;

std::string_view word_of(Sign sign) {
  switch (sign) {
    case Sign::equal:
      return "=";
    case Sign::not_equal:
      return "!=";
    case Sign::less:
      return "<";
    case Sign::less_or_equal:
      return "<=";
    case Sign::greater:
      return ">";
    case Sign::greater_or_equal:
      return ">=";
  }
  return {};
}

Sign sign_of(Relation relation) {
  for (const Sign sign : {Sign::equal, Sign::not_equal, Sign::less, Sign::less_or_equal, Sign::greater}) {
    if (relation == Relation::of(sign)) return sign;
  }
  return Sign::greater_or_equal;
}

// A known address stands for the device that has it.
std::string words_of(const Model& model, Quantity q, bool is_address) {
  if (!is_known(q)) return name_of(model, unknown_of(q));
  if (!is_address) return std::to_string(q);
  const auto device = std::ranges::find(model.site.devices, static_cast<std::uint64_t>(q), &Device::address);
  return device == model.site.devices.end() ? address_in_words(static_cast<std::uint64_t>(q))
                                            : fmt::format("address({})", device->name);
}

std::string words_of(const Model& model, const Operand& operand) {
  return operand.address_of ? fmt::format("address({})", model[operand.address_of].name)
                            : words_of(model, operand.quantity, false);
}

/// How tightly a join binds; the parts of one are put in parentheses where they bind no tighter.
int binding(Kind kind) {
  switch (kind) {
    case Kind::implies:
      return 0;
    case Kind::any:
      return 1;
    case Kind::all:
      return 2;
    case Kind::negation:
      return 3;
    case Kind::comparison:
      return 4;
  }
  return 4;
}

}  // namespace

std::string name_of(const Model& model, UnknownId u) {
  const Unknowns& unknowns = model.unknowns;
  if (!unknowns.is_address(u)) return "$" + unknowns.parameters[u.value].name;
  return fmt::format("address({})", model[unknowns.addresses[u.value - unknowns.parameters.size()]].name);
}

std::string words_of(const Model& model, const Literal& literal) {
  const bool addresses = !is_known(literal.left) && model.unknowns.is_address(unknown_of(literal.left));
  return fmt::format("{} {} {}", words_of(model, literal.left, addresses), word_of(sign_of(literal.relation)),
                     words_of(model, literal.right, addresses));
}

// NOLINTNEXTLINE(misc-no-recursion): no deeper than the reader lets an assumption be
std::string words_of(const Assumption& assumption, const Model& model) {
  const auto part = [&](const Assumption& inner) {
    const std::string words = words_of(inner, model);
    return binding(inner.kind) <= binding(assumption.kind) ? "(" + words + ")" : words;
  };
  std::vector<std::string> parts;
  parts.reserve(assumption.parts.size());
  for (const Assumption& inner : assumption.parts) parts.push_back(part(inner));
  switch (assumption.kind) {
    case Kind::comparison:
      return fmt::format("{} {} {}", words_of(model, assumption.left), word_of(assumption.sign),
                         words_of(model, assumption.right));
    case Kind::negation:
      return "not " + parts[0];
    case Kind::all:
      return fmt::format("{}", fmt::join(parts, " and "));
    case Kind::any:
      return fmt::format("{}", fmt::join(parts, " or "));
    case Kind::implies:
      return fmt::format("{}", fmt::join(parts, " implies "));
  }
  return {};
}

std::string words_of(const Model& model, const Instance& instance) {
  std::vector<std::string> words;
  const Unknowns& unknowns = model.unknowns;
  for (std::size_t i = 0; i < unknowns.parameters.size(); ++i) {
    words.push_back(fmt::format("{} = {}", unknowns.parameters[i].name, instance.values[i]));
  }
  for (std::size_t i = 0; i < unknowns.addresses.size(); ++i) {
    const auto address = static_cast<std::uint64_t>(instance.values[unknowns.address(i).value]);
    words.push_back(fmt::format("{} at {}", model[unknowns.addresses[i]].name, address_in_words(address)));
  }
  return fmt::format("{}", fmt::join(words, ", "));
}

std::string address_in_words(std::uint64_t address) {
  return fmt::format("{:02x}:{:02x}:{:02x}:{:02x}:{:02x}:{:02x}", address >> 40 & 255, address >> 32 & 255,
                     address >> 24 & 255, address >> 16 & 255, address >> 8 & 255, address & 255);
}

}  // namespace cairn::unknowns
