// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/seat_view.h"

#include <QApplication>
#include <QEvent>
#include <algorithm>
#include <cmath>

#include "cab/accessible.h"
#include "cab/names.h"
#include "drawing/furniture.h"

namespace cabwright::cab {

using drawing::Anchor;
using drawing::Tone;
using unit::Place;

namespace {

constexpr double kHandsCaption = 862;
constexpr int kMessageMs = 7000;

}  // namespace

SeatView::SeatView(Seat& seat, const Shortcuts& shortcuts, QWidget* parent)
    : QWidget(parent), seat_(seat), shortcuts_(shortcuts) {
  installAccessibility();
  setFocusPolicy(Qt::ClickFocus);
  setAttribute(Qt::WA_OpaquePaintEvent);
  setAccessibleName(tr("The trainee's sheet"));
  message_timer_.setSingleShot(true);
  connect(&message_timer_, &QTimer::timeout, this, [this] { showMessage({}, false); });
  build();
  connect(&seat_, &Seat::frameChanged, this, &SeatView::refresh);
  connect(&seat_, &Seat::placeChanged, this, [this] {
    turned_ = false;
    makePlateAnew();
  });
  connect(&seat_, &Seat::acted, this, &SeatView::noteAnswer);
  connect(&seat_, &Seat::said, this, [this](const QString& who, const QString& words) {
    showMessage(tr("%1: “%2”").arg(who, translateSeen(words)), false);
  });
  connect(&seat_, &Seat::passed, this, [this](const QString& why) {
    if (!why.isEmpty()) showMessage(translateSeen(why), false);
  });
  connect(&seat_, &Seat::momentChanged, this, [this] {
    if (!message_.isEmpty()) showMessage({}, false);  // of another moment
  });
  connect(&seat_, &Seat::guideChanged, this, &SeatView::pointGuide);
}

SeatView::~SeatView() = default;

void SeatView::build() {
  const auto keep = [this](auto* part) {
    parts_.push_back(part);
    return part;
  };
  plan_ = keep(new PlanPart(seat_, style_, shortcuts_, this));
  for (int k = 0; k < drawing::kPlanPlaces; ++k) {
    balloons_.push_back(
        keep(new BalloonPart(seat_, style_, shortcuts_, static_cast<Place>(k), this)));
  }
  notebook_ = keep(new NotebookPart(seat_, style_, this));
  judging_ = new JudgeRow(seat_, style_, *notebook_, this);
  for (Part* part : judging_->parts()) parts_.push_back(part);
  const std::array<std::pair<const char*, QString>, 3> foot{
      {{"note", tr("Note")}, {"book", tr("Book")}, {"decide", tr("Decide")}}};
  for (std::size_t k = 0; k < 3; ++k) {
    foot_[k] = keep(new WordButton(seat_, style_, foot[k].second, this));
    foot_[k]->setObjectName(QString::fromLatin1(foot[k].first));
    connect(foot_[k], &WordButton::pressed, this,
            [this, command = QString::fromLatin1(foot[k].first)] { useCommand(command); });
  }
  for (const unit::ObjectInfo& info : unit::objectTable()) {
    auto* thing = keep(new CarriedPart(seat_, style_, info.id, this));
    connect(thing, &CarriedPart::asked, this, [this](unit::Object o) {
      if (!seat_.isToLookAt()) openPanel(new ThingPanel(seat_, style_, o, this));
    });
    things_.push_back(thing);
  }
  why_ = new WhyGuide(seat_, style_, *plan_, things_, this);
  title_ = keep(new TitlePart(seat_, style_, this));
  std::vector<std::pair<const char*, QString>> deeds{{"say", tr("Say or do")},
                                                     {"things", tr("Things")}};
  if (seat_.isToLookAt()) {
    deeds.clear();
    for (WordButton* b : foot_) b->hide();
    for (Part* part : judging_->parts()) part->hide();
  } else if (!seat_.inAssessment()) {
    deeds.emplace_back("pass", tr("Pass time"));
    if (seat_.guide() != nullptr) deeds.emplace_back("hint", tr("What next?"));
  }
  for (const auto& [command, word] : deeds) {
    auto* deed = keep(new WordButton(seat_, style_, word, this));
    deed->setObjectName(QString::fromLatin1(command));
    connect(deed, &WordButton::pressed, this,
            [this, id = QString::fromLatin1(command)] { useCommand(id); });
    deeds_.push_back(deed);
  }
  for (int side = 0; side < 2; ++side)
    hands_[static_cast<std::size_t>(side)] =
        keep(new HandPart(seat_, style_, shortcuts_, side, this));
  threads_ = new HandThreads(seat_, style_, this);
  const auto keys = [this] {
    for (WordButton* b : deeds_) b->setKey(shortcuts_.text(b->objectName()));
    for (WordButton* b : foot_) b->setKey(shortcuts_.text(b->objectName()));
  };
  keys();
  connect(&shortcuts_, &Shortcuts::changed, this, keys);
}

void SeatView::makePlateAnew() {
  const Place place = seat_.place();
  const QRectF& world = style_.frame.world;
  const double band = Plate::bandHeight(place);
  const double top = world.top() + band;
  const QRectF above(world.left(), world.top() + 24, world.width(), band - 28);
  const bool had_keys = plate_ && plate_->isAncestorOf(QApplication::focusWidget());
  const QString focused = had_keys ? QApplication::focusWidget()->objectName() : QString();
  if (had_keys) setFocus();  // it stays with the sheet when the part it was on goes
  if (qobject_cast<WhyPanel*>(panel_) != nullptr) closePanel();
  why_->watch(nullptr);
  delete outside_;
  outside_ = nullptr;
  delete heard_;
  heard_ = nullptr;
  plate_.reset();
  const PlateContext context{
      seat_, style_, shortcuts_,
      QRectF(world.left(), top, world.width(), kPlateEnd + style_.frame.spare - top), above};
  plate_ = turned_ ? makeSecondPlate(place, context, this) : makePlate(place, context, this);
  if (plate_) {
    plate_->setGeometry(rect());
    plate_->show();
    plate_->lower();
    connect(plate_.get(), &Plate::whyAsked, this, &SeatView::askWhy);
    why_->watch(plate_.get());
    connect(plate_.get(), &Plate::turnAsked, this, &SeatView::turnRound, Qt::QueuedConnection);
    if (Part* part = plate_->findPart(focused)) part->setFocus();
  }
  const bool cab = unit::cabOf(place) >= 0;
  if (cab) {
    outside_ = new OutsidePart(seat_, style_, above, this);
    outside_->setTurned(turned_);
    outside_->setArea(above.adjusted(-2, -2, 2, 2));
    outside_->show();
  }
  heard_ = new HeardPart(seat_, style_, !cab, this);
  heard_->setArea(cab ? OutsidePart::hearingArea(above) : above);
  heard_->show();
  ground_ = {};
  orderFocus();
  pointGuide();
  refresh();
  update();
}

// The plate first, then the notebook, what can be done, the hands, what is carried, and the ways.
void SeatView::orderFocus() {
  std::vector<QWidget*> order{this};
  const auto add = [&order](const auto& parts) {
    order.insert(order.end(), parts.begin(), parts.end());
  };
  if (outside_ != nullptr) order.push_back(outside_);
  if (plate_) add(plate_->focusOrder());
  add(judging_->parts());
  add(foot_);
  add(deeds_);
  add(hands_);
  add(things_);
  add(balloons_);
  for (std::size_t k = 1; k < order.size(); ++k) setTabOrder(order[k - 1], order[k]);
}

// As it is now: what is looked at may change while one looks.
void SeatView::tellWhatIsSeen() {
  const auto item = seat_.itemLookedAt();
  if (!item) return;
  unit::Sight sight = seat_.unit().sightOf(*item);
  if (sight == sight_ && !notebook_->seen().isEmpty()) return;
  QString words = translateSeen(QString::fromStdString(sight.seen));
  if (!sight.why.empty())
    words +=
        QLatin1String(" (") + translateSeen(QString::fromStdString(sight.why)) + QLatin1Char(')');
  notebook_->setSeen(*item, words);
  sight_ = std::move(sight);
}

void SeatView::refresh() {
  if (!plate_) return;
  for (Part* part : parts_) part->refresh();
  if (outside_ != nullptr) outside_->refresh();
  if (heard_ != nullptr) heard_->refresh();
  plate_->refresh();
  tellWhatIsSeen();
  judging_->refresh();
  for (WordButton* b : deeds_) {
    if (b->objectName() == QLatin1String("pass"))
      b->setWord(seat_.isPassing() ? tr("Stop") : tr("Pass time"));
  }
  threads_->refresh(plate_.get(), hands_);
  why_->refresh();
  pointGuide();
}

void SeatView::restyleAll() {
  ground_ = {};
  for (Part* part : parts_) part->restyle();
  if (outside_ != nullptr) outside_->restyle();
  if (heard_ != nullptr) heard_->restyle();
  if (plate_) plate_->restyle();
  if (panel_ != nullptr) panel_->restyle();
  update();
}

void SeatView::setTheme(drawing::Theme theme) {
  if (theme == style_.theme) return;
  style_.theme = theme;
  restyleAll();
}

void SeatView::setReducedMotion(bool reduced) { style_.reduced_motion = reduced; }

void SeatView::setShowKeys(bool shown) {
  style_.show_keys = shown;
  restyleAll();
}

void SeatView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::LanguageChange && plate_) makePlateAnew();
  if (event->type() == QEvent::ApplicationFontChange && plate_) fitSheet();
  // A key that comes up in another window is never heard of here.
  if (event->type() == QEvent::ActivationChange && !isActiveWindow() && plate_) {
    for (Part* part : plate_->parts()) {
      if (auto* control = qobject_cast<ControlPart*>(part)) control->forgetKey();
    }
  }
}

