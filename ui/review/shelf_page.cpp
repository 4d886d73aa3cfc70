// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/shelf_page.h"

#include <QDir>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>

#include "review_room/shelf_look.h"
#include "session/signing_key.h"

namespace cabwright::review_room {

using drawing::Tone;

namespace {

QString foldersKey() { return QStringLiteral("shelf/folders"); }

QString standardFolder() {
  const std::filesystem::path data = session::userDataFolder();
  return data.empty() ? QString() : QString::fromStdString((data / "sessions").string());
}

}  // namespace

ShelfPage::ShelfPage(QWidget* parent)
    : QWidget(parent),
      title_(new QLabel(tr("Shelf"), this)),
      count_(new QLabel(this)),
      folders_button_(makeShelfButton(tr("Folders"), QStringLiteral("folders"), this)),
      reload_button_(makeShelfButton(tr("Look again"), QStringLiteral("reload"), this)),
      cancel_(makeShelfButton(tr("Stop"), QStringLiteral("cancel"), this)),
      progress_(new QProgressBar(this)),
      tabs_(new QTabBar(this)),
      filter_(new ShelfFilterBar(this)),
      folders_(new ShelfFolders(this)),
      pages_(new QStackedWidget(this)),
      sessions_(new ShelfSessions(look_, model_, loader_, this)),
      progress_page_(new ProgressPage(look_, model_, this)),
      weak_page_(new WeakPage(look_, model_, this)),
      recency_page_(new RecencyPage(look_, model_, this)) {
  setAccessibleName(tr("Shelf of sessions"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(24, 16, 24, 16);
  column->setSpacing(8);
  makeHead();
  column->addWidget(folders_);
  folders_->hide();
  folders_->setFolders(standardFolder(), {});
  tabs_->setDrawBase(false);
  tabs_->setExpanding(false);
  tabs_->setAccessibleName(tr("Pages of the shelf"));
  column->addWidget(tabs_);
  column->addWidget(filter_);
  column->addWidget(pages_, 1);
  addPage(tr("Sessions"), sessions_);
  addPage(tr("Progress"), progress_page_);
  addPage(tr("Weak lines"), weak_page_);
  addPage(tr("Due dates"), recency_page_);
  connect(tabs_, &QTabBar::currentChanged, pages_, &QStackedWidget::setCurrentIndex);
  connect(filter_, &ShelfFilterBar::changed, this, [this] { model_.setFilter(filter_->filter()); });
  connect(&model_, &ShelfModel::shownChanged, this, [this] {
    refreshCount();
    progress_page_->refresh();
    weak_page_->refresh();
    recency_page_->refresh();
  });
  connect(sessions_, &ShelfSessions::openAsked, this, &ShelfPage::openFile);
  connect(progress_page_, &ProgressPage::openAsked, this, &ShelfPage::openFile);
  connect(weak_page_, &WeakPage::openAsked, this, &ShelfPage::openFile);
  connect(recency_page_, &RecencyPage::openAsked, this, &ShelfPage::openFile);
  connect(recency_page_, &RecencyPage::rulesChanged, this, [this] {
    if (settings_ != nullptr) saveRecency(*settings_, recency_page_->form()->rules());
  });
  connect(sessions_, &ShelfSessions::progressAsked, this,
          [this](const QString& trainee, const QString& exercise) {
            filter_->choose(trainee, exercise);
            tabs_->setCurrentIndex(pages_->indexOf(progress_page_));
          });
  connect(folders_, &ShelfFolders::changed, this, [this] {
    saveFolders();
    reload();
  });
  connect(folders_, &ShelfFolders::closed, this, [this] {
    folders_->hide();
    folders_button_->setFocus();
  });
  connect(&loader_, &ShelfLoader::opened, this, &ShelfPage::take);
  connect(&loader_, &ShelfLoader::givenUp, this, [this] {
    gave_up_ = true;
    refreshCount();
  });
  restyle();
}

// The pages read the model to their end.
ShelfPage::~ShelfPage() { delete pages_; }

void ShelfPage::makeHead() {
  title_->setObjectName(QStringLiteral("title"));
  count_->setObjectName(QStringLiteral("second"));
  progress_->setTextVisible(false);
  progress_->setFixedWidth(180);
  progress_->setMaximumHeight(16);
  progress_->setAccessibleName(tr("Progress"));
  auto* head = new QHBoxLayout;
  head->setSpacing(12);
  head->addWidget(title_);
  head->addWidget(count_, 1, Qt::AlignBottom);
  head->addWidget(progress_);
  head->addWidget(cancel_);
  head->addWidget(reload_button_);
  head->addWidget(folders_button_);
  static_cast<QVBoxLayout*>(layout())->addLayout(head);
  reload_button_->setToolTip(QStringLiteral("F5"));
  connect(reload_button_, &QPushButton::clicked, this, &ShelfPage::reload);
  connect(cancel_, &QPushButton::clicked, &loader_, &ShelfLoader::giveUp);
  connect(folders_button_, &QPushButton::clicked, this, [this] {
    folders_->setVisible(!folders_->isVisible());
    if (folders_->isVisible()) folders_->takeFocus();
  });
  makeProgress();
}

// What is quick is not worth a flicker: the bar comes when it has something to tell.
void ShelfPage::makeProgress() {
  progress_->hide();
  cancel_->hide();
  connect(&loader_, &ShelfLoader::progressed, this, [this](int done, int all) {
    progress_->setRange(0, all);
    progress_->setValue(done);
    progress_->show();
    cancel_->show();
  });
  connect(&loader_, &ShelfLoader::busyChanged, this, [this](bool busy) {
    reload_button_->setEnabled(!busy);
    if (busy) return;
    const bool focused = cancel_->hasFocus();
    progress_->hide();
    cancel_->hide();
    if (focused) pages_->currentWidget()->setFocus();
  });
}

void ShelfPage::addPage(const QString& name, QWidget* page) {
  pages_->addWidget(page);
  tabs_->addTab(name);
}

void ShelfPage::setSettings(QSettings& settings) {
  settings_ = &settings;
  folders_->setFolders(folders_->own(), settings.value(foldersKey()).toStringList());
  recency_page_->form()->setRules(loadRecency(settings));
}

// From whatever page: the running session is not looked into.
void ShelfPage::openFile(const QString& file) {
  if (!model_.isRunningFile(file)) Q_EMIT openAsked(file);
}

void ShelfPage::setOwnFolder(const QString& folder) {
  if (folder.isEmpty() || folder == folders_->own()) return;
  folders_->setFolders(folder, folders_->others());
  if (looked_) reload();
}

void ShelfPage::setRunning(const QString& file) { model_.setRunning(file); }

void ShelfPage::saveFolders() {
  if (settings_ != nullptr) settings_->setValue(foldersKey(), folders_->others());
}

std::vector<std::filesystem::path> ShelfPage::allFolders() const {
  std::vector<std::filesystem::path> all;
  // The program's own one is not there before the first recording: that is no fault.
  if (QDir(folders_->own()).exists()) all.emplace_back(folders_->own().toStdString());
  for (const QString& folder : folders_->others()) all.emplace_back(folder.toStdString());
  return all;
}

void ShelfPage::reload() {
  looked_ = true;
  gave_up_ = false;
  const std::vector<int> chosen = sessions_->table()->chosenRows();
  kept_file_ = chosen.empty()
                   ? QString()
                   : QString::fromStdString(model_.row(chosen.front()).item.file.string());
  loader_.open(allFolders());
  refreshCount();
}

void ShelfPage::take(const review::Shelf& shelf) {
  std::vector<ShelfRow> rows = makeRows(shelf.items);
  filter_->setChoices(rows);
  model_.setFilter(filter_->filter());
  model_.setRows(std::move(rows));
  if ((kept_file_.isEmpty() || !sessions_->choose(kept_file_)) && model_.rowCount() > 0)
    sessions_->table()->selectRow(0);
}

void ShelfPage::refreshCount() {
  const auto all = static_cast<int>(model_.allRows().size());
  if (gave_up_ && all == 0) {
    count_->setText(tr("stopped; look again to see the sessions"));
  } else if (loader_.isBusy() && all == 0) {
    count_->setText(tr("looking into the folders"));
  } else if (model_.rowCount() == all) {
    count_->setText(tr("%n session(s)", nullptr, all));
  } else {
    count_->setText(tr("%1 of %n session(s)", nullptr, all).arg(model_.rowCount()));
  }
}

void ShelfPage::setTheme(drawing::Theme theme) {
  look_.theme = theme;
  restyle();
}

void ShelfPage::restyle() {
  look_.scale = scaleOf(size());
  setStyleSheet(shelfStyle(look_));
  sessions_->restyle();
  progress_page_->restyle();
  weak_page_->restyle();
  recency_page_->restyle();
  update();
}

void ShelfPage::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (scaleOf(size()) != look_.scale) restyle();
}

void ShelfPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (event->spontaneous()) return;
  const bool first = !looked_;
  reload();  // what was recorded since
  if (first) sessions_->setFocus();
}

void ShelfPage::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_F5) {
    reload();
  } else if (event->matches(QKeySequence::Find)) {
    filter_->takeFocus();
  } else if (event->key() == Qt::Key_Escape && loader_.isBusy()) {
    loader_.giveUp();
  } else {
    QWidget::keyPressEvent(event);
  }
}

void ShelfPage::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  painter.fillRect(rect(), drawing::colorOf(look_.theme, Tone::kPaper));
}

}  // namespace cabwright::review_room
