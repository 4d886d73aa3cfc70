// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/people_page.h"

#include <QCoreApplication>
#include <QGridLayout>
#include <QHBoxLayout>
#include <array>

#include "cab/names.h"
#include "desk/desk_look.h"
#include "wording/sentences.h"

namespace cabwright::desk {
namespace {

using unit::Actor;

QString text(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

struct Code {
  const char* strokes;
  const char* words;
};
constexpr std::array kCodes{Code{"1", QT_TRANSLATE_NOOP("Bell", "stop")},
                            Code{"2", QT_TRANSLATE_NOOP("Bell", "ready to start")},
                            Code{"3", QT_TRANSLATE_NOOP("Bell", "set back")},
                            Code{"4", QT_TRANSLATE_NOOP("Bell", "slow down")},
                            Code{"6", QT_TRANSLATE_NOOP("Bell", "draw forward")},
                            Code{"3-3", QT_TRANSLATE_NOOP("Bell", "speak to me")}};

// People and what protects them: where they can be.
bool isBystander(const unit::ItemInfo& info) {
  return info.name.ends_with(".people") || info.name.ends_with(".protection");
}

QString withPlace(const unit::ItemInfo& info) {
  return cab::nameOf(info.place) + QLatin1String(": ") +
         wording::insideSentence(cab::nameOf(info.id));
}

// "Cab 1: throttle"; what belongs to no cab and no engine stands alone.
QString withPlace(const unit::ControlInfo& info) {
  const QString name = text(info.name);
  const qsizetype dot = name.indexOf(QLatin1Char('.'));
  if (dot < 1) return cab::nameOf(info.id);
  if (const auto place = unit::findPlace(name.left(dot).toStdString()))
    return cab::nameOf(*place) + QLatin1String(": ") + cab::nameOf(info.id);
  return cab::nameOf(info.id);
}

QVBoxLayout* makeColumn(QWidget* box, const QString& heading) {
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  column->addWidget(makeHeading(heading, box));
  return column;
}

}  // namespace

PeoplePage::PeoplePage(Desk& desk, QWidget* parent) : QWidget(parent), desk_(desk) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 8, 0, 0);
  row->setSpacing(28);
  row->addWidget(makeGuard(), 3);
  row->addWidget(makeSignaller(), 3);
  row->addWidget(makeBystanders(), 4);
  row->addWidget(makeThird(), 4);
  connect(&desk_, &Desk::changed, this, [this] {
    if (isVisible()) refreshValues();
  });
  connect(&desk_, &Desk::runChanged, this, &PeoplePage::refresh);
  refresh();
}

void PeoplePage::addDeeds(QVBoxLayout* column, const QString& words, const std::string& control,
                          const std::vector<std::pair<QString, std::string>>& ways) {
  auto* row = new QHBoxLayout;
  row->setSpacing(6);
  row->addWidget(new QLabel(words, this), 1);
  for (const auto& [word, position] : ways) {
    const QString name =
        QString::fromStdString(control) + QLatin1Char(' ') + QString::fromStdString(position);
    auto* button = makeButton(word, name, column->parentWidget());
    button->setAccessibleName(QStringLiteral("%1: %2").arg(words, word));
    connect(button, &QPushButton::clicked, this, [this, control, position = position] {
      desk_.take(unit::Action{Actor::kGuard, "set", control, position});
    });
    row->addWidget(button);
  }
  column->addLayout(row);
}

QWidget* PeoplePage::makeGuard() {
  auto* box = new QWidget(this);
  auto* column = makeColumn(box, tr("Guard"));
  column->addWidget(makeSecond(tr("Rings to the cab:"), box));
  auto* grid = new QGridLayout;
  grid->setSpacing(6);
  for (std::size_t k = 0; k < kCodes.size(); ++k) {
    const Code& code = kCodes[k];
    const QString strokes = QLatin1String(code.strokes);
    auto* button =
        makeButton(strokes + QLatin1String("  ") + QCoreApplication::translate("Bell", code.words),
                   QStringLiteral("ring ") + strokes, box);
    connect(button, &QPushButton::clicked, this, [this, code] {
      desk_.take(unit::Action{Actor::kGuard, "ring", "bell", code.strokes});
    });
    grid->addWidget(button, static_cast<int>(k / 2), static_cast<int>(k % 2));
  }
  column->addLayout(grid);
  column->addSpacing(8);
  const std::pair<QString, std::string> open{tr("open"), "open"}, shut{tr("shut"), "shut"};
  addDeeds(column, tr("Guard's valve, cab 1"), "cab1.guards_valve", {open, shut});
  addDeeds(column, tr("Guard's valve, cab 2"), "cab2.guards_valve", {open, shut});
  addDeeds(column, tr("Doors, side 1"), "door1", {open, shut});
  addDeeds(column, tr("Doors, side 2"), "door2", {open, shut});
  addDeeds(column, tr("Passenger alarm"), "alarm",
           {{tr("pull"), "pulled"}, {tr("put back"), "flat"}});
  column->addStretch(1);
  return box;
}

