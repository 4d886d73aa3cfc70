// SPDX-License-Identifier: GPL-3.0-or-later
// What the gauges showed when a line fell: a few small dials, lamps and values. Those that the rule
// looks at; where it looks at none, air, vacuum and the lamps of the leading cab.
#pragma once

#include <QString>
#include <vector>

#include "drawing/dial.h"
#include "drawing/lamp.h"
#include "marking/verdict.h"

namespace cabwright::after {

struct EvidenceDial {
  QString name, value;
  drawing::DialScale scale;
  std::vector<drawing::DialNeedle> needles;
};
struct EvidenceLamp {
  QString word;
  drawing::LampColor color = drawing::LampColor::kWhite;
  bool lit = false;
};
struct EvidenceValue {
  QString name, value;
};
struct Evidence {
  int cab = 1;  ///< whose gauges they are
  std::vector<EvidenceDial> dials;
  std::vector<EvidenceLamp> lamps;
  std::vector<EvidenceValue> values;
};

/// `frame`: all gauges at that moment.
[[nodiscard]] Evidence gatherEvidence(const marking::Verdict& verdict, const unit::Frame& frame,
                                      int leading_cab);

/// Top left at `at`; returns how high it is, u.
double paintEvidence(drawing::Pen& pen, QPointF at, double width, const Evidence& evidence);

/// In words, for a screen reader.
[[nodiscard]] QString toWords(const Evidence& evidence);

}  // namespace cabwright::after
