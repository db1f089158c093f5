#include <fmt/format.h>

#include <CLI/CLI.hpp>

#include "cairn/nearest.hpp"
#include "cairn/version.hpp"
#include "cli/call.hpp"
#include "cli/help.hpp"
#include "cli/values.hpp"

namespace cairn::cli {

namespace {

/// Help begins with the examples, which the library takes for a footer.
class HelpLayout final : public CLI::Formatter {
 public:
  HelpLayout() { column_width(22); }

  std::string make_help(const CLI::App* app, std::string name, CLI::AppFormatMode mode) const override {
    const std::string help = app->get_footer() + "\n\n" + make_usage(app, std::move(name)) +
                             make_subcommands(app, mode) + make_groups(app, mode);
    return CLI::detail::find_and_replace(help, "\n\n\n", "\n\n");
  }
  std::string make_usage(const CLI::App* app, std::string name) const override {
    const bool program = app->get_parent() == nullptr;
    return Formatter::make_usage(app, program ? "cairn" : "cairn " + std::move(name));
  }
  std::string make_option_name(const CLI::Option* option, bool is_positional) const override {
    const std::string name = option->get_name(is_positional, !is_positional);
    return name.substr(0, name.find('{'));  // without the value of a flag that denies
  }
  std::string make_option_opts(const CLI::Option* option) const override {
    return option->get_option_text().empty() ? "" : " " + option->get_option_text();
  }
};

/// Declares the options and holds what they say.
class CommandLine {
 public:
  CommandLine() {
    app_.formatter(std::make_shared<HelpLayout>());
    app_.footer(program_help);
    app_.get_formatter()->label("SUBCOMMAND", "COMMAND");
    app_.set_help_flag("-h,--help", "Print this help");
    app_.set_version_flag("--version", fmt::format("cairn {}", version), "Print the version");
    app_.require_subcommand(1);
    declare_prove();
    declare_why();
    declare_export();
    declare_walk();
    declare_lint();
  }

  Call read(int argc, const char* const* argv) {
    try {
      app_.parse(argc, argv);
    } catch (const CLI::CallForVersion&) {
      return Show{fmt::format("cairn {}\n", version)};
    } catch (const CLI::CallForHelp&) {
      return Show{(chosen() ? chosen() : &app_)->help()};
    } catch (const CLI::ExtrasError&) {
      return misuse(unexpected());
    } catch (const CLI::ArgumentMismatch& error) {
      return misuse(miscounted(error.what()));
    } catch (const CLI::RequiredError& error) {
      if (chosen()) return misuse(error.what());
      return misuse(argc > 1 ? unexpected() : "a command is wanted: prove, why, export, walk or lint");
    } catch (const CLI::ParseError& error) {
      return misuse(error.what());
    }
    if (prove_->parsed()) return prove_call();
    if (why_->parsed()) return why_call();
    if (export_->parsed()) return export_call();
    return walk_->parsed() ? Call(walk_call()) : Call(lint_call());
  }

 private:
  void declare_prove() {
    prove_ = app_.add_subcommand("prove", "Prove a procedure, or show how it goes wrong");
    command(prove_, prove_help);
    prove_->add_option("PROCEDURE", prove_call_.files)->required();
    declare_question(prove_, prove_call_.options);
    declare_format(prove_);
    declare_engine(prove_call_.options);
    prove_->add_flag("--quiet", prove_call_.quiet, "Verdicts alone; of several files one line each")->group("Output");
    prove_->add_flag("--timing", prove_call_.timing, "Tell also how long it took")->group("Output");
    declare_jobs(prove_, prove_call_.options);
    declare_limits(prove_);
  }

  void declare_why() {
    why_ = app_.add_subcommand("why", "Tell why a verdict is what it is");
    command(why_, why_help);
    why_->add_option("PROCEDURE", why_call_.file)->required();
    why_->add_flag("--drop-one", why_call_.drop_one, "What protects nothing, and what the others protect")
        ->group("Instead of all reasons");
    declare_question(why_, why_call_.options);
    declare_format(why_);
    declare_jobs(why_, why_call_.options);
    declare_limits(why_);
  }

  void declare_export() {
    export_ = app_.add_subcommand("export", "Write the questions behind a verdict, for any solver");
    command(export_, export_help);
    export_->add_option("PROCEDURE", export_call_.file)->required();
    export_->add_option("--property", exported_, "The property")->option_text("NAME")->required()->check(check_asked);
    export_->add_option("--to", export_call_.folder, "The folder, for these questions alone")
        ->option_text("DIR")
        ->required();
    declare_faults(export_, export_call_.options);
    declare_limits(export_);
  }

