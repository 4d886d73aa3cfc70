// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/moment_row.h"

#include <QCoreApplication>
#include <QPainter>
#include <array>
#include <cmath>

#include "after/finished_run.h"
#include "after/words.h"
#include "drawing/dial.h"
#include "drawing/lamp.h"

namespace cabwright::review_room {

using drawing::DialScale;
using drawing::Tone;
using unit::Signal;

namespace {

constexpr double kDialR = 42, kDialY = 56, kWordsY = 128, kCapHalf = 0.36 * drawing::kText;
constexpr double kDialPitch = 136, kLampPitch = 136, kLeverRoom = 330;

struct Gauge {
  DialScale scale;
  std::array<Signal, 2> signals;  // both the same: one needle
  const char* name;
};

// Too small for figures: marks and needles alone, the values stand below.
const std::array<Gauge, 4>& gauges() {
  static const std::array<Gauge, 4> all{{{{.low = 0, .high = 30, .major = 5, .minor = 5},
                                          {Signal::kCab1TrainPipe, Signal::kCab1ReleasePipe},
                                          QT_TRANSLATE_NOOP("MomentRow", "Vacuum")},
                                         {{.low = 0, .high = 120, .major = 20, .minor = 20},
                                          {Signal::kCab1Air, Signal::kCab1Air},
                                          QT_TRANSLATE_NOOP("MomentRow", "Air")},
                                         {{.low = 0, .high = 2000, .major = 500, .minor = 500},
                                          {Signal::kCab1Rpm1, Signal::kCab1Rpm2},
                                          QT_TRANSLATE_NOOP("MomentRow", "Engines")},
                                         {{.low = 0, .high = 80, .major = 10, .minor = 10},
                                          {Signal::kCab1Speed, Signal::kCab1Speed},
                                          QT_TRANSLATE_NOOP("MomentRow", "Speed")}}};
  return all;
}

struct LampOf {
  Signal signal;
  drawing::LampColor color;
  const char* word;
};

constexpr std::array<LampOf, 6> kLamps{
    {{Signal::kCab1LampDevice, drawing::LampColor::kGreen,
      QT_TRANSLATE_NOOP("MomentRow", "SAFETY")},
     {Signal::kCab1LampAir, drawing::LampColor::kGreen, QT_TRANSLATE_NOOP("MomentRow", "AIR")},
     {Signal::kCab1LampEngine1, drawing::LampColor::kGreen,
      QT_TRANSLATE_NOOP("MomentRow", "ENGINE 1")},
     {Signal::kCab1LampEngine2, drawing::LampColor::kGreen,
      QT_TRANSLATE_NOOP("MomentRow", "ENGINE 2")},
     {Signal::kCab1LampCharge, drawing::LampColor::kYellow,
      QT_TRANSLATE_NOOP("MomentRow", "CHARGE")},
     {Signal::kCab1LampFire, drawing::LampColor::kRed, QT_TRANSLATE_NOOP("MomentRow", "FIRE")}}};

struct LeverOf {
  Signal signal;
  const char* name;
};
constexpr std::array<LeverOf, 4> kLevers{
    {{Signal::kCab1Brake, QT_TRANSLATE_NOOP("MomentRow", "Brake")},
     {Signal::kCab1Throttle, QT_TRANSLATE_NOOP("MomentRow", "Throttle")},
     {Signal::kCab1Reverser, QT_TRANSLATE_NOOP("MomentRow", "Reverser")},
     {Signal::kCab1Gear, QT_TRANSLATE_NOOP("MomentRow", "Gear")}}};

// From the list above, which the catalogue knows by another name than that of the class.
QString listed(const char* words) { return QCoreApplication::translate("MomentRow", words); }

QString number(double value) { return QString::number(std::lround(value)); }

}  // namespace

MomentRow::MomentRow(const after::SheetLook& look, QWidget* parent) : QWidget(parent), look_(look) {
  setAccessibleName(tr("Gauges at this moment"));
}

void MomentRow::showFrame(const unit::Frame& frame, int cab) {
  frame_ = frame;
  cab_ = cab;
  setAccessibleDescription(summary());
  update();
}

double MomentRow::value(Signal of_cab1) const { return frame_[after::ofCab(of_cab1, cab_)]; }

QString MomentRow::summary() const {
  QStringList words;
  for (const Gauge& gauge : gauges())
    for (std::size_t k = 0; k < (gauge.signals[0] == gauge.signals[1] ? 1U : 2U); ++k) {
      const Signal signal = after::ofCab(gauge.signals[k], cab_);
      words << tr("%1: %2").arg(after::signalName(signal),
                                after::valueText(signal, frame_[signal]));
    }
  for (const LampOf& lamp : kLamps)
    words << tr("%1: %2").arg(listed(lamp.word), value(lamp.signal) > 0.5 ? tr("lit") : tr("dark"));
  for (const LeverOf& lever : kLevers) {
    const Signal signal = after::ofCab(lever.signal, cab_);
    words << tr("%1: %2").arg(listed(lever.name), after::valueText(signal, frame_[signal]));
  }
  return words.join(QLatin1String(", "));
}

void MomentRow::paintDials(drawing::Pen& pen, double pitch) const {
  double x = pitch / 2;
  for (const Gauge& gauge : gauges()) {
    const double first = value(gauge.signals[0]), second = value(gauge.signals[1]);
    const bool two = gauge.signals[0] != gauge.signals[1];
    DialScale bare = gauge.scale;
    const QPointF centre(x, kDialY);
    pen.circle(centre, kDialR, {drawing::kNorm, Tone::kInk}, Tone::kFace);
    for (double v = bare.low; v <= bare.high + 1e-9; v += bare.major) {
      const double at = drawing::dialAngle(bare, v);
      pen.line(drawing::pointAt(centre, kDialR * 0.78, at),
               drawing::pointAt(centre, kDialR * 0.93, at), {drawing::kThin, Tone::kInk});
    }
    const auto needle = [&](double v, bool hollow) {
      const double at = drawing::dialAngle(bare, v);
      const QPointF tip = drawing::pointAt(centre, kDialR * 0.84, at);
      pen.line(drawing::pointAt(centre, kDialR * 0.22, at + 180), tip,
               {hollow ? drawing::kThin : drawing::kBold, Tone::kInk,
                hollow ? std::vector<double>{4, 3} : std::vector<double>{}, false});
    };
    if (two) needle(second, true);
    needle(first, false);
    pen.circle(centre, 4, drawing::kNoLine, Tone::kInk);
    QString words = number(first);
    if (two && number(second) != words) words += QLatin1String(", ") + number(second);
    const QString name = listed(gauge.name) + QLatin1Char(' ');
    const double wide = drawing::textWidth(name) + drawing::textWidth(words, drawing::kText, true);
    const double left = x - wide / 2;
    const double after_name = left + pen.text({left, kWordsY}, name, {.tone = Tone::kInk2});
    pen.text({after_name, kWordsY}, words, {.bold = true});
    x += pitch;
  }
}

void MomentRow::paintLamps(drawing::Pen& pen, double x) const {
  for (std::size_t k = 0; k < kLamps.size(); ++k) {
    const LampOf& lamp = kLamps[k];
    const bool lit = value(lamp.signal) > 0.5;
    const std::size_t column = k / 3, row = k % 3;
    const QPointF at(x + kLampPitch * static_cast<double>(column) + 18,
                     26 + 42 * static_cast<double>(row));
    drawing::paintLamp(pen, at, {.color = lamp.color, .lit = lit}, {}, 11);
    pen.text(at + QPointF(26, kCapHalf), listed(lamp.word),
             {.bold = lit, .tone = lit ? Tone::kInk : Tone::kInk2});
  }
}

void MomentRow::paintLevers(drawing::Pen& pen, double x, double right) const {
  double y = 26 + kCapHalf;
  for (const LeverOf& lever : kLevers) {
    const Signal signal = after::ofCab(lever.signal, cab_);
    const double name = pen.text({x, y}, listed(lever.name), {.tone = Tone::kInk2});
    const double at = x + std::max(100.0, name + 12);
    pen.text({at, y},
             drawing::elideText(after::valueText(signal, frame_[signal]), right - at,
                                drawing::kText, true),
             {.bold = true});
    y += 30;
  }
}

void MomentRow::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), drawing::colorOf(look_.theme, Tone::kPaper));
  painter.scale(look_.scale, look_.scale);
  drawing::Pen pen(painter, look_.theme);
  const double room = width() / look_.scale;
  // In a narrow pane, which is a high one, lamps and levers go below the gauges.
  const bool is_narrow = room < 4 * kDialPitch + 2 * kLampPitch + 200;
  if (is_narrow) {
    paintDials(pen, std::min(kDialPitch * 1.3, room / 4));
    pen.push({0, kHeight + 10}, 0);
    paintLamps(pen, 14);
    paintLevers(pen, 2 * kLampPitch + 34, room - 4);
    pen.pop();
    return;
  }
  const double pitch =
      std::max(kDialPitch, std::min(kDialPitch * 1.3, (room - 2 * kLampPitch - kLeverRoom) / 4));
  paintDials(pen, pitch);
  const double lamps = 4 * pitch + 14;
  paintLamps(pen, lamps);
  paintLevers(pen, lamps + 2 * kLampPitch + 20, room - 4);
}

}  // namespace cabwright::review_room
