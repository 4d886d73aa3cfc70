// SPDX-License-Identifier: GPL-3.0-or-later
// How the trainee is drawn for the desk.
#include <QPainter>
#include <cmath>

#include "cab/names.h"
#include "cab/thing_part.h"
#include "desk/person_view.h"
#include "drawing/furniture.h"
#include "drawing/hand.h"
#include "drawing/objects.h"
#include "drawing/plan.h"

namespace cabwright::desk {

using drawing::Anchor;
using drawing::Tone;

namespace {

constexpr double kSide = 16, kPlanHigh = 124, kHandScale = 0.86, kThingPitch = 74;

QString agoText(int seconds) {
  return seconds < 100 ? PersonView::tr("%1 s ago").arg(seconds)
                       : PersonView::tr("%1 min ago").arg(seconds / 60);
}

QString codeText(int code) {
  QStringList groups;
  for (const QChar digit : QString::number(code)) groups << digit;
  return groups.join(QLatin1Char('-'));
}

}  // namespace

void PersonView::paintSheet(drawing::Pen& pen, QSizeF sheet) {
  const double wide = sheet.width(), left = kSide + leftWidth() + 28;
  if (run() == nullptr) {
    pen.text({kSide, 44}, tr("No run goes on."), {.tone = Tone::kInk2});
    return;
  }
  double y = paintPlace(pen, 8);
  y = paintHands(pen, y);
  y = paintLook(pen, y);
  y = paintCarried(pen, y);
  paintHeard(pen, y);
  drawing::paintCaption(
      pen, {left, 38}, wide - left - kSide, tr("Notebook and what was so"),
      tr("found %1, missed %2, false alarms %3").arg(found_).arg(missed_).arg(false_alarms_));
  const double below = open_->y() / look().scale - 14;
  drawing::paintCaption(pen, {left, below}, wide - left - kSide, tr("Defects not found yet"),
                        QString::number(waiting_));
}

double PersonView::paintPlace(drawing::Pen& pen, double y) const {
  const double w = leftWidth();
  pen.text({kSide, y + 34}, drawing::elideText(placeText(), w, drawing::kTitle),
           {.size = drawing::kTitle});
  pen.text({kSide, y + 62}, drawing::elideText(cab::textOf(state_.place), w),
           {.tone = Tone::kInk2});
  const QRectF box(kSide, y + 78, w, kPlanHigh);
  std::vector<drawing::PlanPlace> places;
  for (int k = 0; k < drawing::kPlanPlaces; ++k) {
    const auto place = static_cast<unit::Place>(k);
    const int open = openAt(place);
    places.push_back({{},
                      open > 0 ? QString::number(open) : QString(),
                      drawing::planPosition(box, k),
                      place == state_.place && !state_.walking,
                      open > 0,
                      state_.walking && place == state_.heading});
  }
  drawing::PlanLook plan;
  plan.moving = state_.moving;
  plan.forward_is_right = state_.forward_is_right;
  drawing::paintPlan(pen, box, plan, places);
  double below = box.bottom() + 2;
  for (const QString& line :
       drawing::wrapText(tr("A figure counts the defects at a place that are not found yet."), w))
    pen.text({kSide, below += 24}, line, {.tone = Tone::kInk2});
  return below + 18;
}

double PersonView::paintHands(drawing::Pen& pen, double y) const {
  const double half = leftWidth() / 2;
  pen.line({kSide, y}, {kSide + leftWidth(), y}, {drawing::kHairline, Tone::kRule});
  for (int side = 0; side < 2; ++side) {
    const cab::Hold& hold = state_.hands[static_cast<std::size_t>(side)];
    const double x = kSide + side * half;
    drawing::paintHand(pen, {x + 46, y + 78}, side == 1, cab::gripOf(hold), kHandScale);
    const double at = x + 102, room = half - 110;
    pen.text({at, y + 48}, side == 0 ? tr("Left hand") : tr("Right hand"), {.tone = Tone::kInk2});
    const QString name = hold.on ? cab::nameOf(*hold.on) : tr("free");
    pen.text({at, y + 76}, drawing::elideText(name, room, drawing::kName, hold.on.has_value()),
             {.size = drawing::kName,
              .bold = hold.on.has_value(),
              .tone = hold.on ? Tone::kInk : Tone::kInk2});
    const QStringList how = drawing::wrapText(cab::howText(hold), room);
    for (qsizetype k = 0; k < std::min<qsizetype>(2, how.size()); ++k)
      pen.text({at, y + 102 + 24.0 * static_cast<double>(k)}, how[k], {.tone = Tone::kInk2});
  }
  return y + 152;
}

double PersonView::paintLook(drawing::Pen& pen, double y) const {
  const double w = leftWidth();
  pen.line({kSide, y}, {kSide + w, y}, {drawing::kHairline, Tone::kRule});
  const double head = pen.text({kSide, y + 28}, tr("Looks"), {.tone = Tone::kInk2});
  pen.text({kSide + head + 10, y + 28},
           drawing::elideText(lookText(), w - head - 150, drawing::kName, true),
           {.size = drawing::kName, .bold = state_.looking.has_value()});
  if (!state_.looking) return y + 46;
  const double share = state_.needed_tenths > 0
                           ? std::min(1.0, 1.0 * state_.looked_tenths / state_.needed_tenths)
                           : 1.0;
  pen.text({kSide + w, y + 28},
           share < 1 ? tr("%1 of %2 s")
                           .arg(state_.looked_tenths / 10.0, 0, 'f', 1)
                           .arg(state_.needed_tenths / 10.0, 0, 'f', 1)
                     : tr("seen"),
           {.anchor = Anchor::kEnd, .tone = Tone::kInk2});
  pen.line({kSide, y + 38}, {kSide + w, y + 38}, {drawing::kHairline, Tone::kHair});
  pen.line({kSide, y + 38}, {kSide + w * share, y + 38}, {drawing::kBold, Tone::kHand});
  const QStringList lines = drawing::wrapText(state_.shows, w);
  for (qsizetype k = 0; k < std::min<qsizetype>(2, lines.size()); ++k)
    pen.text({kSide, y + 62 + 24.0 * static_cast<double>(k)}, lines[k],
             {.tone = state_.shows_defect ? Tone::kBad : Tone::kInk});
  return y + 78 + 24.0 * static_cast<double>(std::min<qsizetype>(2, lines.size()) - 1);
}

// What stands before the rows has as much room as the longest of it.
double PersonView::namesWide() {
  double wide = 78;
  for (const QString& name : {tr("Carries"), tr("Heard"), tr("Bell"), tr("Sounds")})
    wide = std::max(wide, drawing::textWidth(name));
  return wide + 12;
}

double PersonView::paintCarried(drawing::Pen& pen, double y) const {
  const double w = leftWidth();
  pen.line({kSide, y}, {kSide + w, y}, {drawing::kHairline, Tone::kRule});
  pen.text({kSide, y + 44}, tr("Carries"), {.tone = Tone::kInk2});
  const double names = namesWide();
  if (state_.carried.empty()) {
    pen.text({kSide + names, y + 44}, tr("nothing"), {.tone = Tone::kInk2});
    return y + 70;
  }
  const double pitch =
      std::min(kThingPitch, (w - names) / static_cast<double>(state_.carried.size()));
  double x = kSide + names + pitch / 2;
  for (const unit::Object object : state_.carried) {
    drawing::paintLooseThing(pen, {x, y + 37}, cab::drawingOf(object), true);
    x += pitch;
  }
  return y + 74;
}

void PersonView::paintHeard(drawing::Pen& pen, double y) const {
  const double w = leftWidth(), bottom = sizeInSheet().height() - 10;
  pen.line({kSide, y}, {kSide + w, y}, {drawing::kHairline, Tone::kRule});
  const auto row = [&](const QString& name, const QString& words, bool bold) {
    if (y + 30 > bottom) return;
    y += 28;
    const double at = kSide + namesWide();
    pen.text({kSide, y}, name, {.tone = Tone::kInk2});
    pen.text({at, y}, drawing::elideText(words, kSide + w - at, drawing::kText, bold),
             {.bold = bold});
  };
  if (!state_.words.isEmpty())
    row(tr("Heard"), tr("%1 (%2)").arg(state_.words, agoText(state_.words_age_s)), true);
  if (state_.bell_code != 0)
    row(tr("Bell"), tr("%1 (%2)").arg(codeText(state_.bell_code), agoText(state_.bell_age_s)),
        true);
  for (qsizetype k = 0; k < state_.sounds.size(); ++k)
    row(k == 0 ? tr("Sounds") : QString(), state_.sounds[k], false);
  if (state_.sounds.isEmpty()) row(tr("Sounds"), tr("nothing"), false);
}

}  // namespace cabwright::desk
