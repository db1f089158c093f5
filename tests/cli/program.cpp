#include "cli/program.hpp"

#include <doctest/doctest.h>
#include <fcntl.h>
#include <poll.h>
#include <pty.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <fstream>

namespace cairn::test {

namespace {

// Both ends of a pipe, or one end of a terminal that stands for both.
struct Channel {
  int read = -1;
  int write = -1;
};

Channel new_pipe() {
  std::array<int, 2> ends{};
  REQUIRE(pipe2(ends.data(), O_CLOEXEC) == 0);
  return {ends[0], ends[1]};
}

[[noreturn]] void become_program(const Start& start, int in, int out, int err) {
  // A test may have been started in the background, where SIGINT is ignored.
  signal(SIGINT, SIG_DFL);
  signal(SIGPIPE, SIG_DFL);
  dup2(in, STDIN_FILENO);
  dup2(out, STDOUT_FILENO);
  dup2(err, STDERR_FILENO);
  std::vector<char*> arguments{const_cast<char*>("cairn")};
  for (const auto& argument : start.arguments) arguments.push_back(const_cast<char*>(argument.c_str()));
  arguments.push_back(nullptr);
  std::vector<char*> environment;
  for (const auto& variable : start.environment) environment.push_back(const_cast<char*>(variable.c_str()));
  environment.push_back(nullptr);
  if (start.address_space != 0) {
    const rlimit limit{start.address_space, start.address_space};
    if (setrlimit(RLIMIT_AS, &limit) != 0) _exit(98);
  }
  execve(CAIRN_PROGRAM, arguments.data(), environment.data());
  _exit(99);
}

// What comes out of both, until both are at their end. A terminal's end shows as an error.
void read_all(int out, std::string& out_text, int err, std::string& err_text) {
  std::array<pollfd, 2> watched{{{out, POLLIN, 0}, {err, POLLIN, 0}}};
  std::array<std::string*, 2> texts{&out_text, &err_text};
  while (watched[0].fd >= 0 || watched[1].fd >= 0) {
    poll(watched.data(), watched.size(), -1);
    for (std::size_t i = 0; i < watched.size(); ++i) {
      if (watched[i].fd < 0 || watched[i].revents == 0) continue;
      std::array<char, 4096> buffer{};
      const ssize_t n = read(watched[i].fd, buffer.data(), buffer.size());
      if (n > 0) {
        texts[i]->append(buffer.data(), static_cast<std::size_t>(n));
      } else {
        watched[i].fd = -1;
      }
    }
  }
}

}  // namespace

Ran run(const Start& start) {
  const Channel in = new_pipe();
  Channel out = new_pipe();
  Channel err = new_pipe();
  if (start.on_terminal) {
    close(out.read);
    close(out.write);
    REQUIRE(openpty(&out.read, &out.write, nullptr, nullptr, nullptr) == 0);
  }
  if (!start.output_file.empty()) {
    close(out.write);
    out.write = open(start.output_file.c_str(), O_WRONLY | O_CLOEXEC);
  }
  REQUIRE(out.write >= 0);
  const int child = fork();
  REQUIRE(child >= 0);
  if (child == 0) {
    if (start.close_output) close(out.read);
    become_program(start, in.read, out.write, start.on_terminal ? out.write : err.write);
  }
  close(in.read);
  close(out.write);
  close(err.write);
  if (start.close_output) close(out.read);
  // Inputs of the tests fit into a pipe.
  if (!start.input.empty()) REQUIRE(write(in.write, start.input.data(), start.input.size()) > 0);
  close(in.write);
  if (start.meanwhile) start.meanwhile(child);
  Ran ran;
  read_all(start.close_output ? -1 : out.read, ran.out, err.read, ran.err);
  if (!start.close_output) close(out.read);
  close(err.read);
  int status = 0;
  REQUIRE(waitpid(child, &status, 0) == child);
  ran.status = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
  return ran;
}

Ran run(std::vector<std::string> arguments) {
  Start start;
  start.arguments = std::move(arguments);
  return run(start);
}

Workplace::Workplace() {
  std::string name = (std::filesystem::temp_directory_path() / "cairn-test-XXXXXX").string();
  REQUIRE(mkdtemp(name.data()) != nullptr);
  path_ = name;
}

Workplace::~Workplace() {
  std::filesystem::remove_all(path_);
}

std::string Workplace::write(const std::string& name, const std::string& content) const {
  std::string path = path_ + "/" + name;
  std::ofstream(path, std::ios::binary) << content;
  return path;
}

}  // namespace cairn::test
