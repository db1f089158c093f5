#include "explore/split/search.hpp"

#include <algorithm>
#include <new>
#include <utility>

#include "explore/layout.hpp"
#include "explore/sentry.hpp"
#include "explore/split/endless.hpp"
#include "explore/split/splitter.hpp"
#include "explore/store.hpp"
#include "explore/tail.hpp"
#include "semantics/events.hpp"
#include "semantics/state.hpp"

namespace cairn::explore {

namespace {

using unknowns::CaseId;
using unknowns::Cases;

/// A state, and what has been decided where it was reached.
struct Node {
  StateIndex state;
  CaseId under;
};

/// Nodes in the order of their discovery; one that another of the same state covers is not taken in.
class Nodes {
 public:
  explicit Nodes(Cases& cases) : cases_(cases) {}

  struct Inserted {
    StateIndex index;  ///< of the node, or of the one that covers it
    bool fresh;
  };
  Inserted insert(StateIndex state, CaseId under) {
    if (state == of_state_.size()) of_state_.emplace_back();
    std::vector<StateIndex>& known = of_state_[state];
    const auto covering =
        std::ranges::find_if(known, [&](StateIndex i) { return cases_.is_within(under, nodes_[i].under); });
    if (covering != known.end()) return {*covering, false};
    const auto index = static_cast<StateIndex>(nodes_.size());
    nodes_.push_back({state, under});
    known.push_back(index);
    return {index, true};
  }

  [[nodiscard]] StateIndex size() const { return static_cast<StateIndex>(nodes_.size()); }
  [[nodiscard]] const Node& operator[](StateIndex i) const { return nodes_[i]; }
  [[nodiscard]] std::uint64_t bytes() const {
    return nodes_.capacity() * (sizeof(Node) + sizeof(StateIndex)) +
           of_state_.capacity() * sizeof(std::vector<StateIndex>);
  }

 private:
  Cases& cases_;
  std::vector<Node> nodes_;
  std::vector<std::vector<StateIndex>> of_state_;  ///< the nodes of each
};

class SplitSearch {
 public:
  SplitSearch(const Model& model, const unknowns::Space& space, const FaultBudget& budget,
              const std::vector<AskedProperty>& asked, const Guard& guard)
      : guard_(guard),
        budget_(budget),
        cases_(space),
        splitter_(cases_),
        world_(model, &splitter_),
        layout_(world_, budget),
        packed_(layout_.words()),
        store_(layout_.words()),
        nodes_(cases_),
        sentry_(world_),
        seen_(world_) {
    for (const AskedProperty& a : asked) {
      questions_.push_back({{a, {}}, {}, {}, speaks_of_goal(a.property)});
      if (!speaks_of_goal(a.property)) sentry_.watch(a.property);
    }
  }

  SplitExploration run() {
    try {
      begin();
      while (next_ < nodes_.size() && !finished() && !stopped_) expand_layer();
      if (!stopped_) close_set();
    } catch (const Stopped& stop) {
      stopped_ = stop.reason;
    } catch (const std::bad_alloc&) {
      stopped_ = Reason::memory;
    }
    return result();
  }

 private:
  struct Question {
    SplitAnswer answer;
    std::optional<std::size_t> pending;  ///< tolerates-loss: the length of one that was met; a later may be shorter
    Instance pending_instance;
    bool at_rest;  ///< asked of states at rest, not of events
    [[nodiscard]] bool open() const { return !answer.refutation; }
  };

  // Depth zero (4.6). Who has been up longest at the start may have to be decided.
  void begin() {
    splitter_.in_every_case(Cases::undecided, [&] {
      state_ = next_state_ = semantics::initial_state(world_, budget_);
      sentry_.reset();
      semantics::settle(world_, next_state_, scratch_, sentry_);
      refute_broken(0);
      insert();
    });
    ignore_refuted();
  }

  // Not before all cases of an event are gone through: in each of them the same is asked.
  void ignore_refuted() {
    for (const Question& q : questions_) {
      if (!q.open()) sentry_.ignore(q.answer.asked.property);
    }
  }

  Nodes::Inserted insert() {
    layout_.pack(next_state_, packed_.data());
    return nodes_.insert(store_.insert(packed_.data()).index, splitter_.here());
  }

  [[nodiscard]] bool finished() const {
    return !questions_.empty() && std::ranges::none_of(questions_, &Question::open);
  }

  void expand_layer() {
    layer_end_ = nodes_.size();
    for (; next_ < layer_end_; ++next_) {
      if (next_ % 64 == 0 && must_stop()) return;
      expand(next_);
      if (stopped_ || finished()) return;
    }
    for (Question& q : questions_) {
      if (q.open() && q.pending && *q.pending <= depth_) refute(q, *q.pending, q.pending_instance);
    }
    ++depth_;
  }

