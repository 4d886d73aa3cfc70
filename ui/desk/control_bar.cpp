// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/control_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

#include "cab/you_parts.h"
#include "desk/desk_look.h"
#include "session/desk_actions.h"

namespace cabwright::desk {
namespace {

QString text(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

constexpr std::size_t kFrozen = 0;  // of unit::kPaces

std::size_t numberOf(const unit::Pace& pace) {
  return static_cast<std::size_t>(std::ranges::find(unit::kPaces, pace) - unit::kPaces.begin());
}

}  // namespace

ControlBar::ControlBar(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      freeze_(makeButton(tr("Freeze"), QStringLiteral("freeze"), this)),
      mark_(makeButton(tr("Set mark"), QStringLiteral("set_mark"), this)),
      back_(makeButton(tr("Go back"), QStringLiteral("go_back"), this)),
      step_in_(makeButton(tr("I stepped in"), QStringLiteral("step_in"), this)),
      paces_(new QButtonGroup(this)),
      mark_name_(new QLineEdit(this)),
      remark_(new QLineEdit(this)),
      marks_(new QComboBox(this)) {
  freeze_->setCheckable(true);
  freeze_->setToolTip(tr("Ctrl+Space"));
  freeze_->setAccessibleDescription(tr("Stops the time of the run, or lets it go on"));
  mark_name_->setObjectName(QStringLiteral("mark_name"));
  mark_name_->setAccessibleName(tr("Name of the mark"));
  mark_name_->setPlaceholderText(tr("Name of a mark (F4)"));
  mark_name_->setMaxLength(70);
  marks_->setObjectName(QStringLiteral("marks"));
  marks_->setAccessibleName(tr("Marks of this run"));
  marks_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  marks_->setMinimumContentsLength(18);
  remark_->setObjectName(QStringLiteral("remark"));
  remark_->setAccessibleName(tr("Remark at this second"));
  remark_->setPlaceholderText(tr("Remark at this second: F2, write, Enter"));
  remark_->setMaxLength(400);
  step_in_->setAccessibleDescription(
      tr("Ends the unaided part of the run; what stands in the remark says why"));
  makeRows();
  connect(freeze_, &QPushButton::clicked, this, &ControlBar::toggleFrozen);
  connect(mark_, &QPushButton::clicked, this, &ControlBar::setMark);
  connect(mark_name_, &QLineEdit::returnPressed, this, &ControlBar::setMark);
  connect(remark_, &QLineEdit::returnPressed, this, &ControlBar::sayRemark);
  connect(step_in_, &QPushButton::clicked, this, &ControlBar::intervene);
  connect(back_, &QPushButton::clicked, this, [this] {
    const int chosen = marks_->currentIndex();
    const session::LiveRun* run = desk_.run();
    if (run == nullptr || chosen < 0) return;
    const auto& marks = run->marks();
    if (static_cast<std::size_t>(chosen) < marks.size())
      desk_.goBack(marks[marks.size() - 1 - static_cast<std::size_t>(chosen)]);
  });
  connect(&desk_, &Desk::changed, this, &ControlBar::refresh);
  connect(&desk_, &Desk::runChanged, this, &ControlBar::forget);
  forget();
}

void ControlBar::makeRows() {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  auto* row = new QHBoxLayout;
  row->setSpacing(6);
  row->addWidget(freeze_);
  row->addSpacing(8);
  for (std::size_t k = kFrozen + 1; k < unit::kPaces.size(); ++k) {
    const QString word = text(unit::kPaces[k].word);
    auto* button = makeButton(QStringLiteral("×") + word, QStringLiteral("pace ") + word, this);
    button->setCheckable(true);
    button->setAccessibleName(tr("Time runs %1 times").arg(word));
    paces_->addButton(button, static_cast<int>(k));
    row->addWidget(button);
    connect(button, &QPushButton::clicked, this, [this, k] { setPace(unit::kPaces[k]); });
  }
  row->addSpacing(14);
  row->addWidget(mark_name_, 3);
  row->addWidget(mark_);
  row->addSpacing(8);
  row->addWidget(marks_, 3);
  row->addWidget(back_);
  column->addLayout(row);
  auto* second = new QHBoxLayout;
  second->setSpacing(6);
  second->addWidget(remark_, 1);
  second->addSpacing(8);
  second->addWidget(step_in_);
  column->addLayout(second);
}

void ControlBar::setPace(const unit::Pace& pace) {
  desk_.take(session::makePace(pace));
  refresh();  // a refused button does not stay pressed
}

void ControlBar::toggleFrozen() {
  if (const session::LiveRun* run = desk_.run()) {
    const bool frozen = !(run->pace().rate > 0);
    if (!frozen) before_freeze_ = run->pace();
    setPace(frozen ? before_freeze_ : unit::kPaces[kFrozen]);
  } else {
    refresh();
  }
}

void ControlBar::changePace(int by) {
  const session::LiveRun* run = desk_.run();
  if (run == nullptr) return;
  const auto wanted = static_cast<int>(numberOf(run->pace())) + by;
  if (wanted > static_cast<int>(kFrozen) && wanted < static_cast<int>(unit::kPaces.size()))
    setPace(unit::kPaces[static_cast<std::size_t>(wanted)]);
}

void ControlBar::focusRemark() {
  remark_->setFocus(Qt::ShortcutFocusReason);
  remark_->selectAll();
}

void ControlBar::focusMark() {
  mark_name_->setFocus(Qt::ShortcutFocusReason);
  mark_name_->selectAll();
}

void ControlBar::setMark() {
  const session::LiveRun* run = desk_.run();
  QString name = mark_name_->text().simplified();
  if (name.isEmpty() && run != nullptr) name = tr("mark %1").arg(run->marks().size() + 1);
  if (desk_.take(session::makeMark(name.toStdString()))) mark_name_->clear();
}

void ControlBar::sayRemark() {
  const QString words = remark_->text().simplified();
  if (words.isEmpty()) return;
  if (desk_.take(session::makeRemark(words.toStdString()))) remark_->clear();
}

void ControlBar::intervene() {
  QString words = remark_->text().simplified();
  if (words.isEmpty()) words = tr("without a word");
  if (desk_.take(session::makeIntervene(words.toStdString()))) remark_->clear();
}

void ControlBar::forget() {
  before_freeze_ = unit::kStandardPace;
  shown_marks_ = 0;
  marks_->clear();
  refresh();
}

void ControlBar::refresh() {
  const session::LiveRun* run = desk_.run();
  const bool live = desk_.isLive();
  const unit::Pace pace = run != nullptr ? run->pace() : unit::kStandardPace;
  const std::size_t number = numberOf(pace);
  freeze_->setChecked(number == kFrozen);
  freeze_->setText(number == kFrozen ? tr("Go on") : tr("Freeze"));
  paces_->setExclusive(false);
  for (QAbstractButton* button : paces_->buttons())
    button->setChecked(live && paces_->id(button) == static_cast<int>(number));
  paces_->setExclusive(number != kFrozen && live);
  const std::size_t count = run != nullptr ? run->marks().size() : 0;
  back_->setEnabled(live && count > 0);
  for (QWidget* part : std::initializer_list<QWidget*>{freeze_, mark_, step_in_})
    part->setEnabled(live);
  if (count == shown_marks_ && marks_->count() > 0) return;
  shown_marks_ = count;
  marks_->clear();
  marks_->setEnabled(count > 0);
  if (count == 0) {
    marks_->addItem(tr("no marks yet"));
    return;
  }
  for (std::size_t k = count; k-- > 0;) {
    const session::TimeMark& mark = run->marks()[k];
    marks_->addItem(cab::clockText(mark.tick) + QLatin1Char(' ') +
                    QString::fromStdString(mark.name));
  }
}

}  // namespace cabwright::desk
