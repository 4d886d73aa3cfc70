// SPDX-License-Identifier: GPL-3.0-or-later
// The pictures that tests/screenshots takes: they are there, of the size asked for, in the theme
// asked for, and there is something to see on each.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QDir>
#include <QImage>
#include <QProcess>
#include <QSet>

namespace cabwright {
namespace {

struct Taken {
  int code = -1;
  QString said;
};

Taken takePictures(const QStringList& words, const QString& scale = QStringLiteral("1")) {
  QProcess program;
  QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
  environment.insert(QStringLiteral("QT_SCALE_FACTOR"), scale);
  program.setProcessEnvironment(environment);
  program.setProcessChannelMode(QProcess::MergedChannels);
  program.start(QStringLiteral(CABWRIGHT_BINARY_DIR "/tests/screens/screenshots"), words);
  program.waitForFinished(-1);
  return {program.exitStatus() == QProcess::NormalExit ? program.exitCode() : -1,
          QString::fromLocal8Bit(program.readAll())};
}

QDir freshFolder(const QString& name) {
  QDir folder(QStringLiteral(CABWRIGHT_BINARY_DIR "/screenshots/") + name);
  folder.removeRecursively();
  return folder;
}

// Colours of every seventh pixel: more than a line or two of text has.
qsizetype countColours(const QImage& image) {
  QSet<QRgb> colours;
  for (int y = 0; y < image.height(); y += 7)
    for (int x = 0; x < image.width(); x += 7) colours.insert(image.pixel(x, y));
  return colours.size();
}

double meanLight(const QImage& image) {
  double sum = 0;
  int count = 0;
  for (int y = 0; y < image.height(); y += 7)
    for (int x = 0; x < image.width(); x += 7, ++count) sum += qGray(image.pixel(x, y));
  return sum / count;
}

TEST(Screenshots, ShowSomethingInBothThemes) {
  const QDir folder = freshFolder(QStringLiteral("plain"));
  const QStringList pages{"choose", "settings", "booking", "cab1", "cab1-round", "mechanism"};
  const Taken taken = takePictures(QStringList{folder.path(), "1280x720"} + pages);
  ASSERT_EQ(taken.code, 0) << taken.said.toStdString();
  EXPECT_THAT(taken.said.toStdString(), testing::HasSubstr("12 pictures in "));
  QSet<QByteArray> different;
  for (const QString& page : pages) {
    const QImage day(folder.filePath("1280x720-day/" + page + ".png"));
    const QImage night(folder.filePath("1280x720-night/" + page + ".png"));
    ASSERT_EQ(day.size(), QSize(1280, 720)) << page.toStdString();
    ASSERT_EQ(night.size(), QSize(1280, 720)) << page.toStdString();
    EXPECT_GT(countColours(day), 20) << page.toStdString();
    EXPECT_GT(countColours(night), 20) << page.toStdString();
    EXPECT_GT(meanLight(day), meanLight(night) + 50) << page.toStdString();
    different.insert(QByteArray(reinterpret_cast<const char*>(day.constBits()), day.sizeInBytes()));
  }
  EXPECT_EQ(different.size(), pages.size());
}

TEST(Screenshots, ShowWhatAnExerciseIsAbout) {
  const QDir folder = freshFolder(QStringLiteral("exercises"));
  const Taken taken =
      takePictures({folder.path(), "1280x720", "exercise-flag-far-side", "exercise-frost"});
  ASSERT_EQ(taken.code, 0) << taken.said.toStdString();
  EXPECT_THAT(taken.said.toStdString(), testing::HasSubstr("4 pictures in "));
  const QImage flag(folder.filePath("1280x720-day/exercise-flag-far-side.png"));
  const QImage frost(folder.filePath("1280x720-day/exercise-frost.png"));
  ASSERT_EQ(flag.size(), QSize(1280, 720));
  EXPECT_NE(flag, frost);
  // The flag is red, and large; nothing else on a plate is.
  const auto countRed = [](const QImage& image) {
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
      for (int x = 0; x < image.width(); ++x) {
        const QColor c = image.pixelColor(x, y);
        if (c.red() > 230 && c.green() < 120 && c.blue() < 120) ++count;
      }
    return count;
  };
  EXPECT_GT(countRed(flag), 300);
  EXPECT_LT(countRed(frost), countRed(flag) / 2);
}

TEST(Screenshots, FillAScreenOfTwiceTheScale) {
  const QDir folder = freshFolder(QStringLiteral("twice"));
  const Taken taken = takePictures({folder.path(), "1280x720", "caution"}, QStringLiteral("2"));
  ASSERT_EQ(taken.code, 0) << taken.said.toStdString();
  EXPECT_EQ(QImage(folder.filePath("2560x1440-day/caution.png")).size(), QSize(2560, 1440));
}

TEST(Screenshots, APageThatIsNotThereIsAFault) {
  const QDir folder = freshFolder(QStringLiteral("none"));
  const Taken taken = takePictures({folder.path(), "attic"});
  EXPECT_EQ(taken.code, 2);
  EXPECT_THAT(taken.said.toStdString(), testing::HasSubstr("attic: no such page"));
}

}  // namespace
}  // namespace cabwright
