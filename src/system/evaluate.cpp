#include "system/evaluate.hpp"

#include <algorithm>

#include "base/contradiction.hpp"

namespace cairn::system {

/// Writes the program down, parts before the nodes that use them and each node as late as its first user allows, so
/// that few registers are in use at a time. A register is free again after the last use of its content.
class Program::Compiler {
 public:
  Compiler(const Terms& terms, Program& program) : terms_(terms), program_(program) {}

  void compile(std::span<const Term> inputs, std::span<const Term> outputs) {
    count_uses(outputs);
    for (const Term input : inputs) {
      const auto at = static_cast<std::uint32_t>(program_.registers_++);
      if (input.node() < register_.size()) register_[input.node()] = at;
    }
    for (const Term output : outputs) write_down(output.node());
    for (const Term output : outputs) program_.outputs_.push_back(operand(output));
  }

 private:
  void count_uses(std::span<const Term> outputs) {
    const auto cone = cone_of(terms_, outputs);
    const std::size_t nodes = cone.empty() ? 1 : cone.back() + 1;
    uses_.assign(nodes, 0);
    register_.assign(nodes, nowhere);
    register_[never.node()] = 0;
    for (const Term output : outputs) ++uses_[output.node()];
    for (const std::uint32_t node : cone) {
      for (const Term part : terms_.parts(node)) ++uses_[part.node()];
    }
  }

  [[nodiscard]] bool ready(std::uint32_t node) const { return register_[node] != nowhere; }

  void write_down(std::uint32_t root) {
    waiting_.assign(1, root);
    while (!waiting_.empty()) {
      const std::uint32_t node = waiting_.back();
      const std::size_t before = waiting_.size();
      if (!ready(node)) {
        for (const Term part : terms_.parts(node)) {
          if (!ready(part.node())) waiting_.push_back(part.node());
        }
      }
      if (waiting_.size() > before) continue;
      waiting_.pop_back();
      if (!ready(node)) write_one(node);
    }
  }

  void write_one(std::uint32_t node) {
    const auto parts = terms_.parts(node);
    switch (terms_.op(node)) {
      case Op::constant:
        break;
      case Op::variable:
        throw Contradiction("a term is built from a variable that is no input");
      case Op::all:
        register_[node] = emit(operand(parts[0]), operand(parts[1]), none, {parts[0], parts[1]});
        for (const Term part : parts.subspan(2)) {
          const std::uint32_t so_far = register_[node];
          program_.code_.push_back({so_far, 2 * so_far, operand(part), none});
          release(part);
        }
        break;
      case Op::choose:
        register_[node] = emit(operand(parts[0]), operand(parts[1]), operand(parts[2]), parts);
        break;
      case Op::differ:
        register_[node] = emit(operand(parts[0]), operand(!parts[1]), operand(parts[1]), parts);
        break;
    }
  }

  /// One instruction, after which `used` are used once less. Its operands are read before its result is written.
  std::uint32_t emit(Operand condition, Operand then, Operand otherwise, std::span<const Term> used) {
    for (const Term part : used) release(part);
    const std::uint32_t to = take();
    program_.code_.push_back({to, condition, then, otherwise});
    return to;
  }
  std::uint32_t emit(Operand condition, Operand then, Operand otherwise, std::initializer_list<Term> used) {
    return emit(condition, then, otherwise, std::span(used.begin(), used.size()));
  }

  [[nodiscard]] Operand operand(Term term) const {
    return 2 * register_[term.node()] + static_cast<Operand>(term.negated());
  }

  void release(Term term) {
    if (--uses_[term.node()] == 0) free_.push_back(register_[term.node()]);
  }

  std::uint32_t take() {
    if (free_.empty()) return static_cast<std::uint32_t>(program_.registers_++);
    const std::uint32_t last = free_.back();
    free_.pop_back();
    return last;
  }

  static constexpr std::uint32_t nowhere = ~std::uint32_t{0};
  static constexpr Operand none = 0;

  const Terms& terms_;
  Program& program_;
  std::vector<std::uint32_t> uses_, register_;  ///< per node
  std::vector<std::uint32_t> free_, waiting_;
};

namespace {

Lanes chosen(Lanes condition, Lanes then, Lanes otherwise) {
  return otherwise ^ (condition & (then ^ otherwise));
}

Lanes flipped(Lanes word, Lanes mask) {
  return word ^ mask;
}

Block chosen(const Block& condition, const Block& then, const Block& otherwise) {
  Block block;
  for (std::size_t i = 0; i < block.words.size(); ++i) {
    block.words[i] = chosen(condition.words[i], then.words[i], otherwise.words[i]);
  }
  return block;
}

Block flipped(const Block& block, Lanes mask) {
  Block other;
  for (std::size_t i = 0; i < block.words.size(); ++i) other.words[i] = block.words[i] ^ mask;
  return other;
}

// A branch counts where the condition may choose it.
Rails chosen(const Rails& condition, const Rails& then, const Rails& otherwise) {
  Rails rails;
  for (std::size_t i = 0; i < rails.may_hold.words.size(); ++i) {
    const Lanes yes = condition.may_hold.words[i];
    const Lanes no = condition.may_fail.words[i];
    rails.may_hold.words[i] = (yes & then.may_hold.words[i]) | (no & otherwise.may_hold.words[i]);
    rails.may_fail.words[i] = (yes & then.may_fail.words[i]) | (no & otherwise.may_fail.words[i]);
  }
  return rails;
}

// Where the mask is set, the rails change places.
Rails flipped(const Rails& rails, Lanes mask) {
  Rails other;
  for (std::size_t i = 0; i < rails.may_hold.words.size(); ++i) {
    const Lanes swapped = (rails.may_hold.words[i] ^ rails.may_fail.words[i]) & mask;
    other.may_hold.words[i] = rails.may_hold.words[i] ^ swapped;
    other.may_fail.words[i] = rails.may_fail.words[i] ^ swapped;
  }
  return other;
}

}  // namespace

Program::Program(const Terms& terms, std::span<const Term> inputs, std::span<const Term> outputs)
    : inputs_(inputs.size()) {
  Compiler(terms, *this).compile(inputs, outputs);
}

template <typename Word>
void Program::run_on(std::span<const Word> inputs, std::span<Word> outputs, std::vector<Word>& scratch) const {
  if (scratch.size() < registers_) scratch.resize(registers_);
  Word* const registers = scratch.data();
  const auto read = [registers](Operand operand) {
    return flipped(registers[operand / 2], Lanes{0} - Lanes{operand % 2});
  };
  registers[0] = Word{};
  std::copy_n(inputs.begin(), inputs_, registers + 1);
  for (const Instruction& step : code_) {
    registers[step.to] = chosen(read(step.condition), read(step.then), read(step.otherwise));
  }
  for (std::size_t i = 0; i < outputs_.size(); ++i) outputs[i] = read(outputs_[i]);
}

void Program::run(std::span<const Lanes> inputs, std::span<Lanes> outputs, std::vector<Lanes>& scratch) const {
  run_on(inputs, outputs, scratch);
}

void Program::run(std::span<const Block> inputs, std::span<Block> outputs, std::vector<Block>& scratch) const {
  run_on(inputs, outputs, scratch);
}

void Program::run(std::span<const Rails> inputs, std::span<Rails> outputs, std::vector<Rails>& scratch) const {
  run_on(inputs, outputs, scratch);
}

}  // namespace cairn::system
