// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/present_faults.h"

#include <QApplication>
#include <QCoreApplication>
#include <QHBoxLayout>
#include <QPushButton>
#include <algorithm>

#include "cab/you_parts.h"
#include "desk/desk_look.h"
#include "desk/fault_moment.h"
#include "desk/spots.h"
#include "scenario/arm_words.h"

namespace cabwright::desk {
namespace {

using fault::FaultStage;

// The tick at which it came to where it is.
std::int64_t sinceOf(const session::LiveRun& run, const session::FaultNow& now) {
  std::int64_t since = 0;
  for (const session::FaultEvent& event : run.faultLog())
    if (event.id == now.id && event.stage == now.stage) since = event.tick;
  return since;
}

// What it waits for: "comes at 0:05:39", "when third gear is selected, and 10 s later".
QString waitingText(const session::LiveRun& run, const std::string& id) {
  const fault::ActiveFaults& faults = run.run().faults();
  const auto k = faults.find(id);
  if (!k) return {};
  const fault::Moment& from = faults.armed()[*k].from;
  if (!from.when) return PresentFaults::tr("comes at %1").arg(cab::clockText(from.ticks));
  QString words =
      PresentFaults::tr("when %1").arg(QString::fromStdString(std::string(from.when->text())));
  for (const ReadyCondition& ready : readyConditions()) {
    if (from.when->text() != ready.text) continue;
    words = QCoreApplication::translate("Ready", ready.words);
    words[0] = words[0].toLower();  // "when", no name: small in every language
  }
  if (from.ticks == 0) return words;
  return PresentFaults::tr("%1, and %2 s later")
      .arg(words)
      .arg(static_cast<double>(from.ticks) / session::kTicksPerSecond);
}

}  // namespace

QString stateText(const session::LiveRun& run, const session::FaultNow& now) {
  const QString at = cab::clockText(sinceOf(run, now));
  switch (now.stage) {
    case FaultStage::kArmed: {
      const QString armed = now.by == unit::Actor::kScenario
                                ? PresentFaults::tr("armed by the exercise")
                                : PresentFaults::tr("armed at %1").arg(at);
      return armed + QLatin1String("; ") + waitingText(run, now.id);
    }
    case FaultStage::kGrowing:
      return PresentFaults::tr("growing since %1, %2 %").arg(at).arg(now.share * 100, 0, 'f', 0);
    case FaultStage::kThere:
      return PresentFaults::tr("there since %1").arg(at);
    case FaultStage::kCleared:
      break;
  }
  return PresentFaults::tr("put right at %1").arg(at);
}

PresentFaults::PresentFaults(Desk& desk, QWidget* parent)
    : QWidget(parent), desk_(desk), head_(makeHeading({}, this)), scroll_(new QScrollArea(this)) {
  setAccessibleName(tr("Faults of this run"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(5);
  column->addWidget(head_);
  column->addWidget(scroll_, 1);
  scroll_->setWidgetResizable(true);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll_->setFocusPolicy(Qt::NoFocus);
  connect(&desk_, &Desk::changed, this, &PresentFaults::refresh);
  fill();
}

void PresentFaults::takeFocus() {
  if (auto* button = body_->findChild<QPushButton*>()) button->setFocus(Qt::ShortcutFocusReason);
}

void PresentFaults::refresh() {
  std::vector<Row> rows;
  if (const session::LiveRun* run = desk_.run()) {
    for (const session::FaultNow& now : run->faultsNow()) {
      QString words = whereText(*now.spec) + QLatin1String(": ") + faultWords(now.spec->text);
      const QString size = sizeText(*now.spec, now.size);
      if (!size.isEmpty()) words += QLatin1String(", ") + size;
      rows.push_back({now.id, words, stateText(*run, now), now.stage == FaultStage::kCleared});
    }
  }
  std::ranges::reverse(rows);
  std::stable_partition(rows.begin(), rows.end(), [](const Row& row) { return !row.cleared; });
  if (rows == shown_) return;
  // While one grows only its figure changes: rows with their buttons and the focus stay.
  const bool same = std::ranges::equal(rows, shown_, [](const Row& a, const Row& b) {
    return a.id == b.id && a.cleared == b.cleared && a.words == b.words;
  });
  shown_ = std::move(rows);
  if (!same) return fill();
  for (std::size_t k = 0; k < shown_.size(); ++k) states_[k]->setText(shown_[k].state);
}

void PresentFaults::addRow(const Row& row) {
  auto* line = new QHBoxLayout;
  auto* text = new QVBoxLayout;
  text->setSpacing(0);
  auto* words = new QLabel(row.words, body_);
  words->setWordWrap(true);
  auto* state = makeSecond(row.state, body_);
  if (!row.cleared) state->setObjectName(QStringLiteral("bad"));
  states_.push_back(state);
  text->addWidget(words);
  text->addWidget(state);
  line->addLayout(text, 1);
  if (!row.cleared) {
    auto* button = makeButton(tr("Put right"), QStringLiteral("put_right"), body_);
    button->setAccessibleName(tr("Put right: %1").arg(row.words));
    connect(button, &QPushButton::clicked, this,
            [this, id = row.id] { desk_.take(scenario::makeClear(id)); });
    line->addWidget(button, 0, Qt::AlignTop);
  }
  qobject_cast<QVBoxLayout*>(body_->layout())->addLayout(line);
}

void PresentFaults::fill() {
  const auto active = std::ranges::count_if(shown_, [](const Row& row) { return !row.cleared; });
  head_->setText(shown_.empty() ? tr("No fault is in")
                                : tr("In this run: %1 in, %2 put right")
                                      .arg(active)
                                      .arg(static_cast<int>(shown_.size()) - active));
  states_.clear();
  const bool had_focus = body_ != nullptr && body_->isAncestorOf(QApplication::focusWidget());
  if (QWidget* before = scroll_->takeWidget()) {
    before->hide();
    before->deleteLater();  // its button may be the one that is being pressed
  }
  body_ = new QWidget;
  auto* column = new QVBoxLayout(body_);
  column->setContentsMargins(0, 0, 6, 0);
  column->setSpacing(8);
  for (const Row& row : shown_) addRow(row);
  column->addStretch(1);
  scroll_->setWidget(body_);
  body_->show();
  if (had_focus) takeFocus();
}

}  // namespace cabwright::desk
