// SPDX-License-Identifier: GPL-3.0-or-later
// The shared rules, each with its reason, to be ticked: [[marking.use]] of a draft. Those of the
// exercise itself are told and kept word for word.
#pragma once

#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>
#include <QWidget>
#include <string>
#include <vector>

#include "desk/writing.h"
#include "scenario/rule_text.h"

namespace cabwright::desk {

/// The rules of a shared file that a draft uses, by id and in the order of the file.
[[nodiscard]] std::vector<std::string> chosenRules(const scenario::Draft& draft,
                                                   const std::string& file,
                                                   const std::vector<scenario::RuleText>& all);
/// Uses just these, in the way the draft says it already: by name, or all but some.
void chooseRules(scenario::Draft& draft, const std::string& file,
                 const std::vector<scenario::RuleText>& all,
                 const std::vector<std::string>& chosen);

class WritingRules : public QWidget {
  Q_OBJECT
 public:
  explicit WritingRules(Writing& writing, QWidget* parent = nullptr);
  /// The tick of a rule; null if there is none.
  [[nodiscard]] QCheckBox* tickOf(const std::string& id) const;

 private:
  struct Line {
    std::string file, id;
    QCheckBox* tick;  ///< its name stands beside it, where it can be broken into lines
    QWidget* row;
    QString words;  ///< to search in
  };
  void build();
  void fill();
  void take(const std::string& file);
  void filter(const QString& words);
  Line makeLine(const std::string& file, const scenario::RuleText& rule);

  Writing& writing_;
  QLineEdit* search_;
  QWidget* body_ = nullptr;
  QVBoxLayout* column_;
  std::vector<Line> lines_;
  std::vector<std::pair<std::string, std::vector<scenario::RuleText>>> files_;
  bool filling_ = false;
};

}  // namespace cabwright::desk
