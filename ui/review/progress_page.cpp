// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/progress_page.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QVBoxLayout>
#include <cmath>

#include "after/words.h"
#include "review_room/shelf_look.h"
#include "session/record.h"

namespace cabwright::review_room {

using drawing::VerdictSign;

namespace {

QString fromText(const std::string& text) { return QString::fromStdString(text); }

QString localMoment(const std::string& utc) {
  return momentText(QDateTime::fromString(fromText(utc), Qt::ISODate).toLocalTime());
}

after::TableRow rowOf(const review::Attempt& attempt) {
  const review::ShelfItem& item = *attempt.item;
  after::TableRow row;
  const QString outcome = !attempt.ended           ? outcomeName(review::ShelfOutcome::kCutOff)
                          : !item.decision.empty() ? decisionName(item.decision)
                                                   : outcomeName(item.outcome);
  row.cells = {QString::number(attempt.number),
               localMoment(item.started_utc),
               outcome,
               attempt.ended ? QString::number(std::floor(attempt.percent)) : QString(),
               lengthText(item.last_tick),
               attempt.ended ? QString::number(attempt.criticals_broken) : QString()};
  row.sign = !attempt.ended   ? VerdictSign::kSeen
             : attempt.passed ? VerdictSign::kGood
                              : VerdictSign::kDefect;
  return row;
}

}  // namespace

QString curveText(const review::VersionAttempts& attempts) {
  if (!attempts.curve)
    return QCoreApplication::translate("ProgressPage",
                                       "A learning curve is fitted from %1 attempts on that were "
                                       "driven to their end.")
        .arg(review::kLeastForCurve);
  const review::LearningCurve& curve = *attempts.curve;
  const double share = review::calcDoublingShare(curve);
  const QString first = QString::number(curve.first_s / 60, 'f', 1);
  const QString accounted = QString::number(std::lround(curve.accounted * 100));
  if (share >= 1)
    return QCoreApplication::translate("ProgressPage",
                                       "It does not go quicker with practice: fitted to %1 "
                                       "attempts, each doubling takes %2 % of the time.")
        .arg(curve.fitted_to)
        .arg(std::lround(share * 100));
  return QCoreApplication::translate(
             "ProgressPage",
             "Learning curve T = %1 min × N^-%2, fitted to %3 attempts: each doubling of attempts "
             "leaves %4 % of the time. It accounts for %5 % of the spread.")
      .arg(first, QString::number(curve.exponent, 'f', 3))
      .arg(curve.fitted_to)
      .arg(std::lround(share * 100))
      .arg(accounted);
}

ProgressPage::ProgressPage(const after::SheetLook& look, const ShelfModel& model, QWidget* parent)
    : QWidget(parent),
      look_(look),
      model_(model),
      heading_(new QLabel(this)),
      why_not_(makeSecondLabel({}, this)),
      curve_words_(makeSecondLabel({}, this)),
      version_(new drawing::ChoiceBox(this)),
      chart_(nullptr),
      attempts_(nullptr),
      body_(new QWidget(this)) {
  heading_->setObjectName(QStringLiteral("heading"));
  version_->setAccessibleName(tr("Version of the exercise"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 4, 0, 0);
  auto* head = new QHBoxLayout;
  head->addWidget(heading_, 1);
  head->addWidget(version_);
  column->addLayout(head);
  column->addWidget(why_not_);
  column->addWidget(body_, 1);
  auto* row = new QHBoxLayout(body_);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(20);
  chart_ = new ProgressChart(look_, body_);
  attempts_ = new after::RowsTable(look_,
                                   {{tr("No."), 54, true},
                                    {tr("Date and time"), 0},
                                    {tr("Outcome"), 152},
                                    {tr("Points"), 76, true},
                                    {tr("Length"), 96, true},
                                    {tr("Critical broken"), 150, true}},
                                   {2, -1}, tr("Attempts"), body_);
  auto* left = new QVBoxLayout;
  left->addWidget(chart_, 1);
  left->addWidget(curve_words_);
  row->addLayout(left, 1);
  row->addWidget(attempts_, 1);
  setFocusProxy(attempts_);
  connect(version_, &QComboBox::currentIndexChanged, this, &ProgressPage::showVersion);
  connect(attempts_, &after::RowsTable::rowOpened, this, [this](int at) {
    const int version = version_->currentIndex();
    if (version < 0) return;
    const auto& all = found_[static_cast<std::size_t>(version)].attempts;
    Q_EMIT openAsked(fromText(all[static_cast<std::size_t>(at)].item->file.string()));
  });
  showNothing({});
}

void ProgressPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void ProgressPage::restyle() {
  chart_->restyle();
  attempts_->restyle();
}

void ProgressPage::showNothing(const QString& why) {
  found_.clear();
  attempts_->replaceRows({});
  why_not_->setText(why);
  why_not_->show();
  for (QWidget* part : std::initializer_list<QWidget*>{heading_, version_, body_}) part->hide();
}

void ProgressPage::refresh() {
  if (!isVisible()) {
    // The model's rows may be gone: nothing of them is kept.
    showNothing({});
    return;
  }
  const ShelfFilter& filter = model_.filter();
  if (filter.trainee.isEmpty() || filter.exercise.isEmpty()) {
    showNothing(tr("Choose a trainee and an exercise above."));
    return;
  }
  found_ = review::findAttempts(model_.shownItems(), filter.trainee.toStdString(),
                                filter.exercise.toStdString());
  if (found_.empty()) {
    showNothing(tr("There are no attempts of this trainee at this exercise among what is shown."));
    return;
  }
  why_not_->hide();
  for (QWidget* part : std::initializer_list<QWidget*>{heading_, body_}) part->show();
  const review::ShelfItem& any = *found_.front().attempts.front().item;
  heading_->setText(
      QStringLiteral("%1 · %2").arg(fromText(session::traineeWords(any.number, any.trainee)),
                                    after::exerciseWords(any.scenario)));
  fillVersions();
}

// The version of the last attempt is the one that is looked at first.
void ProgressPage::fillVersions() {
  {
    const QSignalBlocker quiet(version_);
    version_->clear();
    int number = 0;
    for (const review::VersionAttempts& version : found_)
      version_->addItem(
          tr("version %1 of %2, %n attempt(s)", nullptr, static_cast<int>(version.attempts.size()))
              .arg(++number)
              .arg(found_.size()));
    version_->setCurrentIndex(version_->count() - 1);
  }
  version_->setVisible(found_.size() > 1);
  version_->setToolTip(
      tr("The exercise was changed in between: what was learnt at one version is not measured at "
         "another."));
  showVersion();
}

void ProgressPage::showVersion() {
  const int at = version_->currentIndex();
  if (at < 0 || at >= static_cast<int>(found_.size())) return;
  const review::VersionAttempts& version = found_[static_cast<std::size_t>(at)];
  chart_->setAttempts(version);
  curve_words_->setText(curveText(version));
  std::vector<after::TableRow> rows;
  for (const review::Attempt& attempt : version.attempts) rows.push_back(rowOf(attempt));
  attempts_->replaceRows(std::move(rows));
}

QString ProgressPage::saidText() const {
  return why_not_->isHidden() ? heading_->text() + QLatin1Char('\n') + curve_words_->text()
                              : why_not_->text();
}

}  // namespace cabwright::review_room
