// SPDX-License-Identifier: GPL-3.0-or-later
// What shows something and is not moved by a hand: dials and lamps. Needles follow their signal
// with a short lag, as real ones do; what cannot be read from here is drawn pale.
#pragma once

#include <vector>

#include "cab/part.h"
#include "drawing/dial.h"
#include "drawing/lamp.h"

namespace cabwright::cab {

struct DialNeedleOf {
  unit::Signal signal{};
  drawing::NeedleKind kind = drawing::NeedleKind::kSolid;
  QString name;  ///< in the legend, where there are several
};

class DialPart : public Part {
  Q_OBJECT
 public:
  DialPart(Seat& seat, const SheetStyle& style, QPointF centre, double radius,
           drawing::DialScale scale, std::vector<DialNeedleOf> needles, QString name,
           QWidget* parent);
  /// Without its name under it, where the thing to look at bears that name already.
  void setNamed(bool named) { named_ = named; }
  /// A second line under the name ("x100 rev/min").
  void setUnder(const QString& words) { under_ = words; }

  void refresh() override;
  [[nodiscard]] PartRole role() const override;
  /// What the needle stands at on the drawing just now, for tests.
  [[nodiscard]] double needle(std::size_t which) const { return shown_[which]; }

 protected:
  void paint(drawing::Pen& pen) const override;
  void paintPointer(drawing::Pen& pen) const override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  QPointF centre_;
  double radius_;
  drawing::DialScale scale_;
  std::vector<DialNeedleOf> needles_;
  QString name_, under_;
  std::vector<double> shown_;
  std::int64_t shown_tick_ = -1;
  bool readable_ = true, named_ = true;
};

class LampPart : public Part {
  Q_OBJECT
 public:
  /// `brightness`: signal that says how brightly lit lamps burn here.
  LampPart(Seat& seat, const SheetStyle& style, unit::Signal lamp,
           std::optional<unit::Signal> brightness, drawing::LampColor color, QPointF centre,
           QString word, QWidget* parent);

  [[nodiscard]] unit::Signal lamp() const { return lamp_; }
  [[nodiscard]] QPointF centre() const { return centre_; }
  void refresh() override;
  [[nodiscard]] PartRole role() const override;
  bool activate() override;

 Q_SIGNALS:
  /// Somebody wants to know why it is as it is.
  void asked(cabwright::cab::LampPart* lamp);

 protected:
  void paint(drawing::Pen& pen) const override;
  void paintPointer(drawing::Pen& pen) const override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  unit::Signal lamp_;
  std::optional<unit::Signal> brightness_;
  drawing::LampColor color_;
  QPointF centre_;
  QString word_;
  bool lit_ = false, readable_ = true;
  double bright_ = 1;
};

}  // namespace cabwright::cab
