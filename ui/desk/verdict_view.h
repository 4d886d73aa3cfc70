// SPDX-License-Identifier: GPL-3.0-or-later
// Verdicts as they fall, broken criticals on top, and beside them what would break next.
#pragma once

#include "desk/live_page.h"
#include "desk/verdict_list.h"

namespace cabwright::desk {

class VerdictView : public LivePage {
  Q_OBJECT
 public:
  explicit VerdictView(Desk& desk, QWidget* parent = nullptr);
  ~VerdictView() override;

  [[nodiscard]] VerdictList& fallen() { return *fallen_; }
  [[nodiscard]] VerdictList& open() { return *open_; }
  /// "12 kept, 1 broken, 1 critical, 3 open, 20 not yet".
  [[nodiscard]] QString summary() const;

 Q_SIGNALS:
  /// Someone wants to go to this moment of the run.
  void momentChosen(qint64 tick);

 protected:
  void forget() override;
  void showRun() override;
  void restyle() override;
  void arrange() override;
  void paintSheet(drawing::Pen& pen, QSizeF sheet) override;

 private:
  [[nodiscard]] double middle() const;  ///< u: where the right half begins
  VerdictList *fallen_, *open_;
  VerdictCounts counts_;
  std::int64_t shown_tick_ = -1;
  std::size_t shown_marks_ = 0;
};

}  // namespace cabwright::desk
