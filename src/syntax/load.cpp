#include "cairn/load.hpp"

#include <algorithm>
#include <deque>
#include <filesystem>
#include <utility>

#include <fmt/format.h>

#include "base/text.hpp"
#include "syntax/instances.hpp"
#include "syntax/read_platform.hpp"
#include "syntax/read_procedure.hpp"
#include "syntax/read_site.hpp"
#include "syntax/resolve_condition.hpp"
#include "syntax/resolve_procedure.hpp"
#include "syntax/resolve_site.hpp"

namespace cairn {

namespace {

using namespace syntax;

std::string_view name_of(DocumentKind kind) {
  switch (kind) {
    case DocumentKind::platform:
      return "platform";
    case DocumentKind::site:
      return "site";
    case DocumentKind::procedure:
      return "procedure";
  }
  return {};
}

bool has_key(const Node& node, std::initializer_list<std::string_view> keys) {
  return std::any_of(node.entries.begin(), node.entries.end(), [&](const Entry& e) {
    return e.key.is_scalar() && std::find(keys.begin(), keys.end(), e.key.text) != keys.end();
  });
}

/// What a document is, by its keys; nothing when it has no key of any kind. A missing title does not deceive.
std::optional<DocumentKind> kind_of(const Node& node) {
  if (has_key(node, {"procedure"})) return DocumentKind::procedure;
  const bool of_site = has_key(node, {"devices", "cables", "stack"});
  const bool of_procedure = has_key(node, {"steps", "goal", "keep", "faults", "properties", "parameters", "assume"});
  if (of_site) return DocumentKind::site;
  if (of_procedure) return DocumentKind::procedure;
  if (has_key(node, {"site"})) return DocumentKind::site;
  if (has_key(node, {"platform", "numbers", "priorities", "factory", "election"})) return DocumentKind::platform;
  return std::nullopt;
}

/// A path that stands in `naming`, relative to the directory of that file ("-": the current one).
std::string relative_to(const std::string& naming, const std::string& path) {
  const auto directory = naming == "-" ? std::filesystem::path() : std::filesystem::path(naming).parent_path();
  const auto joined = (directory / path).lexically_normal().string();
  return joined == "-" ? "./-" : joined;  // a file of that name, not standard input
}

/// Reads documents, keeps what they are made of, and collects every problem.
class Loader {
 public:
  explicit Loader(const Files& files) : files_(files) {}

  Result<Model> procedure(const std::string& path) {
    const Node* node = read_first(path);
    if (node != nullptr && is_kind(*node, DocumentKind::procedure, path)) load_procedure(*node);
    return finish();
  }

  Result<Document> document(const std::string& path) {
    Document document;
    if (const Node* node = read_first(path)) {
      if (const auto kind = kind_of(*node)) {
        document.kind = *kind;
        load(*node, *kind);
      } else {
        const bool mapping = node->kind == Node::Kind::mapping;
        problems_.add(node->place, mapping ? "this is no model" : fmt::format("the document is {}", describe(*node)),
                      "a mapping with `procedure`, `site` or `platform`");
      }
    }
    auto model = finish();
    if (!model) return model.problems();
    document.model = std::move(model).value();
    return document;
  }

 private:
  /// The longest path that a Linux system takes.
  static constexpr std::size_t longest_path = 4096;

  const Node* read_first(const std::string& path) {
    model_.files.push_back(path);
    return read_file(path, nullptr);
  }

  /// The document in a file. `named_at` is where another file names it.
  const Node* read_file(const std::string& path, const Node* named_at) {
    auto content = files_.read(path);
    if (const auto* unreadable = std::get_if<Unreadable>(&content)) {
      if (named_at == nullptr) {
        problems_.add(path, fmt::format("cannot be read: {}", unreadable->reason));
      } else {
        problems_.add(named_at->place, fmt::format("{} cannot be read: {}", cairn::quoted(path), unreadable->reason),
                      "the path of a file, relative to this one");
      }
      return nullptr;
    }
    sources_.emplace_back(path, std::move(std::get<std::string>(content)));
    auto node = parse_yaml(sources_.back(), problems_);
    if (!node) return nullptr;
    nodes_.push_back(std::move(*node));
    return &nodes_.back();
  }

