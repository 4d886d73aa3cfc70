// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/marks_page.h"

#include <QPainter>

#include "after/words.h"
#include "drawing/sheet_frame.h"
#include "review/review.h"
#include "review_room/marks_facts.h"
#include "session/personal_key.h"

namespace cabwright::review_room {

using drawing::Tone;

namespace {

// Pages of the stack behind those of the tabs.
enum HiddenPage { kSignOnPage = MarksPage::kTabs, kSelfPage, kBlindPage };

QString decisionWord(review::Result result) {
  switch (result) {
    case review::Result::kPassed:
      return MarksPage::tr("Passed");
    case review::Result::kNotYet:
      return MarksPage::tr("Not yet");
    case review::Result::kFailed:
      break;
  }
  return MarksPage::tr("Failed");
}

}  // namespace

void MarksPage::setTheme(drawing::Theme theme) {
  look_.theme = theme;
  restyle();
}

void MarksPage::setScale(double scale) {
  scale_ = scale;
  restyle();
}

void MarksPage::setKeyFolder(const std::filesystem::path& folder) {
  sign_on_->setKeyFolder(folder);
  self_->setKeyFolder(folder);
  sign_->setKeyFolder(folder);
}

void MarksPage::showTab(Tab tab) {
  tab_ = tab;
  tabs_->button(tab)->setChecked(true);
  showPage();
}

void MarksPage::showPage() {
  stack_->setCurrentIndex(mode_ == Mode::kSelfRating ? kSelfPage
                          : mode_ == Mode::kBlind    ? kBlindPage
                                                     : static_cast<int>(tab_));
}

void MarksPage::showMoment(qint64 tick) { lines_->showMoment(tick); }

void MarksPage::askToSignOn(const QString& why, bool second, std::function<void()> act) {
  after_sign_on_ = std::move(act);
  stack_->setCurrentIndex(kSignOnPage);
  sign_on_->begin(why, second);
}

void MarksPage::whenSignedOn(const QString& why, std::function<void()> act) {
  // Said before anything is written, not after.
  if (opened_.verification().standing == session::Standing::kNotSealed) {
    showSaid(tr("Not sealed: nothing can be added to it."));
    return;
  }
  if (opened_.signer())
    act();
  else
    askToSignOn(why, false, std::move(act));
}

void MarksPage::beginOverride() {
  if (hidesMarks()) return;
  showTab(kLines);
  whenSignedOn(tr("To override a line, sign on first."), [this] { lines_->beginOverride(); });
}

void MarksPage::beginRemark() {
  if (hidesMarks()) return;
  showTab(kLines);
  whenSignedOn(tr("To comment, sign on first."), [this] { lines_->beginRemark(); });
}

void MarksPage::beginSign() {
  if (hidesMarks()) return;
  showTab(kDecision);
  whenSignedOn(tr("To decide and sign, sign on first."), [this] { decision_->takeFocus(); });
}

void MarksPage::beginSignOn() { askToSignOn({}, false, {}); }

void MarksPage::leaveSelfRatingOut() {
  whenSignedOn(tr("To leave the self-rating out, sign on first: it is recorded who did."), [this] {
    const QString refused = refusalText(opened_, opened_.add({review::ScoreShown{}}));
    if (!refused.isEmpty()) showSaid(refused);
  });
}

void MarksPage::showSaid(const QString& words) { signer_->setText(words); }

void MarksPage::refreshMode() {
  const auto& by = opened_.signer();
  Mode mode = isSelfRatingDue(opened_) ? Mode::kSelfRating : Mode::kOpen;
  if (second_ && by && !hasMarkedBlind(opened_.entries(), by->name)) mode = Mode::kBlind;
  if (mode == Mode::kOpen && by) sign_on_->noteSeen(by->name);
  const bool hid = hidesMarks(), other = mode != mode_;
  mode_ = mode;
  for (QWidget* part : {tab_row_, act_row_, static_cast<QWidget*>(result_)})
    part->setVisible(!hidesMarks());
  if (!other) return;
  if (mode == Mode::kSelfRating) self_->begin();
  showPage();
  if (mode == Mode::kBlind) blind_->begin();
  if (hid != hidesMarks()) Q_EMIT hidesMarksChanged(hidesMarks());
}

void MarksPage::refresh() {
  refreshMode();
  showSigner();
  if (hidesMarks()) return;
  lines_->refresh();
  ratings_->refresh();
  raters_->refresh();
  decision_->refresh();
  sign_->refresh();
  if (digest_.isEmpty()) digest_ = fileDigest(opened_.file());
  std::vector<FactGroup> facts = makeHeadFacts(opened_, digest_);
  facts.push_back(makeJudgementFacts(opened_.sheet()));
  facts.push_back(makeEntryFacts(opened_.entries()));
  record_->setHtml(toHtml(facts, look_));
  showResult();
}

void MarksPage::showResult() {
  const marking::MarkSheet& sheet = opened_.sheet();
  const auto decided = review::findDecision(opened_.entries());
  bool good = sheet.decision.passed;
  QString word = good ? tr("Passed") : tr("Not passed");
  QString why = countMarks(sheet).overridden > 0 ? tr("by the marks with overrides; not decided")
                                                 : tr("by the marks; not decided");
  if (decided) {
    const auto& decision = std::get<review::Decision>(decided->content);
    good = decision.result == review::Result::kPassed;
    word = decisionWord(decision.result);
    why = tr("decided by %1").arg(personName(decided->by));
  }
  result_->setText(QStringLiteral("<span style='color:%1; font-size:%2px'><b>%3</b></span> "
                                  "&nbsp;%4")
                       .arg(drawing::colorOf(look_.theme, good ? Tone::kGood : Tone::kBad).name())
                       .arg(toPixels(drawing::kResult, look_))
                       .arg(word.toHtmlEscaped(), why.toHtmlEscaped()));
  result_->setAccessibleName(word + QLatin1String(", ") + why);
}

void MarksPage::showSigner() {
  QStringList state{after::sheetWords(opened_.sheet().head.mode)};
  const session::Standing standing = opened_.verification().standing;
  state << (standing == session::Standing::kWhole       ? tr("sealed")
            : standing == session::Standing::kNotSealed ? tr("not sealed")
                                                        : tr("altered"));
  for (const review::Entry& entry : opened_.entries())
    if (std::holds_alternative<review::SignOff>(entry.content) && !state.contains(tr("signed")))
      state << tr("signed");
  state_->setText(state.join(QLatin1String(", ")));
  const auto& by = opened_.signer();
  const auto& key = opened_.signingKey();
  sign_on_button_->setText(by ? tr("Another") : tr("Sign on"));
  sign_on_button_->setAccessibleName(by ? tr("Sign on as another") : tr("Sign on"));
  sign_on_button_->updateGeometry();
  if (!by || !key) {
    signer_->setText(tr("Nobody has signed on."));
    return;
  }
  const QString role = mode_ == Mode::kBlind ? tr("second assessor") : after::sheetWords(by->role);
  signer_->setText(tr("%1, %2").arg(toQt(by->name), role));
  signer_->setToolTip(
      tr("Signs with the key %1").arg(toQt(session::fingerprintOf(key->publicKey()))));
}

void MarksPage::restyle() {
  look_.scale = scale_       ? *scale_
                : isWindow() ? 1.0
                             : drawing::calcSheetFrame(window()->size()).scale;
  setStyleSheet(marksStyleSheet(look_));
  for (MarkButton* button : findChildren<MarkButton*>()) {
    button->updateGeometry();
    button->update();
  }
  lines_->restyle();
  for (MarkForm* form : findChildren<MarkForm*>()) form->restyle();
  refresh();
  update();
}

void MarksPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (!scale_ && !isWindow() && look_.scale != drawing::calcSheetFrame(window()->size()).scale)
    restyle();
}

void MarksPage::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), drawing::colorOf(look_.theme, Tone::kPaper));
}

}  // namespace cabwright::review_room
