// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/schema.h"

#include <bit>

namespace cabwright::session {

void addSource(Chain& chain, const SourceText& source) {
  chain.add(std::string_view(source.role));
  chain.add(std::string_view(source.name));
  chain.add(std::string_view(source.text));
}

void addSignal(Chain& chain, std::int64_t id, std::string_view name, std::string_view unit) {
  chain.add(id);
  chain.add(name);
  chain.add(unit);
}

// The first byte keeps the kinds apart.
void addAction(Chain& chain, std::int64_t seq, const TimedAction& action, std::string_view text) {
  chain.add(std::uint8_t{'a'});
  chain.add(seq);
  chain.add(action.tick);
  chain.add(action.number);
  chain.add(static_cast<std::uint8_t>(action.scheduled ? 1 : 0));
  chain.add(text);
}

void addFrame(Chain& chain, std::int64_t seq, std::int64_t tick, bool is_key,
              std::span<const std::uint8_t> data) {
  chain.add(static_cast<std::uint8_t>(is_key ? 'k' : 'f'));
  chain.add(seq);
  chain.add(tick);
  chain.add(data);
}

void addState(Chain& chain, std::int64_t seq, const StateHash& state) {
  chain.add(std::uint8_t{'s'});
  chain.add(seq);
  chain.add(state.tick);
  chain.add(std::bit_cast<std::int64_t>(state.hash));
}

void addClosing(Chain& chain, std::int64_t seq, const Closing& closing) {
  chain.add(std::uint8_t{'c'});
  chain.add(seq);
  chain.add(closing.tick);
  chain.add(std::string_view(closing.reason));
  chain.add(static_cast<std::uint8_t>(closing.passed ? 1 : 0));
  chain.add(std::string_view(closing.sheet_json));
  for (const VerdictRow& row : closing.verdicts) {
    chain.add(std::string_view(row.rule));
    chain.add(std::string_view(row.verdict));
    chain.add(row.tick);
    chain.add(row.margin ? std::bit_cast<std::int64_t>(*row.margin) : std::int64_t{-1});
    chain.add(std::string_view(row.unit));
    chain.add(std::string_view(row.reason));
  }
}

}  // namespace cabwright::session
