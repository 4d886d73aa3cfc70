// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/panels.h"

#include <QHBoxLayout>
#include <algorithm>
#include <cmath>

#include "cab/names.h"
#include "drawing/boxes.h"
#include "drawing/style.h"

namespace cabwright::cab {

namespace {

QString fromText(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

}  // namespace

// A panel lies on the sheet as a slip of other paper: face and paper change places.
QString panelStyle(drawing::Theme theme, int text_px) {
  return drawing::fillStyle(QStringLiteral("QWidget { background: @face; }"), theme, text_px) +
         drawing::commonStyle(theme, text_px) +
         drawing::fillStyle(
             QStringLiteral(
                 "QFrame#panel { border: 2px solid @ink; border-radius: 4px; }"
                 "QLabel#title { font-size: @text; font-weight: bold; }"
                 "QListWidget, QLineEdit, QComboBox, QAbstractSpinBox, QTableView, QTreeView {"
                 " background: @paper; border: 1px solid @rule; border-radius: 3px; padding: 3px;"
                 " selection-background-color: @wash; selection-color: @ink; }"
                 "QTreeView::item:selected, QTableView::item:selected { background: @wash;"
                 " color: @ink; }"
                 "QListWidget:focus, QLineEdit:focus, QComboBox:focus, QAbstractSpinBox:focus,"
                 " QTreeView:focus, QTableView:focus { border: 2px solid @hand; padding: 2px; }"
                 "QComboBox QAbstractItemView, QCheckBox::indicator { background: @paper; }"
                 "QSlider:horizontal { min-height: 22px; }"
                 "QSlider::groove:horizontal { height: 4px; border-radius: 2px;"
                 " background: @rule; }"
                 "QSlider::sub-page:horizontal { background: @hand; border-radius: 2px; }"
                 "QSlider::handle:horizontal { width: 14px; margin: -7px 0; border-radius: 8px;"
                 " border: 2px solid @ink; background: @face; }"
                 "QSlider::handle:horizontal:focus { border-color: @hand; background: @wash; }"
                 "QPushButton { background: @paper; padding: 5px 14px; }"
                 "QPushButton:default { border-width: 2px; }"
                 "QPushButton:focus { padding: 3px 12px; }"),
             theme, text_px);
}

Panel::Panel(Seat& seat, const SheetStyle& style, const QString& title, QWidget* parent)
    : QFrame(parent), seat_(seat), style_(style), column_(new QVBoxLayout(this)) {
  setObjectName(QStringLiteral("panel"));
  setAccessibleName(title);
  setFocusPolicy(Qt::StrongFocus);
  auto* head = new QLabel(title, this);
  head->setObjectName(QStringLiteral("title"));
  column_->addWidget(head);
  restyle();
}

void Panel::restyle() {
  const double px_of_sheet = drawing::kText * style_.frame.scale * style_.reading;
  const int px = std::max(13, static_cast<int>(std::lround(px_of_sheet)));
  setStyleSheet(panelStyle(style_.theme, px));
}

void Panel::addText(const QString& words) {
  auto* label = new QLabel(words, this);
  label->setObjectName(QStringLiteral("second"));
  label->setWordWrap(true);
  column_->addWidget(label);
}

void Panel::addButtons(const QString& act, const std::function<void()>& done) {
  auto* row = new QHBoxLayout;
  auto* leave = new QPushButton(tr("Close"), this);
  go_ = new QPushButton(act, this);
  go_->setDefault(true);
  row->addStretch();
  row->addWidget(leave);
  row->addWidget(go_);
  column_->addLayout(row);
  connect(leave, &QPushButton::clicked, this, &Panel::closed);
  connect(go_, &QPushButton::clicked, this, done);
}

void Panel::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    Q_EMIT closed();
    return;
  }
  // Enter does what the panel is for; in a list its own row says so.
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (enter && isVisible() && go_ != nullptr && findChild<QListWidget*>() == nullptr) go_->click();
  event->accept();  // letters typed here move no lever
}

