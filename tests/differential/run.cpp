// As many random models as wanted, the library against the reference, or one of its ways against another:
// scripts/differential.
#include <fmt/core.h>
#include <CLI/CLI.hpp>

#include "differential/campaign.hpp"

int main(int argc, char** argv) {
  CLI::App app("Compares two ways to a verdict on random models; exits with 1 where they disagree.");
  std::size_t models = 3000;
  std::uint64_t seed = 1;
  app.add_option("--models", models, "How many models are compared")->capture_default_str();
  app.add_option("--seed", seed, "Another seed, other models")->capture_default_str();
  bool engines = false;
  app.add_flag("--engines", engines,
               "The library's states against its constraints, not the library against the reference");
  bool reductions = false;
  app.add_flag("--reductions", reductions, "Explorations with reductions against whole ones")->excludes("--engines");
  bool jobs = false;
  app.add_flag("--jobs", jobs, "One thread against several")->excludes("--engines")->excludes("--reductions");
  bool sets = false;
  app.add_flag("--sets", sets, "The sets of explorations with reductions, put to the formulas")
      ->excludes("--engines")
      ->excludes("--reductions");
  bool strict = false;
  app.add_flag("--strict", strict, "A set that stays unclear counts as a disagreement")->needs("--sets");
  bool loners = false;
  app.add_flag("--loners", loners, "Models of devices that lead themselves and are joined, for reductions and sets")
      ->excludes("--engines");
  bool copies = false;
  app.add_flag("--copies", copies, "Models of parts that are copies of one another, for reductions")
      ->excludes("--loners")
      ->needs("--reductions");
  bool templates = false;
  app.add_flag("--templates", templates, "Templates against each of their instances, by the reference")
      ->excludes("--engines")
      ->excludes("--reductions")
      ->excludes("--sets");
  CLI11_PARSE(app, argc, argv);
  using namespace cairn::differential;
  const Contest contest = templates        ? templates_and_instances()
                          : engines        ? states_and_constraints()
                          : sets && loners ? reduced_sets_and_formulas_of_loners(strict)
                          : sets           ? reduced_sets_and_formulas(strict)
                          : loners         ? reduced_and_whole_of_loners()
                          : copies         ? reduced_and_whole_of_copies()
                          : jobs           ? one_and_several_jobs()
                          : reductions     ? reduced_and_whole()
                                           : library_and_reference();
  const Tally tally = run_campaign(contest, models, seed, std::string(CAIRN_SOURCE_DIR) + "/tests/differential/found");
  fmt::print("{}", tally.text());
  return tally.disagreements.empty() ? 0 : 1;
}
