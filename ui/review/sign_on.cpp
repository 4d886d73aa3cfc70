// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/sign_on.h"

#include <algorithm>

#include "session/personal_key.h"
#include "session/session_error.h"

namespace cabwright::review_room {

bool hasMarkedBlind(const std::vector<review::Entry>& entries, const std::string& name) {
  return std::ranges::any_of(entries, [&name](const review::Entry& entry) {
    return entry.by.name == name && std::holds_alternative<review::BlindMark>(entry.content);
  });
}

bool hasSeenMarks(const std::vector<review::Entry>& entries, const std::string& name) {
  return std::ranges::any_of(entries, [&name](const review::Entry& entry) {
    return entry.by.role == "assessor" && entry.by.name == name;
  });
}

SignOnForm::SignOnForm(const after::SheetLook& look, Opened& opened, QWidget* parent)
    : MarkForm(look, opened, tr("Sign on"), parent),
      key_folder_(session::userDataFolder()),
      why_(makeWords({}, WordsKind::kSecond, this)) {
  column()->addWidget(makeWords(tr("Sign on"), WordsKind::kHeading, this));
  column()->addWidget(why_);
  column()->addWidget(makeWords(tr("Name, as it stands on the sheet"), WordsKind::kSecond, this));
  name_ = makeLine(tr("Name of the assessor"), QStringLiteral("sign_on_name"), this);
  name_->setMaxLength(80);
  column()->addWidget(name_);
  as_ = addChoice(tr("As"), {tr("assessor"), tr("second assessor")}, QStringLiteral("sign_on_as"));
  column()->addWidget(makeWords(
      tr("A second assessor marks the lines first, without seeing how they were marked before."),
      WordsKind::kSecond, this));
  column()->addWidget(makeWords(
      tr("What you add is signed with a key of your own. It is made the first time and lies in "
         "your data folder, for this account alone."),
      WordsKind::kSecond, this));
  addFoot(tr("Sign on"), QStringLiteral("sign_on_do"), true);
  column()->addStretch(1);
  connect(name_, &QLineEdit::returnPressed, this, &MarkForm::act);
}

void SignOnForm::begin(const QString& why, bool second) {
  why_->setText(why);
  why_->setVisible(!why.isEmpty());
  if (opened().signer()) name_->setText(toQt(opened().signer()->name));
  as_->button(second ? 1 : 0)->setChecked(true);
  say({}, true);
  name_->setFocus(Qt::ShortcutFocusReason);
  name_->selectAll();
}

QString SignOnForm::tryIt() {
  const std::string name = name_->text().simplified().toStdString();
  const bool second = as_->checkedId() == 1;
  if (name.empty()) return tr("A name is needed: what is added says who added it.");
  const session::SessionHeader& header = opened().store().header();
  if (name == session::traineeName(header) || name == header.trainee_number)
    return tr("%1 is the trainee of this session, and cannot assess it.").arg(toQt(name));
  const bool handed_in = hasMarkedBlind(opened().entries(), name);
  const bool seen = seen_.contains(name) || hasSeenMarks(opened().entries(), name);
  if (second && !handed_in && seen)
    return tr("%1 has seen these marks already, and cannot mark them blind.").arg(toQt(name));
  try {
    const session::SigningKey key = session::loadOrMakePersonalKey(key_folder_, name);
    second_ = second;
    opened().setSigner({"assessor", name}, key);
  } catch (const session::SessionError& error) {
    return tr("The key could not be made or read: %1").arg(toQt(error.what()));
  }
  return {};
}

}  // namespace cabwright::review_room
