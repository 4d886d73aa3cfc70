// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fault_picker.h"

#include <QKeyEvent>
#include <QVBoxLayout>

#include "desk/desk_look.h"

namespace cabwright::desk {

FaultPicker::FaultPicker(QWidget* parent)
    : QWidget(parent),
      search_(new QLineEdit(this)),
      head_(makeHeading({}, this)),
      list_(new QListWidget(this)),
      spot_(spotTable().size()) {
  search_->setObjectName(QStringLiteral("fault_search"));
  search_->setPlaceholderText(tr("Search all faults (F3)"));
  search_->setAccessibleName(tr("Search all faults"));
  search_->setClearButtonEnabled(true);
  search_->installEventFilter(this);
  list_->setObjectName(QStringLiteral("fault_list"));
  list_->setAccessibleName(tr("Faults that can be put in"));
  list_->setWordWrap(true);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  list_->setResizeMode(QListView::Adjust);
  list_->setTextElideMode(Qt::ElideNone);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(5);
  column->addWidget(search_);
  column->addWidget(head_);
  column->addWidget(list_, 1);
  connect(search_, &QLineEdit::textChanged, this, &FaultPicker::fill);
  connect(search_, &QLineEdit::returnPressed, this, [this] {
    if (list_->count() > 0) list_->setFocus();
  });
  connect(list_, &QListWidget::currentRowChanged, this, [this] { Q_EMIT faultChosen(chosen()); });
  connect(list_, &QListWidget::itemActivated, this, &FaultPicker::faultTaken);
  fill();
}

void FaultPicker::showSpot(std::size_t spot) {
  spot_ = spot;
  search_->clear();
  fill();
}

const fault::FaultSpec* FaultPicker::chosen() const {
  const int row = list_->currentRow();
  return row >= 0 && row < static_cast<int>(shown_.size()) ? shown_[static_cast<std::size_t>(row)]
                                                           : nullptr;
}

void FaultPicker::fill() {
  const QString words = search_->text().simplified();
  const bool of_spot = words.isEmpty() && spot_ < spotTable().size();
  shown_ = of_spot ? faultsAt(spot_) : findFaults(words);
  {
    const QSignalBlocker quiet(list_);
    list_->clear();
    for (const fault::FaultSpec* spec : shown_) {
      auto* row = new QListWidgetItem(
          whereText(*spec) + QLatin1String(": ") + faultWords(spec->text), list_);
      row->setToolTip(QString::fromStdString(spec->name));
    }
    if (!shown_.empty()) list_->setCurrentRow(0);
  }
  if (of_spot) {
    head_->setText(nameOf(spotTable()[spot_]));
  } else if (words.isEmpty()) {
    head_->setText(tr("Choose a spot of the unit"));
  } else {
    head_->setText(tr("%n fault(s) found", nullptr, static_cast<int>(shown_.size())));
  }
  Q_EMIT faultChosen(chosen());
}

// From the field straight down into the list.
bool FaultPicker::eventFilter(QObject* watched, QEvent* event) {
  if (watched == search_ && event->type() == QEvent::KeyPress &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Down && list_->count() > 0) {
    list_->setFocus();
    return true;
  }
  return QWidget::eventFilter(watched, event);
}

}  // namespace cabwright::desk
