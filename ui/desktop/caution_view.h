// SPDX-License-Identifier: GPL-3.0-or-later
// The cautions, at the first start and from the help.
#pragma once

#include <QPushButton>
#include <QWidget>

#include "drawing/pen.h"

namespace cabwright::desktop {

class CautionView : public QWidget {
  Q_OBJECT
 public:
  explicit CautionView(QWidget* parent = nullptr);
  void setTheme(drawing::Theme theme);
  /// What it says, a paragraph each.
  [[nodiscard]] static QStringList cautions();

 Q_SIGNALS:
  void accepted();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  drawing::Theme theme_ = drawing::Theme::kDay;
  QPushButton* read_;
};

}  // namespace cabwright::desktop
