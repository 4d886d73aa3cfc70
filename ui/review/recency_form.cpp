// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/recency_form.h"

#include <QHBoxLayout>
#include <QLabel>
#include <algorithm>
#include <set>

#include "after/words.h"

namespace cabwright::review_room {
namespace {

constexpr int kMostMonths = 120;

}  // namespace

review::RecencyRules loadRecency(QSettings& settings) {
  review::RecencyRules rules;
  settings.beginGroup(QStringLiteral("recency"));
  rules.months = std::clamp(settings.value(QStringLiteral("months"), 0).toInt(), 0, kMostMonths);
  const int count = settings.beginReadArray(QStringLiteral("exercises"));
  for (int k = 0; k < count; ++k) {
    settings.setArrayIndex(k);
    const QString title = settings.value(QStringLiteral("title")).toString();
    const int months = settings.value(QStringLiteral("months"), 0).toInt();
    if (!title.isEmpty())
      rules.by_exercise[title.toStdString()] = std::clamp(months, 0, kMostMonths);
  }
  settings.endArray();
  settings.endGroup();
  return rules;
}

void saveRecency(QSettings& settings, const review::RecencyRules& rules) {
  settings.beginGroup(QStringLiteral("recency"));
  settings.remove(QString());
  settings.setValue(QStringLiteral("months"), rules.months);
  settings.beginWriteArray(QStringLiteral("exercises"));
  int k = 0;
  for (const auto& [title, months] : rules.by_exercise) {
    settings.setArrayIndex(k++);
    settings.setValue(QStringLiteral("title"), QString::fromStdString(title));
    settings.setValue(QStringLiteral("months"), months);
  }
  settings.endArray();
  settings.endGroup();
}

MonthsBox::MonthsBox(bool can_follow, QWidget* parent) : QSpinBox(parent) {
  setRange(can_follow ? -1 : 0, kMostMonths);
  setKeyboardTracking(false);
  setMinimumWidth(130);
}

QString MonthsBox::textFromValue(int value) const {
  if (value < 0) return tr("as in general");
  return value == 0 ? tr("off") : tr("%n month(s)", nullptr, value);
}

// Digits count; words without any are what they say.
int MonthsBox::valueFromText(const QString& text) const {
  QString digits;
  for (const QChar c : text)
    if (c.isDigit()) digits += c;
  if (!digits.isEmpty()) return std::min(digits.toInt(), kMostMonths);
  return minimum() < 0 && text == textFromValue(-1) ? -1 : 0;
}

QValidator::State MonthsBox::validate(QString& text, int& /*at*/) const {
  return text.size() > 40 ? QValidator::Invalid : QValidator::Acceptable;
}

RecencyForm::RecencyForm(QWidget* parent)
    : QWidget(parent),
      general_(new MonthsBox(false, this)),
      own_(new MonthsBox(true, this)),
      exercise_(new drawing::ChoiceBox(this)) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(8);
  auto* label = new QLabel(tr("A pass is &good for"), this);
  label->setBuddy(general_);
  general_->setAccessibleName(tr("A pass is good for so many months"));
  general_->setObjectName(QStringLiteral("general"));
  own_->setAccessibleName(tr("Of this exercise"));
  own_->setObjectName(QStringLiteral("own"));
  exercise_->setAccessibleName(tr("Exercise with a validity of its own"));
  exercise_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  exercise_->setMinimumContentsLength(14);
  row->addWidget(label);
  row->addWidget(general_);
  row->addSpacing(16);
  row->addWidget(new QLabel(tr("but of"), this));
  row->addWidget(exercise_, 1);
  row->addWidget(own_);
  row->addStretch(1);
  connect(general_, &QSpinBox::valueChanged, this, &RecencyForm::take);
  connect(own_, &QSpinBox::valueChanged, this, &RecencyForm::take);
  connect(exercise_, &QComboBox::currentIndexChanged, this, &RecencyForm::showExercise);
  showExercise();
}

void RecencyForm::setRules(const review::RecencyRules& rules) {
  rules_ = rules;
  const QSignalBlocker quiet(general_);
  general_->setValue(rules.months);
  showExercise();
}

void RecencyForm::setExercises(const std::vector<std::string>& titles) {
  std::set<std::string> all(titles.begin(), titles.end());
  for (const auto& [title, months] : rules_.by_exercise) all.insert(title);
  const QString kept = exercise_->currentData().toString();
  {
    const QSignalBlocker quiet(exercise_);
    exercise_->clear();
    for (const std::string& title : all)
      exercise_->addItem(after::exerciseWords(title), QString::fromStdString(title));
    exercise_->setCurrentIndex(std::max(0, exercise_->findData(kept)));
  }
  showExercise();
}

void RecencyForm::showExercise() {
  const QSignalBlocker quiet(own_);
  const auto own = rules_.by_exercise.find(exercise_->currentData().toString().toStdString());
  own_->setEnabled(exercise_->count() > 0);
  own_->setValue(own == rules_.by_exercise.end() ? -1 : own->second);
}

void RecencyForm::take() {
  rules_.months = general_->value();
  const std::string title = exercise_->currentData().toString().toStdString();
  if (!title.empty()) {
    if (own_->value() < 0)
      rules_.by_exercise.erase(title);
    else
      rules_.by_exercise[title] = own_->value();
  }
  Q_EMIT changed();
}

}  // namespace cabwright::review_room
