// SPDX-License-Identifier: GPL-3.0-or-later
// The way to the device, with and without one: the tests run where there is no sound at all.
#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QMediaDevices>
#include <atomic>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <thread>

#include "hearing/mailbox.h"
#include "hearing/player.h"
#include "hearing/speaker.h"
#include "hearing/synth_device.h"
#include "spectrum.h"

namespace cabwright::hearing::testing {
namespace {

std::atomic<int> warnings{0};

class CountWarnings {
 public:
  CountWarnings() {
    warnings = 0;
    before_ = qInstallMessageHandler([](QtMsgType type, const QMessageLogContext&, const QString&) {
      if (type != QtDebugMsg && type != QtInfoMsg) ++warnings;
    });
  }
  ~CountWarnings() { qInstallMessageHandler(before_); }
  CountWarnings(const CountWarnings&) = delete;
  CountWarnings& operator=(const CountWarnings&) = delete;

 private:
  QtMessageHandler before_;
};

TEST(Speaker, GoesOnWithoutADevice) {
  const CountWarnings counting;
  {
    Speaker speaker;
    speaker.setMuted(true);  // where there is a device, nobody wants to hear this
    for (int k = 0; k < 200; ++k) {
      speaker.setScene(loudest());
      speaker.setVolume(k / 100.0);
      speaker.setFrozen(k % 7 == 0);
      QCoreApplication::processEvents();
    }
    if (QMediaDevices::defaultAudioOutput().isNull()) {
      EXPECT_FALSE(speaker.hasDevice());
    }
  }
  // The platform may say once that there is nothing; not at every frame.
  EXPECT_LE(warnings.load(), 3);
}

TEST(Speaker, CanBeTakenDownAtAnyMoment) {
  for (int k = 0; k < 5; ++k) {
    Speaker speaker;
    speaker.setMuted(true);
    if (k % 2 == 0) speaker.setFrozen(true);
  }
}

TEST(Player, IsQuietOnNoDevice) {
  Player player;
  bool told = false;
  QObject::connect(&player, &Player::worksChanged, [&](bool) { told = true; });
  player.play(QAudioDevice{});
  player.setSuspended(true);
  player.setSuspended(false);
  player.stop();
  EXPECT_FALSE(told);
}

QAudioFormat formatOf(QAudioFormat::SampleFormat sample, int rate = kRate, int channels = 2) {
  QAudioFormat f;
  f.setSampleFormat(sample);
  f.setSampleRate(rate);
  f.setChannelCount(channels);
  return f;
}

TEST(SynthDevice, GivesWholePairsForEver) {
  SynthDevice device;
  ASSERT_TRUE(device.open(QIODevice::ReadOnly | QIODevice::Unbuffered));
  EXPECT_FALSE(device.atEnd());
  EXPECT_GT(device.bytesAvailable(), 0);
  QByteArray bytes(100003, 'x');
  EXPECT_EQ(device.read(bytes.data(), bytes.size()), 100000);
  EXPECT_EQ(device.read(bytes.data(), 7), 0);
  EXPECT_EQ(device.write("x", 1), -1);
}

TEST(SynthDevice, SoundsItsNewestSceneInBothFormats) {
  HeardScene horn;
  horn.horn = 1;
  horn.horn_level = 1.0;
  for (const auto sample : {QAudioFormat::Float, QAudioFormat::Int16}) {
    SynthDevice device;
    ASSERT_TRUE(device.setFormat(formatOf(sample)));
    ASSERT_TRUE(device.open(QIODevice::ReadOnly | QIODevice::Unbuffered));
    device.setScene(loudest());
    device.setScene(horn);
    const QByteArray bytes = device.read(2L * kRate * (sample == QAudioFormat::Float ? 4 : 2));
    Mono mono;
    for (int k = 0; k < kRate; ++k) {
      if (sample == QAudioFormat::Float) {
        float v = 0.0F;
        std::memcpy(&v, bytes.data() + 8L * k, sizeof v);
        mono.push_back(v);
      } else {
        std::int16_t v = 0;
        std::memcpy(&v, bytes.data() + 4L * k, sizeof v);
        mono.push_back(v / 32767.0);
      }
    }
    EXPECT_EQ(findStrongest(mono, 280.0, 400.0, 5.0), 300.0);
    EXPECT_NEAR(calcRms(mono), calcRms(renderSteady(horn, 1.0)), 0.02);
  }
}

TEST(SynthDevice, IsSilentWhileMutedOrHeld) {
  SynthDevice device;
  ASSERT_TRUE(device.open(QIODevice::ReadOnly | QIODevice::Unbuffered));
  device.setScene(loudest());
  const auto peak = [&] {
    (void)device.read(8L * kRate);  // past the fade
    const QByteArray bytes = device.read(8L * 4800);
    double most = 0.0;
    for (qsizetype k = 0; k < bytes.size(); k += 4) {
      float v = 0.0F;
      std::memcpy(&v, bytes.data() + k, sizeof v);
      most = std::max(most, std::abs(static_cast<double>(v)));
    }
    return most;
  };
  EXPECT_GT(peak(), 0.2);
  device.setHeld(true);
  EXPECT_EQ(peak(), 0.0);
  device.setMuted(true);
  device.setHeld(false);
  EXPECT_EQ(peak(), 0.0);
  device.setMuted(false);
  EXPECT_GT(peak(), 0.2);
  device.setVolume(0.0);
  EXPECT_EQ(peak(), 0.0);
}

TEST(SynthDevice, KnowsWhatItCannotGive) {
  SynthDevice device;
  EXPECT_FALSE(device.setFormat(formatOf(QAudioFormat::UInt8)));
  EXPECT_FALSE(device.setFormat(formatOf(QAudioFormat::Float, kRate, 6)));
  EXPECT_FALSE(device.setFormat(formatOf(QAudioFormat::Float, 300)));
  EXPECT_FALSE(device.setFormat(QAudioFormat{}));
  EXPECT_TRUE(device.setFormat(formatOf(QAudioFormat::Int16, 44100)));
}

TEST(Mailbox, GivesTheNewestOnceAndNeverATornOne) {
  struct Pair {
    std::int64_t a = 0, b = 0;
  };
  Mailbox<Pair> box;
  Pair got;
  EXPECT_FALSE(box.take(got));
  box.put({1, -1});
  box.put({2, -2});
  EXPECT_TRUE(box.take(got));
  EXPECT_EQ(got.a, 2);
  EXPECT_FALSE(box.take(got));

  constexpr std::int64_t kLast = 20000;
  std::jthread writer([&] {
    for (std::int64_t k = 3; k <= kLast; ++k) box.put({k, -k});
  });
  std::int64_t last = 2;
  while (last < kLast) {
    if (!box.take(got)) continue;
    ASSERT_EQ(got.a, -got.b);
    ASSERT_GT(got.a, last);
    last = got.a;
  }
}

}  // namespace
}  // namespace cabwright::hearing::testing
