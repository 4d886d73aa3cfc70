// SPDX-License-Identifier: GPL-3.0-or-later
// A page of the desk over a run of a shipped exercise.
#pragma once

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QApplication>
#include <QTest>
#include <algorithm>
#include <memory>
#include <vector>

#include "desk/desk.h"
#include "desk_play.h"

namespace cabwright::desk {

template <class Page>
class PageRig : public testing::Test {
 protected:
  void sit(const std::string& exercise, scenario::Mode mode = scenario::Mode::kPractice) {
    seat_ = tests::sitDown(exercise, mode);
    page_ = std::make_unique<Page>(desk_);
    desk_.setSeat(seat_.get());
    page_->resize(1280, 660);
    page_->show();
    settle();
  }
  void settle() {
    for (int k = 0; k < 3; ++k) QApplication::processEvents();
  }
  void pass(double seconds) {
    tests::passSeconds(*seat_, seconds);
    settle();
  }
  /// So much at once, as when time is let pass.
  void passUnseen(double seconds) {
    seat_->blockSignals(true);
    tests::passSeconds(*seat_, seconds);
    seat_->blockSignals(false);
    Q_EMIT seat_->frameChanged();
    settle();
  }
  void doIt(const std::string& words) { tests::doWords(*seat_, words); }
  [[nodiscard]] const session::LiveRun& run() const { return seat_->run(); }

  /// Every widget that can have the focus says what it is, and Tab comes to each.
  void expectAllReached() {
    std::vector<QWidget*> wanted;
    for (QWidget* child : page_->template findChildren<QWidget*>()) {
      if (!child->isVisible() || child->focusProxy() != nullptr ||
          (child->focusPolicy() & Qt::TabFocus) == 0)
        continue;
      wanted.push_back(child);
      const auto* button = qobject_cast<QAbstractButton*>(child);
      const QString name = button != nullptr && child->accessibleName().isEmpty()
                               ? button->text()
                               : child->accessibleName();
      EXPECT_FALSE(name.isEmpty()) << child->metaObject()->className();
    }
    ASSERT_FALSE(wanted.empty());
    page_->activateWindow();
    wanted.front()->setFocus();
    std::vector<QWidget*> reached;
    for (std::size_t k = 0; k < wanted.size(); ++k) {
      reached.push_back(QApplication::focusWidget());
      QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    for (QWidget* widget : wanted)
      EXPECT_NE(std::ranges::find(reached, widget), reached.end())
          << widget->metaObject()->className() << qPrintable(widget->accessibleName());
  }

  Desk desk_;
  std::unique_ptr<cab::Seat> seat_;
  std::unique_ptr<Page> page_;
};

}  // namespace cabwright::desk
