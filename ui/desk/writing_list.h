// SPDX-License-Identifier: GPL-3.0-or-later
// A list of sections of one kind ([[hidden]], [[fault]], [[event]]): which there are, more of them,
// fewer, another order; the chosen one's fields stand below.
#pragma once

#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>
#include <QWidget>
#include <functional>

#include "desk/writing_form.h"

namespace cabwright::desk {

class WritingList : public QWidget {
  Q_OBJECT
 public:
  using Summary = std::function<QString(const scenario::DraftTable&)>;

  WritingList(Writing& writing, scenario::DraftSection section, const QString& title,
              Summary summary, QWidget* parent = nullptr);
  /// The form of the chosen one. It stands below the list and is dead while none is chosen.
  WritingForm* makeForm();
  /// Puts one in behind the chosen one and chooses it.
  void add(scenario::DraftTable table);
  /// A button that adds what `make` gives.
  QPushButton* addMaker(const QString& words, const QString& name,
                        std::function<scenario::DraftTable()> make);
  [[nodiscard]] QListWidget* list() const { return list_; }
  [[nodiscard]] QVBoxLayout* column() const { return column_; }

 private:
  void fill();
  void refresh();
  void move(int by);
  [[nodiscard]] std::size_t chosen() const;

  Writing& writing_;
  scenario::DraftSection section_;
  Summary summary_;
  QListWidget* list_;
  QHBoxLayout *makers_, *buttons_;  ///< what puts one in; what is done with the chosen one
  QVBoxLayout* column_;
  WritingForm* form_ = nullptr;
};

}  // namespace cabwright::desk
