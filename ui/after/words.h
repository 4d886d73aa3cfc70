// SPDX-License-Identifier: GPL-3.0-or-later
// Words of the sheet in the reader's language. What the marking says is English by design; its
// fixed texts (titles, reasons, advice) can be translated in the context "Sheet".
#pragma once

#include <QString>
#include <cstdint>
#include <string>
#include <string_view>

#include "drawing/ink.h"
#include "fault/fault.h"
#include "marking/rule.h"
#include "unit/frame.h"

namespace cabwright::after {

/// In the reader's language, if a catalogue has it.
[[nodiscard]] QString sheetWords(std::string_view english);
/// What an exercise is to come to, as it stands inside a sentence.
[[nodiscard]] QString aimWords(std::string_view aim);
/// Title or summary of an exercise.
[[nodiscard]] QString exerciseWords(std::string_view english);
/// What was so of an item: "good", or what was to be seen of a condition.
[[nodiscard]] QString truthText(std::string_view item, std::string_view truth);

/// "0:22:11" of a tick; with tenths "0:22:11.4".
[[nodiscard]] QString timeText(std::int64_t tick, bool tenths = false);

/// Of the number in trainee.place: "Cab 1"; 0: "on the way".
[[nodiscard]] QString placeName(int number);
/// Of the number in hand.left: "Brake"; 0: empty.
[[nodiscard]] QString controlName(int number);
/// "end1.hoses" is "End 1, hoses".
[[nodiscard]] QString itemName(std::string_view item);
/// What a signal is called in a list: "Handbrake", "Control air gauge".
[[nodiscard]] QString signalName(unit::Signal signal);
/// Its value with the unit, or the word of it: "14.7 inHg", "lap", "49 %", "yes".
[[nodiscard]] QString valueText(unit::Signal signal, double value);

/// What a fault is called: "Gearbox 2, band of gear 3: the lining is worn".
[[nodiscard]] QString faultName(const fault::FaultSpec& spec);

/// An act as it is told: "set cab1.handbrake off" is "set Handbrake, cab 1: off"; a fault is told
/// by its name. What is no act in that form stays as it is.
[[nodiscard]] QString actText(std::string_view act);

/// "critical", "serious", "technique".
[[nodiscard]] QString className(marking::RuleClass c);
/// Tone of its flag and its words.
[[nodiscard]] drawing::Tone toneOf(marking::RuleClass c);

/// "one line", "12 lines".
[[nodiscard]] QString linesText(int count);
/// Points without more decimals than they need: "98", "4.5".
[[nodiscard]] QString pointsText(double points);
/// No full stop at the end, and first letter small where the language has it so: to stand inside a
/// sentence.
[[nodiscard]] QString insideSentence(QString words);

}  // namespace cabwright::after
