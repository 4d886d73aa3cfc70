// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk.h"

#include <QWindow>
#include <cmath>

#include "scenario/script.h"

namespace cabwright::tests {
namespace {

const std::string kSource = CABWRIGHT_SOURCE_DIR;
constexpr double kStep_s = 0.1, kShown_s = 0.02;

QSettings& prepared(QSettings& settings, const QString& sessions) {
  settings.setValue(QStringLiteral("preferences/caution_read"), true);
  settings.setValue(QStringLiteral("preferences/theme"), QStringLiteral("day"));
  settings.setValue(QStringLiteral("preferences/sessions"), sessions);
  settings.setValue(QStringLiteral("preferences/muted"), true);
  return settings;
}

}  // namespace

Desk::Desk(QSize size, const std::filesystem::path& scenarios)
    : settings_(home_.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat),
      window_(scenarios.empty() ? std::filesystem::path(kSource) / "scenarios" : scenarios,
              prepared(settings_, home_.filePath(QStringLiteral("s"))), QStringLiteral("test")) {
  window_.setClockRunning(false);
  window_.resize(size);
  window_.show();
  window_.activateWindow();
  QCoreApplication::processEvents();
}

void Desk::begin(const std::string& exercise, scenario::Mode mode) {
  window_.begin(exercise, mode, QStringLiteral("07"));
  settle();
}

void Desk::watch() {
  saw_modal_ = saw_modal_ || QApplication::activeModalWidget() != nullptr;
  if (window_.seat() == watched_) return;
  watched_ = window_.seat();
  if (watched_ == nullptr) return;
  QObject::connect(watched_, &cab::Seat::acted, &window_,
                   [this](const QString& what, const cab::Answer& answer) {
                     if (!answer.accepted)
                       refused_ << what + QLatin1String(": ") + answer.perceived;
                   });
}

bool Desk::playUpTo(const std::string& exercise, const std::string& script, const std::string& line,
                    int times) {
  const std::string path = kSource + "/scenarios/" + exercise + "/" + script + ".txt";
  const auto file = scenario::loadText(path);
  if (std::holds_alternative<scenario::FileFault>(file)) return false;
  auto parsed =
      scenario::parseScript(std::get<scenario::SourceFile>(file), {}, scenario::neighboursOf(path));
  if (std::holds_alternative<scenario::FileFaults>(parsed)) return false;
  scenario::ScriptRunner runner(std::get<scenario::Script>(std::move(parsed)));
  while (!runner.isDone()) {
    for (const auto& due : runner.advance(seat().frame())) {
      if (unit::toText(due.action) == line && --times == 0) {
        settle();
        return true;
      }
      seat().act(due.action.verb, due.action.object, due.action.argument);
    }
    if (runner.fault()) return false;
    window_.passTime(kStep_s / 2);
  }
  return false;
}

void Desk::pass(double seconds) {
  watch();
  for (double left = seconds; left > 1e-9; left -= kStep_s)
    window_.passTime(std::min(left, kStep_s));
}

void Desk::settle() {
  watch();
  QCoreApplication::processEvents();
  window_.passTime(kShown_s);
  watch();
}

QPoint Desk::pointOn(QWidget* widget) {
  const auto hits = [&](QPoint p) {
    const QPoint in_window = widget->mapTo(&window_, p);
    QWidget* there = window_.childAt(in_window);
    return there == widget || (there != nullptr && there->parentWidget() == widget &&
                               there->testAttribute(Qt::WA_TransparentForMouseEvents));
  };
  if (widget == nullptr || !widget->isVisible()) return {};
  std::vector<QPoint> tries{widget->rect().center()};
  if (auto* item = qobject_cast<cab::ItemPart*>(widget))
    tries.insert(tries.begin(),
                 onSheet(item->shape().thing.center()) - widget->mapTo(&window_, QPoint(0, 0)));
  for (int y = 2; y < widget->height(); y += 5)
    for (int x = 2; x < widget->width(); x += 5) tries.emplace_back(x, y);
  for (const QPoint& p : tries)
    if (widget->rect().contains(p) && hits(p)) return widget->mapTo(&window_, p);
  return {};
}

QPoint Desk::onSheet(QPointF sheet) {
  const QPointF p = view().style().frame.toWindow().map(sheet);
  return view().mapTo(&window_, p.toPoint());
}

void Desk::clickAt(QPoint in_window, Qt::MouseButton button) {
  QTest::mouseClick(window_.windowHandle(), button, {}, in_window);
  settle();
}

bool Desk::click(QWidget* widget, Qt::MouseButton button) {
  const QPoint at = pointOn(widget);
  if (at.isNull()) return false;
  clickAt(at, button);
  return true;
}

bool Desk::pressMouse(QWidget* widget) {
  mouse_ = pointOn(widget);
  if (mouse_.isNull()) return false;
  QTest::mousePress(window_.windowHandle(), Qt::LeftButton, {}, mouse_);
  settle();
  return true;
}

void Desk::releaseMouse() {
  QTest::mouseRelease(window_.windowHandle(), Qt::LeftButton, {}, mouse_);
  settle();
}

void Desk::drag(QPoint from, QPoint to) {
  QTest::mousePress(window_.windowHandle(), Qt::LeftButton, {}, from);
  settle();
  QTest::mouseMove(window_.windowHandle(), to);
  settle();
  QTest::mouseRelease(window_.windowHandle(), Qt::LeftButton, {}, to);
  settle();
}

void Desk::wheel(QWidget* widget, int notches) {
  const QPointF at = widget->rect().center();
  QWheelEvent event(at, widget->mapToGlobal(at), {}, {0, 120 * notches}, Qt::NoButton, {},
                    Qt::NoScrollPhase, false);
  QCoreApplication::sendEvent(widget, &event);
  settle();
}

void Desk::key(Qt::Key key, Qt::KeyboardModifiers modifiers) {
  QTest::keyClick(window_.windowHandle(), key, modifiers);
  settle();
}

void Desk::type(const QString& text) {
  for (const QChar c : text) QTest::keyClick(window_.windowHandle(), c.toLatin1());
  settle();
}

void Desk::pressKey(Qt::Key key) {
  QTest::keyPress(window_.windowHandle(), key);
  settle();
}

void Desk::releaseKey(Qt::Key key) {
  QTest::keyRelease(window_.windowHandle(), key);
  settle();
}

bool Desk::tabTo(QWidget* widget) {
  if (widget == nullptr) return false;
  QWidget* from = focus() != nullptr ? focus() : &window_;
  int ahead = 0, all = 0;
  for (QWidget* w = from->nextInFocusChain(); w != from; w = w->nextInFocusChain()) {
    if (w == widget) ahead = all;
    if ((w->focusPolicy() & Qt::TabFocus) != 0 && w->isVisible()) ++all;
  }
  const bool forward = ahead * 2 <= all;
  for (int k = 0; k <= all + 1 && focus() != widget; ++k)
    key(forward ? Qt::Key_Tab : Qt::Key_Backtab, forward ? Qt::NoModifier : Qt::ShiftModifier);
  return focus() == widget;
}

}  // namespace cabwright::tests
