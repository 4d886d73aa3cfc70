// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/progress_weak.h"

#include <QHBoxLayout>
#include <QVBoxLayout>
#include <cmath>

#include "after/words.h"
#include "review_room/shelf_look.h"
#include "session/record.h"

namespace cabwright::review_room {
namespace {

QString fromText(const std::string& text) { return QString::fromStdString(text); }

QString titleOf(const review::WeakLine& line) {
  return line.title.empty() ? fromText(line.id) : after::sheetWords(line.title);
}

}  // namespace

WeakPage::WeakPage(const after::SheetLook& look, const ShelfModel& model, QWidget* parent)
    : QWidget(parent),
      look_(look),
      model_(model),
      heading_(new QLabel(this)),
      line_heading_(new QLabel(this)),
      never_heading_(new QLabel(this)),
      lines_(new after::RowsTable(look_,
                                  {{tr("Line"), 0},
                                   {tr("Share broken"), 180},
                                   {QString(), 72, true},
                                   {tr("Broken"), 84, true},
                                   {tr("Exercised"), 108, true}},
                                  {-1, 1}, tr("Lines by share broken"), this)),
      broken_in_(new after::RowsTable(
          look_, {{tr("Trainee"), 150}, {tr("Date and time"), 214}, {tr("Exercise"), 0}}, {},
          tr("Sessions in which it was broken"), this)),
      never_(new after::RowsTable(look_, {{tr("Line"), 0}, {tr("On sheets"), 106, true}}, {},
                                  tr("Lines never exercised"), this)) {
  for (QLabel* label : {heading_, line_heading_, never_heading_}) {
    label->setObjectName(QStringLiteral("heading"));
    label->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  }
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 4, 0, 0);
  row->setSpacing(20);
  auto* left = new QVBoxLayout;
  left->addWidget(heading_);
  left->addWidget(lines_, 1);
  auto* right = new QVBoxLayout;
  right->addWidget(line_heading_);
  right->addWidget(broken_in_, 3);
  right->addWidget(never_heading_);
  right->addWidget(never_, 2);
  row->addLayout(left, 6);
  row->addLayout(right, 5);
  setFocusProxy(lines_);
  connect(lines_, &after::RowsTable::rowChosen, this, &WeakPage::showLine);
  connect(lines_, &after::RowsTable::rowOpened, this, [this] {
    if (!broken_in_->rows().empty()) broken_in_->setFocus();
  });
  connect(broken_in_, &after::RowsTable::rowOpened, this, [this](int at) {
    const int line = lines_->currentIndex().row();
    if (line < 0 || line >= static_cast<int>(found_.exercised.size())) return;
    const auto& in = found_.exercised[static_cast<std::size_t>(line)].broken_in;
    Q_EMIT openAsked(fromText(in[static_cast<std::size_t>(at)]->file.string()));
  });
}

void WeakPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void WeakPage::restyle() {
  for (after::RowsTable* table : {lines_, broken_in_, never_}) table->restyle();
}

void WeakPage::refresh() {
  // The model's rows may be gone: nothing of them is kept while it is not seen.
  found_ = isVisible() ? review::findWeakLines(model_.shownItems()) : review::WeakLines();
  heading_->setText(found_.sessions == 0
                        ? tr("No session that is shown has a mark sheet.")
                        : tr("Lines of %n session(s) by share broken", nullptr, found_.sessions));
  std::vector<after::TableRow> rows, never;
  for (const review::WeakLine& line : found_.exercised) {
    const QString share = QStringLiteral("%1 %").arg(std::lround(line.share() * 100));
    QString title = titleOf(line);
    if (line.critical) title += tr(" (critical)");
    after::TableRow row;
    row.cells = {title, QString(), share, QString::number(line.broken),
                 QString::number(line.exercised)};
    row.share = line.share();
    row.strong = line.critical;
    rows.push_back(std::move(row));
  }
  for (const review::WeakLine& line : found_.never) {
    after::TableRow row;
    row.cells = {titleOf(line), QString::number(line.not_exercised)};
    never.push_back(std::move(row));
  }
  never_heading_->setText(
      tr("Never exercised: %n line(s)", nullptr, static_cast<int>(never.size())));
  lines_->replaceRows(std::move(rows));
  never_->replaceRows(std::move(never));
  showLine(lines_->currentIndex().row());
}

void WeakPage::showLine(int at) {
  if (at < 0 || at >= static_cast<int>(found_.exercised.size())) {
    broken_in_->replaceRows({});
    line_heading_->setText(tr("No line is chosen"));
    return;
  }
  const review::WeakLine& line = found_.exercised[static_cast<std::size_t>(at)];
  std::vector<after::TableRow> rows;
  for (const review::ShelfItem* item : line.broken_in) {
    const QDateTime begun = QDateTime::fromString(fromText(item->started_utc), Qt::ISODate);
    after::TableRow row;
    row.cells = {fromText(session::traineeWords(item->number, item->trainee)),
                 momentText(begun.toLocalTime()), after::exerciseWords(item->scenario)};
    rows.push_back(std::move(row));
  }
  line_heading_->setText(
      rows.empty() ? tr("%1: never broken").arg(titleOf(line))
                   : tr("%1: broken in %n session(s)", nullptr, static_cast<int>(rows.size()))
                         .arg(titleOf(line)));
  broken_in_->replaceRows(std::move(rows));
}

}  // namespace cabwright::review_room
