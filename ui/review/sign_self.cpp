// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/sign_self.h"

#include <QFileInfo>
#include <algorithm>

#include "review_room/marks_flow.h"
#include "session/session_error.h"

namespace cabwright::review_room {
namespace {

std::string findTrainee(const Opened& opened) {
  return session::traineePerson(opened.store().header()).name;
}

}  // namespace

bool isSelfRatingDue(const Opened& opened) {
  const session::Verification& found = opened.verification();
  if (!found.is_assessment || !found.has_end || found.standing != session::Standing::kWhole)
    return false;
  const QFileInfo file(QString::fromStdString(opened.file().string()));
  if (!file.isWritable()) return false;
  return std::ranges::none_of(opened.entries(), [](const review::Entry& entry) {
    return std::holds_alternative<review::SelfRating>(entry.content) ||
           std::holds_alternative<review::ScoreShown>(entry.content) ||
           std::holds_alternative<review::Decision>(entry.content) ||
           std::holds_alternative<review::SignOff>(entry.content);
  });
}

SelfRatingForm::SelfRatingForm(const after::SheetLook& look, Opened& opened, QWidget* parent)
    : MarkForm(look, opened, tr("Before the marks are shown"), parent),
      key_folder_(session::userDataFolder()) {
  column()->addWidget(makeWords(tr("Before the marks are shown"), WordsKind::kHeading, this));
  column()->addWidget(
      makeWords(tr("This was an assessment. The trainee says first how it went; until then the "
                   "marks are hidden. Go through the run together as long as you like."),
                WordsKind::kSecond, this));
  rating_ = new RatingRow(look, selfScale(), {}, this);
  column()->addWidget(rating_);
  column()->addWidget(makeWords(tr("Where were you not sure?"), WordsKind::kSecond, this));
  unsure_ = makeText(tr("Where the trainee was not sure"), QStringLiteral("self_text"), 4, this);
  column()->addWidget(unsure_);
  name_asks_ = makeWords(tr("Name or number of the trainee"), WordsKind::kSecond, this);
  name_ = makeLine(name_asks_->text(), QStringLiteral("self_name"), this);
  column()->addWidget(name_asks_);
  column()->addWidget(name_);
  addFoot(tr("Record it and show the marks"), QStringLiteral("self_do"), false);
  column()->addSpacing(16);
  column()->addWidget(makeWords(
      tr("Or without it: an assessor can leave it out, which is recorded; or mark the run as "
         "second assessor, for whom the marks stay hidden."),
      WordsKind::kSecond, this));
  auto* row = new FlowRow;
  auto* leave = new MarkButton(look, tr("Leave it out"), QStringLiteral("self_leave_out"), this);
  auto* second =
      new MarkButton(look, tr("Mark as second assessor"), QStringLiteral("self_second"), this);
  row->addWidget(leave);
  row->addWidget(second);
  connect(leave, &QAbstractButton::clicked, this, &SelfRatingForm::leftOut);
  connect(second, &QAbstractButton::clicked, this, &SelfRatingForm::secondAsked);
  column()->addLayout(row);
  column()->addStretch(1);
}

void SelfRatingForm::begin() {
  const std::string trainee = findTrainee(opened());
  name_asks_->setVisible(trainee.empty());
  name_->setVisible(trainee.empty());
  restyle();
}

QString SelfRatingForm::tryIt() {
  std::string name = findTrainee(opened());
  if (name.empty()) name = name_->text().simplified().toStdString();
  if (rating_->value() == 0) return tr("Say first how it went, from 1 to 5.");
  if (name.empty()) return tr("A name or a number is needed: what is added says who added it.");
  try {
    const session::SigningKey key = opened().signingKey()
                                        ? *opened().signingKey()
                                        : session::SigningKey::loadOrMake(key_folder_);
    return refusalText(
        opened(),
        opened().addBy(
            {"trainee", name}, key,
            {review::SelfRating{rating_->value(), unsure_->toPlainText().trimmed().toStdString()},
             review::ScoreShown{}}));
  } catch (const session::SessionError& error) {
    return tr("The key could not be made or read: %1").arg(toQt(error.what()));
  }
}

}  // namespace cabwright::review_room
