// SPDX-License-Identifier: GPL-3.0-or-later
// A strip over a made-up run: curves that differ everywhere, one peak of a tenth of a second, and
// three broken lines, one of which fell twice.
#pragma once

#include <gtest/gtest.h>

#include <QApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>
#include <cmath>
#include <memory>

#include "after/strip_chart.h"

namespace cabwright::after {

inline session::SignalHistory makeHistory(std::int64_t last_tick) {
  using unit::Signal;
  session::SignalHistory history(session::chartSignals());
  unit::Frame frame;
  for (std::int64_t t = 0; t <= last_tick; t += 10) {
    const double x = static_cast<double>(t) / 1000.0;
    frame.tick = t;
    frame[Signal::kCab1Air] = static_cast<float>(50 + 40 * std::sin(x));
    frame[Signal::kCab1TrainPipe] = static_cast<float>(std::fmod(x, 21.0));
    frame[Signal::kCab1Rpm1] = t == last_tick / 20 * 10 ? 1900.0F : 400.0F;
    frame[Signal::kPlace] = static_cast<float>(1 + (t / 3000) % 5);
    frame[Signal::kHandLeft] = static_cast<float>((t / 700) % 9);
    frame[Signal::kCab1LampAir] = (t / 5000) % 2 == 1 ? 1.0F : 0.0F;
    history.seeFrame(frame);
  }
  return history;
}

inline marking::SheetLine brokenLine(int number, std::int64_t tick, marking::RuleClass c) {
  marking::SheetLine line;
  line.number = number;
  line.rule = static_cast<std::size_t>(number);
  line.title = "Title " + std::to_string(number);
  line.rule_class = c;
  line.verdict.outcome = marking::Outcome::kBroken;
  line.verdict.judged_as = c;
  line.verdict.tick = tick;
  line.verdict.times_exercised = 1;
  return line;
}

class StripRig : public testing::Test {
 protected:
  void show(std::int64_t last_tick = 60000) {
    using marking::RuleClass;
    history_ = makeHistory(last_tick);
    run_.history = &history_;
    run_.sheet.head.last_tick = last_tick;
    run_.sheet.lines = {brokenLine(1, 31230, RuleClass::kCritical),
                        brokenLine(2, 4000, RuleClass::kSerious),
                        brokenLine(3, 31230, RuleClass::kTechnique)};
    run_.marks = {{4000, 2, false, false}, {9000, 2, false, false}, {12000, 2, true, false}};
    look_.scale = 0.72;
    strip_ = std::make_unique<StripChart>(look_);
    strip_->setRun(run_);
    strip_->resize(760, 520);
    strip_->show();
    QApplication::processEvents();
  }
  void press(int key, Qt::KeyboardModifiers with = Qt::NoModifier) {
    QKeyEvent event(QEvent::KeyPress, key, with);
    QApplication::sendEvent(strip_.get(), &event);
  }
  void mouse(QEvent::Type type, double x, double y, bool down) {
    QMouseEvent event(type, QPointF(x, y), strip_->mapToGlobal(QPointF(x, y)),
                      type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton,
                      down ? Qt::LeftButton : Qt::NoButton, Qt::NoModifier);
    QApplication::sendEvent(strip_.get(), &event);
  }
  void turnWheel(double x, int notches) {
    QWheelEvent event(QPointF(x, 300), strip_->mapToGlobal(QPointF(x, 300)), {}, {0, notches * 120},
                      Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(strip_.get(), &event);
  }
  int& watchChosen() {
    QObject::connect(strip_.get(), &StripChart::flagChosen, strip_.get(),
                     [this](int line) { chosen_ = line; });
    return chosen_;
  }

  session::SignalHistory history_{session::chartSignals()};
  FinishedRun run_;
  SheetLook look_;
  std::unique_ptr<StripChart> strip_;
  int chosen_ = 0;
};

}  // namespace cabwright::after
