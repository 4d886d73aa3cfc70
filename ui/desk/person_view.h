// SPDX-License-Identifier: GPL-3.0-or-later
// The trainee: where, what each hand holds, what is carried, looked at and heard; the notebook with
// what was so beside what was judged; and the defects nobody has found yet, on the plan as well.
#pragma once

#include <array>

#include "after/rows_table.h"
#include "desk/live_page.h"
#include "desk/person_state.h"
#include "drawing/pen.h"

namespace cabwright::desk {

class PersonView : public LivePage {
  Q_OBJECT
 public:
  explicit PersonView(Desk& desk, QWidget* parent = nullptr);
  ~PersonView() override;

  [[nodiscard]] const PersonState& state() const { return state_; }
  [[nodiscard]] const after::RowsTable& notebook() const { return *notebook_; }
  [[nodiscard]] const after::RowsTable& open() const { return *open_; }
  /// Where, hands, look and words in sentences.
  [[nodiscard]] QString summary() const;
  /// How many defects at a place have not been found.
  [[nodiscard]] int openAt(unit::Place place) const {
    return open_at_[static_cast<std::size_t>(place)];
  }

 protected:
  void forget() override;
  void keep() override;
  void showRun() override;
  void restyle() override;
  void arrange() override;
  void paintSheet(drawing::Pen& pen, QSizeF sheet) override;

 private:
  void takeJudgements();
  [[nodiscard]] QString placeText() const;
  [[nodiscard]] QString lookText() const;
  double paintPlace(drawing::Pen& pen, double y) const;
  double paintHands(drawing::Pen& pen, double y) const;
  double paintLook(drawing::Pen& pen, double y) const;
  double paintCarried(drawing::Pen& pen, double y) const;
  [[nodiscard]] static double namesWide();
  void paintHeard(drawing::Pen& pen, double y) const;
  [[nodiscard]] double leftWidth() const;

  hearing::Listener listener_;
  PersonState state_;
  after::RowsTable *notebook_, *open_;
  std::array<int, unit::kPlaceCount> open_at_{};
  std::int64_t judged_tick_ = -1;
  int judged_acts_ = -1;
  int found_ = 0, missed_ = 0, false_alarms_ = 0, waiting_ = 0;
};

}  // namespace cabwright::desk
