#include "syntax/yaml.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <sstream>
#include <utility>

#include <fmt/format.h>
#include <yaml-cpp/depthguard.h>
#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/node/node.h>  // parser.h declares this Node; without its definition the linter takes ours for it
#include <yaml-cpp/parser.h>

#include "syntax/text_check.hpp"

namespace cairn::syntax {

namespace {

bool is_blank(char c) {
  return c == ' ' || c == '\t';
}
bool is_break(char c) {
  return c == '\n' || c == '\r';
}
bool is_space(char c) {
  return is_blank(c) || is_break(c);
}
/// What ends a plain scalar that is one word.
bool ends_word(std::string_view text, std::size_t at) {
  return at >= text.size() || is_space(text[at]) || std::string_view(",]}:").find(text[at]) != std::string_view::npos;
}

std::uint32_t narrow(std::size_t n) {
  return static_cast<std::uint32_t>(n);
}

// ---- The library's messages in our words

struct Wording {
  const char* theirs;
  const char* ours;
  const char* expected;
};

const std::array<Wording, 24> wordings = {{
    {YAML::ErrorMsg::END_OF_MAP_FLOW, "this `{` is never closed, or a comma is missing before here", "`}` or `,`"},
    {YAML::ErrorMsg::END_OF_SEQ_FLOW, "this `[` is never closed, or a comma is missing before here", "`]` or `,`"},
    {YAML::ErrorMsg::END_OF_MAP, "this does not continue the mapping that it stands in",
     "the next `key: value` at the same indentation, or the end"},
    {YAML::ErrorMsg::END_OF_SEQ, "this does not continue the list that it stands in",
     "the next `- ` at the same indentation, or the end"},
    {YAML::ErrorMsg::TAB_IN_INDENTATION, "a tab stands in the indentation", "blanks"},
    {YAML::ErrorMsg::FLOW_END, "this bracket closes nothing", ""},
    {YAML::ErrorMsg::BLOCK_ENTRY, "a list cannot begin here", "`- ` at the start of a line of its own"},
    {YAML::ErrorMsg::MAP_KEY, "a key cannot stand here", ""},
    {YAML::ErrorMsg::MAP_VALUE, "a `: ` cannot stand here",
     "one `key: value` a line, keys of one mapping at the same indentation; a text with `: ` in it stands in quotes"},
    {YAML::ErrorMsg::EOF_IN_SCALAR, "the file ends inside a quoted text", "the same quote at the end of the text"},
    {YAML::ErrorMsg::DOC_IN_SCALAR, "a line of three dashes or dots stands inside a quoted text",
     "the closing quote before it"},
    {YAML::ErrorMsg::UNKNOWN_TOKEN, "no value can begin with this character", "quotes around the text"},
    {YAML::ErrorMsg::ALIAS_NOT_FOUND, "`*` is followed by no name", "the name of an anchor"},
    {YAML::ErrorMsg::ANCHOR_NOT_FOUND, "`&` is followed by no name", "a name"},
    {YAML::ErrorMsg::CHAR_IN_ALIAS, "the name of this alias holds a character that it cannot", "the name of an anchor"},
    {YAML::ErrorMsg::CHAR_IN_ANCHOR, "the name of this anchor holds a character that it cannot", "a name"},
    {YAML::ErrorMsg::UNKNOWN_ANCHOR, "this alias stands for no anchor above it", "the name of an anchor"},
    {YAML::ErrorMsg::MULTIPLE_ANCHORS, "a value has one anchor at most", ""},
    {YAML::ErrorMsg::MULTIPLE_TAGS, "a value has one tag at most", ""},
    {YAML::ErrorMsg::ALIAS_CONTENT, "an alias has neither a tag nor an anchor", ""},
    {YAML::ErrorMsg::ZERO_INDENT_IN_BLOCK, "the indentation of a block text is at least 1", "a digit from 1 to 9"},
    {YAML::ErrorMsg::CHAR_IN_BLOCK, "this cannot follow `|` or `>` on its line", "the text on the next line"},
    {YAML::ErrorMsg::INVALID_HEX, "this escape holds a character that is no hexadecimal digit", ""},
    {YAML::ErrorMsg::YAML_MAJOR_VERSION, "this is a later YAML than 1.2", "%YAML 1.2"},
}};

/// A reason to stop in the middle of the parse.
struct Stop {
  std::size_t offset;
  std::string message;
  std::string expected;
};

// ---- Building nodes from the library's events

/// Where a value begins after its tag and anchor, and what stood before it.
struct Properties {
  std::size_t end = 0;
  std::optional<std::size_t> tag;
};

Properties skip_properties(std::string_view text, std::size_t at) {
  Properties found;
  while (at < text.size() && (text[at] == '!' || text[at] == '&')) {
    if (text[at] == '!') found.tag = at;
    while (at < text.size() && !is_space(text[at])) ++at;
    while (at < text.size() && is_space(text[at])) {
      ++at;
      if (at < text.size() && text[at] == '#') at = std::min(text.find('\n', at), text.size());
    }
  }
  found.end = at;
  return found;
}

/// Where the quoted scalar that begins at `at` is closed; nothing when it never is.
std::optional<std::size_t> closing_quote(std::string_view text, std::size_t at) {
  const char quote = text[at];
  for (std::size_t i = at + 1; i < text.size(); ++i) {
    if (quote == '"' && text[i] == '\\') {
      ++i;
    } else if (text[i] == quote) {
      const bool doubled = quote == '\'' && i + 1 < text.size() && text[i + 1] == quote;
      if (!doubled) return i;
      ++i;
    }
  }
  return std::nullopt;
}

/// The bytes of a scalar that stand on its first line.
std::size_t length_on_line(std::string_view text, std::size_t at, const std::string& value) {
  if (text.substr(at).starts_with(value) && !value.empty()) return value.size();
  std::size_t end = at;
  while (end < text.size() && !is_break(text[end])) ++end;
  const bool is_quoted = at < text.size() && (text[at] == '"' || text[at] == '\'');
  if (is_quoted) end = std::min(end, closing_quote(text, at).value_or(end) + 1);
  return std::max<std::size_t>(1, end - at);
}

class Builder final : public YAML::EventHandler {
 public:
  explicit Builder(const Source& source) : source_(source), text_(source.text()) {}

