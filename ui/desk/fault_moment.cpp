// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fault_moment.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QVBoxLayout>
#include <cmath>

#include "cab/names.h"
#include "desk/desk_look.h"

namespace cabwright::desk {

const std::vector<ReadyCondition>& readyConditions() {
  static const std::vector<ReadyCondition> ready{
      {QT_TRANSLATE_NOOP("Ready", "When an engine turns"),
       "true.engine1.rpm > 50 rpm or true.engine2.rpm > 50 rpm"},
      {QT_TRANSLATE_NOOP("Ready", "When both engines run"),
       "true.engine1.running and true.engine2.running"},
      {QT_TRANSLATE_NOOP("Ready", "When control air passes 75 psi"), "true.air >= 75 psi"},
      {QT_TRANSLATE_NOOP("Ready", "When the train pipe passes 20 inHg"),
       "true.train_pipe >= 20 inHg"},
      {QT_TRANSLATE_NOOP("Ready", "When both handbrakes are off"),
       "cab1.handbrake < 0.05 and cab2.handbrake < 0.05"},
      {QT_TRANSLATE_NOOP("Ready", "When the unit moves"), "not true.standing"},
      {QT_TRANSLATE_NOOP("Ready", "When it runs at 15 mph"), "true.abs_speed >= 15 mph"},
      {QT_TRANSLATE_NOOP("Ready", "When third gear is selected"),
       "cab1.gear == 3 or cab2.gear == 3"},
  };
  return ready;
}

FaultMoment::FaultMoment(QWidget* parent)
    : QWidget(parent),
      choice_(new ChoiceBox(this)),
      seconds_(new QDoubleSpinBox(this)),
      condition_(new QLineEdit(this)),
      fault_(new QLabel(this)) {
  choice_->setObjectName(QStringLiteral("fault_moment"));
  choice_->setAccessibleName(tr("When it comes"));
  choice_->addItem(tr("Now"));
  choice_->addItem(tr("After some seconds"));
  for (const ReadyCondition& ready : readyConditions())
    choice_->addItem(QCoreApplication::translate("Ready", ready.words), QString(ready.text));
  choice_->addItem(tr("When, in my own words"), QString());
  choice_->setMaxVisibleItems(14);
  choice_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  choice_->setMinimumContentsLength(20);
  seconds_->setObjectName(QStringLiteral("fault_after"));
  seconds_->setAccessibleName(tr("Seconds until it comes"));
  seconds_->setRange(0, 7200);
  seconds_->setDecimals(0);
  seconds_->setSingleStep(5);
  seconds_->setSuffix(tr(" s"));
  condition_->setObjectName(QStringLiteral("fault_condition"));
  condition_->setAccessibleName(tr("Condition"));
  condition_->setPlaceholderText(QStringLiteral("cab1.air >= 75 psi and cab1.gear == 1"));
  fault_->setObjectName(QStringLiteral("bad"));
  fault_->setWordWrap(true);
  auto* row = new QHBoxLayout;
  row->addWidget(choice_, 1);
  row->addWidget(seconds_);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addLayout(row);
  column->addWidget(condition_);
  column->addWidget(fault_);
  connect(choice_, &QComboBox::currentIndexChanged, this, [this] {
    if (isCondition()) condition_->setText(choice_->currentData().toString());
    if (choice_->currentIndex() == 1 && seconds_->value() == 0) seconds_->setValue(30);
    if (choice_->currentIndex() != 1) seconds_->setValue(0);
    show();
  });
  connect(condition_, &QLineEdit::textChanged, this, &FaultMoment::show);
  connect(condition_, &QLineEdit::returnPressed, this, &FaultMoment::entered);
  connect(seconds_->findChild<QLineEdit*>(), &QLineEdit::returnPressed, this,
          &FaultMoment::entered);
  show();
}

void FaultMoment::reset() {
  choice_->setCurrentIndex(0);
  seconds_->setValue(0);
}

void FaultMoment::show() {
  seconds_->setVisible(choice_->currentIndex() != 0);
  seconds_->setPrefix(isCondition() ? tr("and then ") : QString());
  condition_->setVisible(isCondition());
  const QString words = fault();
  fault_->setText(words);
  fault_->setVisible(!words.isEmpty());
  condition_->setAccessibleDescription(words);
  Q_EMIT changed();
}

std::int64_t FaultMoment::afterTicks() const {
  return choice_->currentIndex() == 0 ? 0 : std::llround(seconds_->value() * 100);
}

std::optional<unit::Condition> FaultMoment::when() const {
  if (!isCondition()) return std::nullopt;
  auto parsed = unit::Condition::parse(condition_->text().toStdString());
  if (auto* condition = std::get_if<unit::Condition>(&parsed)) return std::move(*condition);
  return std::nullopt;
}

QString FaultMoment::fault() const {
  if (!isCondition()) return {};
  if (condition_->text().trimmed().isEmpty()) return tr("A condition is missing.");
  const auto parsed = unit::Condition::parse(condition_->text().toStdString());
  const auto* fault = std::get_if<unit::ConditionFault>(&parsed);
  if (fault == nullptr) return {};
  return tr("At letter %1: %2")
      .arg(fault->at + 1)
      .arg(cab::translateSeen(QString::fromStdString(fault->what)));
}

}  // namespace cabwright::desk
