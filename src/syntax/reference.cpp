#include "syntax/reference.hpp"

#include <fmt/format.h>

#include "base/text.hpp"

namespace cairn::syntax {

namespace {

constexpr std::string_view name_characters = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_.";
constexpr std::string_view port_shape = "a port: DEVICE/PORT";
constexpr std::string_view ends_shape = "the two ends of a cable: DEVICE/PORT--DEVICE/PORT";

class Scanner {
 public:
  Scanner(std::string_view text, std::size_t& at, bool blanks) : text_(text), at_(at), blanks_(blanks) {}

  std::variant<Scanned, NotScanned> reference() {
    Scanned found;
    if (!name(found.at[0], false)) return failed(found.at[0], "a name");
    if (!take("/")) return found;
    found.names = 2;
    if (has_dashes(found.at[0])) return failed(found.at[0], "the name of a device, in which `--` does not stand");
    if (!name(found.at[1], true)) return failed(found.at[1], "the name of a port after `/`");
    if (!take("--")) return found;
    found.names = 4;
    if (!name(found.at[2], false) || has_dashes(found.at[2]))
      return failed(found.at[2], "the name of a device after `--`");
    if (!take("/")) return failed({at_, 1}, "`/` and the name of a port");
    if (!name(found.at[3], true)) return failed(found.at[3], "the name of a port after `/`");
    return found;
  }

 private:
  void skip_blanks() {
    while (blanks_ && at_ < text_.size() && std::string_view(" \t\n").find(text_[at_]) != std::string_view::npos) ++at_;
  }

  /// A name is as long as it can be, but `--` ends the name of a port.
  bool name(Stretch& found, bool of_port) {
    skip_blanks();
    auto end = std::min(text_.find_first_not_of(name_characters, at_), text_.size());
    if (of_port) end = std::min(end, text_.find("--", at_));
    found = {at_, end - at_};
    if (not_a_name(text_.substr(found.offset, found.length), false)) return false;
    at_ = end;
    return true;
  }

  bool take(std::string_view sign) {
    const auto before = at_;
    skip_blanks();
    if (text_.substr(at_).starts_with(sign)) {
      at_ += sign.size();
      return true;
    }
    at_ = before;
    return false;
  }

  [[nodiscard]] bool has_dashes(const Stretch& s) const {
    return text_.substr(s.offset, s.length).find("--") != std::string_view::npos;
  }

  static NotScanned failed(Stretch at, std::string expected) { return {at, std::move(expected)}; }

  std::string_view text_;
  std::size_t& at_;
  bool blanks_;
};

/// The reference that `key` is, when it has the wanted form.
std::optional<Reference> read_whole(std::string_view text, const Positions& positions, std::string_view what,
                                    std::string_view shape, Problems& problems) {
  std::size_t at = 0;
  const auto scanned = scan_reference(text, at, false);
  if (const auto* failure = std::get_if<NotScanned>(&scanned)) {
    problems.add(positions.at(failure->at.offset, failure->at.length), fmt::format("{} is {}", what, quoted(text)),
                 fmt::format("{} ({})", failure->expected, shape));
    return std::nullopt;
  }
  if (at < text.size()) {
    problems.add(positions.at(at, text.size() - at), fmt::format("{} is {}", what, quoted(text)), std::string(shape));
    return std::nullopt;
  }
  return located(std::get<Scanned>(scanned), text, positions);
}

}  // namespace

std::variant<Scanned, NotScanned> scan_reference(std::string_view text, std::size_t& at, bool blanks) {
  return Scanner(text, at, blanks).reference();
}

std::string Reference::text() const {
  switch (form) {
    case Form::name:
      return names[0].value;
    case Form::port:
      return fmt::format("{}/{}", names[0].value, names[1].value);
    case Form::ends:
      return fmt::format("{}/{}--{}/{}", names[0].value, names[1].value, names[2].value, names[3].value);
  }
  return {};
}

Reference located(const Scanned& scanned, std::string_view text, const Positions& positions) {
  Reference reference;
  reference.form = scanned.names == 1   ? Reference::Form::name
                   : scanned.names == 2 ? Reference::Form::port
                                        : Reference::Form::ends;
  for (std::size_t i = 0; i < scanned.names; ++i) {
    const auto [offset, length] = scanned.at[i];
    reference.names[i] = {std::string(text.substr(offset, length)), positions.at(offset, length)};
  }
  const auto first = scanned.at[0].offset;
  const auto last = scanned.at[scanned.names - 1];
  reference.place = positions.at(first, last.offset + last.length - first);
  return reference;
}

std::optional<Reference> read_port(const Node& node, std::string_view what, Problems& problems) {
  if (!node.is_scalar()) {
    wrong(node, what, std::string(port_shape), problems);
    return std::nullopt;
  }
  auto reference = read_whole(node.text, Positions(node), what, port_shape, problems);
  if (reference && reference->form != Reference::Form::port) {
    wrong(node, what, std::string(port_shape), problems);
    return std::nullopt;
  }
  return reference;
}

std::optional<Reference> read_cable(const Node& node, std::string_view what, Problems& problems) {
  constexpr std::string_view shape = "a cable: its id, or its two ends DEVICE/PORT--DEVICE/PORT";
  if (!node.is_scalar()) {
    wrong(node, what, std::string(shape), problems);
    return std::nullopt;
  }
  auto reference = read_whole(node.text, Positions(node), what, shape, problems);
  if (reference && reference->form == Reference::Form::port) {
    wrong(node, what, std::string(shape), problems);
    return std::nullopt;
  }
  return reference;
}

std::optional<Reference> read_ends(const Node& key, Problems& problems) {
  auto reference = read_whole(key.text, Positions(key), "a cable", ends_shape, problems);
  if (reference && reference->form != Reference::Form::ends) {
    wrong(key, "a cable", std::string(ends_shape), problems);
    return std::nullopt;
  }
  return reference;
}

}  // namespace cairn::syntax
