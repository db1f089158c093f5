// As many random models as wanted, the library against the reference: scripts/differential.
#include <fmt/core.h>
#include <CLI/CLI.hpp>

#include "differential/campaign.hpp"

int main(int argc, char** argv) {
  CLI::App app("Compares the library with the reference on random models; exits with 1 where they disagree.");
  std::size_t models = 3000;
  std::uint64_t seed = 1;
  app.add_option("--models", models, "How many models are compared")->capture_default_str();
  app.add_option("--seed", seed, "Another seed, other models")->capture_default_str();
  CLI11_PARSE(app, argc, argv);
  const auto tally =
      cairn::differential::run_campaign(models, seed, std::string(CAIRN_SOURCE_DIR) + "/tests/differential/found");
  fmt::print("{}", tally.text());
  return tally.disagreements.empty() ? 0 : 1;
}
