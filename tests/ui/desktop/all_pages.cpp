// SPDX-License-Identifier: GPL-3.0-or-later
#include "all_pages.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QListWidget>
#include <QStackedWidget>
#include <QTemporaryDir>

#include "cab/names.h"
#include "cab/show_parts.h"
#include "desktop/main_window.h"
#include "desktop/settings_view.h"
#include "drawing/pen.h"
#include "mechanism/mechanism_view.h"

namespace cabwright::tests {
namespace {

using testing_ui::PaintedWords;
using testing_ui::TextRecorder;

// What stands still on a plate is painted into a picture of its own, once.
struct OpenPlate : cab::Plate {
  static void paintStill(const cab::Plate& plate, drawing::Pen& pen) {
    (plate.*&OpenPlate::paintGround)(pen);
  }
};

struct Program {
  QTemporaryDir home;
  QSettings settings{home.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
  std::unique_ptr<desktop::MainWindow> window;

  Program(QSize size, drawing::Theme theme, bool read = true) {
    settings.setValue(QStringLiteral("preferences/caution_read"), read);
    settings.setValue(QStringLiteral("preferences/theme"), theme == drawing::Theme::kDay
                                                               ? QStringLiteral("day")
                                                               : QStringLiteral("night"));
    settings.setValue(QStringLiteral("preferences/sessions"), home.filePath(QStringLiteral("s")));
    settings.setValue(QStringLiteral("preferences/muted"), true);
    window = std::make_unique<desktop::MainWindow>(std::string(CABWRIGHT_SOURCE_DIR) + "/scenarios",
                                                   settings, QStringLiteral("0"));
    window->setClockRunning(false);
    window->resize(size);
    window->show();
    settle();
  }
  void settle() {
    for (int k = 0; k < 4; ++k) {
      QApplication::processEvents();
      QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
  }
  bool begin() {
    const bool begun =
        window->begin("cold-preparation", scenario::Mode::kGuided, QStringLiteral("07"));
    if (begun) window->seat()->act("take", "door_key");  // without it no cab is entered
    settle();
    return begun;
  }
  void go(unit::Place place) {
    window->seat()->act("go", std::string(unit::placeInfo(place).name), "skip");
    window->passTime(0.2);
    settle();
  }
};

void lookAtPlaces(Program& program, const Look& look) {
  for (const unit::PlaceInfo& place : unit::placeTable()) {
    program.go(place.id);
    look(std::string(place.name), *program.window->seatView());
    if (unit::cabOf(place.id) < 0) continue;
    program.window->seatView()->turnRound();
    program.settle();
    look(std::string(place.name) + " turned", *program.window->seatView());
    program.window->seatView()->turnRound();
  }
}

void lookAtPanels(Program& program, const Look& look) {
  for (const char* command : {"say", "note", "book", "decide", "things"}) {
    program.window->seatView()->useCommand(QString::fromLatin1(command));
    program.settle();
    cab::Panel* panel = program.window->seatView()->panel();
    ASSERT_NE(panel, nullptr) << command;
    look(command, *panel);
    QMetaObject::invokeMethod(panel, "closed");
    program.settle();
  }
}

// A lamp that is dark, asked by its key; the words of the panel and the thread's circle.
void lookAtWhy(Program& program, const Look& look) {
  ASSERT_EQ(program.window->seat()->place(), unit::Place::kCab1);
  cab::SeatView& view = *program.window->seatView();
  for (auto* lamp : view.findChildren<cab::LampPart*>())
    if (lamp->isVisible() && lamp->lamp() == unit::Signal::kCab1LampAir) lamp->setFocus();
  view.useCommand(QStringLiteral("why"));
  program.settle();
  ASSERT_NE(view.panel(), nullptr);
  look("why", *program.window->seatView()->panel());
  QMetaObject::invokeMethod(program.window->seatView()->panel(), "closed");
  program.settle();
}

// A thing judged a defect, so that its class is asked for and stands in the notebook.
void lookAtJudged(Program& program, const Look& look) {
  cab::Seat& seat = *program.window->seat();
  seat.act("look", "cab1.gauges");
  for (int k = 0; k < 40; ++k) program.window->passTime(0.2);
  seat.act("judge", "cab1.gauges", "defect S");
  program.window->passTime(0.2);
  program.settle();
  look("judged", *program.window->seatView());
}

}  // namespace

std::vector<PaintedWords> wordsOf(QWidget& page, drawing::Theme theme) {
  TextRecorder recorder(page.size());
  page.render(&recorder, QPoint(), QRegion(), QWidget::DrawChildren);
  for (const cab::Plate* plate : page.findChildren<cab::Plate*>()) {
    if (!plate->isVisible()) continue;
    QPainter painter(&recorder);
    const double scale = drawing::calcSheetFrame(page.size()).scale;
    painter.scale(scale, scale);
    drawing::Pen pen(painter, theme);
    OpenPlate::paintStill(*plate, pen);
  }
  return recorder.words();
}

void lookAtAll(QSize size, const Look& look, drawing::Theme theme) {
  {
    Program program(size, theme, false);
    look("caution", *program.window->page());
  }
  Program program(size, theme);
  look("choose", *program.window->page());
  auto* pages = program.window->findChild<QStackedWidget*>();
  auto* settings = program.window->findChild<desktop::SettingsView*>();
  QWidget* choose = pages->currentWidget();
  settings->show(program.window->preferences());
  pages->setCurrentWidget(settings);
  program.settle();
  look("settings", *settings);
  pages->setCurrentWidget(choose);
  ASSERT_TRUE(program.begin());
  lookAtPlaces(program, look);
  program.go(unit::Place::kBetween);
  program.go(unit::Place::kCab1);
  lookAtPanels(program, look);
  lookAtWhy(program, look);
  lookAtJudged(program, look);
  for (QAction* action : program.window->findChildren<QAction*>())
    if (action->shortcut() == QKeySequence(Qt::CTRL | Qt::Key_I)) action->trigger();
  program.settle();
  auto* mechanism = program.window->findChild<mechanism::MechanismView*>();
  ASSERT_EQ(program.window->page(), mechanism);
  look("mechanism", *mechanism);
  program.window->endRun();
  program.settle();
  look("after", *program.window->page());
}

void lookAtDesk(QSize size, const Look& look, drawing::Theme theme) {
  Program program(size, theme);
  ASSERT_TRUE(program.begin());
  for (QAction* action : program.window->findChildren<QAction*>())
    if (action->shortcut() == QKeySequence(Qt::CTRL | Qt::Key_D)) action->trigger();
  desk::DeskWindow* desk = program.window->deskDoor().window();
  ASSERT_NE(desk, nullptr);
  desk::Desk& run = program.window->deskDoor().desk();
  for (const char* fault : {"compressor2.belt_gone", "vacuum.hose_chafed", "cab1.air_offset"})
    EXPECT_TRUE(run.take("arm", fault));
  run.take("arm", "final_drive1.tooth_on_tooth", "when not true.standing");
  for (int k = 0; k < 40; ++k) program.window->passTime(0.2);
  desk->faults()->unit()->button(desk::findSpot("exhauster1"))->click();
  desk->resize(size);
  for (int k = 0; k < desk->pageCount(); ++k) {
    desk->tabs()->setCurrentIndex(k);
    program.settle();
    auto* sections = desk->page()->findChild<QListWidget*>(QStringLiteral("writing_sections"));
    if (sections == nullptr) {
      look("desk: " + desk->tabs()->tabText(k).toStdString(), *desk);
      continue;
    }
    for (int row = 0; row < sections->count(); ++row) {
      sections->setCurrentRow(row);
      program.settle();
      look("writing: " + sections->item(row)->text().toStdString(), *desk);
    }
  }
}

}  // namespace cabwright::tests