QWidget* PeoplePage::makeSignaller() {
  auto* box = new QWidget(this);
  signal_column_ = makeColumn(box, tr("Signaller"));
  signal_column_->addWidget(makeSecond(tr("Signals of the line:"), box));
  signals_ = new QWidget(box);
  signal_column_->addWidget(signals_);
  signal_column_->addStretch(1);
  return box;
}

void PeoplePage::makeSignals() {
  aspects_.clear();
  auto* now = new QWidget(signals_->parentWidget());
  auto* grid = new QGridLayout(now);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setSpacing(6);
  grid->setColumnStretch(1, 1);
  if (const session::LiveRun* run = desk_.run()) {
    int line = 0;
    for (const unit::RouteSignal& signal : run->unit().route().signals) {
      const QString name = QString::fromStdString(signal.name);
      auto* aspect = makeSecond({}, now);
      aspects_.push_back(aspect);
      grid->addWidget(new QLabel(name, now), line, 0);
      grid->addWidget(aspect, line, 1);
      int at = 2;
      for (const auto& [word, to] :
           {std::pair{tr("clear"), "clear"}, std::pair{tr("danger"), "danger"}}) {
        auto* button =
            makeButton(word, QStringLiteral("signal.%1 %2").arg(name, QLatin1String(to)), now);
        button->setAccessibleName(tr("Signal %1: %2").arg(name, word));
        connect(button, &QPushButton::clicked, this, [this, signal_name = signal.name, to = to] {
          desk_.take(unit::Action{Actor::kSignaller, "set", "signal." + signal_name, to});
        });
        grid->addWidget(button, line, at++);
      }
      ++line;
    }
  }
  delete signal_column_->replaceWidget(signals_, now);
  signals_->hide();
  signals_->deleteLater();
  signals_ = now;
}

QWidget* PeoplePage::makeBystanders() {
  auto* box = new QWidget(this);
  auto* column = makeColumn(box, tr("People and flags at the unit"));
  where_ = new ChoiceBox(box);
  where_->setObjectName(QStringLiteral("bystander_where"));
  where_->setAccessibleName(tr("Where somebody is, or something hangs"));
  for (const unit::ItemInfo& info : unit::itemTable())
    if (isBystander(info)) where_->addItem(withPlace(info), static_cast<int>(info.id));
  what_ = new ChoiceBox(box);
  what_->setObjectName(QStringLiteral("bystander_what"));
  what_->setAccessibleName(tr("Who or what"));
  for (QComboBox* choice : {where_, what_}) {
    choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    choice->setMinimumContentsLength(16);
    choice->setMaxVisibleItems(16);
    column->addWidget(choice);
  }
  auto* row = new QHBoxLayout;
  put_there_ = makeButton(tr("Put there"), QStringLiteral("put_there"), box);
  take_away_ = makeButton(tr("Take away"), QStringLiteral("take_away"), box);
  row->addWidget(put_there_);
  row->addWidget(take_away_);
  row->addStretch(1);
  column->addLayout(row);
  column->addSpacing(6);
  column->addWidget(makeSecond(tr("There now:"), box));
  now_there_ = new QLabel(box);
  now_there_->setObjectName(QStringLiteral("now_there"));
  now_there_->setWordWrap(true);
  column->addWidget(now_there_);
  column->addSpacing(14);
  addSpeech(column);
  column->addStretch(1);
  connect(where_, &QComboBox::currentIndexChanged, this, &PeoplePage::showItem);
  connect(put_there_, &QPushButton::clicked, this, [this] {
    if (const auto item = chosenItem())
      desk_.take("condition", std::string(unit::itemInfo(*item).name),
                 what_->currentData().toString().toStdString());
  });
  connect(take_away_, &QPushButton::clicked, this, [this] {
    if (const auto item = chosenItem())
      desk_.take("condition", std::string(unit::itemInfo(*item).name), "good");
  });
  showItem();
  return box;
}

QWidget* PeoplePage::makeThird() {
  auto* box = new QWidget(this);
  auto* column = makeColumn(box, tr("Somebody moves a control"));
  search_ = new QLineEdit(box);
  search_->setObjectName(QStringLiteral("control_search"));
  search_->setAccessibleName(tr("Search for a control"));
  search_->setPlaceholderText(tr("Search: drain, cab 2, cock ..."));
  search_->setClearButtonEnabled(true);
  controls_ = new QListWidget(box);
  controls_->setObjectName(QStringLiteral("control_list"));
  controls_->setAccessibleName(tr("Controls"));
  controls_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  positions_ = new ChoiceBox(box);
  positions_->setObjectName(QStringLiteral("control_position"));
  positions_->setAccessibleName(tr("Where it is put"));
  positions_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  positions_->setMinimumContentsLength(8);
  stands_ = makeSecond({}, box);
  set_ = makeButton(tr("Put it there"), QStringLiteral("set_control"), box);
  column->addWidget(search_);
  column->addWidget(controls_, 1);
  column->addWidget(stands_);
  auto* row = new QHBoxLayout;
  row->addWidget(positions_, 1);
  row->addWidget(set_);
  column->addLayout(row);
  connect(search_, &QLineEdit::textChanged, this, &PeoplePage::fillControls);
  connect(search_, &QLineEdit::returnPressed, controls_, qOverload<>(&QWidget::setFocus));
  connect(controls_, &QListWidget::currentRowChanged, this, &PeoplePage::fillPositions);
  connect(controls_, &QListWidget::itemActivated, positions_, qOverload<>(&QWidget::setFocus));
  connect(set_, &QPushButton::clicked, this, [this] {
    if (const auto control = chosenControl())
      desk_.take("set", std::string(unit::controlInfo(*control).name),
                 positions_->currentData().toString().toStdString());
  });
  fillControls();
  return box;
}

