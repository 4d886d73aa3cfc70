// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/schema.h"

#include <bit>

namespace cabwright::session {

std::vector<SchemaEntry> schemaOf(int version) {
  std::vector<SchemaEntry> all(kSharedSchema.begin(), kSharedSchema.end());
  if (version < 2)
    all.insert(all.end(), kOldSchema.begin(), kOldSchema.end());
  else
    all.insert(all.end(), kNewSchema.begin(), kNewSchema.end());
  return all;
}

void addAbout(RowChain& chain, std::string_view key, std::string_view value) {
  Payload& row = chain.begin();
  row.add(key);
  row.add(value);
  chain.endHead('A');
}

void addSource(RowChain& chain, const SourceText& source) {
  Payload& row = chain.begin();
  row.add(std::string_view(source.role));
  row.add(std::string_view(source.name));
  row.add(std::string_view(source.text));
  chain.endHead('S');
}

void addSignal(RowChain& chain, std::int64_t id, std::string_view name, std::string_view unit) {
  Payload& row = chain.begin();
  row.add(id);
  row.add(name);
  row.add(unit);
  chain.endHead('G');
}

void addAction(RowChain& chain, std::int64_t seq, const TimedAction& action,
               std::string_view text) {
  Payload& row = chain.begin();
  row.add(action.number);
  row.add(static_cast<std::uint8_t>(action.scheduled ? 1 : 0));
  row.add(text);
  chain.endRow('a', seq, action.tick);
}

void addFrame(RowChain& chain, std::int64_t seq, std::int64_t tick, bool is_key,
              std::span<const std::uint8_t> data) {
  chain.begin().add(data);
  chain.endRow(is_key ? 'k' : 'f', seq, tick);
}

void addState(RowChain& chain, std::int64_t seq, const StateHash& state) {
  chain.begin().add(std::bit_cast<std::int64_t>(state.hash));
  chain.endRow('s', seq, state.tick);
}

void addClosing(RowChain& chain, std::int64_t seq, const Closing& closing) {
  Payload& row = chain.begin();
  row.add(std::string_view(closing.reason));
  row.add(static_cast<std::uint8_t>(closing.passed ? 1 : 0));
  row.add(std::string_view(closing.sheet_json));
  for (const VerdictRow& verdict : closing.verdicts) {
    row.add(std::string_view(verdict.rule));
    row.add(std::string_view(verdict.verdict));
    row.add(verdict.tick);
    row.add(verdict.margin ? std::bit_cast<std::int64_t>(*verdict.margin) : std::int64_t{-1});
    row.add(std::string_view(verdict.unit));
    row.add(std::string_view(verdict.reason));
  }
  chain.endRow('c', seq, closing.tick);
}

bool fits(const Person& person) { return person.role.size() + person.name.size() <= 10'000; }

Digest calcPersonMark(const Salt& salt, const Person& person) {
  static constexpr std::string_view kMagic("Cabwright person 2\0", 19);
  return Sha256()
      .add(kMagic)
      .add(salt)
      .add(static_cast<std::int64_t>(person.role.size()))
      .add(std::string_view(person.role))
      .add(std::string_view(person.name))
      .finish();
}

}  // namespace cabwright::session
