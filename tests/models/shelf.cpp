#include "models/shelf.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <charconv>
#include <filesystem>
#include <iterator>
#include <sstream>
#include <variant>

#include "cairn/files.hpp"
#include "cairn/load.hpp"
#include "cairn/prove.hpp"
#include "cairn/render.hpp"
#include "support/engines.hpp"

namespace cairn::test {
namespace {

constexpr std::string_view expect_mark = "# expect:";
constexpr std::string_view mistake_mark = "# mistake-of: ";

template <class Integer>
std::optional<Integer> read_integer(std::string_view text) {
  Integer value{};
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
  return value;
}

std::optional<AskedProperty> read_asked(std::string_view text) {
  const std::size_t equals = text.find('=');
  const auto property = property_named(text.substr(0, equals));
  if (!property) return std::nullopt;
  const bool takes_k = *property == Property::tolerates_loss;
  if (takes_k != (equals != std::string_view::npos)) return std::nullopt;
  if (!takes_k) return AskedProperty{*property};
  const auto k = read_integer<std::int64_t>(text.substr(equals + 1));
  if (!k || *k < 1) return std::nullopt;
  return AskedProperty{*property, *k};
}

std::vector<std::string> words_of(std::string_view text) {
  std::istringstream stream{std::string(text)};
  return {std::istream_iterator<std::string>(stream), {}};
}

std::vector<Proved> prove_all() {
  std::vector<Proved> all;
  const DiskFiles disk;
  for (const std::string& path : model_files()) {
    if (!is_procedure(path)) continue;
    auto model = load_procedure(model_path(path), disk);
    if (!model) {
      FAIL_CHECK(path << "\n" << render_diagnostics(model.problems()));
      continue;
    }
    auto report = prove(model.value(), test::exploring());
    if (!report) {
      FAIL_CHECK(path << "\n" << render_diagnostics(report.problems()));
      continue;
    }
    all.push_back({path, read_heading(model_text(path)), std::move(model).value(), std::move(report).value()});
  }
  return all;
}

}  // namespace

std::optional<Expectation> read_expectation(std::string_view text) {
  const auto words = words_of(text);
  if (words.size() < 2 || words.size() > 3) return std::nullopt;
  const auto asked = read_asked(words[0]);
  if (!asked) return std::nullopt;
  Expectation expectation{*asked};
  if (words[1] == name_of(Verdict::proved)) {
    expectation.vacuous = words.size() == 3;
    if (expectation.vacuous && words[2] != "vacuous") return std::nullopt;
    return expectation;
  }
  if (words[1] != name_of(Verdict::refuted) || words.size() != 3) return std::nullopt;
  const auto events = read_integer<std::size_t>(words[2]);
  if (!events) return std::nullopt;
  expectation.verdict = Verdict::refuted;
  expectation.events = *events;
  return expectation;
}

Heading read_heading(const std::string& text) {
  Heading heading;
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line) && line.starts_with('#');) {
    if (line.starts_with(expect_mark)) {
      const auto expectation = read_expectation(std::string_view(line).substr(expect_mark.size()));
      if (expectation) {
        heading.expectations.push_back(*expectation);
      } else {
        heading.malformed.push_back(line);
      }
    } else if (line.starts_with(mistake_mark)) {
      heading.mistake_of = line.substr(mistake_mark.size());
    } else {
      heading.prose.push_back(line.substr(std::min<std::size_t>(2, line.size())));
    }
  }
  return heading;
}

std::string model_path(const std::string& path) {
  return std::string(CAIRN_SOURCE_DIR) + "/models/" + path;
}

std::vector<std::string> model_files() {
  const std::filesystem::path root = model_path("");
  std::vector<std::string> files;
  for (const auto& entry : std::filesystem::recursive_directory_iterator(root)) {
    if (entry.path().extension() == ".yaml") files.push_back(entry.path().lexically_relative(root).generic_string());
  }
  std::sort(files.begin(), files.end());
  return files;
}

std::string model_text(const std::string& path) {
  auto content = DiskFiles().read(model_path(path));
  REQUIRE_MESSAGE(std::holds_alternative<std::string>(content), path);
  return std::get<std::string>(std::move(content));
}

bool is_procedure(const std::string& path) {
  if (path.starts_with("procedures/")) return true;
  return path.starts_with("quickstart/") && model_text(path).find("\nprocedure:") != std::string::npos;
}

const std::vector<Proved>& shelf() {
  static const std::vector<Proved> all = prove_all();
  return all;
}

}  // namespace cairn::test
