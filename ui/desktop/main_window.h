// SPDX-License-Identifier: GPL-3.0-or-later
// The program's window: the caution, choosing, the seat, and what is seen afterwards, one after the
// other in the same frame. Nothing modal: while a run goes on, no question stops it.
#pragma once

#include <QAction>
#include <QElapsedTimer>
#include <QMainWindow>
#include <QStackedWidget>
#include <QTimer>
#include <filesystem>
#include <memory>
#include <optional>

#include "after/after_view.h"
#include "cab/seat.h"
#include "cab/seat_view.h"
#include "cab/shortcuts.h"
#include "desktop/choose_view.h"
#include "desktop/desk_door.h"
#include "desktop/door_lock.h"
#include "desktop/preferences.h"
#include "desktop/review_door.h"
#include "hearing/speaker.h"
#include "mechanism/mechanism_view.h"

namespace cabwright::desktop {

class SettingsView;
class CautionView;

class MainWindow : public QMainWindow {
  Q_OBJECT
 public:
  /// `scenarios`: the folder with the exercises; `settings`: kept as long as the window is.
  MainWindow(std::filesystem::path scenarios, QSettings& settings, const QString& version);
  ~MainWindow() override;

  /// Begins an exercise; false: it cannot be taken (said in the status line).
  bool begin(const std::string& exercise, scenario::Mode mode, const QString& number,
             const QString& name = {});
  /// The same, as the instructor's desk wants it.
  bool begin(const desk::SituationWish& wish);
  /// Ends the run that goes on, and shows its sheet.
  void endRun();

  [[nodiscard]] cab::Seat* seat() const { return seat_.get(); }
  [[nodiscard]] cab::SeatView* seatView() const { return seat_view_; }
  [[nodiscard]] after::AfterView* afterView() const { return after_view_; }
  [[nodiscard]] ChooseView* chooseView() const { return choose_; }
  [[nodiscard]] DeskDoor& deskDoor() { return desk_door_; }
  /// The session that is recorded just now, which nobody may look into; empty: none.
  [[nodiscard]] std::filesystem::path runningFile() const;
  [[nodiscard]] DoorLock& doorLock() { return *door_lock_; }
  [[nodiscard]] review_room::LockKeeper& lockKeeper() { return lock_keeper_; }
  [[nodiscard]] ReviewDoor& reviewDoor() { return review_door_; }
  [[nodiscard]] QWidget* page() const { return pages_->currentWidget(); }
  [[nodiscard]] Preferences& preferences() { return preferences_; }
  void applyPreferences();
  /// Off: time passes only by passTime(), for tests.
  void setClockRunning(bool running);
  void passTime(double seconds);

 protected:
  void closeEvent(QCloseEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void makeMenus();
  void nameMenus();
  void showChoose();
  /// Pages that are looked at meanwhile: the clock stands still, and goes on as it went before.
  void showSettings();
  void showCautions();
  void goOnAside(QWidget* page);
  void leaveAside();
  void showSeat();
  /// Whether what goes on may be ended now. An assessment is asked about: the first time is only
  /// told, the same within ten seconds does it.
  [[nodiscard]] bool mayEnd();
  /// The sectioned machine instead of the seat, or the seat again; not in assessment.
  void showMechanism(bool shown);
  /// Desk and review, past the lock.
  void openDesk();
  void openReview();
  [[nodiscard]] bool isAssessing() const;
  /// Nobody may look in from where the trainee sits.
  void closeDoors();
  void leaveRun();
  void takeAgain();
  void takeAgainFrom(qint64 tick);
  void goBackTo(const session::TimeMark& mark);
  void shutReview(bool shut);
  void goBackToMoment(qint64 tick);
  void useRun(std::unique_ptr<session::LiveRun> run);
  /// Goes on with a run that was taken again; null: with the one that is there.
  void goOnWith(std::unique_ptr<session::LiveRun> run, const QString& words);
  void say(const QString& words);
  /// In a sentence; empty: it is recorded.
  [[nodiscard]] QString whyUnrecorded(const session::LiveRun& run) const;
  void sayUnrecorded();
  void tick();
  [[nodiscard]] session::LiveOptions makeOptions(scenario::Mode mode,
                                                 const desk::SituationWish& wish) const;

  std::filesystem::path scenarios_;
  QSettings& settings_;
  QString version_;
  DeskDoor desk_door_;
  review_room::LockKeeper lock_keeper_;
  DoorLock* door_lock_;
  ReviewDoor review_door_;
  Preferences preferences_;
  QPalette system_palette_;
  cab::Shortcuts shortcuts_;
  hearing::Speaker speaker_;
  QTimer timer_;
  QElapsedTimer clock_;
  QStackedWidget* pages_;
  CautionView* caution_;
  ChooseView* choose_;
  SettingsView* settings_view_;
  std::unique_ptr<cab::Seat> seat_;
  cab::SeatView* seat_view_ = nullptr;
  mechanism::MechanismView* mechanism_ = nullptr;
  after::AfterView* after_view_ = nullptr;
  desk::SituationWish wish_;         ///< how the run was begun
  QString unrecorded_;               ///< why it is not recorded, as was said last
  bool stopped_aside_ = false;       ///< the clock, for a page that is looked at meanwhile
  std::optional<qint64> end_asked_;  ///< at which tick of an assessment its end was asked for

  QMenu *run_menu_ = nullptr, *view_menu_ = nullptr, *sound_menu_ = nullptr, *help_menu_ = nullptr;
  QAction *choose_action_ = nullptr, *end_action_ = nullptr, *again_action_ = nullptr,
          *freeze_action_ = nullptr, *pass_action_ = nullptr, *quit_action_ = nullptr,
          *day_action_ = nullptr, *night_action_ = nullptr, *system_action_ = nullptr,
          *keys_action_ = nullptr, *desk_action_ = nullptr, *review_action_ = nullptr,
          *mechanism_action_ = nullptr, *full_action_ = nullptr, *settings_action_ = nullptr,
          *mute_action_ = nullptr, *louder_action_ = nullptr, *softer_action_ = nullptr,
          *caution_action_ = nullptr, *guide_action_ = nullptr;
};

}  // namespace cabwright::desktop
