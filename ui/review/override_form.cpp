// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/override_form.h"

#include <algorithm>
#include <array>

#include "after/words.h"
#include "review_room/marks_rows.h"

namespace cabwright::review_room {

using marking::Outcome;

namespace {

// What somebody can rule when a run is over, in the order of the buttons; the last one is void.
constexpr std::array kOutcomes{Outcome::kMet, Outcome::kBroken, Outcome::kNotExercised};

const marking::SheetLine* findLine(const marking::MarkSheet& sheet, const std::string& rule) {
  const auto line = std::ranges::find(sheet.lines, rule, &marking::SheetLine::id);
  return line == sheet.lines.end() ? nullptr : &*line;
}

}  // namespace

OverrideForm::OverrideForm(const after::SheetLook& look, Opened& opened, QWidget* parent)
    : MarkForm(look, opened, tr("Override"), parent),
      title_(makeWords({}, WordsKind::kHeading, this)),
      recorded_(makeWords({}, WordsKind::kSecond, this)) {
  column()->addWidget(title_);
  column()->addWidget(recorded_);
  QStringList words;
  for (const Outcome outcome : kOutcomes) words << outcomeWord(outcome);
  outcome_ = addChoice(tr("Counts as"), words << tr("void"), QStringLiteral("override_as"));
  column()->addWidget(
      makeWords(tr("Reason, as the trainee will read it"), WordsKind::kSecond, this));
  reason_ = makeText(tr("Reason of the override"), QStringLiteral("override_reason"), 3, this);
  column()->addWidget(reason_);
  addFoot(tr("Record the override"), QStringLiteral("override_do"), true);
  column()->addStretch(1);
}

void OverrideForm::begin(const marking::SheetLine& line) {
  rule_ = line.id;
  title_->setText(tr("Line %1: %2").arg(line.number).arg(after::sheetWords(line.title)));
  const QString recorded = outcomeWord(line.verdict.outcome);
  recorded_->setText(
      line.override_record
          ? tr("Recorded as %1, now counts as %2. Both stay in the record.")
                .arg(recorded, verdictWord(line))
          : tr("Recorded as %1. That stays in the record beside what you say.").arg(recorded));
  outcome_->setExclusive(false);
  for (QAbstractButton* button : outcome_->buttons()) button->setChecked(false);
  outcome_->setExclusive(true);
  reason_->clear();
  say({}, true);
  restyle();
  outcome_->button(0)->setFocus(Qt::ShortcutFocusReason);
}

QString OverrideForm::tryIt() {
  const marking::SheetLine* line = findLine(opened().sheet(), rule_);
  const int chosen = outcome_->checkedId();
  if (line == nullptr) return tr("The sheet has no such line.");
  if (chosen < 0) return tr("Say what the line counts as from now on.");
  review::Override given;
  given.rule = rule_;
  if (chosen < static_cast<int>(kOutcomes.size()))
    given.outcome = kOutcomes[static_cast<std::size_t>(chosen)];
  given.reason = reason_->toPlainText().trimmed().toStdString();
  const bool is_void = !line->void_reason.empty();
  if (given.outcome ? !is_void && line->outcome() == *given.outcome : is_void)
    return tr("It counts as that already.");
  return refusalText(opened(), opened().add({given}));
}

}  // namespace cabwright::review_room
