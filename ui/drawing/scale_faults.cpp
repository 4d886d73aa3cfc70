// SPDX-License-Identifier: GPL-3.0-or-later
// The rules a graduation has to keep.
#include <QCoreApplication>
#include <QtMath>
#include <cmath>

#include "drawing/dial.h"

namespace cabwright::drawing {
namespace {

constexpr double kSlack = 1e-6;
constexpr double kScaleDegrees = 270, kGapDegrees = 90;
constexpr double kMostMarksBetween = 9;

QString words(const char* text) { return QCoreApplication::translate("DialScale", text); }

bool isWhole(double n) { return std::abs(n - std::round(n)) < kSlack; }

double leading(double step) { return step / std::pow(10.0, std::floor(std::log10(step) + kSlack)); }

bool isOneTwoFive(double step) {
  if (step <= 0) return false;
  const double first = leading(step);
  for (double allowed : {1.0, 2.0, 5.0})
    if (std::abs(first - allowed) < kSlack) return true;
  return false;
}

bool isPowerOfTen(double n) { return n > 0 && std::abs(leading(n) - 1) < kSlack; }

bool isOnScale(const DialScale& scale, double value) {
  return value >= scale.low - kSlack && value <= scale.high + kSlack;
}

void checkStep(const QString& name, double step, std::vector<QString>& faults) {
  if (!isOneTwoFive(step))
    faults.push_back(
        words("The %1 step %2 is not 1, 2 or 5 times a power of ten.").arg(name).arg(step));
}

void checkMiddle(const DialScale& scale, std::vector<QString>& faults) {
  checkStep(words("middle"), scale.middle, faults);
  if (scale.middle <= scale.minor || scale.middle >= scale.major ||
      !isWhole(scale.middle / scale.minor) || !isWhole(scale.major / scale.middle))
    faults.push_back(
        words("Middle marks at %1 do not stand between the others.").arg(scale.middle));
}

void checkMarks(const DialScale& scale, std::vector<QString>& faults) {
  for (const RimMark& mark : scale.marks)
    if (!isOnScale(scale, mark.value))
      faults.push_back(words("The mark %1 is not on the scale.").arg(mark.value));
  for (const DialZone& zone : scale.zones)
    if (zone.from >= zone.to || !isOnScale(scale, zone.from) || !isOnScale(scale, zone.to))
      faults.push_back(
          words("The band from %1 to %2 is not on the scale.").arg(zone.from).arg(zone.to));
}

}  // namespace

std::vector<QString> findScaleFaults(const DialScale& scale) {
  std::vector<QString> faults;
  if (!(scale.high > scale.low)) faults.push_back(words("The scale does not rise."));
  if (!(scale.major > 0) || !(scale.minor > 0))
    faults.push_back(words("A step is not above zero."));
  if (!faults.empty()) return faults;

  checkStep(words("numbered"), scale.major, faults);
  checkStep(words("smallest"), scale.minor, faults);
  if (scale.middle != 0) checkMiddle(scale, faults);
  if (!isWhole(scale.major / scale.minor))
    faults.push_back(words("Numbered marks do not fall on the smallest ones."));
  if (scale.major / scale.minor - 1 > kMostMarksBetween + kSlack)
    faults.push_back(words("There are more than 9 marks between figures."));
  if (!isWhole(scale.low / scale.major) || !isWhole(scale.high / scale.major))
    faults.push_back(words("The scale does not begin and end with a figure."));
  if (kScaleDegrees * scale.major / (scale.high - scale.low) > kGapDegrees + kSlack)
    faults.push_back(words("The gap at 6 o'clock is less than one numbered interval."));
  if (!isPowerOfTen(scale.figure_divisor))
    faults.push_back(words("Figures are not divided by a power of ten."));
  checkMarks(scale, faults);
  return faults;
}

}  // namespace cabwright::drawing
