// SPDX-License-Identifier: GPL-3.0-or-later
// The spots of the unit on which faults are put: every fault of the catalogue lives at one of them.
#pragma once

#include <QPointF>
#include <QString>
#include <QStringList>
#include <cstddef>
#include <string_view>
#include <vector>

#include "fault/fault.h"

namespace cabwright::desk {

struct Spot {
  std::string_view id;  ///< "gearbox2"
  const char* name;     ///< English, for translation: "Gearbox %1"
  int number;           ///< for the place in the name; 0: none
  QPointF at;           ///< on the drawing of the unit (draw_unit.h), u
};

[[nodiscard]] const std::vector<Spot>& spotTable();
[[nodiscard]] std::size_t findSpot(std::string_view id);  ///< spotTable().size(): there is none
/// "Gearbox 2".
[[nodiscard]] QString nameOf(const Spot& spot);

/// Where a fault lives: a place in spotTable(), of which it has exactly one.
[[nodiscard]] std::size_t spotOf(const fault::FaultSpec& spec);
/// In the order of the catalogue.
[[nodiscard]] std::vector<const fault::FaultSpec*> faultsAt(std::size_t spot);
/// Those in whose name, place, text or symptom all words stand, whatever their case; first those
/// that do without the symptom.
[[nodiscard]] std::vector<const fault::FaultSpec*> findFaults(const QString& words);

/// Texts of the catalogue in the reader's language.
[[nodiscard]] QString faultWords(std::string_view english);
/// "Gearbox 2, band of gear 3".
[[nodiscard]] QString whereText(const fault::FaultSpec& spec);
/// "The band has worn".
[[nodiscard]] QString textOf(const fault::FaultSpec& spec);
/// "3 mm", "40 % lost"; empty where there is no size.
[[nodiscard]] QString sizeText(const fault::FaultSpec& spec, double size);

}  // namespace cabwright::desk
