// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences of the simulation in the reader's language. Most are entries of the catalogue. Those
// that are put together of figures, moments and other words ("Control air reaches 75 psi.") are
// taken apart by patterns; each pattern is an entry of the catalogue.
#pragma once

#include <QString>
#include <span>

namespace cabwright::wording {

/// A sentence with places (%1 ... %9) for what changes.
struct Pattern {
  const char* context;
  const char* english;
  const char* figures;  ///< digits of the places that hold a figure or a moment, not words
};
[[nodiscard]] std::span<const Pattern> patternTable();

/// The entry of the catalogue; the English words when there is none.
[[nodiscard]] QString translateEntry(const char* context, const QString& english);

/// The entry; else put together by the first pattern of the context that fits, its words
/// translated likewise (of a list each member is as long an entry as can be); else sentence by
/// sentence; else the English words. The time it takes grows
/// with the length of the words, not faster.
[[nodiscard]] QString translateSentence(const char* context, const QString& english);

/// A name inside a sentence: its first letter small in a language that writes it so, but not that
/// of a word in capitals. English does, German keeps it large.
[[nodiscard]] QString insideSentence(QString name);

/// What fills the places of a pattern, %1 first; empty when it does not fit. Read from the end: a
/// place takes no more than it must for the rest to fit, so that names may hold the pattern's own
/// commas.
[[nodiscard]] QStringList matchPattern(const Pattern& pattern, const QString& english);

}  // namespace cabwright::wording
