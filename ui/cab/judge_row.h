// SPDX-License-Identifier: GPL-3.0-or-later
// How what is looked at is judged: three verdicts, and after "Defect" three classes beside them.
// All of it stands on the page of the notebook and asks nothing: a defect counts at once, its class
// is said or left open, and either can be said anew as long as the thing is looked at.
#pragma once

#include <QObject>
#include <array>
#include <vector>

#include "cab/notebook_part.h"
#include "cab/word_button.h"

namespace cabwright::cab {

class JudgeRow : public QObject {
  Q_OBJECT
 public:
  JudgeRow(Seat& seat, const SheetStyle& style, NotebookPart& page, QWidget* sheet);

  void arrange(const QRectF& page, double reading);
  void refresh();
  /// The buttons, as the keys come to them.
  [[nodiscard]] std::vector<Part*> parts() const;

 private:
  void judge(unit::Verdict verdict, unit::DefectClass rank);
  Seat& seat_;
  NotebookPart& page_;
  std::array<WordButton*, 3> verdicts_{}, classes_{};
};

}  // namespace cabwright::cab
