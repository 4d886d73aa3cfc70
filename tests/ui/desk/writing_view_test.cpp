// SPDX-License-Identifier: GPL-3.0-or-later
// A scenario is written by hand on the page, with real keys and clicks.
#include "desk/writing_view.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QStackedWidget>
#include <QTest>
#include <QTextBlock>
#include <filesystem>
#include <fstream>

#include "desk/writing_draw.h"
#include "desk/writing_rules.h"
#include "desk_rig.h"
#include "scenario/scenario_writer.h"

namespace cabwright::desk {
namespace {

namespace fs = std::filesystem;

const fs::path kShipped = fs::path(CABWRIGHT_SOURCE_DIR) / "scenarios";

class WritingPage : public ::testing::Test {
 protected:
  void SetUp() override {
    own_ = fs::temp_directory_path() /
           ("cabwright-writing-" +
            std::string(::testing::UnitTest::GetInstance()->current_test_info()->name()));
    fs::remove_all(own_);
    view_ = std::make_unique<WritingView>(desk_);
    view_->setFolders(own_, kShipped);
    view_->resize(1280, 720);
    view_->show();
  }
  void TearDown() override {
    view_.reset();
    fs::remove_all(own_);
  }

  template <class Widget>
  Widget* get(const char* name) {
    for (Widget* found : view_->findChildren<Widget*>(QLatin1String(name)))
      if (found->isVisibleTo(view_.get())) return found;
    ADD_FAILURE() << "nothing is called " << name;
    return nullptr;
  }
  void goTo(int section) {
    auto* list = get<QListWidget>("writing_sections");
    list->setFocus();
    QTest::keyClick(list, Qt::Key_Home);
    for (int k = 0; k < section; ++k) QTest::keyClick(list, Qt::Key_Down);
  }
  void click(const char* name) { QTest::mouseClick(get<QPushButton>(name), Qt::LeftButton); }
  void type(const char* field, const QString& words) {
    auto* line = get<QLineEdit>(field);
    line->setFocus();
    line->selectAll();
    QTest::keyClick(line, Qt::Key_Delete);
    QTest::keyClicks(line, words);
  }
  void expectNothingWrong() {
    for (const scenario::FileFault& fault : view_->writing().check())
      ADD_FAILURE() << scenario::toText(fault) << "\n" << text();
  }
  [[nodiscard]] std::string text() { return view_->writing().text(); }
  [[nodiscard]] bool says(const std::string& words) {
    return text().find(words) != std::string::npos;
  }
  QString said() { return view_->findChild<QLabel*>(QStringLiteral("writing_said"))->text(); }
  std::string put(const std::string& name, const std::string& words) const {
    const std::string path = (own_ / name / "scenario.toml").string();
    EXPECT_FALSE(scenario::saveText(path, words).has_value());
    return path;
  }
  static std::string read(const fs::path& path) {
    std::ifstream in(path);
    return {std::istreambuf_iterator<char>(in), {}};
  }

