#include "system/coding.hpp"

#include <algorithm>
#include <bit>
#include <utility>

namespace cairn::system {

Coding::Coding(const Space& space, Domains domains) : space_(&space), domains_(std::move(domains)) {
  std::uint32_t used = 0;
  for (const std::vector<std::int64_t>& values : domains_) {
    const auto width = static_cast<std::uint32_t>(std::bit_width(values.size() - 1));
    if (used + width > 64) {
      ++words_;
      used = 0;
    }
    fields_.push_back({static_cast<std::uint32_t>(words_ - 1), used, width});
    used += width;
  }
}

std::optional<std::size_t> Coding::place(VariableId v, std::int64_t value) const {
  const std::vector<std::int64_t>& values = domains_[v];
  const auto found = std::lower_bound(values.begin(), values.end(), value);
  if (found == values.end() || *found != value) return std::nullopt;
  return static_cast<std::size_t>(found - values.begin());
}

bool Coding::put(VariableId v, std::int64_t value, std::uint64_t* row) const {
  const std::vector<std::int64_t>& values = domains_[v];
  std::size_t place = 0;  // few values: looked through faster than halved
  while (place < values.size() && values[place] != value) ++place;
  if (place == values.size()) return false;
  const Field& field = fields_[v];
  if (field.width == 0) return true;
  const std::uint64_t mask = (std::uint64_t{1} << field.width) - 1;
  row[field.word] = (row[field.word] & ~(mask << field.shift)) | std::uint64_t{place} << field.shift;
  return true;
}

bool Coding::write(std::span<const std::int64_t> values, std::uint64_t* row) const {
  std::fill_n(row, words_, 0);
  bool within = true;
  for (VariableId v = 0; v < fields_.size(); ++v) within = put(v, values[v], row) && within;
  return within;
}

std::int64_t Coding::read(const std::uint64_t* row, VariableId v) const {
  const Field& field = fields_[v];
  if (field.width == 0) return domains_[v].front();
  const std::uint64_t mask = (std::uint64_t{1} << field.width) - 1;
  return domains_[v][row[field.word] >> field.shift & mask];
}

std::vector<std::int64_t> Coding::read(const std::uint64_t* row) const {
  std::vector<std::int64_t> values;
  for (VariableId v = 0; v < fields_.size(); ++v) values.push_back(read(row, v));
  return values;
}

bool StateWriter::write(const State& s, std::uint64_t* row) {
  now_ = &s;
  within_ = true;
  if (has_before_) {
    put_devices();
    put_others();
  } else {
    put_some(0, coding_.size());
  }
  before_ = s;
  has_before_ = within_;
  std::copy(row_.begin(), row_.end(), row);
  return within_;
}

void StateWriter::put_devices() {
  bool reordered = false;
  for_each_device(*coding_.space_, [&](DeviceId d) {
    if ((*now_)[d] == before_[d]) return;
    put_some(coding_.space_->of_device(Variable::Kind::power, d),
             static_cast<std::size_t>(Variable::Kind::startup_priority) + 1);
    reordered = reordered || (*now_)[d].seniority != before_[d].seniority;
  });
  if (reordered) put_seniority();
}

// 2.a, from the levels of cairn/state.hpp, as Space::read does, and bit by bit: this is what takes longest.
void StateWriter::put_seniority() {
  const std::vector<DeviceState>& devices = now_->devices;
  VariableId v = coding_.space_->senior(DeviceId(0), DeviceId(1));
  for (std::uint32_t d = 0; d < devices.size(); ++d) {
    const std::uint32_t level = devices[d].seniority;
    for (std::uint32_t e = 0; e < devices.size(); ++e) {
      if (e == d) continue;
      const bool senior = level != 0 && level < devices[e].seniority;
      const Coding::Field& field = coding_.fields_[v];
      if (field.width == 0) {
        within_ = within_ && coding_.domains_[v].front() == (senior ? 1 : 0);
      } else {
        std::uint64_t& word = row_[field.word];
        word = (word & ~(std::uint64_t{1} << field.shift)) | std::uint64_t{senior} << field.shift;
      }
      ++v;
    }
  }
}

void StateWriter::put_others() {
  const Space& space = *coding_.space_;
  for (std::uint32_t p = 0; p < space.ports(); ++p) {
    if (now_->ports[p] == before_.ports[p]) continue;
    const VariableId first = space.of_port(Variable::Kind::enabled, PortId(p));
    put_some(first, space.of_port(Variable::Kind::operational_side, PortId(p)) - first + 1);
  }
  for (std::uint32_t c = 0; c < space.cables(); ++c) {
    if (now_->cables[c] == before_.cables[c]) continue;
    put(space.plugged(CableId(c)));
    put(space.broken(CableId(c)));
  }
  for (std::uint32_t i = 0; i < space.steps(); ++i) {
    if (now_->done[i] != before_.done[i]) put(space.done(StepId(i)));
  }
  put_some(space.left(Fault{}), fault_count);
  put(space.halted());
}

}  // namespace cairn::system
