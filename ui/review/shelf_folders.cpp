// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/shelf_folders.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QVBoxLayout>

#include "review_room/shelf_look.h"

namespace cabwright::review_room {

ShelfFolders::ShelfFolders(QWidget* parent)
    : QFrame(parent),
      list_(new QListWidget(this)),
      path_(new QLineEdit(this)),
      take_off_(makeShelfButton(tr("Take off the shelf"), QStringLiteral("take-off"), this)),
      fault_(new QLabel(this)) {
  setObjectName(QStringLiteral("panel"));
  setAccessibleName(tr("Folders on the shelf"));
  auto* column = new QVBoxLayout(this);
  auto* heading = new QLabel(tr("Folders on the shelf"), this);
  heading->setObjectName(QStringLiteral("heading"));
  column->addWidget(heading);
  column->addWidget(makeSecondLabel(
      tr("Sessions are looked for in them and in the folders within. Taking a folder off deletes "
         "nothing."),
      this));
  list_->setAccessibleName(tr("Folders"));
  list_->setMaximumHeight(88);
  column->addWidget(list_);
  auto* row = new QHBoxLayout;
  path_->setAccessibleName(tr("Another folder"));
  path_->setPlaceholderText(tr("path of another folder"));
  auto* add_button = makeShelfButton(tr("Put on the shelf"), QStringLiteral("add"), this);
  auto* look_button = makeShelfButton(tr("Look for it"), QStringLiteral("look"), this);
  auto* close = makeShelfButton(tr("Close"), QStringLiteral("close"), this);
  row->addWidget(path_, 1);
  for (QPushButton* button : {add_button, look_button, take_off_, close}) row->addWidget(button);
  column->addLayout(row);
  fault_->setObjectName(QStringLiteral("bad"));
  fault_->setTextFormat(Qt::PlainText);
  fault_->hide();
  column->addWidget(fault_);
  connect(add_button, &QPushButton::clicked, this, &ShelfFolders::add);
  connect(path_, &QLineEdit::returnPressed, this, &ShelfFolders::add);
  connect(look_button, &QPushButton::clicked, this, &ShelfFolders::look);
  connect(take_off_, &QPushButton::clicked, this, &ShelfFolders::takeOff);
  connect(close, &QPushButton::clicked, this, &ShelfFolders::closed);
  connect(list_, &QListWidget::currentRowChanged, this, &ShelfFolders::refresh);
}

void ShelfFolders::setFolders(const QString& own, const QStringList& others) {
  own_ = own;
  list_->clear();
  if (!own.isEmpty())
    list_->addItem(tr("%1 (the program's own)").arg(QDir::toNativeSeparators(own)));
  list_->addItems(others);
  list_->setCurrentRow(0);
  refresh();
}

QStringList ShelfFolders::others() const {
  QStringList folders;
  for (int k = own_.isEmpty() ? 0 : 1; k < list_->count(); ++k) folders << list_->item(k)->text();
  return folders;
}

void ShelfFolders::refresh() {
  take_off_->setEnabled(list_->currentRow() >= (own_.isEmpty() ? 0 : 1));
}

void ShelfFolders::add() {
  const QString path = QDir::cleanPath(path_->text().trimmed());
  const QFileInfo info(path);
  QString fault;
  if (path_->text().trimmed().isEmpty()) {
    fault = tr("Write the path of a folder first.");
  } else if (!info.isDir()) {
    fault = tr("There is no folder %1.").arg(path);
  } else if (!info.isReadable()) {
    fault = tr("The folder %1 cannot be read.").arg(path);
  } else if (others().contains(info.absoluteFilePath()) ||
             info.absoluteFilePath() == QDir::cleanPath(own_)) {
    fault = tr("It is on the shelf already.");
  }
  fault_->setText(fault);
  fault_->setVisible(!fault.isEmpty());
  if (!fault.isEmpty()) return;
  list_->addItem(info.absoluteFilePath());
  path_->clear();
  Q_EMIT changed();
}

void ShelfFolders::takeOff() {
  if (!take_off_->isEnabled()) return;
  delete list_->takeItem(list_->currentRow());
  fault_->hide();
  Q_EMIT changed();
}

// Beside the window and not over it: nothing here stops a run.
void ShelfFolders::look() {
  auto* dialog = new QFileDialog(this, tr("A folder with sessions"), path_->text());
  dialog->setFileMode(QFileDialog::Directory);
  dialog->setOption(QFileDialog::ShowDirsOnly);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setModal(false);
  connect(dialog, &QFileDialog::fileSelected, this, [this](const QString& path) {
    path_->setText(path);
    add();
  });
  dialog->show();
}

void ShelfFolders::takeFocus() { path_->setFocus(Qt::OtherFocusReason); }

void ShelfFolders::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    Q_EMIT closed();
  } else if (event->key() == Qt::Key_Delete && list_->hasFocus()) {
    takeOff();
  } else {
    QFrame::keyPressEvent(event);
  }
}

}  // namespace cabwright::review_room
