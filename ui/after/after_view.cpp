// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/after_view.h"

#include <QClipboard>
#include <QFileDialog>
#include <QGuiApplication>
#include <QSaveFile>
#include <QScrollArea>
#include <QScrollBar>

#include "after/words.h"

namespace cabwright::after {

AfterView::AfterView(const session::LiveRun& run, QWidget* parent)
    : AfterView(makeFinishedRun(run), parent) {}

AfterView::AfterView(FinishedRun run, QWidget* parent)
    : QWidget(parent),
      run_(std::move(run)),
      head_(new FindingHead(look_, makeFinding(run_.sheet), this)),
      strip_(new StripChart(look_, this)),
      scroll_(new QScrollArea(this)),
      column_(new QWidget) {
  setAccessibleName(tr("After the run"));
  strip_->setRun(run_);
  makeColumn();
  makeFoot();
  connect(strip_, &StripChart::flagChosen, this, &AfterView::showLine);
  setMinimumSize(960, 600);
  if (!cards_.empty()) showLine(cards_.front()->line());
}

AfterView::~AfterView() = default;

void AfterView::makeColumn() {
  const auto n = static_cast<int>(findBrokenLines(run_.sheet).size());
  const QString count = n == 0   ? tr("none")
                        : n == 1 ? linesText(n)
                                 : tr("%1, criticals first").arg(linesText(n));
  auto* caption = new SectionBlock(look_, tr("Not kept"), count, {}, false, column_);
  blocks_.push_back(caption);
  for (const marking::SheetLine* line : findBrokenLines(run_.sheet)) {
    auto* card = new LineCard(look_, run_, *line, column_);
    connect(card, &LineCard::chosen, this, &AfterView::showLine);
    connect(card, &LineCard::takeAgain, this, &AfterView::takeAgain);
    cards_.push_back(card);
    blocks_.push_back(card);
  }
  for (SectionText& text : makeSections(run_.sheet)) {
    auto* section = new SectionBlock(look_, text.caption, text.count, std::move(text.rows),
                                     text.folded, column_);
    connect(section, &SheetBlock::heightChanged, this, &AfterView::arrangeColumn);
    sections_.push_back(section);
    blocks_.push_back(section);
  }
  scroll_->setWidget(column_);
  scroll_->setFrameShape(QFrame::NoFrame);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
  scroll_->setFocusPolicy(Qt::NoFocus);
  scroll_->setAccessibleName(tr("The mark sheet"));
}

void AfterView::makeFoot() {
  const auto add = [this](const QString& words, auto slot) {
    auto* button = new SheetButton(look_, words, this);
    connect(button, &QAbstractButton::clicked, this, slot);
    buttons_.push_back(button);
    return button;
  };
  add(tr("Copy the sheet"), [this] { copySheet(); });
  add(tr("Save the sheet"), [this] { askWhereToSave(); });
  add(tr("Take it again from the start"), [this] { Q_EMIT again(); });
  add(tr("Back to choosing"), [this] { Q_EMIT closed(); })->setStrong(true);
}

void AfterView::setTheme(drawing::Theme theme) {
  if (theme == look_.theme) return;
  look_.theme = theme;
  arrange();
}

bool AfterView::showLine(int line) {
  for (LineCard* card : cards_) {
    if (!card->speaksOf(line)) continue;
    for (LineCard* other : cards_) other->setSelected(other == card);
    for (const Flag& flag : strip_->flags())
      if (flag.line == line && !flag.again) strip_->setCursor(flag.tick);
    strip_->setSelectedLine(line);
    // Its head first; a card may be higher than the window.
    const int top = card->y(), bar = scroll_->verticalScrollBar()->value();
    const int seen = scroll_->viewport()->height();
    if (top < bar || top + card->height() > bar + seen)
      scroll_->verticalScrollBar()->setValue(std::max(0, top - 8));
    return true;
  }
  return false;
}

QString AfterView::sheetText() const {
  return QString::fromStdString(marking::printSheet(run_.sheet));
}

bool AfterView::saveSheet(const QString& path) {
  QSaveFile file(path);
  const QByteArray text = sheetText().toUtf8();
  const bool saved =
      file.open(QIODevice::WriteOnly) && file.write(text) == text.size() && file.commit();
  const QString name = QFileInfo(path).fileName();
  say(saved ? tr("Saved as %1.").arg(name)
            : tr("%1 could not be written: %2.").arg(name, file.errorString()));
  return saved;
}

void AfterView::askWhereToSave() {
  auto* dialog = new QFileDialog(this, tr("Save the sheet"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->setDefaultSuffix(QStringLiteral("txt"));
  dialog->setNameFilter(tr("Text (*.txt)"));
  dialog->selectFile(tr("mark sheet") + QLatin1String(".txt"));
  connect(dialog, &QFileDialog::fileSelected, this, &AfterView::saveSheet);
  dialog->setModal(false);
  dialog->show();
}

void AfterView::copySheet() {
  QGuiApplication::clipboard()->setText(sheetText());
  say(tr("The sheet is on the clipboard."));
}

void AfterView::say(const QString& words) {
  said_ = words;
  update();
}

}  // namespace cabwright::after
