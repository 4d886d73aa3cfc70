// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fault_page.h"

#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>

#include "desk/desk_look.h"

namespace cabwright::desk {

FaultPage::FaultPage(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      unit_(new UnitView(desk, this)),
      picker_(new FaultPicker(this)),
      form_(new FaultForm(desk, this)),
      present_(new PresentFaults(desk, this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 4, 0, 0);
  column->setSpacing(8);
  column->addWidget(unit_);
  auto* row = new QHBoxLayout;
  row->setSpacing(22);
  row->addWidget(picker_, 30);
  row->addWidget(form_, 40);
  row->addWidget(present_, 30);
  column->addLayout(row, 1);
  setTabOrder(picker_->search(), picker_->list());
  connect(unit_, &UnitView::spotChosen, this, [this](std::size_t spot) {
    picker_->showSpot(spot);
    picker_->list()->setFocus(Qt::OtherFocusReason);
  });
  connect(picker_, &FaultPicker::faultChosen, this, [this](const fault::FaultSpec* spec) {
    form_->showFault(spec);
    unit_->setChosen(spec != nullptr ? spotOf(*spec) : spotTable().size());
  });
  connect(picker_, &FaultPicker::faultTaken, form_, &FaultForm::takeFocus);
}

// The drawing takes the width it can have, and leaves the lists room to be read.
void FaultPage::arrange() {
  const int lists = 15 * desk_.style().textPx();
  const int most = std::max(120, height() - lists);
  unit_->setFixedHeight(std::min(unit_->heightForWidth(width()), most));
}

void FaultPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

}  // namespace cabwright::desk