  void declare_walk() {
    walk_ = app_.add_subcommand("walk", "Walk through a procedure, or through a refutation");
    command(walk_, walk_help);
    walk_->add_option("PROCEDURE", walk_call_.file)->required();
    walk_->add_option("--events", walk_call_.verdict, "Walk a refutation in this verdict")->option_text("VERDICT.json");
    walk_->add_option("--property", walk_property_, "The one of this property; else the first")
        ->option_text("NAME")
        ->check(check_wanted)
        ->needs("--events");
  }

  void declare_lint() {
    lint_ = app_.add_subcommand("lint", "Tell every problem of files, and what is odd");
    command(lint_, lint_help);
    lint_->add_option("FILE", lint_files_)->required();
    declare_limits(lint_);
  }

  static void command(CLI::App* app, const char* help) {
    app->footer(help);
    app->group("Commands");
  }

  // What is asked: properties and faults, each instead of what the procedure says.
  void declare_question(CLI::App* command, ProveOptions& options) {
    command->add_option("--property", asked_, "Ask for this property; may be given again")
        ->option_text("NAME")
        ->group("Instead of what the procedure asks for")
        ->expected(1)
        ->allow_extra_args(false)  // what follows its one name is a file, or another option
        ->check(check_asked)
        ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
    declare_faults(command, options);
  }

  void declare_faults(CLI::App* command, ProveOptions& options) {
    const auto fault = [&](const std::string& name, std::optional<std::int64_t>& count, const std::string& what) {
      // Read by `whole_number` as the check reads it: the library would take 010 for an octal number.
      command
          ->add_option_function<std::string>(
              name, [&count](const std::string& text) { count = whole_number(text); }, what)
          ->option_text("N")
          ->group("Instead of the faults that the procedure allows")
          ->check([](const std::string& text) { return at_least(0, text); });
    };
    fault("--cable-breaks", options.cable_breaks, "So many cables may break");
    fault("--crashes", options.crashes, "So many crashes may strike devices");
    fault("--omissions", options.omissions, "So many steps may be forgotten");
    fault("--late-starts", options.late_starts, "So many starts may complete late");
    command->add_flag("--mends,!--no-mends", mends_, "Broken cables may work again, or not")
        ->group("Instead of the faults that the procedure allows");
  }

  void declare_engine(ProveOptions& options) {
    prove_
        ->add_option_function<std::string>(
            "--engine", [&options](const std::string& text) { options.engine = *engine_named(text); },
            "auto, as usual; explore, solver, or both, which must agree")
        ->option_text("ENGINE")
        ->group("How verdicts are settled")
        ->check(check_engine);
    prove_
        ->add_option_function<std::string>(
            "--confirm-limit",
            [&options](const std::string& text) {
              options.confirm_limit = options.forgetting_limit = static_cast<std::uint64_t>(*whole_number(text));
            },
            "Confirm by up to so many states; 1000000, as usual")
        ->option_text("N")
        ->group("How verdicts are settled")
        ->check([](const std::string& text) { return at_least(0, text); });
    prove_
        ->add_option_function<std::string>(
            "--reduce", [&options](const std::string& text) { read_reductions(text, options.reductions); },
            "all, as usual, none, or of these, with commas:\n"
            "seniority, settings, budgets, orders, alike")
        ->option_text("NAMES")
        ->group("How verdicts are settled")
        ->check([](const std::string& text) {
          Reductions reductions;
          return read_reductions(text, reductions);
        });
  }

  void declare_format(CLI::App* command) {
    command->add_option("--format", format_, "text, as usual, or json")
        ->option_text("FORMAT")
        ->group("Output")
        ->check(check_format);
  }

  static void declare_jobs(CLI::App* command, ProveOptions& options) {
    options.jobs = processors();
    command
        ->add_option_function<std::string>(
            "--jobs", [&options](const std::string& text) { options.jobs = *jobs_named(text); },
            "Explore in so many threads; usually one a processor")
        ->option_text("N")
        ->group("How verdicts are settled")
        ->check(check_jobs);
  }

  void declare_limits(CLI::App* command) {
    command->add_option("--time-limit", seconds_, "Stop after so many seconds")
        ->option_text("S")
        ->group("Limits")
        ->check(check_seconds);
    command
        ->add_option_function<std::string>(
            "--memory-limit", [this](const std::string& text) { megabytes_ = whole_number(text); },
            "Stop at so many megabytes of states")
        ->option_text("MB")
        ->group("Limits")
        ->check([](const std::string& text) { return at_least(1, text); });
  }

