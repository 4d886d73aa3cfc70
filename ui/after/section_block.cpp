// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/section_block.h"

#include <QRegularExpression>

namespace cabwright::after {

using drawing::Anchor;
using drawing::Tone;

namespace {

constexpr double kHead = 50, kText = 30, kLead = 24, kGap = 9, kBelow = 12;

}  // namespace

SectionBlock::SectionBlock(const SheetLook& look, QString caption, QString count,
                           std::vector<SectionRow> rows, bool folded, QWidget* parent)
    : SheetBlock(look, parent),
      caption_(std::move(caption)),
      count_(std::move(count)),
      rows_(std::move(rows)),
      folded_(folded) {
  setAccessibleName(caption_ + QLatin1String(", ") + count_);
  QStringList words;
  for (const SectionRow& row : rows_)
    words << QStringList{row.title, row.detail, row.right}
                 .filter(QRegularExpression(QStringLiteral(".")))
                 .join(QLatin1String(", "));
  setAccessibleDescription(words.join(QLatin1String(".\n")));
  if (rows_.empty()) return;
  fold_ = new SheetButton(look, {}, this);
  connect(fold_, &QAbstractButton::clicked, this, [this] { setFolded(!folded_); });
  setFolded(folded);
}

void SectionBlock::setFolded(bool folded) {
  folded_ = folded;
  if (fold_ == nullptr) return;
  fold_->setText(folded_ ? tr("Show") : tr("Hide"));
  fold_->setAccessibleName(folded_ ? tr("Show: %1").arg(caption_) : tr("Hide: %1").arg(caption_));
  takeWidth(widthInSheet());
  Q_EMIT heightChanged();
}

double SectionBlock::paint(drawing::Pen& pen, double width, bool measured) {
  const double before = pen.text({4, kText + 4}, caption_, {.size = drawing::kName, .bold = true});
  pen.text({before + 16, kText + 4}, count_, {.tone = Tone::kInk2});
  if (rows_.empty()) return kHead - 6;
  if (folded_) return kHead + 4;
  double y = kHead + 22;
  for (const SectionRow& row : rows_) {
    const bool signed_row = row.sign != drawing::VerdictSign::kNone;
    const double x = signed_row ? 34 : 4;
    if (!measured && signed_row)
      drawing::paintVerdict(pen, {15, y - 6.5}, row.sign, 9.5, Tone::kPaper);
    const double right = row.right.isEmpty() ? 0 : drawing::textWidth(row.right) + 14;
    if (right > 0)
      pen.text({width - 4, y}, row.right, {.anchor = Anchor::kEnd, .tone = Tone::kInk2});
    y = pen.paragraph({x, y}, row.title, width - x - right - 4, {}, kLead);
    if (!row.detail.isEmpty())
      y = pen.paragraph({x, y}, row.detail, width - x - 4, {.tone = Tone::kInk2}, kLead);
    y += kGap;
  }
  return y - kLead - kGap + kBelow;
}

void SectionBlock::placeButtons() {
  if (fold_ == nullptr) return;
  const double k = look().scale, wide = fold_->sizeInSheet().width();
  fold_->setGeometry(
      QRectF(QPointF(widthInSheet() - wide, 6) * k, QSizeF(fold_->sizeHint())).toAlignedRect());
}

}  // namespace cabwright::after
