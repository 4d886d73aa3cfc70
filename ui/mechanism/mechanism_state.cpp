// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanism/mechanism_state.h"

#include <algorithm>
#include <cmath>

#include "mechanism/words.h"
#include "quantity/units.h"
#include "unit/interlocks.h"

namespace cabwright::mechanism {

namespace q = cabwright::quantity;
using plant::DogState;
using unit::Fact;

namespace {

constexpr double kTouchPsi = 8;  // less does not move a band to its drum
constexpr double kStands = 0.5;  // rev/min

LineState readLine(const plant::LineReadings& r, const plant::Parameters& p, std::size_t n) {
  const auto rpm = [](double rad_per_s) { return q::radPerSecToRpm(rad_per_s); };
  LineState s;
  s.engine = rpm(r.crank_rad_per_s);
  s.runner = rpm(r.turbine_rad_per_s);
  s.input = rpm(r.input_rad_per_s);
  s.output = rpm(r.output_rad_per_s);
  s.wheel = rpm(r.wheel_rad_per_s);
  for (std::size_t k = 0; k < 3; ++k) s.drum[k] = rpm(r.drum_rad_per_s[k]);
  for (std::size_t k = 0; k < 4; ++k) {
    s.gear_psi[k] = std::max(0.0, q::paToPsiGauge(r.gear_pa[k]));
    s.gear_holds[k] = r.gear_locked[k];
  }
  s.freewheel_drives = r.freewheel_locked;
  s.dog = r.dog;
  s.dog_side = r.dog_side;
  s.sleeve = std::clamp(r.sleeve_m / p.final_drive[n].travel_m, -1.0, 1.0);
  s.tooth_deg = r.tooth_phase_rad * 57.29577951308232;
  s.shift_forward_psi = std::max(0.0, q::paToPsiGauge(r.shift_forward_pa));
  s.shift_reverse_psi = std::max(0.0, q::paToPsiGauge(r.shift_reverse_pa));
  s.crown = (r.dog_side < 0 ? -1 : 1) * s.output / p.final_drive[n].ratio;
  s.coupling_nm = r.coupling_nm;
  s.output_nm = r.output_nm;
  s.coupling_c = q::kelvinToCelsius(r.coupling_k);
  s.box_c = q::kelvinToCelsius(r.box_oil_k);
  double hottest = r.clutch_k;
  for (double k : r.drum_k) hottest = std::max(hottest, k);
  s.hottest_c = q::kelvinToCelsius(hottest);
  return s;
}

TrainTeeth teethOf(double sun, double annulus) {
  TrainTeeth t;
  t.sun = static_cast<int>(std::lround(sun));
  t.annulus = static_cast<int>(std::lround(annulus));
  t.planet = (t.annulus - t.sun) / 2;
  return t;
}

QString nameOf(Fact f) {
  switch (f) {
    case Fact::kDeskAlive:
      return Words::tr("Desk");
    case Fact::kLampBreakerIn:
      return Words::tr("Breaker");
    case Fact::kJumperHome:
      return Words::tr("Jumper");
    case Fact::kReverserContact:
      return Words::tr("Reverser");
    case Fact::kAirSwitchMade:
      return Words::tr("Air switch");
    case Fact::kDrivesMeshed:
      return Words::tr("Drives");
    default:
      return {};
  }
}

QString madeWords(Fact f, const unit::Unit& unit) {
  const unit::World& w = unit.world();
  switch (f) {
    case Fact::kDeskAlive:
      return Words::tr("alive");
    case Fact::kLampBreakerIn:
      return Words::tr("in");
    case Fact::kJumperHome:
      return Words::tr("makes");
    case Fact::kReverserContact:
      return w.result.direction == 0 ? Words::tr("makes") : Words::tr("turned");
    case Fact::kAirSwitchMade:
      return Words::tr("%1 psi").arg(q::paToPsiGauge(unit.readings().control_reservoir_pa), 0, 'f',
                                     0);
    case Fact::kDrivesMeshed:
      return Words::tr("in mesh");
    default:
      return {};
  }
}

// Which drive keeps the contact open; both in mesh: they are not in mesh the way that is asked.
QString drivesWords(const unit::Unit& unit) {
  QStringList out;
  for (int n = 0; n < 2; ++n) {
    if (unit.readings().line[static_cast<std::size_t>(n)].dog != DogState::kMeshed)
      out << QString::number(n + 1);
  }
  if (out.size() == 2) return Words::tr("neither in mesh");
  if (out.size() == 1) return Words::tr("%1 not in mesh").arg(out.front());
  return unit.world().result.direction == 0 ? Words::tr("no way asked") : Words::tr("other way");
}

QString openWords(Fact f, const unit::Unit& unit) {
  switch (f) {
    case Fact::kDeskAlive:
      return Words::tr("dead");
    case Fact::kLampBreakerIn:
      return Words::tr("out");
    case Fact::kAirSwitchMade:
      return Words::tr("%1 psi").arg(q::paToPsiGauge(unit.readings().control_reservoir_pa), 0, 'f',
                                     0);
    case Fact::kDrivesMeshed:
      return drivesWords(unit);
    default:
      return Words::tr("open");
  }
}

}  // namespace

MechanismState readMechanism(const unit::Unit& unit) {
  const plant::Parameters& p = unit.plant().parameters();
  const unit::World& w = unit.world();
  MechanismState s;
  for (std::size_t n = 0; n < 2; ++n) s.line[n] = readLine(unit.readings().line[n], p, n);
  const auto& box = p.gearbox[0];
  s.teeth = {teethOf(box.sun_1, box.annulus_1), teethOf(box.sun_2, box.annulus_2),
             teethOf(box.sun_3, box.annulus_3)};
  s.dog_pitch_deg = 360.0 / p.final_drive[0].teeth;
  s.dog_window_deg = p.final_drive[0].window_deg;
  s.cab = w.result.desk[1] ? 1 : 0;
  s.lamp_air = w.result.lamp_air[static_cast<std::size_t>(s.cab)];
  s.battery_v = unit.readings().bus_v;
  const unit::FactSet needs = unit::interlockRow(unit::Outcome::kLampAir).needs;
  // The desk comes first and the drives last, whatever the order of the list.
  for (Fact f : {Fact::kDeskAlive, Fact::kLampBreakerIn, Fact::kJumperHome, Fact::kReverserContact,
                 Fact::kAirSwitchMade, Fact::kDrivesMeshed}) {
    if ((needs & unit::factBit(f)) == 0) continue;
    const bool made = w.result.facts.has(f, s.cab);
    s.path.push_back({nameOf(f), made, made ? madeWords(f, unit) : openWords(f, unit)});
  }
  return s;
}

QString dogWords(const LineState& line) {
  const QString way = line.dog_side >= 0 ? Words::tr("forward") : Words::tr("reverse");
  switch (line.dog) {
    case DogState::kMiddle:
      return Words::tr("in the middle");
    case DogState::kMoving:
      return Words::tr("on its way");
    case DogState::kOnTooth:
      return Words::tr("teeth stand on teeth");
    case DogState::kEntering:
      return Words::tr("dropping in");
    case DogState::kMeshed:
      return Words::tr("in mesh, %1").arg(way);
    case DogState::kRattling:
      return Words::tr("teeth pass each other: rattling");
    case DogState::kPinned:
      return Words::tr("pinned in the middle");
  }
  return {};
}

QString dogOutlook(const LineState& line, const MechanismState& state) {
  if (line.dog == DogState::kOnTooth) {
    // The way the angle within the pitch grows: that of the shaft.
    const double relative = (line.dog_side < 0 ? -1 : 1) * (line.crown - line.wheel);
    const double to_gap = state.dog_pitch_deg - line.tooth_deg;
    if (relative > 0.01) return Words::tr("They drop in after %1° more.").arg(to_gap, 0, 'f', 1);
    if (relative < -0.01)
      return Words::tr("They drop in after %1° more.")
          .arg(std::max(0.0, line.tooth_deg - state.dog_window_deg), 0, 'f', 1);
    return Words::tr("Nothing turns them: a shaft that turns frees them.");
  }
  if (line.dog == DogState::kRattling)
    return Words::tr("Too fast to drop in: %1 rev/min between them.")
        .arg(std::abs(line.crown - line.wheel), 0, 'f', 1);
  if (line.dog == DogState::kMeshed) return Words::tr("Shaft and wheels are one.");
  return {};
}

QString bandWords(const LineState& line, int gear) {
  const auto k = static_cast<std::size_t>(gear);
  if (line.gear_holds[k]) return Words::tr("holds");
  if (line.gear_psi[k] < kTouchPsi) return Words::tr("open");
  return std::abs(line.drum[k]) < kStands ? Words::tr("closed") : Words::tr("slips");
}

QString clutchWords(const LineState& line) {
  if (line.gear_holds[3]) return Words::tr("holds");
  return line.gear_psi[3] < kTouchPsi ? Words::tr("open") : Words::tr("slips");
}

QString freewheelWords(const LineState& line) {
  if (std::abs(line.runner) < kStands && std::abs(line.input) < kStands)
    return Words::tr("it stands");
  return line.freewheel_drives ? Words::tr("rollers wedged: it drives")
                               : Words::tr("rollers loose: it runs free");
}

QString gearWords(const LineState& line) {
  constexpr const char* kNames[] = {
      QT_TRANSLATE_NOOP("Mechanism", "first gear"), QT_TRANSLATE_NOOP("Mechanism", "second gear"),
      QT_TRANSLATE_NOOP("Mechanism", "third gear"), QT_TRANSLATE_NOOP("Mechanism", "top gear")};
  for (std::size_t k = 0; k < 4; ++k) {
    if (line.gear_holds[k]) return Words::tr(kNames[k]);
  }
  for (std::size_t k = 0; k < 4; ++k) {
    if (line.gear_psi[k] >= kTouchPsi) return Words::tr("%1 taking hold").arg(Words::tr(kNames[k]));
  }
  return Words::tr("no gear");
}

}  // namespace cabwright::mechanism
