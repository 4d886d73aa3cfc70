// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/recency_page.h"

#include <QLocale>
#include <QVBoxLayout>
#include <algorithm>

#include "after/words.h"
#include "review_room/recency_day.h"
#include "review_room/shelf_look.h"
#include "session/record.h"

namespace cabwright::review_room {

using drawing::VerdictSign;
using review::Day;

namespace {

constexpr int kSoonDays = 30;

QString fromText(const std::string& text) { return QString::fromStdString(text); }

QString leftText(int days) {
  if (days < 0) return RecencyPage::tr("%n day(s) over", nullptr, -days);
  return days == 0 ? RecencyPage::tr("today is the last day")
                   : RecencyPage::tr("%n day(s) left", nullptr, days);
}

after::TableRow rowOf(const review::DuePass& pass) {
  after::TableRow row;
  row.cells = {fromText(session::traineeWords(pass.item->number, pass.item->trainee)),
               after::exerciseWords(pass.exercise), dayText(pass.passed), dayText(pass.due),
               leftText(pass.days_left)};
  row.sign = pass.days_left < 0            ? VerdictSign::kDefect
             : pass.days_left <= kSoonDays ? VerdictSign::kUnsure
                                           : VerdictSign::kGood;
  row.strong = pass.days_left < 0;
  return row;
}

}  // namespace

RecencyPage::RecencyPage(const after::SheetLook& look, const ShelfModel& model, QWidget* parent)
    : QWidget(parent),
      look_(look),
      model_(model),
      form_(new RecencyForm(this)),
      heading_(new QLabel(this)),
      list_(new after::RowsTable(look_,
                                 {{tr("Trainee"), 0},
                                  {tr("Exercise"), 0},
                                  {tr("Last passed"), 190},
                                  {tr("Due on"), 190},
                                  {tr("Left"), 240}},
                                 {4, -1}, tr("Due dates"), this)) {
  heading_->setObjectName(QStringLiteral("heading"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 4, 0, 0);
  column->addWidget(form_);
  column->addWidget(heading_);
  column->addWidget(list_, 1);
  column->addWidget(makeSecondLabel(
      tr("A reminder and nothing more: what was passed stays passed. Counted from the last sealed "
         "assessment that was passed, or that an assessor decided as passed, to the same day of "
         "the month, or the last one where the month is shorter. Seals are seen here, not proved."),
      this));
  setFocusProxy(list_);
  connect(form_, &RecencyForm::changed, this, [this] {
    refresh();
    Q_EMIT rulesChanged();
  });
  connect(list_, &after::RowsTable::rowOpened, this, [this](int at) {
    Q_EMIT openAsked(fromText(due_[static_cast<std::size_t>(at)].item->file.string()));
  });
}

void RecencyPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  std::vector<std::string> titles;
  for (const ShelfRow& row : model_.allRows())
    if (!row.item.scenario.empty()) titles.push_back(row.item.scenario);
  form_->setExercises(titles);
  refresh();
}

void RecencyPage::restyle() { list_->restyle(); }

void RecencyPage::refresh() {
  due_.clear();
  // The model's rows may be gone: nothing of them is kept while it is not seen.
  if (isVisible())
    due_ = review::findDue(model_.shownItems(), form_->rules(), localDay, toDay(today_()));
  std::vector<after::TableRow> rows;
  for (const review::DuePass& pass : due_) rows.push_back(rowOf(pass));
  const auto over = static_cast<int>(
      std::ranges::count_if(due_, [](const review::DuePass& pass) { return pass.days_left < 0; }));
  if (!form_->rules().isOn())
    heading_->setText(tr("No validity is set: nobody is due for anything."));
  else if (rows.empty())
    heading_->setText(tr("Nobody has passed anything with a validity yet."));
  else
    heading_->setText(tr("%n pass(es) with a date", nullptr, static_cast<int>(rows.size())) +
                      QStringLiteral(", ") + tr("%n over", nullptr, over));
  list_->replaceRows(std::move(rows));
}

}  // namespace cabwright::review_room
