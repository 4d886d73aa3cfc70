// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/plate_booking.h"

#include <algorithm>
#include <array>

#include "cab/names.h"
#include "cab/thing_part.h"
#include "drawing/furniture.h"

namespace cabwright::cab {

using drawing::Anchor;
using drawing::Pen;
using drawing::Tone;
using unit::Item;
using unit::Object;

namespace {

constexpr double kThingsHeight = 62;
constexpr std::array<Object, 8> kPegged{
    Object::kBrakeHandle, Object::kReversingLever, Object::kControlKey, Object::kDoorKey,
    Object::kLamp,        Object::kVest,           Object::kNotebook,   Object::kRuleBook};
constexpr std::size_t kBookLines = 5;

}  // namespace

BookingPlate::BookingPlate(const PlateContext& context, QWidget* parent)
    : RoomPlate(context, parent) {
  const QRectF& a = area();
  const double top = a.top() + 46, wall = 322 + spare() * 0.4;
  notices_ = {a.left() + 8, top, across(356) - a.left(), wall - 40};
  working_ = {across(404), top, across(606) - across(404), wall - 40};
  cupboard_ = {across(648), top, a.right() - 38 - across(648), wall};
  const double desk_top = top + wall + 58;
  desk_ = {across(150), desk_top, across(1030) - across(150),
           a.bottom() - kThingsHeight - 18 - desk_top};
  book_ = {desk_.center().x() - 235, desk_top + 22, 470, 0.68 * desk_.height() - 38};
  addItem(
      Item::kNotices,
      {.thing = notices_, .label = {notices_.left() + 4, notices_.bottom() + 38}, .leader = false});
  addItem(Item::kRoster,
          {.thing = working_, .label = {working_.left(), working_.bottom() + 38}, .leader = false});
  addItem(Item::kRepairBook,
          {.thing = book_, .label = {desk_.center().x() - 72, desk_top - 12}, .leader = false});
  addPegs();
  const QRectF row(a.left(), a.bottom() - kThingsHeight + 2, a.width(), kThingsHeight - 2);
  addShown<ThingRow>(row, row, std::vector<Object>(kPegged.begin(), kPegged.end()));
}

void BookingPlate::addPegs() {
  const double pitch = (cupboard_.width() - 24) / 4, row = (cupboard_.height() - 20) / 2;
  for (std::size_t k = 0; k < kPegged.size(); ++k) {
    const QPointF centre(cupboard_.left() + 12 + (static_cast<double>(k % 4) + 0.5) * pitch,
                         cupboard_.top() + 64 + static_cast<double>(k / 4) * row);
    addShown<ThingPart>({}, kPegged[k], centre, pitch - 12);
    // ThingPart sets its own area from where it stands.
    parts().back()->setArea({centre.x() - pitch / 2 + 3, centre.y() - 34, pitch - 6, 114});
  }
}

std::vector<double> BookingPlate::liveState() const {
  return {static_cast<double>(seat().unit().world().book.size())};
}

void BookingPlate::paintWorking(Pen& pen) const {
  pen.rect(working_, {}, Tone::kFace, 4);
  const double x = working_.center().x();
  pen.rect({x - 34, working_.top() - 9, 68, 20}, {}, Tone::kPaper, 4);
  const auto& loaded = seat().run().situation().loaded;
  const double left = working_.left() + 14, width = working_.width() - 28;
  double y = working_.top() + 42;
  pen.text({left, y}, tr("Train working"), {.bold = true, .on = Tone::kFace});
  pen.line({left, y + 10}, {left + width, y + 10}, {drawing::kThin, Tone::kRule, {}, false});
  y += 36;
  const QString title = exerciseWords(loaded.route.route.title);
  for (const QString& line : drawing::wrapText(title, width)) {
    pen.text({left, y}, line, {.on = Tone::kFace});
    y += 24;
  }
  y += 10;
  const int number = loaded.route.route.display;
  pen.text({left, y}, number > 0 ? tr("display %1").arg(number) : tr("display as told"),
           {.bold = true, .on = Tone::kFace});
  for (y += 26; y < working_.bottom() - 16; y += 22)
    pen.line({left, y}, {left + width, y}, {drawing::kHairline, Tone::kRule, {}, false});
}

// What the trainee has entered stands on the right page, the last entries of it.
void BookingPlate::paintBook(Pen& pen) const {
  paintOpenBook(pen, book_);
  const double left = book_.left() + 16, middle = book_.center().x(), right = book_.right() - 12;
  const double first = book_.top() + 34, lead = (book_.height() - 46) / (kBookLines - 0.5);
  for (std::size_t k = 0; k < kBookLines; ++k) {
    const double y = first + static_cast<double>(k) * lead;
    const drawing::Stroke faint{drawing::kHairline, Tone::kRule, {}, false};
    pen.line({left, y + 6}, {middle - 18, y + 6}, faint);
    pen.line({middle + 16, y + 6}, {right, y + 6}, faint);
    if (k + 1 < kBookLines)  // older entries, signed
      pen.line({left + 4, y}, {middle - 40 - 22 * static_cast<double>(k % 3), y},
               {drawing::kThin, Tone::kInk2, {7, 3, 12, 4, 9, 3}, false});
  }
  const auto& book = seat().unit().world().book;
  const std::size_t shown = std::min(book.size(), kBookLines);
  for (std::size_t k = 0; k < shown; ++k) {
    const unit::BookEntry& entry = book[book.size() - shown + k];
    const QString words = entry.item ? nameOf(*entry.item) : QString::fromStdString(entry.text);
    pen.text({middle + 18, first + static_cast<double>(k) * lead},
             drawing::elideText(words, right - middle - 22), {.italic = true});
  }
}

void BookingPlate::paintGround(Pen& pen) const {
  const auto caption = [&](const QRectF& box, double more, const QString& words) {
    drawing::paintCaption(pen, {box.left() - 7, area().top() + 18}, box.width() + more, words);
  };
  caption(notices_, 14, tr("Notice board"));
  caption(working_, 14, tr("Today"));
  caption(cupboard_, 37, tr("Key cupboard"));
  paintNoticeBoard(pen, notices_);
  paintWorking(pen);
  paintKeyCupboard(pen, cupboard_);
  const double row = (cupboard_.height() - 20) / 2, pitch = (cupboard_.width() - 24) / 4;
  for (int k = 0; k < 2; ++k) {
    const double y = cupboard_.top() + 26 + k * row;
    pen.rect({cupboard_.left() + 18, y - 5, cupboard_.width() - 36, 10},
             {drawing::kThin, Tone::kInk, {}, false}, Tone::kFace, 2);
    for (int c = 0; c < 4; ++c) {
      const double x = cupboard_.left() + 12 + (c + 0.5) * pitch;
      pen.circle({x, y}, 3.4, {drawing::kThin, Tone::kInk, {}, false}, Tone::kPaper);
      pen.line({x, y + 3}, {x, y + 13}, {drawing::kBold, Tone::kInk, {}, true});
    }
  }
  pen.line({area().left(), desk_.bottom()}, {area().right(), desk_.bottom()}, {});
  paintDesk(pen, desk_);
}

void BookingPlate::paintState(Pen& pen) const { paintBook(pen); }

}  // namespace cabwright::cab
