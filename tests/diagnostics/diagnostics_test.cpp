// One pair of files for each message: cases/NAME.yaml is wrong in one way, and cases/NAME.txt is what is said about it.
// Run with CAIRN_COLLECT=1 to write the second from the first; without, they are compared.
#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>
#include <vector>

#include <doctest/doctest.h>

#include "cairn/load.hpp"
#include "cairn/render.hpp"

namespace {

using namespace cairn;
namespace fs = std::filesystem;

const fs::path cases = fs::path(CAIRN_SOURCE_DIR) / "tests" / "diagnostics" / "cases";

std::string content_of(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream out;
  out << in.rdbuf();
  return out.str();
}

/// Every file under cases/, by its path relative to it: the reports name them so, wherever the project stands.
MemoryFiles all_files() {
  std::map<std::string, std::string> files;
  for (const auto& entry : fs::recursive_directory_iterator(cases)) {
    if (entry.is_regular_file())
      files[entry.path().lexically_relative(cases).generic_string()] = content_of(entry.path());
  }
  return MemoryFiles(std::move(files));
}

std::vector<std::string> names_of_cases() {
  std::vector<std::string> names;
  for (const auto& entry : fs::directory_iterator(cases)) {
    if (entry.path().extension() == ".yaml") names.push_back(entry.path().stem().string());
  }
  std::sort(names.begin(), names.end());
  return names;
}

bool collecting() {
  const char* value = std::getenv("CAIRN_COLLECT");
  return value != nullptr && std::string(value) == "1";
}

}  // namespace

TEST_CASE("every message, word by word") {
  const auto files = all_files();
  const auto names = names_of_cases();
  REQUIRE(names.size() > 100);
  for (const auto& name : names) {
    const auto document = load_document(name + ".yaml", files);
    REQUIRE_MESSAGE(!document.ok(), name);
    const auto said = render_diagnostics(document.problems());
    const auto golden = cases / (name + ".txt");
    if (collecting()) {
      std::ofstream(golden, std::ios::binary) << said;
    } else {
      CHECK_MESSAGE(said == content_of(golden), name);
    }
    // What has "many" in its name shows that one problem does not hide another; the others show one message each.
    if (name.find("many") == std::string::npos) CHECK_MESSAGE(document.problems().size() == 1, name);
  }
}

TEST_CASE("no golden text without its case") {
  const auto names = names_of_cases();
  for (const auto& entry : fs::directory_iterator(cases)) {
    if (entry.path().extension() != ".txt") continue;
    CHECK_MESSAGE(std::find(names.begin(), names.end(), entry.path().stem().string()) != names.end(),
                  entry.path().string());
  }
}

TEST_CASE("the models that the cases spoil are right") {
  const auto files = all_files();
  for (const char* path : {"support/platform.yaml", "support/yard.yaml", "support/procedure.yaml"}) {
    const auto document = load_document(path, files);
    CHECK_MESSAGE(document.ok(), path);
  }
}
