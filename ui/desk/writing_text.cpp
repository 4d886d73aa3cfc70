// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/writing_text.h"

#include <QFontDatabase>
#include <QTextBlock>
#include <QVBoxLayout>
#include <algorithm>
#include <string_view>

namespace cabwright::desk {

namespace {

constexpr std::size_t kMostLines = 2000;  // longer ones are not compared line by line

std::vector<std::string_view> linesOf(std::string_view text) {
  std::vector<std::string_view> all;
  while (!text.empty()) {
    const std::size_t end = text.find('\n');
    all.push_back(text.substr(0, end));
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
  }
  return all;
}

}  // namespace

std::vector<int> findNewLines(const std::string& was, const std::string& now) {
  const auto a = linesOf(was), b = linesOf(now);
  std::vector<int> fresh;
  if (a.size() > kMostLines || b.size() > kMostLines) return fresh;
  const std::size_t n = a.size(), m = b.size();
  std::vector<std::size_t> longest((n + 1) * (m + 1), 0);
  const auto at = [&](std::size_t i, std::size_t j) -> std::size_t& {
    return longest[i * (m + 1) + j];
  };
  for (std::size_t i = n; i-- > 0;)
    for (std::size_t j = m; j-- > 0;)
      at(i, j) = a[i] == b[j] ? at(i + 1, j + 1) + 1 : std::max(at(i + 1, j), at(i, j + 1));
  std::size_t i = 0;
  for (std::size_t j = 0; j < m;) {
    if (i < n && a[i] == b[j]) {
      ++i;
      ++j;
    } else if (i < n && at(i + 1, j) >= at(i, j + 1)) {
      ++i;
    } else {
      fresh.push_back(static_cast<int>(j++));
    }
  }
  return fresh;
}

WritingText::WritingText(QWidget* parent)
    : QWidget(parent),
      text_(new QPlainTextEdit(this)),
      head_(new QLabel(this)),
      faults_(new QListWidget(this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  text_->setReadOnly(true);
  text_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  text_->setTabChangesFocus(true);
  text_->setLineWrapMode(QPlainTextEdit::NoWrap);
  QFont fixed = QFontDatabase::systemFont(QFontDatabase::FixedFont);
  text_->setStyleSheet(QStringLiteral("font-family: '%1', monospace;").arg(fixed.family()));
  text_->setObjectName(QStringLiteral("writing_text"));
  text_->setAccessibleName(tr("The file as it would be saved"));
  head_->setObjectName(QStringLiteral("writing_verdict"));
  head_->setWordWrap(true);
  faults_->setObjectName(QStringLiteral("writing_faults"));
  faults_->setAccessibleName(tr("What is wrong, with line and column"));
  faults_->setWordWrap(true);
  column->addWidget(text_, 3);
  column->addWidget(head_);
  column->addWidget(faults_, 1);
  connect(faults_, &QListWidget::itemClicked, this, [this] { jump(faults_->currentRow()); });
  connect(faults_, &QListWidget::itemActivated, this, [this] { jump(faults_->currentRow()); });
}

void WritingText::showText(const std::string& now, const std::string& saved) {
  const QString words = QString::fromStdString(now);
  if (text_->toPlainText() != words) text_->setPlainText(words);
  QList<QTextEdit::ExtraSelection> marks;
  // The wash of the theme, which the style sheet has given the field. What was never saved is new
  // from end to end: nothing to mark.
  text_->ensurePolished();
  const QColor color = text_->palette().color(QPalette::Highlight);
  for (const int line : saved.empty() ? std::vector<int>() : findNewLines(saved, now)) {
    QTextEdit::ExtraSelection mark;
    mark.format.setBackground(color);
    mark.format.setProperty(QTextFormat::FullWidthSelection, true);
    mark.cursor = QTextCursor(text_->document()->findBlockByNumber(line));
    marks << mark;
  }
  text_->setExtraSelections(marks);
}

void WritingText::showFaults(const scenario::FileFaults& faults, const QString& head) {
  shown_ = faults;
  head_->setText(head);
  faults_->clear();
  for (const scenario::FileFault& fault : faults)
    faults_->addItem(QString::fromStdString(scenario::toText(fault)));
  faults_->setVisible(!faults.empty());
}

void WritingText::jump(int row) {
  if (row < 0 || row >= static_cast<int>(shown_.size())) return;
  const scenario::FilePlace& at = shown_[static_cast<std::size_t>(row)].at;
  if (at.line == 0) return;
  const QTextBlock block = text_->document()->findBlockByNumber(static_cast<int>(at.line) - 1);
  if (!block.isValid()) return;
  QTextCursor cursor(block);
  // Columns are characters; a cursor counts UTF-16.
  const auto letters = block.text().toUcs4();
  const auto column = std::min<qsizetype>(static_cast<qsizetype>(at.column) - 1, letters.size());
  const QString before = QString::fromUcs4(reinterpret_cast<const char32_t*>(letters.constData()),
                                           std::max<qsizetype>(column, 0));
  cursor.setPosition(block.position() + static_cast<int>(before.size()));
  text_->setTextCursor(cursor);
  text_->centerCursor();
  text_->setFocus();
}

}  // namespace cabwright::desk
