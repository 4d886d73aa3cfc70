// SPDX-License-Identifier: GPL-3.0-or-later
// The cab when one has turned round: the back wall with its equipment, the door side with its
// switches, the floor. The second plate of the same place; between them the two have everything
// that is there.
#pragma once

#include "cab/room_plate.h"

namespace cabwright::cab {

/// Words with an arrow that turns: from the desk to what is behind, and back.
class TurnPart : public Part {
  Q_OBJECT
 public:
  /// `right_baseline`: where its words end. Its command is "turn".
  TurnPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts, QString words,
           QPointF right_baseline, QWidget* parent);
  [[nodiscard]] static QString command() { return QStringLiteral("turn"); }
  [[nodiscard]] PartRole role() const override;
  bool activate() override;
  [[nodiscard]] double width() const;

 Q_SIGNALS:
  void turned();

 protected:
  void paint(drawing::Pen& pen) const override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  [[nodiscard]] QString keyText() const;
  const Shortcuts& shortcuts_;
  QString words_;
  QPointF at_;
};

class CabRoundPlate : public RoomPlate {
  Q_OBJECT
 public:
  CabRoundPlate(int cab, const PlateContext& context, QWidget* parent);

 protected:
  void paintGround(drawing::Pen& pen) const override;
  [[nodiscard]] QPointF darkWords() const override;

 private:
  void addBackWall();
  void addGuardsCorner();
  void addSwitches();
  void addDoor();
  [[nodiscard]] unit::Control control(unit::Control of_cab1) const {
    return unit::ofCab(of_cab1, cab_);
  }
  void addNamed(unit::Item of_cab1, const QRectF& thing, QPointF label, bool leader = true);

  struct Layout {
    double wall_top = 0, floor = 0;
    double back_end = 0, door_left = 0, door_right = 0, panel_left = 0;
    QPointF gauge, valve, cock, lock;
    QRectF canister, flags, clips, extinguisher, first_aid, book, door, panel, seat, floor_box;
  };
  [[nodiscard]] Layout makeLayout() const;
  [[nodiscard]] double rowPitch() const;
  int cab_;
  Layout at_;
};

}  // namespace cabwright::cab
