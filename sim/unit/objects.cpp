// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/objects.h"

#include <array>

namespace cabwright::unit {

namespace {

#define CABWRIGHT_OBJECT(Y, id, name, text) ObjectInfo{Object::k##id, name, text},
constexpr std::array<ObjectInfo, kObjectCount> kObjects{CABWRIGHT_OBJECTS(CABWRIGHT_OBJECT, )};
#undef CABWRIGHT_OBJECT

// As the list of phrases words it.  NOLINTNEXTLINE(readability-identifier-naming)
constexpr PhraseVerb said = PhraseVerb::kSay, did = PhraseVerb::kDo;
#define CABWRIGHT_PHRASE(Y, id, name, verb, text) PhraseInfo{Phrase::k##id, name, verb, text},
constexpr std::array<PhraseInfo, kPhraseCount> kPhrases{CABWRIGHT_PHRASES(CABWRIGHT_PHRASE, )};
#undef CABWRIGHT_PHRASE

#define CABWRIGHT_REPLY(Y, id, words) std::string_view(words),
constexpr std::array<std::string_view, static_cast<std::size_t>(Reply::kCount)> kReplies{
    CABWRIGHT_REPLIES(CABWRIGHT_REPLY, )};
#undef CABWRIGHT_REPLY

}  // namespace

std::span<const ObjectInfo> objectTable() { return kObjects; }
const ObjectInfo& objectInfo(Object o) { return kObjects[indexOf(o)]; }

std::optional<Object> findObject(std::string_view name) {
  for (const ObjectInfo& info : kObjects) {
    if (info.name == name) return info.id;
  }
  return std::nullopt;
}

std::span<const PhraseInfo> phraseTable() { return kPhrases; }

std::optional<Phrase> findPhrase(std::string_view name, PhraseVerb verb) {
  for (const PhraseInfo& info : kPhrases) {
    if (info.name == name && info.verb == verb) return info.id;
  }
  return std::nullopt;
}

std::string_view wordsOf(Reply r) { return kReplies[static_cast<std::size_t>(r)]; }

}  // namespace cabwright::unit