SayPanel::SayPanel(Seat& seat, const SheetStyle& style, QWidget* parent)
    : Panel(seat, style, tr("Say or do"), parent), list_(new QListWidget(this)) {
  list_->setAccessibleName(tr("What can be said or done"));
  // What the next step asks for stands out, for who is led.
  std::vector<unit::Phrase> next;
  if (seat.mode() == scenario::Mode::kGuided && seat.guide() != nullptr)
    next = seat.guide()->openPhrases(seat.frame());
  for (const unit::PhraseInfo& info : unit::phraseTable()) {
    const QString verb = info.verb == unit::PhraseVerb::kSay ? tr("Say") : tr("Do");
    auto* row = new QListWidgetItem(verb + QLatin1String(": ") + nameOf(info.id), list_);
    row->setData(Qt::UserRole, static_cast<int>(info.id));
    row->setToolTip(textOf(info));
    if (std::ranges::find(next, info.id) == next.end()) continue;
    QFont bold = list_->font();
    bold.setBold(true);
    row->setFont(bold);
  }
  for (const char* code : {"1", "2", "3", "4", "6", "3-3"}) {
    auto* row = new QListWidgetItem(tr("Ring to the guard: %1").arg(QLatin1String(code)), list_);
    row->setData(Qt::UserRole, -1);
    row->setData(Qt::UserRole + 1, QString::fromLatin1(code));
  }
  list_->setCurrentRow(0);
  column()->addWidget(list_);
  connect(list_, &QListWidget::itemActivated, this, [this] { useCurrent(); });
  addButtons(tr("Say it"), [this] { useCurrent(); });
}

void SayPanel::useCurrent() {
  const QListWidgetItem* row = list_->currentItem();
  if (row == nullptr) return;
  const int which = row->data(Qt::UserRole).toInt();
  Q_EMIT closed();
  if (which < 0) {
    const int cab = unit::cabOf(seat().place());
    const std::string bell = cab == 1 ? "cab2.bell" : "cab1.bell";
    seat().act("ring", bell, row->data(Qt::UserRole + 1).toString().toStdString());
    return;
  }
  for (const unit::PhraseInfo& info : unit::phraseTable()) {
    if (static_cast<int>(info.id) != which) continue;
    seat().act(info.verb == unit::PhraseVerb::kSay ? "say" : "do", std::string(info.name));
  }
}

ReadingPanel::ReadingPanel(Seat& seat, const SheetStyle& style, QWidget* parent)
    : Panel(seat, style, tr("Enter a reading"), parent),
      what_(new drawing::ChoiceBox(this)),
      value_(new QDoubleSpinBox(this)) {
  what_->setAccessibleName(tr("What was read"));
  what_->addItem(tr("Leakage in lap, inHg a minute"), QStringLiteral("leak"));
  what_->addItem(tr("Train pipe, inHg"), QStringLiteral("train_pipe"));
  what_->addItem(tr("Release pipe, inHg"), QStringLiteral("release_pipe"));
  what_->addItem(tr("Control air, psi"), QStringLiteral("air"));
  what_->addItem(tr("Safety device, s to the brake"), QStringLiteral("device"));
  what_->addItem(tr("Battery, V"), QStringLiteral("volts"));
  value_->setAccessibleName(tr("Reading"));
  value_->setRange(0, 200);
  value_->setDecimals(1);
  value_->setSingleStep(0.1);  // whatever can be written can be reached by its arrows and the wheel
  column()->addWidget(what_);
  column()->addWidget(value_);
  addButtons(tr("Enter"), [this] {
    const std::string what = what_->currentData().toString().toStdString();
    const std::string figure = QString::number(value_->value(), 'f', 1).toStdString();
    Q_EMIT closed();
    this->seat().act("note", what, figure);
  });
}

BookPanel::BookPanel(Seat& seat, const SheetStyle& style, QWidget* parent)
    : Panel(seat, style, tr("Repair book"), parent),
      item_(new drawing::ChoiceBox(this)),
      text_(new QLineEdit(this)) {
  item_->setAccessibleName(tr("About what"));
  text_->setAccessibleName(tr("What, where, what was done, who was told"));
  text_->setPlaceholderText(tr("What, where, what was done, who was told"));
  text_->setMaxLength(400);
  // What the trainee found comes first, then everything that was looked at; never a hint.
  const unit::World& w = seat.unit().world();
  const auto add = [&](unit::Item i) {
    item_->addItem(nameOf(i) + QLatin1String(", ") + nameOf(unit::itemInfo(i).place),
                   fromText(unit::itemInfo(i).name));
  };
  for (const unit::ItemInfo& info : unit::itemTable()) {
    const unit::Verdict v = w.item[unit::indexOf(info.id)].verdict;
    if (v == unit::Verdict::kDefect || v == unit::Verdict::kUnsure) add(info.id);
  }
  for (const unit::ItemInfo& info : unit::itemTable()) {
    const unit::ItemState& state = w.item[unit::indexOf(info.id)];
    if (state.looked && state.verdict != unit::Verdict::kDefect &&
        state.verdict != unit::Verdict::kUnsure)
      add(info.id);
  }
  item_->addItem(tr("Something else"), QStringLiteral("general"));
  column()->addWidget(item_);
  column()->addWidget(text_);
  const auto enter = [this] {
    if (text_->text().trimmed().isEmpty()) {
      text_->setFocus();
      return;
    }
    const std::string about = item_->currentData().toString().toStdString();
    const std::string words = text_->text().simplified().toStdString();
    Q_EMIT closed();
    this->seat().act("book", about, words);
  };
  connect(text_, &QLineEdit::returnPressed, this, enter);
  addButtons(tr("Write it down"), enter);
}

