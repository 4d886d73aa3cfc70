// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/moment_pane.h"

#include <QBoxLayout>
#include <QEvent>
#include <QStyle>
#include <algorithm>
#include <cmath>

#include "after/words.h"
#include "cab/names.h"
#include "review_room/review_look.h"
#include "session/session_error.h"

namespace cabwright::review_room {
namespace {

// How long what was said, or came of a deed, is still to be read.
constexpr std::int64_t kNearTicks = 4 * session::kTicksPerSecond;
constexpr std::int64_t kLookTicks = 600 * session::kTicksPerSecond;  // longer than anybody looks
// A plate that is smaller cannot be read, and gauges in a row say more.
constexpr double kLeastPlateScale = 0.36, kSheetHigh = 1000, kSheetWide = 1600, kWorldWide = 1260;

}  // namespace

MomentPane::MomentPane(Opened& opened, Rerun& rerun, const after::SheetLook& look, QWidget* parent)
    : QWidget(parent),
      opened_(opened),
      rerun_(rerun),
      look_(look),
      seat_(std::make_unique<cab::Seat>(
          session::LiveRun::toLookAt(opened.situation(), opened.store().header()))),
      caption_(new QLabel(this)),
      note_(new QLabel(this)),
      from_(new drawing::ChoiceBox(this)),
      pages_(new QStackedWidget(this)),
      row_(new MomentRow(look, this)) {
  caption_->setObjectName(QStringLiteral("heading"));
  note_->setObjectName(QStringLiteral("second"));
  note_->setTextFormat(Qt::PlainText);
  from_->setAccessibleName(tr("From where it is looked at"));
  from_->setFocusPolicy(Qt::StrongFocus);
  fillPlaces();
  auto* head = new QHBoxLayout;
  head->setSpacing(10);
  head->addWidget(caption_);
  head->addWidget(note_, 1);
  head->addWidget(from_);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 2, 0, 0);
  column->setSpacing(4);
  column->addLayout(head);
  column->addWidget(pages_, 1);
  pages_->addWidget(row_);
  seat_view_ = new cab::SeatView(*seat_, shortcuts_, this);
  seat_view_->setReducedMotion(true);  // needles stand where they stood, and do not run there
  seat_view_->setShowKeys(false);
  seat_view_->setMinimumSize(1, 1);
  pages_->addWidget(seat_view_);
  due_.setSingleShot(true);
  due_.setInterval(0);
  connect(&due_, &QTimer::timeout, this, &MomentPane::showNow);
  connect(&opened_, &Opened::cursorMoved, this, [this] { due_.start(); });
  connect(&rerun_, &Rerun::progressed, this, [this] {
    if (!is_whole_) due_.start();
  });
  connect(from_, &QComboBox::activated, this, &MomentPane::choosePlace);
  connect(seat_.get(), &cab::Seat::viewpointChanged, this, &MomentPane::showPlace);
  showNow();
}

MomentPane::~MomentPane() { delete seat_view_; }

void MomentPane::fillPlaces() {
  const int chosen = std::max(0, from_->currentIndex());
  from_->clear();
  from_->addItem(tr("where the trainee stood"));
  for (const unit::PlaceInfo& info : unit::placeTable()) from_->addItem(cab::nameOf(info.id));
  from_->setCurrentIndex(chosen);
}

void MomentPane::choosePlace(int row) {
  if (row <= 0) {
    seat_->lookFrom(std::nullopt);
  } else {
    seat_->lookFrom(unit::placeTable()[static_cast<std::size_t>(row - 1)].id);
  }
}

void MomentPane::showPlace() {
  const auto& table = unit::placeTable();
  int row = 0;
  if (const auto from = seat_->lookedFrom()) {
    for (std::size_t k = 0; k < table.size(); ++k)
      if (table[k].id == *from) row = static_cast<int>(k) + 1;
  }
  from_->setCurrentIndex(row);
  caption_->setText(standing());
}

QString MomentPane::standing() const {
  if (seat_->lookedFrom()) return tr("This moment at: %1").arg(cab::nameOf(seat_->place()));
  if (!is_whole_) return tr("This moment");
  return seat_->isWalking() ? tr("This moment, on the way")
                            : tr("This moment: %1").arg(cab::nameOf(seat_->place()));
}

