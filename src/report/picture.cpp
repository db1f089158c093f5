#include "report/picture.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <utility>

#include "report/layout.hpp"
#include "report/words.hpp"
#include "semantics/derived.hpp"

namespace cairn::report {

namespace {

using semantics::Derived;
using semantics::World;

constexpr std::size_t longest_name = 22;  // a longer one is shortened
constexpr std::size_t joint_width = 7;    // a blank, five columns of link, a blank

// How two neighbours are joined, from least to most.
enum class Joint { nothing, broken, idle, linked };

// The sign of a joint, `width` columns wide, a blank on either side included.
std::string sign_of(Joint joint, std::size_t width) {
  const std::size_t inside = width - 2;
  std::string sign(inside, joint == Joint::linked ? '=' : joint == Joint::broken ? '-' : ' ');
  if (joint == Joint::broken) sign[inside / 2] = 'x';
  if (joint == Joint::idle) {
    for (std::size_t i = 0; i < inside; i += 2) sign[i] = '.';
  }
  return " " + sign + " ";
}

/// A state and what follows from it.
struct Scene {
  const State& state;
  Derived derived;
  bool several_leaders;  ///< then each follower says whom it follows
};

Scene scene_of(const World& world, const State& s) {
  std::set<DeviceId> leaders;
  for (const DeviceState& d : s.devices) {
    if (d.leader) leaders.insert(d.leader);
  }
  return {s, derive(world, s), leaders.size() > 1};
}

Joint joint_of(const World& world, const Scene& scene, DeviceId d, DeviceId e) {
  Joint best = Joint::nothing;
  for (const auto& end : world.ends_at(d)) {
    if (end.other != e || !scene.state[end.cable].plugged) continue;
    const Joint joint = scene.derived.linked[end.cable.value] != 0 ? Joint::linked
                        : scene.state[end.cable].broken            ? Joint::broken
                                                                   : Joint::idle;
    best = std::max(best, joint);
  }
  return best;
}

std::string name_in_picture(const Model& model, DeviceId d) {
  return shortened(model[d].name, longest_name);
}

// "#4 primary"
std::string role_of(const Model& model, const Scene& scene, DeviceId d) {
  const DeviceState& device = scene.state[d];
  const auto role = [&]() -> std::string {
    switch (device.power) {
      case Power::off:
        return "off";
      case Power::starting:
        return "starting";
      case Power::held:
        return "held";
      case Power::up:
        break;
    }
    if (!device.leader) return "no leader";
    if (device.leader == d) return "primary";
    return scene.several_leaders ? "follows " + name_in_picture(model, device.leader) : "follower";
  };
  return fmt::format("#{} {}", device.number, role());
}

/// Devices side by side, each joined with the next; `ring` when the last is joined with the first.
struct Row {
  std::vector<DeviceId> devices;
  bool ring = false;
};

/// Chooses who stands beside whom, for all scenes at once.
class Arrangement {
 public:
  Arrangement(const World& world, const std::vector<Scene>& scenes) : world_(world) {
    for (const Scene& scene : scenes) note_joints(scene);
    const std::size_t n = world.device_count();
    placed_.assign(n, false);
    // Ends of chains first, so that a chain is one row; then whatever is left, rings among it.
    for (const std::size_t most_neighbours : {std::size_t{1}, n}) {
      for (std::size_t i = 0; i < n; ++i) {
        if (!placed_[i] && neighbours(DeviceId(i)).size() <= most_neighbours) rows_.push_back(row_from(DeviceId(i)));
      }
    }
    std::sort(rows_.begin(), rows_.end(), [](const Row& a, const Row& b) {
      return *std::min_element(a.devices.begin(), a.devices.end()) <
             *std::min_element(b.devices.begin(), b.devices.end());
    });
  }

  [[nodiscard]] const std::vector<Row>& rows() const { return rows_; }
  /// Joints that no row shows.
  [[nodiscard]] const std::set<std::pair<DeviceId, DeviceId>>& others() const { return joints_; }

 private:
  void note_joints(const Scene& scene) {
    for (std::size_t i = 0; i < world_.cable_count(); ++i) {
      const CableId c(i);
      if (!scene.state[c].plugged) continue;
      joints_.insert(std::minmax(device_a(world_.model(), c), device_b(world_.model(), c)));
    }
  }

  std::vector<DeviceId> neighbours(DeviceId d) const {
    std::vector<DeviceId> found;
    for (const auto& [a, b] : joints_) {
      if (a == d) found.push_back(b);
      if (b == d) found.push_back(a);
    }
    return found;
  }

  Row row_from(DeviceId first) {
    Row row;
    for (DeviceId d = first; d;) {
      row.devices.push_back(d);
      placed_[d.value] = true;
      DeviceId next;
      for (const DeviceId e : neighbours(d)) {
        if (!placed_[e.value] && (!next || e < next)) next = e;
      }
      if (next) joints_.erase(std::minmax(d, next));
      d = next;
    }
    row.ring = row.devices.size() > 2 && joints_.erase(std::minmax(row.devices.back(), first)) > 0;
    return row;
  }

