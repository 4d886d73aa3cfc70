// SPDX-License-Identifier: GPL-3.0-or-later
// What all things that a hand moves have in common: the control, its key, the hand on it, why it
// would not move, focus, wheel and keys.
#pragma once

#include <QElapsedTimer>

#include "cab/part.h"
#include "cab/shortcuts.h"

namespace cabwright::cab {

class ControlPart : public Part {
  Q_OBJECT
 public:
  /// `command`: the command whose key brings a hand here; empty: none.
  ControlPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts,
              unit::Control control, QString command, QWidget* parent);

  [[nodiscard]] unit::Control control() const { return control_; }
  [[nodiscard]] const QString& command() const { return command_; }
  /// Without its name under it, where the thing beside it bears that name already.
  void setNamed(bool named) { named_ = named; }
  /// Its key went down or came up again.
  virtual void useKey(bool down);
  /// No key is down any more: the window has lost the keyboard.
  void forgetKey();

  void refresh() override;
  [[nodiscard]] PartRole role() const override;
  bool step(int by) override;
  bool activate() override;

 protected:
  [[nodiscard]] const unit::ControlInfo& info() const { return unit::controlInfo(control_); }
  [[nodiscard]] double value() const { return seat().value(control_); }
  [[nodiscard]] bool isMomentary() const { return info().spring == unit::ControlSpring::kSprings; }
  [[nodiscard]] QString keyText() const;
  /// The name to be written under it; empty when it is not to be.
  [[nodiscard]] QString writtenName() const;
  /// "L", "R" or empty.
  [[nodiscard]] QString handLetter() const;
  /// Why it did not move when it was last tried.
  [[nodiscard]] QString refusal() const { return seat().refusalOf(control_); }
  /// The next position that way; of continuous ones a step on the scale.
  [[nodiscard]] virtual double nextValue(int by) const;
  /// A finger goes on what springs back.
  virtual void press();

  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void keyReleaseEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  const Shortcuts& shortcuts_;
  unit::Control control_;
  QString command_;
  int wheel_rest_ = 0;
  bool pressed_by_key_ = false, pressed_by_mouse_ = false, named_ = true;
  struct Shown {
    double value = -1e9;
    bool reachable = false;
    QString hand, refusal;
    bool operator==(const Shown&) const = default;
  } shown_;
};

}  // namespace cabwright::cab
