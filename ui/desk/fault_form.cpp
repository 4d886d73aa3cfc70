// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fault_form.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QVBoxLayout>
#include <cmath>

#include "desk/desk_look.h"
#include "desk/spots.h"
#include "scenario/arm_words.h"

namespace cabwright::desk {
namespace {

// Fine enough for the smallest step anybody means.
int decimalsOf(const fault::SizeRange& range) {
  if (range.whole) return 0;
  return range.highest <= 1 ? 2 : range.highest <= 20 ? 1 : 0;
}

double stepOf(const fault::SizeRange& range) {
  if (range.whole) return 1;
  const double span = range.highest - range.lowest;
  return span <= 1 ? 0.01 : span <= 20 ? 0.1 : span <= 100 ? 1 : span <= 1000 ? 10 : 100;
}

}  // namespace

FaultForm::FaultForm(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      title_(makeHeading({}, this)),
      symptom_(new QLabel(this)),
      decision_(new QLabel(this)),
      size_word_(makeSecond(tr("Size"), this)),
      range_(makeSecond({}, this)),
      moment_word_(makeSecond(tr("Comes"), this)),
      ramp_word_(makeSecond(tr("Grows in"), this)),
      size_(new QDoubleSpinBox(this)),
      ramp_(new QDoubleSpinBox(this)),
      moment_(new FaultMoment(this)),
      put_in_(makeButton(tr("Put in"), QStringLiteral("put_in"), this)) {
  for (QLabel* label : {title_, symptom_, decision_}) label->setWordWrap(true);
  size_->setObjectName(QStringLiteral("fault_size"));
  size_->setAccessibleName(tr("Size of the fault"));
  ramp_->setObjectName(QStringLiteral("fault_ramp"));
  ramp_->setAccessibleName(tr("Seconds in which it grows"));
  ramp_->setRange(0, 7200);
  ramp_->setDecimals(0);
  ramp_->setSingleStep(10);
  ramp_->setSuffix(tr(" s"));
  ramp_->setSpecialValueText(tr("at once"));
  put_in_->setDefault(true);
  auto* grid = new QGridLayout;
  grid->setVerticalSpacing(5);
  auto* sizes = new QHBoxLayout;
  sizes->addWidget(size_);
  sizes->addWidget(range_, 1);
  grid->addWidget(size_word_, 0, 0);
  grid->addLayout(sizes, 0, 1);
  grid->addWidget(moment_word_, 1, 0, Qt::AlignTop);
  grid->addWidget(moment_, 1, 1);
  grid->addWidget(ramp_word_, 2, 0);
  auto* last = new QHBoxLayout;
  last->addWidget(ramp_);
  last->addStretch(1);
  last->addWidget(put_in_);
  grid->addLayout(last, 2, 1);
  grid->setColumnStretch(1, 1);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  column->addWidget(title_);
  column->addWidget(symptom_);
  column->addWidget(decision_);
  column->addLayout(grid);
  column->addStretch(1);
  setTabOrder(moment_->condition(), ramp_);
  setTabOrder(ramp_, put_in_);
  connect(put_in_, &QPushButton::clicked, this, &FaultForm::put);
  // Enter in any field puts it in: a hand that has just typed a size does not look for a button.
  connect(moment_, &FaultMoment::entered, this, &FaultForm::put);
  for (QDoubleSpinBox* field : {size_, ramp_})
    connect(field->findChild<QLineEdit*>(), &QLineEdit::returnPressed, this, &FaultForm::put);
  connect(moment_, &FaultMoment::changed, this, &FaultForm::showUsable);
  connect(&desk_, &Desk::changed, this, &FaultForm::showUsable);
  showFault(nullptr);
}

void FaultForm::showFault(const fault::FaultSpec* spec) {
  spec_ = spec;
  const bool sized = spec != nullptr && spec->size.exists();
  for (QWidget* part : std::initializer_list<QWidget*>{size_word_, size_, range_})
    part->setVisible(sized);
  for (QWidget* part : std::initializer_list<QWidget*>{moment_word_, moment_, put_in_})
    part->setVisible(spec != nullptr);
  for (QWidget* part : std::initializer_list<QWidget*>{ramp_word_, ramp_})
    part->setVisible(spec != nullptr && spec->gradual);
  ramp_->setValue(0);
  moment_->reset();
  if (spec == nullptr) {
    title_->setText(tr("No fault is chosen"));
    symptom_->setText(
        tr("Press a spot of the unit, or search. What a fault does and what is right "
           "to do stands here before it is put in."));
    decision_->clear();
    return;
  }
  title_->setText(whereText(*spec) + QLatin1String(": ") + faultWords(spec->text));
  symptom_->setText(tr("Shows as: %1").arg(faultWords(spec->symptom)));
  decision_->setText(tr("Right to do: %1").arg(faultWords(spec->decision)));
  if (sized) {
    const fault::SizeRange& range = spec->size;
    size_->setDecimals(decimalsOf(range));
    size_->setRange(range.lowest, range.highest);
    size_->setSingleStep(stepOf(range));
    size_->setValue(range.usual);
    size_->setSuffix(QLatin1Char(' ') + faultWords(range.unit));
    QString words =
        tr("%1 to %2, usually %3")
            .arg(QString::number(range.lowest, 'g', 5), QString::number(range.highest, 'g', 5),
                 QString::number(range.usual, 'g', 5));
    if (!range.of.empty()) words = faultWords(range.of) + QLatin1String("; ") + words;
    range_->setText(words);
    size_->setAccessibleDescription(words);
  }
  showUsable();
}

void FaultForm::takeFocus() {
  if (spec_ == nullptr) return;
  if (spec_->size.exists()) {
    size_->setFocus(Qt::ShortcutFocusReason);
    size_->selectAll();
  } else {
    put_in_->setFocus(Qt::ShortcutFocusReason);
  }
}

void FaultForm::showUsable() {
  put_in_->setEnabled(spec_ != nullptr && desk_.isLive() && moment_->fault().isEmpty());
}

unit::Action FaultForm::makeAction() const {
  scenario::ArmWords words;
  words.spec = spec_;
  words.size = spec_->size.exists() ? size_->value() : spec_->size.usual;
  words.ramp_ticks = spec_->gradual ? std::llround(ramp_->value() * session::kTicksPerSecond) : 0;
  words.after_ticks = moment_->afterTicks();
  words.when = moment_->when();
  return scenario::makeArm(words);
}

void FaultForm::put() {
  if (spec_ == nullptr || !moment_->fault().isEmpty()) return;
  desk_.take(makeAction());
}

}  // namespace cabwright::desk
