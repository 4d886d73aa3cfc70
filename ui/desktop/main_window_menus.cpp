// SPDX-License-Identifier: GPL-3.0-or-later
// The menus of the window and what they are called.
#include <QActionGroup>
#include <QMenu>
#include <QMenuBar>
#include <algorithm>

#include "desktop/main_window.h"

namespace cabwright::desktop {
namespace {

constexpr double kVolumeStep = 0.1;

}  // namespace

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
    if (!mayEnd()) return;
    endRun();
    showChoose();
  });
  again_action_ = add(run_menu_, QKeySequence(Qt::CTRL | Qt::Key_R), [this] { takeAgain(); });
  freeze_action_ = add(run_menu_, QKeySequence(Qt::CTRL | Qt::Key_Space), [this] {
    if (!seat_) return;
    const bool wanted = freeze_action_->isChecked();
    seat_->setFrozen(wanted);
    freeze_action_->setChecked(seat_->isFrozen());
    if (!wanted && seat_->isFrozen()) say(tr("The instructor has stopped the clock."));
  });
  freeze_action_->setCheckable(true);
  pass_action_ = add(run_menu_, QKeySequence(Qt::CTRL | Qt::Key_T), [this] {
    if (seat_view_ != nullptr) seat_view_->useCommand(QStringLiteral("pass"));
  });
  end_action_ = add(run_menu_, QKeySequence(Qt::CTRL | Qt::Key_E), [this] {
    if (mayEnd()) endRun();
  });
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
  desk_action_ = add(view_menu_, QKeySequence(Qt::CTRL | Qt::Key_D), [this] { openDesk(); });
  review_action_ =
      add(view_menu_, QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_V), [this] { openReview(); });
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
  caution_action_ = add(help_menu_, {}, [this] { showCautions(); });
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
  desk_action_->setText(tr("&Instructor's desk"));
  review_action_->setText(tr("&Review of recorded sessions"));
  full_action_->setText(tr("&Full screen"));
  sound_menu_->setTitle(tr("&Sound"));
  mute_action_->setText(tr("&Silent"));
  louder_action_->setText(tr("&Louder"));
  softer_action_->setText(tr("S&ofter"));
  help_menu_->setTitle(tr("&Help"));
  guide_action_->setText(tr("&Keys and how to use them"));
  caution_action_->setText(tr("&Cautions"));
}

}  // namespace cabwright::desktop
