// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/rater_page.h"

#include <QVBoxLayout>

#include "review_room/marks_flow.h"

namespace cabwright::review_room {

RaterPage::RaterPage(const after::SheetLook& look, Opened& opened, QWidget* parent)
    : QWidget(parent),
      look_(look),
      opened_(opened),
      none_(makeWords(tr("Nobody has marked this session a second time. A second assessor marks "
                         "the lines without seeing how they were marked before; then this page "
                         "says how far the two agree. It is also the way for a trainee who is not "
                         "content with the marks."),
                      WordsKind::kPlain, this)),
      names_(new QWidget(this)),
      name_(new QButtonGroup(this)),
      text_(new QTextBrowser(this)),
      ask_(new MarkButton(look, tr("Mark as second assessor"), QStringLiteral("second"), this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  names_->setLayout(new FlowRow);
  text_->setAccessibleName(tr("How far two assessors agree"));
  text_->setObjectName(QStringLiteral("agreement"));
  text_->setOpenLinks(false);
  column->addWidget(none_);
  column->addWidget(names_);
  column->addWidget(text_, 1);
  auto* row = new FlowRow;
  row->addWidget(ask_);
  column->addLayout(row);
  column->addStretch(0);
  connect(name_, &QButtonGroup::idClicked, this, &RaterPage::choose);
  connect(ask_, &QAbstractButton::clicked, this, &RaterPage::secondAsked);
  connect(text_, &QTextBrowser::anchorClicked, this, [this](const QUrl& link) {
    if (const auto tick = tickOfLink(link.toString())) Q_EMIT jumpAsked(*tick);
  });
}

void RaterPage::refresh() {
  const std::vector<Rater> raters = findRaters(opened_.entries());
  if (raters != raters_) {
    raters_ = raters;
    qDeleteAll(name_->buttons());
    for (std::size_t k = 0; k < raters_.size(); ++k) {
      auto* button = new MarkButton(look_, raters_[k].name,
                                    QStringLiteral("rater%1").arg(static_cast<int>(k)), names_);
      button->setCheckable(true);
      name_->addButton(button, static_cast<int>(k));
      names_->layout()->addWidget(button);
    }
    chosen_ = static_cast<int>(raters_.size()) - 1;
  }
  const bool any = !raters_.empty();
  none_->setVisible(!any);
  names_->setVisible(raters_.size() > 1);
  text_->setVisible(any);
  if (any) choose(chosen_);
}

void RaterPage::choose(int which) {
  chosen_ = which;
  const Rater& rater = raters_[static_cast<std::size_t>(which)];
  name_->button(which)->setChecked(true);
  view_ = makeRaterView(opened_.sheet(), opened_.entries(), rater.person);
  text_->setHtml(toHtml(makeRaterFacts(view_, rater.name), look_));
}

}  // namespace cabwright::review_room
