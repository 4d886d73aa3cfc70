// SPDX-License-Identifier: GPL-3.0-or-later
// The head of the sheet: the finding as one sentence, what was seen, and the facts beside it.
#pragma once

#include "after/finding.h"
#include "after/sheet_block.h"

namespace cabwright::after {

class FindingHead : public SheetBlock {
  Q_OBJECT
 public:
  FindingHead(const SheetLook& look, Finding finding, QWidget* parent);
  [[nodiscard]] const Finding& finding() const { return finding_; }

 protected:
  double paint(drawing::Pen& pen, double width, bool measured) override;

 private:
  Finding finding_;
};

}  // namespace cabwright::after
