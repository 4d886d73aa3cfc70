// SPDX-License-Identifier: GPL-3.0-or-later
#include "fault/active_faults.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "plant/named_numbers.h"

namespace cabwright::fault {

namespace {

double readNow(const ParameterRef& parameter, const unit::Unit& unit) {
  if (const auto* of_plant = std::get_if<const plant::ParameterInfo*>(&parameter)) {
    return (*of_plant)->of(unit.plant().parameters());
  }
  return std::get<const unit::UnitParameterInfo*>(parameter)->of(unit.parameters());
}

void put(const ParameterRef& parameter, double value, unit::Unit& unit) {
  std::visit([&](const auto* info) { unit.setParameter(*info, value); }, parameter);
}

// Middle of a tooth of that drive: halfway between the end of one gap and the next.
double calcToothAngle(const unit::Unit& unit, std::size_t line) {
  const plant::FinalDriveParameters& f = unit.plant().parameters().final_drive[line];
  return (f.window_deg + 360.0 / f.teeth) / 2.0;
}

void replaceAll(std::string& text, std::string_view what, const std::string& by) {
  for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what)) {
    text.replace(at, what.size(), by);
  }
}

std::string fillAct(std::string text, double size, const unit::Unit& unit) {
  replaceAll(text, "{size}", plant::shortNumber(size));
  if (text.find("{tooth}") != std::string::npos) {
    const std::size_t line = text.starts_with("tooth 2") ? 1 : 0;
    replaceAll(text, "{tooth}", plant::shortNumber(calcToothAngle(unit, line)));
  }
  return text;
}

bool touches(const FaultSpec& spec, const ParameterRef& parameter) {
  return std::any_of(spec.numbers.begin(), spec.numbers.end(),
                     [&](const NumberEffect& n) { return n.parameter == parameter; });
}

// What the scenario's file says of the others.
void addWords(const ArmedFault& fault, quantity::Fnv1a64& hash) {
  hash.addText(fault.id);
  hash.addText(fault.spec->name);
  hash.addDouble(fault.size);
  hash.addText(fault.from.when ? fault.from.when->text() : std::string());
  hash.addInt(fault.from.ticks);
  hash.addInt(fault.ramp_ticks);
}

// All that faults do to one number. Values of a kind are kept in order of size, so that sums and
// products come out the same whatever the order in which the faults were armed.
class Combination {
 public:
  explicit Combination(double base) : base_(base) {}

  void add(const NumberEffect& effect, double size, double share) {
    const double value = effect.value(size);
    switch (effect.how) {
      case How::kScale:
        factors_.push_back(1.0 + (value - 1.0) * share);
        break;
      case How::kAdd:
        additions_.push_back(value * share);
        break;
      case How::kTo:
        takeStuck(share >= 1.0 ? value : base_ + (value - base_) * share);
        break;
    }
  }

  [[nodiscard]] double calc() {
    if (is_stuck_) return stuck_at_;
    std::sort(factors_.begin(), factors_.end());
    std::sort(additions_.begin(), additions_.end());
    double value = base_;
    for (double f : factors_) value *= f;
    for (double a : additions_) value += a;
    return value;
  }

 private:
  void takeStuck(double value) {
    const double old_way = std::abs(stuck_at_ - base_), new_way = std::abs(value - base_);
    const bool farther = new_way > old_way || (new_way == old_way && value > stuck_at_);
    if (!is_stuck_ || farther) stuck_at_ = value;
    is_stuck_ = true;
  }

  double base_;
  std::vector<double> factors_, additions_;
  bool is_stuck_ = false;
  double stuck_at_ = 0;
};

}  // namespace

std::string_view wordOf(FaultStage stage) {
  switch (stage) {
    case FaultStage::kArmed:
      return "armed";
    case FaultStage::kGrowing:
      return "growing";
    case FaultStage::kThere:
      return "there";
    case FaultStage::kCleared:
      break;
  }
  return "cleared";
}

ActiveFaults::ActiveFaults(std::vector<ArmedFault> armed) {
  for (ArmedFault& fault : armed) add(std::move(fault), false);
}

void ActiveFaults::arm(ArmedFault fault) { add(std::move(fault), true); }

void ActiveFaults::add(ArmedFault fault, bool late) {
  if (!fault.spec) throw std::invalid_argument("a fault that is in no catalogue");
  if (const auto wrong = findSizeFault(*fault.spec, fault.size)) {
    throw std::invalid_argument(*wrong);
  }
  if (find(fault.id)) throw std::invalid_argument("two faults of the id " + fault.id);
  armed_.push_back(std::move(fault));
  states_.emplace_back().late = late;
}

std::optional<std::size_t> ActiveFaults::find(std::string_view id) const {
  for (std::size_t k = 0; k < armed_.size(); ++k) {
    if (armed_[k].id == id) return k;
  }
  return std::nullopt;
}

bool ActiveFaults::clear(std::string_view id) {
  for (std::size_t k = 0; k < armed_.size(); ++k) {
    if (armed_[k].id != id || states_[k].stage == FaultStage::kCleared) continue;
    states_[k].clear_wanted = true;
    return true;
  }
  return false;
}

