// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/main_window.h"

#include <QActionGroup>
#include <QCloseEvent>
#include <QDateTime>
#include <QMenu>
#include <QMenuBar>
#include <QStatusBar>
#include <algorithm>

#include "desktop/caution_view.h"
#include "desktop/settings_view.h"
#include "hearing/scene.h"

namespace cabwright::desktop {
namespace {

constexpr int kFrameMs = 16;
constexpr double kVolumeStep = 0.1;

}  // namespace

MainWindow::MainWindow(std::filesystem::path scenarios, QSettings& settings, const QString& version)
    : scenarios_(std::move(scenarios)),
      settings_(settings),
      version_(version),
      system_palette_(palette()),
      pages_(new QStackedWidget(this)),
      caution_(new CautionView(this)),
      choose_(new ChooseView(this)),
      settings_view_(new SettingsView(preferences_, shortcuts_, this)) {
  setWindowTitle(QStringLiteral("Cabwright"));
  setCentralWidget(pages_);
  for (QWidget* page : std::initializer_list<QWidget*>{caution_, choose_, settings_view_})
    pages_->addWidget(page);
  preferences_.load(settings_);
  shortcuts_.load(settings_);
  makeMenus();
  connect(caution_, &CautionView::accepted, this, [this] {
    preferences_.caution_read = true;
    preferences_.save(settings_);
    showChoose();
  });
  connect(choose_, &ChooseView::startAsked, this, &MainWindow::begin);
  connect(settings_view_, &SettingsView::changed, this, [this] {
    preferences_.save(settings_);
    shortcuts_.save(settings_);
    applyPreferences();
  });
  connect(settings_view_, &SettingsView::closed, this, [this] {
    if (seat_ && !seat_->isFinished()) {
      showSeat();
    } else {
      showChoose();
    }
  });
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

void MainWindow::makeMenus() {
  const auto add = [this](QMenu* menu, const QKeySequence& keys, auto slot) {
    auto* action = new QAction(this);
    action->setShortcut(keys);
    menu->addAction(action);
    connect(action, &QAction::triggered, this, slot);
    return action;
  };
  run_menu_ = menuBar()->addMenu(QString());
  choose_action_ = add(run_menu_, QKeySequence(Qt::CTRL | Qt::Key_O), [this] {
    endRun();
    showChoose();
  });
  again_action_ = add(run_menu_, QKeySequence(Qt::CTRL | Qt::Key_R), [this] {
    if (seat_) begin(exercise_, seat_->mode(), trainee_);
  });
  freeze_action_ = add(run_menu_, QKeySequence(Qt::CTRL | Qt::Key_Space), [this] {
    if (seat_) seat_->setFrozen(freeze_action_->isChecked());
  });
  freeze_action_->setCheckable(true);
  pass_action_ = add(run_menu_, QKeySequence(Qt::CTRL | Qt::Key_T), [this] {
    if (seat_view_ != nullptr) seat_view_->useCommand(QStringLiteral("pass"));
  });
  end_action_ = add(run_menu_, QKeySequence(Qt::CTRL | Qt::Key_E), [this] { endRun(); });
  run_menu_->addSeparator();
  settings_action_ = add(run_menu_, QKeySequence::Preferences, [this] { showSettings(); });
  quit_action_ = add(run_menu_, QKeySequence::Quit, [this] { close(); });
  view_menu_ = menuBar()->addMenu(QString());
  auto* themes = new QActionGroup(this);
  const auto theme = [&](ThemeChoice choice) {
    QAction* action = add(view_menu_, {}, [this, choice] {
      preferences_.theme = choice;
      preferences_.save(settings_);
      applyPreferences();
    });
    action->setCheckable(true);
    themes->addAction(action);
    return action;
  };
  system_action_ = theme(ThemeChoice::kSystem);
  day_action_ = theme(ThemeChoice::kDay);
  night_action_ = theme(ThemeChoice::kNight);
  view_menu_->addSeparator();
  keys_action_ = add(view_menu_, {}, [this] {
    preferences_.show_keys = keys_action_->isChecked();
    preferences_.save(settings_);
    applyPreferences();
  });
  keys_action_->setCheckable(true);
  mechanism_action_ = add(view_menu_, QKeySequence(Qt::CTRL | Qt::Key_I),
                          [this] { showMechanism(mechanism_action_->isChecked()); });
  mechanism_action_->setCheckable(true);
  full_action_ = add(view_menu_, QKeySequence(Qt::Key_F11),
                     [this] { setWindowState(windowState() ^ Qt::WindowFullScreen); });
  full_action_->setCheckable(true);
  sound_menu_ = menuBar()->addMenu(QString());
  mute_action_ = add(sound_menu_, QKeySequence(Qt::CTRL | Qt::Key_M), [this] {
    preferences_.muted = mute_action_->isChecked();
    preferences_.save(settings_);
    applyPreferences();
  });
  mute_action_->setCheckable(true);
  const auto turn = [this](double by) {
    preferences_.volume = std::clamp(preferences_.volume + by, 0.0, 1.0);
    preferences_.save(settings_);
    applyPreferences();
    say(tr("Volume %1 of 10").arg(preferences_.volume * 10, 0, 'f', 0));
  };
  louder_action_ =
      add(sound_menu_, QKeySequence(Qt::CTRL | Qt::Key_Up), [turn] { turn(kVolumeStep); });
  softer_action_ =
      add(sound_menu_, QKeySequence(Qt::CTRL | Qt::Key_Down), [turn] { turn(-kVolumeStep); });
  help_menu_ = menuBar()->addMenu(QString());
  guide_action_ = add(help_menu_, QKeySequence::HelpContents, [this] { showSettings(); });
  caution_action_ = add(help_menu_, {}, [this] {
    if (!seat_ || seat_->isFinished()) pages_->setCurrentWidget(caution_);
  });
  nameMenus();
}

void MainWindow::nameMenus() {
  run_menu_->setTitle(tr("&Run"));
  choose_action_->setText(tr("&Choose an exercise"));
  again_action_->setText(tr("Take it again from the &start"));
  freeze_action_->setText(tr("&Stop the clock"));
  pass_action_->setText(tr("&Let time pass until something changes"));
  end_action_->setText(tr("&End the run and see the sheet"));
  settings_action_->setText(tr("Se&ttings"));
  quit_action_->setText(tr("&Quit"));
  view_menu_->setTitle(tr("&View"));
  system_action_->setText(tr("As the s&ystem has it"));
  day_action_->setText(tr("&Day"));
  night_action_->setText(tr("&Night"));
  keys_action_->setText(tr("&Keys beside what they move"));
  mechanism_action_->setText(tr("&Mechanism: how it looks inside"));
  full_action_->setText(tr("&Full screen"));
  sound_menu_->setTitle(tr("&Sound"));
  mute_action_->setText(tr("&Silent"));
  louder_action_->setText(tr("&Louder"));
  softer_action_->setText(tr("S&ofter"));
  help_menu_->setTitle(tr("&Help"));
  guide_action_->setText(tr("&Keys and how to use them"));
  caution_action_->setText(tr("&Cautions"));
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

session::LiveOptions MainWindow::makeOptions(const std::string& exercise, scenario::Mode mode,
                                             const QString& trainee) const {
  session::LiveOptions options;
  options.mode = mode;
  options.trainee = trainee.toStdString();
  options.program_version = version_.toStdString();
  const std::filesystem::path folder = findSessionsFolder(preferences_);
  if (!folder.empty()) {
    const QString stamp = QDateTime::currentDateTime().toString(QStringLiteral("yyyyMMdd-HHmmss"));
    options.record = makeSessionPath(folder, exercise, stamp);
  }
  return options;
}

bool MainWindow::begin(const std::string& exercise, scenario::Mode mode, const QString& trainee) {
  const auto loaded =
      session::loadSituation((scenarios_ / exercise / "scenario.toml").string(), scenarios_);
  if (const auto* faults = std::get_if<scenario::FileFaults>(&loaded)) {
    say(faults->empty() ? QString() : QString::fromStdString(scenario::toText(faults->front())));
    return false;
  }
  try {
    auto run = std::make_unique<session::LiveRun>(std::get<session::Situation>(loaded),
                                                  makeOptions(exercise, mode, trainee));
    leaveRun();
    exercise_ = exercise;
    trainee_ = trainee;
    preferences_.trainee = trainee;
    preferences_.save(settings_);
    useRun(std::move(run));
  } catch (const std::invalid_argument& fault) {
    say(QString::fromUtf8(fault.what()));
    return false;
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
  speaker_.setFrozen(false);
  applyPreferences();
  showSeat();
  if (const auto fault = seat_->run().recordFault())
    say(tr("Not recorded: %1").arg(QString::fromStdString(*fault)));
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
  seat_.reset();
  speaker_.setFrozen(true);
}

void MainWindow::endRun() {
  if (!seat_ || seat_->isFinished()) return;
  seat_->finish();
  keepResult(settings_, exercise_, seat_->run().sheet(), seat_->mode(),
             QDateTime::currentDateTime());
  if (const auto fault = seat_->run().recordFault())
    say(tr("Not recorded to its end: %1").arg(QString::fromStdString(*fault)));
  speaker_.setFrozen(true);
  after_view_ = new after::AfterView(seat_->run(), this);
  pages_->addWidget(after_view_);
  connect(after_view_, &after::AfterView::closed, this, &MainWindow::showChoose);
  connect(
      after_view_, &after::AfterView::again, this,
      [this] { begin(exercise_, seat_->mode(), trainee_); }, Qt::QueuedConnection);
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

void MainWindow::takeAgainFrom(qint64 tick) {
  if (!seat_) return;
  const scenario::Mode mode = seat_->mode();
  std::unique_ptr<session::LiveRun> run =
      seat_->run().takenAgainFrom(tick, makeOptions(exercise_, mode, trainee_));
  if (!run) {
    say(tr("That moment cannot be taken again."));
    return;
  }
  leaveRun();
  useRun(std::move(run));
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

void MainWindow::showSettings() {
  if (seat_ && !seat_->isFinished()) seat_->setFrozen(true);
  settings_view_->show(preferences_);
  pages_->setCurrentWidget(settings_view_);
  settings_view_->setFocus();
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
  speaker_.setScene(hearing::calcScene(seat_->frame(), seat_->place()));
}

void MainWindow::closeEvent(QCloseEvent* event) {
  settings_.setValue(QStringLiteral("window/geometry"), saveGeometry());
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
