// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/foot_line.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QStyle>

#include "cab/names.h"
#include "cab/you_parts.h"
#include "desk/desk_look.h"

namespace cabwright::desk {

FootLine::FootLine(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      said_(new QLabel(this)),
      here_(makeButton(tr("Go back there"), QStringLiteral("go_here"), this)),
      leave_off_(makeButton(tr("Leave it off"), QStringLiteral("leave_off"), this)) {
  said_->setObjectName(QStringLiteral("second"));
  said_->setTextFormat(Qt::PlainText);
  leave_off_->setAccessibleDescription(tr("The run stays as it was. Key: Escape."));
  leave_off_->setToolTip(tr("Escape"));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(6);
  row->addWidget(said_, 1);
  row->addWidget(here_);
  row->addWidget(leave_off_);
  here_->hide();
  leave_off_->hide();
  connect(here_, &QPushButton::clicked, this, [this] {
    here_->hide();
    desk_.goBackTo(moment_);
  });
  connect(leave_off_, &QPushButton::clicked, this, [this] { desk_.leaveOffGoingBack(); });
  connect(&desk_, &Desk::runChanged, here_, &QWidget::hide);
  connect(&desk_, &Desk::goingBackChanged, leave_off_, &QWidget::setVisible);
}

void FootLine::say(const QString& words, bool bad) {
  said_->setText(bad ? tr("Refused: %1").arg(words) : words);
  said_->setObjectName(bad ? QStringLiteral("bad") : QStringLiteral("second"));
  said_->style()->unpolish(said_);
  said_->style()->polish(said_);
  said_->setToolTip(words);
  QAccessibleEvent alert(said_, QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
}

void FootLine::forgetFault() {
  if (said_->objectName() != QLatin1String("bad")) return;
  said_->clear();
  said_->setToolTip({});
}

void FootLine::offerMoment(std::int64_t tick) {
  const QString moment = cab::clockText(tick), fault = desk_.findGoBackFault();
  moment_ = tick;
  here_->setText(tr("Go back to %1").arg(moment));
  here_->setVisible(fault.isEmpty());
  if (fault.isEmpty()) {
    say(tr("%1 is chosen.").arg(moment), false);
  } else {
    say(tr("%1 is chosen; %2").arg(moment, fault), false);
  }
}

}  // namespace cabwright::desk
