// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of the whole window, to look at:
//   window_shot OUT.png PAGE day|night WIDTH HEIGHT [SCALE] [--] [ACTION ...]
// PAGE: caution, choose, settings, or an exercise ("cold-preparation"), which is begun guided.
// ACTION: an action of the trainee, a number of seconds to let pass, a command ("!hint"), or
// "@SCRIPT" to play a script of the exercise up to its end ("@good:300": so many seconds of it).
#include <QApplication>
#include <QScreen>
#include <QTemporaryDir>
#include <cstdio>
#include <string>

#include "desktop/caution_view.h"
#include "desktop/main_window.h"
#include "desktop/settings_view.h"
#include "screen_play.h"
#include "shot.h"

namespace cabwright {
namespace {

int run(int argc, char** argv) {
  if (argc < 6) return 2;
  const std::string page = argv[2];
  QTemporaryDir home;
  QSettings settings(home.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
  settings.setValue(QStringLiteral("preferences/caution_read"), page != "caution");
  settings.setValue(QStringLiteral("preferences/theme"), QString::fromLatin1(argv[3]));
  settings.setValue(QStringLiteral("preferences/sessions"), home.filePath(QStringLiteral("s")));
  settings.setValue(QStringLiteral("preferences/muted"), true);
  desktop::MainWindow window(std::string(CABWRIGHT_SOURCE_DIR) + "/scenarios", settings,
                             QStringLiteral("0"));
  window.setClockRunning(false);
  window.resize(std::stoi(argv[4]), std::stoi(argv[5]));
  window.show();
  if (page != "caution" && page != "choose" && page != "settings") {
    if (!window.begin(page, scenario::Mode::kGuided, QStringLiteral("07"))) return 3;
    for (int k = 6; k < argc; ++k) screens::play(window, page, argv[k]);
  }
  if (page == "settings") {
    auto* settings_page = window.findChild<desktop::SettingsView*>();
    settings_page->show(window.preferences());
    window.findChild<QStackedWidget*>()->setCurrentWidget(settings_page);
  }
  for (int k = 0; k < 5; ++k) QApplication::processEvents();
  return window.grab().save(QString::fromLocal8Bit(argv[1])) ? 0 : 1;
}

}  // namespace
}  // namespace cabwright

int main(int argc, char** argv) { return cabwright::screens::runShot(argc, argv, cabwright::run); }