void PeoplePage::fillControls() {
  const QStringList wanted =
      search_->text().simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
  {
    const QSignalBlocker quiet(controls_);
    controls_->clear();
    for (const unit::ControlInfo& info : unit::controlTable()) {
      const QString name = withPlace(info);
      const QString hay =
          name + QLatin1Char(' ') + text(info.name) + QLatin1Char(' ') + cab::textOf(info.id);
      bool fits = true;
      for (const QString& word : wanted) fits = fits && hay.contains(word, Qt::CaseInsensitive);
      if (!fits) continue;
      auto* row = new QListWidgetItem(name, controls_);
      row->setData(Qt::UserRole, static_cast<int>(info.id));
      row->setToolTip(cab::textOf(info.id));
    }
    if (controls_->count() > 0) controls_->setCurrentRow(0);
  }
  fillPositions();
}

void PeoplePage::fillPositions() {
  positions_->clear();
  const auto control = chosenControl();
  set_->setEnabled(control && desk_.isLive());
  if (control) {
    const unit::ControlInfo& info = unit::controlInfo(*control);
    for (const unit::ControlPosition& p : info.positions)
      positions_->addItem(cab::positionText(*control, p.value), text(p.name));
    if (info.whole)
      for (int k = static_cast<int>(info.lowest); k <= static_cast<int>(info.highest); ++k)
        if (k != 0) positions_->addItem(QString::number(k), QString::number(k));
    if (info.continuous && !info.whole)
      for (int k = 1; k < 4; ++k) {
        const double value = info.lowest + (info.highest - info.lowest) * k / 4;
        if (positions_->findText(cab::positionText(*control, value)) < 0)
          positions_->addItem(cab::positionText(*control, value), QString::number(value));
      }
  }
  refreshValues();
}

void PeoplePage::showItem() {
  what_->clear();
  const auto item = chosenItem();
  if (!item) return;
  for (const unit::ItemCondition& c : unit::itemInfo(*item).conditions)
    what_->addItem(cab::translateSeen(QString::fromStdString(c.seen)),
                   QString::fromStdString(c.name));
}

std::optional<unit::Item> PeoplePage::chosenItem() const {
  if (where_->currentIndex() < 0) return std::nullopt;
  return static_cast<unit::Item>(where_->currentData().toInt());
}

std::optional<unit::Control> PeoplePage::chosenControl() const {
  const QListWidgetItem* row = controls_->currentItem();
  if (row == nullptr) return std::nullopt;
  return static_cast<unit::Control>(row->data(Qt::UserRole).toInt());
}

void PeoplePage::refresh() {
  makeSignals();
  refreshValues();
}

void PeoplePage::refreshValues() {
  const session::LiveRun* run = desk_.run();
  for (QPushButton* button : {put_there_, take_away_}) button->setEnabled(desk_.isLive());
  set_->setEnabled(desk_.isLive() && chosenControl());
  if (run == nullptr) {
    now_there_->setText(tr("nothing"));
    stands_->clear();
    return;
  }
  const unit::Unit& unit = run->unit();
  for (std::size_t k = 0; k < aspects_.size() && k < unit.world().signal_clear.size(); ++k) {
    const QString words = unit.world().signal_clear[k] ? tr("at clear") : tr("at danger");
    if (aspects_[k]->text() != words) aspects_[k]->setText(words);
  }
  QStringList there;
  for (const unit::ItemInfo& info : unit::itemTable()) {
    const int n = isBystander(info) ? unit.presentCondition(info.id) : 0;
    if (n < 1) continue;
    const unit::ItemCondition& condition = info.conditions[static_cast<std::size_t>(n - 1)];
    there << cab::nameOf(info.place) + QLatin1String(": ") +
                 cab::translateSeen(QString::fromStdString(condition.seen));
  }
  const QString words =
      there.isEmpty() ? tr("nobody, and nothing hangs on the unit") : there.join(QLatin1Char('\n'));
  if (words != now_there_->text()) now_there_->setText(words);
  const auto control = chosenControl();
  const QString stands =
      control ? tr("Stands at %1").arg(cab::positionText(*control, unit.world().control[*control]))
              : QString();
  if (stands != stands_->text()) stands_->setText(stands);
}

void PeoplePage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refreshValues();
}

}  // namespace cabwright::desk
