#include "cairn/files.hpp"

#include <chrono>
#include <filesystem>
#include <fstream>
#include <thread>

#include <doctest/doctest.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

using namespace cairn;

namespace {

/// A directory of its own that goes away with the test.
class Scratch {
 public:
  Scratch() {
    std::string pattern = (std::filesystem::temp_directory_path() / "cairn-files-XXXXXX").string();
    if (::mkdtemp(pattern.data()) == nullptr) throw std::runtime_error("no scratch directory");
    directory_ = pattern;
  }
  ~Scratch() { std::filesystem::remove_all(directory_); }
  Scratch(const Scratch&) = delete;
  Scratch& operator=(const Scratch&) = delete;

  [[nodiscard]] std::string path(const std::string& name) const { return (directory_ / name).string(); }
  [[nodiscard]] std::string write(const std::string& name, const std::string& text) const {
    std::ofstream(path(name), std::ios::binary) << text;
    return path(name);
  }

 private:
  std::filesystem::path directory_;
};

std::string text_of(const Files& files, const std::string& path) {
  const auto content = files.read(path);
  REQUIRE(std::holds_alternative<std::string>(content));
  return std::get<std::string>(content);
}

std::string reason_of(const Files& files, const std::string& path) {
  const auto content = files.read(path);
  REQUIRE(std::holds_alternative<Unreadable>(content));
  return std::get<Unreadable>(content).reason;
}

}  // namespace

TEST_CASE("a file on disk is read whole, byte by byte") {
  const Scratch scratch;
  const std::string bytes("a\0b\r\n\xFF", 6);
  CHECK(text_of(DiskFiles(), scratch.write("f", bytes)) == bytes);
  CHECK(text_of(DiskFiles(), scratch.write("empty", "")).empty());
}

TEST_CASE("why a file on disk cannot be read") {
  const Scratch scratch;
  const DiskFiles disk;
  CHECK(reason_of(disk, scratch.path("none")) == "there is no such file");
  CHECK(reason_of(disk, scratch.path("")) == "it is a directory");
  CHECK(reason_of(disk, scratch.write("f", "x") + "/g") == "a part of its path is no directory");
  CHECK(reason_of(disk, "") == "its name is empty");
  CHECK(reason_of(disk, std::string("a\0b", 3)) == "its name holds a NUL byte");
  CHECK(reason_of(disk, std::string(10000, 'a')) == "its name is too long");
  std::filesystem::create_symlink(scratch.path("loop"), scratch.path("loop"));
  CHECK(reason_of(disk, scratch.path("loop")) == "its symbolic links lead in a circle");
  if (::geteuid() != 0) {
    const auto secret = scratch.write("secret", "x");
    std::filesystem::permissions(secret, std::filesystem::perms::none);
    CHECK(reason_of(disk, secret) == "permission is denied");
  }
}

TEST_CASE("no more is read than a model can be long, and an endless file is no exception") {
  const Scratch scratch;
  const DiskFiles disk;
  CHECK(text_of(disk, scratch.write("just", std::string(DiskFiles::max_bytes, 'a'))).size() == DiskFiles::max_bytes);
  CHECK(reason_of(disk, scratch.write("more", std::string(DiskFiles::max_bytes + 1, 'a'))) ==
        "it is larger than 8 MB, which no model is");
  const auto hollow = scratch.write("hollow", "");
  std::filesystem::resize_file(hollow, std::uintmax_t{1} << 40u);
  CHECK(reason_of(disk, hollow) == "it is larger than 8 MB, which no model is");
  CHECK(reason_of(disk, "/dev/zero") == "it is larger than 8 MB, which no model is");
  CHECK(text_of(disk, "/dev/null").empty());
}

TEST_CASE("a pipe is read to its end, in pieces, from a writer that comes late") {
  const Scratch scratch;
  const auto pipe = scratch.path("pipe");
  REQUIRE(::mkfifo(pipe.c_str(), 0600) == 0);
  std::thread writer([&] {
    std::this_thread::sleep_for(std::chrono::milliseconds(50));
    std::ofstream out(pipe, std::ios::binary);
    out << "first " << std::flush;
    std::this_thread::sleep_for(std::chrono::milliseconds(50));
    out << "second";
  });
  CHECK(text_of(DiskFiles(), pipe) == "first second");
  writer.join();
}

TEST_CASE("a pipe that nobody writes into is given up") {
  const Scratch scratch;
  const auto pipe = scratch.path("pipe");
  REQUIRE(::mkfifo(pipe.c_str(), 0600) == 0);
  CHECK(reason_of(DiskFiles(), pipe) == "nothing came out of it for 5 seconds");
}

TEST_CASE("files in memory: paths are compared after `.` and `..` are resolved") {
  const MemoryFiles files({{"models/../sites/yard.yaml", "a"}, {"-", "b"}});
  CHECK(text_of(files, "sites/yard.yaml") == "a");
  CHECK(text_of(files, "./sites/./x/../yard.yaml") == "a");
  CHECK(text_of(files, "-") == "b");
  CHECK(reason_of(files, "yard.yaml") == "there is no such file");
}
