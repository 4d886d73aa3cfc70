// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/unit_parameters.h"

#include "plant/named_numbers.h"

namespace cabwright::unit {

namespace {

class TableBuilder {
 public:
  explicit TableBuilder(const UnitParameters& proto) : proto_(proto) {}

  void add(const std::string& group, std::string_view field, const double& at, double lo, double hi,
           std::string_view unit, std::string_view text) {
    const auto offset = static_cast<std::size_t>(reinterpret_cast<const char*>(&at) -
                                                 reinterpret_cast<const char*>(&proto_));
    table_.push_back({group + "." + std::string(field), offset, at, lo, hi, unit, text});
  }
  std::vector<UnitParameterInfo> take() { return std::move(table_); }

 private:
  const UnitParameters& proto_;
  std::vector<UnitParameterInfo> table_;
};

#define CABWRIGHT_ADD(name, value, lo, hi, unit, text) \
  table.add(group, #name, part.name, lo, hi, unit, text);
#define CABWRIGHT_GROUP(fn, Type, LIST) \
  void fn(TableBuilder& table, const std::string& group, const Type& part) { LIST(CABWRIGHT_ADD) }
CABWRIGHT_GROUP(addStopSolenoid, StopSolenoidParameters, CABWRIGHT_STOP_SOLENOID)
CABWRIGHT_GROUP(addStartRelay, StartRelayParameters, CABWRIGHT_START_RELAY)
CABWRIGHT_GROUP(addThrottleValve, ThrottleValveParameters, CABWRIGHT_THROTTLE_VALVE)
CABWRIGHT_GROUP(addGearValve, GearValveParameters, CABWRIGHT_GEAR_VALVE)
CABWRIGHT_GROUP(addDirectionValve, DirectionValveParameters, CABWRIGHT_DIRECTION_VALVE)
CABWRIGHT_GROUP(addMeshSwitch, MeshSwitchParameters, CABWRIGHT_MESH_SWITCH)
CABWRIGHT_GROUP(addOilSwitch, OilSwitchParameters, CABWRIGHT_OIL_SWITCH)
CABWRIGHT_GROUP(addRunningContact, RunningContactParameters, CABWRIGHT_RUNNING_CONTACT)
CABWRIGHT_GROUP(addFire, FireParameters, CABWRIGHT_FIRE)
CABWRIGHT_GROUP(addDesk, DeskParameters, CABWRIGHT_DESK)
CABWRIGHT_GROUP(addRelay, RelayParameters, CABWRIGHT_RELAY)
CABWRIGHT_GROUP(addAirSwitch, AirSwitchParameters, CABWRIGHT_AIR_SWITCH)
CABWRIGHT_GROUP(addChargeRelay, ChargeRelayParameters, CABWRIGHT_CHARGE_RELAY)
CABWRIGHT_GROUP(addLoads, LoadParameters, CABWRIGHT_LOADS)
CABWRIGHT_GROUP(addHands, HandParameters, CABWRIGHT_HANDS)
#undef CABWRIGHT_GROUP
#undef CABWRIGHT_ADD

std::vector<UnitParameterInfo> makeTable() {
  static const UnitParameters proto;
  TableBuilder table(proto);
  for (std::size_t n = 0; n < plant::kLines; ++n) {
    const std::string no = std::to_string(n + 1);
    addStopSolenoid(table, "stop_solenoid" + no, proto.stop_solenoid[n]);
    addStartRelay(table, "start_relay" + no, proto.start_relay[n]);
    addThrottleValve(table, "throttle_valve" + no, proto.throttle_valve[n]);
    addGearValve(table, "gear_valve" + no, proto.gear_valve[n]);
    addDirectionValve(table, "direction_valve" + no, proto.direction_valve[n]);
    addMeshSwitch(table, "mesh_switch" + no, proto.mesh_switch[n]);
    addOilSwitch(table, "oil_switch" + no, proto.oil_switch[n]);
    addRunningContact(table, "running_contact" + no, proto.running_contact[n]);
    addFire(table, "fire" + no, proto.fire[n]);
  }
  for (std::size_t c = 0; c < plant::kCabs; ++c) {
    addDesk(table, "desk" + std::to_string(c + 1), proto.desk[c]);
  }
  addRelay(table, "relay", proto.relay);
  addAirSwitch(table, "air_switch", proto.air_switch);
  addChargeRelay(table, "charge_relay", proto.charge_relay);
  addLoads(table, "load", proto.load);
  addHands(table, "hands", proto.hands);
  return table.take();
}

}  // namespace

double& UnitParameterInfo::of(UnitParameters& p) const {
  return *reinterpret_cast<double*>(reinterpret_cast<char*>(&p) + offset);
}
double UnitParameterInfo::of(const UnitParameters& p) const {
  return *reinterpret_cast<const double*>(reinterpret_cast<const char*>(&p) + offset);
}

const std::vector<UnitParameterInfo>& unitParameterTable() {
  static const std::vector<UnitParameterInfo> table = makeTable();
  return table;
}

std::vector<const UnitParameterInfo*> findUnitParameters(std::string_view written) {
  return plant::findNamed(unitParameterTable(), written);
}

}  // namespace cabwright::unit
