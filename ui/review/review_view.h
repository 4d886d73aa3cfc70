// SPDX-License-Identifier: GPL-3.0-or-later
// A session before an assessor: who and what, the whole of it on a timeline with its strips, the
// moment under the cursor with the plate the trainee had, and beside them the mark sheet. The
// cursor is that of Opened: whoever moves it, all follow.
//
// Keys: left and right a recorded moment (with Shift a second, with Ctrl ten), Home and End, comma
// and full stop from action to action, [ and ] or Page Up and Down from verdict to verdict, J K L
// and Space as the buttons say, up and down how fast it plays, + - 0 zoom the strips, F6 strips, F7
// both, F8 plate, F9 the mark sheet; digits look from another place.
#pragma once

#include <QElapsedTimer>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QTimer>
#include <QWidget>
#include <memory>
#include <vector>

#include "after/strip_chart.h"
#include "review_room/moment_pane.h"
#include "review_room/opened.h"
#include "review_room/rerun.h"
#include "review_room/transport_bar.h"

QT_BEGIN_NAMESPACE
class QVBoxLayout;
QT_END_NAMESPACE

namespace cabwright::review_room {

/// What has the most room.
enum class Share : std::uint8_t { kStrips, kBoth, kPlate };

class ReviewView : public QWidget {
  Q_OBJECT
 public:
  explicit ReviewView(std::unique_ptr<Opened> opened, QWidget* parent = nullptr);
  ~ReviewView() override;

  [[nodiscard]] Opened& opened() { return *opened_; }
  [[nodiscard]] Rerun& rerun() { return *rerun_; }
  [[nodiscard]] after::StripChart& strip() { return *strip_; }
  [[nodiscard]] MomentPane& moment() { return *moment_; }
  [[nodiscard]] TransportBar& transport() { return *transport_; }
  [[nodiscard]] const after::SheetLook& look() const { return look_; }

  /// What stands to the right; it is owned by the view. Null: nothing.
  void setSide(QWidget* side);
  [[nodiscard]] QWidget* side() const { return side_; }
  void showSide(bool shown);
  /// Marks are not to be seen: an assessor has to come to their own first.
  void setHidesMarks(bool hides);

  void setTheme(drawing::Theme theme);
  void setShare(Share share);
  [[nodiscard]] Share share() const { return share_; }

  /// What the buttons and keys do.
  void step(Step step);
  void setPlaying(bool playing);
  [[nodiscard]] bool isPlaying() const { return playing_; }
  /// Off: it plays only by passRealTime(), for tests.
  void setClockRunning(bool running);
  /// Real seconds that went by while it plays.
  void passRealTime(double seconds);

  /// Of the seal, in plain words.
  [[nodiscard]] QString sealText() const { return seal_->text(); }
  [[nodiscard]] QString headText() const { return run_->toolTip(); }

 public Q_SLOTS:
  /// Puts the cursor there, and brings it into sight.
  void jumpTo(qint64 tick);

 Q_SIGNALS:
  /// Its type and sheet have another size now, pixels for one u.
  void scaleChanged(double scale);
  /// A key that does nothing here: for what stands beside it.
  void otherKey(int key);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void makeHead(QVBoxLayout* column);
  void makePanes(QVBoxLayout* column);
  void follow();
  void refreshLanes();
  void refreshHead();
  void showTime();
  void restyle();
  void arrange();
  bool stepByKey(const QKeyEvent& event);
  bool shareByKey(int key);
  [[nodiscard]] std::int64_t findFrame(int direction) const;
  [[nodiscard]] std::int64_t findAct(int direction) const;
  [[nodiscard]] std::int64_t findVerdict(int direction) const;

  after::SheetLook look_;
  std::unique_ptr<Opened> opened_;
  std::unique_ptr<Rerun> rerun_;
  std::vector<std::int64_t> act_ticks_, frame_ticks_, verdict_ticks_;
  QLabel *title_, *run_, *seal_;
  QPushButton* side_button_;
  std::vector<QPushButton*> shares_;
  QSplitter *across_, *down_;
  QWidget* lower_;
  after::StripChart* strip_;
  TransportBar* transport_;
  MomentPane* moment_;
  QWidget* side_ = nullptr;
  Share share_ = Share::kBoth;
  bool hides_marks_ = false, playing_ = false, has_clock_ = true;
  QTimer play_timer_;
  QElapsedTimer clock_;
  double owed_ticks_ = 0;
};

}  // namespace cabwright::review_room
