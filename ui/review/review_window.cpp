// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/review_window.h"

#include <QAccessible>
#include <QApplication>
#include <QBoxLayout>
#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QMenuBar>
#include <QMimeData>
#include <QStandardPaths>
#include <QStatusBar>

#include "after/words.h"
#include "drawing/status_line.h"
#include "review_room/review_look.h"

namespace cabwright::review_room {
namespace {

constexpr int kToldMs = 8000;

QString nameOf(const std::filesystem::path& file) {
  return QString::fromStdString(file.filename().string());
}

// The one file that is dragged here, if it is one.
QString findDragged(const QMimeData* data) {
  if (!data->hasUrls() || data->urls().size() != 1) return {};
  return data->urls().front().toLocalFile();
}

}  // namespace

ReviewWindow::ReviewWindow(QWidget* parent)
    : QMainWindow(parent),
      pages_(new QStackedWidget(this)),
      empty_(new QWidget(this)),
      waiting_(new QWidget(this)),
      said_(new QLabel(this)),
      waiting_words_(new QLabel(this)),
      open_button_(new QPushButton(this)),
      cancel_button_(new QPushButton(this)),
      progress_(new QProgressBar(this)) {
  setAcceptDrops(true);
  setMinimumSize(1024, 640);
  setCentralWidget(pages_);
  said_->setTextFormat(Qt::PlainText);
  said_->setWordWrap(true);
  said_->setAlignment(Qt::AlignCenter);
  said_->setObjectName(QStringLiteral("second"));
  auto* column = new QVBoxLayout(empty_);
  column->addStretch(1);
  column->addWidget(said_);
  column->addSpacing(16);
  column->addWidget(open_button_, 0, Qt::AlignHCenter);
  column->addStretch(2);
  column->setContentsMargins(80, 20, 80, 20);
  connect(open_button_, &QPushButton::clicked, this, &ReviewWindow::askForFile);
  makeWaiting();
  pages_->addWidget(empty_);
  pages_->addWidget(waiting_);
  makeMenus();
  nameMenus();
  restyle();
  resize(1280, 800);
}

ReviewWindow::~ReviewWindow() { delete view_; }

void ReviewWindow::makeWaiting() {
  waiting_words_->setAlignment(Qt::AlignCenter);
  waiting_words_->setTextFormat(Qt::PlainText);
  progress_->setRange(0, 0);
  progress_->setTextVisible(false);
  progress_->setFixedWidth(360);
  progress_->setAccessibleName(tr("A session is being read"));
  auto* column = new QVBoxLayout(waiting_);
  column->addStretch(1);
  column->addWidget(waiting_words_);
  column->addSpacing(10);
  column->addWidget(progress_, 0, Qt::AlignHCenter);
  column->addSpacing(16);
  column->addWidget(cancel_button_, 0, Qt::AlignHCenter);
  column->addStretch(2);
  connect(cancel_button_, &QPushButton::clicked, this, &ReviewWindow::cancelOpening);
}

void ReviewWindow::makeMenus() {
  const auto add = [this](QMenu* menu, const QKeySequence& keys, auto slot) {
    QAction* action = menu->addAction(QString());
    action->setShortcut(keys);
    connect(action, &QAction::triggered, this, slot);
    return action;
  };
  session_menu_ = menuBar()->addMenu(QString());
  open_action_ = add(session_menu_, QKeySequence::Open, &ReviewWindow::askForFile);
  shelf_action_ =
      add(session_menu_, QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_B), &ReviewWindow::showShelf);
  session_action_ = add(session_menu_, QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S),
                        &ReviewWindow::showSession);
  session_menu_->addSeparator();
  for (std::size_t k = 0; k < take_outs_.size(); ++k) {
    const TakeOut what = kTakeOuts[k];
    take_outs_[k] = add(
        session_menu_, what == TakeOut::kPaper ? QKeySequence(QKeySequence::Print) : QKeySequence(),
        [this, what] { askWhereTo(what); });
    take_outs_[k]->setEnabled(false);
  }
  session_menu_->addSeparator();
  close_action_ = add(session_menu_, QKeySequence::Close, [this] { close(); });
  view_menu_ = menuBar()->addMenu(QString());
  for (std::size_t k = 0; k < shares_.size(); ++k)
    shares_[k] = add(view_menu_, QKeySequence(), [this, k] {
      if (view_ != nullptr) view_->setShare(static_cast<Share>(k));
    });
  session_action_->setEnabled(false);
  drawing::hideWhileSilent(statusBar());
}

