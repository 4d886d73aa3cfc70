// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/writing_named.h"

#include <QCompleter>
#include <QGridLayout>
#include <QLabel>
#include <QStringListModel>

#include "cab/names.h"
#include "desk/desk_look.h"
#include "plant/parameters.h"
#include "plant/start_conditions.h"
#include "scenario/draft_text.h"
#include "unit/unit_parameters.h"

namespace cabwright::desk {

namespace {

constexpr int kDecimals = 6;

NamedEntry numberEntry(const std::string& name, std::string_view text, std::string_view unit,
                       double lowest, double highest, double usual) {
  NamedEntry entry;
  entry.name = name;
  entry.text = fromText(text);
  entry.unit = unit;
  entry.lowest = lowest;
  entry.highest = highest;
  entry.usual = std::clamp(usual, lowest, highest);
  return entry;
}

// "line1.x" and "line2.x" can be said together as "line.x".
template <class Table>
std::vector<NamedEntry> numberEntries(const Table& table) {
  std::vector<NamedEntry> all;
  for (const auto& info : table) {
    const std::size_t dot = info.name.find('.');
    if (dot != std::string::npos && dot > 0 && info.name[dot - 1] == '1') {
      std::string both = info.name;
      both.erase(dot - 1, 1);
      all.push_back(
          numberEntry(both, info.text, info.unit, info.lowest, info.highest, info.standard));
    }
    all.push_back(
        numberEntry(info.name, info.text, info.unit, info.lowest, info.highest, info.standard));
  }
  return all;
}

}  // namespace

std::vector<NamedEntry> controlEntries() {
  std::vector<NamedEntry> all;
  for (const unit::ControlInfo& info : unit::controlTable()) {
    NamedEntry entry;
    entry.name = info.name;
    entry.text = cab::textOf(info.id);
    for (const unit::ControlPosition& position : info.positions) {
      entry.words.push_back(
          {std::string(position.name), cab::positionText(info.id, position.value)});
    }
    all.push_back(std::move(entry));
  }
  return all;
}

std::vector<NamedEntry> objectEntries() {
  std::vector<NamedEntry> all;
  for (const unit::ObjectInfo& info : unit::objectTable()) {
    NamedEntry entry;
    entry.name = info.name;
    entry.text = cab::textOf(info.id);
    const auto word = [&](const std::string& text, const QString& shown) {
      if (unit::findObjectFaults({entry.name, text}).empty()) entry.words.push_back({text, shown});
    };
    word("carried", NamedValues::tr("carried"));
    for (const char* place : {"cab1", "cab2", "engine1", "engine2"})
      word(place, NamedValues::tr("in its place: %1").arg(cab::nameOf(*unit::findPlace(place))));
    for (const unit::PlaceInfo& place : unit::placeTable())
      word("lying " + std::string(place.name),
           NamedValues::tr("lies: %1").arg(cab::nameOf(place.id)));
    word("none", NamedValues::tr("is nowhere"));
    all.push_back(std::move(entry));
  }
  return all;
}

std::vector<NamedEntry> startEntries() {
  std::vector<NamedEntry> all = numberEntries(plant::startTable());
  std::erase_if(all, [](const NamedEntry& e) { return e.name == "ambient_c"; });
  return all;
}

std::vector<NamedEntry> parameterEntries() {
  std::vector<NamedEntry> all = numberEntries(plant::parameterTable());
  const std::vector<NamedEntry> more = numberEntries(unit::unitParameterTable());
  all.insert(all.end(), more.begin(), more.end());
  return all;
}

NamedValues::NamedValues(Writing& writing, scenario::DraftSection section, const QString& title,
                         std::vector<NamedEntry> entries, QWidget* parent)
    : QWidget(parent),
      writing_(writing),
      section_(section),
      entries_(std::move(entries)),
      search_(new QLineEdit(this)),
      add_(new QPushButton(tr("Say it"), this)),
      column_(new QVBoxLayout(this)) {
  column_->setContentsMargins(0, 0, 0, 0);
  auto* heading = new QLabel(title, this);
  heading->setWordWrap(true);
  column_->addWidget(heading);
  QStringList names;
  for (const NamedEntry& entry : entries_)
    names << QString::fromStdString(entry.name) + QStringLiteral("  ") + entry.text;
  auto* completer = new QCompleter(names, this);
  completer->setFilterMode(Qt::MatchContains);
  completer->setCaseSensitivity(Qt::CaseInsensitive);
  search_->setCompleter(completer);
  search_->setObjectName(QStringLiteral("writing_find_") + fromText(pathOf(section)));
  search_->setAccessibleName(tr("%1: find").arg(title));
  search_->setPlaceholderText(tr("Find by name or words"));
  search_->setClearButtonEnabled(true);
  add_->setObjectName(QStringLiteral("writing_add_") + fromText(pathOf(section)));
  add_->setAccessibleName(tr("%1: say it").arg(title));
  auto* row = new QHBoxLayout;
  row->addWidget(search_, 1);
  row->addWidget(add_);
  column_->addLayout(row);
  const auto take = [this] {
    const QString words = search_->text().section(QLatin1Char(' '), 0, 0).trimmed();
    if (add(words)) search_->clear();
  };
  connect(add_, &QPushButton::clicked, this, take);
  connect(search_, &QLineEdit::returnPressed, this, take);
  connect(&writing_, &Writing::replaced, this, &NamedValues::fill);
  fill();
}

const NamedEntry* NamedValues::find(std::string_view name) const {
  for (const NamedEntry& entry : entries_) {
    if (entry.name == name) return &entry;
  }
  return nullptr;
}

bool NamedValues::add(const QString& name) {
  const NamedEntry* entry = find(name.toStdString());
  if (!entry) return false;
  const scenario::DraftValue value = entry->words.empty()
                                         ? scenario::DraftValue(entry->usual)
                                         : scenario::DraftValue(entry->words.front().word);
  put(entry->name, value);
  fill();
  return true;
}

void NamedValues::put(const std::string& name, std::optional<scenario::DraftValue> value) {
  writing_.change([&](scenario::Draft& draft) {
    if (value) {
      draft.table(section_).set(name, *value);
    } else {
      draft.table(section_).remove(name);
    }
  });
}

void NamedValues::fill() {
  if (lines_) lines_->deleteLater();
  lines_ = new QWidget(this);
  lines_->setLayout(new QGridLayout);
  lines_->layout()->setContentsMargins(0, 0, 0, 0);
  for (const scenario::DraftEntry& said : writing_.draft().table(section_).entries) {
    if (const NamedEntry* entry = find(said.key)) addLine(*entry, said.value);
  }
  column_->addWidget(lines_);
  lines_->show();
}

void NamedValues::addLine(const NamedEntry& entry, const scenario::DraftValue& value) {
  auto* grid = static_cast<QGridLayout*>(lines_->layout());
  const int line = grid->rowCount();
  const QString name = QString::fromStdString(entry.name);
  auto* label = new QLabel(name, lines_);
  label->setToolTip(entry.text);
  grid->addWidget(label, line, 0);
  QWidget* field = nullptr;
  if (entry.words.empty()) {
    auto* box = new PlainNumber(lines_);
    box->setRange(entry.lowest, entry.highest);
    box->setDecimals(kDecimals);
    if (!entry.unit.empty()) box->setSuffix(QLatin1Char(' ') + QString::fromStdString(entry.unit));
    box->setToolTip(tr("%1 to %2").arg(entry.lowest).arg(entry.highest));
    box->setValue(numberOf(value, entry.unit).value_or(entry.usual));
    connect(box, &QDoubleSpinBox::valueChanged, this,
            [this, key = entry.name](double now) { put(key, scenario::DraftValue(now)); });
    field = box;
  } else {
    auto* box = new ChoiceBox(lines_);
    for (const WritingChoice& c : entry.words)
      box->addItem(c.shown, QString::fromStdString(c.word));
    const auto* text = std::get_if<std::string>(&value.value);
    const QString word = QString::fromStdString(text ? *text : scenario::valueText(value));
    if (box->findData(word) < 0) box->addItem(word, word);
    box->setCurrentIndex(box->findData(word));
    connect(box, &QComboBox::currentIndexChanged, this, [this, key = entry.name, box] {
      put(key, scenario::DraftValue(box->currentData().toString().toStdString()));
    });
    field = box;
  }
  field->setObjectName(QStringLiteral("writing_value_") + name);
  field->setAccessibleName(name + QStringLiteral(": ") + entry.text);
  grid->addWidget(field, line, 1);
  auto* gone = new QPushButton(tr("Leave out"), lines_);
  gone->setObjectName(QStringLiteral("writing_drop_") + name);
  gone->setAccessibleName(tr("Leave out %1").arg(name));
  connect(gone, &QPushButton::clicked, this, [this, key = entry.name] {
    put(key, std::nullopt);
    fill();
  });
  grid->addWidget(gone, line, 2);
  grid->setColumnStretch(1, 1);
}

}  // namespace cabwright::desk
