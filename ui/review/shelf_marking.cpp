// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/shelf_marking.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QVBoxLayout>

#include "review_room/shelf_look.h"

namespace cabwright::review_room {
namespace {

constexpr std::size_t kToldLines = 4;

QString fromText(const std::string& text) { return QString::fromStdString(text); }

QString verdictText(const std::string& word) {
  return word.empty() ? QCoreApplication::translate("ShelfMarking", "no such line")
                      : QCoreApplication::translate("Sheet", word.c_str());
}

}  // namespace

QString differenceText(const review::MarkDifference& found) {
  if (!found.fault.empty()) return fromText(found.fault);
  if (found.same || !found.complete) return {};
  QStringList parts;
  if (found.decision_differs)
    parts << (found.passed_now ? QCoreApplication::translate("ShelfMarking",
                                                             "recorded as not passed, now passed")
                               : QCoreApplication::translate("ShelfMarking",
                                                             "recorded as passed, now not passed"));
  std::size_t told = 0;
  for (const review::LineDifference& line : found.lines) {
    if (told++ == kToldLines) break;
    parts << QCoreApplication::translate("ShelfMarking", "line %1: recorded %2, now %3")
                 .arg(fromText(line.rule), verdictText(line.recorded), verdictText(line.now));
  }
  if (found.lines.size() > kToldLines)
    parts << QCoreApplication::translate("ShelfMarking", "and %n more line(s)", nullptr,
                                         static_cast<int>(found.lines.size() - kToldLines));
  if (parts.isEmpty())
    parts << QCoreApplication::translate("ShelfMarking",
                                         "all verdicts are the same, other words of the sheet "
                                         "are not");
  return parts.join(QLatin1String("; "));
}

ShelfMarking::ShelfMarking(QWidget* parent)
    : QFrame(parent), heading_(new QLabel(this)), list_(new QListWidget(this)) {
  setObjectName(QStringLiteral("panel"));
  setAccessibleName(tr("Marked again"));
  heading_->setObjectName(QStringLiteral("heading"));
  heading_->setWordWrap(true);
  list_->setAccessibleName(tr("What differs"));
  list_->setWordWrap(true);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  auto* close = makeShelfButton(tr("Close"), QStringLiteral("close"), this);
  auto* column = new QVBoxLayout(this);
  auto* head = new QHBoxLayout;
  head->addWidget(heading_, 1);
  head->addWidget(close);
  column->addLayout(head);
  column->addWidget(list_, 1);
  setMaximumHeight(230);
  connect(close, &QPushButton::clicked, this, &ShelfMarking::closed);
  connect(list_, &QListWidget::itemActivated, this, [this](const QListWidgetItem* item) {
    Q_EMIT openAsked(item->data(Qt::UserRole).toString());
  });
}

void ShelfMarking::begin(int all) {
  all_ = all;
  done_ = same_ = differ_ = cut_off_ = broken_ = 0;
  over_ = given_up_ = false;
  list_->clear();
  list_->hide();
  refresh();
}

void ShelfMarking::list(const std::filesystem::path& file, const QString& words) {
  auto* item = new QListWidgetItem(
      QStringLiteral("%1: %2").arg(fromText(file.filename().string()), words), list_);
  item->setData(Qt::UserRole, fromText(file.string()));
  item->setToolTip(fromText(file.string()));
  list_->show();
}

void ShelfMarking::add(const review::MarkDifference& found) {
  ++done_;
  const QString words = differenceText(found);
  if (!found.fault.empty()) {
    ++broken_;
  } else if (!found.complete) {
    ++cut_off_;
  } else if (words.isEmpty()) {
    ++same_;
  } else {
    ++differ_;
  }
  if (!words.isEmpty()) list(found.file, words);
  refresh();
}

void ShelfMarking::end(bool given_up) {
  over_ = true;
  given_up_ = given_up;
  refresh();
}

void ShelfMarking::refresh() {
  QStringList parts{over_ && !given_up_ ? tr("Marked again: %n session(s)", nullptr, done_)
                    : given_up_         ? tr("Given up after %1 of %2").arg(done_).arg(all_)
                                        : tr("Marking again: %1 of %2").arg(done_).arg(all_)};
  if (same_ > 0) parts << tr("%n as recorded", nullptr, same_);
  if (differ_ > 0) parts << tr("%n differ(s)", nullptr, differ_);
  if (cut_off_ > 0) parts << tr("%n cut off, with nothing to compare", nullptr, cut_off_);
  if (broken_ > 0) parts << tr("%n cannot be marked", nullptr, broken_);
  heading_->setText(parts.join(QStringLiteral(" · ")));
}

void ShelfMarking::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    Q_EMIT closed();
  } else {
    QFrame::keyPressEvent(event);
  }
}

}  // namespace cabwright::review_room
