// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/heard_part.h"

#include <algorithm>
#include <cmath>

namespace cabwright::cab {

using drawing::Anchor;
using drawing::Tone;
using hearing::HeardTrace;

namespace {

constexpr double kTraceSpeed = 40;        // u a second
constexpr std::int64_t kRedrawTicks = 4;  // 25 pictures a second are enough for a trace
constexpr double kPitch = 29;
constexpr double kGuardMore = 0.35;

}  // namespace

HeardPart::HeardPart(Seat& seat, const SheetStyle& style, bool in_a_row, QWidget* parent)
    : Part(seat, style, parent), in_a_row_(in_a_row) {
  setFocusPolicy(Qt::NoFocus);
  setAccessibleName(tr("What is heard"));
}

void HeardPart::refresh() {
  const std::int64_t tick = seat().run().tick();
  const hearing::HeardScene scene = hearing::calcScene(seat().frame(), seat().place());
  listener_.hear(scene, static_cast<double>(tick) * 0.01);
  std::vector<hearing::HeardLine> now = hearing::calcHeardLines(scene, listener_.trend());
  const bool same = std::ranges::equal(now, lines_, [](const auto& a, const auto& b) {
    return a.who == b.who && a.trace == b.trace && a.words == b.words;
  });
  const bool sounds =
      std::ranges::any_of(now, [](const auto& line) { return line.trace != HeardTrace::kNone; });
  const bool due = sounds && !style().reduced_motion && tick - drawn_tick_ >= kRedrawTicks;
  lines_ = std::move(now);
  if (same && !due) return;
  if (drawn_tick_ >= 0)
    moved_ += std::min(0.2, static_cast<double>(tick - drawn_tick_) * 0.01) * kTraceSpeed;
  drawn_tick_ = tick;
  update();
}

PartRole HeardPart::role() const {
  QStringList words;
  for (const hearing::HeardLine& line : lines_)
    words << line.name + QLatin1String(": ") + line.words;
  return {PartRole::Kind::kText, tr("What is heard"), words.join(QLatin1String("; ")), {}};
}

void HeardPart::paintTrace(drawing::Pen& pen, QPointF at, double width,
                           const hearing::HeardLine& line) const {
  pen.line(at, at + QPointF(width, 0), {drawing::kHairline, Tone::kRule, {}, false});
  const double high = std::clamp(3 + 8 * line.level, 3.0, 11.0);
  switch (line.trace) {
    case HeardTrace::kNone:
      return;
    case HeardTrace::kEngine: {
      // Bars run to the left; their distance grows as the note falls.
      const double gap = std::clamp(900 / std::max(20.0, line.rate_hz * 20), 4.5, 26.0);
      const double shift = std::fmod(moved_, gap * 3);
      int k = 0;
      for (double x = gap * 3 - shift; x < width; x += gap, ++k) {
        const double share = k % 3 == 0 ? 0.5 : k % 3 == 1 ? 1.0 : 0.75;
        pen.line(at + QPointF(x, -high * share), at + QPointF(x, high * share),
                 {1.6, Tone::kInk, {}, false});
      }
      return;
    }
    case HeardTrace::kBell: {
      const int strokes = std::clamp(static_cast<int>(std::lround(line.rate_hz)), 1, 9);
      // Many strokes close up, like a coil; they never run into the name before them.
      const double pitch = strokes > 1 ? std::min(22.0, (width - 24) / (strokes - 1)) : 0;
      for (int k = 0; k < strokes; ++k)
        pen.circle(at + QPointF(width - 14 - pitch * k, 0), 7.5,
                   {drawing::kThin, Tone::kInk, {}, false}, Tone::kPaper);
      return;
    }
    case HeardTrace::kAir: {
      QPolygonF rough;
      const double shift = std::fmod(moved_, 6.0);
      int k = 0;
      for (double x = 0; x <= width; x += 3, ++k)
        rough << at + QPointF(x, (k % 2 == 0 ? -1 : 1) * (0.8 + 4 * line.level) *
                                     (0.6 + 0.4 * std::sin(1.7 * k + shift)));
      pen.polyline(rough, {1.1, Tone::kInk2, {}, false});
      return;
    }
    case HeardTrace::kTone: {
      QPolygonF wave;
      for (double x = 0; x <= width; x += 2)
        wave << at + QPointF(x, high * 0.7 * std::sin((x + moved_) * 0.25));
      pen.polyline(wave, {1.4, Tone::kInk, {}, false});
      return;
    }
    case HeardTrace::kBlows: {
      const double gap = 34;
      for (double x = gap - std::fmod(moved_, gap); x < width; x += gap)
        pen.line(at + QPointF(x, -high), at + QPointF(x, high), {2.4, Tone::kInk, {}, false});
      return;
    }
  }
}

void HeardPart::paint(drawing::Pen& pen) const {
  const QRectF& a = area();
  if (in_a_row_) {
    const std::size_t n = std::min<std::size_t>(4, lines_.size());
    if (n == 0) return;
    // The guard's words are the longest.
    const double share = a.width() / (static_cast<double>(n) + kGuardMore);
    double x = a.left();
    for (std::size_t k = 0; k < n; ++k) {
      const double column = k == 0 ? share * (1 + kGuardMore) : share;
      const double y = a.top() + 20;
      const double w = pen.text({x, y}, lines_[k].name, {.tone = Tone::kInk2});
      const double trace = std::clamp(column - w - 190, 0.0, 90.0);
      if (trace > 30) paintTrace(pen, {x + w + 12, y - 6.5}, trace, lines_[k]);
      const double at = x + w + 12 + (trace > 30 ? trace + 12 : 0);
      pen.text({at, y}, drawing::elideText(lines_[k].words, x + column - at - 10), {});
      x += column;
    }
    return;
  }
  // What is silent makes room for what sounds.
  const auto room = static_cast<std::size_t>(std::max(1.0, std::floor((a.height() - 6) / kPitch)));
  std::vector<const hearing::HeardLine*> rows;
  for (const hearing::HeardLine& line : lines_) rows.push_back(&line);
  for (std::size_t k = rows.size(); k-- > 1 && rows.size() > room;) {
    if (rows[k]->trace == HeardTrace::kNone) rows.erase(rows.begin() + static_cast<int>(k));
  }
  const double name = 88, trace = 60, words = a.width() - name - trace - 16;
  double y = a.top() + 24;
  for (std::size_t k = 0; k < std::min(room, rows.size()); ++k, y += kPitch) {
    const hearing::HeardLine& line = *rows[k];
    pen.text({a.left(), y}, drawing::elideText(line.name, name - 6), {.tone = Tone::kInk2});
    paintTrace(pen, {a.left() + name, y - 6.5}, trace, line);
    pen.text({a.left() + name + trace + 16, y}, drawing::elideText(line.words, words),
             {.bold = line.trace == HeardTrace::kBell});
  }
}

}  // namespace cabwright::cab
