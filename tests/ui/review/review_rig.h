// SPDX-License-Identifier: GPL-3.0-or-later
// A small recorded session in a review that is seen: mouse and keys go to it as real ones do.
#pragma once

#include <gtest/gtest.h>

#include <QtTest>
#include <memory>

#include "forge.h"
#include "review_room/review_view.h"
#include "reviewed_session.h"
#include "session/database.h"

namespace cabwright::review_room {

class ReviewRig : public testing::Test {
 protected:
  [[nodiscard]] std::filesystem::path file() const { return folder_ / "a.cabsession"; }
  void record(const std::vector<session::Deed>& deeds) { session::record(file(), deeds); }
  // Changes the recording as somebody would who knows the format.
  void forge(const std::string& sql) {
    session::Database::openForWriting(file()).run(sql);
    session::forgeChain(file());
  }
  void show(QSize size = {1280, 720}) {
    view_ = std::make_unique<ReviewView>(std::make_unique<Opened>(file()));
    view_->setClockRunning(false);
    view_->resize(size);
    view_->show();
    view_->activateWindow();
    view_->rerun().wait();
    settle();
  }
  static void settle() {
    for (int k = 0; k < 4; ++k) QCoreApplication::processEvents();
  }
  [[nodiscard]] QPoint at(std::int64_t tick, double y = 300) {
    return {static_cast<int>(std::lround(view_->strip().xOf(tick))), static_cast<int>(y)};
  }
  void press(int key, Qt::KeyboardModifiers with = Qt::NoModifier) {
    QTest::keyClick(&view_->strip(), static_cast<Qt::Key>(key), with);
    settle();
  }
  [[nodiscard]] std::int64_t cursor() { return view_->opened().cursor(); }
  /// What the plate shows and what was recorded at the cursor, of this control.
  [[nodiscard]] std::pair<double, double> shownAndRecorded(unit::Control control) {
    const auto frame = view_->opened().store().findFrame(cursor());
    const auto recorded = static_cast<double>((*frame)[unit::controlInfo(control).signal]);
    return {view_->moment().seat().value(control), recorded};
  }
  review::Folder folder_;
  std::unique_ptr<ReviewView> view_;
};

}  // namespace cabwright::review_room
