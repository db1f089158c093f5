#include "explore/explore.hpp"

#include <algorithm>
#include <new>
#include <span>

#include "explore/choose.hpp"
#include "explore/cycles.hpp"
#include "explore/endless.hpp"
#include "explore/reduce/orders.hpp"
#include "explore/tail.hpp"
#include "explore/vanguard.hpp"

namespace cairn::explore {

namespace {

/// One breadth-first search. A layer is expanded whole before the next, so that the depth at which something is first
/// seen is the least.
class Search {
 public:
  Search(const semantics::World& world, const FaultBudget& budget, const std::vector<AskedProperty>& asked,
         const Guard& guard, const Manner& manner)
      : world_(world),
        guard_(guard),
        observer_(manner.observer),
        most_states_(manner.most_states),
        jobs_(manner.jobs),
        stretch_(manner.stretch),
        reduced_(manner.reductions != Reductions::none()),
        layout_(world, budget),
        alike_(manner.reductions.alike ? Alike::find(world, asked) : nullptr),
        expander_(world, budget, layout_, manner.reductions, alike_),
        store_(layout_.words()),
        sentry_(world),
        seen_(world) {
    if (manner.reductions.orders) {
      orders_.emplace(world, budget, asked, [this] { return guard_.met(bytes_in_use()); });
    }
    for (const AskedProperty& a : asked) {
      questions_.push_back({{a, {}}, {}, speaks_of_goal(a.property)});
      if (!speaks_of_goal(a.property)) sentry_.watch(a.property);
    }
  }

  Exploration run() {
    try {
      begin();
      while (next_ < store_.size() && !finished() && !ended_early()) expand_layer();
      if (!ended_early()) close_set();
    } catch (const Stopped& stop) {
      stopped_ = stop.reason;
    } catch (const std::bad_alloc&) {
      stopped_ = Reason::memory;
    }
    vanguard_.reset();  // it may be out still, reading what goes now
    return result();
  }

 private:
  /// A property, and what is known of it.
  struct Question {
    Answer answer;
    /// tolerates-loss: the length of a refutation that was met, when a state met later may show a shorter one.
    std::optional<std::size_t> pending;
    bool at_rest;  ///< asked of states at rest, not of events
    [[nodiscard]] bool open() const { return !answer.refutation.has_value(); }
  };

  // Depth zero: the initial state, before and after it settles (4.6).
  void begin() {
    expander_.settle_initial(sentry_);
    for (Question& q : questions_) {
      if (q.at_rest || !sentry_.broken(q.answer.asked.property)) continue;
      q.answer.refutation = Trace();
      sentry_.ignore(q.answer.asked.property);
    }
    store_.insert(expander_.packed_next());
    layers_ = {0, 1};
  }

  [[nodiscard]] bool ended_early() const { return stopped_ || cut_short_; }

  [[nodiscard]] std::size_t count_open() const {
    return static_cast<std::size_t>(std::ranges::count_if(questions_, &Question::open));
  }

  [[nodiscard]] bool finished() const { return observer_ == nullptr && !questions_.empty() && count_open() == 0; }

  // Expands layers_[depth_] up to layers_[depth_ + 1], which stands at the end of layers_.
  void expand_layer() {
    const StateIndex end = layers_.back();
    while (next_ < end) {
      if (is_worth_a_crew(end - next_)) {
        expand_side_by_side(end);
      } else {
        expand_alone(end);
      }
      if (ended_early() || finished()) return;
    }
    settle_pending(depth_);
    layers_.push_back(store_.size());
    ++depth_;
  }

  void expand_alone(StateIndex end) {
    for (; next_ < end; ++next_) {
      if (next_ % stretch_ == 0 && must_stop()) return;
      expand(next_);
      if (ended_early() || finished()) return;
    }
  }

  // Orders ask parts that they have explored before, and an observer wants to see one event after the other.
  [[nodiscard]] bool is_worth_a_crew(StateIndex states) const {
    return jobs_ > 1 && states / 4 >= stretch_ && observer_ == nullptr && !orders_;
  }

  // What the scouts bring is taken over in the order in which expand_alone() would have come to it, with the same
  // outcome to the last number, while they are out for more. Where anything is to be decided, that is left to
  // expand_alone(), with the scouts called back.
  void expand_side_by_side(StateIndex end) {
    if (!vanguard_) {
      crew_.emplace(jobs_);
      vanguard_.emplace(world_, expander_, store_, layout_.words(), stretch_, *crew_);
    }
    const std::size_t open = count_open();
    send_out(next_, end);
    while (vanguard_->is_out()) {
      const std::span<const Stretch> stretches = vanguard_->bring_in();
      make_room_for(stretches);
      if (stretches.back().end < end) send_out(stretches.back().end, end);
      for (const Stretch& stretch : stretches) {
        if (!pass_over(stretch) || count_open() != open) return vanguard_->recall();
      }
      if (!vanguard_->is_out() && next_ < end) send_out(next_, end);
    }
  }

