// SPDX-License-Identifier: GPL-3.0-or-later
// A part of a sheet: a dial, a lever, a thing to look at. It draws itself in the units and at the
// place of the sheet, takes mouse, wheel, keys and focus, and tells a screen reader what it is.
#pragma once

#include <QKeyEvent>
#include <QMouseEvent>
#include <QWidget>
#include <functional>
#include <vector>

#include "cab/seat.h"
#include "drawing/pen.h"
#include "drawing/sheet_frame.h"

namespace cabwright::cab {

/// What all parts of a sheet share; changes of it make everything draw anew.
struct SheetStyle {
  drawing::Theme theme = drawing::Theme::kDay;
  drawing::SheetFrame frame;
  bool reduced_motion = false;
  bool show_keys = true;  ///< key caps beside what they move
  /// Running text is so much larger than the sheet's own: the system's font is. 1 to 1.35.
  double reading = 1;
};

/// What a screen reader is told of a part.
struct PartRole {
  enum class Kind : std::uint8_t {
    kPicture,
    kGauge,
    kLamp,
    kLever,
    kButton,
    kSwitch,
    kThing,
    kText
  };
  Kind kind = Kind::kPicture;
  QString name = {};         ///< what it is called: "Brake"
  QString value = {};        ///< how it stands: "in lap", "21 inHg"
  QString description = {};  ///< what it is for, and how a hand or a key moves it
  /// Of levers and gauges: a number between two ends; empty range: none.
  double number = 0, low = 0, high = 0;
};

class Part : public QWidget {
  Q_OBJECT
 public:
  Part(Seat& seat, const SheetStyle& style, QWidget* parent);

  /// The part of the sheet it may draw on, u; with `hit`, only these pieces of it take the mouse
  /// and are drawn on: what lies between belongs to others.
  void setArea(const QRectF& area, const std::vector<QRectF>& hit = {});
  [[nodiscard]] const QRectF& area() const { return area_; }
  /// The window was resized or the theme changed.
  void restyle();

  /// Guided: the next step is here.
  void setPointed(bool pointed);
  [[nodiscard]] bool isPointed() const { return pointed_; }

  /// Looks at the frame and draws anew what is not as drawn.
  virtual void refresh() {}
  [[nodiscard]] virtual PartRole role() const = 0;
  /// One step up or down, as keys and screen readers ask for it. False: it has no steps.
  virtual bool step(int by) {
    Q_UNUSED(by)
    return false;
  }
  /// What Enter and Space and a screen reader's "press" do. False: nothing.
  virtual bool activate() { return false; }

 protected:
  /// Draws in sheet units at the place of the sheet.
  virtual void paint(drawing::Pen& pen) const = 0;

  void paintEvent(QPaintEvent* event) override;
  /// How the guide points here: corners round the part, unless it has a better way.
  virtual void paintPointer(drawing::Pen& pen) const;
  /// A bar under a name, `width` u wide: the way of parts that bear one.
  void paintPointerUnder(drawing::Pen& pen, QPointF name_middle, double width) const;
  [[nodiscard]] Seat& seat() const { return seat_; }
  [[nodiscard]] const SheetStyle& style() const { return style_; }
  /// Where a mouse event is, u of the sheet.
  [[nodiscard]] QPointF toSheet(QPointF widget_position) const;
  /// Tells a screen reader that the value is another.
  void announceValue();

 private:
  Seat& seat_;
  const SheetStyle& style_;
  QRectF area_;
  std::vector<QRectF> hit_;
  bool pointed_ = false;
};

}  // namespace cabwright::cab
