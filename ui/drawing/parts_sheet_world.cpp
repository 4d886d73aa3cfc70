// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <vector>

#include "drawing/button.h"
#include "drawing/dial.h"
#include "drawing/furniture.h"
#include "drawing/hand.h"
#include "drawing/handbrake.h"
#include "drawing/key_switch.h"
#include "drawing/lamp.h"
#include "drawing/lever.h"
#include "drawing/parts_sheet_blocks.h"
#include "drawing/toggle.h"

namespace cabwright::drawing {
namespace {

// A stretch of the sheet that is shared out among the parts of one kind.
struct Strip {
  double left, width;
  int count;
  [[nodiscard]] double middle(int i) const { return left + width * (i + 0.5) / count; }
};

void label(Pen& pen, double x, double y, const char* words, Tone tone = Tone::kInk2,
           bool bold = false) {
  pen.text({x, y}, partsWords(words), {.anchor = Anchor::kMiddle, .bold = bold, .tone = tone});
}

void caption(Pen& pen, const Strip& strip, double y, const char* words) {
  paintCaption(pen, {strip.left, y}, strip.width, partsWords(words));
}

constexpr double kRingRoom = 9;

// Of a dial with its marks, which stand on the right here.
double dialWidth(const DialScale& scale, const DialLook& look, double r) {
  const double ring = look.focus || look.being_read ? kRingRoom : 0;
  const double right = scale.marks.empty() ? r + ring : dialBounds({}, r, scale).right();
  return r + ring + right;
}

void paintDials(Pen& pen, const Strip& strip, double y) {
  constexpr double kR = 70;
  const DialScale vacuum{
      .low = 0, .high = 30, .major = 5, .minor = 1, .marks = {{21, QStringLiteral("21")}}};
  const DialScale bare_vacuum{.low = 0, .high = 30, .major = 5, .minor = 1};
  const DialScale air{.low = 0,
                      .high = 120,
                      .major = 20,
                      .minor = 5,
                      .middle = 10,
                      .marks = {{75, QStringLiteral("75")}, {95, QStringLiteral("95")}}};
  const DialScale band{
      .low = 0, .high = 120, .major = 20, .minor = 5, .middle = 10, .zones = {{0, 75}}};
  struct Shown {
    const DialScale& scale;
    std::vector<DialNeedle> needles;
    DialLook look;
    const char* words;
  };
  const std::array<Shown, 7> shown{{
      {air, {{88}}, {}, "one needle"},
      {vacuum, {{24, NeedleKind::kHollow}, {21}}, {}, "two needles"},
      {band, {{41}}, {}, "band"},
      {bare_vacuum, {{15}}, {.focus = true}, "focus"},
      {bare_vacuum, {{18}}, {.being_read = true}, "being read"},
      {bare_vacuum, {{0}}, {.out_of_reach = true}, "not seen"},
      {bare_vacuum, {{0}}, {.dark = true}, "no light on it"},
  }};
  caption(pen, strip, y, "Dial");
  // Rim figures and rings take the room they need; what is left goes between the dials.
  double room = strip.width;
  for (const Shown& s : shown) room -= dialWidth(s.scale, s.look, kR);
  const double gap = room / strip.count;
  double x = strip.left + gap / 2;
  for (const Shown& s : shown) {
    const bool ring = s.look.focus || s.look.being_read;
    const double middle = x + kR + (ring ? kRingRoom : 0);
    paintDial(pen, {middle, y + 94}, kR, s.scale, s.needles, s.look);
    label(pen, middle, y + 194, s.words);
    x += dialWidth(s.scale, s.look, kR) + gap;
  }
}

void paintLamps(Pen& pen, const Strip& strip, double y) {
  struct Shown {
    LampLook look;
    const char *name, *words;
  };
  const auto lit = [](LampColor color) {
    return LampLook{.color = color, .lit = true, .mixed = true};
  };
  const std::array<Shown, 7> shown{{
      {lit(LampColor::kRed), "red", "danger"},
      {lit(LampColor::kYellow), "yellow", "abnormal"},
      {lit(LampColor::kGreen), "green", "as it should be"},
      {lit(LampColor::kBlue), "blue", "must be done"},
      {lit(LampColor::kWhite), "white", "neutral"},
      {{.color = LampColor::kGreen, .lit = true, .brightness = 0.2, .mixed = true},
       "weak",
       "low voltage"},
      {{.color = LampColor::kGreen}, "unlit", "outline stays"},
  }};
  caption(pen, strip, y, "Lamp");
  for (int i = 0; i < 7; ++i) {
    const Shown& s = shown[static_cast<std::size_t>(i)];
    const double x = strip.middle(i);
    paintLamp(pen, {x, y + 36}, s.look, {}, 16);
    label(pen, x, y + 79, s.name, s.look.lit ? Tone::kInk : Tone::kInk2, s.look.lit);
    label(pen, x, y + 102, s.words);
  }
  const double x = strip.middle(7);
  QPolygonF pulses;
  pulses << QPointF(x - 60, y + 45);
  for (int i = 0; i < 3; ++i)
    for (const QPointF step : {QPointF(0, -18), QPointF(20, 0), QPointF(0, 18), QPointF(20, 0)})
      pulses << pulses.back() + step;
  pen.polyline(pulses);
  label(pen, x, y + 79, "flashing", Tone::kInk, true);
  label(pen, x, y + 102, "½ or 2 a second");
}

void paintLevers(Pen& pen, const Strip& strip, double y) {
  constexpr double kR = 70;
  const auto detent = [](double angle, const char* words) {
    return Detent{.angle = angle, .label = partsWords(words)};
  };
  const std::array<Detent, 5> steps{detent(-46, "0"), detent(-23, "1"), detent(0, "2"),
                                    detent(23, "3"), detent(46, "4")};
  const std::array<Detent, 3> ways{detent(-34, "rev"), detent(0, "N"), detent(34, "fwd")};
  const std::array<Detent, 3> brake{
      detent(-48, "r"), detent(-20, "lap"),
      Detent{.angle = 48, .label = partsWords("full"), .plain = true}};
  struct Shown {
    std::span<const Detent> detents;
    double at, share;
    LeverLook look;
    const char *name, *words;
  };
  const QString right = QStringLiteral("R"), left = QStringLiteral("L");
  const std::array<Shown, 7> shown{{
      {steps, -46, 146, {}, "at rest", "all positions"},
      {brake, -20, 194, {.held = left, .wedge = {{-8, 48}}}, "in your hand", "names the hand"},
      {steps, 0, 146, {.held = right, .pressed = true}, "pressed down", "second ring"},
      {steps, 23, 146, {.focus = true}, "focus", "arrows step it"},
      {ways, 34, 188, {.blocked = {{-46, 22}}, .ghost = 0}, "blocked", "wheels turn"},
      {ways, 0, 188, {.empty = true}, "empty socket", "lever is elsewhere"},
      {steps, -46, 146, {.out_of_reach = true}, "out of reach", "from this place"},
  }};
  double sum = 0;
  for (const Shown& s : shown) sum += s.share;
  caption(pen, strip, y, "Lever on its quadrant");
  double x = strip.left;
  for (const Shown& s : shown) {
    const double width = strip.width * s.share / sum, middle = x + width / 2;
    const bool blocked = !s.look.blocked.empty();
    paintLever(pen, {middle, y + 118}, kR, s.detents, s.at, s.look);
    label(pen, middle, y + 152, s.name, blocked ? Tone::kBad : Tone::kInk, true);
    label(pen, middle, y + 176, s.words, blocked ? Tone::kBad : Tone::kInk2);
    x += width;
  }
}

void paintButtons(Pen& pen, const Strip& strip, double y) {
  struct Shown {
    ButtonLook look;
    const char* words;
  };
  const std::array<Shown, 5> shown{{
      {{.sign = ButtonSign::kHorn}, "up"},
      {{.sign = ButtonSign::kBell, .focus = true}, "focus"},
      {{.sign = ButtonSign::kStart, .state = ButtonState::kPressed, .held_share = 0.64},
       "held 4 s"},
      {{.sign = ButtonSign::kStart, .state = ButtonState::kBlocked}, "blocked"},
      {{.sign = ButtonSign::kStop, .state = ButtonState::kDead}, "no current"},
  }};
  caption(pen, strip, y, "Push-button");
  for (int i = 0; i < strip.count; ++i) {
    const Shown& s = shown[static_cast<std::size_t>(i)];
    const bool blocked = s.look.state == ButtonState::kBlocked;
    paintButton(pen, {strip.middle(i), y + 46}, 19, s.look);
    label(pen, strip.middle(i), y + 102, s.words, blocked ? Tone::kBad : Tone::kInk2, blocked);
    if (blocked) label(pen, strip.middle(i), y + 126, "Gear is not in neutral", Tone::kBad);
  }
}

void paintKeys(Pen& pen, const Strip& strip, double y) {
  caption(pen, strip, y, "Key switch");
  const std::vector<Detent> positions{{.angle = -50}, {.angle = 50}};
  paintKeySwitch(pen, {strip.middle(0), y + 48}, 29, {.positions = positions, .at = -50});
  paintKeySwitch(pen, {strip.middle(1), y + 48}, 29,
                 {.positions = positions, .at = 50, .has_key = false});
  label(pen, strip.middle(0), y + 102, "off");
  label(pen, strip.middle(1), y + 102, "no key");
}

void paintHandbrakes(Pen& pen, const Strip& strip, double y) {
  caption(pen, strip, y, "Handbrake");
  paintHandbrake(pen, {strip.middle(0), y + 48}, 30, {.on = 1, .turn_deg = 20});
  paintHandbrake(pen, {strip.middle(1), y + 48}, 30, {.on = 0.3, .turn_deg = 55, .pawl_in = false});
  label(pen, strip.middle(0), y + 118, "hard on");
  label(pen, strip.middle(1), y + 118, "pawl out");
}

void paintToggles(Pen& pen, const Strip& strip, double y) {
  caption(pen, strip, y, "Switch and cock");
  paintToggle(pen, {strip.middle(0), y + 46}, {.is_on = true, .held = QStringLiteral("R")});
  paintToggle(pen, {strip.middle(1), y + 46}, {.is_on = true, .cock = true});
  paintToggle(pen, {strip.middle(2), y + 46}, {.cock = true});
  label(pen, strip.middle(0), y + 102, "switch, on");
  label(pen, strip.middle(1), y + 102, "open");
  label(pen, strip.middle(2), y + 102, "shut");
}

void paintHands(Pen& pen, const Strip& strip, double y) {
  struct Shown {
    Grip grip;
    const char* words;
  };
  constexpr std::array<Shown, 11> kShown{{{Grip::kFree, "free"},
                                          {Grip::kKnob, "knob"},
                                          {Grip::kKnobPressed, "pressed"},
                                          {Grip::kFinger, "button"},
                                          {Grip::kLamp, "lamp"},
                                          {Grip::kDipstick, "dipstick"},
                                          {Grip::kWheel, "wheel"},
                                          {Grip::kKey, "key"},
                                          {Grip::kCock, "cock"},
                                          {Grip::kBell, "bell"},
                                          {Grip::kBar, "bar"}}};
  caption(pen, strip, y, "Hand");
  for (int i = 0; i < strip.count; ++i) {
    const Shown& s = kShown[static_cast<std::size_t>(i)];
    paintHand(pen, {strip.middle(i), y + 60}, i != 0, s.grip, 0.62);
    label(pen, strip.middle(i), y + 132, s.words);
  }
}

}  // namespace

void paintPartsWorld(Pen& pen, const SheetFrame& frame) {
  const double left = frame.world.left(), width = frame.world.width(), gap = frame.spare / 5;
  const auto whole = [&](int count) { return Strip{left, width, count}; };
  pen.text({left, 62}, partsWords("Parts and their states"), {.size = kTitle});
  pen.text({frame.world.right(), 62}, partsWords("One hand drew them all."),
           {.anchor = Anchor::kEnd, .tone = Tone::kInk2});
  paintDials(pen, whole(7), 100);
  paintLamps(pen, whole(8), 322 + gap);
  paintLevers(pen, whole(7), 456 + 2 * gap);
  const double y = 664 + 3 * gap, k = width / 1180;
  paintButtons(pen, {left, 456 * k, 5}, y);
  paintKeys(pen, {left + 476 * k, 166 * k, 2}, y);
  paintHandbrakes(pen, {left + 662 * k, 206 * k, 2}, y);
  paintToggles(pen, {left + 888 * k, 292 * k, 3}, y);
  paintHands(pen, whole(11), 820 + 4 * gap);
}

}  // namespace cabwright::drawing
