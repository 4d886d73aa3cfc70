// SPDX-License-Identifier: GPL-3.0-or-later
// The hand that draws every sheet: lines, arcs, hatching and words in sheet units and tones, on any
// paint device (widget, picture, printed page).
//
// Units are sheet units (u); the painter brings the scale. Angles are clock angles in degrees: 0 at
// 12 o'clock, clockwise positive. Lines are never thinner than one device pixel.
#pragma once

#include <QBrush>
#include <QPainter>
#include <QPainterPath>
#include <QPolygonF>
#include <QString>
#include <vector>

#include "drawing/face.h"
#include "drawing/ink.h"

namespace cabwright::drawing {

/// Point at clock angle `degrees` and distance `r`.
[[nodiscard]] QPointF pointAt(QPointF centre, double r, double degrees);

/// How a line looks.
struct Stroke {
  double width = kNorm;
  Tone tone = Tone::kInk;
  std::vector<double> dash = {};  ///< lengths in u, as drawn and left out by turns; empty: solid
  bool round_cap = false;
};
/// A line along which nothing is drawn.
inline const Stroke kNoLine{0, Tone::kNone, {}, false};

enum class Anchor : std::uint8_t { kStart, kMiddle, kEnd };

/// How a word looks. `on` is what it stands on: for the halo, and for whoever checks the contrast.
struct Words {
  double size = kText;
  Anchor anchor = Anchor::kStart;
  bool bold = false;
  bool italic = false;
  Tone tone = Tone::kInk;
  Tone on = Tone::kPaper;
  double halo = 0;  ///< width of a rim in the tone of `on`
};

/// One word as it was set, for tests of clipping, overlap and contrast: box in device pixels.
struct SetWords {
  QRectF box;
  QString text;
  double size_px = 0;  ///< of the type, device pixels
  Tone tone = Tone::kInk, on = Tone::kPaper;
  bool halo = false;  ///< lines may pass behind it
};

/// Width of a word in u, the same on every device.
[[nodiscard]] double textWidth(const QString& text, double size = kText, bool bold = false,
                               bool italic = false);
/// Lines of at most `width` u; a word that is longer is parted at its soft hyphens (U+00AD), which
/// are not seen otherwise, or stands alone.
[[nodiscard]] QStringList wrapText(const QString& text, double width, double size = kText,
                                   bool bold = false);
/// Cuts off what does not fit, with an ellipsis.
[[nodiscard]] QString elideText(const QString& text, double width, double size = kText,
                                bool bold = false);

class Pen {
 public:
  /// The painter must be active and outlive the pen. Turns antialiasing on.
  Pen(QPainter& painter, Theme theme);

  [[nodiscard]] Theme theme() const { return theme_; }
  [[nodiscard]] QColor color(Tone tone) const { return colorOf(theme_, tone); }
  [[nodiscard]] QPainter& painter() { return painter_; }
  /// Where words that are set are noted down; nullptr: nowhere.
  void noteWords(std::vector<SetWords>* into) { noted_ = into; }
  /// Words are noted but not painted: what is then seen are the lines, for tests of what runs
  /// through words.
  void leaveWordsOut(bool out) { words_left_out_ = out; }

  void line(QPointF from, QPointF to, const Stroke& stroke = {});
  void path(const QPainterPath& path, const Stroke& stroke = {}, Tone fill = Tone::kNone);
  void polygon(const QPolygonF& points, const Stroke& stroke = {}, Tone fill = Tone::kNone);
  void polyline(const QPolygonF& points, const Stroke& stroke = {});
  void circle(QPointF centre, double r, const Stroke& stroke = {}, Tone fill = Tone::kNone);
  void ellipse(QPointF centre, double rx, double ry, const Stroke& stroke = {},
               Tone fill = Tone::kNone);
  void rect(const QRectF& rect, const Stroke& stroke = {}, Tone fill = Tone::kNone,
            double corner_r = 0);
  void arc(QPointF centre, double r, double from_deg, double to_deg, const Stroke& stroke = {});
  /// Part of a ring.
  void sector(QPointF centre, double r_in, double r_out, double from_deg, double to_deg,
              const Stroke& stroke = {}, Tone fill = Tone::kNone);

  /// Parallel lines inside a shape, `gap` apart, at `degrees` from horizontal (counted clockwise).
  void hatch(const QPainterPath& shape, Tone tone = Tone::kRule, double gap = 6,
             double degrees = 45, double width = kThin);
  /// Dots inside a shape: oil, or air under pressure.
  void dots(const QPainterPath& shape, Tone tone = Tone::kRule, double gap = 7, double r = 0.9);

  /// A word with its baseline at `at`. Returns its width in u.
  double text(QPointF at, const QString& text, const Words& words = {});
  /// Wrapped words; returns the y of the baseline after the last line.
  double paragraph(QPointF at, const QString& text, double width, const Words& words = {},
                   double lead = 0);

  void push() { painter_.save(); }
  void push(QPointF origin, double degrees, double sx = 1, double sy = 1);
  void pop() { painter_.restore(); }

 private:
  [[nodiscard]] QPen makePen(const Stroke& stroke) const;
  [[nodiscard]] QBrush makeBrush(Tone fill) const;
  QPainter& painter_;
  Theme theme_;
  std::vector<SetWords>* noted_ = nullptr;
  bool words_left_out_ = false;
};

/// Shapes, for hatching and filling.
[[nodiscard]] QPainterPath sectorShape(QPointF centre, double r_in, double r_out, double from_deg,
                                       double to_deg);
[[nodiscard]] QPainterPath circleShape(QPointF centre, double r);
[[nodiscard]] QPainterPath rectShape(const QRectF& rect, double corner_r = 0);

}  // namespace cabwright::drawing
