// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/report_paper.h"

#include <QCoreApplication>
#include <algorithm>
#include <utility>

#include "drawing/furniture.h"

namespace cabwright::review_room {

using drawing::Anchor;
using drawing::Tone;

namespace {

constexpr double kFoot = 62, kNameColumn = 230, kGap = 7, kPictureAround = 14;
constexpr double kHeightOfWidth = 267.0 / 180.0;  // of A4 without margins of 15 mm

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Report)
};

}  // namespace

Paper::Paper() : nowhere_(4, 4, QImage::Format_RGB32) {
  painter_.begin(&nowhere_);
  height_ = kWidth * kHeightOfWidth - kFoot;
  pen_ = std::make_unique<drawing::Pen>(painter_, drawing::Theme::kDay);
}

Paper::Paper(QPdfWriter& writer, QString what, QString caution, int pages)
    : writer_(&writer), what_(std::move(what)), caution_(std::move(caution)), pages_(pages) {
  painter_.begin(writer_);
  scale_ = writer.width() / kWidth;
  painter_.scale(scale_, scale_);
  // The same height as when it counted, whatever the device rounds to.
  height_ = kWidth * kHeightOfWidth - kFoot;
  pen_ = std::make_unique<drawing::Pen>(painter_, drawing::Theme::kDay);
  paintFoot();
}

void Paper::paintFoot() {
  if (isCounting()) return;
  const double top = height_ + 12;
  pen_->line({0, top}, {kWidth, top}, {drawing::kHairline, Tone::kInk2});
  const QString page = Words::tr("page %1 of %2").arg(page_).arg(pages_);
  const double wide = drawing::textWidth(page);
  pen_->text({kWidth, top + 22}, page, {.anchor = Anchor::kEnd, .tone = Tone::kInk2});
  pen_->text({0, top + 22}, drawing::elideText(what_, kWidth - wide - 20), {.tone = Tone::kInk2});
  pen_->text({0, top + 45}, drawing::elideText(caution_, kWidth), {.tone = Tone::kInk2});
}

void Paper::beginPage() {
  ++page_;
  y_ = 0;
  if (isCounting()) return;
  writer_->newPage();
  paintFoot();
}

void Paper::need(double u) {
  if (y_ > 0 && u > room()) beginPage();
}

void Paper::caption(const QString& words, const QString& right) {
  need(150);
  if (y_ > 0) skip(20);
  drawing::paintCaption(*pen_, {0, y_ + 22}, kWidth, words, right);
  skip(44);
}

void Paper::paragraph(const QString& words, const drawing::Words& look, double indent) {
  const double lead = kLead * look.size / drawing::kText;
  for (const QString& line : drawing::wrapText(words, kWidth - indent, look.size, look.bold)) {
    need(lead);
    pen_->text({indent, y_ + 0.78 * lead}, line, look);
    skip(lead);
  }
}

void Paper::fact(const QString& name, const QString& words) {
  if (words.isEmpty()) return;
  const QStringList lines = drawing::wrapText(words, kWidth - kNameColumn);
  need(kLead * static_cast<double>(std::min<qsizetype>(lines.size(), 4)));
  pen_->text({0, y_ + 20}, drawing::elideText(name, kNameColumn - 12), {.tone = Tone::kInk2});
  for (const QString& line : lines) {
    need(kLead);
    pen_->text({kNameColumn, y_ + 20}, line);
    skip(kLead);
  }
  skip(2);
}

void Paper::row(const Row& row) {
  const double x = row.sign == drawing::VerdictSign::kNone ? 0 : 32;
  const double right = row.right.isEmpty() ? 0 : drawing::textWidth(row.right) + 16;
  const QStringList lines = drawing::wrapText(row.words, kWidth - x - right);
  QStringList below =
      row.below.isEmpty() ? QStringList() : drawing::wrapText(row.below, kWidth - x);
  // On the same line where there is room: a hundred short rows fill pages otherwise.
  const double beside = x + drawing::textWidth(row.words) + 22;
  if (lines.size() == 1 && below.size() == 1 &&
      beside + drawing::textWidth(row.below) < kWidth - right) {
    need(kLead);
    pen_->text({beside, y_ + 20}, row.below, {.tone = Tone::kInk2});
    below.clear();
  }
  need(kLead * static_cast<double>(std::min<qsizetype>(lines.size() + below.size(), 6)));
  if (row.sign != drawing::VerdictSign::kNone)
    drawing::paintVerdict(*pen_, {12, y_ + 13.5}, row.sign, 9.5, Tone::kPaper);
  if (!row.right.isEmpty())
    pen_->text({kWidth, y_ + 20}, row.right, {.anchor = Anchor::kEnd, .tone = Tone::kInk2});
  for (const QString& line : lines) {
    need(kLead);
    pen_->text({x, y_ + 20}, line);
    skip(kLead);
  }
  for (const QString& line : below) {
    need(kLead);
    pen_->text({x, y_ + 20}, line, {.tone = Tone::kInk2});
    skip(kLead);
  }
  skip(kGap);
}

bool Paper::fits(const QImage& image, double least) const {
  return image.isNull() || least * image.height() / image.width() + kPictureAround <= room();
}

void Paper::picture(const QImage& image, double width, double least) {
  if (image.isNull()) return;
  const double high_of_wide = static_cast<double>(image.height()) / image.width();
  if (!fits(image, least)) need(width * high_of_wide + kPictureAround);
  width = std::min(width, (room() - kPictureAround) / high_of_wide);
  const double height = width * high_of_wide;
  if (!isCounting()) pen_->painter().drawImage(QRectF(0, y_, width, height), image);
  pen_->rect({0, y_, width, height}, {drawing::kHairline, Tone::kInk2});
  skip(height + 12);
}

}  // namespace cabwright::review_room
