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
#include <yaml-cpp/parser.h>

#include "base/text.hpp"

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

// ---- Before parsing: is this text at all?

/// Adds a problem and returns true when `source` holds bytes that no YAML text has (YAML 1.2.2, sections 5.1 and 5.2).
bool is_no_text(const Source& source, Problems& problems) {
  const auto text = source.text();
  if (const auto bad = first_invalid_utf8(text)) {
    const bool wide = text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF");
    problems.add({&source, narrow(*bad), 1},
                 wide ? "this looks like UTF-16"
                      : fmt::format("the byte {:#04x} is no UTF-8", static_cast<unsigned char>(text[*bad])),
                 "a text file in UTF-8");
    return true;
  }
  std::size_t found = 0;
  for (std::size_t at = 0; at < text.size();) {
    const auto character = code_point_at(text, at);
    const bool next_is_feed = at + 1 < text.size() && text[at + 1] == '\n';
    const bool lone_return = character.value == '\r' && !next_is_feed;
    const bool no_character = character.value == 0xFFFE || character.value == 0xFFFF;
    const bool allowed =
        character.value == '\t' || character.value == '\n' || character.value == '\r' || character.value == 0x85;
    if (lone_return || no_character || (is_control(character.value) && !allowed)) {
      if (++found == 1) {
        problems.add({&source, narrow(at), narrow(character.length)},
                     lone_return
                         ? "a carriage return without a line feed"
                         : fmt::format("the control character U+{:04X} has no place in a model", character.value),
                     lone_return ? "lines that end with LF or CRLF" : "a text file in UTF-8");
      }
    }
    at += character.length;
  }
  return found > 0;
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
    {YAML::ErrorMsg::EOF_IN_SCALAR, "the file ends inside a quoted text", "the closing quote"},
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

/// The bytes of a quoted or plain scalar that stand on its first line.
std::size_t length_on_line(std::string_view text, std::size_t at, const std::string& value) {
  if (text.substr(at).starts_with(value) && !value.empty()) return value.size();
  const char quote = at < text.size() ? text[at] : '\0';
  std::size_t end = at + 1;
  if (quote == '"' || quote == '\'') {
    while (end < text.size() && text[end] != quote && !is_break(text[end]))
      end += quote == '"' && text[end] == '\\' ? 2 : 1;
    return std::min(end + 1, text.size()) - at;
  }
  while (end < text.size() && !is_break(text[end])) ++end;
  return end - at;
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
    throw Stop{at, "the document has ended, and this follows it", "the end of the file"};
  }
  void OnDocumentEnd() override {}

  void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override {
    Node node;
    const auto at = begin(mark, node);
    // The library does not tell `null` from nothing. Where nothing stands, the mark is that of the next token.
    for (const std::string_view word : {"null", "Null", "NULL", "~"}) {
      if (text_.substr(at).starts_with(word) && ends_word(text_, at + word.size()) && inside_block(mark)) {
        node.kind = Node::Kind::plain;
        node.text = word;
        node.place.length = narrow(word.size());
      }
    }
    finish(std::move(node), anchor, 1);
  }

  void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                const std::string& value) override {
    note_column(mark);
    Node node;
    const auto at = begin(mark, node);
    node.kind = tag == "!" ? Node::Kind::quoted : Node::Kind::plain;
    node.text = value;
    node.place.length = narrow(length_on_line(text_, at, value));
    finish(std::move(node), anchor, 1);
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
    finish(node, YAML::NullAnchor, 0);
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

  /// Whether a value at `mark` can belong to the innermost collection (YAML 1.2.2, 6.1: it is indented more).
  [[nodiscard]] bool inside_block(const YAML::Mark& mark) const {
    if (open_.empty() || open_.back().flow) return true;
    const auto& in = open_.back();
    const bool is_key = in.node.kind == Node::Kind::mapping && !in.key;
    return is_key ? mark.column >= in.column : mark.column > in.column;
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
    open_.push_back({std::move(node), {}, anchor, before, style == YAML::EmitterStyle::Flow, mark.column, false});
  }

  void close() {
    Open done = std::move(open_.back());
    open_.pop_back();
    const auto size = values_ - done.values_before;
    keep_anchored(done.node, done.anchor, size);
    place_in_parent(std::move(done.node));
  }

  void finish(Node node, YAML::anchor_t anchor, std::size_t values) {
    spend(node.place.offset, values);
    keep_anchored(node, anchor, 1);
    place_in_parent(std::move(node));
  }

  /// A copy waits for the aliases. It is counted: anchors inside anchors are kept once for each.
  void keep_anchored(const Node& node, YAML::anchor_t anchor, std::size_t size) {
    if (anchor == YAML::NullAnchor) return;
    spend(node.place.offset, size);
    anchored_.insert_or_assign(anchor, std::pair(node, size));
  }

  void place_in_parent(Node node) {
    if (open_.empty()) {
      document_ = std::move(node);
      return;
    }
    auto& parent = open_.back();
    if (parent.node.kind == Node::Kind::sequence) {
      parent.node.items.push_back(std::move(node));
    } else if (!parent.key) {
      parent.key = std::move(node);
    } else {
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

void report(const YAML::Exception& error, const Source& source, const Builder& builder, Problems& problems) {
  auto at = narrow(static_cast<std::size_t>(std::max(0, error.mark.pos)));
  if (dynamic_cast<const YAML::DeepRecursion*>(&error) != nullptr) {
    problems.add({&source, at, 1}, fmt::format("lists and mappings are nested more than {} deep", deepest_nesting));
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
  if (is_no_text(source, problems)) return std::nullopt;
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

// ---- Places inside scalars

namespace {

/// The offset of every byte of `value` in `text` from `at` on, where folding may have changed blanks and breaks only.
std::vector<std::uint32_t> align(std::string_view text, std::size_t at, std::string_view value) {
  std::vector<std::uint32_t> offsets;
  offsets.reserve(value.size() + 1);
  for (const char c : value) {
    if (is_space(c)) {
      offsets.push_back(narrow(at));
      if (at < text.size() && is_space(text[at])) ++at;
      continue;
    }
    while (at < text.size() && is_space(text[at])) ++at;
    if (at >= text.size() || text[at] != c) return {};
    offsets.push_back(narrow(at));
    ++at;
  }
  offsets.push_back(narrow(at));
  return offsets;
}

}  // namespace

Positions::Positions(const Node& scalar) : whole_(scalar.place) {
  const auto text = scalar.place.source->text();
  std::size_t start = scalar.place.offset;
  if (scalar.kind == Node::Kind::quoted && start < text.size()) {
    const bool block = text[start] == '|' || text[start] == '>';
    start = block ? std::min(text.find('\n', start), text.size()) : start + 1;
  }
  if (text.substr(std::min(start, text.size())).starts_with(scalar.text)) {
    in_one_piece_ = true;
    shift_ = narrow(start);
  } else {
    offsets_ = align(text, start, scalar.text);
  }
}

Place Positions::at(std::size_t offset, std::size_t length) const {
  if (in_one_piece_) return {whole_.source, narrow(shift_ + offset), narrow(std::max<std::size_t>(1, length))};
  if (offset >= offsets_.size()) return whole_;
  const auto first = offsets_[offset];
  const auto last = offsets_[std::min(offset + std::max<std::size_t>(1, length), offsets_.size()) - 1];
  return {whole_.source, first, std::max(last, first) - first + 1};
}

}  // namespace cairn::syntax
