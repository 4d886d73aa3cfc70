// SPDX-License-Identifier: GPL-3.0-or-later
// A form inside the page by which something is added to the session: what is asked, the words when
// it is refused, and the two ways out of it. Ctrl+Enter does it, Escape leaves it. Nothing modal.
#pragma once

#include <QBoxLayout>
#include <QButtonGroup>
#include <QWidget>
#include <optional>
#include <string>
#include <vector>

#include "review_room/marks_button.h"
#include "review_room/marks_style.h"
#include "review_room/opened.h"

namespace cabwright::review_room {

class MarkForm : public QWidget {
  Q_OBJECT
 public:
  MarkForm(const after::SheetLook& look, Opened& opened, const QString& name, QWidget* parent);

  /// After another theme or scale.
  virtual void restyle();
  /// Why it was not done the last time; empty: it was, or nothing was tried.
  [[nodiscard]] QString refusal() const;
  /// Does it: adds what has been filled in, or says why not.
  void act();

 Q_SIGNALS:
  void done();
  void cancelled();

 protected:
  /// Adds it; empty when it was done, else why not.
  virtual QString tryIt() = 0;
  void keyPressEvent(QKeyEvent* event) override;

  [[nodiscard]] QVBoxLayout* column() const { return column_; }
  [[nodiscard]] Opened& opened() const { return opened_; }
  [[nodiscard]] const after::SheetLook& look() const { return look_; }
  /// Refusal, and the buttons below it; last of all.
  void addFoot(const QString& do_words, const QString& object_name, bool can_be_left);
  /// Buttons of which one is checked; their numbers are their places.
  QButtonGroup* addChoice(const QString& caption, const QStringList& words,
                          const QString& object_name);
  void say(const QString& words, bool refused);
  [[nodiscard]] MarkButton* doButton() const { return do_; }

 private:
  const after::SheetLook& look_;
  Opened& opened_;
  QVBoxLayout* column_;
  QLabel* said_ = nullptr;
  MarkButton* do_ = nullptr;
  bool refused_ = false;
};

/// What Opened::add said, without the name of the file and in the reader's language; empty: done.
[[nodiscard]] QString refusalText(const Opened& opened, const std::optional<std::string>& fault);

}  // namespace cabwright::review_room
