// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/writing_form.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <cmath>

#include "desk/desk_look.h"
#include "scenario/draft_text.h"
#include "scenario/quantity_text.h"

namespace cabwright::desk {

namespace {

constexpr int kLinesHeight = 84;

QString bare(QString label) { return label.remove(QLatin1Char('&')); }

}  // namespace

std::optional<double> numberOf(const scenario::DraftValue& value, std::string_view unit) {
  if (const auto* whole = std::get_if<std::int64_t>(&value.value))
    return static_cast<double>(*whole);
  if (const auto* number = std::get_if<double>(&value.value)) return *number;
  if (const auto* text = std::get_if<std::string>(&value.value)) {
    const auto read = scenario::readQuantity(*text, unit, true);
    if (const auto* number = std::get_if<double>(&read)) return *number;
  }
  return std::nullopt;
}

QString PlainNumber::textFromValue(double value) const {
  QString words = QDoubleSpinBox::textFromValue(value);
  const QString point = locale().decimalPoint();
  if (!words.contains(point)) return words;
  while (words.endsWith(QLatin1Char('0'))) words.chop(1);
  if (words.endsWith(point)) words.chop(point.size());
  return words;
}

WritingForm::WritingForm(Writing& writing, Target target, QWidget* parent)
    : QWidget(parent), writing_(writing), target_(std::move(target)), rows_(new QFormLayout(this)) {
  rows_->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
  rows_->setRowWrapPolicy(QFormLayout::WrapLongRows);
  connect(&writing_, &Writing::replaced, this, &WritingForm::fill);
}

WritingForm::WritingForm(Writing& writing, scenario::DraftSection section, QWidget* parent)
    : WritingForm(
          writing, [section](scenario::Draft& draft) { return &draft.table(section); }, parent) {}

const scenario::DraftTable* WritingForm::table() const {
  return target_(const_cast<scenario::Draft&>(writing_.draft()));  // only looked at
}

void WritingForm::put(const std::string& key, std::optional<scenario::DraftValue> value) {
  if (filling_) return;
  writing_.change([&](scenario::Draft& draft) {
    scenario::DraftTable* table = target_(draft);
    if (!table) return;
    if (value) {
      table->set(key, *value);
    } else {
      table->remove(key);
    }
  });
}

void WritingForm::fill() {
  filling_ = true;
  setVisible(table() != nullptr);
  if (table()) {
    for (const auto& fill : fills_) fill();
  }
  filling_ = false;
}

void WritingForm::name(QWidget* field, const std::string& key, const QString& label) {
  field->setObjectName(QStringLiteral("writing_") + QString::fromStdString(key));
  field->setAccessibleName(bare(label));
}

QLineEdit* WritingForm::addText(const std::string& key, const QString& label, const QString& hint) {
  return addWorded(key, label, hint,
                   {[](const scenario::DraftValue& value) {
                      const auto* text = std::get_if<std::string>(&value.value);
                      return QString::fromStdString(text ? *text : scenario::valueText(value));
                    },
                    [](const QString& words) -> std::optional<scenario::DraftValue> {
                      if (words.isEmpty()) return std::nullopt;
                      return words.toStdString();
                    }});
}

QLineEdit* WritingForm::addWorded(const std::string& key, const QString& label, const QString& hint,
                                  Wording wording) {
  auto* field = new QLineEdit(this);
  field->setPlaceholderText(hint);
  name(field, key, label);
  rows_->addRow(label, field);
  connect(field, &QLineEdit::textEdited, this,
          [this, key, read = std::move(wording.read)](const QString& words) {
            put(key, read(words.trimmed()));
          });
  onFill([this, key, field, show = std::move(wording.show)] {
    const scenario::DraftValue* value = table()->find(key);
    const QString words = value ? show(*value) : QString();
    if (field->text() == words) return;
    field->setText(words);
    field->setCursorPosition(0);
  });
  return field;
}

QPlainTextEdit* WritingForm::addLines(const std::string& key, const QString& label, bool as_list) {
  const auto show = [](const scenario::DraftValue& value) {
    scenario::DraftTable one;
    one.set("lines", value);
    QStringList lines;
    for (const std::string& line : one.texts("lines")) lines << QString::fromStdString(line);
    return lines.join(QLatin1Char('\n'));
  };
  const auto read = [as_list](const QString& words) -> std::optional<scenario::DraftValue> {
    std::vector<std::string> lines;
    for (const QString& line : words.split(QLatin1Char('\n'), Qt::SkipEmptyParts))
      if (!line.trimmed().isEmpty()) lines.push_back(line.trimmed().toStdString());
    if (lines.empty()) return std::nullopt;
    if (as_list) return scenario::DraftValue(lines);
    return scenario::DraftValue(words.simplified().toStdString());
  };
  return addWordedLines(key, label, {show, read});
}

QPlainTextEdit* WritingForm::addWordedLines(const std::string& key, const QString& label,
                                            Wording wording) {
  auto* field = new QPlainTextEdit(this);
  field->setTabChangesFocus(true);
  field->setFixedHeight(kLinesHeight);
  name(field, key, label);
  rows_->addRow(label, field);
  connect(
      field, &QPlainTextEdit::textChanged, this,
      [this, key, field, read = std::move(wording.read)] { put(key, read(field->toPlainText())); });
  onFill([this, key, field, show = std::move(wording.show)] {
    const scenario::DraftValue* value = table()->find(key);
    const QString words = value ? show(*value) : QString();
    if (field->toPlainText() != words) field->setPlainText(words);
  });
  return field;
}

QComboBox* WritingForm::addChoice(const std::string& key, const QString& label,
                                  std::vector<WritingChoice> choices, bool other_words) {
  auto* field = new ChoiceBox(this);
  field->setEditable(other_words);
  field->setInsertPolicy(QComboBox::NoInsert);
  field->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  field->setMinimumContentsLength(16);
  name(field, key, label);
  for (const WritingChoice& c : choices) field->addItem(c.shown, QString::fromStdString(c.word));
  rows_->addRow(label, field);
  const auto take = [this, key, field] {
    const int at = field->currentIndex();
    const bool chosen =
        !field->isEditable() || (at >= 0 && field->itemText(at) == field->currentText());
    const QString word = chosen ? field->itemData(at).toString() : field->currentText().trimmed();
    if (word.isEmpty()) return put(key, std::nullopt);
    const auto number = scenario::readNumber(word.toStdString());
    put(key, number ? scenario::DraftValue(*number) : scenario::DraftValue(word.toStdString()));
  };
  connect(field, &QComboBox::currentIndexChanged, this, take);
  if (other_words) connect(field->lineEdit(), &QLineEdit::editingFinished, this, take);
  onFill([this, key, field] {
    const scenario::DraftValue* value = table()->find(key);
    QString word;
    if (value) {
      const auto* text = std::get_if<std::string>(&value->value);
      word = QString::fromStdString(text ? *text : scenario::valueText(*value));
    }
    const int at = field->findData(word);
    if (at < 0 && !field->isEditable()) field->addItem(word, word);
    field->setCurrentIndex(field->findData(word));
    if (at < 0 && field->isEditable()) field->setEditText(word);
  });
  return field;
}

QDoubleSpinBox* WritingForm::addNumber(const std::string& key, const QString& label,
                                       const std::string& unit, double lowest, double highest,
                                       double usual, int decimals) {
  auto* row = new QWidget(this);
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  auto* said = new TickBox(row);
  said->setObjectName(QStringLiteral("writing_says_") + QString::fromStdString(key));
  said->setAccessibleName(tr("%1: say it").arg(bare(label)));
  auto* field = new PlainNumber(row);
  field->setRange(lowest, highest);
  field->setDecimals(decimals);
  if (!unit.empty()) field->setSuffix(QLatin1Char(' ') + QString::fromStdString(unit));
  name(field, key, label);
  line->addWidget(said);
  line->addWidget(field, 1);
  rows_->addRow(label, row);
  const auto take = [this, key, unit, said, field] {
    field->setEnabled(said->isChecked());
    if (!said->isChecked()) return put(key, std::nullopt);
    put(key, scenario::quantityValue(field->value(), unit));
  };
  connect(said, &QCheckBox::toggled, this, take);
  connect(field, &QDoubleSpinBox::valueChanged, this, take);
  onFill([this, key, unit, usual, said, field] {
    const QSignalBlocker quiet_box(said), quiet_field(field);
    const scenario::DraftValue* value = table()->find(key);
    said->setChecked(value != nullptr);
    field->setEnabled(value != nullptr);
    field->setValue(value ? numberOf(*value, unit).value_or(usual) : usual);
  });
  return field;
}

QCheckBox* WritingForm::addFlag(const std::string& key, const QString& label, bool usual) {
  auto* field = new TickBox(label, this);
  name(field, key, label);
  rows_->addRow(field);
  connect(field, &QCheckBox::toggled, this, [this, key](bool on) { put(key, on); });
  onFill([this, key, usual, field] {
    const QSignalBlocker quiet(field);
    field->setChecked(table()->flag(key, usual));
  });
  return field;
}

void WritingForm::addNote(const QString& words) {
  auto* note = new QLabel(words, this);
  note->setObjectName(QStringLiteral("second"));
  note->setWordWrap(true);
  rows_->addRow(note);
}

}  // namespace cabwright::desk
