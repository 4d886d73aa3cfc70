// SPDX-License-Identifier: GPL-3.0-or-later
// The notebook: what is being looked at and how it is judged, what was judged and noted before,
// and, in guided runs, what comes next and why.
#pragma once

#include "cab/part.h"

namespace cabwright::cab {

class NotebookPart : public Part {
  Q_OBJECT
 public:
  NotebookPart(Seat& seat, const SheetStyle& style, QWidget* parent);
  /// Practice: shown although it was not asked for before; guided: always.
  void showHint(bool shown);
  [[nodiscard]] bool showsHint() const;
  /// What it tells of the thing that is looked at; empty: nothing yet.
  [[nodiscard]] QString seen() const;
  /// What looking has shown, in words.
  void setSeen(unit::Item item, const QString& words);
  void refresh() override;
  [[nodiscard]] PartRole role() const override;

  /// How many rows the classes take.
  void setClassRows(int rows);

  /// The row of the judgements, a row of the classes, and where the things to write stand, u.
  /// `reading`: how large the running text above them is.
  [[nodiscard]] static QRectF judgeRow(const QRectF& page, double reading = 1);
  [[nodiscard]] static QRectF classRow(const QRectF& page, int which, double reading = 1);
  [[nodiscard]] static QRectF footArea(const QRectF& page, int which);

 protected:
  void paint(drawing::Pen& pen) const override;

 private:
  struct Entry {
    std::int64_t tick = 0;
    QString what, how;
    int sign = 0;
    bool operator==(const Entry&) const = default;
  };
  [[nodiscard]] std::vector<Entry> entries() const;
  void paintNothing(drawing::Pen& pen) const;
  void paintLooking(drawing::Pen& pen) const;
  double paintNext(drawing::Pen& pen, double y) const;
  /// Act and reason of a step, at most down to `end`; false: they do not fit so large.
  bool paintStep(drawing::Pen& pen, double& y, double end, double reading, bool cut) const;
  void paintEntries(drawing::Pen& pen, double y) const;

  std::optional<unit::Item> looked_;
  QString seen_;
  int class_rows_ = 1;
  bool hint_ = false;
  struct Shown {
    std::optional<unit::Item> looking;
    int share = 0;
    std::optional<unit::DefectClass> rank;  ///< of a defect that is looked at
    std::size_t judgements = 0, notes = 0, book = 0;
    int decision = 0;
    std::size_t step = 0;
    bool light = true;
    bool operator==(const Shown&) const = default;
  } shown_;
};

}  // namespace cabwright::cab
