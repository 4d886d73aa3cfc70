// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/review_view.h"

#include <QBoxLayout>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "after/words.h"
#include "drawing/ink.h"
#include "quantity/sort_once.h"
#include "review_room/review_head.h"
#include "review_room/review_lanes.h"
#include "review_room/review_look.h"

namespace cabwright::review_room {

using drawing::Tone;

namespace {

constexpr int kPlayMs = 33;
constexpr double kLongestStepS = 0.25;
constexpr double kSideWidth = 456, kSideMost = 560;  // of the mark sheet beside it, u

// How large a plate becomes in a pane, with the bars above it.
double plateFits(int wide, int high) { return std::min(wide / 1260.0, (high - 70) / 1000.0); }

}  // namespace

ReviewView::ReviewView(std::unique_ptr<Opened> opened, QWidget* parent)
    : QWidget(parent),
      opened_(std::move(opened)),
      rerun_(std::make_unique<Rerun>(opened_->file())),
      title_(new QLabel(tr("Review"), this)),
      run_(new QLabel(this)),
      seal_(new QLabel(this)),
      side_button_(new QPushButton(tr("Mark sheet"), this)),
      across_(new QSplitter(Qt::Horizontal, this)),
      down_(new QSplitter(Qt::Vertical, this)),
      lower_(new QWidget(this)),
      strip_(new after::StripChart(look_, this)),
      transport_(new TransportBar(look_, this)),
      moment_(new MomentPane(*opened_, *rerun_, look_, this)) {
  setAccessibleName(tr("Review of a session"));
  setFocusPolicy(Qt::StrongFocus);
  setFocusProxy(strip_);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(26, 18, 26, 18);
  column->setSpacing(4);
  column->setSizeConstraint(QLayout::SetNoConstraint);
  makeHead(column);
  makePanes(column);
  for (const session::TimedAction& timed : opened_->allActions()) {
    if (!timed.scheduled) act_ticks_.push_back(timed.tick);
    frame_ticks_.push_back(timed.tick);
  }
  quantity::sortOnce(act_ticks_);
  quantity::sortOnce(frame_ticks_);
  strip_->setReview(opened_->run(), makeReviewLanes(*opened_, hides_marks_));
  follow();
  refreshLanes();
  refreshHead();
  showTime();
  restyle();
}

ReviewView::~ReviewView() {
  delete moment_;  // it knows the session and its rerun, which go first otherwise
  delete side_;
}

void ReviewView::makeHead(QVBoxLayout* column) {
  title_->setObjectName(QStringLiteral("title"));
  run_->setTextFormat(Qt::PlainText);
  run_->setMinimumWidth(80);
  seal_->setTextFormat(Qt::PlainText);
  seal_->setMinimumWidth(80);
  auto* words = new QVBoxLayout;
  words->setSpacing(0);
  words->addWidget(run_);
  words->addWidget(seal_);
  auto* head = new QHBoxLayout;
  head->setSpacing(18);
  head->addWidget(title_);
  head->addLayout(words, 1);
  const std::array<std::pair<QString, QString>, 3> shares{{{tr("Strips"), QStringLiteral("F6")},
                                                           {tr("Both"), QStringLiteral("F7")},
                                                           {tr("Plate"), QStringLiteral("F8")}}};
  auto* choice = new QHBoxLayout;
  choice->setSpacing(4);
  for (std::size_t k = 0; k < shares.size(); ++k) {
    auto* button = new QPushButton(shares[k].first, this);
    button->setObjectName(QStringLiteral("share"));
    button->setCheckable(true);
    button->setToolTip(tr("Most room for it: key %1").arg(shares[k].second));
    connect(button, &QPushButton::clicked, this, [this, k] { setShare(static_cast<Share>(k)); });
    shares_.push_back(button);
    choice->addWidget(button);
  }
  side_button_->setObjectName(QStringLiteral("share"));
  side_button_->setCheckable(true);
  side_button_->setToolTip(tr("The mark sheet beside it: key %1").arg(QStringLiteral("F9")));
  side_button_->hide();
  connect(side_button_, &QPushButton::clicked, this, &ReviewView::showSide);
  choice->addWidget(side_button_);
  head->addLayout(choice);
  column->addLayout(head);
}

void ReviewView::makePanes(QVBoxLayout* column) {
  auto* lower = new QVBoxLayout(lower_);
  lower->setContentsMargins(0, 0, 0, 0);
  lower->setSpacing(2);
  lower->addWidget(transport_);
  lower->addWidget(moment_, 1);
  down_->addWidget(strip_);
  down_->addWidget(lower_);
  down_->setChildrenCollapsible(true);
  down_->setHandleWidth(7);
  strip_->setMinimumHeight(80);
  moment_->setMinimumHeight(60);
  across_->addWidget(down_);
  across_->setChildrenCollapsible(false);
  across_->setHandleWidth(12);
  down_->setMinimumWidth(420);
  column->addWidget(across_, 1);
  setTabOrder(strip_, transport_);
}

void ReviewView::follow() {
  connect(strip_, &after::StripChart::cursorMoved, opened_.get(), &Opened::setCursor);
  connect(opened_.get(), &Opened::cursorMoved, strip_, &after::StripChart::setCursor);
  connect(opened_.get(), &Opened::cursorMoved, this, &ReviewView::showTime);
  connect(opened_.get(), &Opened::entriesChanged, this, [this] {
    refreshLanes();
    refreshHead();
  });
  connect(transport_, &TransportBar::stepAsked, this, &ReviewView::step);
  play_timer_.setInterval(kPlayMs);
  connect(&play_timer_, &QTimer::timeout, this,
          [this] { passRealTime(static_cast<double>(clock_.restart()) * 1e-3); });
}

void ReviewView::refreshLanes() {
  std::vector<after::Lane> lanes = makeReviewLanes(*opened_, hides_marks_);
  verdict_ticks_ = findVerdictTicks(lanes);
  strip_->setReviewLanes(std::move(lanes));
}

void ReviewView::refreshHead() {
  const SealWords seal = makeSealWords(*opened_);
  seal_->setText(seal.words);
  seal_->setToolTip(seal.all);
  seal_->setObjectName(seal.look);
  run_->setText(makeHeadWords(*opened_));
  run_->setToolTip(run_->text());
  setStyleSheet(reviewStyleSheet(look_));
}

void ReviewView::showTime() {
  transport_->setTime(after::timeText(opened_->cursor(), true),
                      after::timeText(opened_->lastTick()));
  transport_->setEvents(wordsOfMoment(*opened_, strip_->lanes(), opened_->cursor()));
}

void ReviewView::setSide(QWidget* side) {
  delete side_;
  side_ = side;
  side_button_->setVisible(side != nullptr);
  if (side == nullptr) return;
  across_->addWidget(side);
  across_->setStretchFactor(0, 1);
  across_->setStretchFactor(1, 0);
  showSide(true);
}

void ReviewView::showSide(bool shown) {
  if (side_ == nullptr) return;
  side_->setVisible(shown);
  side_button_->setChecked(shown);
  arrange();
}

void ReviewView::setHidesMarks(bool hides) {
  if (hides == hides_marks_) return;
  hides_marks_ = hides;
  refreshLanes();
}

void ReviewView::setTheme(drawing::Theme theme) {
  look_.theme = theme;
  restyle();
}

void ReviewView::restyle() {
  setStyleSheet(reviewStyleSheet(look_));
  strip_->restyle();
  transport_->restyle();
  moment_->restyle();
  update();
}

void ReviewView::setShare(Share share) {
  share_ = share;
  arrange();
}

// A row of gauges is as high as it needs; a plate is better the larger it is.
void ReviewView::arrange() {
  for (std::size_t k = 0; k < shares_.size(); ++k)
    shares_[k]->setChecked(k == static_cast<std::size_t>(share_));
  if (side_ != nullptr && !side_->isHidden()) {
    const double u = std::min(kSideMost, kSideWidth + std::max(0.0, width() / look_.scale - 1600));
    const int wide = static_cast<int>(u * look_.scale);
    across_->setSizes({std::max(1, across_->width() - wide - across_->handleWidth()), wide});
  }
  const int high = down_->height();
  const int least = static_cast<int>((MomentRow::kHeight + 96) * look_.scale);
  int lower = least;
  if (share_ == Share::kBoth) lower = std::max(least, high * 55 / 100);
  if (share_ == Share::kPlate) lower = high;
  strip_->setVisible(share_ != Share::kPlate);
  // Beside each other only where both have room: the keys of the moment take a good width.
  const int half = down_->width() * 52 / 100;
  const bool beside = share_ == Share::kBoth && lower_->minimumSizeHint().width() <= half &&
                      plateFits(half, high) > plateFits(down_->width(), lower);
  down_->setOrientation(beside ? Qt::Horizontal : Qt::Vertical);
  if (beside) {
    down_->setSizes({down_->width() * 48 / 100, down_->width() * 52 / 100});
  } else {
    down_->setSizes({std::max(0, high - lower), lower});
    // A plate too small to be read is a row of gauges: the rest is the strips'.
    if (share_ == Share::kBoth && !moment_->hasRoom()) down_->setSizes({high - least, least});
  }
}

void ReviewView::jumpTo(qint64 tick) {
  setPlaying(false);
  opened_->setCursor(tick);
}

void ReviewView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  const double scale = reviewScale(width(), height());
  if (scale != look_.scale) {
    look_.scale = scale;
    restyle();
    Q_EMIT scaleChanged(scale);
  }
  layout()->activate();
  arrange();
}