  const World& world_;
  std::set<std::pair<DeviceId, DeviceId>> joints_;
  std::vector<bool> placed_;
  std::vector<Row> rows_;
};

/// Writes the lines of one scene, in a layout that fits all of them.
class Drawing {
 public:
  Drawing(const World& world, const std::vector<Scene>& scenes, std::size_t width)
      : world_(world), width_(width), arrangement_(world, scenes) {
    for (std::size_t i = 0; i < world.device_count(); ++i) {
      std::size_t cell = name_in_picture(world.model(), DeviceId(i)).size();
      for (const Scene& scene : scenes) cell = std::max(cell, role_of(world.model(), scene, DeviceId(i)).size());
      widths_.push_back(cell);
    }
  }

  std::vector<std::string> lines(const Scene& scene) {
    lines_.clear();
    begin_line();
    for (const Row& row : arrangement_.rows()) add_row(scene, row);
    end_line();
    for (const auto& [d, e] : arrangement_.others()) {
      const Joint joint = joint_of(world_, scene, d, e);
      if (joint == Joint::nothing) continue;
      lines_.push_back(name_in_picture(world_.model(), d) + sign_of(joint, joint_width) +
                       name_in_picture(world_.model(), e));
    }
    return std::move(lines_);
  }

 private:
  void begin_line() {
    names_.clear();
    roles_.clear();
  }

  void end_line() {
    for (std::string* line : {&names_, &roles_}) line->erase(line->find_last_not_of(' ') + 1);
    lines_.push_back(names_);
    lines_.push_back(roles_);
    begin_line();
  }

  void add(std::string_view above, std::string_view below, std::size_t width) {
    names_ += padded(above, width);
    roles_ += padded(below, width);
  }

  // From the end of the name to the next cell, however wide the role below is.
  void add_joint(Joint joint) {
    names_.erase(names_.find_last_not_of(' ') + 1);
    roles_ += std::string(joint_width, ' ');
    names_ += sign_of(joint, roles_.size() - names_.size());
  }

  void add_row(const Scene& scene, const Row& row) {
    const Model& model = world_.model();
    for (std::size_t i = 0; i < row.devices.size(); ++i) {
      const DeviceId d = row.devices[i];
      const Joint joint = i > 0 ? joint_of(world_, scene, row.devices[i - 1], d) : Joint::nothing;
      // A row may go on in a new line; then the joint stands at the end of the one and at the beginning of the other.
      const bool fits = roles_.size() + 2 * joint_width + widths_[d.value] <= width_;
      if (!names_.empty()) add_joint(joint);
      if (!names_.empty() && !fits) {
        end_line();
        if (i > 0) add_joint(joint);
      }
      add(name_in_picture(model, d), role_of(model, scene, d), widths_[d.value]);
    }
    if (!row.ring) return;
    const Joint closing = joint_of(world_, scene, row.devices.back(), row.devices.front());
    if (closing == Joint::nothing) return;
    const std::string again = fmt::format("({})", name_in_picture(model, row.devices.front()));
    add_joint(closing);
    if (names_.size() + again.size() > width_) {
      end_line();
      add_joint(closing);
    }
    add(again, "", again.size());
  }

  const World& world_;
  std::size_t width_;  ///< of a line
  Arrangement arrangement_;
  std::vector<std::size_t> widths_;  ///< of the cells, by device
  std::string names_;
  std::string roles_;
  std::vector<std::string> lines_;
};

}  // namespace

std::vector<std::string> draw(const World& world, const std::vector<Snapshot>& snapshots, std::size_t margin) {
  std::vector<Scene> scenes;
  scenes.reserve(snapshots.size());
  for (const Snapshot& snapshot : snapshots) scenes.push_back(scene_of(world, *snapshot.state));
  Drawing drawing(world, scenes, page_width - margin);
  std::vector<std::string> out;
  std::vector<std::string> shown;
  for (std::size_t i = 0; i < scenes.size(); ++i) {
    std::vector<std::string> lines = drawing.lines(scenes[i]);
    if (lines == shown) continue;
    if (!out.empty()) out.emplace_back();
    shown = lines;
    for (std::size_t k = 0; k < lines.size(); ++k) {
      out.push_back("  " + padded(k == 0 ? snapshots[i].caption : "", margin - 2) + lines[k]);
    }
  }
  return out;
}

bool look_alike(const World& world, const State& a, const State& b) {
  const std::vector<Scene> scenes{scene_of(world, a), scene_of(world, b)};
  Drawing drawing(world, scenes, page_width);
  return drawing.lines(scenes[0]) == drawing.lines(scenes[1]);
}

std::string legend() {
  return "#4 is a member number; ===== a stack link, . . . a cable that forms no link, --x-- a broken cable";
}

}  // namespace cairn::report
