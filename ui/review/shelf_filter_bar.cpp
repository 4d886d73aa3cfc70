// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/shelf_filter_bar.h"

#include <QHBoxLayout>
#include <QLocale>
#include <QStyle>
#include <map>

#include "cab/you_parts.h"
#include "scenario/scenario.h"
#include "session/record.h"

namespace cabwright::review_room {

using review::ShelfOutcome;

namespace {

constexpr int kPauseMs = 120;

QString fromText(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

}  // namespace

QDate readDay(const QString& text) {
  const QString words = text.trimmed();
  const QDate day = QDate::fromString(words, Qt::ISODate);
  if (day.isValid()) return day;
  const QLocale reader;
  QDate read = reader.toDate(words, QLocale::ShortFormat);
  // "15.03.31" is read as of the last century.
  if (read.isValid() && read.year() < 1970) read = read.addYears(100);
  return read;
}

ShelfFilterBar::ShelfFilterBar(QWidget* parent)
    : QWidget(parent),
      trainee_(new drawing::ChoiceBox(this)),
      exercise_(new drawing::ChoiceBox(this)),
      mode_(new drawing::ChoiceBox(this)),
      outcome_(new drawing::ChoiceBox(this)),
      from_(makeDay(tr("From day"), tr("from day"))),
      to_(makeDay(tr("To day"), tr("to day"))),
      text_(new QLineEdit(this)),
      clear_(makeShelfButton(tr("Show all"), QStringLiteral("clear"), this)) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(8);
  trainee_->setAccessibleName(tr("Trainee"));
  exercise_->setAccessibleName(tr("Exercise"));
  mode_->setAccessibleName(tr("Mode"));
  outcome_->setAccessibleName(tr("Outcome"));
  text_->setAccessibleName(tr("Search"));
  text_->setPlaceholderText(tr("search in all columns"));
  text_->setClearButtonEnabled(false);
  int stretch = 3;
  for (drawing::ChoiceBox* choice : {trainee_, exercise_, mode_, outcome_}) {
    choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    choice->setMinimumContentsLength(8);
    row->addWidget(choice, stretch);
    stretch = choice == trainee_ ? 4 : 2;
    connect(choice, &QComboBox::currentIndexChanged, this, &ShelfFilterBar::changed);
  }
  row->addWidget(from_, 2);
  row->addWidget(to_, 2);
  row->addWidget(text_, 4);
  row->addWidget(clear_);
  pause_.setSingleShot(true);
  pause_.setInterval(kPauseMs);
  connect(&pause_, &QTimer::timeout, this, &ShelfFilterBar::changed);
  connect(text_, &QLineEdit::textEdited, &pause_, qOverload<>(&QTimer::start));
  connect(text_, &QLineEdit::returnPressed, this, &ShelfFilterBar::changed);
  connect(clear_, &QPushButton::clicked, this, &ShelfFilterBar::clear);
  setChoices({});
}

QLineEdit* ShelfFilterBar::makeDay(const QString& name, const QString& words) {
  auto* day = new QLineEdit(this);
  day->setAccessibleName(name);
  day->setPlaceholderText(words);
  day->setToolTip(tr("A day, as 2031-03-15"));
  day->setMaxLength(20);
  connect(day, &QLineEdit::textChanged, this, [this] {
    markDays();
    Q_EMIT changed();
  });
  return day;
}

// A day that cannot be read asks for nothing, and is seen to do so.
void ShelfFilterBar::markDays() {
  for (QLineEdit* day : {from_, to_}) {
    const bool bad = !day->text().trimmed().isEmpty() && !readDay(day->text()).isValid();
    day->setStyleSheet(bad ? QStringLiteral("text-decoration: line-through;") : QString());
    day->setToolTip(bad ? tr("This is no day. Write it as 2031-03-15.")
                        : tr("A day, as 2031-03-15"));
  }
}

void ShelfFilterBar::fill(drawing::ChoiceBox* choice,
                          const std::vector<std::pair<QString, QString>>& entries) {
  const QString kept = choice->currentData().toString();
  const QSignalBlocker quiet(choice);
  choice->clear();
  for (const auto& [words, key] : entries) choice->addItem(words, key);
  choice->setCurrentIndex(std::max(0, choice->findData(kept)));
}

void ShelfFilterBar::setChoices(const std::vector<ShelfRow>& rows) {
  std::map<QString, QString> trainees, exercises;  // by what they are called
  for (const ShelfRow& row : rows) {
    const QString key = fromText(review::traineeKey(row.item));
    if (!key.isEmpty()) trainees.emplace(row.cell(ShelfColumn::kTrainee), key);
    if (!row.item.scenario.empty())
      exercises.emplace(row.cell(ShelfColumn::kExercise), fromText(row.item.scenario));
  }
  std::vector<std::pair<QString, QString>> entries{{tr("all trainees"), QString()}};
  // With and without the name, where it was erased in some files: one trainee all the same.
  std::map<QString, QString> by_key;
  for (const auto& [words, key] : trainees)
    if (QString& known = by_key[key]; words.size() > known.size()) known = words;
  for (const auto& [key, words] : by_key) entries.emplace_back(words, key);
  fill(trainee_, entries);
  entries.assign({{tr("all exercises"), QString()}});
  entries.insert(entries.end(), exercises.begin(), exercises.end());
  fill(exercise_, entries);
  entries.assign({{tr("all modes"), QString()}});
  for (const auto mode :
       {scenario::Mode::kGuided, scenario::Mode::kPractice, scenario::Mode::kAssessment})
    entries.emplace_back(cab::modeText(mode), fromText(scenario::wordOf(mode)));
  fill(mode_, entries);
  entries.assign({{tr("all outcomes"), QString()}});
  for (const ShelfOutcome outcome :
       {ShelfOutcome::kPassed, ShelfOutcome::kFailed, ShelfOutcome::kCutOff, ShelfOutcome::kBroken})
    entries.emplace_back(outcomeName(outcome), fromText(review::wordOf(outcome)));
  fill(outcome_, entries);
}

ShelfFilter ShelfFilterBar::filter() const {
  ShelfFilter filter;
  filter.trainee = trainee_->currentData().toString();
  filter.exercise = exercise_->currentData().toString();
  filter.mode = mode_->currentData().toString();
  const QString outcome = outcome_->currentData().toString();
  for (const ShelfOutcome one :
       {ShelfOutcome::kPassed, ShelfOutcome::kFailed, ShelfOutcome::kCutOff, ShelfOutcome::kBroken})
    if (outcome == fromText(review::wordOf(one))) filter.outcome = one;
  filter.from = readDay(from_->text());
  filter.to = readDay(to_->text());
  filter.text = text_->text().simplified();
  return filter;
}

void ShelfFilterBar::choose(const QString& trainee, const QString& exercise) {
  {
    const QSignalBlocker quiet_trainee(trainee_), quiet_exercise(exercise_);
    trainee_->setCurrentIndex(std::max(0, trainee_->findData(trainee)));
    exercise_->setCurrentIndex(std::max(0, exercise_->findData(exercise)));
  }
  Q_EMIT changed();
}

void ShelfFilterBar::clear() {
  {
    const QSignalBlocker quiet(this);
    for (drawing::ChoiceBox* choice : {trainee_, exercise_, mode_, outcome_})
      choice->setCurrentIndex(0);
    for (QLineEdit* edit : {from_, to_, text_}) edit->clear();
  }
  Q_EMIT changed();
}

void ShelfFilterBar::takeFocus() {
  text_->setFocus(Qt::ShortcutFocusReason);
  text_->selectAll();
}

}  // namespace cabwright::review_room
