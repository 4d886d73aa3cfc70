// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/desk_window.h"

#include <QCloseEvent>
#include <QHBoxLayout>
#include <QPainter>
#include <QShortcut>
#include <QVBoxLayout>
#include <algorithm>

#include "cab/names.h"
#include "cab/you_parts.h"
#include "desk/desk_look.h"
#include "desk/live_strips.h"
#include "desk/person_view.h"
#include "desk/truth_view.h"
#include "desk/verdict_view.h"

namespace cabwright::desk {

using drawing::Tone;

namespace {

constexpr double kLeastScale = 0.72, kMostScale = 1.7;
constexpr int kNumberedPages = 9;

QString text(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

QString paceText(const session::LiveRun& run) {
  if (run.isFinished()) return DeskWindow::tr("ended");
  return run.pace().rate > 0 ? QStringLiteral("×") + text(run.pace().word)
                             : DeskWindow::tr("frozen");
}

}  // namespace

DeskWindow::DeskWindow(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      title_(new QLabel(tr("Instructor's desk"), this)),
      run_(new QLabel(this)),
      clock_(new QLabel(this)),
      foot_(nullptr),
      tabs_(new QTabBar(this)),
      pages_(new QStackedWidget(this)),
      faults_(new FaultPage(desk, this)),
      people_(nullptr),
      situation_(nullptr) {
  setWindowTitle(tr("Instructor's desk"));
  setAccessibleName(tr("Instructor's desk"));
  title_->setObjectName(QStringLiteral("title"));
  run_->setObjectName(QStringLiteral("second"));
  clock_->setObjectName(QStringLiteral("clock"));
  clock_->setAccessibleName(tr("Time of the run"));
  tabs_->setDrawBase(false);
  tabs_->setExpanding(false);
  tabs_->setUsesScrollButtons(true);
  tabs_->setAccessibleName(tr("Pages of the desk"));
  auto* head = new QHBoxLayout;
  head->setSpacing(16);
  head->addWidget(title_);
  head->addWidget(run_, 1, Qt::AlignBottom);
  head->addWidget(clock_);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(24, 16, 24, 14);
  column->setSpacing(6);
  // Type grows with the window: what it needs now must not hinder it from becoming smaller.
  column->setSizeConstraint(QLayout::SetNoConstraint);
  setMinimumSize(1024, 640);
  column->addLayout(head);
  column->addWidget(tabs_);
  column->addWidget(pages_, 1);
  connect(tabs_, &QTabBar::currentChanged, pages_, &QStackedWidget::setCurrentIndex);
  addPage(tr("Faults"), faults_);
  auto* strips = new LiveStrips(desk_, this);
  addPage(tr("Strips"), strips);
  addPage(tr("True values"), new TruthView(desk_, this));
  addPage(tr("Trainee"), new PersonView(desk_, this));
  auto* verdicts = new VerdictView(desk_, this);
  addPage(tr("Verdicts"), verdicts);
  addPage(tr("People"), people_ = new PeoplePage(desk_, this));
  addPage(tr("Situation"), situation_ = new SituationPage(desk_, this));
  bar_ = new ControlBar(desk_, this);  // behind the pages, so that Tab comes to it after them
  column->addWidget(bar_);
  foot_ = new FootLine(desk_, this);
  column->addWidget(foot_);
  connect(strips, &LiveStrips::momentChosen, foot_, &FootLine::offerMoment);
  connect(verdicts, &VerdictView::momentChosen, foot_, &FootLine::offerMoment);
  connect(&desk_, &Desk::changed, this, &DeskWindow::refresh);
  connect(&desk_, &Desk::runChanged, this, &DeskWindow::refresh);
  // What was refused of another run, or on another page, is of no use any more.
  connect(&desk_, &Desk::runChanged, foot_, &FootLine::forgetFault);
  connect(tabs_, &QTabBar::currentChanged, foot_, &FootLine::forgetFault);
  connect(&desk_, &Desk::restyled, this, &DeskWindow::restyle);
  connect(&desk_, &Desk::taken, this, [this](const QString& words) { foot_->say(words, false); });
  connect(&desk_, &Desk::told, this, [this](const QString& words) {
    foot_->say(words, false);
    foot_->repaint();  // whoever tells it has no time for events
  });
  connect(&desk_, &Desk::fault, this, [this](const QString& words) { foot_->say(words, true); });
  makeKeys();
  restyle();
  refresh();
  resize(1280, 800);
}

void DeskWindow::addPage(const QString& name, QWidget* page) {
  pages_->addWidget(page);
  const int number = tabs_->addTab(name);
  if (number < kNumberedPages) tabs_->setTabToolTip(number, tr("Ctrl+%1").arg(number + 1));
}

void DeskWindow::showPage(QWidget* page) {
  if (const int number = pages_->indexOf(page); number >= 0) tabs_->setCurrentIndex(number);
}

void DeskWindow::addKey(const QKeySequence& keys, const std::function<void()>& done) {
  auto* key = new QShortcut(keys, this);
  connect(key, &QShortcut::activated, this, done);
}

void DeskWindow::makeKeys() {
  addKey(Qt::Key_F2, [this] { bar_->focusRemark(); });
  addKey(Qt::Key_F3, [this] {
    showPage(faults_);
    faults_->picker()->search()->setFocus(Qt::ShortcutFocusReason);
    faults_->picker()->search()->selectAll();
  });
  addKey(Qt::Key_F4, [this] { bar_->focusMark(); });
  addKey(Qt::Key_F6, [this] {
    showPage(faults_);
    faults_->unit()->takeFocus();
  });
  addKey(Qt::Key_F7, [this] { bar_->changePace(-1); });
  addKey(Qt::Key_F8, [this] { bar_->changePace(1); });
  addKey(Qt::Key_F9, [this] {
    showPage(faults_);
    faults_->present()->takeFocus();
  });
  addKey(Qt::CTRL | Qt::Key_Space, [this] { bar_->toggleFrozen(); });
  addKey(QKeySequence::Close, [this] { close(); });
  for (int k = 0; k < kNumberedPages; ++k)
    addKey(QKeySequence(static_cast<int>(Qt::CTRL) | (Qt::Key_1 + k)), [this, k] {
      if (k < tabs_->count()) tabs_->setCurrentIndex(k);
    });
}

void DeskWindow::setTheme(drawing::Theme theme) {
  DeskStyle style = desk_.style();
  style.theme = theme;
  desk_.setStyle(style);
}

void DeskWindow::restyle() {
  setStyleSheet(deskStyleSheet(desk_.style()));
  update();
}

void DeskWindow::refresh() {
  const session::LiveRun* run = desk_.run();
  if (run == nullptr) {
    run_->setText(tr("no run goes on"));
    clock_->clear();
    return;
  }
  QString words =
      cab::exerciseWords(desk_.exercise()) + QStringLiteral(" · ") + cab::modeText(run->mode());
  const std::string trainee = session::traineeWords(run->header());
  if (!trainee.empty())
    words += QStringLiteral(" · ") + tr("trainee %1").arg(QString::fromStdString(trainee));
  if (run->intervenedAt())
    words += QStringLiteral(" · ") + tr("aided since %1").arg(cab::clockText(*run->intervenedAt()));
  if (words != run_->text()) run_->setText(words);
  const bool stopped = desk_.isStopped() && run->pace().rate > 0 && !run->isFinished();
  const QString clock = cab::clockText(run->tick()) + QLatin1String("  ") +
                        (stopped ? tr("stopped in the cab") : paceText(*run));
  if (clock != clock_->text()) clock_->setText(clock);
}

void DeskWindow::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  painter.fillRect(rect(), drawing::colorOf(desk_.style().theme, Tone::kPaper));
  drawing::Pen pen(painter, desk_.style().theme);
  pen.rect(QRectF(rect()).adjusted(10, 8, -10, -8), {1.5, Tone::kInk, {}, false});
}

void DeskWindow::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  DeskStyle style = desk_.style();
  style.scale = std::clamp(std::min(width() / 1600.0, height() / 1000.0), kLeastScale, kMostScale);
  desk_.setStyle(style);
}

void DeskWindow::closeEvent(QCloseEvent* event) {
  QWidget::closeEvent(event);
  Q_EMIT closed();
}

}  // namespace cabwright::desk