  /// The document, once it is complete.
  [[nodiscard]] std::optional<Node>& document() { return document_; }
  /// Where the innermost collection that is still open begins.
  [[nodiscard]] std::optional<std::size_t> innermost_open() const {
    if (open_.empty()) return std::nullopt;
    return open_.back().node.place.offset;
  }

  void OnDocumentStart(const YAML::Mark& mark) override {
    if (!document_) return;
    const auto at = offset_of(mark);
    if (text_.substr(at).starts_with("---")) throw Stop{at, "a second document begins here", "one document a file"};
    throw Stop{at, "the document has ended, and this follows it",
               "the end of the file, or the indentation of what this belongs to"};
  }
  void OnDocumentEnd() override {}

  void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override {
    Node node;
    const auto at = begin(mark, node);
    // The library does not tell `null` from nothing. Where nothing stands, the mark is that of the next token, which
    // may be the anchor of another value.
    const bool foreign = anchor == YAML::NullAnchor && at != offset_of(mark);
    for (const std::string_view word : {"null", "Null", "NULL", "~"}) {
      if (!foreign && text_.substr(at).starts_with(word) && ends_word(text_, at + word.size()) && inside_block(at)) {
        node.kind = Node::Kind::plain;
        node.text = word;
        node.place.length = narrow(word.size());
      }
    }
    finish(std::move(node), anchor);
  }

  void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                const std::string& value) override {
    note_column(mark);
    Node node;
    const auto at = begin(mark, node);
    node.kind = tag == "!" ? Node::Kind::quoted : Node::Kind::plain;
    const bool has_quotes = at < text_.size() && (text_[at] == '"' || text_[at] == '\'');
    if (has_quotes) check_quotes(at);
    node.text = value;
    node.place.length = narrow(length_on_line(text_, at, value));
    finish(std::move(node), anchor);
  }

  void OnAlias(const YAML::Mark& mark, YAML::anchor_t anchor) override {
    note_column(mark);
    const auto found = anchored_.find(anchor);
    if (found == anchored_.end()) {
      throw Stop{offset_of(mark), "this alias stands inside the value that it stands for",
                 "the name of a value that is complete"};
    }
    const auto& [node, size] = found->second;
    spend(offset_of(mark), size);
    place_in_parent(node, true);
  }

  void OnSequenceStart(const YAML::Mark& mark, const std::string&, YAML::anchor_t anchor,
                       YAML::EmitterStyle::value style) override {
    open(mark, Node::Kind::sequence, anchor, style);
  }
  void OnSequenceEnd() override { close(); }
  void OnMapStart(const YAML::Mark& mark, const std::string&, YAML::anchor_t anchor,
                  YAML::EmitterStyle::value style) override {
    open(mark, Node::Kind::mapping, anchor, style);
  }
  void OnMapEnd() override { close(); }

