// SPDX-License-Identifier: GPL-3.0-or-later
#include "hearing/captions.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <array>
#include <cstddef>

namespace cabwright::hearing {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Hearing)
};

constexpr double kJustNowS = 10.0, kLongAgoS = 600.0, kMinuteS = 60.0;
constexpr double kBellRingsHz = 15.0;

QString countWords(int strokes) {
  switch (strokes) {
    case 1:
      return Words::tr("one stroke");
    case 2:
      return Words::tr("two strokes");
    case 3:
      return Words::tr("three strokes");
    case 4:
      return Words::tr("four strokes");
    case 5:
      return Words::tr("five strokes");
    case 6:
      return Words::tr("six strokes");
    case 7:
      return Words::tr("seven strokes");
    case 8:
      return Words::tr("eight strokes");
    default:
      return Words::tr("nine strokes");
  }
}

// A code is written group by group as digits: 33 is three, then three.
QString codeWords(int code) {
  QStringList groups;
  for (const QChar digit : QString::number(code)) groups << countWords(digit.digitValue());
  return groups.join(Words::tr(", then ", "between groups of strokes"));
}

HeardLine calcGuard(const HeardScene& s, const HeardTrend& trend) {
  HeardLine line{HeardWho::kGuard, HeardTrace::kNone, Words::tr("Guard"), {}, 0.0, 0.0};
  const bool recent = s.bell_code > 0 && s.bell_age_s < kJustNowS;
  if (s.bell || (trend.strokes > 0 && !recent)) {
    line.trace = HeardTrace::kBell;
    line.level = s.bell ? 1.0 : 0.3;
    line.words = countWords(std::clamp(trend.strokes, 1, 9));
  } else if (recent) {
    line.trace = HeardTrace::kBell;
    line.level = 0.3;
    line.words = Words::tr("%1 just now").arg(codeWords(s.bell_code));
  } else if (s.bell_code > 0 && s.bell_age_s < kLongAgoS) {
    const bool minutes = s.bell_age_s >= kMinuteS;
    line.words = (minutes ? Words::tr("%1 %2 min ago") : Words::tr("%1 %2 s ago"))
                     .arg(codeWords(s.bell_code))
                     .arg(static_cast<int>(s.bell_age_s / (minutes ? kMinuteS : 1.0)));
  } else if (s.bell_code > 0) {
    line.words = Words::tr("silent");
  } else {
    line.words = Words::tr("silent, no strokes yet");
  }
  return line;
}

QString evennessWords(double evenness) {
  if (evenness >= 0.95) return Words::tr("even", "engine note");
  if (evenness >= 0.8) return Words::tr("not quite even", "engine note");
  if (evenness >= 0.4) return Words::tr("uneven", "engine note");
  return Words::tr("fires now and then", "engine note");
}

QString speedWords(double rpm) {
  if (rpm < 360.0) return Words::tr("very slow", "engine note");
  if (rpm < 500.0) return Words::tr("idling", "engine note");
  if (rpm < 900.0) return Words::tr("fast idling", "engine note");
  if (rpm < 1450.0) return Words::tr("middling", "engine note");
  if (rpm < 1850.0) return Words::tr("high", "engine note");
  return Words::tr("very high", "engine note");
}

QString trendWords(NoteTrend trend, double rpm) {
  switch (trend) {
    case NoteTrend::kRising:
      return Words::tr("rising", "engine note");
    case NoteTrend::kFalling:
      return Words::tr("falling", "engine note");
    case NoteTrend::kHunting:
      return Words::tr("hunting", "engine note");
    case NoteTrend::kSteady:
      break;
  }
  return speedWords(rpm);
}

QString noteWords(const HeardEngine& e, NoteTrend trend) {
  constexpr double kTurnsRpm = 15.0, kCrankedRpm = 360.0, kFires = 0.05;
  if (e.starter && e.note_rpm < kTurnsRpm) return Words::tr("a growl, nothing turns");
  const bool fires = e.evenness > kFires && e.load > kFires;
  if (e.starter && e.note_rpm < kCrankedRpm) {
    return fires ? Words::tr("cranking, %1").arg(evennessWords(e.evenness)) : Words::tr("cranking");
  }
  if (e.starter) return Words::tr("a howl along with it, %1").arg(trendWords(trend, e.note_rpm));
  if (e.note_rpm < kTurnsRpm) return Words::tr("silent");
  if (!fires) return Words::tr("turning without firing, %1").arg(trendWords(trend, e.note_rpm));
  return Words::tr("%1, %2", "engine note: evenness, speed")
      .arg(evennessWords(e.evenness), trendWords(trend, e.note_rpm));
}

