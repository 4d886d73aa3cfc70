// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/choose_view.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>
#include <cmath>

#include "cab/panels.h"

namespace cabwright::desktop {

using drawing::Tone;
using scenario::Mode;

ChooseView::ChooseView(QWidget* parent)
    : QWidget(parent),
      scroll_(new QScrollArea(this)),
      side_(new QScrollArea(this)),
      list_(new QWidget(this)),
      cards_(new QButtonGroup(this)),
      ways_(new QButtonGroup(this)),
      title_(new QLabel(this)),
      what_(new QLabel(this)),
      teaches_(new QLabel(this)),
      caution_(new QLabel(this)),
      trainee_(new QLineEdit(this)),
      name_(new QLineEdit(this)),
      start_(new QPushButton(tr("Begin"), this)) {
  setAccessibleName(tr("Choose an exercise"));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(28, 24, 28, 20);
  row->setSpacing(28);
  auto* left = new QVBoxLayout;
  auto* heading = new QLabel(tr("Exercises"), this);
  heading->setObjectName(QStringLiteral("heading"));
  left->addWidget(heading);
  list_->setLayout(new QVBoxLayout);
  list_->layout()->setContentsMargins(0, 0, 8, 0);
  scroll_->setWidget(list_);
  left->addWidget(scroll_, 1);
  row->addLayout(left, 5);
  auto* side = new QWidget(this);
  auto* right = new QVBoxLayout(side);
  right->setContentsMargins(0, 0, 8, 0);
  right->setSpacing(14);
  title_->setObjectName(QStringLiteral("heading"));
  for (QLabel* label : {title_, what_, teaches_, caution_}) label->setWordWrap(true);
  teaches_->setObjectName(QStringLiteral("second"));
  caution_->setObjectName(QStringLiteral("second"));
  right->addWidget(title_);
  right->addWidget(what_);
  right->addWidget(teaches_);
  right->addSpacing(8);
  right->addWidget(new QLabel(tr("How to take it"), this));
  makeWays();
  for (QAbstractButton* way : ways_->buttons()) right->addWidget(way);
  makeSignOn(right);
  right->addStretch(1);
  caution_->setText(tr(
      "A training aid, generic, modelling no particular vehicle: it gives no authority to drive. "
      "The operator's rule book, the vehicle's own manual and a licensed instructor decide."));
  right->addWidget(caution_);
  // In a small window the column is longer than the page.
  side_->setWidget(side);
  for (QScrollArea* area : {scroll_, side_}) {
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
  }
  row->addWidget(side_, 4);
  connect(cards_, &QButtonGroup::idToggled, this, [this] { showChosen(); });
  connect(start_, &QPushButton::clicked, this, &ChooseView::start);
  // Whoever signs on with another number is somebody else.
  connect(trainee_, &QLineEdit::textEdited, name_, &QLineEdit::clear);
  setTheme(theme_);
}

void ChooseView::makeWays() {
  const std::array<std::pair<Mode, CardWords>, 3> ways{
      {{Mode::kGuided,
        {tr("Guided"),
         tr("The next step and its reason are always there, and a pointer to it."),
         {}}},
       {Mode::kPractice,
        {tr("Practice"), tr("On your own; a hint when you ask, time let pass when you wait."), {}}},
       {Mode::kAssessment,
        {tr("Assessment"),
         tr("Silent, in real time, no way back; recorded, and marked at the end."),
         {}}}}};
  for (const auto& [mode, words] : ways) {
    auto* card = new ChoiceCard(words, this);
    ways_->addButton(card, static_cast<int>(mode));
  }
  ways_->button(0)->setChecked(true);
}

void ChooseView::makeSignOn(QVBoxLayout* column) {
  auto* who = new QHBoxLayout;
  who->setSpacing(10);
  auto* number_label = new QLabel(tr("Your &number"), this);
  number_label->setBuddy(trainee_);
  trainee_->setMaxLength(24);
  trainee_->setPlaceholderText(tr("optional"));
  trainee_->setAccessibleName(tr("Your number"));
  auto* name_label = new QLabel(tr("Na&me"), this);
  name_label->setBuddy(name_);
  name_->setMaxLength(80);
  name_->setPlaceholderText(tr("optional"));
  name_->setAccessibleName(tr("Your name"));
  who->addWidget(number_label);
  who->addWidget(trainee_, 2);
  who->addWidget(name_label);
  who->addWidget(name_, 3);
  start_->setDefault(true);
  who->addWidget(start_);
  column->addLayout(who);
  auto* note = new QLabel(
      tr("All records go by the number. The name stands in one place of the file and can be erased "
         "from it; the number stays."),
      this);
  note->setObjectName(QStringLiteral("second"));
  note->setWordWrap(true);
  column->addWidget(note);
}

void ChooseView::setTrainee(const QString& number) {
  if (number == trainee_->text()) return;
  trainee_->setText(number);
  name_->clear();
}

CardWords ChooseView::wordsOf(const Exercise& e) {
  CardWords words;
  words.title = e.title;
  words.level = e.level;
  words.text = e.fault.isEmpty() ? e.purpose : tr("Cannot be taken: %1").arg(e.fault);
  if (!e.best) {
    words.foot = tr("not taken yet");
    return words;
  }
  words.done = true;
  words.good = e.best->passed;
  const QString date = e.best->when.left(10);
  words.foot =
      e.best->passed
          ? tr("passed, best %1 of 100 on %2; taken %n time(s)", nullptr, e.best->times)
                .arg(std::floor(e.best->percent), 0, 'f', 0)
                .arg(date)
          : tr("not passed yet, best %1 of 100 on %2; taken %n time(s)", nullptr, e.best->times)
                .arg(std::floor(e.best->percent), 0, 'f', 0)
                .arg(date);
  return words;
}

void ChooseView::setExercises(std::vector<Exercise> exercises) {
  const Exercise* before = chosen();
  const std::string kept = before != nullptr ? before->name : std::string();
  for (QAbstractButton* card : cards_->buttons()) {
    cards_->removeButton(card);
    card->deleteLater();
  }
  exercises_ = std::move(exercises);
  auto* column = qobject_cast<QVBoxLayout*>(list_->layout());
  while (QLayoutItem* item = column->takeAt(0)) delete item;
  for (std::size_t k = 0; k < exercises_.size(); ++k) {
    auto* card = new ChoiceCard(wordsOf(exercises_[k]), list_);
    card->setTheme(theme_);
    card->setEnabled(exercises_[k].fault.isEmpty());
    cards_->addButton(card, static_cast<int>(k));
    column->addWidget(card);
    if (exercises_[k].name == kept || (kept.empty() && k == 0)) card->setChecked(true);
  }
  column->addStretch(1);
  orderFocus();
  showChosen();
}

// As one reads: what, how, who, and off.
void ChooseView::orderFocus() {
  QWidget* last = nullptr;
  const auto add = [&last](QWidget* next) {
    if (last != nullptr) setTabOrder(last, next);
    last = next;
  };
  for (const QButtonGroup* group : {cards_, ways_})
    for (QAbstractButton* card : group->buttons()) add(card);
  for (QWidget* widget : std::initializer_list<QWidget*>{trainee_, name_, start_}) add(widget);
}

const Exercise* ChooseView::chosen() const {
  const int id = cards_->checkedId();
  return id >= 0 && id < static_cast<int>(exercises_.size())
             ? &exercises_[static_cast<std::size_t>(id)]
             : nullptr;
}

void ChooseView::showChosen() {
  const Exercise* e = chosen();
  start_->setEnabled(e != nullptr && e->fault.isEmpty());
  if (e == nullptr) return;
  title_->setText(e->title);
  QString what = e->summary;
  if (e->minutes_allowed)
    what += QLatin1Char(' ') + tr("Time allowed: %1 minutes.").arg(*e->minutes_allowed, 0, 'f', 0);
  what_->setText(what);
  teaches_->setText(e->teaches.isEmpty()
                        ? QString()
                        : tr("Teaches: %1.").arg(e->teaches.join(QLatin1String(", "))));
  ways_->button(static_cast<int>(Mode::kGuided))->setEnabled(e->has_guide);
  ways_->button(static_cast<int>(Mode::kAssessment))->setEnabled(e->can_be_assessed);
  if (ways_->checkedButton() != nullptr && !ways_->checkedButton()->isEnabled())
    ways_->button(static_cast<int>(Mode::kPractice))->setChecked(true);
}

bool ChooseView::choose(const std::string& name, Mode mode) {
  for (std::size_t k = 0; k < exercises_.size(); ++k) {
    if (exercises_[k].name != name) continue;
    cards_->button(static_cast<int>(k))->setChecked(true);
    ways_->button(static_cast<int>(mode))->setChecked(true);
    return true;
  }
  return false;
}

void ChooseView::start() {
  const Exercise* e = chosen();
  if (e == nullptr || !e->fault.isEmpty()) return;
  Q_EMIT startAsked(e->name, static_cast<Mode>(ways_->checkedId()), trainee_->text().simplified(),
                    name_->text().simplified());
}

void ChooseView::setTheme(drawing::Theme theme) {
  theme_ = theme;
  const int px = std::max(14, fontInfo().pixelSize());
  QString sheet = cab::panelStyle(theme, px);
  sheet +=
      QStringLiteral(
          "QWidget { background: %1; } QLabel#heading { font-size: %2px; }"
          "QScrollBar:vertical { background: %1; width: 12px; }"
          "QScrollBar::handle:vertical { background: %3; border-radius: 4px; min-height: 32px; }"
          "QScrollBar::add-line, QScrollBar::sub-line { height: 0; }")
          .arg(drawing::colorOf(theme, Tone::kPaper).name(), QString::number(px * 17 / 10),
               drawing::colorOf(theme, Tone::kRule).name());
  setStyleSheet(sheet);
  for (QButtonGroup* group : {cards_, ways_}) {
    for (QAbstractButton* b : group->buttons()) static_cast<ChoiceCard*>(b)->setTheme(theme);
  }
  update();
}

void ChooseView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (QAbstractButton* card = cards_->checkedButton()) card->setFocus();
}

// Enter begins, wherever the focus is: a line that is written in lets it through to here.
void ChooseView::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    start();
  } else {
    QWidget::keyPressEvent(event);
  }
}

void ChooseView::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  painter.fillRect(rect(), drawing::colorOf(theme_, Tone::kPaper));
  drawing::Pen pen(painter, theme_);
  pen.rect(QRectF(rect()).adjusted(12, 10, -12, -10), {1.5, Tone::kInk, {}, false});
}

}  // namespace cabwright::desktop
