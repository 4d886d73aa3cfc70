// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/shelf_sessions.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QStyle>
#include <QVBoxLayout>

#include "review_room/shelf_look.h"

namespace cabwright::review_room {

ShelfSessions::ShelfSessions(const after::SheetLook& look, ShelfModel& model, ShelfLoader& loader,
                             QWidget* parent)
    : QWidget(parent),
      look_(look),
      model_(model),
      loader_(loader),
      table_(new ShelfTable(look_, model, this)),
      marking_(new ShelfMarking(this)),
      open_(makeShelfButton(tr("Open"), QStringLiteral("open"), this)),
      copy_(makeShelfButton(tr("Copy path"), QStringLiteral("copy"), this)),
      mark_(makeShelfButton(tr("Mark again"), QStringLiteral("mark"), this)),
      progress_(makeShelfButton(tr("Progress"), QStringLiteral("progress"), this)),
      said_(makeSecondLabel({}, this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(8);
  column->addWidget(table_, 1);
  column->addWidget(marking_);
  marking_->hide();
  auto* foot = new QHBoxLayout;
  open_->setToolTip(tr("Enter, or a double click"));
  copy_->setToolTip(tr("Ctrl+C"));
  mark_->setToolTip(tr("By its own rules, with this program; nothing is changed"));
  said_->setTextFormat(Qt::PlainText);
  for (QPushButton* button : {open_, copy_, mark_, progress_}) foot->addWidget(button);
  foot->addSpacing(12);
  foot->addWidget(said_, 1);
  column->addLayout(foot);
  setFocusProxy(table_);
  connect(table_, &ShelfTable::rowOpened, this, &ShelfSessions::openRow);
  connect(table_, &ShelfTable::rowsChosen, this, &ShelfSessions::refresh);
  connect(&model_, &ShelfModel::shownChanged, this, &ShelfSessions::refresh);
  connect(&loader_, &ShelfLoader::busyChanged, this, &ShelfSessions::refresh);
  connect(open_, &QPushButton::clicked, this, [this] { openRow(table_->currentIndex().row()); });
  connect(copy_, &QPushButton::clicked, this, &ShelfSessions::copyPaths);
  connect(mark_, &QPushButton::clicked, this, &ShelfSessions::markChosen);
  connect(progress_, &QPushButton::clicked, this, &ShelfSessions::showProgressOf);
  connect(&loader_, &ShelfLoader::marked, marking_, &ShelfMarking::add);
  const auto end = [this](bool given_up) {
    if (marks_) marking_->end(given_up);
    marks_ = false;
  };
  connect(&loader_, &ShelfLoader::allMarked, this, [end] { end(false); });
  connect(&loader_, &ShelfLoader::givenUp, this, [end] { end(true); });
  connect(marking_, &ShelfMarking::openAsked, this, &ShelfSessions::openAsked);
  connect(marking_, &ShelfMarking::closed, this, [this] {
    if (marks_) loader_.giveUp();
    marking_->hide();
    table_->setFocus();
  });
  refresh();
}

void ShelfSessions::restyle() { table_->restyle(); }

bool ShelfSessions::choose(const QString& file) {
  const int row = model_.findShown(file);
  if (row < 0) return false;
  table_->selectRow(row);
  table_->scrollTo(model_.index(row, 0), QAbstractItemView::PositionAtCenter);
  return true;
}

void ShelfSessions::openRow(int row) {
  if (row < 0 || row >= model_.rowCount()) return;
  const review::ShelfItem& item = model_.row(row).item;
  if (model_.isRunning(row)) {
    say(tr("This session is being recorded. It can be looked at when it has ended."), true);
  } else if (item.outcome == review::ShelfOutcome::kBroken) {
    say(tr("It cannot be read: %1").arg(QString::fromStdString(item.why_broken)), true);
  } else {
    Q_EMIT openAsked(QString::fromStdString(item.file.string()));
  }
}

void ShelfSessions::copyPaths() {
  QStringList paths;
  for (const int row : table_->chosenRows())
    paths << QString::fromStdString(model_.row(row).item.file.string());
  if (paths.isEmpty()) return;
  QGuiApplication::clipboard()->setText(paths.join(QLatin1Char('\n')));
  say(paths.size() == 1 ? tr("Copied: %1").arg(paths.front())
                        : tr("%n path(s) copied", nullptr, static_cast<int>(paths.size())),
      false);
}

void ShelfSessions::markChosen() {
  std::vector<std::filesystem::path> files;
  for (const int row : table_->chosenRows())
    if (!model_.isRunning(row)) files.push_back(model_.row(row).item.file);
  if (files.empty() || loader_.isBusy()) return;
  marks_ = true;
  marking_->begin(static_cast<int>(files.size()));
  marking_->show();
  loader_.mark(std::move(files));
}

void ShelfSessions::showProgressOf() {
  const QModelIndex at = table_->currentIndex();
  if (!at.isValid()) return;
  const review::ShelfItem& item = model_.row(at.row()).item;
  Q_EMIT progressAsked(QString::fromStdString(review::traineeKey(item)),
                       QString::fromStdString(item.scenario));
}

QString ShelfSessions::aboutChosen(const std::vector<int>& rows, bool& bad) const {
  if (model_.allRows().empty())
    return loader_.isBusy() ? QString() : tr("There are no sessions in these folders.");
  if (model_.rowCount() == 0) return tr("No session fits. Show all to see the others.");
  if (rows.size() != 1) {
    return rows.empty() ? QString()
                        : tr("%n session(s) chosen", nullptr, static_cast<int>(rows.size()));
  }
  const review::ShelfItem& item = model_.row(rows.front()).item;
  bad = item.outcome == review::ShelfOutcome::kBroken;
  if (bad) return tr("It cannot be read: %1").arg(QString::fromStdString(item.why_broken));
  return QString::fromStdString(item.file.string());
}

void ShelfSessions::refresh() {
  const std::vector<int> rows = table_->chosenRows();
  bool bad = false;
  const QString words = aboutChosen(rows, bad);
  say(words, bad);
  open_->setEnabled(rows.size() == 1);
  copy_->setEnabled(!rows.empty());
  mark_->setEnabled(!rows.empty() && !loader_.isBusy());
  const bool has_trainee =
      rows.size() == 1 && !review::traineeKey(model_.row(rows.front()).item).empty();
  progress_->setEnabled(has_trainee);
}

void ShelfSessions::say(const QString& words, bool bad) {
  said_->setText(words);
  const QString name = bad ? QStringLiteral("bad") : QStringLiteral("second");
  if (said_->objectName() == name) return;
  said_->setObjectName(name);
  said_->style()->unpolish(said_);
  said_->style()->polish(said_);
}

void ShelfSessions::keyPressEvent(QKeyEvent* event) {
  if (event->matches(QKeySequence::Copy)) {
    copyPaths();
  } else {
    QWidget::keyPressEvent(event);
  }
}

}  // namespace cabwright::review_room
