// SPDX-License-Identifier: GPL-3.0-or-later
// Somebody in a cold unit who is brought to the moment of a mistake quickly, by the seat; what
// follows is done with the mouse and read off what the parts show.
#pragma once

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "cab/show_parts.h"
#include "driver.h"

namespace cabwright::tests {

class Trainee {
 public:
  explicit Trainee(scenario::Mode mode = scenario::Mode::kPractice) {
    desk.begin("cold-preparation", mode);
  }

  /// Through the seat, without events: on the way to the moment.
  void act(const char* verb, const char* object, const char* argument = "") {
    const cab::Answer answer = desk.seat().act(verb, object, argument);
    EXPECT_TRUE(answer.accepted) << verb << ' ' << object << ": " << answer.perceived.toStdString();
    desk.settle();
  }
  void go(const char* place) { act("go", place, "skip"); }
  void collect() {
    for (const char* thing : {"brake_handle", "reversing_lever", "control_key", "door_key"})
      act("take", thing);
  }
  /// In cab 1 with everything in its place; the engines dead.
  void makeDeskAlive() {
    collect();
    go("cab1");
    act("insert", "control_key", "cab1");
    act("set", "cab1.key", "on");
    act("insert", "brake_handle", "cab1");
    act("insert", "reversing_lever", "cab1");
  }
  /// Started at its side and left at fast idle.
  void startFromTheGround(int number) {
    const std::string engine = "engine" + std::to_string(number);
    go(engine.c_str());
    act("set", (engine + ".switch").c_str(), "ground");
    act("set", (engine + ".hand_throttle").c_str(), "full");
    act("hold", (engine + ".start").c_str());
    const auto note = number == 1 ? unit::Signal::kEngine1Note : unit::Signal::kEngine2Note;
    for (int k = 0; k < 140 && desk.value(note) < 330; ++k) desk.pass(0.1);
    desk.pass(1.5);
    act("release", (engine + ".start").c_str());
    desk.pass(6);
    EXPECT_GT(desk.value(note), 500);
    act("set", (engine + ".hand_throttle").c_str(), "fast_idle");
    desk.pass(60);
    act("set", (engine + ".hand_throttle").c_str(), "home");
    act("set", (engine + ".switch").c_str(), "cab");
  }

  bool click(unit::Control c) { return desk.click(part(c)); }
  cab::ControlPart* part(unit::Control c) {
    return desk.find<cab::ControlPart>(unit::controlInfo(c).name);
  }
  /// Drags a lever; false: its knob cannot be got at.
  bool drag(unit::Control c, double to) {
    auto* lever = qobject_cast<cab::LeverPart*>(part(c));
    if (lever == nullptr) return false;
    const QPoint from = desk.onSheet(lever->knobAt(desk.seat().value(c)));
    if (desk.window().childAt(from) != lever) return false;
    desk.drag(from, desk.onSheet(lever->knobAt(to)));
    return true;
  }
  double value(unit::Control c) { return desk.seat().value(c); }

  /// What a needle stands at on the drawing; -1: there is no such gauge here.
  double needle(const QString& gauge, std::size_t which = 0) {
    for (auto* dial : desk.view().findChildren<cab::DialPart*>())
      if (dial->isVisible() && dial->role().name == gauge) return dial->needle(which);
    return -1;
  }
  std::string lamp(unit::Signal signal) {
    for (auto* lamp : desk.view().findChildren<cab::LampPart*>())
      if (lamp->isVisible() && lamp->lamp() == signal) return lamp->role().value.toStdString();
    return "not here";
  }
  std::string hand(int side) {
    auto* part = desk.find<cab::HandPart>(side == 0 ? QStringLiteral("hand.left")
                                                    : QStringLiteral("hand.right"));
    return part->role().value.toStdString();
  }
  std::string heard() {
    for (auto* part : desk.view().findChildren<cab::HeardPart*>())
      if (part->isVisible()) return part->role().value.toStdString();
    return {};
  }
  /// What the sheet says of a rule, once the run has been ended with the key.
  std::string verdict(const std::string& rule) {
    for (int k = 0; k < 2 && !desk.seat().isFinished(); ++k)  // of an assessment it is asked
      desk.key(Qt::Key_E, Qt::ControlModifier);
    EXPECT_TRUE(desk.seat().isFinished());
    EXPECT_FALSE(desk.sawModal());
    for (const marking::SheetLine& line : desk.seat().run().sheet().lines)
      if (line.id == rule) return line.verdictText();
    return "no such rule";
  }

  Desk desk;
};

}  // namespace cabwright::tests
