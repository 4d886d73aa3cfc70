// SPDX-License-Identifier: GPL-3.0-or-later
// True values of every system beside what the gauges say of them; where they differ by more than
// can be read off a gauge, the row bears a sign and says how. Ctrl+F goes to the search.
#pragma once

#include <QTableView>
#include <vector>

#include "desk/choice_button.h"
#include "desk/live_page.h"
#include "desk/truth_model.h"

QT_BEGIN_NAMESPACE
class QLineEdit;
QT_END_NAMESPACE

namespace cabwright::desk {

class TruthView : public LivePage {
  Q_OBJECT
 public:
  explicit TruthView(Desk& desk, QWidget* parent = nullptr);
  ~TruthView() override;

  [[nodiscard]] TruthModel& model() { return *model_; }
  [[nodiscard]] QTableView& table() { return *table_; }
  /// How many gauges differ, and the first of them, in a sentence.
  [[nodiscard]] QString summary() const;

 protected:
  void forget() override;
  void showRun() override;
  void restyle() override;
  void arrange() override;
  void paintSheet(drawing::Pen& pen, QSizeF sheet) override;

 private:
  void makeBar();
  void arrangeColumns();
  [[nodiscard]] int widestHeading() const;
  void chooseSystem(int which);  ///< -1: all

  TruthModel* model_;
  QLineEdit* search_;
  QTableView* table_;
  std::vector<ChoiceButton*> systems_;  ///< all, then each
  ChoiceButton* only_ = nullptr;
  std::int64_t shown_tick_ = -1, asked_tick_ = -1;
};

}  // namespace cabwright::desk
