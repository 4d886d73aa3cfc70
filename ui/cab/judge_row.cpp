// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/judge_row.h"

#include <span>

#include "cab/names.h"

namespace cabwright::cab {
namespace {

using unit::DefectClass;
using unit::Verdict;

constexpr std::array kVerdicts{Verdict::kGood, Verdict::kDefect, Verdict::kUnsure};
constexpr std::array kClasses{DefectClass::kCritical, DefectClass::kSerious,
                              DefectClass::kTechnical};

// Side by side, each as wide as its word wants and what is over shared alike; false: not so.
bool share(const QRectF& row, std::span<WordButton* const> buttons, bool with_keys,
           bool bold = true) {
  double needed = 0;
  for (const WordButton* b : buttons) needed += b->neededWidth(with_keys, bold);
  if (needed > row.width()) return false;
  const double over = (row.width() - needed) / static_cast<double>(buttons.size());
  double x = row.left();
  for (WordButton* b : buttons) {
    const double width = b->neededWidth(with_keys, bold) + over;
    b->setArea({x, row.top(), width, row.height()});
    x += width;
  }
  return true;
}

// Alike, whether the words fit or not.
void shareAlike(const QRectF& row, std::span<WordButton* const> buttons, int columns) {
  const double width = row.width() / columns;
  for (std::size_t k = 0; k < buttons.size(); ++k)
    buttons[k]->setArea(
        {row.left() + width * static_cast<double>(k), row.top(), width, row.height()});
}

}  // namespace

JudgeRow::JudgeRow(Seat& seat, const SheetStyle& style, NotebookPart& page, QWidget* sheet)
    : QObject(sheet), seat_(seat), page_(page) {
  const std::array<QString, 3> words{tr("Good"), tr("Defect"), tr("Not sure")};
  const std::array<drawing::VerdictSign, 3> signs{
      drawing::VerdictSign::kGood, drawing::VerdictSign::kDefect, drawing::VerdictSign::kUnsure};
  for (std::size_t k = 0; k < 3; ++k) {
    verdicts_[k] = new WordButton(seat, style, words[k], sheet);
    verdicts_[k]->setSign(signs[k]);
    verdicts_[k]->setDescription(tr("Judges what is being looked at"));
    connect(verdicts_[k], &WordButton::pressed, this,
            [this, k] { judge(kVerdicts[k], DefectClass::kNone); });
  }
  for (std::size_t k = 0; k < 3; ++k) {
    const std::string_view letter = unit::letterOf(kClasses[k]);
    const QString key = QString::fromUtf8(letter.data(), static_cast<qsizetype>(letter.size()));
    classes_[k] = new WordButton(seat, style, nameOf(kClasses[k]), sheet);
    classes_[k]->setObjectName(QStringLiteral("class.") + key);
    classes_[k]->setKey(key);
    classes_[k]->setDescription(tr("How grave the defect is"));
    classes_[k]->hide();
    connect(classes_[k], &WordButton::pressed, this,
            [this, k] { judge(Verdict::kDefect, kClasses[k]); });
  }
}

void JudgeRow::judge(Verdict verdict, DefectClass rank) {
  const auto item = seat_.itemLookedAt();
  if (item) seat_.judge(*item, verdict, rank);
}

void JudgeRow::arrange(const QRectF& page, double reading) {
  const QRectF row = NotebookPart::judgeRow(page, reading);
  // In the smallest windows they stand a little nearer to the edge of the page.
  const QRectF wider = row.adjusted(-4, 0, 4, 0);
  if (!share(row, verdicts_, true) && !share(row, verdicts_, false) &&
      !share(row, verdicts_, false, false) && !share(wider, verdicts_, false, false))
    shareAlike(row, verdicts_, 3);
  // The letters are the keys for the classes: they are kept, and a narrow page has two rows.
  const bool one = share(NotebookPart::classRow(page, 0, reading), classes_, true);
  const std::span<WordButton* const> all(classes_);
  if (!one) {
    shareAlike(NotebookPart::classRow(page, 0, reading), all.first(2), 2);
    shareAlike(NotebookPart::classRow(page, 1, reading), all.last(1), 2);
  }
  page_.setClassRows(one ? 1 : 2);
}

void JudgeRow::refresh() {
  const auto item = seat_.itemLookedAt();
  const unit::Judgement* said = item ? seat_.findJudgement(*item) : nullptr;
  const Verdict verdict = said != nullptr ? said->verdict : Verdict::kNone;
  for (std::size_t k = 0; k < 3; ++k) {
    verdicts_[k]->setUsable(item.has_value());
    verdicts_[k]->setMarked(verdict == kVerdicts[k]);
    const bool asked = verdict == Verdict::kDefect;
    if (!asked && classes_[k]->hasFocus()) verdicts_[1]->setFocus();
    classes_[k]->setVisible(asked && !seat_.isToLookAt());
    classes_[k]->setMarked(asked && said->said_class == kClasses[k]);
  }
}

std::vector<Part*> JudgeRow::parts() const {
  std::vector<Part*> all(verdicts_.begin(), verdicts_.end());
  all.insert(all.end(), classes_.begin(), classes_.end());
  return all;
}

}  // namespace cabwright::cab