  void send_out(StateIndex begin, StateIndex end) {
    vanguard_->send_out(begin, end, open_at_rest(), sentry_, seen_, any_limit());
  }

  void make_room_for(std::span<const Stretch> stretches) {
    std::uint64_t newcomers = 0;
    for (const Stretch& stretch : stretches) newcomers += stretch.hashes.size();
    store_.make_room(newcomers);
  }

  // False where the search ends early.
  bool pass_over(const Stretch& stretch) {
    if (next_ % stretch_ == 0 && must_stop()) return false;
    if (stretch.eventful || store_.size() + stretch.hashes.size() >= look_again_) {
      vanguard_->recall();
      expand_alone(stretch.end);
    } else {
      take_over(stretch);
    }
    return !ended_early();
  }

  void take_over(const Stretch& stretch) {
    std::size_t successor = 0;
    std::size_t newcomer = 0;
    for (const std::uint32_t successors : stretch.ends) {
      starts_.begin_state();
      for (; successor < successors; ++successor) {
        const Stretch::Successor& next = stretch.successors[successor];
        const Store::Inserted found =
            next.index == Stretch::newcomer ? insert(stretch, newcomer++) : Store::Inserted{next.index, false};
        if (next.by_start) starts_.add(found.index, !found.fresh && found.index < layers_.back());
      }
    }
    sentry_.add_notes(*stretch.sentry);
    savings_.add(stretch.savings);
    seen_.add(*stretch.seen);
    completed_ = completed_ || stretch.completed;
    next_ = stretch.end;
  }

  Store::Inserted insert(const Stretch& stretch, std::size_t newcomer) {
    constexpr std::size_t ahead = 8;
    if (newcomer + ahead < stretch.hashes.size()) store_.foresee(stretch.hashes[newcomer + ahead]);
    const Store::Inserted found =
        store_.insert(stretch.rows.data() + newcomer * layout_.words(), stretch.hashes[newcomer]);
    note_outcome(savings_, stretch.forgotten[newcomer], !found.fresh);
    return found;
  }

  [[nodiscard]] std::vector<AskedProperty> open_at_rest() const {
    std::vector<AskedProperty> open;
    for (const Question& q : questions_) {
      if (q.at_rest && q.open()) open.push_back(q.answer.asked);
    }
    return open;
  }

  [[nodiscard]] std::uint64_t bytes_in_use() const {
    return store_.bytes_with(most_new_states) + starts_.bytes() + (orders_ ? orders_->bytes() : 0);
  }

  bool must_stop() {
    stopped_ = guard_.met(bytes_in_use());
    cut_short_ = store_.size() >= most_states_;
    if (store_.size() > Store::most_states - most_new_states) stopped_ = Reason::memory;
    look_again_ = store_.size() + most_new_states;
    guard_.report({store_.size(), store_.size() - next_, depth_, 0});
    return ended_early();
  }

  void expand(StateIndex index) {
    expander_.open(store_[index]);
    seen_.open(world_, expander_.state(), expander_.events());
    if (observer_ != nullptr) observer_->open(expander_.state(), expander_.derived(), expander_.events());
    starts_.begin_state();
    for (const Event& event : chosen()) {
      sentry_.reset();
      const Refusal refusal = expander_.take(event, sentry_);
      sentry_.note(expander_.state(), event, refusal);
      if (sentry_.alarmed()) refute_broken();
      seen_.taken(event, expander_.next());
      if (observer_ != nullptr) observer_->taken(expander_.state(), event, refusal, expander_.next());
      const auto [next, fresh] = store_.insert(expander_.packed_next());
      note_outcome(savings_, expander_.forgotten(), !fresh);
      if (event.kind == Event::Kind::started) starts_.add(next, !fresh && next < layers_.back());
      if (store_.size() >= look_again_ && must_stop()) break;
    }
    if (expander_.at_rest()) look_at_rest();
  }

  // Those of the events of the open state that are taken.
  const std::vector<Event>& chosen() {
    if (!orders_) return expander_.events();
    taken_ = expander_.events();
    // Looking at parts alone may cost a little beside what it is for, and as much as it has saved.
    orders_->allow_alone(store_.size() / 2 + savings_.events_left_out);
    orders_->choose(expander_.state(), expander_.derived(), taken_);
    if (!taken_.empty()) savings_.events_left_out += expander_.events().size() - taken_.size();
    if (taken_.empty() && !expander_.events().empty()) ++savings_.states_left;
    return taken_;
  }

