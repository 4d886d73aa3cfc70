// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/truth_table.h"

#include <QtGlobal>
#include <vector>

namespace cabwright::desk {

using unit::Instrument;
using unit::Signal;

namespace {

using Table = std::vector<TruthSource>;

void addPlain(Table& table, System system, std::initializer_list<Signal> signals) {
  for (const Signal signal : signals) table.push_back({system, signal, nullptr, nullptr, {}});
}

void addAir(Table& table) {
  using enum Signal;
  table.push_back({System::kAir,
                   kTrueAir,
                   nullptr,
                   nullptr,
                   {Instrument::kCab1Air, Instrument::kCab2Air, std::nullopt}});
  addPlain(
      table, System::kAir,
      {kTrueMain, kTrueCompressor1, kTrueCompressor2, kTrueDevice1, kTrueDevice2, kTrueDeviceVent});
}

void addVacuum(Table& table) {
  using enum Signal;
  table.push_back({System::kVacuum,
                   kTrueTrainPipe,
                   nullptr,
                   nullptr,
                   {Instrument::kCab1TrainPipe, Instrument::kCab2TrainPipe, std::nullopt}});
  table.push_back({System::kVacuum,
                   kTrueTrainPipe,
                   QT_TRANSLATE_NOOP("TruthView", "Vacuum in the train pipe, guard's gauges"),
                   nullptr,
                   {Instrument::kCab1GuardsGauge, Instrument::kCab2GuardsGauge, std::nullopt}});
  table.push_back({System::kVacuum,
                   kTrueReleasePipe,
                   nullptr,
                   nullptr,
                   {Instrument::kCab1ReleasePipe, Instrument::kCab2ReleasePipe, std::nullopt}});
  addPlain(table, System::kVacuum,
           {kTrueChamber1, kTrueChamber2, kTrueChamber3, kTrueChamber4, kEngine1Hum, kEngine2Hum});
}

// Gauges of engine 1 and their fellows of engine 2.
struct EngineGauges {
  Instrument cab1, cab2, oil, fuel, coolant;
};
constexpr std::array<EngineGauges, 2> kEngineGauges{
    {{Instrument::kCab1Rpm1, Instrument::kCab2Rpm1, Instrument::kEngine1OilGauge,
      Instrument::kEngine1FuelGauge, Instrument::kEngine1CoolantGauge},
     {Instrument::kCab1Rpm2, Instrument::kCab2Rpm2, Instrument::kEngine2OilGauge,
      Instrument::kEngine2FuelGauge, Instrument::kEngine2CoolantGauge}}};

void addEngine(Table& table, std::size_t n) {
  using enum Signal;
  const auto of = [n](Signal first, Signal second) { return n == 0 ? first : second; };
  const EngineGauges& gauges = kEngineGauges[n];
  const auto spot = [&](Signal signal, Instrument gauge) {
    table.push_back(
        {System::kEngines, signal, nullptr, nullptr, {std::nullopt, std::nullopt, gauge}});
  };
  table.push_back({System::kEngines,
                   of(kTrueRpm1, kTrueRpm2),
                   nullptr,
                   nullptr,
                   {gauges.cab1, gauges.cab2, std::nullopt}});
  spot(of(kTrueOilPressure1, kTrueOilPressure2), gauges.oil);
  spot(of(kTrueCoolant1, kTrueCoolant2), gauges.coolant);
  table.push_back({System::kEngines,
                   std::nullopt,
                   n == 0 ? QT_TRANSLATE_NOOP("TruthView", "Fuel in the tank, engine 1")
                          : QT_TRANSLATE_NOOP("TruthView", "Fuel in the tank, engine 2"),
                   "%",
                   {std::nullopt, std::nullopt, gauges.fuel}});
  addPlain(
      table, System::kEngines,
      {of(kTrueRunning1, kTrueRunning2), of(kTrueFired1, kTrueFired2), of(kTrueRack1, kTrueRack2),
       of(kTrueLever1, kTrueLever2), of(kTrueOil1, kTrueOil2),
       of(kTrueCoolantLevel1, kTrueCoolantLevel2), of(kTrueTrapped1, kTrueTrapped2),
       of(kTrueLatch1, kTrueLatch2), of(kTrueProtection1, kTrueProtection2),
       of(kTrueStarts1, kTrueStarts2), of(kTrueCrankS1, kTrueCrankS2), of(kTrueRest1, kTrueRest2)});
}

void addDrive(Table& table, std::size_t n) {
  using enum Signal;
  const auto of = [n](Signal first, Signal second) { return n == 0 ? first : second; };
  addPlain(
      table, System::kDrive,
      {of(kTrueCoupling1, kTrueCoupling2), of(kTrueCouplingC1, kTrueCouplingC2),
       of(kTrueInput1, kTrueInput2), of(kTrueEngaged1, kTrueEngaged2), of(kTrueGear11, kTrueGear12),
       of(kTrueGear21, kTrueGear22), of(kTrueGear31, kTrueGear32), of(kTrueGear41, kTrueGear42),
       of(kTrueDrum11, kTrueDrum12), of(kTrueDrum21, kTrueDrum22), of(kTrueDrum31, kTrueDrum32),
       of(kTrueDrumC1, kTrueDrumC2), of(kTrueFreewheel1, kTrueFreewheel2),
       of(kTrueOutput1, kTrueOutput2), of(kTrueMeshed1, kTrueMeshed2), of(kTrueDog1, kTrueDog2),
       of(kTrueSlip1, kTrueSlip2)});
}

void addBrakeAndElectrics(Table& table) {
  using enum Signal;
  addPlain(table, System::kBrake,
           {kTrueDifference, kTrueBlocks1, kTrueBlocks2, kTrueBlocks3, kTrueBlocks4, kTrueBrake});
  table.push_back({System::kElectrics,
                   kTrueBusV,
                   nullptr,
                   nullptr,
                   {std::nullopt, std::nullopt, Instrument::kCupboardVolts}});
  addPlain(table, System::kElectrics,
           {kTrueCharge, kTrueBatteryA, kTrueRelay, kTrueGenerator1, kTrueGenerator2, kTrueStarter1,
            kTrueStarterA1, kTrueStarterC1, kTrueStarter2, kTrueStarterA2, kTrueStarterC2});
}

// Each desk has its own circuits, so each lamp has a truth of its own.
void addCab(Table& table) {
  struct Lamp {
    const char* of_cab1;
    const char* of_cab2;
    Instrument cab1;
  };
  static constexpr std::array<Lamp, 6> kLamps{
      {{QT_TRANSLATE_NOOP("TruthView", "Lamp of engine 1, cab 1"),
        QT_TRANSLATE_NOOP("TruthView", "Lamp of engine 1, cab 2"), Instrument::kCab1LampEngine1},
       {QT_TRANSLATE_NOOP("TruthView", "Lamp of engine 2, cab 1"),
        QT_TRANSLATE_NOOP("TruthView", "Lamp of engine 2, cab 2"), Instrument::kCab1LampEngine2},
       {QT_TRANSLATE_NOOP("TruthView", "Air lamp, cab 1"),
        QT_TRANSLATE_NOOP("TruthView", "Air lamp, cab 2"), Instrument::kCab1LampAir},
       {QT_TRANSLATE_NOOP("TruthView", "Lamp of the safety device, cab 1"),
        QT_TRANSLATE_NOOP("TruthView", "Lamp of the safety device, cab 2"),
        Instrument::kCab1LampDevice},
       {QT_TRANSLATE_NOOP("TruthView", "Charge lamp, cab 1"),
        QT_TRANSLATE_NOOP("TruthView", "Charge lamp, cab 2"), Instrument::kCab1LampCharge},
       {QT_TRANSLATE_NOOP("TruthView", "Fire lamp, cab 1"),
        QT_TRANSLATE_NOOP("TruthView", "Fire lamp, cab 2"), Instrument::kCab1LampFire}}};
  addPlain(table, System::kCab, {Signal::kTrueControlledBy});
  for (const Lamp& lamp : kLamps)
    table.push_back({System::kCab,
                     std::nullopt,
                     lamp.of_cab1,
                     nullptr,
                     {lamp.cab1, std::nullopt, std::nullopt}});
  for (const Lamp& lamp : kLamps)
    table.push_back({System::kCab,
                     std::nullopt,
                     lamp.of_cab2,
                     nullptr,
                     {std::nullopt, unit::instrumentOfCab(lamp.cab1, 1), std::nullopt}});
}

void addTrain(Table& table) {
  using enum Signal;
  table.push_back({System::kTrain,
                   kTrueAbsSpeed,
                   nullptr,
                   nullptr,
                   {Instrument::kCab1Speed, Instrument::kCab2Speed, std::nullopt}});
  addPlain(table, System::kTrain,
           {kTrueAcceleration, kTrueTractive, kTruePosition, kTrueTravelled, kTrueGradient,
            kTrueStanding, kTrueRolledBack, kTrueLimit, kTrueMark, kTrueInPlatform, kTrueDoorOpen,
            kTrueProtected, kTruePerson, kTrueFire, kTrueValid});
}

Table makeTable() {
  Table table;
  addAir(table);
  addVacuum(table);
  for (const std::size_t n : {std::size_t{0}, std::size_t{1}}) addEngine(table, n);
  for (const std::size_t n : {std::size_t{0}, std::size_t{1}}) addDrive(table, n);
  addBrakeAndElectrics(table);
  addCab(table);
  addTrain(table);
  return table;
}

bool isFed(const unit::InterlockResult& result, Instrument lamp) {
  for (std::size_t cab = 0; cab < plant::kCabs; ++cab) {
    const auto is = [&](Instrument of_cab1) {
      return unit::instrumentOfCab(of_cab1, static_cast<int>(cab)) == lamp;
    };
    if (is(Instrument::kCab1LampEngine1)) return result.lamp_engine[cab][0];
    if (is(Instrument::kCab1LampEngine2)) return result.lamp_engine[cab][1];
    if (is(Instrument::kCab1LampAir)) return result.lamp_air[cab];
    if (is(Instrument::kCab1LampDevice)) return result.lamp_device[cab];
    if (is(Instrument::kCab1LampCharge)) return result.lamp_charge[cab];
    if (is(Instrument::kCab1LampFire)) return result.lamp_fire[cab];
  }
  return false;
}

double fuelPercent(const session::LiveRun& run, bool second) {
  const Signal fuel = second ? Signal::kTrueFuel2 : Signal::kTrueFuel1;
  return 100.0 * static_cast<double>(run.frame()[fuel]) / run.unit().parameters().hands.tank_kg;
}

}  // namespace

std::span<const TruthSource> truthTable() {
  static const Table table = makeTable();
  return table;
}

double readTruth(const TruthSource& source, const session::LiveRun& run) {
  if (source.signal) return static_cast<double>(run.frame()[*source.signal]);
  for (const auto& gauge : source.gauges) {
    if (!gauge) continue;
    if (*gauge == Instrument::kEngine1FuelGauge) return fuelPercent(run, false);
    if (*gauge == Instrument::kEngine2FuelGauge) return fuelPercent(run, true);
    return isFed(run.unit().world().result, *gauge) ? 1.0 : 0.0;
  }
  return 0;
}

}  // namespace cabwright::desk