void ReviewWindow::nameMenus() {
  setWindowTitle(tr("Review"));
  session_menu_->setTitle(tr("&Session"));
  open_action_->setText(tr("&Open a recorded session …"));
  shelf_action_->setText(tr("The &shelf of sessions"));
  session_action_->setText(tr("&Back to the open session"));
  for (std::size_t k = 0; k < take_outs_.size(); ++k)
    take_outs_[k]->setText(menuWords(kTakeOuts[k]));
  close_action_->setText(tr("&Close"));
  view_menu_->setTitle(tr("&View"));
  shares_[0]->setText(tr("Most room for the &strips") + QStringLiteral("\tF6"));
  shares_[1]->setText(tr("&Both alike") + QStringLiteral("\tF7"));
  shares_[2]->setText(tr("Most room for the &plate") + QStringLiteral("\tF8"));
  open_button_->setText(tr("Open a recorded session …"));
  cancel_button_->setText(tr("Give it up"));
  if (said_->text().isEmpty())
    said_->setText(tr("Open a recorded session, or drop its file here."));
}

void ReviewWindow::changeEvent(QEvent* event) {
  QMainWindow::changeEvent(event);
  if (event->type() == QEvent::LanguageChange) nameMenus();
}

void ReviewWindow::setShelf(QWidget* shelf) {
  delete shelf_;
  shelf_ = shelf;
  pages_->addWidget(shelf);
  if (view_ == nullptr && !isOpening()) pages_->setCurrentWidget(shelf);
}

void ReviewWindow::showShelf() {
  if (isOpening()) cancelOpening();
  if (view_ != nullptr) view_->setPlaying(false);
  pages_->setCurrentWidget(shelf_ != nullptr ? shelf_ : empty_);
  session_action_->setEnabled(view_ != nullptr);
}

void ReviewWindow::showSession() {
  if (view_ == nullptr || isOpening()) return;
  pages_->setCurrentWidget(view_);
  view_->setFocus();
}

