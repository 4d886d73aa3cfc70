// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/writing_view.h"

#include <QCompleter>
#include <QFileInfo>
#include <QFileSystemModel>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>

#include "desk/writing_pages.h"
#include "scenario/shelf.h"
#include "session/rule_reader.h"

namespace cabwright::desk {

namespace {

constexpr int kOwnHeight = 110;
const QList<int> kWidths{190, 600, 480};  // sections, forms, the file: to begin with

QString sentences(const std::vector<std::string>& all) {
  QStringList list;
  for (const std::string& one : all) list << QString::fromStdString(one);
  return list.join(QStringLiteral("; "));
}

}  // namespace

WritingView::WritingView(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      sections_(new QListWidget(this)),
      pages_(new QStackedWidget(this)),
      text_(new WritingText(this)),
      file_(new QLabel(this)),
      said_(new QLabel(this)) {
  setAccessibleName(tr("Write a scenario"));
  auto* column = new QVBoxLayout(this);
  column->addWidget(makeButtons());
  column->addWidget(makeAskLine());
  file_->setObjectName(QStringLiteral("writing_file"));
  said_->setObjectName(QStringLiteral("writing_said"));
  said_->setWordWrap(true);
  column->addWidget(file_);
  column->addWidget(said_);
  column->addWidget(makeMiddle(), 1);
  connect(&writing_, &Writing::changed, this, [this] {
    refresh();
    say({});
  });
  connect(&writing_, &Writing::replaced, this, &WritingView::refresh);
  connect(&writing_, &Writing::checked, this, &WritingView::showFaults);
  connect(&desk_, &Desk::runChanged, this, [this] { moment_->setEnabled(desk_.run() != nullptr); });
  moment_->setEnabled(desk_.run() != nullptr);
  refresh();
  writing_.check();
}

void WritingView::setFolders(const std::filesystem::path& own,
                             const std::filesystem::path& shipped) {
  writing_.setFolders(own, shipped);
  // The names of vehicles, routes and rules are those of these folders.
  const int row = std::max(0, sections_->currentRow());
  while (pages_->count() > 0) {
    QWidget* page = pages_->widget(0);
    pages_->removeWidget(page);
    delete page;
  }
  const auto add = [this](QWidget* (*make)(Writing&, QWidget*)) {
    auto* scroll = new QScrollArea(pages_);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(make(writing_, scroll));
    pages_->addWidget(scroll);
  };
  add(&WritingPages::makeSituation);
  add(&WritingPages::makeConditions);
  add(&WritingPages::makeThings);
  add(&WritingPages::makePeople);
  add(&WritingPages::makeHidden);
  add(&WritingPages::makeMarking);
  add(&WritingPages::makeGuide);
  add(&WritingPages::makeWords);
  sections_->setCurrentRow(row);
  pages_->setCurrentIndex(row);
}

QPushButton* WritingView::addButton(QLayout* row, const QString& words, const char* name,
                                    const std::function<void()>& act) {
  auto* button = new QPushButton(words, this);
  button->setObjectName(QLatin1String(name));
  button->setAccessibleName(QString(words).remove(QLatin1Char('&')));
  row->addWidget(button);
  connect(button, &QPushButton::clicked, this, act);
  return button;
}

QWidget* WritingView::makeButtons() {
  auto* bar = new QWidget(this);
  auto* row = new QHBoxLayout(bar);
  row->setContentsMargins(0, 0, 0, 0);
  addButton(row, tr("&New"), "writing_new", [this] { begin(); });
  addButton(row, tr("&Open..."), "writing_open", [this] { ask(Ask::kOpen); });
  moment_ =
      addButton(row, tr("Take the present &moment"), "writing_moment", [this] { takeMoment(); });
  addButton(row, tr("&Undo"), "writing_undo",
            [this] { say(writing_.undo() ? QString() : tr("There is nothing to take back.")); });
  addButton(row, tr("&Check"), "writing_check", [this] { writing_.check(); });
  addButton(row, tr("&Save"), "writing_save", [this] { save(); });
  addButton(row, tr("Save &as..."), "writing_save_as", [this] { ask(Ask::kSaveAs); });
  addButton(row, tr("&Try it at once"), "writing_try", [this] { tryIt(); });
  row->addStretch(1);
  return bar;
}

QWidget* WritingView::makeAskLine() {
  ask_line_ = new QFrame(this);
  auto* column = new QVBoxLayout(ask_line_);
  column->setContentsMargins(0, 0, 0, 0);
  auto* row = new QHBoxLayout;
  column->addLayout(row);
  own_ = new QListWidget(ask_line_);
  own_->setObjectName(QStringLiteral("writing_own"));
  own_->setAccessibleName(tr("Your own scenarios"));
  own_->setFixedHeight(kOwnHeight);
  column->addWidget(own_);
  const auto take = [this](QListWidgetItem* item) {
    ask_path_->setText(item->data(Qt::UserRole).toString());
    answer();
  };
  connect(own_, &QListWidget::itemActivated, this, take);
  connect(own_, &QListWidget::itemClicked, this, [this](QListWidgetItem* item) {
    ask_path_->setText(item->data(Qt::UserRole).toString());
  });
  ask_words_ = new QLabel(ask_line_);
  ask_path_ = new QLineEdit(ask_line_);
  ask_path_->setObjectName(QStringLiteral("writing_path"));
  auto* completer = new QCompleter(ask_path_);
  auto* files = new QFileSystemModel(completer);
  files->setRootPath(QString());
  completer->setModel(files);
  ask_path_->setCompleter(completer);
  row->addWidget(ask_words_);
  row->addWidget(ask_path_, 1);
  ask_do_ = addButton(row, tr("Do it"), "writing_do", [this] { answer(); });
  addButton(row, tr("Leave it"), "writing_leave", [this] { closeAsk(); });
  connect(ask_path_, &QLineEdit::returnPressed, this, &WritingView::answer);
  connect(ask_path_, &QLineEdit::textEdited, this, [this] { overwrite_.clear(); });
  ask_line_->hide();
  return ask_line_;
}

QWidget* WritingView::makeMiddle() {
  auto* split = new QSplitter(this);
  sections_->setObjectName(QStringLiteral("writing_sections"));
  sections_->setAccessibleName(tr("Sections"));
  sections_->addItems({tr("Situation"), tr("Conditions"), tr("Controls and things"),
                       tr("People and events"), tr("Hidden and faults"), tr("Marking"), tr("Guide"),
                       tr("Words")});
  sections_->setWordWrap(true);
  sections_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  split->addWidget(sections_);
  split->addWidget(pages_);
  split->addWidget(text_);
  split->setStretchFactor(0, 0);
  split->setStretchFactor(1, 5);
  split->setStretchFactor(2, 4);
  split->setSizes(kWidths);
  split->setChildrenCollapsible(false);
  connect(sections_, &QListWidget::currentRowChanged, pages_, &QStackedWidget::setCurrentIndex);
  sections_->setCurrentRow(0);
  setFocusProxy(sections_);
  return split;
}

void WritingView::say(const QString& words) {
  said_->setText(words);
  said_->setVisible(!words.isEmpty());
}

void WritingView::refresh() {
  const bool named = !writing_.path().isEmpty();
  file_->setText((named ? writing_.path() : tr("not saved yet")) +
                 (writing_.isSaved() ? QString() : QStringLiteral(" *")));
  text_->showText(writing_.text(), writing_.savedText());
  losing_.clear();
}

void WritingView::showFaults() {
  const auto& faults = writing_.faults();
  text_->showFaults(faults, faults.empty() ? tr("Nothing is wrong with it.")
                                           : tr("%n fault(s), by line and column:", nullptr,
                                                static_cast<int>(faults.size())));
}

bool WritingView::mayLose(const QString& what) {
  if (writing_.isSaved() || writing_.savedText().empty()) return true;
  if (losing_ == what) return true;
  losing_ = what;
  say(tr("What you have changed is not saved. Ask for it once more to leave it."));
  return false;
}

void WritingView::begin() {
  if (!mayLose(QStringLiteral("new"))) return;
  writing_.begin();
  say(tr("A new scenario."));
}

void WritingView::takeMoment() {
  const session::LiveRun* run = desk_.run();
  if (run == nullptr) return say(tr("There is no run to take a moment of."));
  const auto not_kept = writing_.takeMoment(run->run(), run->situation().loaded);
  const QString time = QString::number(static_cast<double>(run->tick()) / 100.0, 'f', 0);
  say(not_kept.empty()
          ? tr("Taken as it stands at %1 s.").arg(time)
          : tr("Taken as it stands at %1 s. Not in it: %2.").arg(time, sentences(not_kept)));
}

QString WritingView::ownPath() const {
  const std::string title = writing_.draft().table(scenario::DraftSection::kHead).text("title");
  const auto folder = writing_.ownFolder();
  return QString::fromStdString(
      (folder / scenario::makeFolderName(folder, title) / "scenario.toml").string());
}

void WritingView::ask(Ask what) {
  asking_ = what;
  overwrite_.clear();
  const bool open = what == Ask::kOpen;
  ask_words_->setText(open ? tr("Open the file") : tr("Save as"));
  ask_path_->setAccessibleName(ask_words_->text());
  const QString start = writing_.path().isEmpty() ? ownPath() : writing_.path();
  ask_path_->setText(open ? QString::fromStdString(writing_.ownFolder().string()) : start);
  own_->setVisible(open);
  if (open) listOwn();
  ask_line_->show();
  ask_path_->setFocus();
  ask_path_->selectAll();
}

void WritingView::listOwn() {
  own_->clear();
  for (const auto& one : scenario::listScenarios(writing_.ownFolder(), writing_.shippedFolder(),
                                                 session::findRuleFaults)) {
    QString words = QString::fromStdString(one.title);
    if (one.fault)
      words += QStringLiteral("  ") +
               tr("(broken: %1)").arg(QString::fromStdString(scenario::toText(*one.fault)));
    auto* item = new QListWidgetItem(words, own_);
    item->setData(Qt::UserRole, QString::fromStdString(one.path));
  }
  own_->setVisible(own_->count() > 0);
}

void WritingView::closeAsk() {
  ask_line_->hide();
  overwrite_.clear();
  sections_->setFocus();
}

void WritingView::answer() {
  const QString path = ask_path_->text().trimmed();
  if (path.isEmpty()) return;
  if (asking_ == Ask::kOpen) {
    if (mayLose(path) && open(path)) closeAsk();
    return;
  }
  if (QFileInfo::exists(path) && overwrite_ != path && path != writing_.path()) {
    overwrite_ = path;
    return say(tr("That file is there already. Do it once more to write over it."));
  }
  saveTo(path);
}

bool WritingView::open(const QString& path) {
  QString file = path;
  if (QFileInfo(file).isDir()) file += QStringLiteral("/scenario.toml");
  if (writing_.open(file)) {
    say(tr("Opened."));
    return true;
  }
  const auto& why = writing_.refusal();
  say(tr("Refused, nothing was taken over: %1")
          .arg(QString::fromStdString(scenario::toText(why.front()))));
  text_->showFaults(
      why, tr("%n fault(s) of the file that was refused:", nullptr, static_cast<int>(why.size())));
  return false;
}

void WritingView::save() {
  if (writing_.path().isEmpty()) return ask(Ask::kSaveAs);
  saveTo(writing_.path());
}

void WritingView::saveTo(const QString& path) {
  if (!writing_.save(path)) {
    say(tr("Not saved: %1")
            .arg(QString::fromStdString(scenario::toText(writing_.refusal().front()))));
    return;
  }
  closeAsk();
  say(writing_.faults().empty() ? tr("Saved.")
                                : tr("Saved. It cannot be run before its faults are mended."));
}

void WritingView::tryIt() {
  if (!writing_.check().empty()) return say(tr("It cannot be tried before its faults are mended."));
  const QString path = writing_.path().isEmpty() ? ownPath() : writing_.path();
  if (!writing_.isSaved() || writing_.path().isEmpty()) saveTo(path);
  if (!writing_.isSaved()) return;
  say(tr("Saved, and tried."));
  Q_EMIT tryRequested(path);
}

void WritingView::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape && ask_line_->isVisible()) return closeAsk();
  if (event->matches(QKeySequence::Undo)) {
    (void)writing_.undo();
    return;
  }
  if (event->matches(QKeySequence::Save)) return save();
  QWidget::keyPressEvent(event);
}

}  // namespace cabwright::desk
