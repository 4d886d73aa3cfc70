// SPDX-License-Identifier: GPL-3.0-or-later
// The right block of the sheet: where you are, what you carry, and what is said about the run.
#pragma once

#include "cab/part.h"
#include "cab/shortcuts.h"
#include "drawing/plan.h"

namespace cabwright::cab {

/// The unit from above with a balloon for each place, and where one stands.
class PlanPart : public Part {
  Q_OBJECT
 public:
  PlanPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts, QWidget* parent);
  /// Guided: the next step is there; empty: nowhere.
  void setPointed(std::optional<unit::Place> place);
  /// The box of the plan itself; above it stand title and what the unit does.
  void setPlan(const QRectF& box) { plan_ = box; }
  [[nodiscard]] const QRectF& plan() const { return plan_; }

  void refresh() override;
  [[nodiscard]] PartRole role() const override;

 protected:
  void paint(drawing::Pen& pen) const override;

 private:
  [[nodiscard]] QString whatItDoes() const;
  const Shortcuts& shortcuts_;
  QRectF plan_;
  std::optional<unit::Place> pointed_;
  struct Shown {
    unit::Place place{};
    bool walking = false, moving = false;
    QString does;
    bool operator==(const Shown&) const = default;
  } shown_;
};

/// One balloon of the plan: a click or its key walks there.
class BalloonPart : public Part {
  Q_OBJECT
 public:
  BalloonPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts, unit::Place place,
              QWidget* parent);
  [[nodiscard]] unit::Place place() const { return place_; }
  [[nodiscard]] PartRole role() const override;
  bool activate() override;

 protected:
  void paint(drawing::Pen& pen) const override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  bool event(QEvent* event) override;

 private:
  const Shortcuts& shortcuts_;
  unit::Place place_;
};

/// A loose thing: with you, in the desk, or lying here. A click asks what to do with it.
class CarriedPart : public Part {
  Q_OBJECT
 public:
  CarriedPart(Seat& seat, const SheetStyle& style, unit::Object object, QWidget* parent);
  [[nodiscard]] unit::Object object() const { return object_; }
  /// In the desk of the place where one stands.
  [[nodiscard]] bool isInserted() const { return where() == Where::kInserted; }
  void refresh() override;
  [[nodiscard]] PartRole role() const override;
  bool activate() override;

 Q_SIGNALS:
  void asked(cabwright::unit::Object object);

 protected:
  void paint(drawing::Pen& pen) const override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  enum class Where : std::uint8_t { kElsewhere, kCarried, kInserted, kLying };
  [[nodiscard]] Where where() const;
  unit::Object object_;
  Where shown_ = Where::kElsewhere;
};

/// Exercise, time, how it is taken and how time passes.
class TitlePart : public Part {
  Q_OBJECT
 public:
  TitlePart(Seat& seat, const SheetStyle& style, QWidget* parent);
  void refresh() override;
  [[nodiscard]] PartRole role() const override;

 protected:
  void paint(drawing::Pen& pen) const override;

 private:
  [[nodiscard]] QString clock() const;
  [[nodiscard]] QString pace() const;
  QString shown_clock_, shown_pace_;
};

/// "Guided", "Practice", "Assessment".
[[nodiscard]] QString modeText(scenario::Mode mode);
/// Time of a run: "0:12:05".
[[nodiscard]] QString clockText(std::int64_t tick);

}  // namespace cabwright::cab