bool MomentPane::showMoment() {
  const auto playback = rerun_.playback();
  if (!playback) return false;
  if (moment_ ? !playback->moveTo(*moment_, opened_.cursor())
              : !(moment_ = playback->findMoment(opened_.cursor())))
    return false;
  seat_->showMoment(*moment_);
  recallNear();
  return true;
}

// What came of the last look stands in the notebook as long as it is looked at; the rest fades.
void MomentPane::recallNear() {
  const auto playback = rerun_.playback();
  const std::int64_t now = opened_.cursor();
  const auto deeds = playback->deeds(now - kLookTicks, now - 1);
  if (seat_->unit().world().trainee.looking) {
    const auto look = std::find_if(deeds.rbegin(), deeds.rend(), [](const review::Deed& deed) {
      return deed.timed.action.verb == "look" && deed.outcome.accepted;
    });
    if (look != deeds.rend()) seat_->recall(look->timed.action, look->outcome);
  }
  for (const review::Deed& deed : deeds)
    if (deed.timed.tick >= now - kNearTicks && deed.timed.action.actor == unit::Actor::kTrainee &&
        deed.timed.action.verb != "look")
      seat_->recall(deed.timed.action, deed.outcome);
  for (const unit::Message& message : playback->messages(now - kNearTicks, now))
    seat_->recall(message);
}

void MomentPane::showNow() {
  due_.stop();
  is_whole_ = showMoment();
  if (!is_whole_ || !hasRoom()) {
    unit::Frame frame = is_whole_ ? seat_->frame() : unit::Frame{};
    try {
      if (!is_whole_) frame = opened_.run().frame_at(opened_.cursor());
    } catch (const session::SessionError&) {  // damaged there: the head of the window says so
    }
    int cab = after::findLeadingCab(*opened_.run().history);
    if (is_whole_ && unit::cabOf(seat_->place()) >= 0) cab = unit::cabOf(seat_->place()) + 1;
    row_->showFrame(frame, cab);
  }
  QString note;
  const auto playback = rerun_.playback();
  if (!is_whole_ && !rerun_.fault().isEmpty()) {
    note =
        tr("Only recorded values: the session cannot be run again here (%1).").arg(rerun_.fault());
  } else if (playback && !is_whole_) {
    const review::Playback::State state = playback->state();
    if (state.difference)
      note = tr("Only recorded values: run again, it differs from the record at %1 (%2: "
                "recorded %3, now %4).")
                 .arg(after::timeText(state.difference->tick, true),
                      QString::fromStdString(state.difference->quantity),
                      QString::fromStdString(state.difference->recorded),
                      QString::fromStdString(state.difference->replayed));
    else if (!state.fault.empty() && state.done)
      note = tr("Only recorded values: the record cannot be read further (%1).")
                 .arg(QString::fromStdString(state.fault));
    else
      note = tr("Being run again: %1 of %2")
                 .arg(after::timeText(std::max<std::int64_t>(0, state.built_to)),
                      after::timeText(state.last_tick));
  } else if (!is_whole_) {
    note = tr("Being run again");
  }
  note_->setText(note);
  note_->setToolTip(note);
  caption_->setText(standing());
  showPage();
}

bool MomentPane::hasRoom() const {
  const double scale = std::min(pages_->height() / kSheetHigh, pages_->width() / kWorldWide);
  return scale >= kLeastPlateScale;
}

// The whole sheet where it has its width; narrower its parts would crowd each other, and what is
// around alone is larger besides.
void MomentPane::showPage() {
  const bool is_plate = is_whole_ && hasRoom();
  const double high = pages_->height() / kSheetHigh;
  seat_view_->setWorldOnly(pages_->width() / kSheetWide < high);
  pages_->setCurrentWidget(is_plate ? static_cast<QWidget*>(seat_view_) : row_);
  from_->setVisible(is_plate);
}

void MomentPane::restyle() {
  seat_view_->setTheme(look_.theme);
  row_->update();
}

void MomentPane::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  layout()->activate();
  showPage();
  due_.start();
}

void MomentPane::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() != QEvent::LanguageChange) return;
  fillPlaces();
  due_.start();
}

}  // namespace cabwright::review_room
