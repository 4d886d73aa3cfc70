// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/judge_row.h"

#include "cab/names.h"

namespace cabwright::cab {
namespace {

using unit::DefectClass;
using unit::Verdict;

constexpr std::array kVerdicts{Verdict::kGood, Verdict::kDefect, Verdict::kUnsure};
constexpr std::array kClasses{DefectClass::kCritical, DefectClass::kSerious,
                              DefectClass::kTechnical};

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
    const QString name = nameOf(kClasses[k]);
    classes_[k] = new WordButton(seat, style, key, sheet);
    classes_[k]->setObjectName(QStringLiteral("class.") + key);
    classes_[k]->setAccessibleName(name);
    classes_[k]->setToolTip(name);
    classes_[k]->setDescription(tr("How grave the defect is. Key: %1").arg(key));
    classes_[k]->hide();
    connect(classes_[k], &WordButton::pressed, this,
            [this, k] { judge(Verdict::kDefect, kClasses[k]); });
    connect(classes_[k], &WordButton::pointedAt, this,
            [this, name](bool pointed) { page_.setClassHint(pointed ? name : QString()); });
  }
}

void JudgeRow::judge(Verdict verdict, DefectClass rank) {
  const auto item = seat_.itemLookedAt();
  if (item) seat_.judge(*item, verdict, rank);
}

void JudgeRow::arrange(const QRectF& page, double reading) {
  for (int k = 0; k < 3; ++k) {
    verdicts_[static_cast<std::size_t>(k)]->setArea(NotebookPart::judgeArea(page, k, reading));
    classes_[static_cast<std::size_t>(k)]->setArea(NotebookPart::classArea(page, k, reading));
  }
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
