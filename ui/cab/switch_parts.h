// SPDX-License-Identifier: GPL-3.0-or-later
// Buttons, key switch, two-position switches and cocks, and the handbrake with its pawl.
#pragma once

#include "cab/control_part.h"
#include "drawing/button.h"

namespace cabwright::cab {

/// Pressed as long as a finger, a key or a mouse button is on it.
class ButtonPart : public ControlPart {
  Q_OBJECT
 public:
  ButtonPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts, unit::Control control,
             QString command, QPointF centre, drawing::ButtonSign sign, QWidget* parent);
  /// The word beside it, right of it; and where its key cap stands: below, or after the word.
  void setLabel(const QString& label) { label_ = label; }
  void setKeyBelow(bool below) { key_below_ = below; }
  /// Value it is pressed to, where a control has several (the horn's two tones).
  void setPressedValue(double value) { pressed_ = value; }
  /// An arc fills while it is held so long, s.
  void setHeldScale(double seconds) { held_scale_s_ = seconds; }

  void refresh() override;

 protected:
  void paint(drawing::Pen& pen) const override;
  void press() override;
  void paintPointer(drawing::Pen& pen) const override;

 private:
  QPointF centre_;
  drawing::ButtonSign sign_;
  QString label_;
  bool key_below_ = false;
  std::optional<double> pressed_;
  double held_scale_s_ = 0, held_s_ = 0;
  std::int64_t held_since_ = -1;
};

/// A switch with two words, or a cock in its pipe.
class TogglePart : public ControlPart {
  Q_OBJECT
 public:
  TogglePart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts, unit::Control control,
             QString command, QPointF centre, QWidget* parent);

 protected:
  void paint(drawing::Pen& pen) const override;

 private:
  QPointF centre_;
};

/// A turning switch with its positions round it; the control's key is a loose thing.
class KeySwitchPart : public ControlPart {
  Q_OBJECT
 public:
  /// `angles`: of the positions, in the order of the control's list.
  KeySwitchPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts,
                unit::Control control, QString command, QPointF centre, std::vector<double> angles,
                QWidget* parent);
  /// It needs a key to turn.
  void setNeedsKey(bool needs) { needs_key_ = needs; }
  void setName(const QString& name) { name_ = name; }
  void refresh() override;

 protected:
  void paint(drawing::Pen& pen) const override;
  void paintPointer(drawing::Pen& pen) const override;
  bool activate() override;

 private:
  [[nodiscard]] bool hasKey() const;
  QPointF centre_;
  std::vector<double> angles_;
  bool needs_key_ = false, had_key_ = false;
  QString name_;
};

/// The wheel: turned on or off by a click or the arrow keys, while a hand is on it.
class HandbrakePart : public ControlPart {
  Q_OBJECT
 public:
  HandbrakePart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts,
                unit::Control wheel, unit::Control pawl, QPointF centre, QWidget* parent);
  void useKey(bool down) override;
  bool step(int by) override;
  void refresh() override;

 protected:
  void paint(drawing::Pen& pen) const override;
  void paintPointer(drawing::Pen& pen) const override;
  bool activate() override;

 private:
  unit::Control pawl_;
  QPointF centre_;
  double pawl_shown_ = -1;
};

/// Its pawl: a small thing of its own to reach for.
class PawlPart : public ControlPart {
  Q_OBJECT
 public:
  PawlPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts, unit::Control pawl,
           QPointF at, QPointF words_at, QWidget* parent);

 protected:
  void paint(drawing::Pen& pen) const override;

 private:
  QPointF at_, words_at_;
};

/// The safety device: the throttle's handle held down, or let come up.
class DevicePart : public ControlPart {
  Q_OBJECT
 public:
  DevicePart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts, unit::Control device,
             QPointF centre, QWidget* parent);
  /// Held by one press, let go by the next: the hand stays on it meanwhile.
  void useKey(bool down) override;
  bool step(int by) override;

 protected:
  void paint(drawing::Pen& pen) const override;
  void paintPointer(drawing::Pen& pen) const override;
  bool activate() override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QPointF centre_;
};

}  // namespace cabwright::cab
