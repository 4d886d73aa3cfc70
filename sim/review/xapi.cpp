// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/xapi.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <chrono>
#include <nlohmann/json.hpp>

#include "review/review.h"
#include "session/session_error.h"

namespace cabwright::review {
namespace {

using nlohmann::json;
using session::Store;

constexpr std::string_view kOwn = "urn:cabwright:";

bool isIriCharacter(char c) {
  const auto byte = static_cast<unsigned char>(c);
  return byte > 0x20 && byte < 0x7f &&
         std::string_view("<>\"{}|\\^`").find(c) == std::string_view::npos;
}

// Letters, digits and hyphens of a title; everything else is one hyphen.
std::string slugOf(std::string_view title) {
  std::string slug;
  for (const char c : title) {
    const char low = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    const bool plain = (low >= 'a' && low <= 'z') || (low >= '0' && low <= '9');
    if (plain)
      slug += low;
    else if (!slug.empty() && slug.back() != '-')
      slug += '-';
  }
  while (!slug.empty() && slug.back() == '-') slug.pop_back();
  return slug.empty() ? "exercise" : slug;
}

// A name-based UUID (RFC 9562 version 8 would be the one for SHA-256; 5 is what record stores
// know).
std::string uuidOf(std::string_view session_id, std::string_view name) {
  session::Digest digest = session::Sha256().add(session_id).add(name).finish();
  digest[6] = static_cast<std::uint8_t>((digest[6] & 0x0fU) | 0x50U);
  digest[8] = static_cast<std::uint8_t>((digest[8] & 0x3fU) | 0x80U);
  const std::string hex = session::toHex(std::span(digest).first(16));
  return fmt::format("{}-{}-{}-{}-{}", hex.substr(0, 8), hex.substr(8, 4), hex.substr(12, 4),
                     hex.substr(16, 4), hex.substr(20));
}

int twoDigits(std::string_view text, std::size_t at) {
  int number = -1;
  const auto read = std::from_chars(text.data() + at, text.data() + at + 2, number);
  return read.ptr == text.data() + at + 2 ? number : -1;
}

// "2031-02-03T04:05:06Z" and some ticks later, to the millisecond. Throws for another form.
std::string momentOf(const Store& store, std::int64_t tick) {
  using namespace std::chrono;
  const std::string& utc = store.header().started_utc;
  const bool shaped = utc.size() == 20 && utc[4] == '-' && utc[7] == '-' && utc[10] == 'T' &&
                      utc[13] == ':' && utc[16] == ':' && utc[19] == 'Z';
  if (!shaped) throw session::SessionError(store.name() + ": does not say when it began");
  const int high = twoDigits(utc, 0), low = twoDigits(utc, 2), month_number = twoDigits(utc, 5);
  const int day_number = twoDigits(utc, 8), hour = twoDigits(utc, 11), minute = twoDigits(utc, 14);
  const int second = twoDigits(utc, 17);
  const year_month_day date{year(high * 100 + low), month(static_cast<unsigned>(month_number)),
                            day(static_cast<unsigned>(day_number))};
  if (high < 0 || low < 0 || !date.ok() || hour < 0 || hour > 23 || minute < 0 || minute > 59 ||
      second < 0 || second > 59)
    throw session::SessionError(store.name() + ": does not say when it began");
  const sys_time<milliseconds> moment =
      sys_days(date) + hours(hour) + minutes(minute) + seconds(second) + milliseconds(tick * 10);
  const auto midnight = floor<days>(moment);
  const year_month_day then(midnight);
  const hh_mm_ss clock(moment - midnight);
  return fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}:{:02}.{:03}Z", static_cast<int>(then.year()),
                     static_cast<unsigned>(then.month()), static_cast<unsigned>(then.day()),
                     clock.hours().count(), clock.minutes().count(), clock.seconds().count(),
                     clock.subseconds().count());
}

json agentOf(const std::string& home, const std::string& name) {
  return {{"objectType", "Agent"}, {"account", {{"homePage", home}, {"name", name}}}};
}

json verbOf(const std::string& word) {
  return {{"id", "http://adlnet.gov/expapi/verbs/" + word}, {"display", {{"en", word}}}};
}

