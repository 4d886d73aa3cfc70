// SPDX-License-Identifier: GPL-3.0-or-later
// An engine seen from the ground at its side: the underfloor engine with its drive line, cut along
// the crank; its free end with the belts; and the small panel with what a hand moves there. Engine
// 1 is seen from side 1, forward to the right; engine 2 from side 2, forward to the left, mirrored.
#pragma once

#include "cab/draw_engine.h"
#include "cab/plate.h"

namespace cabwright::cab {

class EnginePlate : public Plate {
  Q_OBJECT
 public:
  /// `line`: 0 engine 1, 1 engine 2.
  EnginePlate(int line, const PlateContext& context, QWidget* parent);

  /// How far the machine is drawn turned just now, for tests.
  [[nodiscard]] const EngineTurn& turn() const { return turn_; }
  /// What is drawn of the state, besides what turns.
  struct Seen {
    BeltsLook belts;
    bool fan_belt = true;
    FinalDriveLook drive;
    bool bottle_pulled = false, padlock = false, fire = false;
    int person = 0;  ///< 0 nobody, 1 somebody, 2 with his arms in it
    PoolKind pool = PoolKind::kNone;
    double smoke = 0;
    std::optional<double> coolant;   ///< in the glass, while it is looked at
    bool stick_out = false;          ///< the dipstick is drawn
    std::optional<double> oil_mark;  ///< read on it
    bool dark = false;
  };
  [[nodiscard]] const Seen& seen() const { return seen_; }

  static constexpr double kPanelWidth = 446, kPanelHeight = 316, kLowerTop = 420;
  /// Where the hasp of the isolating switch is on the panel.
  static constexpr QPointF kHasp{272, 106};

 protected:
  void paintGround(drawing::Pen& pen) const override;
  void paintLive(drawing::Pen& pen) const override;
  QRectF findLiveChange() override;

 private:
  void addGauges();
  void addPanel();
  void addDriveControls();
  void addItems();
  void paintWords(drawing::Pen& pen) const;
  [[nodiscard]] Seen see() const;
  void advanceTurn(double seconds);

  [[nodiscard]] unit::Signal of(unit::Signal of_engine1, unit::Signal of_engine2) const {
    return line_ == 0 ? of_engine1 : of_engine2;
  }
  [[nodiscard]] unit::Item item(unit::Item of_engine1) const;
  [[nodiscard]] unit::Signal shows(unit::Item of_engine1) const;
  [[nodiscard]] unit::Control control(unit::Control of_engine1) const {
    return unit::ofEngine(of_engine1, line_);
  }
  /// From the drawing's coordinates to the sheet's: mirrored for engine 2.
  [[nodiscard]] QPointF at(double x, double y) const;
  [[nodiscard]] QRectF box(double x, double y, double w, double h) const;
  /// From the panel's upper left corner: the panel itself is not mirrored, it only stands
  /// elsewhere.
  [[nodiscard]] QPointF onPanel(double x, double y) const;
  void pushDrawing(drawing::Pen& pen) const;
  void addThing(unit::Item of_engine1, const QRectF& thing, QPointF label, bool leader = true);
  void addPanelThing(unit::Item of_engine1, const QRectF& thing, QPointF label, bool leader);
  void paintPanel(drawing::Pen& pen) const;

  int line_;
  bool mirrored_;
  EngineGeometry g_;
  double panel_ = 0, fuel_ = 0, drive_ = 0;  ///< x where the columns of the lower band begin
  EngineTurn turn_{35, 10, 20, 44, 5, 40, 0};
  Seen seen_;
  double phase_ = 0;
  std::int64_t turned_tick_ = 0, drawn_tick_ = -100;
};

}  // namespace cabwright::cab