void ReviewView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), drawing::colorOf(look_.theme, Tone::kPaper));
  drawing::Pen pen(painter, look_.theme);
  pen.rect(QRectF(rect()).adjusted(10, 8, -10, -8), {1.5, Tone::kInk, {}, false});
}

void ReviewView::setPlaying(bool playing) {
  transport_->setPlaying(playing);
  if (playing == playing_) return;
  playing_ = playing;
  owed_ticks_ = 0;
  if (!playing) {
    play_timer_.stop();
    return;
  }
  if (opened_->cursor() >= opened_->lastTick()) opened_->setCursor(0);
  clock_.restart();
  if (has_clock_) play_timer_.start();
}

void ReviewView::setClockRunning(bool running) {
  has_clock_ = running;
  if (!running) play_timer_.stop();
}

void ReviewView::passRealTime(double seconds) {
  if (!playing_) return;
  owed_ticks_ += std::clamp(seconds, 0.0, kLongestStepS) * transport_->rate() *
                 static_cast<double>(session::kTicksPerSecond);
  const auto ticks = static_cast<std::int64_t>(owed_ticks_);
  if (ticks <= 0) return;
  owed_ticks_ -= static_cast<double>(ticks);
  opened_->setCursor(opened_->cursor() + ticks);
  if (opened_->cursor() >= opened_->lastTick()) setPlaying(false);
}

}  // namespace cabwright::review_room
