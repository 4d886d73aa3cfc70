// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>

#include "drawing/furniture.h"
#include "drawing/key_cap.h"
#include "drawing/objects.h"
#include "drawing/parts_sheet_blocks.h"
#include "drawing/plan.h"
#include "drawing/verdict.h"

namespace cabwright::drawing {
namespace {

constexpr double kPlanHeight = 110, kThingPitch = 49, kTitleHeight = 108;

void paintPlanBlock(Pen& pen, const SheetFrame& frame, double y) {
  const QRectF& you = frame.you;
  paintCaption(pen, {you.left(), y}, you.width(), partsWords("Plan of the unit"));
  const QRectF box(you.left(), y + 10, you.width(), kPlanHeight);
  const std::array<const char*, kPlanPlaces> keys{"B", "8", "1", "7", "4", "5", "9", "0",
                                                  "E", "F", "6", "2", "C", "U", "3"};
  std::vector<PlanPlace> places;
  for (int i = 0; i < kPlanPlaces; ++i)
    places.push_back({.key = QString::fromLatin1(keys[static_cast<std::size_t>(i)]),
                      .at = planPosition(box, i),
                      .here = i == 11,
                      .reachable = i == 2 || i == 4 || i == 5 || i == 13,
                      .pointed = i == 2});
  paintPlan(pen, box, {}, places);
}

struct Carried {
  LooseThing thing;
  const char* name;
};

void paintThings(Pen& pen, const SheetFrame& frame, double y) {
  constexpr std::array<Carried, 10> kThings{{{LooseThing::kBrakeHandle, "brake handle"},
                                             {LooseThing::kVest, "vest"},
                                             {LooseThing::kReversingLever, "reverser"},
                                             {LooseThing::kDoorKey, "door key"},
                                             {LooseThing::kControlKey, "control key"},
                                             {LooseThing::kRuleBook, "rule book"},
                                             {LooseThing::kHandLamp, "hand lamp"},
                                             {LooseThing::kPadlock, "padlock"},
                                             {LooseThing::kNotebook, "notebook"},
                                             {LooseThing::kDipstick, "dipstick"}}};
  paintCaption(pen, {frame.you.left(), y}, frame.you.width(), partsWords("Carried"),
               partsWords("dashed: elsewhere"));
  const double second = frame.you.left() + std::max(172.0, frame.you.width() / 2);
  for (std::size_t i = 0; i < kThings.size(); ++i) {
    const QPointF at(i % 2 == 0 ? frame.you.left() : second,
                     y + 36 + static_cast<double>(i / 2) * kThingPitch);
    const bool here = i != 0 && i != 2;
    paintLooseThing(pen, at + QPointF(26, 0), kThings[i].thing, here);
    pen.text(at + QPointF(56, 0.36 * kText), partsWords(kThings[i].name),
             {.tone = here ? Tone::kInk : Tone::kInk2});
  }
}

void paintPage(Pen& pen, const SheetFrame& frame, double y) {
  const QRectF page(frame.you.left(), y, frame.you.width(), 212);
  paintNotebookPage(pen, page);
  pen.text(page.topLeft() + QPointF(18, 44), partsWords("Notebook"),
           {.size = kName, .bold = true, .on = Tone::kFace});
  pen.line({page.left() + 1, y + 58}, {page.right() - 1, y + 58}, {kThin, Tone::kRule});
  struct Row {
    VerdictSign sign;
    const char* words;
  };
  constexpr std::array<Row, 4> kRows{{{VerdictSign::kGood, "good"},
                                      {VerdictSign::kDefect, "defect"},
                                      {VerdictSign::kUnsure, "not sure"},
                                      {VerdictSign::kSeen, "seen, not judged"}}};
  double row = y + 82;
  for (const Row& r : kRows) {
    paintVerdict(pen, {page.left() + 28, row}, r.sign);
    pen.text({page.left() + 50, row + 6.5}, partsWords(r.words),
             {.bold = r.sign != VerdictSign::kSeen, .tone = toneOf(r.sign), .on = Tone::kFace});
    row += 36;
    if (&r != &kRows.back())
      pen.line({page.left() + 18, row - 18}, {page.right() - 18, row - 18},
               {kHairline, Tone::kHair});
  }
}

void paintSmallMarks(Pen& pen, const SheetFrame& frame, double y) {
  const double x = frame.you.left();
  paintCaption(pen, {x, y}, frame.you.width(), partsWords("Small marks"));
  const double key = paintKeyCap(pen, {x + 14, y + 32}, QStringLiteral("K"));
  pen.text({x + 14 + key / 2 + 12, y + 38.5}, partsWords("a key, where it acts"));
  paintThread(pen, {x + 4, y + 70}, {x + 48, y + 70});
  pen.text({x + 60, y + 76.5}, partsWords("from a hand to what it holds"));
  paintLeader(pen, {x + 6, y + 112}, {x + 24, y + 100}, {x + 48, y + 100});
  pen.text({x + 60, y + 106.5}, partsWords("points at a thing"));
}

}  // namespace

void paintPartsYou(Pen& pen, const SheetFrame& frame) {
  const double gap = frame.spare / 4;
  double y = 54;
  paintPlanBlock(pen, frame, y);
  paintThings(pen, frame, y += 156 + gap);
  paintPage(pen, frame, y += 268 + gap);
  paintSmallMarks(pen, frame, y += 244 + gap);
  const QRectF title(frame.you.left(), frame.you.bottom() - kTitleHeight, frame.you.width(),
                     kTitleHeight);
  paintTitleBlock(pen, title,
                  {{{1, partsWords("Parts and their states"), true}},
                   {{0.5, partsWords("clock angles")}, {0.5, partsWords("no scale")}},
                   {{1, partsWords("colour means state")}}});
}

}  // namespace cabwright::drawing
