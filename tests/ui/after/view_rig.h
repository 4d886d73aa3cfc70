// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet over a shipped exercise played by one of its scripts.
#pragma once

#include <gtest/gtest.h>

#include <QApplication>
#include <memory>
#include <string>

#include "after/after_view.h"
#include "played_run.h"

namespace cabwright::after {

inline const marking::SheetLine& lineOf(const marking::MarkSheet& sheet, int number) {
  return sheet.lines.at(static_cast<std::size_t>(number) - 1);
}

class ViewRig : public testing::Test {
 protected:
  /// With a dark lamp: a critical line, serious ones, and one that never came up.
  void open(scenario::Mode mode, const std::string& script = "bad-dark-lamp") {
    run_ = tests::playRun(CABWRIGHT_SOURCE_DIR, "warm-tooth", script, mode);
    ASSERT_TRUE(run_);
    sheet_ = run_->sheet();
    view_ = std::make_unique<AfterView>(*run_);
    view_->resize(1280, 720);
    view_->show();
    QApplication::processEvents();
  }
  std::unique_ptr<session::LiveRun> run_;
  marking::MarkSheet sheet_;
  std::unique_ptr<AfterView> view_;
};

}  // namespace cabwright::after
