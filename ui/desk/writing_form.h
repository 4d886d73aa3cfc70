// SPDX-License-Identifier: GPL-3.0-or-later
// Plain fields, each bound to one key of a draft: what is put in is written, what is taken out is
// left out of the file.
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QWidget>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "desk/writing.h"

namespace cabwright::desk {

[[nodiscard]] inline QString fromText(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}
/// "96" and "2 C" as a number in that unit.
[[nodiscard]] std::optional<double> numberOf(const scenario::DraftValue& value,
                                             std::string_view unit);

/// A number without zeros behind it that say nothing.
class PlainNumber : public QDoubleSpinBox {
 public:
  using QDoubleSpinBox::QDoubleSpinBox;
  [[nodiscard]] QString textFromValue(double value) const override;
};

/// A word of a list with what the reader sees; an empty word: not said.
struct WritingChoice {
  std::string word;
  QString shown;
};

class WritingForm : public QWidget {
  Q_OBJECT
 public:
  /// The table the fields are of; null while there is none, and the form is dead.
  using Target = std::function<scenario::DraftTable*(scenario::Draft&)>;

  WritingForm(Writing& writing, Target target, QWidget* parent = nullptr);
  WritingForm(Writing& writing, scenario::DraftSection section, QWidget* parent = nullptr);

  QLineEdit* addText(const std::string& key, const QString& label, const QString& hint = {});
  /// How a value stands in a field, and what is meant by what stands there; nothing: not said.
  struct Wording {
    std::function<QString(const scenario::DraftValue&)> show;
    std::function<std::optional<scenario::DraftValue>(const QString&)> read;
  };
  /// A field of one line, or of several, with a wording of its own.
  QLineEdit* addWorded(const std::string& key, const QString& label, const QString& hint,
                       Wording wording);
  QPlainTextEdit* addWordedLines(const std::string& key, const QString& label, Wording wording);
  /// Several lines; `as_list`: a list of texts, one in each line.
  QPlainTextEdit* addLines(const std::string& key, const QString& label, bool as_list);
  QComboBox* addChoice(const std::string& key, const QString& label,
                       std::vector<WritingChoice> choices, bool other_words = false);
  /// A tick, and a number in its unit when it is set.
  QDoubleSpinBox* addNumber(const std::string& key, const QString& label, const std::string& unit,
                            double lowest, double highest, double usual, int decimals = 2);
  QCheckBox* addFlag(const std::string& key, const QString& label, bool usual);
  void addNote(const QString& words);
  [[nodiscard]] QFormLayout* rows() const { return rows_; }

  /// Fills in what the draft says now.
  void fill();
  [[nodiscard]] bool isFilling() const { return filling_; }
  [[nodiscard]] Writing& writing() const { return writing_; }
  /// Sets or removes one key of the table.
  void put(const std::string& key, std::optional<scenario::DraftValue> value);
  [[nodiscard]] const scenario::DraftTable* table() const;

 protected:
  /// What is done whenever fields are filled in.
  void onFill(std::function<void()> fill) { fills_.push_back(std::move(fill)); }
  void name(QWidget* field, const std::string& key, const QString& label);

 private:
  Writing& writing_;
  Target target_;
  QFormLayout* rows_;
  std::vector<std::function<void()>> fills_;
  bool filling_ = false;
};

}  // namespace cabwright::desk