void SeatView::paintGround(QPainter& painter) {
  drawing::Pen pen(painter, style_.theme);
  const drawing::SheetFrame& f = style_.frame;
  drawing::paintFrame(pen, f);
  drawing::paintCaption(pen, {f.world.left(), f.world.top() + 18}, f.world.width(),
                        tr("What comes in"));
  if (world_only_) return;
  drawing::paintCaption(pen, {f.you.left(), f.you.top() + 212 + 468 + f.spare + 26}, f.you.width(),
                        tr("With you"));
}

void SeatView::paintEvent(QPaintEvent* /*event*/) {
  const double ratio = devicePixelRatioF();
  if (ground_.size() != size() * ratio) {
    ground_ = QPixmap(size() * ratio);
    ground_.setDevicePixelRatio(ratio);
    ground_.fill(drawing::colorOf(style_.theme, Tone::kPaper));
    QPainter painter(&ground_);
    painter.scale(style_.frame.scale, style_.frame.scale);
    paintGround(painter);
  }
  QPainter painter(this);
  painter.drawPixmap(0, 0, ground_);
  painter.scale(style_.frame.scale, style_.frame.scale);
  drawing::Pen pen(painter, style_.theme);
  const QRectF& world = style_.frame.world;
  const double y = kHandsCaption + style_.frame.spare;
  const QString words = drawing::elideText(message_, world.width() - 180, drawing::kText, true);
  drawing::paintCaption(pen, {world.left(), y}, world.width(),
                        seat_.isToLookAt() ? tr("The trainee's hands") : tr("Your hands"));
  if (words.isEmpty()) return;
  const double w = drawing::textWidth(words, drawing::kText, true);
  pen.rect(QRectF(world.right() - w - 14, y - 20, w + 14, 28), drawing::kNoLine, Tone::kPaper);
  pen.text({world.right(), y}, words,
           {.anchor = Anchor::kEnd, .bold = true, .tone = message_bad_ ? Tone::kBad : Tone::kInk});
}

