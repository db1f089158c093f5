// Memory that is left, read from files as the Linux kernel lays them out: proc(5), its documents on control groups
// (admin-guide/cgroup-v2, "memory.max", "memory.current"; admin-guide/cgroup-v1/memory, "memory.limit_in_bytes").
#include "cairn/memory.hpp"

#include <doctest/doctest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>

using namespace cairn;
namespace fs = std::filesystem;

namespace {

/// A folder that stands for the root of a file system; gone with this.
class Root {
 public:
  Root() : path_(fs::temp_directory_path() / ("cairn-memory-" + std::to_string(getpid()))) {
    fs::create_directories(path_);
  }
  Root(const Root&) = delete;
  Root& operator=(const Root&) = delete;
  ~Root() { fs::remove_all(path_); }

  void write(const std::string& file, const std::string& text) const {
    fs::create_directories((path_ / file).parent_path());
    std::ofstream(path_ / file) << text;
  }
  [[nodiscard]] std::optional<std::uint64_t> left() const { return memory_left(path_.string()); }

 private:
  fs::path path_;
};

constexpr const char* meminfo =
    "MemTotal:       16000000 kB\nMemFree:         1000000 kB\nMemAvailable:    8000000 kB\n";

}  // namespace

TEST_CASE("what is available is left, in kibibytes") {
  const Root root;
  root.write("proc/meminfo", meminfo);
  CHECK(root.left() == 8'000'000ULL * 1024);
}

TEST_CASE("nothing is told where the system tells nothing") {
  const Root root;
  CHECK_FALSE(root.left().has_value());
}

TEST_CASE("a control group of version 2 leaves less, and so do those that it is in") {
  const Root root;
  root.write("proc/meminfo", meminfo);
  root.write("proc/self/cgroup", "0::/work/night\n");
  root.write("sys/fs/cgroup/work/night/memory.max", "max\n");
  root.write("sys/fs/cgroup/work/night/memory.current", "123\n");
  CHECK(root.left() == 8'000'000ULL * 1024);
  root.write("sys/fs/cgroup/work/memory.max", "5000\n");
  root.write("sys/fs/cgroup/work/memory.current", "3000\n");
  CHECK(root.left() == 2000);
  root.write("sys/fs/cgroup/work/memory.stat", "anon 2500\ninactive_file 400\n");
  CHECK(root.left() == 2400);
  root.write("sys/fs/cgroup/work/night/memory.max", "500\n");
  CHECK(root.left() == 377);
}

TEST_CASE("a control group of version 1 leaves less, inside a container too") {
  const Root root;
  root.write("proc/meminfo", meminfo);
  root.write("proc/self/cgroup", "5:cpu,cpuacct:/\n4:memory:/of-the-host/one\n");
  root.write("sys/fs/cgroup/memory/memory.limit_in_bytes", "7000\n");
  root.write("sys/fs/cgroup/memory/memory.usage_in_bytes", "6000\n");
  root.write("sys/fs/cgroup/memory/memory.stat", "inactive_file 9\ntotal_inactive_file 500\n");
  CHECK(root.left() == 1500);
}

TEST_CASE("more in use than is allowed leaves nothing") {
  const Root root;
  root.write("proc/self/cgroup", "0::/\n");
  root.write("sys/fs/cgroup/memory.max", "100\n");
  root.write("sys/fs/cgroup/memory.current", "200\n");
  CHECK(root.left() == 0);
}

TEST_CASE("this machine has something left") {
  const auto left = memory_left();
  REQUIRE(left.has_value());
  CHECK(*left > 1'000'000);
}