  bool must_stop() {
    stopped_ = guard_.met(store_.bytes_with(1) + nodes_.bytes() + starts_.bytes() + cases_.bytes());
    guard_.report({nodes_.size(), nodes_.size() - next_, depth_, 0});
    return stopped_.has_value();
  }

  // Which awaits are ready may have to be decided before the events are known.
  void expand(StateIndex index) {
    const Node node = nodes_[index];
    layout_.unpack(store_[node.state], state_);
    semantics::derive(world_, state_, derived_);
    starts_.begin_node();
    splitter_.in_every_case(node.under, [&] {
      semantics::events_in(world_, state_, derived_, events_);
      seen_.open(world_, state_, events_);
      const CaseId under = splitter_.here();
      for (const Event& event : events_) {
        splitter_.in_every_case(under, [&] { take(event); });
        ignore_refuted();
      }
      if (semantics::at_rest(state_, events_)) look_at_rest(under);
    });
  }

  void take(const Event& event) {
    next_state_ = state_;
    sentry_.reset();
    const Refusal refusal = semantics::take(world_, next_state_, derived_, event);
    semantics::settle(world_, next_state_, scratch_, sentry_);
    sentry_.note(state_, event, refusal);
    refute_broken(depth_ + 1);
    seen_.taken(event, next_state_);
    const auto [next, fresh] = insert();
    if (event.kind == Event::Kind::started) starts_.add(next, splitter_.here(), !fresh && next < layer_end_);
  }

  void refute_broken(std::size_t length) {
    for (Question& q : questions_) {
      if (q.at_rest || !q.open() || !sentry_.broken(q.answer.asked.property)) continue;
      refute(q, length, cases_.instance(splitter_.here()));
    }
  }

  void look_at_rest(CaseId under) {
    if (semantics::complete(state_)) completed_ = true;
    for (Question& q : questions_) {
      if (!q.at_rest) continue;
      splitter_.in_every_case(under, [&] {
        if (q.open()) look_for_tail(q);
      });
    }
  }

  void look_for_tail(Question& q) {
    const auto tail = fatal_tail(world_, state_, derived_, q.answer.asked, sentry_.ties(), any_limit());
    if (!tail) return;
    const std::size_t length = depth_ + tail->size();
    if (q.answer.asked.property != Property::tolerates_loss) {
      refute(q, length, cases_.instance(splitter_.here()));
    } else if (!q.pending || length < *q.pending) {
      q.pending = length;
      q.pending_instance = cases_.instance(splitter_.here());
    }
  }

  void refute(Question& q, std::size_t length, const Instance& instance) {
    q.answer.refutation = SplitRefutation{length, instance};
  }

  void close_set() {
    for (Question& q : questions_) {
      if (q.open() && q.pending) refute(q, *q.pending, q.pending_instance);
    }
    if (finished()) return;
    if (const auto endless = starts_.find_endless(cases_, any_limit())) endless_ = cases_.instance(*endless);
    every_state_visited_ = true;
    seen_.visited_every_state();
  }

  [[nodiscard]] AskLimits any_limit() const {
    return [this] { return guard_.met(0); };
  }

  SplitExploration result() {
    if (sentry_.ties().rank_decided()) seen_.rank_decided();
    SplitExploration all(std::move(seen_));
    for (Question& q : questions_) all.answers.push_back(std::move(q.answer));
    all.stopped = stopped_;
    all.explored = nodes_.size();
    all.a_kept_device_led = sentry_.a_kept_device_led();
    all.a_run_completed = completed_;
    all.ties = sentry_.ties().ties();
    all.endless = std::move(endless_);
    all.every_state_visited = every_state_visited_;
    return all;
  }

  const Guard& guard_;
  const FaultBudget& budget_;
  Cases cases_;
  Splitter splitter_;
  semantics::World world_;
  Layout layout_;
  std::vector<std::uint64_t> packed_;
  Store store_;
  Nodes nodes_;
  Sentry sentry_;
  Sightings seen_;
  std::vector<Question> questions_;
  State state_;
  semantics::Derived derived_;
  std::vector<Event> events_;
  State next_state_;
  semantics::Scratch scratch_;
  SplitStarts starts_;
  std::size_t depth_ = 0;     ///< of the layer that is being expanded
  StateIndex next_ = 0;       ///< the node to expand next
  StateIndex layer_end_ = 0;  ///< of that layer
  bool completed_ = false;
  std::optional<Instance> endless_;
  bool every_state_visited_ = false;
  std::optional<Reason> stopped_;
};

}  // namespace

SplitExploration explore_instances(const Model& model, const unknowns::Space& space, const FaultBudget& budget,
                                   const std::vector<AskedProperty>& asked, const Guard& guard) {
  return SplitSearch(model, space, budget, asked, guard).run();
}

}  // namespace cairn::explore
