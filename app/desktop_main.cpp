// SPDX-License-Identifier: GPL-3.0-or-later
// The desktop program.
#include <QApplication>
#include <QCommandLineParser>
#include <QIcon>
#include <QSettings>
#include <cstdio>

#include "console_places.h"
#include "desktop/languages.h"
#include "desktop/main_window.h"
#include "drawing/face.h"

int main(int argc, char** argv) {
  cabwright::drawing::prepareFaces();
  QApplication app(argc, argv);
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
  cabwright::desktop::MainWindow window(*scenarios, settings, QStringLiteral(CABWRIGHT_VERSION));
  window.show();
  if (options.isSet(review)) window.reviewDoor().open(options.value(review).toStdString());
  return QApplication::exec();
}
