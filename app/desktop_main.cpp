// SPDX-License-Identifier: GPL-3.0-or-later
// The desktop program.
#include <QApplication>
#include <QCommandLineParser>
#include <QIcon>
#include <QSettings>
#include <QWindow>
#include <cstdio>

#include "console_places.h"
#include "desktop/languages.h"
#include "desktop/main_window.h"
#include "desktop_report.h"
#include "drawing/face.h"
#include "drawing/hints.h"

namespace {

class PaintWatch final : public QObject {
 public:
  [[nodiscard]] bool hasPainted() const { return painted_; }
  bool eventFilter(QObject* /*watched*/, QEvent* event) override {
    painted_ = painted_ || event->type() == QEvent::Paint;
    return false;
  }

 private:
  bool painted_ = false;
};

// On the screen, painted, and with nothing left to do: it would take a key now.
int tryStart(QWidget& window) {
  PaintWatch watch;
  qApp->installEventFilter(&watch);
  window.show();
  while (!watch.hasPainted() || !window.windowHandle()->isExposed())
    QApplication::processEvents(QEventLoop::WaitForMoreEvents);
  QApplication::processEvents();
  std::printf("the window can be used\n");
  return 0;
}

}  // namespace

int main(int argc, char** argv) {
  // A report is written without a screen as well.
  if (cabwright::isReportAsked(argc, argv)) qputenv("QT_QPA_PLATFORM", "offscreen");
  cabwright::drawing::prepareFaces();
  QApplication app(argc, argv);
  cabwright::drawing::keepHintsReadable();
  QApplication::setApplicationName(QStringLiteral("cabwright"));
  QApplication::setApplicationDisplayName(QStringLiteral("Cabwright"));
  QApplication::setApplicationVersion(QStringLiteral(CABWRIGHT_VERSION));
  QApplication::setDesktopFileName(QStringLiteral("cabwright"));
  QApplication::setWindowIcon(QIcon::fromTheme(QStringLiteral("cabwright")));

  QCommandLineParser options;
  options.setApplicationDescription(
      QApplication::translate("main", "Training simulator of a diesel multiple-unit cab"));
  options.addHelpOption();
  options.addVersionOption();
  const QCommandLineOption data(QStringLiteral("data"),
                                QApplication::translate("main", "Folder that holds scenarios/"),
                                QStringLiteral("folder"));
  options.addOption(data);
  const QCommandLineOption review(
      QStringLiteral("review"),
      QApplication::translate("main", "Recorded session that is opened for review"),
      QStringLiteral("file"));
  options.addOption(review);
  const QCommandLineOption report(
      QStringLiteral("report"),
      QApplication::translate("main", "Writes the report of a session as PDF, and ends"),
      QStringLiteral("session"));
  options.addOption(report);
  const QCommandLineOption try_start(
      QStringLiteral("try-start"),
      QApplication::translate("main", "Opens the window, says when it can be used, and ends"));
  options.addOption(try_start);
  options.addPositionalArgument(QStringLiteral("out"),
                                QApplication::translate("main", "With --report: the file to write"),
                                QStringLiteral("[out]"));
  options.process(app);

  const cabwright::console::Places places(
      options.isSet(data) ? std::optional(options.value(data).toStdString()) : std::nullopt);
  const auto scenarios = places.findScenarios();
  if (!scenarios) {
    const std::string why = places.findFault().value_or("no folder scenarios/ was found");
    std::fprintf(stderr, "cabwright: %s\n", why.c_str());
    return 2;
  }
  QSettings settings(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("cabwright"),
                     QStringLiteral("cabwright"));
  const cabwright::desktop::Languages languages(settings, *scenarios / "..");
  if (options.isSet(report))
    return cabwright::runReport(options.value(report), options.positionalArguments());
  cabwright::desktop::MainWindow window(*scenarios, settings, QStringLiteral(CABWRIGHT_VERSION));
  if (options.isSet(try_start)) return tryStart(window);
  window.show();
  if (options.isSet(review)) window.reviewDoor().open(options.value(review).toStdString());
  return QApplication::exec();
}
