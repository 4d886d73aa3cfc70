// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/parameters.h"

#include <cmath>
#include <cstring>
#include <stdexcept>

#include "plant/named_numbers.h"
#include "plant/start_conditions.h"

namespace cabwright::plant {

Parameters::Parameters() {
  for (GearboxParameters& box : gearbox) {
    // 1.3 times the holding torque of each gear at 75 psi: 44, 19 and 9 N m per psi.
    box.band[0].leverage = 4.955;
    box.band[1].leverage = 2.140;
    box.band[2].leverage = 1.014;
    box.band[2].drum_kg_m2 = 0.30;
  }
  // Cylinders 1 and 2 stand on car 1, each over one driven and one trailing wheelset.
  brake_cylinder[0].driven_1 = 0.5;
  brake_cylinder[1].driven_2 = 0.5;
}

namespace {

template <class T>
std::size_t offsetIn(const Parameters& whole, const T& part) {
  return static_cast<std::size_t>(reinterpret_cast<const char*>(&part) -
                                  reinterpret_cast<const char*>(&whole));
}

class TableBuilder {
 public:
  explicit TableBuilder(const Parameters& proto) : proto_(proto) {}

  void add(const std::string& group, std::string_view field, const double& at, double lo, double hi,
           std::string_view unit, std::string_view text) {
    table_.push_back(
        {group + "." + std::string(field), offsetIn(proto_, at), at, lo, hi, unit, text});
  }
  std::vector<ParameterInfo> take() { return std::move(table_); }

