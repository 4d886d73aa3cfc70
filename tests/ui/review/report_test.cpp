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

#include "after/strip_chart.h"
#include "after/words.h"
#include "review_room/moment_picture.h"
#include "review_room/recency_day.h"
#include "review_room/report_paper.h"
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

TEST_F(ReportTest, ItSaysWhichAttemptOnWhichPlantAndForHowLong) {
  const Opened opened(session_);
  write(opened);
  std::string words = text();
  EXPECT_THAT(words, HasSubstr("not counted: the session cannot be told"));
  EXPECT_THAT(words, HasSubstr(review::describePlant(opened.store().header())));
  EXPECT_THAT(words, HasSubstr("not a pass that counts"));
  for (const char* name : {"Attempt", "Plant", "Good until", "Model limits", "none met"})
    EXPECT_THAT(words, HasSubstr(name));

  Opened decided(session_);
  decided.setSigner(review::kAssessor, session::sampleKey(2));
  ASSERT_EQ(decided.add({review::Decision{review::Result::kPassed, "seen otherwise", ""}}),
            std::nullopt);
  ReportOptions options;
  options.attempt = review::AttemptPlace{2, 3};
  write(decided, options);
  words = text();
  EXPECT_THAT(words, HasSubstr("2 of 3 at this exercise"));
  EXPECT_THAT(words, HasSubstr("no time is set at this station"));
  options.recency.months = 24;
  write(decided, options);
  const auto begun = localDay(review::lookAt(session_));
  ASSERT_TRUE(begun);
  EXPECT_THAT(text(), HasSubstr(dayText(review::addMonths(*begun, 24)).toStdString()));
  EXPECT_THAT(text(), Not(HasSubstr("Altered")));
}

// Nobody reads on to the second page to find out that the first is worth nothing.
TEST_F(ReportTest, TheFirstPageSaysThatTheRecordWasAltered) {
  session::spill(session_, session::slurp(session_) + "x");
  write(Opened(session_));
  const std::string words = text();
  const std::size_t altered = words.find("Altered: this is not what was sealed");
  ASSERT_NE(altered, std::string::npos);
  EXPECT_LT(altered, words.find("Who and what"));
  EXPECT_THAT(words, HasSubstr("the record was altered: it proves no pass"));
}

// Keys do nothing on paper: what is left off stands beside the word for time and nowhere else.
TEST_F(ReportTest, TheStripOnPaperShowsNoKeys) {
  const Opened opened(session_);
  const auto draw = [&](bool keys) {
    const after::SheetLook look{drawing::Theme::kDay, 1, keys};
    after::StripChart strip(look);
    strip.resize(1000, 760);
    strip.setRun(opened.run());
    QImage image(strip.size(), QImage::Format_RGB32);
    strip.render(&image);
    return image;
  };
  const QImage screen = draw(true), paper = draw(false);
  QRect other;
  for (int y = 0; y < paper.height(); ++y)
    for (int x = 0; x < paper.width(); ++x)
      if (paper.pixel(x, y) != screen.pixel(x, y)) other |= QRect(x, y, 1, 1);
  ASSERT_FALSE(other.isEmpty());
  EXPECT_LT(other.right(), 238);
  EXPECT_GT(other.top(), 700);
  const QRgb ground = drawing::colorOf(drawing::Theme::kDay, drawing::Tone::kPaper).rgb();
  for (int y = other.top(); y <= other.bottom(); ++y)
    for (int x = other.left(); x <= other.right(); ++x)
      ASSERT_EQ(paper.pixel(x, y), ground) << x << ", " << y;
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

TEST_F(ReportTest, APictureShowsThePlateAndFitsThePage) {
  const Opened opened(session_);
  MomentPainter painter(opened);
  const QImage before = painter.paint(150), after = painter.paint(900);
  ASSERT_FALSE(before.isNull());
  ASSERT_EQ(before.size(), after.size());
  const QRgb ground = drawing::colorOf(drawing::Theme::kDay, drawing::Tone::kPaper).rgb();
  // In each third of the plate, from left to right, something is drawn.
  for (int third = 0; third < 3; ++third) {
    int inked = 0;
    for (int y = before.height() / 4; y < before.height() * 3 / 4; ++y)
      for (int x = before.width() * third / 3; x < before.width() * (third + 1) / 3; ++x)
        inked += before.pixel(x, y) != ground;
    EXPECT_GT(inked, before.width() * before.height() / 200) << third;
  }
  EXPECT_NE(before, after) << "the gear was moved between them";

  Paper counted;
  QImage high(300, 600, QImage::Format_RGB32);
  EXPECT_TRUE(counted.fits(high, 600));
  counted.skip(counted.room() - 700);
  EXPECT_FALSE(counted.fits(high, 600));
  EXPECT_TRUE(counted.fits(high, 300));
  counted.picture(high, 600, 300);
  EXPECT_EQ(counted.page(), 1) << "made smaller";
  EXPECT_GE(counted.room(), 0);
  counted.picture(high, 600, 300);
  EXPECT_EQ(counted.page(), 2);
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