  bool is_kind(const Node& node, DocumentKind wanted, const std::string& file) {
    const auto kind = node.kind == Node::Kind::mapping ? kind_of(node) : std::nullopt;
    if (kind && *kind == wanted) return true;
    const std::string found = kind                               ? fmt::format("a {}", name_of(*kind))
                              : node.kind == Node::Kind::mapping ? std::string("no model")
                                                                 : describe(node);
    problems_.add(node.place,
                  fmt::format("{} is {}, and a {} is wanted", file == "-" ? "standard input" : cairn::quoted(file),
                              found, name_of(wanted)),
                  fmt::format("a mapping that begins with `{}`", name_of(wanted)));
    return false;
  }

  /// The document that `reference` is (written in place) or names (by its path). Null after a problem, or without
  /// `reference`.
  const Node* follow(const Node* reference, DocumentKind kind) {
    if (reference == nullptr || reference->kind == Node::Kind::mapping) return reference;
    if (!reference->is_scalar()) {
      wrong(*reference, fmt::format("`{}`", name_of(kind)),
            fmt::format("the path of a {}, or a {} in place", name_of(kind), name_of(kind)), problems_);
      return nullptr;
    }
    if (reference->text.empty() || reference->text.size() > longest_path) {
      problems_.add(reference->place, reference->text.empty() ? "the path is empty" : "no path is as long as this",
                    "the path of a file, relative to this one");
      return nullptr;
    }
    const auto path = relative_to(reference->place.source->file(), reference->text);
    if (names_itself(path)) {
      problems_.add(
          reference->place,
          fmt::format("{} is being read already: it cannot be its own {}", cairn::quoted(path), name_of(kind)),
          fmt::format("the path of a {}", name_of(kind)));
      return nullptr;
    }
    model_.files.push_back(path);
    const Node* node = read_file(path, reference);
    return node != nullptr && is_kind(*node, kind, path) ? node : nullptr;
  }

  [[nodiscard]] bool names_itself(const std::string& path) const {
    return std::any_of(model_.files.begin(), model_.files.end(),
                       [&](const std::string& file) { return std::filesystem::path(file).lexically_normal() == path; });
  }

  void load(const Node& node, DocumentKind kind) {
    switch (kind) {
      case DocumentKind::procedure:
        return load_procedure(node);
      case DocumentKind::site:
        return load_site(node);
      case DocumentKind::platform:
        model_.platform = read_platform(node, problems_).platform;
        return;
    }
  }

  void load_procedure(const Node& node) {
    const auto draft = read_procedure(node, problems_);
    model_.unknowns.parameters = declare_parameters(draft, names_);
    if (const Node* site = follow(draft.site, DocumentKind::site)) load_site(*site);
    if (draft.assume) model_.unknowns.assume = resolve_assumption(*draft.assume, model_, names_, problems_);
    model_.procedure = resolve_procedure(draft, model_.site, names_, problems_);
    if (problems_.none() && model_.unknowns.any()) check_instances(model_, draft, claims_, problems_);
  }

  void load_site(const Node& node) {
    const auto draft = read_site(node, problems_);
    if (!names_.parameters) model_.unknowns.parameters = declare_parameters_of(draft, names_);
    std::optional<PlatformDraft> platform;
    if (const Node* platform_node = follow(draft.platform, DocumentKind::platform)) {
      platform = read_platform(*platform_node, problems_);
      model_.platform = platform->platform;
    }
    model_.unknowns.addresses = open_addresses(draft);
    model_.site = resolve_site(draft, platform ? &*platform : nullptr, names_, claims_, problems_);
  }

  Result<Model> finish() {
    if (!problems_.none()) return problems_.sorted(model_.files);
    return std::move(model_);
  }

  const Files& files_;
  Problems problems_;
  std::deque<Source> sources_;  // places point into them
  std::deque<Node> nodes_;      // drafts point into them
  Names names_;
  Claims claims_;
  Model model_;
};

}  // namespace

Result<Model> load_procedure(const std::string& path, const Files& files) {
  return Loader(files).procedure(path);
}

Result<Document> load_document(const std::string& path, const Files& files) {
  return Loader(files).document(path);
}

}  // namespace cairn
