// SPDX-License-Identifier: GPL-3.0-or-later
// A word in a thin box with its key: what can be done that is no lever.
#pragma once

#include <functional>

#include "cab/part.h"
#include "drawing/verdict.h"

namespace cabwright::cab {

class WordButton : public Part {
  Q_OBJECT
 public:
  WordButton(Seat& seat, const SheetStyle& style, QString word, QWidget* parent);
  void setWord(const QString& word);
  void setKey(const QString& key);
  void setSign(drawing::VerdictSign sign);
  void setDescription(const QString& text) { description_ = text; }
  /// Drawn pale and not to be pressed.
  void setUsable(bool usable);
  /// Strong: the thing to do now.
  void setMarked(bool marked);
  /// How wide its area must be for the word to stand whole, u; with its key where one is drawn and
  /// wanted. In the least that does the word stands whole, but is not bold when it is marked.
  [[nodiscard]] double neededWidth(bool with_key, bool bold = true) const;

  [[nodiscard]] PartRole role() const override;
  bool activate() override;

 Q_SIGNALS:
  void pressed();

 protected:
  void paint(drawing::Pen& pen) const override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  struct Gaps;
  [[nodiscard]] bool hasCap() const;
  [[nodiscard]] double boxWidth(const Gaps& gaps, bool cap, bool bold) const;
  QString word_, key_, description_;
  drawing::VerdictSign sign_ = drawing::VerdictSign::kNone;
  bool usable_ = true, down_ = false, marked_ = false;
};

}  // namespace cabwright::cab