DecisionPanel::DecisionPanel(Seat& seat, const SheetStyle& style, QWidget* parent)
    : Panel(seat, style, tr("What you decide"), parent),
      choice_(new QListWidget(this)),
      reason_(new QLineEdit(this)) {
  choice_->setAccessibleName(tr("Decision"));
  for (const auto& [word, text] :
       {std::pair{QStringLiteral("go_on"), tr("The unit goes on")},
        std::pair{QStringLiteral("restricted"), tr("It goes on, restricted")},
        std::pair{QStringLiteral("fail"), tr("It fails: it does not go")}}) {
    auto* row = new QListWidgetItem(text, choice_);
    row->setData(Qt::UserRole, word);
  }
  choice_->setCurrentRow(0);
  choice_->setMaximumHeight(choice_->sizeHintForRow(0) * 3 + 16);
  reason_->setAccessibleName(tr("Your reason"));
  reason_->setPlaceholderText(tr("Your reason, in your own words"));
  reason_->setMaxLength(400);
  column()->addWidget(choice_);
  column()->addWidget(reason_);
  const auto decide = [this] {
    if (choice_->currentItem() == nullptr) return;
    const std::string word = choice_->currentItem()->data(Qt::UserRole).toString().toStdString();
    const std::string why = reason_->text().simplified().toStdString();
    Q_EMIT closed();
    this->seat().act("decide", word, why);
  };
  connect(choice_, &QListWidget::itemActivated, reason_, [this] { reason_->setFocus(); });
  connect(reason_, &QLineEdit::returnPressed, this, decide);
  addButtons(tr("Decide"), decide);
}

ThingPanel::ThingPanel(Seat& seat, const SheetStyle& style, std::optional<unit::Object> only,
                       QWidget* parent)
    : Panel(seat, style, only ? nameOf(*only) : tr("Loose things"), parent),
      list_(new QListWidget(this)) {
  list_->setAccessibleName(tr("What can be done with it here"));
  for (const unit::ObjectInfo& info : unit::objectTable()) {
    if (!only || *only == info.id) addDeeds(info.id);
  }
  column()->addWidget(list_);
  if (deeds_.empty()) addText(tr("Nothing can be done with it here."));
  list_->setCurrentRow(0);
  const auto use = [this] {
    const int row = list_->currentRow();
    if (row < 0) return;
    const Deed deed = deeds_[static_cast<std::size_t>(row)];
    Q_EMIT closed();
    this->seat().act(deed.verb, deed.object, deed.argument);
  };
  connect(list_, &QListWidget::itemActivated, this, use);
  addButtons(tr("Do it"), use);
}

void ThingPanel::addDeeds(unit::Object object) {
  const std::string name(unit::objectInfo(object).name);
  const QString thing = nameOf(object);
  const auto add = [&](const QString& words, const char* verb, std::string argument) {
    list_->addItem(words);
    deeds_.push_back({verb, name, std::move(argument)});
  };
  if (seat().isHere(object)) add(tr("Take: %1").arg(thing), "take", {});
  if (!seat().isCarried(object)) return;
  const unit::Place place = seat().place();
  const std::string here(unit::placeInfo(place).name);
  if (!seat().run().unit().findActionFault({unit::Actor::kTrainee, "insert", name, here}))
    add(tr("Put in: %1").arg(thing), "insert", here);
  add(tr("Lay down here: %1").arg(thing), "put", {});
  if (object != unit::Object::kLamp) return;
  const bool lit = seat().value(unit::Control::kHandLamp) > 0.5;
  list_->addItem(lit ? tr("Switch off: %1").arg(thing) : tr("Switch on: %1").arg(thing));
  deeds_.push_back({"set", "lamp", lit ? "off" : "on"});
}

}  // namespace cabwright::cab
