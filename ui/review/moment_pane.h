// SPDX-License-Identifier: GPL-3.0-or-later
// The moment under the cursor: the plate the trainee had before them, in read-only, with what was
// in the hands, the notebook and what had just been said; or, where there is no room for it, the
// gauges in a row. What cannot be run again is shown as it was recorded, and the line above says
// so.
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QStackedWidget>
#include <QTimer>
#include <memory>
#include <optional>

#include "cab/seat_view.h"
#include "review_room/moment_row.h"
#include "review_room/opened.h"
#include "review_room/rerun.h"

namespace cabwright::review_room {

class MomentPane : public QWidget {
  Q_OBJECT
 public:
  /// All must outlive it.
  MomentPane(Opened& opened, Rerun& rerun, const after::SheetLook& look, QWidget* parent = nullptr);
  ~MomentPane() override;

  void restyle();
  /// Brings what is seen to the cursor at once; by itself it does so when there is time.
  void showNow();

  /// Null: there is no moment to be seen whole, or not yet.
  [[nodiscard]] cab::SeatView* plate() const { return is_whole_ ? seat_view_ : nullptr; }
  [[nodiscard]] cab::Seat& seat() { return *seat_; }
  [[nodiscard]] MomentRow& row() { return *row_; }
  [[nodiscard]] QComboBox* from() const { return from_; }
  /// Whether what is seen is a moment that was run again, and not only what was recorded.
  [[nodiscard]] bool isWhole() const { return is_whole_; }
  /// What the line above says of it.
  [[nodiscard]] QString note() const { return note_->text(); }
  /// Whether a plate can be read here; else the gauges stand in a row.
  [[nodiscard]] bool hasRoom() const;

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void fillPlaces();
  void choosePlace(int row);
  void showPlace();
  bool showMoment();
  void recallNear();
  void showPage();
  [[nodiscard]] QString standing() const;

  Opened& opened_;
  Rerun& rerun_;
  const after::SheetLook& look_;
  cab::Shortcuts shortcuts_;
  std::unique_ptr<cab::Seat> seat_;
  std::optional<session::Run> moment_;
  QLabel *caption_, *note_;
  QComboBox* from_;
  QStackedWidget* pages_;
  MomentRow* row_;
  cab::SeatView* seat_view_ = nullptr;
  QTimer due_;
  bool is_whole_ = false;
};

}  // namespace cabwright::review_room
