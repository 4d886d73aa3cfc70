// SPDX-License-Identifier: GPL-3.0-or-later
// A broken line: what it was, when and where, what was done, what the gauges showed then, why it
// matters and what to do instead. A click, Enter or Space shows its moment on the strip.
#pragma once

#include <optional>
#include <vector>

#include "after/evidence.h"
#include "after/finished_run.h"
#include "after/sheet_block.h"
#include "after/sheet_button.h"

namespace cabwright::after {

class LineCard : public SheetBlock {
  Q_OBJECT
 public:
  /// The run must outlive the card. `following`: lines this one dragged along.
  LineCard(const SheetLook& look, const FinishedRun& run, const marking::SheetLine& line,
           QWidget* parent);

  [[nodiscard]] int line() const { return line_.number; }
  [[nodiscard]] std::int64_t tick() const { return momentOf(run_.sheet, line_); }
  /// Whether this line or one that follows from it has that number.
  [[nodiscard]] bool speaksOf(int line) const;
  void setSelected(bool selected);
  [[nodiscard]] bool isSelected() const { return selected_; }
  /// All its words, one part on a line.
  [[nodiscard]] QString words() const;
  /// None in assessment.
  [[nodiscard]] SheetButton* takeAgainButton() const { return again_; }
  [[nodiscard]] const Evidence& evidence();

 Q_SIGNALS:
  void chosen(int line);
  void takeAgain(qint64 tick);

 protected:
  double paint(drawing::Pen& pen, double width, bool measured) override;
  void placeButtons() override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  double paintHead(drawing::Pen& pen, double y, double right) const;
  double paintFollowing(drawing::Pen& pen, double y, double width) const;

  const FinishedRun& run_;
  const marking::SheetLine& line_;
  std::vector<const marking::SheetLine*> following_;
  int leading_cab_ = 1;
  std::optional<Evidence> evidence_;
  SheetButton* show_ = nullptr;
  SheetButton* again_ = nullptr;
  double buttons_y_ = 0;  ///< u
  bool selected_ = false;
};

}  // namespace cabwright::after