std::vector<FaultChange> ActiveFaults::advance(unit::Unit& unit) {
  std::vector<FaultChange> changes;
  bool renew = false;
  for (std::size_t k = 0; k < armed_.size(); ++k) renew |= advanceOne(k, unit, changes);
  if (renew) writeNumbers(unit);
  return changes;
}

// True if its share of the numbers is another than before.
bool ActiveFaults::advanceOne(std::size_t k, unit::Unit& unit, std::vector<FaultChange>& changes) {
  const ArmedFault& fault = armed_[k];
  State& s = states_[k];
  if (s.stage == FaultStage::kCleared) return false;
  const unit::Frame& frame = unit.frame();
  const auto turn = [&](FaultStage stage) {
    s.stage = stage;
    changes.push_back({frame.tick, fault.id, fault.spec, fault.size, stage});
  };
  if (s.clear_wanted && s.stage == FaultStage::kArmed) {
    turn(FaultStage::kCleared);
    return false;
  }
  if (s.stage == FaultStage::kArmed) {
    if (!s.from.advance(fault.from, frame)) return false;
    s.since = frame.tick;
    doActs(k, unit, true);
    if (fault.ramp_ticks > 0) turn(FaultStage::kGrowing);
  }
  const bool over = s.clear_wanted || (fault.until && s.until.advance(*fault.until, frame));
  const double before = s.share;
  if (over) {
    s.share = 0.0;
    doActs(k, unit, false);
    turn(FaultStage::kCleared);
    return before != 0.0;
  }
  if (s.stage == FaultStage::kThere) return false;
  s.share = fault.ramp_ticks > 0
                ? static_cast<double>(frame.tick - s.since) / static_cast<double>(fault.ramp_ticks)
                : 1.0;
  if (s.share >= 1.0) {
    s.share = 1.0;
    turn(FaultStage::kThere);
  }
  return s.share != before;
}

void ActiveFaults::doActs(std::size_t k, unit::Unit& unit, bool come) const {
  const ArmedFault& fault = armed_[k];
  for (const ActEffect& effect : fault.spec->acts) {
    const std::string& text = come ? effect.act : effect.undo;
    if (text.empty()) continue;
    auto action = unit::parseAction("scenario: " + fillAct(text, fault.size, unit));
    unit.apply(std::get<unit::Action>(action));
  }
}

ActiveFaults::Touched& ActiveFaults::touch(const ParameterRef& parameter, const unit::Unit& unit) {
  const auto at = std::lower_bound(
      touched_.begin(), touched_.end(), nameOf(parameter),
      [](const Touched& t, const std::string& name) { return nameOf(t.parameter) < name; });
  if (at != touched_.end() && at->parameter == parameter) return *at;
  const double now = readNow(parameter, unit);
  return *touched_.insert(at, {parameter, now, now, now});
}

double ActiveFaults::combine(const Touched& t) const {
  Combination all(t.base);
  bool any = false;
  for (std::size_t k = 0; k < armed_.size(); ++k) {
    if (states_[k].share <= 0.0) continue;
    for (const NumberEffect& n : armed_[k].spec->numbers) {
      if (n.parameter != t.parameter) continue;
      all.add(n, armed_[k].size, states_[k].share);
      any = true;
    }
  }
  if (!any) return t.base;
  return std::clamp(all.calc(), lowestOf(t.parameter), highestOf(t.parameter));
}

void ActiveFaults::writeNumbers(unit::Unit& unit) {
  for (std::size_t k = 0; k < armed_.size(); ++k) {
    if (states_[k].share <= 0.0) continue;
    for (const NumberEffect& n : armed_[k].spec->numbers) touch(n.parameter, unit);
  }
  for (Touched& t : touched_) {
    const double now = readNow(t.parameter, unit);
    if (now != t.written) {
      // Somebody else was here: put back to sound, or moved by so much.
      t.base = now == t.sound ? t.sound : t.base + (now - t.written);
    }
    const double wanted = combine(t);
    if (wanted != now) put(t.parameter, wanted, unit);
    t.written = wanted;
  }
  std::erase_if(touched_, [&](const Touched& t) {
    for (std::size_t k = 0; k < armed_.size(); ++k) {
      if (states_[k].share > 0.0 && touches(*armed_[k].spec, t.parameter)) return false;
    }
    return true;
  });
}

void ActiveFaults::addTo(quantity::Fnv1a64& hash) const {
  for (std::size_t k = 0; k < states_.size(); ++k) {
    const State& s = states_[k];
    if (s.late) addWords(armed_[k], hash);
    s.from.addTo(hash);
    s.until.addTo(hash);
    hash.addInt(static_cast<int>(s.stage));
    hash.addInt(s.clear_wanted);
    hash.addInt(s.since);
    hash.addDouble(s.share);
  }
  for (const Touched& t : touched_) {
    hash.addText(nameOf(t.parameter));
    hash.addDouble(t.sound);
    hash.addDouble(t.base);
    hash.addDouble(t.written);
  }
}

}  // namespace cabwright::fault
