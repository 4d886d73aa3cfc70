// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/sign_decision.h"

#include <QCoreApplication>
#include <array>

#include "after/words.h"
#include "review/review.h"
#include "review_room/marks_facts.h"
#include "review_room/marks_flow.h"
#include "review_room/marks_rows.h"
#include "session/personal_key.h"
#include "session/session_error.h"

namespace cabwright::review_room {

using review::Result;

namespace {

constexpr std::array kResults{Result::kPassed, Result::kNotYet, Result::kFailed};

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Signature)
};

bool isAssessorsSignature(const review::Entry& entry) {
  return std::holds_alternative<review::SignOff>(entry.content) && entry.by.role == "assessor";
}

}  // namespace

QString signatureState(const std::vector<review::Entry>& entries) {
  const review::Entry* signature = nullptr;
  int after_it = 0;
  for (const review::Entry& entry : entries) {
    ++after_it;
    if (!isAssessorsSignature(entry)) continue;
    signature = &entry;
    after_it = 0;
  }
  if (signature == nullptr)
    return review::findDecision(entries)
               ? Words::tr(
                     "Decided, not signed yet. The signature covers all that was added "
                     "before it.")
               : Words::tr(
                     "An assessor decides first and then signs. Trainee and instructor may "
                     "sign at any time.");
  QStringList words{Words::tr("Signed by %1 on %2, key %3.")
                        .arg(personName(signature->by), utcText(signature->utc),
                             toQt(session::fingerprintOf(signature->key)))};
  if (after_it > 0)
    words << Words::tr(
                 "%1 entries were added since; they are not covered. An assessor signs "
                 "again to cover them.")
                 .arg(after_it);
  words << Words::tr(
      "Nothing can be taken away or altered. Anybody may still comment; an assessor "
      "may still override, rate and decide anew, and signs again then. Trainee and "
      "instructor may sign that they have seen it.");
  return words.join(QLatin1Char(' '));
}

DecisionForm::DecisionForm(const after::SheetLook& look, Opened& opened, QWidget* parent)
    : MarkForm(look, opened, tr("Decision"), parent),
      totals_(makeWords({}, WordsKind::kPlain, this)) {
  totals_->setTextFormat(Qt::RichText);
  column()->addWidget(totals_);
  column()->addSpacing(8);
  column()->addWidget(makeWords(tr("Decision"), WordsKind::kHeading, this));
  QStringList words;
  for (const Result result : kResults) words << after::sheetWords(review::wordOf(result));
  result_ = addChoice(tr("The assessor's decision"), words, QStringLiteral("decide_as"));
  needs_ = makeWords({}, WordsKind::kSecond, this);
  column()->addWidget(needs_);
  reason_ = makeText(tr("Reason of the decision"), QStringLiteral("decide_reason"), 2, this);
  column()->addWidget(reason_);
  column()->addWidget(
      makeWords(tr("What was good, and the next step agreed on"), WordsKind::kSecond, this));
  next_ = makeText(tr("Next step"), QStringLiteral("decide_next"), 2, this);
  column()->addWidget(next_);
  addFoot(tr("Record the decision"), QStringLiteral("decide_do"), false);
  connect(result_, &QButtonGroup::idToggled, this, [this] { showNeeds(); });
}

void DecisionForm::refresh() {
  totals_->setText(toHtml(makeTotalFacts(opened().sheet()), look()));
  showNeeds();
}

void DecisionForm::showNeeds() {
  const auto& closing = opened().store().closing();
  const int chosen = result_->checkedId();
  const bool passes = chosen == 0;
  if (!closing || chosen < 0 || passes == closing->passed) {
    needs_->setText(tr("Reason, if one is to stand on the sheet"));
    return;
  }
  needs_->setText(
      opened().sheet().decision.passed != closing->passed
          ? tr("Reason, needed: the sheet as it was sealed says otherwise, and comes to this only "
               "with overrides")
          : tr("Reason, needed: it is not what the marks say"));
}

QString DecisionForm::tryIt() {
  const int chosen = result_->checkedId();
  if (chosen < 0) return tr("Choose passed, not yet or failed first.");
  review::Decision decision;
  decision.result = kResults[static_cast<std::size_t>(chosen)];
  decision.reason = reason_->toPlainText().trimmed().toStdString();
  decision.next = next_->toPlainText().trimmed().toStdString();
  return refusalText(opened(), opened().add({decision}));
}

SignForm::SignForm(const after::SheetLook& look, Opened& opened, QWidget* parent)
    : MarkForm(look, opened, tr("Signature"), parent),
      key_folder_(session::userDataFolder()),
      state_(makeWords({}, WordsKind::kPlain, this)),
      who_(makeWords({}, WordsKind::kSecond, this)) {
  column()->addWidget(makeWords(tr("Signature"), WordsKind::kHeading, this));
  column()->addWidget(state_);
  column()->addWidget(who_);
  statement_ = makeText(tr("Statement that is signed"), QStringLiteral("sign_statement"), 2, this);
  statement_->setPlainText(tr("I have looked at this session and stand behind what is said here."));
  column()->addWidget(statement_);
  addFoot(tr("Sign"), QStringLiteral("sign_do"), false);
  doButton()->setKey(QStringLiteral("S"));
  seen_ = new MarkButton(look, tr("The trainee has seen it"), QStringLiteral("sign_seen"), this);
  connect(seen_, &QAbstractButton::clicked, this, &SignForm::signAsTrainee);
  auto* row = new FlowRow;
  row->addWidget(seen_);
  column()->addLayout(row);
}

void SignForm::refresh() {
  state_->setText(signatureState(opened().entries()));
  const auto& by = opened().signer();
  const auto& key = opened().signingKey();
  who_->setText(by && key ? tr("Signs as %1, %2, with the key %3.")
                                .arg(toQt(by->name), after::sheetWords(by->role),
                                     toQt(session::fingerprintOf(key->publicKey())))
                          : tr("Nobody has signed on."));
  seen_->setVisible(!session::traineePerson(opened().store().header()).name.empty());
}

QString SignForm::tryIt() {
  const std::string statement = statement_->toPlainText().trimmed().toStdString();
  if (statement.empty()) return tr("Say what is signed.");
  return refusalText(opened(), opened().add({review::SignOff{statement}}));
}

void SignForm::signAsTrainee() {
  try {
    const session::SigningKey key = opened().signingKey()
                                        ? *opened().signingKey()
                                        : session::SigningKey::loadOrMake(key_folder_);
    const auto fault = opened().addBy(
        session::traineePerson(opened().store().header()), key,
        {review::SignOff{
            tr("I have seen this sheet, and it was gone through with me.").toStdString()}});
    say(refusalText(opened(), fault), true);
  } catch (const session::SessionError& error) {
    say(tr("The key could not be made or read: %1").arg(toQt(error.what())), true);
  }
}

}  // namespace cabwright::review_room