  Desk desk_;
  std::unique_ptr<WritingView> view_;
  fs::path own_;
};

TEST_F(WritingPage, ANewOneIsSoundAndEveryFieldHasAName) {
  EXPECT_TRUE(view_->writing().check().empty());
  for (int k = 0; k < 7; ++k) {
    goTo(k);
    for (QWidget* field : view_->findChildren<QWidget*>()) {
      const bool is_field =
          qobject_cast<QLineEdit*>(field) || qobject_cast<QComboBox*>(field) ||
          qobject_cast<QAbstractSpinBox*>(field) || qobject_cast<QAbstractButton*>(field) ||
          qobject_cast<QPlainTextEdit*>(field) || qobject_cast<QListWidget*>(field);
      const bool is_part = qobject_cast<QComboBox*>(field->parentWidget()) ||
                           qobject_cast<QAbstractSpinBox*>(field->parentWidget()) ||
                           qobject_cast<QLineEdit*>(field->parentWidget());
      if (!is_field || is_part || !field->isVisibleTo(view_.get())) continue;
      const auto* button = qobject_cast<QAbstractButton*>(field);
      EXPECT_FALSE(field->accessibleName().isEmpty() && (!button || button->text().isEmpty()))
          << field->objectName().toStdString();
      EXPECT_NE(field->focusPolicy(), Qt::NoFocus) << field->objectName().toStdString();
    }
  }
}

TEST_F(WritingPage, ASituationIsSetAFaultPutInAndRulesChosen) {
  goTo(7);
  type("writing_title", QStringLiteral("Leak on a wet day"));
  goTo(0);
  auto* place = get<QComboBox>("writing_place");
  place->setFocus();
  const QString before = place->currentText();
  QTest::keyClick(place, Qt::Key_Down);
  EXPECT_NE(place->currentText(), before);
  goTo(1);
  auto* weather = get<QComboBox>("writing_weather");
  weather->setFocus();
  QTest::keyClicks(weather, QStringLiteral("rain"));
  QTest::mouseClick(get<QCheckBox>("writing_says_temperature"), Qt::LeftButton);
  auto* temperature = get<QDoubleSpinBox>("writing_temperature");
  temperature->setFocus();
  temperature->selectAll();
  QTest::keyClicks(temperature, temperature->locale().toString(2.5, 'f', 1));
  QTest::keyClick(temperature, Qt::Key_Tab);
  EXPECT_TRUE(says("weather = \"rain\"\ntemperature = \"2.5 C\"\n")) << text();

  goTo(2);
  type("writing_find_start.controls", QStringLiteral("cab2.pawl"));
  click("writing_add_start.controls");
  auto* pawl = get<QComboBox>("writing_value_cab2.pawl");
  pawl->setFocus();
  QTest::keyClick(pawl, Qt::Key_Home);
  EXPECT_TRUE(says("[start.controls]\ncab2.pawl = \"out\"\n")) << text();

  goTo(4);
  type("writing_find_fault", QStringLiteral("main leak"));
  auto* found = get<QListWidget>("writing_found_faults");
  ASSERT_GT(found->count(), 0);
  QTest::keyClick(get<QLineEdit>("writing_find_fault"), Qt::Key_Return);
  EXPECT_TRUE(says("[[fault]]\nfault = \"air.main_leak\"\nsize = ")) << text();
  type("writing_at", QStringLiteral("3 min"));
  EXPECT_TRUE(says("at = \"3 min\"\n")) << text();
  click("writing_new_hidden");
  EXPECT_TRUE(says("[[hidden]]\nitem = \"end2.hoses\"\ncondition = \"hanging\"\n")) << text();

  goTo(5);
  auto* rules = view_->findChild<WritingRules*>();
  ASSERT_NE(rules, nullptr);
  for (const char* id : {"protect", "access"}) {
    QCheckBox* tick = rules->tickOf(id);
    ASSERT_NE(tick, nullptr);
    EXPECT_FALSE(tick->accessibleDescription().isEmpty()) << "its reason";
    tick->setFocus();
    QTest::keyClick(tick, Qt::Key_Space);
  }
  EXPECT_TRUE(says("[[marking.use]]\nfile = \"preparation\"\nrules = [\"access\", \"protect\"]\n"))
      << text();

  click("writing_check");
  const auto* faults = view_->findChild<QListWidget*>(QStringLiteral("writing_faults"));
  EXPECT_FALSE(faults->isVisibleTo(view_.get())) << faults->item(0)->text().toStdString();
}

TEST_F(WritingPage, WhatTheSeedDrawsIsWrittenLineByLine) {
  const QString lines = QStringLiteral(
      "end2.tail_lamp dead; weight 2\ncab1.air offset 4\ngearbox2.band3_worn; size 40 %\nnothing");
  const auto from = readCandidates(lines);
  ASSERT_TRUE(from.has_value());
  EXPECT_EQ(candidateLines(*from), lines);
  EXPECT_FALSE(readCandidates(QStringLiteral(" \n")).has_value());
  goTo(4);
  click("writing_new_draw");
  get<QPlainTextEdit>("writing_from")->setPlainText(lines);
  type("writing_name", QStringLiteral("rear end"));
  EXPECT_TRUE(says("[[draw]]\nname = \"rear end\"\n")) << text();
  EXPECT_TRUE(says("{ item = \"end2.tail_lamp\", condition = \"dead\", weight = 2 }")) << text();
  EXPECT_TRUE(says("{ instrument = \"cab1.air\", condition = \"offset 4\" }")) << text();
  EXPECT_TRUE(says("{ fault = \"gearbox2.band3_worn\", size = \"40 %\" }")) << text();
  expectNothingWrong();
  get<QPlainTextEdit>("writing_from")->setPlainText(QStringLiteral("end2.nonsense dead"));
  EXPECT_FALSE(view_->writing().check().empty());
}

TEST_F(WritingPage, RulesAreChangedAndWrittenAndStepsTold) {
  goTo(5);
  QCheckBox* tick = view_->findChild<WritingRules*>()->tickOf("hb-on");
  ASSERT_NE(tick, nullptr);
  tick->setFocus();
  QTest::keyClick(tick, Qt::Key_Space);
  click("writing_new_change");
  EXPECT_TRUE(says("[[marking.change]]\nrule = \"hb-on\"\n")) << text();
  expectNothingWrong();
  click("writing_new_rule");
  EXPECT_TRUE(says("[[rule]]\nid = \"own-1\"\n")) << text();
  expectNothingWrong();
  auto* kind = get<QComboBox>("writing_kind");
  for (int k = 0; k < kind->count(); ++k) {
    kind->setCurrentIndex(k);
    EXPECT_TRUE(says(kind->itemData(k).toString().toStdString().c_str())) << text();
    expectNothingWrong();
  }
  kind->setCurrentIndex(kind->findData(QStringLiteral("reach_within")));
  type("writing_condition", QStringLiteral("cab1.train_pipe >= 21 inHg"));
  for (const auto& [words, written] :
       {std::pair{"0 - 120", "within = [0, 120]"}, std::pair{"from 5", "within = [5]"},
        std::pair{"30", "within = 30"}}) {
    type("writing_within", QString::fromLatin1(words));
    EXPECT_TRUE(says(written)) << text();
  }
  goTo(6);
  click("writing_new_step");
  EXPECT_TRUE(says("[[guide.step]]\nid = \"own-1\"\n")) << text();
  expectNothingWrong();
}

TEST_F(WritingPage, TriedMeansSavedWhole) {
  QSignalSpy tried(view_.get(), &WritingView::tryRequested);
  goTo(7);
  type("writing_title", QStringLiteral("Leak on a wet day"));
  click("writing_try");
  ASSERT_EQ(tried.count(), 1) << said().toStdString();
  const fs::path path = own_ / "leak-on-a-wet-day" / "scenario.toml";
  EXPECT_EQ(tried.front().front().toString().toStdString(), path.string());
  EXPECT_EQ(read(path), text());
  EXPECT_TRUE(
      std::holds_alternative<session::Situation>(session::loadSituation(path.string(), kShipped)));
  goTo(0);
  type("writing_time_allowed", QStringLiteral("soon"));
  click("writing_try");
  EXPECT_EQ(tried.count(), 1) << "not with a fault in it";
  EXPECT_FALSE(view_->writing().faults().empty());
}

TEST_F(WritingPage, AFaultIsShownWhereItStandsAndJumpedTo) {
  goTo(0);
  type("writing_time_allowed", QStringLiteral("soon"));
  click("writing_check");
  auto* faults = get<QListWidget>("writing_faults");
  ASSERT_NE(faults, nullptr);
  ASSERT_EQ(faults->count(), 1);
  const auto& at = view_->writing().faults().front().at;
  EXPECT_TRUE(faults->item(0)->text().startsWith(
      QStringLiteral("scenario.toml:%1:%2:").arg(at.line).arg(at.column)));
  QTest::mouseClick(faults->viewport(), Qt::LeftButton, {},
                    faults->visualItemRect(faults->item(0)).center());
  auto* shown = get<QPlainTextEdit>("writing_text");
  EXPECT_EQ(shown->textCursor().blockNumber() + 1, static_cast<int>(at.line));
  EXPECT_EQ(shown->textCursor().positionInBlock() + 1, static_cast<int>(at.column));
  EXPECT_TRUE(shown->textCursor().block().text().startsWith(QStringLiteral("time_allowed")));
}

const std::string kOwn =
    "# SPDX-License-Identifier: GPL-3.0-or-later\n# My own words.\ntitle = \"Mine\"   # short\n"
    "purpose = \"P\"\nsummary = \"S\"\nvehicle = \"two-engine-unit\"\nroute = "
    "\"quavelow-branch\"\n\n[start]\nplace = \"cab1\"   # he sits there\n";

TEST_F(WritingPage, CommentsAreKeptAndChangedLinesMarked) {
  EXPECT_TRUE(get<QPlainTextEdit>("writing_text")->extraSelections().isEmpty())
      << "of a file that was never saved all is new: nothing is marked";
  const std::string path = put("mine", kOwn);
  click("writing_open");
  type("writing_path", QString::fromStdString(path));
  QTest::keyClick(get<QLineEdit>("writing_path"), Qt::Key_Return);
  ASSERT_EQ(text(), kOwn) << said().toStdString();
  goTo(7);
  type("writing_title", QStringLiteral("Other"));
  std::string wanted = kOwn;
  wanted.replace(wanted.find("Mine"), 4, "Other");
  EXPECT_EQ(text(), wanted);
  auto* shown = get<QPlainTextEdit>("writing_text");
  ASSERT_EQ(shown->extraSelections().size(), 1);
  EXPECT_EQ(shown->extraSelections().front().cursor.blockNumber(), 2);
  EXPECT_EQ(shown->extraSelections().front().format.background().color(),
            shown->palette().color(QPalette::Highlight));
  EXPECT_EQ(read(path), kOwn) << "not saved yet";
  click("writing_save");
  EXPECT_EQ(read(path), wanted);
  EXPECT_TRUE(shown->extraSelections().isEmpty());
}

TEST_F(WritingPage, AFileWithAnErrorIsRefusedWithItsPlace) {
  const std::string before = text();
  const std::string path = put("bad", kOwn + "berth = \"siding_9\"\n");
  EXPECT_FALSE(view_->open(QString::fromStdString(path)));
  EXPECT_EQ(text(), before) << "nothing was taken over";
  EXPECT_TRUE(said().contains(QStringLiteral("scenario.toml:11:9:"))) << said().toStdString();
  EXPECT_FALSE(view_->open(QString::fromStdString(put("worse", "title = \"x\n"))));
  EXPECT_TRUE(said().contains(QStringLiteral(":1:"))) << said().toStdString();
  EXPECT_FALSE(view_->open(QStringLiteral("nowhere.toml")));
  EXPECT_EQ(text(), before);
}

TEST_F(WritingPage, OwnScenariosAreListedTheBrokenOnesToo) {
  const std::string path = put("mine", kOwn);
  put("bad", kOwn + "berth = \"siding_9\"\n");
  click("writing_open");
  auto* own = get<QListWidget>("writing_own");
  ASSERT_NE(own, nullptr);
  ASSERT_EQ(own->count(), 2);
  EXPECT_TRUE(own->item(0)->text().contains(QStringLiteral("scenario.toml:11:9:")))
      << own->item(0)->text().toStdString();
  EXPECT_EQ(own->item(1)->text(), QStringLiteral("Mine"));
  own->setFocus();
  own->setCurrentRow(1);
  QTest::keyClick(own, Qt::Key_Return);
  EXPECT_EQ(text(), kOwn);
  EXPECT_EQ(view_->writing().path().toStdString(), path);
}

TEST_F(WritingPage, NothingIsOverwrittenWithoutAsking) {
  const std::string path = put("mine", kOwn);
  click("writing_save_as");
  type("writing_path", QString::fromStdString(path));
  click("writing_do");
  EXPECT_EQ(read(path), kOwn) << "asked first";
  EXPECT_FALSE(said().isEmpty());
  click("writing_do");
  EXPECT_EQ(read(path), text());
  EXPECT_NE(text(), kOwn);
}

TEST_F(WritingPage, WhatWasDoneIsTakenBack) {
  const std::string before = text();
  goTo(4);
  click("writing_new_hidden");
  EXPECT_NE(text(), before);
  click("writing_undo");
  EXPECT_EQ(text(), before);
}

TEST_F(WritingPage, TheMomentOfARunIsTaken) {
  const auto seat = tests::makeSeat("hill-start", scenario::Mode::kPractice);
  EXPECT_FALSE(get<QPushButton>("writing_moment")->isEnabled());
  desk_.setSeat(seat.get());
  click("writing_moment");
  EXPECT_TRUE(says("brake_handle = \"cab1\"\n")) << text();
  EXPECT_TRUE(says("train_pipe_inhg = ")) << text();
  EXPECT_TRUE(view_->writing().check().empty())
      << scenario::toText(view_->writing().faults().front());
  desk_.setSeat(nullptr);
}

}  // namespace
}  // namespace cabwright::desk
