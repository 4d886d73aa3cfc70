// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/marks_style.h"

#include <QStyle>
#include <QVariant>
#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <utility>

#include "drawing/face.h"

namespace cabwright::review_room {

using drawing::Tone;

namespace {

constexpr double kLine = 25, kPad = 16;

// Words that begin with @ are tones and sizes of the sheet.
constexpr const char* kStyle =
    "QWidget { color: @ink; font-family: '@family'; font-size: @text; }"
    "QLabel[kind='second'] { color: @ink2; }"
    "QLabel[kind='heading'] { font-weight: bold; font-size: @name; }"
    "QLabel[kind='title'] { font-size: @result; }"
    "QLabel[kind='refusal'] { color: @bad; font-weight: bold; }"
    "QLabel[kind='done'] { color: @good; }"
    "QLineEdit, QPlainTextEdit { background: @face; border: 1px solid @rule; border-radius: 3px;"
    " padding: @pad; selection-background-color: @wash; selection-color: @ink; }"
    "QLineEdit:focus, QPlainTextEdit:focus { border: 2px solid @hand; }"
    "QTextBrowser, QListView { background: @face; border: 1px solid @ink; border-radius: 4px;"
    " selection-background-color: @wash; selection-color: @ink; }"
    "QTextBrowser:focus, QListView:focus { border: 2px solid @hand; }"
    "QTextBrowser { padding: @pad; }"
    "QScrollArea, QScrollArea > QWidget > QWidget { background: transparent; border: none; }"
    "QScrollBar:vertical { background: transparent; width: @bar; margin: 0; }"
    "QScrollBar::handle:vertical { background: @rule; border-radius: @round; min-height: 32px; }"
    "QScrollBar::add-line, QScrollBar::sub-line { height: 0; }"
    "QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }"
    "QToolTip { background: @face; color: @ink; border: 1px solid @ink; }";

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

int toPixels(const after::SheetLook& look, double u) {
  return std::max(1, static_cast<int>(std::lround(u * look.scale)));
}

QString marksStyleSheet(const after::SheetLook& look) {
  QString sheet = QString::fromLatin1(kStyle);
  const std::initializer_list<std::pair<const char*, Tone>> tones{
      {"@paper", Tone::kPaper}, {"@face", Tone::kFace}, {"@ink2", Tone::kInk2},
      {"@ink", Tone::kInk},     {"@wash", Tone::kWash}, {"@hand", Tone::kHand},
      {"@bad", Tone::kBad},     {"@good", Tone::kGood}, {"@rule", Tone::kRule}};
  for (const auto& [word, tone] : tones)
    sheet.replace(QLatin1String(word), drawing::colorOf(look.theme, tone).name());
  const std::initializer_list<std::pair<const char*, double>> sizes{{"@text", drawing::kText},
                                                                    {"@name", drawing::kName},
                                                                    {"@result", drawing::kResult},
                                                                    {"@bar", 12},
                                                                    {"@pad", 5},
                                                                    {"@round", 5}};
  for (const auto& [word, u] : sizes)
    sheet.replace(QLatin1String(word), QString::number(toPixels(look, u)) + QLatin1String("px"));
  return sheet.replace(QLatin1String("@family"), drawing::faceName());
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
  if (lines > 0) text->setFixedHeight(toPixels(look, kLine * lines + kPad));
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
