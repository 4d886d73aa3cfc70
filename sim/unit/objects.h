// SPDX-License-Identifier: GPL-3.0-or-later
// Loose things, and the words people use.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

#include "unit/object_list.h"
#include "unit/phrase_list.h"
#include "unit/places.h"

namespace cabwright::unit {

#define CABWRIGHT_OBJECT(Y, id, name, text) k##id,
enum class Object : std::uint8_t { CABWRIGHT_OBJECTS(CABWRIGHT_OBJECT, ) kCount };
#undef CABWRIGHT_OBJECT
inline constexpr std::size_t kObjectCount = static_cast<std::size_t>(Object::kCount);
[[nodiscard]] constexpr std::size_t indexOf(Object o) { return static_cast<std::size_t>(o); }

struct ObjectInfo {
  Object id;
  std::string_view name, text;
};
[[nodiscard]] std::span<const ObjectInfo> objectTable();
[[nodiscard]] const ObjectInfo& objectInfo(Object o);
[[nodiscard]] std::optional<Object> findObject(std::string_view name);

/// Where a loose thing is.
enum class ObjectState : std::uint8_t { kLying, kCarried, kInserted };
struct ObjectPlace {
  ObjectState state = ObjectState::kLying;
  Place place = Place::kBooking;  ///< where it lies, or the cab it is inserted in
};

#define CABWRIGHT_PHRASE(Y, id, name, verb, text) k##id,
enum class Phrase : std::uint8_t { CABWRIGHT_PHRASES(CABWRIGHT_PHRASE, ) kCount };
#undef CABWRIGHT_PHRASE
inline constexpr std::size_t kPhraseCount = static_cast<std::size_t>(Phrase::kCount);
[[nodiscard]] constexpr std::size_t indexOf(Phrase p) { return static_cast<std::size_t>(p); }

enum class PhraseVerb : std::uint8_t { kSay, kDo };
struct PhraseInfo {
  Phrase id;
  std::string_view name;
  PhraseVerb verb;
  std::string_view text;
};
[[nodiscard]] std::span<const PhraseInfo> phraseTable();
[[nodiscard]] std::optional<Phrase> findPhrase(std::string_view name, PhraseVerb verb);

#define CABWRIGHT_REPLY(Y, id, words) k##id,
enum class Reply : std::uint8_t { CABWRIGHT_REPLIES(CABWRIGHT_REPLY, ) kCount };
#undef CABWRIGHT_REPLY
/// The words of an answer; of kNone: "".
[[nodiscard]] std::string_view wordsOf(Reply r);

}  // namespace cabwright::unit
