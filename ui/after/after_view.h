// SPDX-License-Identifier: GPL-3.0-or-later
// What the trainee sees right after a run: the finding in one sentence, the run as a strip with its
// flags, a card for each broken line with its gauges, the reason and what to do instead, and the
// rest of the sheet below.
#pragma once

#include <QWidget>
#include <memory>
#include <vector>

#include "after/finding_head.h"
#include "after/finished_run.h"
#include "after/line_card.h"
#include "after/section_block.h"
#include "after/strip_chart.h"
#include "drawing/sheet_frame.h"

QT_BEGIN_NAMESPACE
class QScrollArea;
QT_END_NAMESPACE

namespace cabwright::after {

class AfterView : public QWidget {
  Q_OBJECT
 public:
  /// A run that has ended; it must outlive the view.
  explicit AfterView(const session::LiveRun& run, QWidget* parent = nullptr);
  /// The same of anything recorded; its history must outlive the view.
  explicit AfterView(FinishedRun run, QWidget* parent = nullptr);
  ~AfterView() override;

  void setTheme(drawing::Theme theme);
  [[nodiscard]] drawing::Theme theme() const { return look_.theme; }

  [[nodiscard]] const Finding& finding() const { return head_->finding(); }
  [[nodiscard]] StripChart& strip() { return *strip_; }
  [[nodiscard]] const std::vector<LineCard*>& cards() const { return cards_; }
  [[nodiscard]] const std::vector<SectionBlock*>& sections() const { return sections_; }

  /// Shows a line: cursor on its moment, its card selected and in sight. A line that follows from
  /// another stands on that one's card. False: it is not among the broken ones.
  bool showLine(int line);

  /// The sheet as plain text, as it is saved and copied.
  [[nodiscard]] QString sheetText() const;
  /// Writes it. False: it could not be written; the foot of the sheet says so.
  bool saveSheet(const QString& path);
  void copySheet();

 Q_SIGNALS:
  /// Back to choosing an exercise.
  void closed();
  /// Take it again from the start.
  void again();
  /// Take it again from this tick on; never in assessment.
  void takeAgain(qint64 tick);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  void makeColumn();
  void makeFoot();
  void arrange();
  void arrangeColumn();
  void arrangeFoot();
  void askWhereToSave();
  void say(const QString& words);
  void restyleScrollBar();

  FinishedRun run_;
  SheetLook look_;
  drawing::SheetFrame frame_;
  FindingHead* head_;
  StripChart* strip_;
  QScrollArea* scroll_;
  QWidget* column_;
  std::vector<SheetBlock*> blocks_;  ///< of the column, from above
  std::vector<LineCard*> cards_;
  std::vector<SectionBlock*> sections_;
  std::vector<SheetButton*> buttons_;
  QString said_;
  double head_bottom_ = 0;  ///< u
};

}  // namespace cabwright::after
