// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/rating_board.h"

#include "review_room/marks_facts.h"

namespace cabwright::review_room {

RatingBoard::RatingBoard(const after::SheetLook& look, const QString& object_name, QWidget* parent)
    : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  for (const RatingScale& scale : ratingScales()) {
    auto* row = new RatingRow(look, scale, object_name + QLatin1Char('_'), this);
    auto* comment = makeLine(tr("Comment on %1").arg(ratingWord(scale.title)),
                             object_name + QLatin1Char('_') + QLatin1String(scale.id), this);
    comment->setPlaceholderText(tr("Comment"));
    comment->setMaxLength(2000);
    column->addWidget(row);
    column->addWidget(comment);
    column->addSpacing(8);
    parts_.push_back({row, comment});
  }
}

std::vector<review::Content> RatingBoard::ratings() const {
  std::vector<review::Content> ratings;
  for (const Part& part : parts_)
    if (part.row->value() > 0)
      ratings.emplace_back(review::Rating{part.row->scale().id, part.row->value(),
                                          part.comment->text().trimmed().toStdString()});
  return ratings;
}

void RatingBoard::clear() {
  for (const Part& part : parts_) {
    part.row->clear();
    part.comment->clear();
  }
}

RatingForm::RatingForm(const after::SheetLook& look, Opened& opened, QWidget* parent)
    : MarkForm(look, opened, tr("Ratings"), parent),
      given_(makeWords({}, WordsKind::kPlain, this)),
      board_(new RatingBoard(look, QStringLiteral("rating"), this)) {
  column()->addWidget(makeWords(tr("What no rule can see, in the assessor's judgement. It stands "
                                   "beside the marks and earns no points."),
                                WordsKind::kSecond, this));
  column()->addWidget(given_);
  column()->addWidget(board_);
  addFoot(tr("Record the ratings"), QStringLiteral("rating_do"), false);
  column()->addStretch(1);
}

void RatingForm::refresh() {
  QStringList lines;
  for (const review::Entry& entry : opened().entries()) {
    const auto* rating = std::get_if<review::Rating>(&entry.content);
    if (rating == nullptr) continue;
    QString line = tr("%1: %2 of 5").arg(scaleTitle(rating->scale)).arg(rating->value);
    if (!rating->comment.empty()) line += QLatin1String(", ") + toQt(rating->comment);
    lines << line + QStringLiteral(" (%1)").arg(personName(entry.by));
  }
  given_->setText(lines.join(QLatin1Char('\n')));
  given_->setVisible(!lines.isEmpty());
}

QString RatingForm::tryIt() {
  std::vector<review::Content> ratings = board_->ratings();
  if (ratings.empty()) return tr("Nothing has been rated yet.");
  const QString refused = refusalText(opened(), opened().add(std::move(ratings)));
  if (refused.isEmpty()) board_->clear();
  return refused;
}

}  // namespace cabwright::review_room
