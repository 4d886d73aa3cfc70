// SPDX-License-Identifier: GPL-3.0-or-later
// What the page of the mark sheet is made of.
#include <QShortcut>

#include "review_room/marks_facts.h"
#include "review_room/marks_flow.h"
#include "review_room/marks_page.h"

namespace cabwright::review_room {

MarksPage::MarksPage(Opened& opened, QWidget* parent)
    : QWidget(parent), opened_(opened), stack_(new QStackedWidget(this)) {
  setAccessibleName(tr("Mark sheet"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(7);
  makeHead(column);
  makePages(column);
  makeFoot(column);
  connectPages();
  addKey(Qt::Key_O, &MarksPage::beginOverride);
  addKey(Qt::Key_C, &MarksPage::beginRemark);
  addKey(Qt::Key_S, &MarksPage::beginSign);
  connect(&opened_, &Opened::entriesChanged, this, [this] {
    digest_.clear();
    refresh();
  });
  connect(&opened_, &Opened::signerChanged, this, &MarksPage::refresh);
  restyle();
}

void MarksPage::makeHead(QBoxLayout* column) {
  title_ = makeWords(tr("Mark sheet"), WordsKind::kTitle, this);
  state_ = makeWords({}, WordsKind::kSecond, this);
  auto* row = new QHBoxLayout;
  row->addWidget(title_);
  row->addWidget(state_, 1);
  title_->setWordWrap(false);
  state_->setAlignment(Qt::AlignRight | Qt::AlignBottom);
  column->addLayout(row);
  tab_row_ = new QWidget(this);
  tabs_ = new QButtonGroup(this);
  auto* tabs = new FlowRow(4);
  tab_row_->setLayout(tabs);
  const QStringList words{tr("Lines"), tr("Ratings"), tr("Compare"), tr("Decision"), tr("Record")};
  for (int k = 0; k < kTabs; ++k) {
    auto* button = new MarkButton(look_, words[k], QStringLiteral("tab%1").arg(k), tab_row_);
    button->setCheckable(true);
    button->setSlim(true);
    tabs_->addButton(button, k);
    tabs->addWidget(button);
  }
  tabs_->button(kSecond)->setAccessibleName(tr("Compare two assessors"));
  tabs_->button(kLines)->setChecked(true);
  connect(tabs_, &QButtonGroup::idClicked, this, [this](int id) { showTab(static_cast<Tab>(id)); });
  column->addWidget(tab_row_);
}

void MarksPage::makePages(QBoxLayout* column) {
  lines_ = new LinesView(look_, opened_, stack_);
  ratings_ = new RatingForm(look_, opened_, stack_);
  raters_ = new RaterPage(look_, opened_, stack_);
  record_ = new QTextBrowser(stack_);
  record_->setAccessibleName(tr("Head of the mark sheet"));
  record_->setObjectName(QStringLiteral("record"));
  record_->setOpenLinks(false);
  sign_on_ = new SignOnForm(look_, opened_, stack_);
  self_ = new SelfRatingForm(look_, opened_, stack_);
  blind_ = new BlindForm(look_, opened_, stack_);
  stack_->addWidget(lines_);
  stack_->addWidget(makeScroll(ratings_, stack_));
  stack_->addWidget(raters_);
  stack_->addWidget(makeScroll(makeDecisionPage(), stack_));
  stack_->addWidget(record_);
  stack_->addWidget(makeScroll(sign_on_, stack_));
  stack_->addWidget(makeScroll(self_, stack_));
  stack_->addWidget(blind_);
  column->addWidget(stack_, 1);
}

QWidget* MarksPage::makeDecisionPage() {
  auto* page = new QWidget(stack_);
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(18);
  decision_ = new DecisionForm(look_, opened_, page);
  sign_ = new SignForm(look_, opened_, page);
  column->addWidget(decision_);
  column->addWidget(sign_);
  column->addStretch(1);
  return page;
}

void MarksPage::connectPages() {
  connect(lines_, &LinesView::jumpAsked, this, &MarksPage::jumpAsked);
  connect(raters_, &RaterPage::jumpAsked, this, &MarksPage::jumpAsked);
  connect(record_, &QTextBrowser::anchorClicked, this, [this](const QUrl& link) {
    if (const auto tick = tickOfLink(link.toString())) Q_EMIT jumpAsked(*tick);
  });
  connect(sign_on_, &MarkForm::done, this, [this] {
    second_ = sign_on_->isSecond();
    const auto act = std::exchange(after_sign_on_, {});
    refreshMode();
    showPage();
    if (act && mode_ != Mode::kBlind) act();
  });
  connect(sign_on_, &MarkForm::cancelled, this, [this] {
    after_sign_on_ = {};
    showPage();
  });
  const auto second = [this] { askToSignOn({}, true, {}); };
  connect(raters_, &RaterPage::secondAsked, this, second);
  connect(self_, &SelfRatingForm::secondAsked, this, second);
  connect(self_, &SelfRatingForm::leftOut, this, &MarksPage::leaveSelfRatingOut);
  connect(blind_, &MarkForm::done, this, [this] {
    if (mode_ == Mode::kOpen) showTab(kSecond);
  });
  connect(blind_, &MarkForm::cancelled, this, [this] {
    second_ = false;
    refreshMode();
  });
}

void MarksPage::makeFoot(QBoxLayout* column) {
  result_ = makeWords({}, WordsKind::kPlain, this);
  result_->setTextFormat(Qt::RichText);
  result_->setObjectName(QStringLiteral("result"));
  column->addWidget(result_);
  act_row_ = new QWidget(this);
  auto* row = new FlowRow;
  act_row_->setLayout(row);
  const auto add = [&](const QString& words, const QString& name, const QString& key,
                       void (MarksPage::*slot)()) {
    auto* button = new MarkButton(look_, words, name, act_row_);
    button->setKey(key);
    connect(button, &QAbstractButton::clicked, this, slot);
    row->addWidget(button);
  };
  add(tr("Override"), QStringLiteral("override"), QStringLiteral("O"), &MarksPage::beginOverride);
  add(tr("Comment"), QStringLiteral("remark"), QStringLiteral("C"), &MarksPage::beginRemark);
  add(tr("Sign"), QStringLiteral("sign"), QStringLiteral("S"), &MarksPage::beginSign);
  column->addWidget(act_row_);
  auto* who = new QHBoxLayout;
  signer_ = makeWords({}, WordsKind::kSecond, this);
  signer_->setObjectName(QStringLiteral("signer"));
  sign_on_button_ = new MarkButton(look_, {}, QStringLiteral("sign_on"), this);
  connect(sign_on_button_, &QAbstractButton::clicked, this, &MarksPage::beginSignOn);
  who->addWidget(signer_, 1);
  who->addWidget(sign_on_button_);
  column->addLayout(who);
}

void MarksPage::addKey(int key, void (MarksPage::*slot)()) {
  auto* shortcut = new QShortcut(QKeySequence(key), this);
  shortcut->setContext(Qt::WidgetWithChildrenShortcut);
  connect(shortcut, &QShortcut::activated, this, slot);
}

}  // namespace cabwright::review_room
