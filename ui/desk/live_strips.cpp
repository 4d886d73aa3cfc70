// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/live_strips.h"

#include <QLineEdit>
#include <QPainter>
#include <QShortcut>
#include <algorithm>
#include <array>
#include <cmath>

#include "desk/strip_groups.h"

namespace cabwright::desk {

using drawing::Tone;

namespace {

constexpr double kSide = 16, kTop = 10, kBar = 46, kList = 410, kGutter = 22, kField = 40;
constexpr std::array<int, 3> kMinutes{1, 5, 20};
constexpr std::int64_t kTicksPerMinute = 60 * session::kTicksPerSecond;

}  // namespace

LiveStrips::LiveStrips(Desk& desk, QWidget* parent)
    : LivePage(desk, parent),
      model_(new SignalListModel(this)),
      search_(new QLineEdit(this)),
      list_(new SignalList(look(), *model_, this)),
      pane_(new StripPane(look(), tape_, events_, this)) {
  setAccessibleName(tr("Strips"));
  search_->setPlaceholderText(tr("Find a value"));
  search_->setAccessibleName(tr("Search the signals"));
  search_->setClearButtonEnabled(true);
  list_->setAccessibleName(tr("Signals"));
  makeBar();
  connect(search_, &QLineEdit::textChanged, model_, &SignalListModel::setSearch);
  connect(search_, &QLineEdit::returnPressed, this, [this] {
    if (model_->rowCount() == 0) return;
    list_->setFocus();
    list_->setCurrentIndex(model_->index(0));
  });
  connect(model_, &SignalListModel::asked, this, &LiveStrips::setChosen);
  connect(pane_, &StripPane::heldChanged, hold_, &QAbstractButton::setChecked);
  connect(pane_, &StripPane::momentChosen, this, &LiveStrips::momentChosen);
  connect(pane_, &StripPane::windowAsked, this, &LiveStrips::askWindow);
  auto* find = new QShortcut(QKeySequence::Find, this);
  find->setContext(Qt::WidgetWithChildrenShortcut);
  connect(find, &QShortcut::activated, this, [this] {
    search_->setFocus();
    search_->selectAll();
  });
  setMinimumSize(900, 420);
  choosePreset(0);
  setMinutes(5);
  restyle();
}

LiveStrips::~LiveStrips() = default;

void LiveStrips::makeBar() {
  const std::vector<Preset>& all = desk::presets();
  for (std::size_t k = 0; k < all.size(); ++k) {
    auto* button = new ChoiceButton(look(), nameOf(all[k]), this);
    connect(button, &QAbstractButton::clicked, this, [this, k] { choosePreset(k); });
    presets_.push_back(button);
  }
  for (const int minutes : kMinutes) {
    auto* button = new ChoiceButton(look(), tr("%1 min").arg(minutes), this);
    connect(button, &QAbstractButton::clicked, this, [this, minutes] { setMinutes(minutes); });
    windows_.push_back(button);
  }
  hold_ = new ChoiceButton(look(), tr("Hold"), this);
  hold_->setAccessibleDescription(tr("The strip stands while the run goes on. Key: Space."));
  connect(hold_, &QAbstractButton::clicked, this, [this](bool on) { pane_->setHeld(on); });
  only_ = new ChoiceButton(look(), tr("Chosen"), this);
  only_->setAccessibleDescription(tr("Lists only what is on the strip."));
  connect(only_, &QAbstractButton::clicked, model_, &SignalListModel::setOnlyChosen);
  setTabOrder(search_, only_);
  setTabOrder(only_, list_);
  QWidget* before = list_;
  for (const auto* row : {&presets_, &windows_}) {
    for (ChoiceButton* button : *row) {
      setTabOrder(before, button);
      before = button;
    }
  }
  setTabOrder(before, hold_);
  setTabOrder(hold_, pane_);
}

void LiveStrips::choose(const std::vector<unit::Signal>& signals) {
  chosen_.assign(signals.begin(), signals.begin() + static_cast<std::ptrdiff_t>(
                                                        std::min(signals.size(), kMostSignals)));
  takeChoice();
}

bool LiveStrips::setChosen(unit::Signal signal, bool on) {
  const auto found = std::ranges::find(chosen_, signal);
  if ((found != chosen_.end()) == on) return true;
  if (on && chosen_.size() >= kMostSignals) {
    say(tr("Twelve are on the strip: take one off first."));
    return false;
  }
  if (on) {
    chosen_.push_back(signal);
  } else {
    chosen_.erase(found);
  }
  takeChoice();
  return true;
}

void LiveStrips::choosePreset(std::size_t which) { choose(desk::presets()[which].signals); }

void LiveStrips::takeChoice() {
  say({});
  pane_->setSignals(chosen_);
  model_->setChosen(pane_->plots());
  const std::vector<Preset>& all = desk::presets();
  for (std::size_t k = 0; k < all.size(); ++k) presets_[k]->setChecked(all[k].signals == chosen_);
  update();
}

void LiveStrips::setMinutes(int minutes) {
  pane_->setWindow(minutes * kTicksPerMinute);
  for (std::size_t k = 0; k < kMinutes.size(); ++k) windows_[k]->setChecked(kMinutes[k] == minutes);
}

int LiveStrips::minutes() const { return static_cast<int>(pane_->window() / kTicksPerMinute); }

void LiveStrips::askWindow(int direction) {
  const auto now = std::ranges::find(kMinutes, minutes()) - kMinutes.begin();
  const auto last = static_cast<std::ptrdiff_t>(kMinutes.size()) - 1;
  setMinutes(
      kMinutes[static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(now + direction, 0, last))]);
}

