// SPDX-License-Identifier: GPL-3.0-or-later
// An assessor's whole work in the real window, by mouse and keys: a session opened, a line looked
// at and decided otherwise, decided, signed, and taken out on paper.
#include <QAction>
#include <QFile>
#include <QMenuBar>
#include <QProcess>
#include <QStatusBar>
#include <QTest>

#include "marks_rig.h"
#include "review_room/review_window.h"
#include "session/verify.h"

namespace cabwright::review_room {
namespace {

using testing::HasSubstr;

class OpenToPaper : public testing::Test {
 protected:
  OpenToPaper() {
    review::recordAndSeal(file_, review::kBadDeeds);
    window_.resize(1600, 1000);
    window_.show();
    window_.open(file_);
    EXPECT_TRUE(QTest::qWaitFor([this] { return !window_.isOpening(); }, 60'000));
    if (window_.marks() != nullptr) window_.marks()->setKeyFolder(folder_ / "keys");
  }
  void press(const char* name) {
    auto* button = window_.findChild<QAbstractButton*>(QLatin1String(name));
    ASSERT_NE(button, nullptr) << name;
    ASSERT_TRUE(button->isVisible()) << name;
    QTest::mouseClick(button, Qt::LeftButton);
  }
  void type(const char* name, const QString& words) {
    auto* field = window_.findChild<QWidget*>(QLatin1String(name));
    ASSERT_NE(field, nullptr) << name;
    field->setFocus();
    QTest::keyClicks(field, words);
  }
  QAction* findAction(const QString& words) {
    for (QAction* menu : window_.menuBar()->actions())
      for (QAction* action : menu->menu()->actions())
        if (action->text().remove(QLatin1Char('&')).contains(words)) return action;
    return nullptr;
  }
  QString at(const char* name) { return QString::fromStdString((folder_ / name).string()); }

  Folder folder_;
  std::filesystem::path file_ = folder_ / "a.cabsession";
  ReviewWindow window_;
};

TEST_F(OpenToPaper, OverriddenDecidedSignedAndPrinted) {
  ASSERT_NE(window_.view(), nullptr);
  Opened& opened = window_.view()->opened();
  press("sign_on");
  type("sign_on_name", "R. Who");
  press("sign_on_do");
  ASSERT_TRUE(opened.signer());

  window_.marks()->showMoment(200);
  press("override");
  press("override_as0");
  type("override_reason", "asked to by the instructor");
  press("override_do");
  ASSERT_TRUE(opened.sheet().decision.passed);

  press("sign");
  press("decide_as0");
  type("decide_reason", "on the override");
  press("decide_do");
  auto* sign = window_.findChild<QAbstractButton*>(QStringLiteral("sign_do"));
  ASSERT_NE(sign, nullptr);
  sign->setFocus();
  QTest::keyClick(sign, Qt::Key_Space);
  ASSERT_EQ(opened.entries().size(), 3U);
  EXPECT_EQ(session::verifySession(file_).standing, session::Standing::kWhole);

  QAction* paper = findAction(QStringLiteral("paper"));
  ASSERT_NE(paper, nullptr);
  EXPECT_TRUE(paper->isEnabled());
  ASSERT_TRUE(window_.takeOutTo(TakeOut::kPaper, at("a.pdf")));
  EXPECT_THAT(window_.statusBar()->currentMessage().toStdString(), HasSubstr("a.pdf is written"));
  QProcess text;
  text.start(QStringLiteral("pdftotext"), {at("a.pdf"), "-"});
  ASSERT_TRUE(text.waitForFinished(-1));
  const std::string words =
      QString::fromUtf8(text.readAllStandardOutput()).simplified().toStdString();
  EXPECT_THAT(words, HasSubstr("Decided: passed, by R. Who (assessor)"));
  EXPECT_THAT(words, HasSubstr("recorded broken, counts as met"));
  EXPECT_THAT(words, HasSubstr("Signed by R. Who (assessor)"));
}

TEST_F(OpenToPaper, EverythingElseIsTakenOutToo) {
  for (const auto& [what, name] : {std::pair{TakeOut::kPage, "a.html"},
                                   {TakeOut::kTables, "tables"},
                                   {TakeOut::kStatements, "a.json"}})
    EXPECT_TRUE(window_.takeOutTo(what, at(name))) << name;
  EXPECT_TRUE(QFile::exists(at("tables") + QStringLiteral("/signals.csv")));
  QFile page(at("a.html"));
  ASSERT_TRUE(page.open(QIODevice::ReadOnly));
  EXPECT_TRUE(page.readAll().startsWith("<!DOCTYPE html>"));
}

TEST_F(OpenToPaper, WhatCannotBeWrittenIsTold) {
  EXPECT_FALSE(window_.takeOutTo(TakeOut::kPage, at("none/a.html")));
  EXPECT_THAT(window_.statusBar()->currentMessage().toStdString(), HasSubstr("cannot be written"));
}

}  // namespace
}  // namespace cabwright::review_room
