// SPDX-License-Identifier: GPL-3.0-or-later
// The report is read by another program (poppler's pdftotext and pdftoppm), as whoever gets it
// does.
#include "review_room/report.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QDir>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>

#include "after/words.h"
#include "reviewed_session.h"
#include "session/database.h"

namespace cabwright::review_room {
namespace {

using marking::Outcome;
using testing::HasSubstr;
using testing::Not;

std::string outputOf(const QString& program, const QStringList& words) {
  QProcess process;
  process.start(program, words);
  EXPECT_TRUE(process.waitForFinished(-1)) << program.toStdString() << " is missing";
  EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
  return process.readAllStandardOutput().toStdString();
}

class ReportTest : public testing::Test {
 protected:
  void SetUp() override { review::recordAndSeal(session_, review::kBadDeeds); }

  void write(const Opened& opened, const ReportOptions& options = {QStringLiteral("9.9"), {}, {}}) {
    const auto fault = writeReport(opened, pdf_, options);
    ASSERT_FALSE(fault) << fault->toStdString();
  }
  // Words with single blanks, since lines are parted anywhere.
  std::string text() {
    return QString::fromStdString(outputOf(QStringLiteral("pdftotext"), {pdf_, "-"}))
        .simplified()
        .toStdString();
  }
  std::vector<QImage> pages() {
    const QString stem = QString::fromStdString((folder_ / "page").string());
    outputOf(QStringLiteral("pdftoppm"), {"-r", "50", "-png", pdf_, stem});
    std::vector<QImage> images;
    const QDir folder(QString::fromStdString((folder_ / ".").string()));
    for (const QString& name : folder.entryList({"page*.png"}, QDir::Files, QDir::Name))
      images.emplace_back(folder.filePath(name));
    return images;
  }

  review::Folder folder_;
  std::filesystem::path session_ = folder_ / "a.cabsession";
  QString pdf_ = QString::fromStdString((folder_ / "a.pdf").string());
};

TEST_F(ReportTest, SaysWhatTheSheetSays) {
  const Opened opened(session_);
  write(opened);
  const std::string words = text();
  EXPECT_THAT(words, HasSubstr("Mark sheet"));
  EXPECT_THAT(words, HasSubstr("Sealed and whole"));
  EXPECT_THAT(words, HasSubstr(opened.sheet().head.session_id));
  EXPECT_THAT(words, HasSubstr("gives no authority to drive"));
  EXPECT_THAT(words, HasSubstr("No assessor has decided yet"));
  int broken = 0;
  for (const marking::SheetLine& line : opened.sheet().lines) {
    EXPECT_THAT(words, HasSubstr(after::sheetWords(line.title).simplified().toStdString()));
    if (line.outcome() != Outcome::kBroken) continue;
    ++broken;
    EXPECT_THAT(words, HasSubstr(after::sheetWords(line.why).simplified().toStdString()));
  }
  EXPECT_GT(broken, 0);
}

TEST_F(ReportTest, EveryPageSaysWhichOneItIs) {
  write(Opened(session_));
  const std::size_t count = pages().size();
  ASSERT_GT(count, 1U);
  const std::string words = text();
  for (std::size_t k = 1; k <= count; ++k)
    EXPECT_THAT(words, HasSubstr("page " + std::to_string(k) + " of " + std::to_string(count)));
}

TEST_F(ReportTest, NothingIsSetBeyondTheEdges) {
  write(Opened(session_));
  for (const QImage& page : pages()) {
    // 12 mm at each side, of 210: nothing but paper.
    const int edge = page.width() * 12 / 210;
    for (int y = 0; y < page.height(); ++y)
      for (int x = 0; x < edge; ++x) {
        ASSERT_GT(qGray(page.pixel(x, y)), 250) << x << ", " << y;
        ASSERT_GT(qGray(page.pixel(page.width() - 1 - x, y)), 250) << x << ", " << y;
      }
  }
}

TEST_F(ReportTest, WhatAnAssessorAddedStandsBesideWhatWasRecorded) {
  Opened opened(session_);
  opened.setSigner(review::kAssessor, session::sampleKey(2));
  ASSERT_EQ(opened.add({review::Override{"gear", "", Outcome::kMet, "asked to by the instructor"}}),
            std::nullopt);
  ASSERT_EQ(
      opened.add({review::Decision{review::Result::kPassed, "on the override", "a hill start next"},
                  review::SignOff{"I have seen the whole of it"}}),
      std::nullopt);
  write(opened);
  const std::string words = text();
  EXPECT_THAT(words, HasSubstr("recorded broken, counts as met"));
  EXPECT_THAT(words, HasSubstr("asked to by the instructor"));
  EXPECT_THAT(words, HasSubstr("Decided: passed, by R. Who (assessor)"));
  EXPECT_THAT(words, HasSubstr("Next step: a hill start next"));
  EXPECT_THAT(words, HasSubstr("Signed by R. Who (assessor): I have seen the whole of it"));
}

TEST_F(ReportTest, PicturesAreOfTheMomentsThatDecided) {
  const Opened opened(session_);
  std::vector<std::int64_t> asked;
  ReportOptions options;
  options.picture = [&](std::int64_t tick) {
    asked.push_back(tick);
    QImage image(320, 180, QImage::Format_RGB32);
    image.fill(Qt::blue);
    return image;
  };
  write(opened, options);
  std::vector<std::int64_t> moments;
  for (const marking::SheetLine* line : after::findBrokenLines(opened.sheet())) {
    const std::int64_t tick = after::momentOf(opened.sheet(), *line);
    if (std::ranges::find(moments, tick) == moments.end()) moments.push_back(tick);
  }
  EXPECT_EQ(asked, moments);
  int blue = 0;
  for (const QImage& page : pages())
    for (int y = 0; y < page.height(); ++y)
      for (int x = 0; x < page.width(); ++x)
        blue += page.pixelColor(x, y).blue() > 230 && page.pixelColor(x, y).red() < 30;
  EXPECT_GT(blue, 1000);
}

TEST_F(ReportTest, AFileThatCannotBeWrittenIsTold) {
  pdf_ = QString::fromStdString((folder_ / "no-such-folder" / "a.pdf").string());
  const auto fault = writeReport(Opened(session_), pdf_, {});
  ASSERT_TRUE(fault);
  EXPECT_THAT(fault->toStdString(), HasSubstr("cannot be written"));
}

TEST_F(ReportTest, AnAlteredRecordSaysSo) {
  {
    session::Database database = session::Database::openForWriting(session_);
    database.run("UPDATE state SET hash = hash + 1 WHERE seq = (SELECT max(seq) FROM state)");
  }
  write(Opened(session_));
  EXPECT_THAT(text(), HasSubstr("Altered: this is not what was sealed."));
}

}  // namespace
}  // namespace cabwright::review_room
