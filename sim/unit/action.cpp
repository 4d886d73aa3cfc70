// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/action.h"

#include <array>
#include <utility>
#include <vector>

#include "unit/nearest_name.h"

namespace cabwright::unit {

namespace {

struct ActorName {
  Actor actor;
  std::string_view name;
};
constexpr std::array<ActorName, 6> kActors{{{Actor::kTrainee, "trainee"},
                                            {Actor::kInstructor, "instructor"},
                                            {Actor::kGuard, "guard"},
                                            {Actor::kSignaller, "signaller"},
                                            {Actor::kHelper, "helper"},
                                            {Actor::kScenario, "scenario"}}};

bool isBlank(char c) { return c == ' ' || c == '\t' || c == '\r'; }

std::string_view trim(std::string_view text) {
  while (!text.empty() && isBlank(text.front())) text.remove_prefix(1);
  while (!text.empty() && isBlank(text.back())) text.remove_suffix(1);
  return text;
}

// The first word; what is left of the text stays in it.
std::string_view takeWord(std::string_view& text) {
  std::size_t end = 0;
  while (end < text.size() && !isBlank(text[end])) ++end;
  const std::string_view word = text.substr(0, end);
  text = trim(text.substr(end));
  return word;
}

bool hasControlCharacter(std::string_view text) {
  for (char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if ((byte < 0x20 && c != '\t' && c != '\r') || byte == 0x7f) return true;
  }
  return false;
}

}  // namespace

std::string toText(const Action& action) {
  std::string text;
  if (action.actor != Actor::kTrainee) {
    for (const ActorName& a : kActors) {
      if (a.actor == action.actor) text.append(a.name).append(": ");
    }
  }
  text += action.verb;
  if (!action.object.empty()) text += " " + action.object;
  if (!action.argument.empty()) text += " " + action.argument;
  return text;
}

std::variant<Action, std::string> parseAction(std::string_view text) {
  Action action;
  text = trim(text);
  if (hasControlCharacter(text)) return std::string("a control character in an action");
  const std::size_t word_end = text.find_first_of(" \t");
  const std::size_t colon = text.find(':');
  if (colon != std::string_view::npos && colon < word_end) {
    const std::string_view name = text.substr(0, colon);
    bool known = false;
    for (const ActorName& a : kActors) {
      if (a.name != name) continue;
      action.actor = a.actor;
      known = true;
    }
    if (!known) {
      std::vector<std::string_view> names;
      names.reserve(std::size(kActors));
      for (const ActorName& a : kActors) names.push_back(a.name);
      return unknownWord("actor", name, names);
    }
    text = trim(text.substr(colon + 1));
  }
  if (text.empty()) return std::string("no verb: an action is a verb, an object, an argument");
  action.verb = takeWord(text);
  // Written without the trainee's name it would be read as of somebody else.
  if (action.verb.find(':') != std::string::npos) return std::string("a colon in a verb");
  action.object = takeWord(text);
  action.argument = text;
  return action;
}

}  // namespace cabwright::unit
