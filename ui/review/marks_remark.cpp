// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/marks_remark.h"

#include "after/words.h"

namespace cabwright::review_room {

RemarkForm::RemarkForm(const after::SheetLook& look, Opened& opened, QWidget* parent)
    : MarkForm(look, opened, tr("Comment"), parent) {
  column()->addWidget(makeWords(tr("Comment"), WordsKind::kHeading, this));
  on_ = addChoice(tr("On"), {tr("the line"), tr("this moment"), tr("the whole run")},
                  QStringLiteral("remark_on"));
  what_ = makeWords({}, WordsKind::kSecond, this);
  column()->addWidget(what_);
  text_ = makeText(tr("The comment"), QStringLiteral("remark_text"), 3, this);
  column()->addWidget(text_);
  addFoot(tr("Add the comment"), QStringLiteral("remark_do"), true);
  column()->addStretch(1);
  connect(on_, &QButtonGroup::idToggled, this, [this] { showOn(); });
  connect(&opened, &Opened::cursorMoved, this, [this] { showOn(); });
}

void RemarkForm::begin(const marking::SheetLine* line) {
  rule_ = line == nullptr ? std::string() : line->id;
  title_of_line_ = line == nullptr
                       ? QString()
                       : tr("Line %1: %2").arg(line->number).arg(after::sheetWords(line->title));
  on_->button(kLine)->setEnabled(line != nullptr);
  on_->button(line != nullptr ? kLine : kMoment)->setChecked(true);
  text_->clear();
  say({}, true);
  showOn();
  restyle();
  text_->setFocus(Qt::ShortcutFocusReason);
}

void RemarkForm::showOn() {
  switch (on_->checkedId()) {
    case kLine:
      what_->setText(title_of_line_);
      return;
    case kMoment:
      what_->setText(
          tr("The moment under the cursor, %1").arg(after::timeText(opened().cursor(), true)));
      return;
    default:
      what_->setText(tr("Of no line and no moment alone"));
  }
}

QString RemarkForm::tryIt() {
  review::Comment comment;
  if (on_->checkedId() == kLine) comment.rule = rule_;
  if (on_->checkedId() == kMoment) comment.tick = opened().cursor();
  comment.text = text_->toPlainText().trimmed().toStdString();
  return refusalText(opened(), opened().add({comment}));
}

}  // namespace cabwright::review_room
