// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/verdict_view.h"

#include <QPainter>

#include "drawing/furniture.h"
#include "drawing/pen.h"

namespace cabwright::desk {

using drawing::Tone;
using drawing::VerdictSign;

namespace {

constexpr double kSide = 16, kTop = 62, kGutter = 28;
/// What is open moves with time; words need no more than this.
constexpr std::int64_t kShowTicks = session::kTicksPerSecond / 2;

}  // namespace

VerdictView::VerdictView(Desk& desk, QWidget* parent)
    : LivePage(desk, parent),
      fallen_(new VerdictList(look(), tr("Verdicts"), this)),
      open_(new VerdictList(look(), tr("What would break next"), this)) {
  setAccessibleName(tr("Verdicts"));
  fallen_->setEmptyWords(tr("Nothing has been judged yet."));
  open_->setEmptyWords(tr("Nothing is waited for."));
  setMinimumSize(820, 360);
  connect(fallen_, &VerdictList::momentChosen, this, &VerdictView::momentChosen);
  restyle();
}

VerdictView::~VerdictView() = default;

void VerdictView::forget() {
  fallen_->setRows({});
  open_->setRows({});
  counts_ = {};
  shown_tick_ = -1;
  shown_marks_ = 0;
}

void VerdictView::showRun() {
  const std::int64_t tick = run()->tick();
  const std::size_t marks = run()->marker().marks().size();
  if (shown_tick_ >= 0 && marks == shown_marks_ && tick >= shown_tick_ &&
      tick - shown_tick_ < kShowTicks && !run()->isFinished())
    return;
  shown_tick_ = tick;
  shown_marks_ = marks;
  fallen_->setRows(findFallen(*run()));
  open_->setRows(findOpen(*run()));
  const VerdictCounts counts = countVerdicts(*run());
  if (counts == counts_) return;
  counts_ = counts;
  setAccessibleDescription(summary());
  update(0, 0, width(), px(kTop));
}

QString VerdictView::summary() const {
  return tr("%1 kept, %2 broken, of these critical %3; %4 open, %5 not yet")
      .arg(counts_.kept)
      .arg(counts_.broken)
      .arg(counts_.critical)
      .arg(counts_.open)
      .arg(counts_.not_exercised);
}

double VerdictView::middle() const { return kSide + (sizeInSheet().width() - 2 * kSide) * 0.56; }

void VerdictView::restyle() {
  setStyleSheet(pageStyle(look()));
  arrange();
  fallen_->restyle();
  open_->restyle();
}

void VerdictView::arrange() {
  const double wide = sizeInSheet().width(), high = sizeInSheet().height() - kTop - kSide;
  place(fallen_, {kSide, kTop, middle() - kSide, high});
  place(open_, {middle() + kGutter, kTop, wide - kSide - middle() - kGutter, high});
}

void VerdictView::paintSheet(drawing::Pen& pen, QSizeF sheet) {
  const double wide = sheet.width();
  struct Count {
    VerdictSign sign;
    QString words;
  };
  const Count counts[] = {{VerdictSign::kGood, tr("%1 kept").arg(counts_.kept)},
                          {VerdictSign::kDefect, tr("%1 broken").arg(counts_.broken)},
                          {VerdictSign::kSeen, tr("%1 open").arg(counts_.open)}};
  pen.text({kSide, 42}, tr("Verdicts"), {.size = drawing::kName, .bold = true});
  double x = kSide + drawing::textWidth(tr("Verdicts"), drawing::kName, true) + 34;
  for (const Count& count : counts) {
    drawing::paintVerdict(pen, {x, 36}, count.sign, 9.5, Tone::kPaper);
    x += 18;
    x += pen.text({x, 42}, count.words, {.tone = drawing::toneOf(count.sign)}) + 32;
  }
  if (counts_.critical > 0)
    pen.text({x, 42}, tr("critical: %1").arg(counts_.critical), {.bold = true, .tone = Tone::kBad});
  const double right = middle() + kGutter;
  pen.text({right, 42}, tr("What would break next"), {.size = drawing::kName, .bold = true});
  pen.text({wide - kSide, 42}, tr("not yet: %1").arg(counts_.not_exercised),
           {.anchor = drawing::Anchor::kEnd, .tone = Tone::kInk2});
}

}  // namespace cabwright::desk