  void refute_broken() {
    for (Question& q : questions_) {
      if (!q.at_rest && q.open() && sentry_.broken(q.answer.asked.property)) refute(q, depth_ + 1);
    }
  }

  void look_at_rest() {
    if (semantics::complete(expander_.state())) completed_ = true;
    for (Question& q : questions_) {
      if (!q.at_rest || !q.open()) continue;
      const auto tail =
          fatal_tail(world_, expander_.state(), expander_.derived(), q.answer.asked, sentry_.ties(), any_limit());
      if (!tail) continue;
      const std::size_t length = depth_ + tail->size();
      if (q.answer.asked.property == Property::tolerates_loss) {
        q.pending = std::min(q.pending.value_or(length), length);
      } else {
        refute(q, length);
      }
    }
  }

  // A later state may have fewer cables to lose; once the layers are as deep as the refutation that was met is long,
  // none can show a shorter one.
  void settle_pending(std::size_t depth) {
    for (Question& q : questions_) {
      if (q.open() && q.pending && *q.pending <= depth) refute(q, *q.pending);
    }
  }

  void refute(Question& q, std::size_t length) {
    Chooser chooser(world_, expander_, alike_.get(), store_, layers_, q.answer.asked, length, interrupt(),
                    crew_ ? &*crew_ : nullptr);
    q.answer.refutation = chooser.choose();
    sentry_.ignore(q.answer.asked.property);
  }

  // Every state is visited, or nothing is left to ask.
  void close_set() {
    for (Question& q : questions_) {
      if (q.open() && q.pending) refute(q, *q.pending);
    }
    if (finished()) return;
    endless_ = endless_devices(starts_.find_cycle(any_limit()), expander_, store_, alike_.get(), sentry_.ties());
    every_state_visited_ = true;
  }

  [[nodiscard]] AskLimits any_limit() const {
    return [this] { return guard_.met(0); };
  }

  /// For the choice among refutations: that there is one is known, and time or memory shall not take it back.
  [[nodiscard]] AskLimits interrupt() const {
    return [this] { return guard_.interrupted() ? std::optional(Reason::interrupted) : std::nullopt; };
  }

  /// The states visited go with it.
  Exploration result() {
    if (orders_) sentry_.ties().add(orders_->ties_alone());
    if (alike_) {
      alike_->complete(sentry_.ties());
      alike_->complete(seen_);
    }
    if (sentry_.ties().rank_decided()) seen_.rank_decided();
    if (every_state_visited_ && !orders_) seen_.visited_every_state();
    Exploration all(std::move(seen_));
    for (const Question& q : questions_) all.answers.push_back(q.answer);
    all.stopped = stopped_;
    all.explored = store_.size() + (orders_ ? orders_->states_alone() : 0);
    if (orders_) savings_.states_alone = orders_->states_alone();
    if (reduced_) all.savings = savings_;
    all.a_kept_device_led = sentry_.a_kept_device_led();
    all.a_run_completed = completed_;
    all.ties = sentry_.ties().ties();
    all.endless = endless_;
    all.every_state_visited = every_state_visited_;
    all.cut_short = cut_short_;
    all.reduced = reduced_;
    all.orders_left_out = orders_.has_value();
    all.alike = alike_;
    all.visited = std::make_unique<Visited>(std::move(layout_), std::move(store_), expander_.state());
    return all;
  }

  /// Between two looks at the limits no more new states come, however many events a state has.
  static constexpr std::uint32_t most_new_states = 4096;

  const semantics::World& world_;
  const Guard& guard_;
  Observer* observer_;
  std::uint64_t most_states_;
  unsigned jobs_;
  StateIndex stretch_;
  bool reduced_;
  Layout layout_;
  std::shared_ptr<const Alike> alike_;
  Expander expander_;
  Store store_;
  Sentry sentry_;
  Sightings seen_;
  std::vector<Question> questions_;
  std::optional<Orders> orders_;
  std::optional<Crew> crew_;
  std::optional<Vanguard> vanguard_;
  Savings savings_;
  std::vector<Event> taken_;   ///< of the state that is being expanded
  Layers layers_;              ///< ends with the end of the layer that is being expanded
  std::size_t depth_ = 0;      ///< of that layer
  StateIndex next_ = 0;        ///< the state to expand next
  StateIndex look_again_ = 0;  ///< at the limits, when there are so many states
  StartGraph starts_;
  bool completed_ = false;
  std::vector<DeviceId> endless_;
  bool every_state_visited_ = false;
  bool cut_short_ = false;
  std::optional<Reason> stopped_;
};

}  // namespace

Exploration explore(const semantics::World& world, const FaultBudget& budget, const std::vector<AskedProperty>& asked,
                    const Guard& guard, const Manner& manner) {
  return Search(world, budget, asked, guard, manner).run();
}

}  // namespace cairn::explore
