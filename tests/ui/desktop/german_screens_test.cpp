// SPDX-License-Identifier: GPL-3.0-or-later
// In German, which is longer than English, every page still shows its words whole, beside each
// other, and none of them has stayed English.
#include <gtest/gtest.h>

#include <QApplication>
#include <QTemporaryDir>
#include <QTranslator>
#include <functional>
#include <set>

#include "cab/names.h"
#include "catalogue.h"
#include "desktop/main_window.h"
#include "drawing/pen.h"
#include "text_recorder.h"

namespace cabwright {
namespace {

using testing_ui::PaintedWords;
using testing_ui::TextRecorder;

// What stands still on a plate is painted into a picture of its own, once.
struct OpenPlate : cab::Plate {
  static void paintStill(const cab::Plate& plate, drawing::Pen& pen) {
    (plate.*&OpenPlate::paintGround)(pen);
  }
};

std::vector<PaintedWords> wordsOf(QWidget& page) {
  TextRecorder recorder(page.size());
  page.render(&recorder, QPoint(), QRegion(), QWidget::DrawChildren);
  for (const cab::Plate* plate : page.findChildren<cab::Plate*>()) {
    if (!plate->isVisible()) continue;
    QPainter painter(&recorder);
    const double scale = drawing::calcSheetFrame(page.size()).scale;
    painter.scale(scale, scale);
    drawing::Pen pen(painter, drawing::Theme::kDay);
    OpenPlate::paintStill(*plate, pen);
  }
  return recorder.words();
}

class Language {
 public:
  explicit Language(QTranslator& translator) : translator_(translator) {
    QCoreApplication::installTranslator(&translator_);
  }
  ~Language() { QCoreApplication::removeTranslator(&translator_); }
  Language(const Language&) = delete;
  Language& operator=(const Language&) = delete;

 private:
  QTranslator& translator_;
};

struct Program {
  QTemporaryDir home;
  QSettings settings{home.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
  std::unique_ptr<desktop::MainWindow> window;

  explicit Program(QSize size, bool read = true) {
    settings.setValue(QStringLiteral("preferences/caution_read"), read);
    settings.setValue(QStringLiteral("preferences/theme"), QStringLiteral("day"));
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
    settle();
    return begun;
  }
  void go(unit::Place place) {
    window->seat()->act("go", std::string(unit::placeInfo(place).name), "skip");
    window->passTime(0.2);
    settle();
  }
};

using Look = std::function<void(const std::string& what, QWidget& page)>;

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

// Every page there is; the run is short, and its sheet full of what was not done.
void lookAtAll(QSize size, const Look& look) {
  {
    Program program(size, false);
    look("caution", *program.window->page());
  }
  Program program(size);
  look("choose", *program.window->page());
  ASSERT_TRUE(program.begin());
  lookAtPlaces(program, look);
  program.go(unit::Place::kCab1);
  lookAtPanels(program, look);
  program.window->endRun();
  program.settle();
  look("after", *program.window->page());
}

class GermanScreens : public ::testing::TestWithParam<QSize> {};

// What is wrong on any page, each with the page it is on.
std::set<std::string> findFaults(QSize size) {
  std::set<std::string> faults;
  lookAtAll(size, [&](const std::string& what, QWidget& page) {
    const auto words = wordsOf(page);
    EXPECT_GT(words.size(), 3U) << what;
    for (const std::string& fault : testing_ui::findCutWords(words, page.size()))
      faults.insert(what + ": " + fault);
  });
  return faults;
}

// Figures of a small dial that touch its unit do so in any language.
TEST_P(GermanScreens, ShowTheirWordsAsWholeAsInEnglish) {
  const std::set<std::string> in_english = findFaults(GetParam());
  QTranslator german;
  ASSERT_TRUE(german.load(QStringLiteral(CABWRIGHT_GERMAN)));
  const Language language(german);
  for (const std::string& fault : findFaults(GetParam()))
    EXPECT_TRUE(in_english.contains(fault)) << fault;
}

TEST_P(GermanScreens, HaveNoEnglishLeft) {
  testing_ui::MarkingTranslator marking(testing_ui::readCatalogue(
      QStringLiteral(CABWRIGHT_SOURCE_DIR "/assets/translations/cabwright_de.ts")));
  const Language language(marking);
  lookAtAll(GetParam(), [](const std::string& what, QWidget& page) {
    for (const PaintedWords& words : wordsOf(page)) {
      const QStringList left = testing_ui::findUnmarked(words.text);
      EXPECT_TRUE(left.isEmpty()) << what << ": " << words.text.toStdString();
    }
  });
}

INSTANTIATE_TEST_SUITE_P(Sizes, GermanScreens,
                         ::testing::Values(QSize(1280, 720), QSize(1920, 1080)));

}  // namespace
}  // namespace cabwright