 private:
  /// A collection that is not yet complete.
  struct Open {
    Node node;
    std::optional<Node> key;  ///< of a mapping: waits for its value
    bool key_is_alias;
    YAML::anchor_t anchor;
    std::size_t values_before;
    bool flow;
    int column;
    bool column_from_child;
  };

  static std::size_t offset_of(const YAML::Mark& mark) { return static_cast<std::size_t>(std::max(0, mark.pos)); }

  /// Sets the place of a new node, refuses a tag, and returns where its content begins.
  std::size_t begin(const YAML::Mark& mark, Node& node) {
    const auto properties = skip_properties(text_, offset_of(mark));
    if (properties.tag) throw Stop{*properties.tag, "models have no tags", "the value alone"};
    node.place = {&source_, narrow(std::min(properties.end, text_.size())), 1};
    return node.place.offset;
  }

  /// The column that a block collection is indented by is that of its first child (its own mark may be an anchor).
  void note_column(const YAML::Mark& mark) {
    if (open_.empty() || open_.back().flow || open_.back().column_from_child) return;
    if (open_.back().node.kind == Node::Kind::mapping) open_.back().column = mark.column;
    open_.back().column_from_child = true;
  }

  /// Whether a value at `at` can belong to the innermost collection (YAML 1.2.2, 6.1: it is indented more).
  [[nodiscard]] bool inside_block(std::size_t at) const {
    if (open_.empty() || open_.back().flow) return true;
    const auto& in = open_.back();
    const auto feed = at == 0 ? std::string_view::npos : text_.rfind('\n', at - 1);
    const auto column = static_cast<int>(feed == std::string_view::npos ? at : at - feed - 1);
    const bool is_key = in.node.kind == Node::Kind::mapping && !in.key;
    return is_key ? column >= in.column : column > in.column;
  }

  /// The `-` of a block sequence after which nothing stands.
  [[nodiscard]] std::uint32_t dash_before(std::size_t at) const {
    const auto dash = at == 0 ? std::string_view::npos : text_.rfind('-', at - 1);
    return narrow(dash == std::string_view::npos ? at : dash);
  }

  void spend(std::size_t at, std::size_t values) {
    values_ += values;
    if (values_ > most_values) {
      throw Stop{
          at,
          fmt::format("the document holds more than {} values, aliases replaced by what they stand for", most_values),
          "a model of a size that a person could read"};
    }
  }

  void open(const YAML::Mark& mark, Node::Kind kind, YAML::anchor_t anchor, YAML::EmitterStyle::value style) {
    note_column(mark);
    if (open_.size() >= static_cast<std::size_t>(deepest_nesting)) {
      throw Stop{offset_of(mark), fmt::format("lists and mappings are nested more than {} deep", deepest_nesting), ""};
    }
    Node node;
    node.kind = kind;
    const auto before = values_;
    begin(mark, node);
    spend(offset_of(mark), 1);
    open_.push_back(
        {std::move(node), {}, false, anchor, before, style == YAML::EmitterStyle::Flow, mark.column, false});
  }

  void close() {
    Open done = std::move(open_.back());
    open_.pop_back();
    const auto size = values_ - done.values_before;
    keep_anchored(done.node, done.anchor, size);
    place_in_parent(std::move(done.node));
  }

  void finish(Node node, YAML::anchor_t anchor) {
    spend(node.place.offset, 1);
    keep_anchored(node, anchor, 1);
    place_in_parent(std::move(node));
  }

  /// What the library lets pass: a quote that only the end of the file closes, and a comment that begins right after
  /// one.
  void check_quotes(std::size_t at) const {
    const auto end = closing_quote(text_, at);
    if (!end) throw Stop{at, "this quote is never closed", "the same quote at the end of the text"};
    if (text_.substr(*end + 1).starts_with('#'))
      throw Stop{*end + 1, "a comment begins after a blank only", "a blank before it"};
  }

  /// The library also lets a key pass that has no colon: an implicit key of a block mapping, with nothing as its value.
  void check_colon(const Node& key) const {
    const std::size_t start = key.place.offset;
    const auto before = start == 0 ? std::string_view::npos : text_.find_last_not_of(" \t\n\r", start - 1);
    const bool is_explicit = before != std::string_view::npos && text_[before] == '?';
    if (is_explicit || !key.is_scalar()) return;
    const auto behind = text_.find_first_not_of(" \t", start + key.place.length);
    const bool colon = behind != std::string_view::npos && text_[behind] == ':';
    if (!colon) throw Stop{start, "this stands where a key is wanted, and no `:` follows it", "`key: value`"};
  }

