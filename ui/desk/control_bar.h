// SPDX-License-Identifier: GPL-3.0-or-later
// How time passes, marks and the way back to them, remarks, and stepping in: what the instructor
// needs at any moment, whatever page is shown.
#pragma once

#include <QButtonGroup>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>
#include <string>

#include "desk/desk.h"

namespace cabwright::desk {

class ControlBar : public QWidget {
  Q_OBJECT
 public:
  explicit ControlBar(Desk& desk, QWidget* parent = nullptr);

  /// Stops time, or lets it go on as fast as before.
  void toggleFrozen();
  /// One step slower (-1) or faster (1).
  void changePace(int by);
  void focusRemark();
  void focusMark();

  [[nodiscard]] QPushButton* freeze() const { return freeze_; }
  [[nodiscard]] QButtonGroup* paces() const { return paces_; }
  [[nodiscard]] QLineEdit* remark() const { return remark_; }
  [[nodiscard]] QLineEdit* markName() const { return mark_name_; }
  [[nodiscard]] QComboBox* marks() const { return marks_; }
  [[nodiscard]] QPushButton* back() const { return back_; }
  [[nodiscard]] QPushButton* stepIn() const { return step_in_; }

 private:
  void refresh();
  void forget();
  void setPace(const unit::Pace& pace);
  void setMark();
  void sayRemark();
  void intervene();
  void makeRows();

  Desk& desk_;
  QPushButton *freeze_, *mark_, *back_, *step_in_;
  QButtonGroup* paces_;
  QLineEdit *mark_name_, *remark_;
  QComboBox* marks_;
  unit::Pace before_freeze_ = unit::kStandardPace;
  std::size_t shown_marks_ = 0;
};

}  // namespace cabwright::desk
