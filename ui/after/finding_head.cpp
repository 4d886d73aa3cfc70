// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/finding_head.h"

#include "drawing/verdict.h"

namespace cabwright::after {

using drawing::Tone;
using drawing::VerdictSign;

FindingHead::FindingHead(const SheetLook& look, Finding finding, QWidget* parent)
    : SheetBlock(look, parent), finding_(std::move(finding)) {
  setFocusPolicy(Qt::TabFocus);
  setAccessibleName(finding_.sentence);
  setAccessibleDescription(
      QStringList{finding_.seen, finding_.facts.join(QLatin1String(", ")), finding_.told}.join(
          QLatin1Char('\n')));
}

double FindingHead::paint(drawing::Pen& pen, double width, bool measured) {
  constexpr double kLeft = 40, kLead = 26;
  const VerdictSign sign = finding_.passed     ? VerdictSign::kGood
                           : finding_.critical ? VerdictSign::kDefect
                                               : VerdictSign::kUnsure;
  if (!measured) drawing::paintVerdict(pen, {16, 19}, sign, 13, Tone::kPaper);
  const double room = width - kLeft;
  double y = pen.paragraph({kLeft, 28}, finding_.sentence, room,
                           {.size = drawing::kResult, .bold = true}, 34);
  y -= 5;
  if (!finding_.seen.isEmpty()) y = pen.paragraph({kLeft, y}, finding_.seen, room, {}, kLead);
  y = pen.paragraph({kLeft, y}, finding_.facts.join(QStringLiteral("  ·  ")), room,
                    {.tone = Tone::kInk2}, kLead);
  if (!finding_.told.isEmpty())
    y = pen.paragraph({kLeft, y}, tr("Told beforehand: %1").arg(finding_.told), room,
                      {.tone = Tone::kInk2}, kLead);
  return y - 12;
}

}  // namespace cabwright::after
