// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that is heard, shown: a row for each with its trace and plain words.
#pragma once

#include "cab/part.h"
#include "hearing/captions.h"
#include "hearing/listener.h"

namespace cabwright::cab {

class HeardPart : public Part {
  Q_OBJECT
 public:
  /// `rows`: how many there is room for, one above the other; in a low band one row of columns.
  HeardPart(Seat& seat, const SheetStyle& style, bool in_a_row, QWidget* parent);
  void refresh() override;
  [[nodiscard]] PartRole role() const override;
  [[nodiscard]] const std::vector<hearing::HeardLine>& lines() const { return lines_; }

 protected:
  void paint(drawing::Pen& pen) const override;

 private:
  void paintTrace(drawing::Pen& pen, QPointF at, double width,
                  const hearing::HeardLine& line) const;
  bool in_a_row_;
  hearing::Listener listener_;
  std::vector<hearing::HeardLine> lines_;
  std::int64_t drawn_tick_ = -1;
  double moved_ = 0;  ///< how far the traces have run, u
};

}  // namespace cabwright::cab