HeardLine calcEngineLine(const HeardScene& s, const HeardTrend& trend, std::size_t n) {
  const HeardEngine& e = s.engine[n];
  HeardLine line{n == 0 ? HeardWho::kEngine1 : HeardWho::kEngine2,
                 HeardTrace::kNone,
                 n == 0 ? Words::tr("Engine 1") : Words::tr("Engine 2"),
                 noteWords(e, trend.note[n]),
                 0.0,
                 0.0};
  if (e.note_rpm > 0.0 || e.starter) {
    line.trace = HeardTrace::kEngine;
    line.level = std::clamp((0.3 + 0.7 * e.load) * s.engine_nearness, 0.1, 1.0);
    line.rate_hz = e.note_rpm / 20.0;
  }
  if (e.hum > 0.6) line.words += Words::tr(", with a hum");
  if (e.hum > 0.05 && e.hum <= 0.6) line.words += Words::tr(", with a faint hum");
  if (e.compressor == Compressor::kLoaded && e.note_rpm > 0.0) {
    line.words += Words::tr(", with a light knock");
  }
  return line;
}

HeardLine calcAir(const HeardScene& s) {
  HeardLine line{HeardWho::kAir, HeardTrace::kNone, Words::tr("Air"), {}, s.hiss, 0.0};
  if (s.hiss <= 0.0) {
    line.words = Words::tr("no hiss");
    return line;
  }
  line.trace = HeardTrace::kAir;
  const bool deep = s.hiss_inwards > 0.5;
  if (s.hiss < 0.2) {
    line.words = deep ? Words::tr("deep hiss, faint") : Words::tr("hiss, faint");
  } else if (s.hiss < 0.6) {
    line.words = deep ? Words::tr("deep hiss") : Words::tr("hiss");
  } else {
    line.words = deep ? Words::tr("deep hiss, loud") : Words::tr("hiss, loud");
  }
  return line;
}

void addHorn(const HeardScene& s, std::vector<HeardLine>& lines) {
  if (s.horn == 0 || s.horn_level <= 0.0) return;
  QString words = s.horn == 1 ? Words::tr("low tone") : Words::tr("high tone");
  if (s.horn_level < 0.5) words += Words::tr(", weak", "horn");
  lines.push_back(
      {HeardWho::kHorn, HeardTrace::kTone, Words::tr("Horn"), words, s.horn_level, 0.0});
}

void addFireBell(const HeardScene& s, std::vector<HeardLine>& lines) {
  if (!s.fire_bell) return;
  lines.push_back({HeardWho::kFireBell, HeardTrace::kBell, Words::tr("Fire bell"),
                   Words::tr("ringing without a break"), 1.0, kBellRingsHz});
}

void addBelow(const HeardScene& s, const HeardTrend& trend, std::vector<HeardLine>& lines) {
  if (!s.rattle && !trend.thump_just_now) return;
  const QString words = s.rattle ? Words::tr("a rattle") : Words::tr("a thump just now");
  lines.push_back({HeardWho::kBelow, HeardTrace::kBlows, Words::tr("Below"), words,
                   s.rattle || s.thump ? 1.0 : 0.3, s.rattle ? s.rattle_hz : 0.0});
}

void addWheels(const HeardScene& s, std::vector<HeardLine>& lines) {
  constexpr double kRollsMph = 0.5, kSlowMph = 15.0, kFastMph = 45.0, kSquealPress = 0.1;
  constexpr double kJointsHzPerMph = 0.44704 / 18.3;
  if (s.speed_mph < kRollsMph) return;
  QString words = s.speed_mph < kSlowMph   ? Words::tr("rolling, slow")
                  : s.speed_mph < kFastMph ? Words::tr("rolling")
                                           : Words::tr("rolling, fast");
  if (s.block_press > kSquealPress) {
    words += s.speed_mph < 10.0 ? Words::tr(", with a squeal") : Words::tr(", with a rubbing");
  }
  lines.push_back({HeardWho::kWheels, HeardTrace::kBlows, Words::tr("Wheels"), words,
                   std::min(1.0, 0.2 + s.speed_mph / 60.0), s.speed_mph * kJointsHzPerMph});
}

void addNearby(const HeardScene& s, const HeardTrend& trend, std::vector<HeardLine>& lines) {
  if (!trend.click_just_now) return;
  lines.push_back({HeardWho::kNearby, HeardTrace::kBlows, Words::tr("Nearby"),
                   Words::tr("a click just now"), s.click ? 1.0 : 0.3, 0.0});
}

}  // namespace

std::vector<HeardLine> calcHeardLines(const HeardScene& scene, const HeardTrend& trend) {
  const HeardScene s = calcBounded(scene);
  std::vector<HeardLine> lines{calcGuard(s, trend), calcEngineLine(s, trend, 0),
                               calcEngineLine(s, trend, 1), calcAir(s)};
  addHorn(s, lines);
  addFireBell(s, lines);
  addBelow(s, trend, lines);
  addWheels(s, lines);
  addNearby(s, trend, lines);
  return lines;
}

}  // namespace cabwright::hearing
