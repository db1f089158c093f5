// What a program that uses cairn is made to include: C++'s own headers and cairn's, nothing of a library.
#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include "cairn/version.hpp"

namespace {

namespace fs = std::filesystem;

std::vector<std::string> lines_of(const fs::path& path) {
  std::ifstream file(path);
  REQUIRE(file);
  std::vector<std::string> lines;
  for (std::string line; std::getline(file, line);) lines.push_back(line);
  return lines;
}

std::vector<fs::path> public_headers() {
  std::vector<fs::path> headers;
  for (const auto& entry : fs::directory_iterator(fs::path(CAIRN_SOURCE_DIR) / "include" / "cairn")) {
    headers.push_back(entry.path());
  }
  REQUIRE(headers.size() > 10);
  return headers;
}

}  // namespace

TEST_CASE("a public header includes C++'s own headers and public ones alone") {
  const std::regex include(R"(^\s*#\s*include\s*([<"])([^>"]+)[>"].*)");
  const std::regex of_the_language("[a-z_]+");
  const fs::path root = fs::path(CAIRN_SOURCE_DIR) / "include";
  for (const auto& header : public_headers()) {
    for (const auto& line : lines_of(header)) {
      std::smatch found;
      if (!std::regex_match(line, found, include)) continue;
      INFO(header.filename().string() << ": " << line);
      const std::string name = found[2];
      if (found[1] == "<") {
        CHECK(std::regex_match(name, of_the_language));
      } else {
        CHECK(name.starts_with("cairn/"));
        CHECK(fs::exists(root / name));
      }
    }
  }
}

TEST_CASE("a public header is guarded and says what it is for") {
  for (const auto& header : public_headers()) {
    INFO(header.filename().string());
    const auto lines = lines_of(header);
    CHECK(std::count(lines.begin(), lines.end(), "#pragma once") == 1);
    REQUIRE(lines.size() > 2);
    CHECK(lines[0] == "/// \\file");
    CHECK(lines[1].starts_with("/// "));
  }
}

TEST_CASE("cairn.hpp includes every public header") {
  const auto lines = lines_of(fs::path(CAIRN_SOURCE_DIR) / "include" / "cairn" / "cairn.hpp");
  const std::set<std::string> all(lines.begin(), lines.end());
  for (const auto& header : public_headers()) {
    const auto name = header.filename().string();
    if (name == "cairn.hpp") continue;
    INFO(name);
    CHECK(all.contains("#include \"cairn/" + name + "\""));
  }
}

TEST_CASE("the version stands once in the build and once in the headers, and both agree") {
  CHECK(std::string(cairn::version) == CAIRN_PROJECT_VERSION);
}
