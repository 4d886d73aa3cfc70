// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanism/paint_mechanism.h"

#include <algorithm>
#include <cmath>

#include "drawing/furniture.h"
#include "drawing/lamp.h"
#include "mechanism/words.h"

namespace cabwright::mechanism {

using drawing::Anchor;
using drawing::kThin;
using drawing::Pen;
using drawing::Tone;

void paintLampPath(Pen& pen, const MechanismState& state) {
  constexpr double kY = 886;
  drawing::paintCaption(pen, {40, 826}, 1180,
                        Words::tr("Electric path to the lamp AIR, cab %1").arg(state.cab + 1));
  pen.rect({62, kY - 20, 28, 40}, {}, Tone::kFace);
  for (int k = 0; k < 4; ++k) {
    const double half = k % 2 == 0 ? 8 : 5;
    pen.line({76 - half, kY - 10 + 7 * k}, {76 + half, kY - 10 + 7 * k}, {k % 2 == 0 ? 3.0 : 1.5});
  }
  pen.text({76, kY + 40}, Words::tr("Battery"), {.anchor = Anchor::kMiddle});
  pen.text({76, kY + 65}, Words::tr("%1 V").arg(state.battery_v, 0, 'f', 0),
           {.anchor = Anchor::kMiddle, .tone = Tone::kInk2});
  bool live = true;
  double from = 90;
  const double step = state.path.empty() ? 0 : 990.0 / static_cast<double>(state.path.size());
  const auto wire = [&](double a, double b) {
    if (live) {
      pen.line({a, kY}, {b, kY}, {drawing::kHeavy});
    } else {
      pen.line({a, kY}, {b, kY}, {kThin, Tone::kRule, {6, 4}, false});
    }
  };
  for (std::size_t k = 0; k < state.path.size(); ++k) {
    const PathContact& contact = state.path[k];
    const double x = 60 + step * (static_cast<double>(k) + 1);
    wire(from, x - 20);
    pen.circle({x - 17, kY}, 4, {}, Tone::kPaper);
    pen.circle({x + 23, kY}, 4, {}, Tone::kPaper);
    const Tone tone = contact.made ? Tone::kInk : Tone::kDoubt;
    pen.line({x - 13.5, kY - 1}, {x + (contact.made ? 20 : 16), kY - (contact.made ? 4 : 22)},
             {drawing::kBold, tone, {}, true});
    pen.text({x, kY + 40}, contact.name, {.anchor = Anchor::kMiddle});
    pen.text({x, kY + 65}, contact.words,
             {.anchor = Anchor::kMiddle,
              .bold = !contact.made,
              .tone = contact.made ? Tone::kInk2 : Tone::kDoubt});
    live = live && contact.made;
    from = x + 27;
  }
  wire(from, 1140);
  drawing::paintLamp(pen, {1160, kY}, {.color = drawing::LampColor::kGreen, .lit = state.lamp_air},
                     Words::tr("AIR"), 17);
  pen.polyline({{{1184, kY}, {1212, kY}, {1212, kY + 16}}}, {kThin, Tone::kRule});
  for (int i = 0; i < 3; ++i)
    pen.line({1204.0 + 3 * i, kY + 16 + 5 * i}, {1220.0 - 3 * i, kY + 16 + 5 * i},
             {drawing::kNorm, Tone::kRule});
}

// Right block: torques and temperatures of the line drawn, and the other line in small.
void paintBeside(Pen& pen, const MechanismState& state, const MechanismLook& look) {
  constexpr double kX = 1244, kW = 316;
  const auto here = static_cast<std::size_t>(look.line);
  const LineState& line = state.line[here];
  const LineState& other = state.line[1 - here];
  pen.text({kX, 62}, Words::tr("Mechanism"), {.size = drawing::kTitle});
  pen.text({kX, 92}, Words::tr("Drive line %1: %2").arg(look.line + 1).arg(gearWords(line)),
           {.tone = Tone::kInk2});
  double y = 112;
  const auto rows = [&](const QString& head, const std::vector<std::array<QString, 2>>& table) {
    const QRectF box(kX, y, kW, 60 + 31.0 * static_cast<double>(table.size()));
    pen.rect(box, {}, Tone::kFace, 3);
    pen.text({kX + 18, y + 34}, head, {.size = drawing::kName, .bold = true, .on = Tone::kFace});
    pen.line({kX + 1, y + 48}, {kX + kW - 1, y + 48}, {kThin, Tone::kRule});
    double row = y + 76;
    for (const auto& [name, value] : table) {
      pen.text({kX + 18, row}, name, {.tone = Tone::kInk2, .on = Tone::kFace});
      pen.text({kX + kW - 18, row}, value,
               {.anchor = Anchor::kEnd, .bold = true, .on = Tone::kFace});
      row += 31;
    }
    y = box.bottom() + 24;
  };
  const auto number = [](double v, const QString& with_unit) {
    return with_unit.arg(v, 0, 'f', 0);
  };
  rows(Words::tr("Torque and heat"),
       {{Words::tr("coupling"), number(line.coupling_nm, Words::tr("%1 N m"))},
        {Words::tr("cardan shaft"), number(line.output_nm, Words::tr("%1 N m"))},
        {Words::tr("coupling oil"), number(line.coupling_c, Words::tr("%1 °C"))},
        {Words::tr("gearbox oil"), number(line.box_c, Words::tr("%1 °C"))},
        {Words::tr("hottest drum"), number(line.hottest_c, Words::tr("%1 °C"))}});
  rows(Words::tr("Direct clutch"),
       {{clutchWords(line), number(line.gear_psi[3], Words::tr("%1 psi"))}});
  rows(Words::tr("The other drive line, %1").arg(2 - look.line),
       {{Words::tr("engine"), number(other.engine, Words::tr("%1 rev/min"))},
        {Words::tr("input"), number(other.input, Words::tr("%1 rev/min"))},
        {Words::tr("output"), number(other.output, Words::tr("%1 rev/min"))},
        {Words::tr("coupling"), number(other.coupling_nm, Words::tr("%1 N m"))},
        {Words::tr("gear"), gearWords(other)},
        {Words::tr("dogs"),
         other.dog == plant::DogState::kMeshed ? Words::tr("in mesh") : Words::tr("not in mesh")}});
}

void paintMechanism(Pen& pen, const QRectF& frame, const MechanismState& state,
                    const MechanismTurn& turn, const MechanismLook& look) {
  const double k = std::min(frame.width() / kSheetWidth, frame.height() / kSheetHeight);
  const QPointF corner = frame.center() - QPointF(kSheetWidth, kSheetHeight) * k / 2;
  const LineState& line = state.line[static_cast<std::size_t>(look.line)];
  pen.push(corner, 0, k, k);
  drawing::paintCaption(pen, {40, 54}, 1180,
                        Words::tr("Drive line of engine %1").arg(look.line + 1));
  paintDriveSection(pen, state, line, turn);
  paintSpeedStrip(pen, line);
  paintCrossSections(pen, state, line, turn, look);
  paintDogs(pen, state, line);
  paintLampPath(pen, state);
  paintBeside(pen, state, look);
  pen.pop();
}

}  // namespace cabwright::mechanism
