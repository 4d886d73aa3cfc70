// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/situation_page.h"

#include <QCoreApplication>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QStandardItemModel>
#include <QVBoxLayout>
#include <array>
#include <cmath>

#include "cab/you_parts.h"
#include "desk/desk_look.h"

namespace cabwright::desk {
namespace {

constexpr std::array kWeathers{
    QT_TRANSLATE_NOOP("Weather", "clear"), QT_TRANSLATE_NOOP("Weather", "overcast"),
    QT_TRANSLATE_NOOP("Weather", "rain"),  QT_TRANSLATE_NOOP("Weather", "snow"),
    QT_TRANSLATE_NOOP("Weather", "frost"), QT_TRANSLATE_NOOP("Weather", "fog"),
    QT_TRANSLATE_NOOP("Weather", "wind"),  QT_TRANSLATE_NOOP("Weather", "hot")};

QDoubleSpinBox* makeNumber(double low, double high, const QString& suffix, const QString& name,
                           const QString& words, QWidget* parent) {
  auto* box = new QDoubleSpinBox(parent);
  box->setRange(low, high);
  box->setDecimals(0);
  box->setSuffix(suffix);
  box->setObjectName(name);
  box->setAccessibleName(words);
  return box;
}

}  // namespace

SituationPage::SituationPage(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      exercise_(new ChoiceBox(this)),
      mode_(new ChoiceBox(this)),
      weather_(new ChoiceBox(this)),
      summary_(new QLabel(this)),
      temperature_(
          makeNumber(-30, 45, tr(" °C"), QStringLiteral("temperature"), tr("Temperature"), this)),
      hours_(makeNumber(0, 200, tr(" h"), QStringLiteral("stood_hours"), tr("Hours it has stood"),
                        this)),
      seed_(makeNumber(0, 999999, {}, QStringLiteral("seed"), tr("Seed"), this)),
      dark_(new TickBox(tr("in the dark"), this)),
      trainee_(new QLineEdit(this)),
      begin_(makeButton(tr("Begin"), QStringLiteral("begin"), this)) {
  exercise_->setObjectName(QStringLiteral("exercise"));
  exercise_->setAccessibleName(tr("Exercise"));
  mode_->setObjectName(QStringLiteral("mode"));
  mode_->setAccessibleName(tr("How it is taken"));
  weather_->setObjectName(QStringLiteral("weather"));
  weather_->setAccessibleName(tr("Weather"));
  dark_->setObjectName(QStringLiteral("dark"));
  trainee_->setObjectName(QStringLiteral("trainee"));
  trainee_->setAccessibleName(tr("Trainee"));
  trainee_->setPlaceholderText(tr("may be empty"));
  trainee_->setMaxLength(24);
  summary_->setWordWrap(true);
  trainee_->setMinimumWidth(260);
  exercise_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  exercise_->setMinimumContentsLength(34);
  for (QComboBox* choice : {mode_, weather_}) choice->setMinimumContentsLength(12);
  for (const auto mode :
       {scenario::Mode::kGuided, scenario::Mode::kPractice, scenario::Mode::kAssessment})
    mode_->addItem(cab::modeText(mode), static_cast<int>(mode));
  for (const char* word : kWeathers)
    weather_->addItem(QCoreApplication::translate("Weather", word), QLatin1String(word));
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(14);
  grid->setVerticalSpacing(9);
  int line = 0;
  const auto add = [&](const QString& words, std::initializer_list<QWidget*> fields) {
    grid->addWidget(makeSecond(words, this), line, 0);
    auto* row = new QHBoxLayout;
    row->setSpacing(10);
    for (QWidget* field : fields) row->addWidget(field);
    row->addStretch(1);
    grid->addLayout(row, line++, 1);
  };
  add(tr("Exercise"), {exercise_});
  grid->addWidget(summary_, line++, 1);
  add(tr("Taken as"), {mode_});
  add(tr("By"), {trainee_});
  add(tr("Weather"), {weather_, temperature_, dark_});
  add(tr("Has stood"), {hours_});
  add(tr("Seed"), {seed_});
  grid->setColumnStretch(1, 1);
  summary_->setMinimumWidth(420);
  auto* last = new QHBoxLayout;
  last->addWidget(begin_);
  last->addStretch(1);
  grid->addLayout(last, line, 1);
  auto* column = new QVBoxLayout;
  column->addWidget(makeHeading(tr("What begins"), this));
  column->addLayout(grid);
  column->addStretch(1);
  auto* page = new QHBoxLayout(this);
  page->setContentsMargins(0, 8, 0, 0);
  page->addLayout(column, 3);
  page->addStretch(1);
  begin_->setDefault(true);
  connect(exercise_, &QComboBox::currentIndexChanged, this, &SituationPage::showChosen);
  connect(begin_, &QPushButton::clicked, this, [this] {
    if (chosen() != nullptr) Q_EMIT beginAsked(wish());
  });
  connect(trainee_, &QLineEdit::returnPressed, begin_, &QPushButton::click);
  showChosen();
}

void SituationPage::setChoices(std::vector<SituationChoice> choices) {
  const SituationChoice* before = chosen();
  const std::string kept = before != nullptr ? before->name : std::string();
  const QSignalBlocker quiet(exercise_);
  choices_ = std::move(choices);
  exercise_->clear();
  for (const SituationChoice& choice : choices_) exercise_->addItem(choice.title);
  for (std::size_t k = 0; k < choices_.size(); ++k)
    if (choices_[k].name == kept) exercise_->setCurrentIndex(static_cast<int>(k));
  if (chosen() == nullptr || chosen()->name != kept) showChosen();
}

const SituationChoice* SituationPage::chosen() const {
  const int k = exercise_->currentIndex();
  return k >= 0 && k < static_cast<int>(choices_.size()) ? &choices_[static_cast<std::size_t>(k)]
                                                         : nullptr;
}

void SituationPage::showChosen() {
  const SituationChoice* choice = chosen();
  begin_->setEnabled(choice != nullptr);
  if (choice == nullptr) return;
  summary_->setText(choice->summary);
  weather_->setCurrentIndex(weather_->findData(QString::fromStdString(choice->weather)));
  temperature_->setValue(choice->temperature_c);
  hours_->setEnabled(choice->stood_hours.has_value());
  hours_->setToolTip(choice->stood_hours ? QString()
                                         : tr("This exercise says itself how the unit stands."));
  hours_->setValue(choice->stood_hours.value_or(0));
  dark_->setChecked(choice->dark);
  seed_->setValue(static_cast<double>(choice->seed));
  auto* modes = qobject_cast<QStandardItemModel*>(mode_->model());
  modes->item(static_cast<int>(scenario::Mode::kGuided))->setEnabled(choice->has_guide);
  modes->item(static_cast<int>(scenario::Mode::kAssessment))->setEnabled(choice->can_be_assessed);
  if (!modes->item(mode_->currentIndex())->isEnabled())
    mode_->setCurrentIndex(static_cast<int>(scenario::Mode::kPractice));
}

SituationWish SituationPage::wish() const {
  SituationWish wish;
  const SituationChoice* choice = chosen();
  if (choice == nullptr) return wish;
  wish.exercise = choice->name;
  wish.mode = static_cast<scenario::Mode>(mode_->currentData().toInt());
  wish.trainee = trainee_->text().simplified();
  const auto seed = static_cast<std::uint64_t>(seed_->value());
  if (seed != choice->seed) wish.seed = seed;
  const std::string weather = weather_->currentData().toString().toStdString();
  if (weather != choice->weather && !weather.empty()) wish.conditions.weather = weather;
  if (std::abs(temperature_->value() - choice->temperature_c) > 0.5)
    wish.conditions.temperature_c = temperature_->value();
  if (choice->stood_hours && std::abs(hours_->value() - *choice->stood_hours) > 0.5)
    wish.conditions.stood_hours = hours_->value();
  if (dark_->isChecked() != choice->dark) wish.conditions.dark = dark_->isChecked();
  return wish;
}

}  // namespace cabwright::desk
