// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/unit_view.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <limits>

#include "desk/draw_unit.h"
#include "desk/spot_button.h"
#include "drawing/furniture.h"

namespace cabwright::desk {

using drawing::Pen;
using drawing::Tone;

namespace {

constexpr double kWordsAbove = 24, kWordsBelow = kUnitHeight - 14;  // baselines
constexpr double kBetweenWords = 26, kWidest = 420;

SpotState::Kind kindOf(fault::FaultStage stage) {
  switch (stage) {
    case fault::FaultStage::kArmed:
      return SpotState::Kind::kArmed;
    case fault::FaultStage::kGrowing:
      return SpotState::Kind::kGrowing;
    case fault::FaultStage::kThere:
      return SpotState::Kind::kThere;
    case fault::FaultStage::kCleared:
      break;
  }
  return SpotState::Kind::kSound;
}

}  // namespace

std::vector<SpotState> calcSpotStates(const session::LiveRun* run) {
  std::vector<SpotState> states(spotTable().size());
  if (run == nullptr) return states;
  for (const session::FaultNow& now : run->faultsNow()) {
    const std::size_t spot = spotOf(*now.spec);
    const SpotState::Kind kind = kindOf(now.stage);
    if (spot >= states.size() || kind == SpotState::Kind::kSound) continue;
    states[spot].kind = std::max(states[spot].kind, kind);
    ++states[spot].count;
  }
  return states;
}

QString wordOf(SpotState::Kind kind) {
  switch (kind) {
    case SpotState::Kind::kArmed:
      return UnitView::tr("armed");
    case SpotState::Kind::kGrowing:
      return UnitView::tr("growing");
    case SpotState::Kind::kThere:
      return UnitView::tr("there");
    case SpotState::Kind::kSound:
      break;
  }
  return {};
}

UnitView::UnitView(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      states_(spotTable().size()),
      chosen_(spotTable().size()),
      pointed_(spotTable().size()) {
  setAccessibleName(tr("The unit, seen from above; cab 1 on the right, side 1 below"));
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  for (std::size_t k = 0; k < spotTable().size(); ++k) {
    auto* button = new SpotButton(*this, k);
    buttons_.push_back(button);
    connect(button, &QAbstractButton::clicked, this, [this, k] {
      setChosen(k);
      Q_EMIT spotChosen(k);
    });
  }
  current_ = std::min(findSpot("engine1"), spotTable().size() - 1);
  setCurrent(current_);
  connect(&desk_, &Desk::changed, this, &UnitView::refresh);
  connect(&desk_, &Desk::restyled, this, qOverload<>(&QWidget::update));
}

QAbstractButton* UnitView::button(std::size_t spot) const { return buttons_.at(spot); }

int UnitView::heightForWidth(int width) const {
  return static_cast<int>(std::lround(width * kUnitHeight / kUnitWidth));
}

void UnitView::setChosen(std::size_t spot) {
  if (spot == chosen_) return;
  if (chosen_ < buttons_.size()) buttons_[chosen_]->setChosen(false);
  chosen_ = spot;
  if (chosen_ < buttons_.size()) {
    buttons_[chosen_]->setChosen(true);
    setCurrent(chosen_);
  }
  setPointed(chosen_);
  update();
}

void UnitView::takeFocus() { buttons_[current_]->setFocus(Qt::ShortcutFocusReason); }

// Tab comes to one spot only; from there arrows go on.
void UnitView::setCurrent(std::size_t spot) {
  buttons_[current_]->setFocusPolicy(Qt::ClickFocus);
  current_ = spot;
  buttons_[current_]->setFocusPolicy(Qt::StrongFocus);
}

void UnitView::setPointed(std::size_t spot) {
  if (spot == pointed_) return;
  pointed_ = spot;
  update();
}

// The nearest one in that direction; what lies aside counts more than what lies ahead.
void UnitView::step(std::size_t from, Qt::Key key) {
  const QPointF at = spotTable()[from].at;
  const QPointF way = key == Qt::Key_Left    ? QPointF(-1, 0)
                      : key == Qt::Key_Right ? QPointF(1, 0)
                      : key == Qt::Key_Up    ? QPointF(0, -1)
                                             : QPointF(0, 1);
  std::size_t best = from;
  double least = std::numeric_limits<double>::max();
  for (std::size_t k = 0; k < buttons_.size(); ++k) {
    const QPointF d = spotTable()[k].at - at;
    const double ahead = QPointF::dotProduct(d, way);
    const double aside = std::abs(d.x() * way.y()) + std::abs(d.y() * way.x());
    if (k == from || ahead < 4 || aside > 2 * ahead) continue;
    const double cost = ahead + 3 * aside;
    if (cost >= least) continue;
    least = cost;
    best = k;
  }
  setCurrent(best);
  buttons_[best]->setFocus(Qt::OtherFocusReason);
}

void UnitView::refresh() {
  std::vector<SpotState> now = calcSpotStates(desk_.run());
  if (now == states_) return;
  states_ = std::move(now);
  for (std::size_t k = 0; k < buttons_.size(); ++k) buttons_[k]->setState(states_[k]);
  update();
}

void UnitView::arrange() {
  scale_ = std::min(width() / kUnitWidth, height() / kUnitHeight);
  origin_ = QPointF((width() - kUnitWidth * scale_) / 2, (height() - kUnitHeight * scale_) / 2);
  const int half = static_cast<int>(std::lround(SpotButton::kHalf * scale_));
  for (std::size_t k = 0; k < buttons_.size(); ++k) {
    const QPoint at = (origin_ + spotTable()[k].at * scale_).toPoint();
    buttons_[k]->setGeometry(at.x() - half, at.y() - half, 2 * half + 1, 2 * half + 1);
  }
}

// Names of the spots that bear a mark and of the one under mouse or keys, above for those of the
// upper half, side by side; what finds no room is left to the list of faults.
void UnitView::paintWords(Pen& pen, bool above) const {
  std::vector<std::size_t> marked;
  for (std::size_t k = 0; k < states_.size(); ++k)
    if ((states_[k].count > 0 || k == pointed_) && (spotTable()[k].at.y() < kUnitMiddle) == above)
      marked.push_back(k);
  std::ranges::stable_sort(marked, {}, [](std::size_t k) { return spotTable()[k].at.x(); });
  double free_from = 4;
  const double y = above ? kWordsAbove : kWordsBelow;
  for (const std::size_t k : marked) {
    const QString name = drawing::elideText(nameOf(spotTable()[k]), kWidest, drawing::kText, true);
    const QString word =
        states_[k].count > 0 ? QLatin1Char(' ') + wordOf(states_[k].kind) : QString();
    const Tone tone = k == pointed_ ? Tone::kHand : Tone::kBad;
    const double bold = drawing::textWidth(name, drawing::kText, true);
    const double width = bold + drawing::textWidth(word);
    const QPointF spot = spotTable()[k].at;
    const double left = std::max(free_from, std::min(spot.x() - width / 2, kUnitWidth - width - 4));
    if (left + width > kUnitWidth) return;
    const double end = above ? y + 7 : y - 20;
    const double start = spot.y() + (above ? -17 : 17);
    const double x = std::clamp(spot.x(), left + 4, left + width - 4);
    pen.polyline(QPolygonF({QPointF(spot.x(), start), QPointF(spot.x(), end + (above ? 12 : -12)),
                            QPointF(x, end)}),
                 {drawing::kThin, tone, {}, false});
    pen.text({left, y}, name, {.bold = true, .tone = tone});
    pen.text({left + bold, y}, word, {.tone = Tone::kInk2});
    free_from = left + width + kBetweenWords;
  }
}

void UnitView::paintSheet(Pen& pen) const {
  drawUnit(pen);
  paintWords(pen, true);
  paintWords(pen, false);
}

void UnitView::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  painter.fillRect(rect(), drawing::colorOf(desk_.style().theme, Tone::kPaper));
  painter.translate(origin_);
  painter.scale(scale_, scale_);
  Pen pen(painter, desk_.style().theme);
  paintSheet(pen);
}

void UnitView::resizeEvent(QResizeEvent* /*event*/) { arrange(); }

}  // namespace cabwright::desk
