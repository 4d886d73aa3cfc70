// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/action_words.h"

namespace cabwright::scenario {

namespace {

// Messages quote what was found first: "unknown control 'x'", "'cab1.key' cannot be 'up'".
bool blames(const std::string& message, std::string_view word) {
  const std::string quoted = "'" + std::string(word) + "'";
  return message.find("unknown") != std::string::npos
             ? message.find(quoted) != std::string::npos
             : message.find("be " + quoted) != std::string::npos;
}

}  // namespace

std::string_view findBlamedWord(std::string_view words, const unit::Action& action,
                                const std::string& message) {
  const std::size_t verb_at = words.find(action.verb);
  if (verb_at == std::string_view::npos) return words;
  std::size_t from = verb_at + action.verb.size();
  for (const std::string* word : {&action.object, &action.argument}) {
    const std::size_t at = word->empty() ? std::string_view::npos : words.find(*word, from);
    if (at == std::string_view::npos) break;
    const std::size_t dot = word->rfind('.');  // signal.NAME: the message names NAME
    if (blames(message, *word)) return words.substr(at);
    if (word == &action.object && dot != std::string::npos &&
        blames(message, std::string_view(*word).substr(dot + 1))) {
      return words.substr(at + dot + 1);
    }
    const std::size_t space = word->find(' ');  // "defect X": the message names one of the words
    if (space != std::string::npos) {
      if (blames(message, std::string_view(*word).substr(0, space))) return words.substr(at);
      if (blames(message, std::string_view(*word).substr(space + 1))) {
        return words.substr(at + space + 1);
      }
    }
    from = at + word->size();
  }
  return words.substr(verb_at);
}

}  // namespace cabwright::scenario