std::string traineeOf(const Store& store) {
  // The number names nobody to who does not know whose it is.
  if (!store.header().trainee_number.empty()) return store.header().trainee_number;
  if (const std::string name = session::traineeName(store.header()); !name.empty()) return name;
  return "session " + store.header().session_id;  // unnamed, or the name was erased
}

json activityOf(const marking::SheetHead& head) {
  json definition = {{"type", "http://adlnet.gov/expapi/activities/simulation"},
                     {"name", {{"en", head.title}}}};
  if (!head.purpose.empty()) definition["description"] = {{"en", head.purpose}};
  return {{"objectType", "Activity"},
          {"id", std::string(kOwn) + "exercise:" + slugOf(head.title)},
          {"definition", std::move(definition)}};
}

json contextOf(const Store& store, const marking::SheetHead& head, const std::string& home) {
  json context = {{"registration", store.header().session_id},
                  {"platform", "Cabwright " + store.header().program_version},
                  {"language", "en"}};
  if (!head.instructor.empty()) context["instructor"] = agentOf(home, head.instructor);
  json extensions = {{std::string(kOwn) + "mode", head.mode},
                     {std::string(kOwn) + "scenario-hash", head.scenario_hash}};
  if (head.seed) extensions[std::string(kOwn) + "seed"] = std::to_string(*head.seed);
  if (store.seal()) {
    extensions[std::string(kOwn) + "sealed-digest"] = session::toHex(store.seal()->last);
    extensions[std::string(kOwn) + "station-key"] = session::toHex(store.seal()->station);
  }
  context["extensions"] = std::move(extensions);
  return context;
}

std::string durationOf(std::int64_t ticks) {
  return fmt::format("PT{}.{:02}S", ticks / 100, ticks % 100);
}

json scoreOf(const marking::SheetTotals& totals) {
  json score = {{"scaled", std::min(std::max(totals.percent / 100, 0.0), 1.0)}};
  const double raw = std::min(std::max(totals.earned, 0.0), totals.possible);
  if (totals.possible > 0) score.update({{"raw", raw}, {"min", 0}, {"max", totals.possible}});
  return score;
}

bool isPassed(const marking::MarkSheet& sheet, const std::vector<Entry>& entries) {
  const auto decision = findDecision(entries);
  if (!decision) return sheet.decision.passed;
  return std::get<Decision>(decision->content).result == Result::kPassed;
}

}  // namespace

std::optional<std::string> findXapiFault(const XapiOptions& options) {
  const std::size_t colon = options.home.find("://");
  const bool good = colon != std::string::npos && colon > 0 && options.home.size() > colon + 3 &&
                    std::ranges::all_of(options.home, isIriCharacter);
  if (good) return std::nullopt;
  return "\"" + options.home + "\" is no address such as https://example.org/people";
}

nlohmann::json makeXapi(const Store& store, const marking::MarkSheet& sheet,
                        const std::vector<Entry>& entries, const XapiOptions& options) {
  const std::string& id = store.header().session_id;
  const json base = {{"actor", agentOf(options.home, traineeOf(store))},
                     {"object", activityOf(sheet.head)},
                     {"context", contextOf(store, sheet.head, options.home)}};
  json all = json::array();
  const auto add = [&](const std::string& verb, std::int64_t tick) -> json& {
    json statement = base;
    statement["id"] = uuidOf(id, verb);
    statement["verb"] = verbOf(verb);
    statement["timestamp"] = momentOf(store, tick);
    all.push_back(std::move(statement));
    return all.back();
  };
  const std::int64_t last = std::max<std::int64_t>(store.lastTick(), 0);
  add("initialized", 0);
  if (store.closing() && sheet.decision.complete) {
    const bool passed = isPassed(sheet, entries);
    add(passed ? "passed" : "failed", last)["result"] = {{"success", passed},
                                                         {"score", scoreOf(sheet.totals)},
                                                         {"duration", durationOf(last)},
                                                         {"response", sheet.decision.text}};
  }
  add("terminated", last)["result"] = {{"duration", durationOf(last)}};
  return all;
}

}  // namespace cabwright::review
