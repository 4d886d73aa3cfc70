// SPDX-License-Identifier: GPL-3.0-or-later
// A section whose keys are names of a table: controls, loose things, start numbers, parameters.
// What is said has a line with its value; the rest is found by searching.
#pragma once

#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <QWidget>
#include <string>
#include <vector>

#include "desk/writing_form.h"

namespace cabwright::desk {

struct NamedEntry {
  std::string name;  ///< as files write it
  QString text;      ///< what it is
  /// Words it can be; of a number: none, and its unit and bounds are those of the one table there
  /// is.
  std::vector<WritingChoice> words;
  std::string unit;
  double lowest = 0, highest = 0, usual = 0;
};

/// The tables of the simulation as entries.
[[nodiscard]] std::vector<NamedEntry> controlEntries();
[[nodiscard]] std::vector<NamedEntry> objectEntries();
[[nodiscard]] std::vector<NamedEntry> startEntries();
[[nodiscard]] std::vector<NamedEntry> parameterEntries();

class NamedValues : public QWidget {
  Q_OBJECT
 public:
  NamedValues(Writing& writing, scenario::DraftSection section, const QString& title,
              std::vector<NamedEntry> entries, QWidget* parent = nullptr);
  [[nodiscard]] QLineEdit* search() const { return search_; }
  /// Says this one, with its usual value; false: there is no such name.
  bool add(const QString& name);

 private:
  void fill();
  void addLine(const NamedEntry& entry, const scenario::DraftValue& value);
  [[nodiscard]] const NamedEntry* find(std::string_view name) const;
  void put(const std::string& name, std::optional<scenario::DraftValue> value);

  Writing& writing_;
  scenario::DraftSection section_;
  std::vector<NamedEntry> entries_;
  QLineEdit* search_;
  QPushButton* add_;
  QWidget* lines_ = nullptr;
  QVBoxLayout* column_;
};

}  // namespace cabwright::desk
