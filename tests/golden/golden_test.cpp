// Sessions with the program, each in a folder with the files that it is about: `session.txt` holds the calls, each on a
// line that begins with "$ cairn ", and below each what must come out, byte for byte. With CAIRN_COLLECT=1 in the
// environment the test writes down what comes out instead; read the difference before it is committed.
#include <doctest/doctest.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "cli/program.hpp"

using namespace cairn::test;

namespace {

namespace fs = std::filesystem;

const std::string call_sign = "$ cairn ";

std::string content_of(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream content;
  content << in.rdbuf();
  return content.str();
}

std::vector<std::string> calls_in(const std::string& session) {
  std::vector<std::string> calls;
  std::istringstream lines(session);
  for (std::string line; std::getline(lines, line);) {
    if (line.starts_with(call_sign)) calls.push_back(line.substr(call_sign.size()));
  }
  return calls;
}

// Arguments are parted by blanks; "> FILE" at the end keeps standard output in a file, "< FILE" gives standard input.
std::string session_of(const std::vector<std::string>& calls) {
  std::string session;
  for (const std::string& call : calls) {
    Start start;
    std::string kept;
    std::istringstream words(call);
    for (std::string word; words >> word;) {
      if (word == ">") {
        words >> kept;
      } else if (word == "<") {
        words >> word;
        start.input = content_of(word);
      } else {
        start.arguments.push_back(word);
      }
    }
    const Ran ran = run(start);
    if (!kept.empty()) std::ofstream(kept, std::ios::binary) << ran.out;
    session += call_sign + call + "\n" + (kept.empty() ? ran.out : "");
    if (!ran.err.empty()) session += "[errors]\n" + ran.err;
    session += "[status " + std::to_string(ran.status) + "]\n\n";
  }
  return session;
}

std::vector<fs::path> cases() {
  std::vector<fs::path> found;
  for (const auto& entry : fs::directory_iterator(CAIRN_SOURCE_DIR "/tests/golden")) {
    if (fs::exists(entry.path() / "session.txt")) found.push_back(entry.path());
  }
  std::sort(found.begin(), found.end());
  return found;
}

}  // namespace

TEST_CASE("sessions come out as they are written down") {
  const bool collect = std::getenv("CAIRN_COLLECT") != nullptr;
  const auto all = cases();
  REQUIRE(all.size() >= 10);
  for (const fs::path& folder : all) {
    CAPTURE(folder.filename().string());
    // Files that a session writes stay out of the sources.
    const Workplace place;
    fs::copy(folder, place.path(), fs::copy_options::recursive);
    REQUIRE(chdir(place.path().c_str()) == 0);
    const std::string written = content_of(folder / "session.txt");
    const std::string now = session_of(calls_in(written));
    REQUIRE(chdir("/") == 0);
    if (collect) {
      std::ofstream(folder / "session.txt", std::ios::binary) << now;
    } else {
      CHECK(now == written);
    }
  }
}
