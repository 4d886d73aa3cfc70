// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/main_window.h"

#include <QCloseEvent>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QGuiApplication>
#include <QStatusBar>
#include <algorithm>

#include "cab/you_parts.h"
#include "desktop/caution_view.h"
#include "desktop/key_repeat.h"
#include "desktop/settings_view.h"
#include "desktop/situations.h"
#include "drawing/status_line.h"
#include "hearing/scene.h"

namespace cabwright::desktop {
namespace {

constexpr int kFrameMs = 16;

// Beside the settings, so that each set of them has its own.
std::filesystem::path lockFileOf(const QSettings& settings) {
  return QFileInfo(settings.fileName()).dir().filePath(QStringLiteral("lock")).toStdString();
}

}  // namespace

MainWindow::MainWindow(std::filesystem::path scenarios, QSettings& settings, const QString& version)
    : scenarios_(std::move(scenarios)),
      settings_(settings),
      version_(version),
      desk_door_(settings),
      lock_keeper_(lockFileOf(settings)),
      door_lock_(new DoorLock(lock_keeper_, this)),
      review_door_(settings),
      system_palette_(palette()),
      pages_(new QStackedWidget(this)),
      caution_(new CautionView(this)),
      choose_(new ChooseView(this)),
      settings_view_(new SettingsView(preferences_, shortcuts_, lock_keeper_, this)) {
  setWindowTitle(QStringLiteral("Cabwright"));
  setCentralWidget(pages_);
  for (QWidget* page : std::initializer_list<QWidget*>{caution_, choose_, settings_view_})
    pages_->addWidget(page);
  preferences_.load(settings_);
  shortcuts_.load(settings_);
  makeMenus();
  drawing::hideWhileSilent(statusBar());
  // Other systems tell repeats by themselves.
  if (QGuiApplication::platformName() == QLatin1String("xcb")) new KeyRepeat(this);
  connect(&desk_door_.desk(), &desk::Desk::backAsked, this, &MainWindow::goBackTo,
          Qt::QueuedConnection);
  connect(&desk_door_.desk(), &desk::Desk::momentAsked, this, &MainWindow::goBackToMoment,
          Qt::QueuedConnection);
  connect(
      &desk_door_, &DeskDoor::beginAsked, this,
      [this](const desk::SituationWish& wish) {
        if (isAssessing()) {
          desk_door_.desk().refuse(
              tr("An assessment goes on. It is ended first, in the trainee's window."));
        } else {
          begin(wish);
        }
      },
      Qt::QueuedConnection);
  connect(caution_, &CautionView::accepted, this, [this] {
    preferences_.caution_read = true;
    preferences_.save(settings_);
    leaveAside();
  });
  connect(choose_, &ChooseView::startAsked, this,
          [this](const std::string& exercise, scenario::Mode mode, const QString& number,
                 const QString& name) {
            if (begin(exercise, mode, number, name) && seat_->inAssessment()) closeDoors();
          });
  connect(door_lock_, &DoorLock::answered, this, [this] {
    if (QWidget* page = pages_->currentWidget()) page->setFocus();
  });
  connect(settings_view_, &SettingsView::changed, this, [this] {
    preferences_.save(settings_);
    shortcuts_.save(settings_);
    applyPreferences();
  });
  connect(settings_view_, &SettingsView::closed, this, &MainWindow::leaveAside);
  timer_.setTimerType(Qt::PreciseTimer);
  timer_.setInterval(kFrameMs);
  connect(&timer_, &QTimer::timeout, this, &MainWindow::tick);
  clock_.start();
  timer_.start();
  resize(1280, 760);
  restoreGeometry(settings_.value(QStringLiteral("window/geometry")).toByteArray());
  applyPreferences();
  if (preferences_.caution_read) {
    showChoose();
  } else {
    pages_->setCurrentWidget(caution_);
  }
}

MainWindow::~MainWindow() {
  leaveRun();
  delete settings_view_;  // while the keys that it writes are still there
}

void MainWindow::applyPreferences() {
  const drawing::Theme theme = themeOf(preferences_.theme, system_palette_);
  const auto tone = [theme](drawing::Tone t) { return drawing::colorOf(theme, t).name(); };
  setStyleSheet(
      QStringLiteral("QMainWindow, QMenuBar, QStatusBar, QMenu { background: %1; color: %2; }"
                     "QMenuBar::item:selected, QMenu::item:selected { background: %3; }"
                     "QMenu { border: 1px solid %2; } QMenu::item:disabled { color: %4; }")
          .arg(tone(drawing::Tone::kPaper), tone(drawing::Tone::kInk), tone(drawing::Tone::kWash),
               tone(drawing::Tone::kRule)));
  desk_door_.setTheme(theme);
  door_lock_->setTheme(theme);
  review_door_.setTheme(theme);
  choose_->setTheme(theme);
  caution_->setTheme(theme);
  settings_view_->setTheme(theme);
  if (seat_view_ != nullptr) {
    seat_view_->setTheme(theme);
    seat_view_->setReducedMotion(preferences_.reduced_motion);
    seat_view_->setShowKeys(preferences_.show_keys);
  }
  if (mechanism_ != nullptr) mechanism_->update();
  if (after_view_ != nullptr) after_view_->setTheme(theme);
  speaker_.setVolume(preferences_.volume);
  speaker_.setMuted(preferences_.muted);
  system_action_->setChecked(preferences_.theme == ThemeChoice::kSystem);
  day_action_->setChecked(preferences_.theme == ThemeChoice::kDay);
  night_action_->setChecked(preferences_.theme == ThemeChoice::kNight);
  keys_action_->setChecked(preferences_.show_keys);
  mute_action_->setChecked(preferences_.muted);
}

void MainWindow::say(const QString& words) { statusBar()->showMessage(words, 8000); }

session::LiveOptions MainWindow::makeOptions(scenario::Mode mode,
                                             const desk::SituationWish& wish) const {
  session::LiveOptions options;
  options.mode = mode;
  options.trainee_number = wish.trainee.toStdString();
  options.trainee_name = wish.trainee_name.toStdString();
  options.program_version = version_.toStdString();
  const std::filesystem::path folder = findSessionsFolder(preferences_);
  if (!folder.empty()) {
    const QString stamp = QDateTime::currentDateTime().toString(QStringLiteral("yyyyMMdd-HHmmss"));
    // An exercise from elsewhere comes with its path.
    const std::string name = std::filesystem::path(wish.exercise).filename().string();
    options.record = makeSessionPath(folder, name, stamp);
  }
  return options;
}

bool MainWindow::begin(const std::string& exercise, scenario::Mode mode, const QString& number,
                       const QString& name) {
  desk::SituationWish wish;
  wish.exercise = exercise;
  wish.mode = mode;
  wish.trainee = number;
  wish.trainee_name = name;
  return begin(wish);
}

bool MainWindow::begin(const desk::SituationWish& wish) {
  const auto loaded = loadExercise(scenarios_, wish.exercise, wish.conditions);
  const auto refuse = [this](const QString& words) {
    say(words);
    desk_door_.desk().refuse(words);
    return false;
  };
  if (const auto* faults = std::get_if<scenario::FileFaults>(&loaded))
    return refuse(faults->empty() ? QString()
                                  : QString::fromStdString(scenario::toText(faults->front())));
  try {
    session::LiveOptions options = makeOptions(wish.mode, wish);
    options.seed = wish.seed;
    auto run = std::make_unique<session::LiveRun>(std::get<session::Situation>(loaded), options);
    const QString unrecorded = whyUnrecorded(*run);
    // Without a record there is nothing an assessor could stand behind.
    if (wish.mode == scenario::Mode::kAssessment && !unrecorded.isEmpty())
      return refuse(tr("An assessment has to be recorded. %1").arg(unrecorded));
    leaveRun();
    wish_ = wish;
    preferences_.trainee = wish.trainee;
    preferences_.save(settings_);
    useRun(std::move(run));
  } catch (const std::invalid_argument& fault) {
    return refuse(QString::fromUtf8(fault.what()));
  }
  return true;
}

void MainWindow::useRun(std::unique_ptr<session::LiveRun> run) {
  seat_ = std::make_unique<cab::Seat>(std::move(run));
  seat_view_ = new cab::SeatView(*seat_, shortcuts_, this);
  pages_->addWidget(seat_view_);
  connect(seat_.get(), &cab::Seat::frozenChanged, this, [this](bool frozen) {
    freeze_action_->setChecked(frozen);
    speaker_.setFrozen(frozen);
  });
  speaker_.setFrozen(seat_->isFrozen());
  desk_door_.setSeat(seat_.get());
  shutReview(seat_->inAssessment());
  applyPreferences();
  showSeat();
  unrecorded_ = {};
  sayUnrecorded();
}

QString MainWindow::whyUnrecorded(const session::LiveRun& run) const {
  if (const auto fault = run.recordFault())
    return tr("Not recorded: %1").arg(QString::fromStdString(*fault));
  if (run.recordFile().empty())
    return tr("Not recorded: nothing can be written in %1").arg(wishedSessionsFolder(preferences_));
  return {};
}

// At the beginning, and when it comes in the middle: the run goes on.
void MainWindow::sayUnrecorded() {
  const QString why = whyUnrecorded(seat_->run());
  if (why == unrecorded_) return;
  unrecorded_ = why;
  say(why);
}

void MainWindow::showSeat() {
  pages_->setCurrentWidget(seat_view_);
  seat_view_->setFocus();
  const bool free = !seat_->inAssessment();
  end_action_->setEnabled(true);
  again_action_->setEnabled(free);
  freeze_action_->setEnabled(free);
  freeze_action_->setChecked(seat_->isFrozen());
  pass_action_->setEnabled(free);
  mechanism_action_->setEnabled(free);
  mechanism_action_->setChecked(false);
  clock_.restart();
}

void MainWindow::showMechanism(bool shown) {
  if (!seat_ || seat_->isFinished() || seat_->inAssessment()) return;
  if (!shown) {
    showSeat();
    return;
  }
  if (mechanism_ == nullptr) {
    mechanism_ = new mechanism::MechanismView(*seat_, seat_view_->style(), this);
    pages_->addWidget(mechanism_);
  }
  pages_->setCurrentWidget(mechanism_);
  mechanism_->setFocus();
}

// Whatever goes on ends; what was recorded is closed.
void MainWindow::leaveRun() {
  if (after_view_ != nullptr) {
    pages_->removeWidget(after_view_);
    delete after_view_;
    after_view_ = nullptr;
  }
  if (seat_) seat_->finish();
  if (mechanism_ != nullptr) {
    pages_->removeWidget(mechanism_);
    delete mechanism_;
    mechanism_ = nullptr;
  }
  if (seat_view_ != nullptr) {
    pages_->removeWidget(seat_view_);
    delete seat_view_;
    seat_view_ = nullptr;
  }
  desk_door_.setSeat(nullptr);
  shutReview(false);
  seat_.reset();
  stopped_aside_ = false;
  end_asked_.reset();
  speaker_.setFrozen(true);
}

void MainWindow::endRun() {
  if (!seat_ || seat_->isFinished()) return;
  seat_->finish();
  shutReview(false);
  keepResult(settings_, wish_.exercise, seat_->run().sheet(), seat_->mode(),
             QDateTime::currentDateTime());
  if (const auto fault = seat_->run().recordFault())
    say(tr("Not recorded to its end: %1").arg(QString::fromStdString(*fault)));
  speaker_.setFrozen(true);
  after_view_ = new after::AfterView(seat_->run(), this);
  pages_->addWidget(after_view_);
  connect(after_view_, &after::AfterView::closed, this, &MainWindow::showChoose);
  connect(
      after_view_, &after::AfterView::again, this, [this] { takeAgain(); }, Qt::QueuedConnection);
  connect(after_view_, &after::AfterView::takeAgain, this, &MainWindow::takeAgainFrom,
          Qt::QueuedConnection);
  applyPreferences();
  pages_->setCurrentWidget(after_view_);
  after_view_->setFocus();
  end_action_->setEnabled(false);
  mechanism_action_->setEnabled(false);
  freeze_action_->setEnabled(false);
  pass_action_->setEnabled(false);
  again_action_->setEnabled(true);
}

// From the start, as it was asked for.
void MainWindow::takeAgain() {
  if (seat_) begin(desk::SituationWish(wish_));
}

void MainWindow::showChoose() {
  leaveRun();
  std::vector<Exercise> exercises = loadExercises(scenarios_);
  addResults(exercises, settings_);
  choose_->setExercises(std::move(exercises));
  choose_->setTrainee(preferences_.trainee);
  pages_->setCurrentWidget(choose_);
  for (QAction* action :
       {end_action_, again_action_, freeze_action_, pass_action_, mechanism_action_})
    action->setEnabled(false);
}

void MainWindow::setClockRunning(bool running) { running ? timer_.start() : timer_.stop(); }

void MainWindow::tick() {
  const double seconds = static_cast<double>(clock_.nsecsElapsed()) * 1e-9;
  clock_.restart();
  passTime(seconds);
}

void MainWindow::passTime(double seconds) {
  if (!seat_ || seat_->isFinished()) return;
  seat_->passRealTime(seconds);
  sayUnrecorded();
  speaker_.setScene(hearing::calcScene(seat_->frame(), seat_->place()));
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (!mayEnd()) {
    event->ignore();
    return;
  }
  settings_.setValue(QStringLiteral("window/geometry"), saveGeometry());
  desk_door_.close();
  review_door_.close();
  leaveRun();
  QMainWindow::closeEvent(event);
}

void MainWindow::changeEvent(QEvent* event) {
  QMainWindow::changeEvent(event);
  if (event->type() == QEvent::LanguageChange) nameMenus();
  if (event->type() == QEvent::WindowStateChange && full_action_ != nullptr)
    full_action_->setChecked(isFullScreen());
}

}  // namespace cabwright::desktop