void SeatView::showMessage(const QString& words, bool bad) {
  message_ = words;
  message_bad_ = bad;
  if (!words.isEmpty()) message_timer_.start(kMessageMs);
  const QRectF& world = style_.frame.world;
  const double y = kHandsCaption + style_.frame.spare;
  update(style_.frame.toWindow()
             .mapRect(QRectF(world.left(), y - 24, world.width(), 36))
             .toAlignedRect());
}

void SeatView::noteAnswer(const QString& what, const Answer& answer) {
  const QString seen = translateSeen(answer.perceived);
  if (!answer.accepted) {
    const auto control = unit::findControl(what.section(QLatin1Char(' '), 1, 1).toStdString());
    if (control) why_->noteRefusal(*control);
    const QString why = translateSeen(answer.cause);
    showMessage(why.isEmpty() || why == seen ? seen : tr("%1: %2").arg(seen, why), true);
    return;
  }
  if (what.startsWith(QLatin1String("hold "))) tellOfRightButton(what);
  if (what.startsWith(QLatin1String("look "))) {
    tellWhatIsSeen();
    return;
  }
  if (!seen.isEmpty()) showMessage(seen, false);
}

// Once, to who presses with the mouse what springs back: it is of no use to hold it so while
// something else is to be done.
void SeatView::tellOfRightButton(const QString& what) {
  const auto control = unit::findControl(what.section(QLatin1Char(' '), 1, 1).toStdString());
  const bool by_mouse = QGuiApplication::mouseButtons() == Qt::LeftButton;
  if (told_ || !by_mouse || !control ||
      unit::controlInfo(*control).spring != unit::ControlSpring::kSprings)
    return;
  told_ = true;
  showMessage(tr("Held while you press; the right button leaves a hand on it"), false);
}