  /// A copy waits for the aliases. It is counted: anchors inside anchors are kept once for each.
  void keep_anchored(const Node& node, YAML::anchor_t anchor, std::size_t size) {
    if (anchor == YAML::NullAnchor) return;
    spend(node.place.offset, size);
    anchored_.insert_or_assign(anchor, std::pair(node, size));
  }

  void place_in_parent(Node node, bool is_alias = false) {
    if (open_.empty()) {
      document_ = std::move(node);
      return;
    }
    auto& parent = open_.back();
    if (parent.node.kind == Node::Kind::sequence) {
      if (node.kind == Node::Kind::empty && !parent.flow && !is_alias)
        node.place.offset = dash_before(node.place.offset);
      parent.node.items.push_back(std::move(node));
    } else if (!parent.key) {
      parent.key = std::move(node);
      parent.key_is_alias = is_alias;
    } else {
      const bool nothing = node.kind == Node::Kind::empty && !parent.key_is_alias;
      if (nothing && !parent.flow) check_colon(*parent.key);
      // The library marks what comes next, which may be lines away.
      if (nothing) node.place = parent.key->place;
      parent.node.entries.push_back({std::move(*parent.key), std::move(node)});
      parent.key.reset();
    }
  }

  const Source& source_;
  std::string_view text_;
  std::optional<Node> document_;
  std::vector<Open> open_;
  std::map<YAML::anchor_t, std::pair<Node, std::size_t>> anchored_;
  std::size_t values_ = 0;
};

/// The first tab among the blanks that the line of `at` begins with.
std::optional<std::uint32_t> tab_before(std::string_view text, std::size_t at) {
  at = std::min(at, text.size());
  const auto feed = at == 0 ? std::string_view::npos : text.rfind('\n', at - 1);
  const auto start = feed == std::string_view::npos ? 0 : feed + 1;
  const auto content = text.find_first_not_of(" \t", start);
  const auto tab = text.find('\t', start);
  if (tab == std::string_view::npos || content == std::string_view::npos || tab > content) return std::nullopt;
  return narrow(tab);
}

void report(const YAML::Exception& error, const Source& source, const Builder& builder, Problems& problems) {
  auto at = narrow(static_cast<std::size_t>(std::max(0, error.mark.pos)));
  if (dynamic_cast<const YAML::DeepRecursion*>(&error) != nullptr) {
    problems.add({&source, at, 1}, fmt::format("lists and mappings are nested more than {} deep", deepest_nesting));
    return;
  }
  if (const auto tab = tab_before(source.text(), at)) {
    problems.add({&source, *tab, 1}, "a tab stands in the indentation", "blanks");
    return;
  }
  if (error.msg.starts_with(YAML::ErrorMsg::INVALID_ESCAPE)) {
    problems.add({&source, at, 1}, "there is no such escape",
                 R"(\", \\, \n, \t, \xHH, \uHHHH, or another escape of YAML 1.2)");
    return;
  }
  const auto known =
      std::find_if(wordings.begin(), wordings.end(), [&](const Wording& w) { return error.msg == w.theirs; });
  if (known == wordings.end()) {
    problems.add({&source, at, 1}, fmt::format("this is no YAML: {}", error.msg), "YAML 1.2");
    return;
  }
  const bool unclosed = known->theirs == wordings[0].theirs || known->theirs == wordings[1].theirs;
  if (unclosed) at = narrow(builder.innermost_open().value_or(at));
  problems.add({&source, at, 1}, known->ours, known->expected);
}

}  // namespace

std::optional<Node> parse_yaml(const Source& source, Problems& problems) {
  if (!is_text(source, problems)) return std::nullopt;
  Builder builder(source);
  try {
    std::istringstream stream{std::string(source.text())};
    YAML::Parser parser(stream);
    while (parser.HandleNextDocument(builder)) {
    }
  } catch (const Stop& stop) {
    problems.add({&source, narrow(stop.offset), 1}, stop.message, stop.expected);
    return std::nullopt;
  } catch (const YAML::Exception& error) {
    report(error, source, builder, problems);
    return std::nullopt;
  }
  auto& document = builder.document();
  if (!document || document->kind == Node::Kind::empty) {
    problems.add(source.file(), "the file holds no document", "a mapping");
    return std::nullopt;
  }
  return std::move(document);
}

}  // namespace cairn::syntax
