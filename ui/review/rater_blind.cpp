// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/rater_blind.h"

#include <QShortcut>
#include <algorithm>
#include <array>

#include "after/words.h"
#include "review_room/marks_flow.h"

namespace cabwright::review_room {

using marking::Outcome;

namespace {

constexpr double kAsks = 104;  ///< u: four lines, so that the buttons keep their place

constexpr std::array kOutcomes{Outcome::kMet, Outcome::kBroken, Outcome::kNotExercised};

}  // namespace

BlindForm::BlindForm(const after::SheetLook& look, Opened& opened, QWidget* parent)
    : MarkForm(look, opened, tr("Second assessor"), parent),
      progress_(makeWords({}, WordsKind::kSecond, this)),
      stack_(new QStackedWidget(this)) {
  setProperty("any_width", true);  // its list is as wide as it can be
  column()->addWidget(makeWords(tr("Second assessor"), WordsKind::kHeading, this));
  column()->addWidget(progress_);
  part_ = addChoice({}, {tr("Lines"), tr("Ratings")}, QStringLiteral("blind_part"));
  part_->button(0)->setChecked(true);
  auto* lines = new QWidget(stack_);
  makeLines(lines);
  board_ = new RatingBoard(look, QStringLiteral("blind_rating"), stack_);
  stack_->addWidget(lines);
  stack_->addWidget(makeScroll(board_, stack_));
  connect(part_, &QButtonGroup::idClicked, stack_, &QStackedWidget::setCurrentIndex);
  column()->addWidget(stack_, 1);
  addFoot(tr("Hand in"), QStringLiteral("blind_do"), true);
}

void BlindForm::makeLines(QWidget* page) {
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  list_ = new MarksList(look(), tr("Lines to be marked"), page);
  list_->setObjectName(QStringLiteral("blind_list"));
  column->addWidget(list_, 1);
  asks_ = makeWords({}, WordsKind::kPlain, page);
  asks_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  column->addWidget(asks_);
  outcome_ = new QButtonGroup(this);
  auto* row = new FlowRow;
  for (int k = 0; k < static_cast<int>(kOutcomes.size()); ++k) {
    const Outcome outcome = kOutcomes[static_cast<std::size_t>(k)];
    auto* button =
        new MarkButton(look(), outcomeWord(outcome), QStringLiteral("blind_as%1").arg(k), page);
    button->setCheckable(true);
    button->setKey(QString::number(k + 1));
    outcome_->addButton(button, k);
    row->addWidget(button);
    connect(button, &QAbstractButton::clicked, this, [this, outcome] { mark(outcome); });
    auto* key = new QShortcut(QKeySequence(Qt::Key_1 + k), page);
    key->setContext(Qt::WidgetWithChildrenShortcut);
    connect(key, &QShortcut::activated, this, [this, outcome] { mark(outcome); });
  }
  column->addLayout(row);
  connect(list_, &MarksList::lineChosen, this, &BlindForm::showLine);
}

void BlindForm::begin() {
  marked_.clear();
  board_->clear();
  say({}, true);
  showMarked();
  list_->select(list_->rows().empty() ? std::string() : list_->rows().front().rule);
  part_->button(0)->click();
  showLine();
  restyle();
  list_->setFocus(Qt::ShortcutFocusReason);
}

void BlindForm::restyle() {
  MarkForm::restyle();
  asks_->setMinimumHeight(toPixels(kAsks, look()));
  list_->restyle();
}

void BlindForm::showMarked() {
  list_->setRows(makeBlindRows(opened().sheet(), marked_));
  progress_->setText(
      tr("Mark each line as you see it. %1 of %2 are marked; those left out are not compared. "
         "How they were marked before is shown when you have handed in.")
          .arg(marked_.size())
          .arg(list_->rows().size()));
}

void BlindForm::showLine() {
  const auto& lines = opened().sheet().lines;
  const auto line = std::ranges::find(lines, list_->selected(), &marking::SheetLine::id);
  outcome_->setExclusive(false);
  const auto mark = std::ranges::find(marked_, list_->selected(), &BlindDraft::rule);
  for (int k = 0; k < static_cast<int>(kOutcomes.size()); ++k)
    outcome_->button(k)->setChecked(mark != marked_.end() &&
                                    mark->outcome == kOutcomes[static_cast<std::size_t>(k)]);
  outcome_->setExclusive(true);
  if (line == lines.end()) {
    asks_->clear();
    return;
  }
  QStringList words{after::className(line->rule_class) + QLatin1String(". ") +
                    after::sheetWords(line->why)};
  if (!line->tolerance.empty())
    words << tr("Tolerance: %1").arg(after::sheetWords(line->tolerance));
  asks_->setText(words.join(QLatin1Char('\n')));
}

void BlindForm::mark(Outcome outcome) {
  const std::string rule = list_->selected();
  if (rule.empty()) return;
  const auto known = std::ranges::find(marked_, rule, &BlindDraft::rule);
  if (known != marked_.end())
    known->outcome = outcome;
  else
    marked_.push_back({rule, outcome});
  showMarked();
  const auto& rows = list_->rows();
  const auto at = std::ranges::find(rows, rule, &MarkRow::rule) - rows.begin();
  for (std::size_t k = 1; k < rows.size(); ++k) {
    const MarkRow& next = rows[(static_cast<std::size_t>(at) + k) % rows.size()];
    if (std::ranges::find(marked_, next.rule, &BlindDraft::rule) != marked_.end()) continue;
    list_->select(next.rule);
    break;
  }
  showLine();
}

QString BlindForm::tryIt() {
  if (marked_.empty()) return tr("No line has been marked yet.");
  std::vector<review::Content> contents;
  for (const BlindDraft& draft : marked_)
    contents.emplace_back(review::BlindMark{draft.rule, draft.outcome});
  for (review::Content& rating : board_->ratings()) contents.push_back(std::move(rating));
  return refusalText(opened(), opened().add(std::move(contents)));
}

}  // namespace cabwright::review_room
