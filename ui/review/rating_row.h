// SPDX-License-Identifier: GPL-3.0-or-later
// One scale to rate on: what it asks, five steps, and what the chosen step means.
#pragma once

#include <QButtonGroup>
#include <QLabel>
#include <QWidget>

#include "review_room/marks_style.h"
#include "review_room/rating_scales.h"

namespace cabwright::review_room {

class RatingRow : public QWidget {
  Q_OBJECT
 public:
  /// Buttons are called by `prefix`, the scale's id and their step.
  RatingRow(const after::SheetLook& look, const RatingScale& scale, const QString& prefix,
            QWidget* parent);
  /// 1 to 5; 0: not rated.
  [[nodiscard]] int value() const { return group_->checkedId() < 0 ? 0 : group_->checkedId(); }
  void clear();
  [[nodiscard]] const RatingScale& scale() const { return scale_; }

 Q_SIGNALS:
  void changed();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void showAnchor(int step);
  const RatingScale& scale_;
  QButtonGroup* group_;
  QLabel* anchor_;
};

}  // namespace cabwright::review_room
