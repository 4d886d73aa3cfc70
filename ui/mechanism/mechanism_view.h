// SPDX-License-Identifier: GPL-3.0-or-later
// The sectioned machine, moving with the plant's own state, as slowly as wanted. Shows what nobody
// in the cab can see, so it is for practice: in assessment it stays shut.
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QSlider>
#include <QWidget>

#include "cab/part.h"
#include "mechanism/paint_mechanism.h"

namespace cabwright::mechanism {

class MechanismView : public QWidget {
  Q_OBJECT
 public:
  MechanismView(cab::Seat& seat, const cab::SheetStyle& style, QWidget* parent = nullptr);

  [[nodiscard]] const MechanismState& state() const { return state_; }
  [[nodiscard]] const MechanismTurn& turn() const { return turn_; }
  [[nodiscard]] const MechanismLook& look() const { return look_; }
  /// False in assessment.
  [[nodiscard]] bool isOpen() const { return !seat_.inAssessment(); }
  [[nodiscard]] QSize sizeHint() const override { return {1200, 780}; }

  /// 0 or 1.
  void setLine(int line);
  /// Steps of the slider: as it is, 1:5, 1:20, 1:100, still.
  void setSlownessStep(int step);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  /// The controls below the drawing in the colours of the sheet.
  void dress();
  void follow();
  void sayHowSlow();
  [[nodiscard]] QRectF drawingArea() const;
  cab::Seat& seat_;
  const cab::SheetStyle& style_;
  MechanismState state_;
  MechanismTurn turn_;
  MechanismLook look_;
  std::int64_t tick_ = 0;
  drawing::Theme dressed_ = drawing::Theme::kDay;
  QComboBox* which_;
  QSlider* slow_;
  QLabel* slowness_;  ///< what the slider says, in words
};

}  // namespace cabwright::mechanism