void SeatView::turnRound() {
  if (unit::cabOf(seat_.place()) < 0) return;
  turned_ = !turned_;
  makePlateAnew();
}

void SeatView::pointGuide() {
  const bool shown = notebook_->showsHint();
  const scenario::GuideStep* step = shown ? seat_.guide()->current() : nullptr;
  plan_->setPointed(step != nullptr && step->place && step->place != seat_.place() ? step->place
                                                                                   : std::nullopt);
  const bool speaks = step != nullptr && !seat_.guide()->openPhrases(seat_.frame()).empty();
  for (WordButton* deed : deeds_)
    if (deed->objectName() == QLatin1String("say")) deed->setPointed(speaks);
  if (!plate_) return;
  std::vector<QString> names;
  if (step != nullptr) {
    for (const scenario::GuidePoint& point : step->points) {
      if (!seat_.guide()->isOpen(point, seat_.frame())) continue;
      const auto name = std::visit(
          [](auto id) {
            using T = decltype(id);
            if constexpr (std::is_same_v<T, unit::Control>) return unit::controlInfo(id).name;
            if constexpr (std::is_same_v<T, unit::Item>) return unit::itemInfo(id).name;
            if constexpr (std::is_same_v<T, unit::Place>) return unit::placeInfo(id).name;
            if constexpr (std::is_same_v<T, unit::Object>) return unit::objectInfo(id).name;
            if constexpr (std::is_same_v<T, unit::Signal>) return unit::signalInfo(id).name;
          },
          point);
      names.push_back(QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())));
    }
  }
  for (Part* part : plate_->parts())
    part->setPointed(std::ranges::find(names, part->objectName()) != names.end());
  // What sits in this cab already is where the step wants it; taking it out is done at the desk.
  for (CarriedPart* thing : things_)
    thing->setPointed(std::ranges::find(names, thing->objectName().mid(6)) != names.end() &&
                      !thing->isInserted());
}

}  // namespace cabwright::cab
