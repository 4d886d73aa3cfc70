// SPDX-License-Identifier: GPL-3.0-or-later
// Which sessions are asked for: choices of what there is on the shelf, days, and free text.
#pragma once

#include <QLineEdit>
#include <QTimer>
#include <QWidget>

#include "review_room/shelf_look.h"
#include "review_room/shelf_row.h"

namespace cabwright::review_room {

class ShelfFilterBar : public QWidget {
  Q_OBJECT
 public:
  explicit ShelfFilterBar(QWidget* parent);

  /// Offers what these have; what is asked for stays, as far as it is there.
  void setChoices(const std::vector<ShelfRow>& rows);
  [[nodiscard]] ShelfFilter filter() const;
  /// Asks for this trainee and exercise, or all (empty); the rest as it is.
  void choose(const QString& trainee, const QString& exercise);
  void clear();
  void takeFocus();

 Q_SIGNALS:
  void changed();

 private:
  void fill(drawing::ChoiceBox* choice, const std::vector<std::pair<QString, QString>>& entries);
  QLineEdit* makeDay(const QString& name, const QString& words);
  void markDays();

  drawing::ChoiceBox *trainee_, *exercise_, *mode_, *outcome_;
  QLineEdit *from_, *to_, *text_;
  QPushButton* clear_;
  QTimer pause_;  ///< between the last letter and the search
};

/// "2031-03-15", or as the reader's language writes it in short. Not valid for any other text.
[[nodiscard]] QDate readDay(const QString& text);

}  // namespace cabwright::review_room
