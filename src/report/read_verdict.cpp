// A refutation read back from a verdict document, with every name looked up in the model.
#include <fmt/format.h>

#include <algorithm>
#include <limits>

#include <nlohmann/json.hpp>

#include "base/edit_distance.hpp"
#include "base/text.hpp"
#include "cairn/render.hpp"
#include "cairn/version.hpp"

namespace cairn {

namespace {

using Json = nlohmann::json;

/// What stands in the way, thrown and caught in this file alone.
struct Unfit {
  Diagnostic problem;
};

std::string in_ticks(const std::string& word) {
  return fmt::format("`{}`", printable(word));
}

[[noreturn]] void unfit(const std::string& file, std::string message, std::string expected = {}, std::string near = {},
                        int line = 0) {
  Diagnostic problem;
  problem.span.file = file;
  problem.span.line = line;
  problem.message = std::move(message);
  problem.expected = std::move(expected);
  problem.nearest = std::move(near);
  throw Unfit{std::move(problem)};
}

/// Reads one verdict.
class VerdictReader {
 public:
  VerdictReader(const Model& model, const std::string& file, const Json& json)
      : model_(model), file_(file), json_(json) {}

  [[nodiscard]] bool is_about_the_model() const {
    return json_.is_object() && json_.value("procedure", Json()) == model_.procedure.title;
  }

  [[nodiscard]] Refutation refutation(const std::optional<Property>& wanted,
                                      const std::optional<std::int64_t>& k) const {
    for (const Json& entry : field(json_, "properties", Json::value_t::array)) {
      const std::string name = text(entry, "name");
      const auto property = property_named(name);
      if (!property) unfit(file_, fmt::format("there is no property {}", in_ticks(name)));
      if (text(entry, "verdict") != "refuted" || (wanted && *wanted != *property)) continue;
      Refutation refutation;
      refutation.asked.property = *property;
      if (*property == Property::tolerates_loss) refutation.asked.k = number(entry, "k");
      if (k && *k != refutation.asked.k) continue;
      refutation.faults = faults();
      for (const Json& event : field(entry, "events", Json::value_t::array)) refutation.events.push_back(read(event));
      return refutation;
    }
    unfit(file_, wanted
                     ? fmt::format("it holds no refutation of {}{}", name_of(*wanted), k ? fmt::format("={}", *k) : "")
                     : std::string("it holds no refutation: no property is refuted in it"));
  }

 private:
  [[nodiscard]] const Json& field(const Json& in, const char* key, Json::value_t type) const {
    const bool there = in.is_object() && in.contains(key) && in.at(key).type() == type;
    if (!there)
      unfit(file_,
            fmt::format("this is no verdict of schema {}: `{}` is missing or of another kind", verdict_schema, key));
    return in.at(key);
  }

  [[nodiscard]] std::string text(const Json& in, const char* key) const {
    return field(in, key, Json::value_t::string).get<std::string>();
  }

  [[nodiscard]] std::int64_t number(const Json& in, const char* key) const {
    const auto n = field(in, key, Json::value_t::number_unsigned).get<std::uint64_t>();
    return static_cast<std::int64_t>(std::min<std::uint64_t>(n, std::numeric_limits<std::int64_t>::max()));
  }

  [[nodiscard]] FaultBudget faults() const {
    const Json& in = field(json_, "faults", Json::value_t::object);
    return {number(in, "cable-breaks"), number(in, "crashes"), number(in, "omissions"), number(in, "late-starts"),
            field(in, "mends", Json::value_t::boolean).get<bool>()};
  }

  // The place of `name` in a table whose rows have a name of their own.
  template <class Row>
  [[nodiscard]] std::uint32_t place(const std::vector<Row>& table, std::string Row::*own, const std::string& name,
                                    std::string_view kind) const {
    std::vector<std::string_view> known;
    for (std::size_t i = 0; i < table.size(); ++i) {
      if (table[i].*own == name) return static_cast<std::uint32_t>(i);
      known.emplace_back(table[i].*own);
    }
    unfit(file_, fmt::format("the procedure has no {} {}", kind, in_ticks(name)), "a verdict on this very procedure",
          nearest(name, known));
  }

  [[nodiscard]] Event read(const Json& in) const {
    using Kind = Event::Kind;
    const std::string name = text(in, "event");
    for (const Kind kind : {Kind::step, Kind::started, Kind::broke, Kind::mended, Kind::crashed, Kind::omitted,
                            Kind::started_late, Kind::cold_start}) {
      if (name_of(kind) != name) continue;
      switch (kind) {
        case Kind::step:
        case Kind::omitted:
          return {kind, place(model_.procedure.steps, &Step::id, text(in, "id"), "step")};
        case Kind::broke:
        case Kind::mended:
          return {kind, place(model_.site.cables, &Cable::name, text(in, "cable"), "cable")};
        case Kind::cold_start:
          return {kind, 0};
        default:
          return {kind, place(model_.site.devices, &Device::name, text(in, "device"), "device")};
      }
    }
    unfit(file_, fmt::format("there is no event {}", in_ticks(name)));
  }

  const Model& model_;
  const std::string& file_;
  const Json& json_;
};

// The line of a byte, from 1.
int line_of(const std::string& text, std::size_t byte) {
  const auto end = text.begin() + static_cast<std::ptrdiff_t>(std::min(byte, text.size()));
  return 1 + static_cast<int>(std::count(text.begin(), end, '\n'));
}

// The JSON of a text; discarded where it is none, or nested as deep as no verdict is.
Json parse(const std::string& text) {
  constexpr int deepest = 32;
  bool too_deep = false;
  const auto look = [&](int depth, Json::parse_event_t, Json&) {
    too_deep = too_deep || depth > deepest;
    return !too_deep;
  };
  Json json = Json::parse(text, look, false);
  return too_deep ? Json(Json::value_t::discarded) : std::move(json);
}

// A run over several procedures writes one document a line; a document by itself may be laid out over many.
std::vector<Json> documents(const std::string& text, const std::string& file) {
  std::vector<Json> found;
  if (Json whole = parse(text); !whole.is_discarded()) return {std::move(whole)};
  std::size_t begin = 0;
  while (begin < text.size()) {
    const std::size_t end = std::min(text.find('\n', begin), text.size());
    const std::string line = text.substr(begin, end - begin);
    if (line.find_first_not_of(" \t\r") != std::string::npos) {
      Json json = parse(line);
      if (json.is_discarded()) {
        unfit(file, "this is no JSON", "what `cairn prove --format json` writes", {}, line_of(text, begin));
      }
      found.push_back(std::move(json));
    }
    begin = end + 1;
  }
  if (found.empty()) unfit(file, "the file is empty", "what `cairn prove --format json` writes");
  return found;
}

}  // namespace

Result<Refutation> read_refutation(const Model& model, const std::string& text, const std::string& file,
                                   const std::optional<Property>& property, const std::optional<std::int64_t>& k) {
  try {
    for (const Json& json : documents(text, file)) {
      const VerdictReader reader(model, file, json);
      if (reader.is_about_the_model()) return reader.refutation(property, k);
    }
    unfit(file, fmt::format("it holds no verdict on {}", in_ticks(model.procedure.title)),
          "a verdict on this very procedure");
  } catch (const Unfit& unfit) {
    return Diagnostics{unfit.problem};
  }
}

}  // namespace cairn
