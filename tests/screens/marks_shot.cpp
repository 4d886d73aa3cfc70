// SPDX-License-Identifier: GPL-3.0-or-later
// Draws the assessor's mark sheet of a recorded session, to look at:
//   marks_shot SESSION OUT.png day|night WIDTH HEIGHT SCALE [ACT ...]
// SCALE: pixels for one u. Each ACT is done in turn: "press:NAME" (object name of a button),
// "type:NAME:WORDS", "moment:TICK", "line:ID", "scroll:NAME:PIXELS". Keys are kept in
// SESSION.keys.
#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QApplication>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScrollBar>
#include <cstdio>
#include <string>

#include "review_room/marks_page.h"
#include "shot.h"

namespace cabwright {
namespace {

bool act(review_room::MarksPage& page, const QString& words) {
  const QString what = words.section(QLatin1Char(':'), 0, 0);
  const QString name = words.section(QLatin1Char(':'), 1, 1);
  const QString rest = words.section(QLatin1Char(':'), 2);
  if (what == QLatin1String("moment")) {
    page.showMoment(name.toLongLong());
    return true;
  }
  if (what == QLatin1String("line")) {
    page.lines().list().setFocus();
    page.lines().list().select(name.toStdString());
    page.lines().restyle();
    return true;
  }
  if (what == QLatin1String("press")) {
    auto* button = page.findChild<QAbstractButton*>(name);
    if (button != nullptr) button->click();
    return button != nullptr;
  }
  if (what == QLatin1String("type")) {
    if (auto* line = page.findChild<QLineEdit*>(name)) return line->setText(rest), true;
    if (auto* text = page.findChild<QPlainTextEdit*>(name)) return text->setPlainText(rest), true;
  }
  if (what == QLatin1String("scroll")) {
    auto* area = page.findChild<QAbstractScrollArea*>(name);
    if (area != nullptr) area->verticalScrollBar()->setValue(rest.toInt());
    return area != nullptr;
  }
  return false;
}

int run(int argc, char** argv) {
  if (argc < 7) return 2;
  review_room::Opened opened(argv[1]);
  review_room::MarksPage page(opened);
  page.setKeyFolder(std::string(argv[1]) + ".keys");
  page.setTheme(std::string(argv[3]) == "night" ? drawing::Theme::kNight : drawing::Theme::kDay);
  page.setScale(std::stod(argv[6]));
  page.resize(std::stoi(argv[4]), std::stoi(argv[5]));
  page.show();
  QApplication::processEvents();
  for (int k = 7; k < argc; ++k) {
    if (!act(page, QString::fromUtf8(argv[k]))) {
      std::fprintf(stderr, "cannot: %s\n", argv[k]);
      return 3;
    }
    QApplication::processEvents();
  }
  return screens::saveShot(page, argv[2]);
}

}  // namespace
}  // namespace cabwright

int main(int argc, char** argv) { return cabwright::screens::runShot(argc, argv, cabwright::run); }
