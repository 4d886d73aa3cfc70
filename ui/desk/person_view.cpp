// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/person_view.h"

#include <algorithm>

#include "after/words.h"
#include "cab/names.h"

namespace cabwright::desk {

using drawing::VerdictSign;
using marking::JudgementResult;

namespace {

constexpr double kSide = 16, kTop = 56, kGutter = 28, kBetween = 46;
/// What is wrong is looked for anew that often, should nobody do anything.
constexpr std::int64_t kJudgeTicks = session::kTicksPerSecond;

VerdictSign signOf(const marking::JudgementRow& row) {
  if (row.empty_entry) return VerdictSign::kUnsure;
  switch (row.result) {
    case JudgementResult::kHit:
    case JudgementResult::kRight:
      return VerdictSign::kGood;
    case JudgementResult::kMiss:
    case JudgementResult::kFalseAlarm:
      return VerdictSign::kDefect;
    case JudgementResult::kUnsure:
      return VerdictSign::kUnsure;
    case JudgementResult::kNotJudged:
      break;
  }
  return VerdictSign::kSeen;
}

after::TableRow noteRow(const marking::JudgementRow& row) {
  QString truth = after::truthText(row.item, row.truth);
  const QString rank = defectText(row.defect);
  if (row.truth == "good" || truth.isEmpty()) truth = PersonView::tr("sound");
  if (!rank.isEmpty()) truth = PersonView::tr("%1: %2").arg(rank, after::insideSentence(truth));
  return {{after::timeText(row.tick), after::itemName(row.item), judgedText(row), truth,
           resultText(row)},
          signOf(row),
          row.result == JudgementResult::kMiss || row.result == JudgementResult::kFalseAlarm,
          row.tick};
}

after::TableRow openRow(const marking::JudgementRow& row) {
  return {
      {defectText(row.defect), after::itemName(row.item), after::truthText(row.item, row.truth)},
      VerdictSign::kSeen,
      row.defect == marking::RuleClass::kCritical,
      0};
}

}  // namespace

PersonView::PersonView(Desk& desk, QWidget* parent)
    : LivePage(desk, parent),
      notebook_(new after::RowsTable(look(),
                                     {{tr("Time"), 92, false},
                                      {tr("Thing"), 0, false},
                                      {tr("Judged"), 160, false},
                                      {tr("What was so"), 0, false},
                                      {tr("Result"), 190, false}},
                                     {.sign = 4, .strong = 1}, tr("Notebook of the trainee"),
                                     this)),
      open_(new after::RowsTable(
          look(),
          {{tr("Class"), 140, false}, {tr("Thing"), 0, false}, {tr("What is so"), 0, false}}, {},
          tr("Defects not found yet"), this)) {
  setAccessibleName(tr("The trainee"));
  setMinimumSize(900, 420);
  restyle();
}

PersonView::~PersonView() = default;

double PersonView::leftWidth() const {
  return std::clamp(width() / look().scale * 0.33, 480.0, 640.0);
}

void PersonView::forget() {
  listener_ = {};
  state_ = {};
  judged_tick_ = judged_acts_ = -1;
  notebook_->setRows({});
  open_->setRows({});
  open_at_ = {};
  found_ = missed_ = false_alarms_ = waiting_ = 0;
}

// The ear needs the seconds before as well.
void PersonView::keep() {
  const unit::Unit& unit = run()->unit();
  listener_.hear(hearing::calcScene(unit.frame(), unit.world().trainee.place),
                 static_cast<double>(run()->tick()) / 100.0);
}

void PersonView::showRun() {
  PersonState now = calcPerson(*run(), listener_.trend());
  const std::int64_t tick = run()->tick();
  if (now.acts != judged_acts_ || tick - judged_tick_ >= kJudgeTicks) {
    judged_acts_ = now.acts;
    judged_tick_ = tick;
    takeJudgements();
  }
  if (now == state_) return;
  state_ = std::move(now);
  setAccessibleDescription(summary());
  update(0, 0, px(kSide + leftWidth() + kGutter / 2), height());
}

void PersonView::takeJudgements() {
  const auto table = run()->sheet().judgements;
  if (!table) return;
  std::vector<after::TableRow> notes, open;
  std::array<int, unit::kPlaceCount> open_at{};
  for (const marking::JudgementRow& row : table->rows) {
    if (row.result != JudgementResult::kNotJudged) {
      notes.push_back(noteRow(row));
      continue;
    }
    open.push_back(openRow(row));
    if (const auto item = unit::findItem(row.item))
      ++open_at[static_cast<std::size_t>(unit::itemInfo(*item).place)];
  }
  // The newest first; of what is open the worst.
  std::ranges::stable_sort(notes, std::greater{}, &after::TableRow::tag);
  std::ranges::stable_sort(open, std::greater{}, &after::TableRow::strong);
  const bool same = table->hits == found_ && table->misses == missed_ &&
                    table->false_alarms == false_alarms_ && table->not_judged == waiting_ &&
                    open_at == open_at_;
  found_ = table->hits;
  missed_ = table->misses;
  false_alarms_ = table->false_alarms;
  waiting_ = table->not_judged;
  open_at_ = open_at;
  notebook_->setRows(std::move(notes));
  open_->setRows(std::move(open));
  if (!same) update();
}

QString PersonView::placeText() const {
  if (!state_.walking) return cab::nameOf(state_.place);
  return tr("Walking to %1, %2 s").arg(cab::nameOf(state_.heading)).arg(state_.arrives_in_s);
}

QString PersonView::lookText() const {
  if (!state_.looking) return tr("at nothing");
  return cab::nameOf(*state_.looking);
}

QString PersonView::summary() const {
  QStringList parts{placeText()};
  for (std::size_t side = 0; side < 2; ++side) {
    const cab::Hold& hold = state_.hands[side];
    const QString held =
        hold.on ? cab::nameOf(*hold.on) + QLatin1String(", ") + cab::howText(hold) : tr("free");
    parts << (side == 0 ? tr("left hand: %1") : tr("right hand: %1")).arg(held);
  }
  parts << tr("looks %1").arg(lookText());
  if (!state_.words.isEmpty()) parts << tr("last heard: %1").arg(state_.words);
  return parts.join(QLatin1String("; "));
}

void PersonView::restyle() {
  setStyleSheet(pageStyle(look()));
  notebook_->restyle();
  open_->restyle();
  arrange();
}

void PersonView::arrange() {
  const double wide = sizeInSheet().width(), high = sizeInSheet().height();
  const double left = kSide + leftWidth() + kGutter, room = high - kTop - kSide - kBetween;
  const double upper = room * 0.58;
  place(notebook_, {left, kTop, wide - left - kSide, upper});
  place(open_, {left, kTop + upper + kBetween, wide - left - kSide, room - upper});
  update();
}

}  // namespace cabwright::desk
