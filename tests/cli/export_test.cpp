// cairn export: which folders are filled, which are left alone, and what an earlier export becomes.
#include <doctest/doctest.h>
#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

#include "cli/program.hpp"
#include "report/quay.hpp"

using namespace cairn::test;
namespace fs = std::filesystem;

namespace {

const std::string sound =
    "  - power-on: quay-3\n  - await: up(quay-3)\n  - plug: run\n  - await: follower(quay-3)\n"
    "goal: {stack: [quay-1, quay-2, quay-3], primary: quay-1}\n";

std::set<std::string> files_in(const std::string& folder) {
  std::set<std::string> names;
  for (const auto& entry : fs::directory_iterator(folder)) names.insert(entry.path().filename().string());
  return names;
}

std::string content_of(const std::string& path) {
  std::ifstream file(path);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

/// A procedure, and a folder that is not there yet.
struct Export {
  Workplace place;
  std::string procedure = place.write("grow.yaml", quay_text(sound));
  std::string folder = place.path() + "/for/them";

  [[nodiscard]] Ran ran(const std::string& property = "no-refusal", std::vector<std::string> more = {}) const {
    std::vector<std::string> call{"export", procedure, "--property", property, "--to", folder};
    call.insert(call.end(), more.begin(), more.end());
    return run(call);
  }
};

}  // namespace

TEST_CASE("a folder is made, and filled with questions and an index that lists them all") {
  const Export it;
  const Ran ran = it.ran();
  CHECK(ran.status == 0);
  CHECK(ran.err.empty());
  CHECK(has(ran.out, "no-refusal of \"At the quay\" is proved."));
  const std::set<std::string> files = files_in(it.folder);
  REQUIRE(files.contains("README.txt"));
  CHECK(files.contains("facts-exclude-a-breach-of-no-refusal.smt2"));
  const std::string index = content_of(it.folder + "/README.txt");
  for (const std::string& name : files) {
    if (name == "README.txt") continue;
    CHECK(name.ends_with(".smt2"));
    CHECK(has(index, "  " + name + "\n"));
    CHECK(has(ran.out, "  " + name + "\n"));
    CHECK(has(content_of(it.folder + "/" + name), "(check-sat)"));
  }
}

TEST_CASE("a refuted property is exported too, with the faults that the call allows") {
  const Export it;
  const Ran ran = it.ran("no-split", {"--cable-breaks", "1"});
  CHECK(ran.status == 0);
  CHECK(has(ran.out, "is refuted by"));
  std::string words = ran.out;
  std::ranges::replace(words, '\n', ' ');
  CHECK(has(words, "under at most 1 cable break"));
  bool found = false;
  for (const std::string& name : files_in(it.folder)) {
    found = found || (name.starts_with("run-of-") && name.ends_with("-breaks-no-split.smt2"));
  }
  CHECK(found);
}

TEST_CASE("an earlier export is replaced as a whole") {
  const Export it;
  REQUIRE(it.ran("no-refusal").status == 0);
  REQUIRE(files_in(it.folder).contains("facts-exclude-a-breach-of-no-refusal.smt2"));
  // What a call that was killed leaves behind.
  std::ofstream(it.folder + "/half.smt2.unfinished") << "(ass";
  REQUIRE(it.ran("no-clash").status == 0);
  const std::set<std::string> files = files_in(it.folder);
  CHECK(files.contains("facts-exclude-a-breach-of-no-clash.smt2"));
  CHECK_FALSE(files.contains("facts-exclude-a-breach-of-no-refusal.smt2"));
  CHECK_FALSE(files.contains("half.smt2.unfinished"));
  const Export fresh;
  REQUIRE(fresh.ran("no-clash").status == 0);
  CHECK(files_in(fresh.folder) == files);
}

TEST_CASE("a folder with anything else in it is left alone") {
  const Export it;
  fs::create_directories(it.folder);
  const auto refused = [&](const std::string& name) {
    const std::set<std::string> before = files_in(it.folder);
    const Ran ran = it.ran();
    CHECK(ran.status == 2);
    CHECK(ran.out.empty());
    CHECK(has(ran.err, "cairn: --to: `" + it.folder + "` holds `" + name +
                           "`, which no earlier export has put there; name another folder\n"));
    CHECK(files_in(it.folder) == before);
    fs::remove_all(it.folder + "/" + name);
  };
  std::ofstream(it.folder + "/mine.smt2") << "; A question of mine.\n(check-sat)\n";
  refused("mine.smt2");
  std::ofstream(it.folder + "/empty");
  refused("empty");
  fs::create_directory(it.folder + "/inner");
  refused("inner");
  fs::create_symlink(it.procedure, it.folder + "/link.smt2");
  refused("link.smt2");
  CHECK(it.ran().status == 0);
  std::ofstream(it.folder + "/mine.smt2") << "(check-sat)\n";
  refused("mine.smt2");
}

TEST_CASE("a folder that is none, and one that cannot be made") {
  Export it;
  it.folder = it.procedure;
  CHECK(has(it.ran().err, "cannot be made a folder: it is none\n"));
  CHECK(it.ran().status == 2);
  it.folder = it.procedure + "/questions";
  CHECK(it.ran().status == 2);
  CHECK(has(it.ran().err, "cannot be made a folder: "));
  it.folder = "";
  CHECK(it.ran().status == 2);
  CHECK(it.ran().out.empty());
}

TEST_CASE("a wrong procedure or question is told before anything is made") {
  Export it;
  CHECK(it.ran("tolerates-loss=1", {"--time-limit", "x"}).status == 2);
  it.procedure = it.place.write("goalless.yaml", quay_text("  - save: quay-1\n"));
  const Ran ran = it.ran("reaches-goal");
  CHECK(ran.status == 2);
  CHECK(has(ran.err, "no goal"));
  CHECK_FALSE(fs::exists(it.folder));
}

TEST_CASE("undecided: 3, and nothing is written") {
  const Export it;
  const Ran ran = it.ran("no-refusal", {"--time-limit", "0"});
  CHECK(ran.status == 3);
  CHECK(has(ran.out, "Nothing was written."));
  CHECK(files_in(it.folder).empty());
}