 private:
  const Parameters& proto_;
  std::vector<ParameterInfo> table_;
};

#define CABWRIGHT_ADD(name, value, lo, hi, unit, text) \
  table.add(group, #name, part.name, lo, hi, unit, text);

#define CABWRIGHT_GROUP(fn, Type, LIST) \
  void fn(TableBuilder& table, const std::string& group, const Type& part) { LIST(CABWRIGHT_ADD) }
CABWRIGHT_GROUP(addEngine, EngineParameters, CABWRIGHT_ENGINE)
CABWRIGHT_GROUP(addStarter, StarterParameters, CABWRIGHT_STARTER)
CABWRIGHT_GROUP(addGenerator, GeneratorParameters, CABWRIGHT_GENERATOR)
CABWRIGHT_GROUP(addCoupling, CouplingParameters, CABWRIGHT_COUPLING)
CABWRIGHT_GROUP(addFreewheel, FreewheelParameters, CABWRIGHT_FREEWHEEL)
CABWRIGHT_GROUP(addBand, BandParameters, CABWRIGHT_BAND)
CABWRIGHT_GROUP(addClutch, ClutchParameters, CABWRIGHT_CLUTCH)
CABWRIGHT_GROUP(addGearbox, GearboxParameters, CABWRIGHT_GEARBOX)
CABWRIGHT_GROUP(addFinalDrive, FinalDriveParameters, CABWRIGHT_FINAL_DRIVE)
CABWRIGHT_GROUP(addCompressor, CompressorParameters, CABWRIGHT_COMPRESSOR)
CABWRIGHT_GROUP(addExhauster, ExhausterParameters, CABWRIGHT_EXHAUSTER)
CABWRIGHT_GROUP(addThrottleMotor, ThrottleMotorParameters, CABWRIGHT_THROTTLE_MOTOR)
CABWRIGHT_GROUP(addAir, AirParameters, CABWRIGHT_AIR)
CABWRIGHT_GROUP(addVacuum, VacuumParameters, CABWRIGHT_VACUUM)
CABWRIGHT_GROUP(addDriversValve, DriversValveParameters, CABWRIGHT_DRIVERS_VALVE)
CABWRIGHT_GROUP(addSafetyDevice, SafetyDeviceParameters, CABWRIGHT_SAFETY_DEVICE)
CABWRIGHT_GROUP(addCylinder, CylinderParameters, CABWRIGHT_CYLINDER)
CABWRIGHT_GROUP(addHandbrake, HandbrakeParameters, CABWRIGHT_HANDBRAKE)
CABWRIGHT_GROUP(addBattery, BatteryParameters, CABWRIGHT_BATTERY)
CABWRIGHT_GROUP(addTrain, TrainParameters, CABWRIGHT_TRAIN)
#undef CABWRIGHT_GROUP
#undef CABWRIGHT_ADD

std::vector<ParameterInfo> makeTable() {
  static const Parameters proto;
  TableBuilder table(proto);
  for (std::size_t n = 0; n < kLines; ++n) {
    const std::string no = std::to_string(n + 1);
    addEngine(table, "engine" + no, proto.engine[n]);
    addStarter(table, "starter" + no, proto.starter[n]);
    addGenerator(table, "generator" + no, proto.generator[n]);
    addCoupling(table, "coupling" + no, proto.coupling[n]);
    addFreewheel(table, "freewheel" + no, proto.freewheel[n]);
    addGearbox(table, "gearbox" + no, proto.gearbox[n]);
    for (std::size_t b = 0; b < kBands; ++b) {
      addBand(table, "gearbox" + no + ".band" + std::to_string(b + 1), proto.gearbox[n].band[b]);
    }
    addClutch(table, "gearbox" + no + ".clutch", proto.gearbox[n].clutch);
    addFinalDrive(table, "final_drive" + no, proto.final_drive[n]);
    addCompressor(table, "compressor" + no, proto.compressor[n]);
    addExhauster(table, "exhauster" + no, proto.exhauster[n]);
    addThrottleMotor(table, "throttle_motor" + no, proto.throttle_motor[n]);
  }
  addAir(table, "air", proto.air);
  addVacuum(table, "vacuum", proto.vacuum);
  for (std::size_t c = 0; c < kCabs; ++c) {
    const std::string no = std::to_string(c + 1);
    addDriversValve(table, "drivers_valve" + no, proto.drivers_valve[c]);
    addSafetyDevice(table, "safety_device" + no, proto.safety_device[c]);
    addHandbrake(table, "handbrake" + no, proto.handbrake[c]);
  }
  for (std::size_t c = 0; c < kCylinders; ++c) {
    addCylinder(table, "brake_cylinder" + std::to_string(c + 1), proto.brake_cylinder[c]);
  }
  addBattery(table, "battery", proto.battery);
  addTrain(table, "train", proto.train);
  return table.take();
}

std::string sentence(const std::string& name, double value, const std::string& what) {
  return name + " = " + shortNumber(value) + ": " + what;
}

bool isWhole(double v) { return v == std::floor(v); }

void findTeethFaults(const GearboxParameters& g, const std::string& box,
                     std::vector<std::string>& faults) {
  const double sun[3] = {g.sun_1, g.sun_2, g.sun_3};
  const double annulus[3] = {g.annulus_1, g.annulus_2, g.annulus_3};
  for (int k = 0; k < 3; ++k) {
    const std::string set = box + ": set " + std::to_string(k + 1) + ": ";
    if (!isWhole(sun[k]) || !isWhole(annulus[k]) || !isWhole(g.planets)) {
      faults.push_back(set + "tooth and planet numbers must be whole");
      continue;
    }
    const double planet = (annulus[k] - sun[k]) / 2.0;
    if (!(planet >= 8.0) || !isWhole(planet)) {
      faults.push_back(set + "sun " + shortNumber(sun[k]) + " and annulus " +
                       shortNumber(annulus[k]) + " leave no whole planet of 8 teeth or more");
    }
    if (!isWhole((annulus[k] + sun[k]) / g.planets)) {
      faults.push_back(set + "sun + annulus = " + shortNumber(annulus[k] + sun[k]) +
                       " is not divisible by " + shortNumber(g.planets) +
                       " planets: it cannot be assembled");
    }
  }
}

void requireAbove(std::vector<std::string>& faults, const std::string& upper_name, double upper,
                  const std::string& lower_name, double lower) {
  if (!(upper > lower)) {
    faults.push_back(
        sentence(upper_name, upper, "must be above " + lower_name + " = " + shortNumber(lower)));
  }
}

}  // namespace

double& ParameterInfo::of(Parameters& p) const {
  return *reinterpret_cast<double*>(reinterpret_cast<char*>(&p) + offset);
}
double ParameterInfo::of(const Parameters& p) const {
  return *reinterpret_cast<const double*>(reinterpret_cast<const char*>(&p) + offset);
}

const std::vector<ParameterInfo>& parameterTable() {
  static const std::vector<ParameterInfo> table = makeTable();
  return table;
}

std::vector<const ParameterInfo*> findParameters(std::string_view written) {
  return findNamed(parameterTable(), written);
}

std::vector<std::string> findParameterFaults(const Parameters& p) {
  std::vector<std::string> faults;
  for (const ParameterInfo& info : parameterTable()) {
    const double v = info.of(p);
    if (!(v >= info.lowest && v <= info.highest)) {
      faults.push_back(sentence(info.name, v,
                                "must lie between " + shortNumber(info.lowest) + " and " +
                                    shortNumber(info.highest) + " " + std::string(info.unit)));
    }
  }
  for (std::size_t n = 0; n < kLines; ++n) {
    const std::string no = std::to_string(n + 1);
    findTeethFaults(p.gearbox[n], "gearbox" + no, faults);
    for (std::size_t b = 0; b < kBands; ++b) {
      const std::string band = "gearbox" + no + ".band" + std::to_string(b + 1);
      requireAbove(faults, band + ".spring_end_psi", p.gearbox[n].band[b].spring_end_psi,
                   "spring_start_psi", p.gearbox[n].band[b].spring_start_psi);
    }
    requireAbove(faults, "gearbox" + no + ".clutch.spring_end_psi",
                 p.gearbox[n].clutch.spring_end_psi, "spring_start_psi",
                 p.gearbox[n].clutch.spring_start_psi);
    const EngineParameters& e = p.engine[n];
    requireAbove(faults, "engine" + no + ".thermostat_full_c", e.thermostat_full_c,
                 "thermostat_open_c", e.thermostat_open_c);
    requireAbove(faults, "engine" + no + ".oil_covered", e.oil_covered, "oil_bare", e.oil_bare);
    const FinalDriveParameters& f = p.final_drive[n];
    requireAbove(faults, "final_drive" + no + ".full_psi", f.full_psi, "move_psi", f.move_psi);
    requireAbove(faults, "final_drive" + no + ".travel_m", f.travel_m, "overlap_m", f.overlap_m);
    if (!isWhole(f.teeth) || !(f.window_deg < 360.0 / f.teeth)) {
      faults.push_back("final_drive" + no +
                       ": teeth must be whole and the window smaller than their pitch");
    }
    requireAbove(faults, "generator" + no + ".full_rpm", p.generator[n].full_rpm, "cut_in_rpm",
                 p.generator[n].cut_in_rpm);
    const ThrottleMotorParameters& m = p.throttle_motor[n];
    requireAbove(faults, "throttle_motor" + no + ".spring_end_psi", m.spring_end_psi,
                 "spring_start_psi", m.spring_start_psi);
  }
  requireAbove(faults, "air.cut_out_psi", p.air.cut_out_psi, "cut_in_psi", p.air.cut_in_psi);
  requireAbove(faults, "air.relief_psi", p.air.relief_psi, "cut_out_psi", p.air.cut_out_psi);
  requireAbove(faults, "air.horn_full_psi", p.air.horn_full_psi, "horn_speaks_psi",
               p.air.horn_speaks_psi);
  requireAbove(faults, "battery.full_v", p.battery.full_v, "empty_v", p.battery.empty_v);
  for (std::size_t c = 0; c < kCylinders; ++c) {
    const CylinderParameters& y = p.brake_cylinder[c];
    if (!(y.driven_1 + y.driven_2 <= 1.0)) {
      faults.push_back("brake_cylinder" + std::to_string(c + 1) +
                       ": driven_1 + driven_2 must not exceed 1");
    }
    requireAbove(faults, "brake_cylinder" + std::to_string(c + 1) + ".blocks", y.blocks + 1e-9,
                 "blocks_missing", y.blocks_missing);
  }
  return faults;
}

}  // namespace cabwright::plant
