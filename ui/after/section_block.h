// SPDX-License-Identifier: GPL-3.0-or-later
// A part of the sheet under a caption: lines that were kept, lines not exercised, judgements. It
// can be folded.
#pragma once

#include <QString>
#include <vector>

#include "after/finished_run.h"
#include "after/sheet_block.h"
#include "after/sheet_button.h"
#include "drawing/verdict.h"

namespace cabwright::after {

struct SectionRow {
  drawing::VerdictSign sign = drawing::VerdictSign::kNone;
  QString title;
  QString detail = {};  ///< below, smaller in weight
  QString right = {};   ///< at the end of the first line
};

class SectionBlock : public SheetBlock {
  Q_OBJECT
 public:
  /// `count` stands beside the caption. Without rows there is nothing to fold.
  SectionBlock(const SheetLook& look, QString caption, QString count, std::vector<SectionRow> rows,
               bool folded, QWidget* parent);

  [[nodiscard]] bool isFolded() const { return folded_; }
  void setFolded(bool folded);
  [[nodiscard]] const std::vector<SectionRow>& rows() const { return rows_; }
  [[nodiscard]] const QString& caption() const { return caption_; }

 protected:
  double paint(drawing::Pen& pen, double width, bool measured) override;
  void placeButtons() override;

 private:
  QString caption_, count_;
  std::vector<SectionRow> rows_;
  bool folded_ = false;
  SheetButton* fold_ = nullptr;
};

/// What a section is made of.
struct SectionText {
  QString caption, count;
  std::vector<SectionRow> rows;
  bool folded = false;
};
/// Aim, time and points; what was kept; what does not count; what was not exercised; judgements.
/// Those with nothing to say are left out.
[[nodiscard]] std::vector<SectionText> makeSections(const marking::MarkSheet& sheet);

}  // namespace cabwright::after
