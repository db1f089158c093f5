#include <algorithm>
#include <tuple>

#include "base/text.hpp"
#include "cairn/load.hpp"
#include "cairn/render.hpp"
#include "inputs.hpp"

namespace cairn::test {

namespace {

const char* const platform =
    "platform: Harbour family\nnumbers: [1, 9]\npriorities: [1, 15]\n"
    "factory: {number: 1, priority: 7, enabled: true, side: none}\nnumber-takes: at-once\npriority-takes: at-restart\n"
    "settings-follow: device\nside-takes: at-once\nside-needs-disabled: false\nfacing: any\nside-leads-to: "
    "one-neighbour\n"
    "software: any\norphans: restart\nelection: [tenure, priority, number]\n";

const char* const site =
    "site: Yard\nplatform: platform.yaml\ndevices:\n  a: {number: 4, ports: {p: {side: west}, q: {side: east}}}\n"
    "  b: {number: 7, ports: {p: {side: west}, q: }}\n  c: {power: off, ports: {p: , q: }}\n"
    "cables:\n  a/q--b/p:\n  b/q--c/p: {plugged: false, id: splice}\nstack: {primary: a, members: [a, b]}\n";

/// Ids lie within their tables, and what cairn/model.hpp promises not to be empty is not.
bool is_whole(const Document& document) {
  const auto& m = document.model;
  const auto device = [&](DeviceId d) { return d.value < m.site.devices.size(); };
  const auto port = [&](PortId p) { return p.value < m.site.ports.size(); };
  bool whole = true;
  for (const auto& p : m.site.ports) whole = whole && device(p.device);
  for (const auto& c : m.site.cables) whole = whole && port(c.a) && port(c.b) && m[c.a].device != m[c.b].device;
  for (const auto d : m.procedure.keep) whole = whole && device(d);
  if (m.procedure.goal) {
    whole = whole && !m.procedure.goal->stack.empty();
    for (const auto d : m.procedure.goal->stack) whole = whole && device(d);
  }
  for (std::size_t s = 0; s < m.procedure.steps.size(); ++s) {
    for (const auto p : m.procedure.steps[s].after) whole = whole && p.value < m.procedure.steps.size() && p.value != s;
  }
  return whole && (document.kind != DocumentKind::procedure || !m.procedure.properties.empty());
}

std::string fault_of(const Diagnostics& problems) {
  const auto later = [](const Diagnostic& a, const Diagnostic& b) {
    return a.span.file == b.span.file &&
           std::tuple(a.span.line, a.span.column) > std::tuple(b.span.line, b.span.column);
  };
  // The last entry may be the count of those that are left out.
  const auto end = problems.size() > 10'000 ? problems.end() - 1 : problems.end();
  if (std::adjacent_find(problems.begin(), end, later) != end) return "problems are out of order";
  for (const auto& p : problems) {
    if (p.message.empty()) return "a problem says nothing";
    if (p.span.length < 1) return "a problem points at nothing";
    if (p.source_line.empty()) continue;
    if (static_cast<std::size_t>(p.span.column - 1) > count_code_points(p.source_line))
      return "a problem points beyond its line";
  }
  const auto shown = render_diagnostics(problems);
  const bool raw =
      std::any_of(shown.begin(), shown.end(), [](char c) { return c != '\n' && static_cast<unsigned char>(c) < 0x20; });
  return raw || first_invalid_utf8(shown) ? "raw input reaches the terminal" : "";
}

}  // namespace

std::string try_reader(const std::string& text) {
  const auto document = load_document(
      "input.yaml", MemoryFiles({{"input.yaml", text}, {"site.yaml", site}, {"platform.yaml", platform}}));
  if (document) return is_whole(document.value()) ? "" : "the model is not whole";
  return fault_of(document.problems());
}

}  // namespace cairn::test
