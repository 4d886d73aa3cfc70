// SPDX-License-Identifier: GPL-3.0-or-later
// How the catalogue is written: one row for all faults of a kind. '#' in a text stands for the
// number of the drive, engine or cab, '@' for a second number (band, gear, brake cylinder), '&' for
// the side of the car that brake cylinder '@' is on.
#pragma once

#include <string_view>
#include <vector>

#include "fault/fault.h"

namespace cabwright::fault {

struct RowNumber {
  std::string_view parameter;
  How how;
  double (*value)(double size);
};
struct RowAct {
  std::string_view act, undo;
};

struct FaultRow {
  std::string_view name;
  std::string_view where;
  std::string_view text;
  std::string_view symptom;
  std::string_view decision;
  SizeRange size{};
  bool gradual = false;
  std::vector<RowNumber> numbers{};
  std::vector<RowAct> acts{};
};

/// Rows of one system, and how many of each there are.
struct FaultSystem {
  std::string_view name;
  int hashes = 1;  ///< '#' runs from 1 to this (1 without a '#' in the name)
  int ats = 1;     ///< '@' likewise
  std::vector<FaultRow> rows;
};

[[nodiscard]] std::vector<FaultSystem> driveFaults();
[[nodiscard]] std::vector<FaultSystem> gearFaults();
[[nodiscard]] std::vector<FaultSystem> engineFaults();
[[nodiscard]] std::vector<FaultSystem> startingFaults();
[[nodiscard]] std::vector<FaultSystem> airFaults();
[[nodiscard]] std::vector<FaultSystem> vacuumFaults();
[[nodiscard]] std::vector<FaultSystem> runningFaults();
[[nodiscard]] std::vector<FaultSystem> deviceFaults();
[[nodiscard]] std::vector<FaultSystem> cabFaults();
/// Made of the table of instruments: every lamp blown or lit, every gauge stuck, off, slow, dead.
[[nodiscard]] std::vector<FaultSpec> instrumentFaults();

// What sizes come to.
[[nodiscard]] inline double one(double) { return 1.0; }
[[nodiscard]] inline double minusOne(double) { return -1.0; }
[[nodiscard]] inline double none(double) { return 0.0; }
[[nodiscard]] inline double itself(double size) { return size; }
[[nodiscard]] inline double lessItself(double size) { return -size; }
/// What is left when so many percent are lost.
[[nodiscard]] inline double leftOf(double percent) { return 1.0 - percent / 100.0; }
[[nodiscard]] inline double percent(double size) { return size / 100.0; }
/// Sonic conductance (ISO 6358), dm3/(s bar), of a well rounded hole of so many mm: choked flow of
/// air at 20 C through its whole area, 0.199 dm3/(s bar) for each mm2 (ideal nozzle).
[[nodiscard]] inline double hole(double mm) { return 0.1563 * mm * mm; }

}  // namespace cabwright::fault