void ReviewWindow::askForFile() {
  auto* dialog = new QFileDialog(this, tr("Open a recorded session"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setFileMode(QFileDialog::ExistingFile);
  dialog->setNameFilters({tr("Recorded sessions (*.cabsession)"), tr("All files (*)")});
  dialog->setDirectory(QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
                       QStringLiteral("/cabwright"));
  connect(dialog, &QFileDialog::fileSelected, this,
          [this](const QString& file) { open(file.toStdString()); });
  dialog->setModal(false);
  dialog->show();
}

void ReviewWindow::askWhereTo(TakeOut what) {
  if (view_ == nullptr) return;
  auto* dialog = new QFileDialog(this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  const QString filter = filterOf(what);
  if (filter.isEmpty()) {
    dialog->setFileMode(QFileDialog::Directory);
  } else {
    dialog->setNameFilter(filter);
  }
  dialog->selectFile(proposedName(what, view_->opened()));
  connect(dialog, &QFileDialog::fileSelected, this,
          [this, what](const QString& path) { takeOutTo(what, path); });
  dialog->setModal(false);
  dialog->show();
}

bool ReviewWindow::takeOutTo(TakeOut what, const QString& path) {
  if (view_ == nullptr) return false;
  view_->setPlaying(false);
  QApplication::setOverrideCursor(Qt::WaitCursor);
  const std::optional<QString> fault =
      takeOut(what, view_->opened(), path, recency_ ? recency_() : review::RecencyRules{});
  QApplication::restoreOverrideCursor();
  statusBar()->showMessage(fault ? *fault : tr("%1 is written.").arg(path), kToldMs);
  QAccessibleEvent alert(statusBar(), QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
  return !fault;
}

void ReviewWindow::open(const std::filesystem::path& file) {
  cancelOpening();
  if (guard_) {
    if (const QString why = guard_(file); !why.isEmpty()) {
      say(why);
      return;
    }
  }
  if (view_ != nullptr) view_->setPlaying(false);
  std::erase_if(given_up_, [](const auto& opening) { return opening->isOver(); });
  opening_ = std::make_unique<SessionOpening>(file);
  connect(opening_.get(), &SessionOpening::opened, this, &ReviewWindow::take);
  connect(opening_.get(), &SessionOpening::failed, this, [this](const QString& why) {
    const QString name = nameOf(opening_->file());
    opening_.release()->deleteLater();  // it is just being heard
    say(tr("%1 was not opened: %2").arg(name, why));
  });
  connect(opening_.get(), &SessionOpening::progressed, this, [this](qint64 tick) {
    waiting_words_->setText(
        tr("Reading %1: %2").arg(nameOf(opening_->file()), after::timeText(tick)));
  });
  waiting_words_->setText(tr("Reading %1").arg(nameOf(file)));
  pages_->setCurrentWidget(waiting_);
  cancel_button_->setFocus();
}

// The thread hears of it at its next second of the record; nobody waits for that.
void ReviewWindow::cancelOpening() {
  if (!opening_) return;
  opening_->disconnect(this);
  opening_->cancel();
  given_up_.push_back(std::move(opening_));
  pages_->setCurrentWidget(view_ != nullptr    ? static_cast<QWidget*>(view_)
                           : shelf_ != nullptr ? shelf_
                                               : empty_);
}

void ReviewWindow::take() {
  const QString name = nameOf(opening_->file());
  std::unique_ptr<Opened> opened = opening_->takeOpened();
  opening_.release()->deleteLater();
  ReviewView* view = nullptr;
  try {
    view = new ReviewView(std::move(opened), this);
  } catch (const std::exception& error) {  // its scenario makes no unit here
    say(tr("%1 was not opened: %2").arg(name, QString::fromUtf8(error.what())));
    return;
  }
  delete view_;
  view_ = view;
  addMarks();
  view_->setTheme(look_.theme);
  pages_->addWidget(view_);
  setWindowTitle(tr("Review of %1").arg(name));
  session_action_->setEnabled(true);
  for (QAction* action : take_outs_) action->setEnabled(true);
  Q_EMIT sessionOpened(view_);
  showSession();
}

void ReviewWindow::addMarks() {
  marks_ = new MarksPage(view_->opened());
  marks_->setTheme(look_.theme);
  marks_->setScale(view_->look().scale);
  connect(marks_, &MarksPage::jumpAsked, view_, &ReviewView::jumpTo);
  connect(marks_, &MarksPage::hidesMarksChanged, view_, &ReviewView::setHidesMarks);
  connect(&view_->opened(), &Opened::cursorMoved, marks_, &MarksPage::showMoment);
  connect(view_, &ReviewView::scaleChanged, marks_, &MarksPage::setScale);
  connect(view_, &ReviewView::otherKey, marks_, [this](int key) {
    if (key == Qt::Key_O) marks_->beginOverride();
    if (key == Qt::Key_C) marks_->beginRemark();
    if (key == Qt::Key_S) marks_->beginSign();
  });
  view_->setHidesMarks(marks_->hidesMarks());
  view_->setSide(marks_);
}

void ReviewWindow::say(const QString& words) {
  said_->setText(words);
  said_->setObjectName(QStringLiteral("bad"));
  restyle();
  pages_->setCurrentWidget(empty_);
  QAccessibleEvent alert(said_, QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
}

void ReviewWindow::setTheme(drawing::Theme theme) {
  look_.theme = theme;
  restyle();
  if (view_ == nullptr) return;
  view_->setTheme(theme);
  marks_->setTheme(theme);
}

void ReviewWindow::restyle() { setStyleSheet(reviewStyleSheet(look_)); }

void ReviewWindow::resizeEvent(QResizeEvent* event) {
  QMainWindow::resizeEvent(event);
  const double scale = reviewScale(width(), height());
  if (scale == look_.scale) return;
  look_.scale = scale;
  restyle();
}

void ReviewWindow::dragEnterEvent(QDragEnterEvent* event) {
  if (!findDragged(event->mimeData()).isEmpty()) event->acceptProposedAction();
}

void ReviewWindow::dropEvent(QDropEvent* event) {
  const QString file = findDragged(event->mimeData());
  if (file.isEmpty()) return;
  event->acceptProposedAction();
  open(file.toStdString());
}

void ReviewWindow::closeEvent(QCloseEvent* event) {
  QMainWindow::closeEvent(event);
  cancelOpening();
  if (view_ != nullptr) view_->setPlaying(false);
  Q_EMIT closed();
}

}  // namespace cabwright::review_room
