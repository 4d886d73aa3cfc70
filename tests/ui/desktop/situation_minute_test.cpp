// SPDX-License-Identifier: GPL-3.0-or-later
// How long an instructor takes to set up a situation: every key and click is a real one, and each
// is given the time of the keystroke-level model (S. K. Card, T. P. Moran, A. Newell, "The
// Keystroke-Level Model for User Performance Time with Interactive Systems", Communications of the
// ACM 23(7), 1980; its figures from memory). The model is for somebody who knows the program and
// makes no mistake; waiting for the program is left out, since it answers within a frame.
#include <gtest/gtest.h>

#include "desk.h"
#include "desk/desk_window.h"

namespace cabwright::tests {
namespace {

constexpr double kKeyS = 0.28;                  // K, an average typist who is no secretary
constexpr double kPointS = 1.1, kClickS = 0.2;  // P; the button down and up
constexpr double kHomeS = 0.4;                  // H, between keyboard and mouse
constexpr double kThinkS = 1.35;                // M, before every step of its own

class Instructor {
 public:
  explicit Instructor(desk::DeskWindow& window) : window_(window) {}

  [[nodiscard]] double seconds() const { return seconds_; }
  void think() { seconds_ += kThinkS; }
  void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
    hold(Hand::kKeys);
    seconds_ += modifiers == Qt::NoModifier ? kKeyS : 2 * kKeyS;
    QWidget* to = QApplication::focusWidget();
    QTest::keyClick(to != nullptr ? to : &window_, key, modifiers);
    QCoreApplication::processEvents();
  }
  void type(const char* words) {
    hold(Hand::kKeys);
    for (const char* c = words; *c != '\0'; ++c) {
      seconds_ += kKeyS;
      QTest::keyClick(QApplication::focusWidget(), *c);
    }
    QCoreApplication::processEvents();
  }
  /// Tab until it has the focus.
  void tabTo(const char* name) {
    for (int k = 0; k < 12 && nameOfFocus() != QLatin1String(name); ++k) key(Qt::Key_Tab);
    EXPECT_EQ(nameOfFocus().toStdString(), name);
  }
  void click(QWidget* widget, QPoint at = {-1, -1}) {
    hold(Hand::kMouse);
    seconds_ += kPointS + kClickS;
    ASSERT_TRUE(widget != nullptr && widget->isVisible());
    if (at.x() < 0) at = widget->rect().center();
    const QPoint in_window = widget->mapTo(&window_, at);
    QWidget* hit = window_.childAt(in_window);
    ASSERT_TRUE(hit == widget || widget->isAncestorOf(hit)) << widget->objectName().toStdString();
    QTest::mouseClick(hit, Qt::LeftButton, {}, hit->mapFrom(&window_, in_window));
    QCoreApplication::processEvents();
  }
  void clickTab(const char* name) {
    QTabBar* tabs = window_.tabs();
    for (int k = 0; k < tabs->count(); ++k)
      if (tabs->tabText(k) == QLatin1String(name)) return click(tabs, tabs->tabRect(k).center());
    ADD_FAILURE() << "no page " << name;
  }

 private:
  enum class Hand { kKeys, kMouse };
  void hold(Hand wanted) {
    if (hand_ != wanted) seconds_ += kHomeS;
    hand_ = wanted;
  }
  static QString nameOfFocus() {
    QWidget* has = QApplication::focusWidget();
    return has != nullptr ? has->objectName() : QString();
  }
  desk::DeskWindow& window_;
  Hand hand_ = Hand::kKeys;
  double seconds_ = 0;
};

TEST(SituationMinute, FrostOneDeadStarterAndALeakThatComesLaterStandWithinAMinute) {
  Desk desk;
  desk.window().activateWindow();
  QCoreApplication::processEvents();
  QTest::keyClick(&desk.window(), Qt::Key_D, Qt::ControlModifier);
  QCoreApplication::processEvents();
  desk::DeskWindow* window = desk.window().deskDoor().window();
  ASSERT_NE(window, nullptr);
  window->activateWindow();
  QCoreApplication::processEvents();
  Instructor instructor(*window);

  instructor.think();
  instructor.clickTab("Situation");
  instructor.think();
  instructor.tabTo("exercise");
  instructor.type("cold");
  instructor.think();
  instructor.tabTo("trainee");
  instructor.type("11");
  instructor.think();
  instructor.tabTo("weather");
  instructor.type("fr");
  instructor.tabTo("temperature");
  instructor.key(Qt::Key_A, Qt::ControlModifier);
  instructor.type("-8");
  instructor.think();
  instructor.tabTo("begin");
  instructor.key(Qt::Key_Return);
  ASSERT_NE(desk.window().seat(), nullptr);
  window->activateWindow();
  QCoreApplication::processEvents();

  instructor.think();
  instructor.clickTab("Faults");
  instructor.think();
  instructor.key(Qt::Key_F3);
  instructor.type("starter 1 dead");
  for (int k = 0; k < 3; ++k) instructor.key(Qt::Key_Return);  // into the list, its form, in
  instructor.think();
  instructor.key(Qt::Key_F3);
  instructor.key(Qt::Key_A, Qt::ControlModifier);
  instructor.type("train pipe leak");
  instructor.key(Qt::Key_Return);
  instructor.key(Qt::Key_Return);
  instructor.think();
  instructor.type("4");
  instructor.key(Qt::Key_Tab);
  instructor.key(Qt::Key_Down);  // after some seconds
  instructor.key(Qt::Key_Tab);
  instructor.key(Qt::Key_A, Qt::ControlModifier);
  instructor.type("300");
  instructor.key(Qt::Key_Return);

  const session::LiveRun& run = desk.seat().run();
  EXPECT_EQ(run.header().scenario, "Cold preparation after a night");
  EXPECT_EQ(run.header().trainee_number, "11");
  EXPECT_EQ(run.situation().loaded.scenario.weather, "frost");
  EXPECT_DOUBLE_EQ(run.situation().loaded.scenario.start.plant.ambient_c, -8);
  std::vector<std::string> armed;
  for (const auto& timed : run.actions())
    if (timed.action.verb == "arm") armed.push_back(unit::toText(timed.action));
  EXPECT_EQ(armed, (std::vector<std::string>{
                       "instructor: arm starter1.dead",
                       "instructor: arm vacuum.train_pipe_leak size 4 after 300 s"}));
  std::printf("a situation with weather and two faults: %.1f s by the keystroke-level model\n",
              instructor.seconds());
  EXPECT_LT(instructor.seconds(), 60);
}

}  // namespace
}  // namespace cabwright::tests
