// SPDX-License-Identifier: GPL-3.0-or-later
// What the plates on the ground round the unit have in common: names at the edge with leaders that
// begin beside them, controls set in a row, circles that enlarge a spot of the drawing, and a word
// about the light.
#pragma once

#include <QLineF>
#include <vector>

#include "cab/plate.h"

namespace cabwright::cab {

/// The signal that says what an item shows: 0 good, n the nth condition of its list.
[[nodiscard]] unit::Signal showsOf(unit::Item item);

/// A spot of the drawing and the circle that shows it larger.
struct DetailCircle {
  QPointF spot = {};
  double spot_r = 10;  ///< u
  QPointF centre = {};
  double r = 100;  ///< u

  /// The two lines that touch both circles; none where one circle lies in the other.
  [[nodiscard]] std::vector<QLineF> joins() const;
};

class GroundPlate : public Plate {
  Q_OBJECT
 public:
  GroundPlate(const PlateContext& context, QWidget* parent);

  /// The leaders as they are drawn, from the name to the thing, for tests.
  [[nodiscard]] const std::vector<QPolygonF>& leaders() const { return leaders_; }
  /// What the word about missing light takes up, u.
  [[nodiscard]] QRectF darkWordsBox() const;
  [[nodiscard]] const std::vector<DetailCircle>& details() const { return details_; }

 protected:
  /// Where a name stands, seen from its thing.
  enum class Stands : std::uint8_t { kLeft, kRight, kAbove, kBelow };

  virtual void drawGround(drawing::Pen& pen) const = 0;
  virtual void drawLive(drawing::Pen& pen) const = 0;
  /// All that drawLive() depends on, as numbers.
  [[nodiscard]] virtual std::vector<double> liveState() const = 0;

  /// An item with its name. `at`: baseline; of names left of their thing where they end, of those
  /// above or below their middle. `dot`: end of the leader, inside `thing`; null: its middle.
  void addNamed(unit::Item item, const QRectF& thing, Stands stands, QPointF at, QPointF dot = {});
  /// A switch or cock with its name below it. `half_width`: of what it may write on, u.
  ControlPart* addToggle(unit::Control control, QPointF centre, double half_width);
  /// Where the word about missing light stands (baseline, middle).
  void setDarkWords(QPointF at) { dark_words_ = at; }
  void setDetails(std::vector<DetailCircle> details) { details_ = std::move(details); }
  /// Of each the circle round the spot, the large circle, and the two lines that touch both.
  void drawDetails(drawing::Pen& pen) const;

  [[nodiscard]] int shown(unit::Item item) const;

  void paintGround(drawing::Pen& pen) const final;
  void paintLive(drawing::Pen& pen) const final;
  QRectF findLiveChange() final;

 private:
  std::vector<QPolygonF> leaders_;
  std::vector<DetailCircle> details_;
  std::vector<double> live_;
  QPointF dark_words_;
};

}  // namespace cabwright::cab