void LiveStrips::say(const QString& words) {
  if (words == said_) return;
  said_ = words;
  setAccessibleDescription(words);
  arrange();
  update();
}

void LiveStrips::forget() {
  tape_.clear();
  events_.clear();
  news_ = false;
  pane_->forget();
}

void LiveStrips::keep() {
  const bool sampled = tape_.sample(*run());
  const bool happened = events_.update(*run());
  news_ = news_ || sampled || happened;
}

void LiveStrips::showRun() {
  if (!news_) return;
  news_ = false;
  pane_->advance();
}

void LiveStrips::restyle() {
  setStyleSheet(pageStyle(look()));
  arrange();
  list_->restyle();
  pane_->restyle();
}

void LiveStrips::arrange() {
  const double k = look().scale, wide = width() / k, high = height() / k;
  placeInRow(presets_, kSide - 3, kTop, k);
  std::vector<ChoiceButton*> right = windows_;
  right.push_back(hold_);
  double room = 0;
  for (const ChoiceButton* button : right) room += button->sizeInSheet().width() + 2;
  const double from = wide - kSide - room + 5;
  const double end = placeInRow(windows_, from - 12, kTop, k);
  placeInRow({hold_}, end + 14, kTop, k);
  const double top = kTop + kBar + 8;
  const double only = only_->sizeInSheet().width();
  place(search_, {kSide, top, kList - only - 4, kField});
  placeInRow({only_}, kSide + kList - only + 3, top + 1, k);
  const double said = said_.isEmpty() ? 0 : 30;
  place(list_, {kSide, top + kField + 8, kList, high - top - kField - 24 - said});
  const double left = kSide + kList + kGutter;
  place(pane_, {left, top - 2, wide - left - kSide, high - top - 4});
}

void LiveStrips::paintSheet(drawing::Pen& pen, QSizeF sheet) {
  const double wide = sheet.width(), high = sheet.height();
  pen.line({kSide, kTop + kBar}, {wide - kSide, kTop + kBar}, {drawing::kHairline, Tone::kRule});
  if (!said_.isEmpty())
    pen.text({kSide, high - 18}, drawing::elideText(said_, kList), {.tone = Tone::kBad});
}

}  // namespace cabwright::desk
