// SPDX-License-Identifier: GPL-3.0-or-later
// How the ordinary widgets of the mark sheet look, and small makers of them: the sheet's own tones
// and type, as in the other rooms.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QString>
#include <string_view>

#include "after/sheet_look.h"

namespace cabwright::review_room {

[[nodiscard]] QString marksStyleSheet(const after::SheetLook& look);

/// What a label is, by which it gets its tone and size.
enum class WordsKind { kPlain, kSecond, kHeading, kTitle, kRefusal, kDone };
/// Wrapped, with words that can be selected when they are plain.
[[nodiscard]] QLabel* makeWords(const QString& words, WordsKind kind, QWidget* parent);
/// Gives the label another kind.
void setKind(QLabel* label, WordsKind kind);

/// One line; `name` for screen readers, `object_name` for tests.
[[nodiscard]] QLineEdit* makeLine(const QString& name, const QString& object_name, QWidget* parent);
/// Some lines of free text; Tab goes on to what follows.
[[nodiscard]] QPlainTextEdit* makeText(const QString& name, const QString& object_name, int lines,
                                       QWidget* parent);
/// After the look has changed: as high as its lines need.
void fitText(QPlainTextEdit* text, const after::SheetLook& look);

/// A page that is scrolled when it is higher than its room; `inside` gets a column.
[[nodiscard]] QScrollArea* makeScroll(QWidget* inside, QWidget* parent);

[[nodiscard]] inline QString toQt(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

}  // namespace cabwright::review_room
