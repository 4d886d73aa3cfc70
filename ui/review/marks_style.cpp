// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/marks_style.h"

#include <QStyle>
#include <QVariant>

#include "drawing/style.h"

namespace cabwright::review_room {

namespace {

constexpr double kLine = 25, kPad = 16;

constexpr const char* kStyle =
    "QLabel[kind='second'] { color: @ink2; }"
    "QLabel[kind='heading'] { font-weight: bold; font-size: @name; }"
    "QLabel[kind='title'] { font-size: @result; }"
    "QLabel[kind='refusal'] { color: @bad; font-weight: bold; }"
    "QLabel[kind='done'] { color: @good; }"
    "QTextBrowser, QListView { background: @face; border: 1px solid @ink; border-radius: 4px;"
    " selection-background-color: @wash; selection-color: @ink; }"
    "QTextBrowser:focus, QListView:focus { border: 2px solid @hand; }"
    "QTextBrowser { padding: 4px; }";

QString nameOf(WordsKind kind) {
  switch (kind) {
    case WordsKind::kPlain:
      return QStringLiteral("plain");
    case WordsKind::kSecond:
      return QStringLiteral("second");
    case WordsKind::kHeading:
      return QStringLiteral("heading");
    case WordsKind::kTitle:
      return QStringLiteral("title");
    case WordsKind::kRefusal:
      return QStringLiteral("refusal");
    case WordsKind::kDone:
      break;
  }
  return QStringLiteral("done");
}

}  // namespace

QString marksStyleSheet(const after::SheetLook& look) {
  const int px = after::toPixels(drawing::kText, look);
  return drawing::commonStyle(look.theme, px) +
         drawing::fillStyle(QString::fromLatin1(kStyle), look.theme, px);
}

QLabel* makeWords(const QString& words, WordsKind kind, QWidget* parent) {
  auto* label = new QLabel(words, parent);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setProperty("kind", nameOf(kind));
  return label;
}

void setKind(QLabel* label, WordsKind kind) {
  if (label->property("kind").toString() == nameOf(kind)) return;
  label->setProperty("kind", nameOf(kind));
  label->style()->unpolish(label);
  label->style()->polish(label);
}

QLineEdit* makeLine(const QString& name, const QString& object_name, QWidget* parent) {
  auto* line = new QLineEdit(parent);
  line->setAccessibleName(name);
  line->setObjectName(object_name);
  return line;
}

QPlainTextEdit* makeText(const QString& name, const QString& object_name, int lines,
                         QWidget* parent) {
  auto* text = new QPlainTextEdit(parent);
  text->setAccessibleName(name);
  text->setObjectName(object_name);
  text->setTabChangesFocus(true);
  text->setProperty("lines", lines);
  text->setVerticalScrollBarPolicy(Qt::ScrollBarAsNeeded);
  return text;
}

void fitText(QPlainTextEdit* text, const after::SheetLook& look) {
  const int lines = text->property("lines").toInt();
  if (lines > 0) text->setFixedHeight(toPixels(kLine * lines + kPad, look));
}

QScrollArea* makeScroll(QWidget* inside, QWidget* parent) {
  inside->setContentsMargins(0, 0, 10, 0);  // clear of the bar
  auto* scroll = new QScrollArea(parent);
  scroll->setWidget(inside);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setFocusPolicy(Qt::NoFocus);
  return scroll;
}

}  // namespace cabwright::review_room
