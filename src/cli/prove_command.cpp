#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "cairn/files.hpp"
#include "cairn/load.hpp"
#include "cairn/prove.hpp"
#include "cairn/render.hpp"
#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/exit_status.hpp"
#include "cli/interrupt.hpp"

namespace cairn::cli {

namespace {

/// docs/format.md: the worst of two in the order 70, 130, 1, 3, 0.
int worse(int a, int b) {
  constexpr std::array order{no_answer, interrupted, some_refuted, some_undecided, all_proved};
  const auto rank = [&](int status) { return std::find(order.begin(), order.end(), status); };
  return rank(a) < rank(b) ? a : b;
}

/// Reads all procedures, and tells every problem of all of them.
class Models {
 public:
  explicit Models(const ProveCall& call) {
    const DiskFiles disk;
    for (const std::string& file : call.files) {
      auto model = load_procedure(file, disk);
      Diagnostics wrong = model ? objections(model.value(), call.options) : model.problems();
      problems_.insert(problems_.end(), wrong.begin(), wrong.end());
      if (model) models_.push_back(std::move(model).value());
    }
  }

  [[nodiscard]] const Diagnostics& problems() const { return problems_; }
  [[nodiscard]] const std::vector<Model>& all() const { return models_; }

 private:
  std::vector<Model> models_;
  Diagnostics problems_;
};

std::string told(const ProveCall& call, const Model& model, const Report& report, bool several) {
  if (call.json) return render_json(model, report, call.timing) + "\n";
  if (several && call.quiet) return {};
  const TextStyle style{colours_on_output(), call.timing, call.quiet};
  return render_text(model, report, style) + (several ? "\n" : "");
}

}  // namespace

int prove_command(const ProveCall& call, Output& out) {
  const Models models(call);
  if (!models.problems().empty()) {
    complain(render_diagnostics(models.problems(), {colours_on_errors(), false, false}));
    return wrong_input;
  }
  const bool several = models.all().size() > 1;
  std::string summary;
  int status = all_proved;
  const InterruptGuard interrupt;
  for (std::size_t i = 0; i < models.all().size(); ++i) {
    const Model& model = models.all()[i];
    ProveOptions options = call.options;
    options.limits.interrupt = interrupt.flag();
    auto answer = [&] {
      ProgressLine line(!call.quiet);
      if (line.shown()) options.progress = [&](const Progress& progress) { line.draw(progress); };
      return prove(model, options);
    }();
    const Report& report = answer.value();
    out.write(told(call, model, report, several));
    cry_out(call.files[i], report);
    summary += render_summary_line(call.files[i], model, report, {colours_on_output(), false, false});
    status = worse(status, status_of(report));
  }
  if (several && !call.json) out.write(summary);
  return status;
}

}  // namespace cairn::cli
