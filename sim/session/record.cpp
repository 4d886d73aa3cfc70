// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/record.h"

#include <fmt/format.h>

#include <array>
#include <ctime>
#include <random>

#include "session/chain.h"

namespace cabwright::session {

std::string makeSessionId() {
  std::random_device source;
  std::array<unsigned, 16> bytes{};
  for (unsigned& byte : bytes) byte = source() & 0xffU;
  bytes[6] = (bytes[6] & 0x0fU) | 0x40U;  // version 4
  bytes[8] = (bytes[8] & 0x3fU) | 0x80U;  // variant of RFC 9562
  static constexpr char kDigits[] = "0123456789abcdef";
  std::string id;
  for (std::size_t i = 0; i < bytes.size(); ++i) {
    if (i == 4 || i == 6 || i == 8 || i == 10) id += '-';
    id += kDigits[bytes[i] >> 4];
    id += kDigits[bytes[i] & 0xfU];
  }
  return id;
}

std::string traineeName(const SessionHeader& header) {
  for (const Person& person : header.people)
    if (person.role == "trainee") return person.name;
  return {};
}

Person traineePerson(const SessionHeader& header) {
  const std::string name = traineeName(header);
  return {"trainee", name.empty() ? header.trainee_number : name};
}

std::string traineeWords(std::string_view number, std::string_view name) {
  std::string words(number);
  if (!number.empty() && !name.empty()) words += ", ";
  return words.append(name);
}

std::string traineeWords(const SessionHeader& header) {
  return traineeWords(header.trainee_number, traineeName(header));
}

std::string calcScenarioHash(const std::vector<SourceText>& sources) {
  Chain chain;
  for (const SourceText& source : sources) {
    if (source.role == "script") continue;
    chain.add(std::string_view(source.role));
    chain.add(std::string_view(source.name));
    chain.add(std::string_view(source.text));
  }
  return fmt::format("{:016x}", chain.value());
}

std::string currentUtc() {
  const std::time_t now = std::time(nullptr);
  std::tm parts{};
  gmtime_r(&now, &parts);
  std::array<char, 32> text{};
  const std::size_t size = std::strftime(text.data(), text.size(), "%Y-%m-%dT%H:%M:%SZ", &parts);
  return {text.data(), size};
}

}  // namespace cabwright::session