  [[nodiscard]] CLI::App* chosen() const {
    for (CLI::App* command : {prove_, why_, export_, walk_, lint_}) {
      if (command->parsed()) return command;
    }
    return nullptr;
  }

  // "--crashes: At Most 1 required but received 2", "--format: 1 required TEXT missing"
  static std::string miscounted(const std::string& what) {
    const std::string option = what.substr(0, what.find(':'));
    const bool missing = what.find("missing") != std::string::npos;
    return option + (missing ? " needs a value" : " is given more than once");
  }

  // The first word that has no place, and what was perhaps meant.
  [[nodiscard]] std::string unexpected() const {
    const CLI::App* command = chosen();
    std::vector<std::string> names;
    const CLI::App* place = command ? command : &app_;
    for (const CLI::Option* option : place->get_options()) {
      for (const auto& name : option->get_lnames()) names.push_back("--" + name);
      for (const auto& name : option->get_fnames()) names.push_back("--" + name);
    }
    const std::vector<std::string> left = app_.remaining(true);
    const std::string word = left.empty() ? "" : left.front();
    const bool option = word.rfind('-', 0) == 0;
    if (!option && !command) names = {"prove", "why", "export", "walk", "lint"};
    const std::string stem = word.substr(0, word.find('='));
    const std::vector<std::string_view> known(names.begin(), names.end());
    if (option) return fmt::format("there is no option `{}`{}", stem, perhaps(stem, known));
    if (command) return fmt::format("`{}` is one file too many", word);
    return fmt::format("there is no command `{}`{}", word, perhaps(word, known));
  }

  [[nodiscard]] Misuse misuse(const std::string& what) const {
    const CLI::App* command = chosen();
    return {fmt::format("cairn: {}\nSee `cairn {}--help`.\n", what, command ? command->get_name() + " " : "")};
  }

  void fill(Limits& limits) const {
    limits.seconds = seconds_;
    limits.megabytes = megabytes_ ? megabytes_ : usual_megabytes();
  }

  // Where a property is asked for twice, the one that is.
  std::string fill(const CLI::App* command, ProveOptions& options) const {
    if (command->count("--mends") > 0) options.mends = mends_;
    fill(options.limits);
    for (const std::string& text : asked_) {
      AskedProperty asked;
      read_asked(text, asked);
      for (const AskedProperty& before : options.properties) {
        if (before == asked) return text;
      }
      options.properties.push_back(asked);
    }
    return {};
  }

  [[nodiscard]] Misuse asked_twice(const std::string& property) const {
    return misuse(fmt::format("--property: {} is asked for twice", property));
  }

  Call prove_call() {
    prove_call_.json = format_ == "json";
    if (const std::string twice = fill(prove_, prove_call_.options); !twice.empty()) return asked_twice(twice);
    return prove_call_;
  }

  Call why_call() {
    why_call_.json = format_ == "json";
    if (const std::string twice = fill(why_, why_call_.options); !twice.empty()) return asked_twice(twice);
    return why_call_;
  }

  Call export_call() {
    AskedProperty asked;
    read_asked(exported_, asked);
    export_call_.options.properties = {asked};
    fill(export_, export_call_.options);
    return export_call_;
  }

  WalkCall walk_call() {
    if (walk_property_.find('=') != std::string::npos) {
      AskedProperty asked;
      read_asked(walk_property_, asked);
      walk_call_.property = asked.property;
      walk_call_.k = asked.k;
    } else if (!walk_property_.empty()) {
      walk_call_.property = property_named(walk_property_);
    }
    return walk_call_;
  }

  LintCall lint_call() {
    LintCall call{lint_files_, {}};
    fill(call.limits);
    return call;
  }

  CLI::App app_{"", "cairn"};
  CLI::App* prove_ = nullptr;
  CLI::App* why_ = nullptr;
  CLI::App* export_ = nullptr;
  CLI::App* walk_ = nullptr;
  CLI::App* lint_ = nullptr;
  ProveCall prove_call_;
  WhyCall why_call_;
  ExportCall export_call_;
  WalkCall walk_call_;
  bool mends_ = false;
  std::vector<std::string> lint_files_;
  std::vector<std::string> asked_;
  std::string exported_;
  std::string walk_property_;
  std::string format_ = "text";
  std::optional<double> seconds_;
  std::optional<std::uint64_t> megabytes_;
};

}  // namespace

Call read_call(int argc, const char* const* argv) {
  return CommandLine().read(argc, argv);
}

}  // namespace cairn::cli
