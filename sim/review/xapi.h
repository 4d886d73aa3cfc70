// SPDX-License-Identifier: GPL-3.0-or-later
// A session as statements of the Experience API, within what 1.0.3 and 2.0 have in common: no
// version, no nulls, one identifier for each actor, times in UTC. A session gives, in the order
// that cmi5 asks for as well: initialized, passed or failed with score and duration, terminated.
// One that was cut off gives no verdict. The same session gives the same statements with the same
// ids, so that a record store takes them once however often they are sent.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "marking/sheet.h"
#include "review/entry.h"
#include "session/store.h"

namespace cabwright::review {

struct XapiOptions {
  /// The system in which the trainee's number means something: an absolute IRL.
  std::string home = "http://cabwright.invalid/people";
};

/// Why `home` will not do; empty when it will.
[[nodiscard]] std::optional<std::string> findXapiFault(const XapiOptions& options);

/// An array of statements. The decision of an assessor stands before that of the sheet.
[[nodiscard]] nlohmann::json makeXapi(const session::Store& store, const marking::MarkSheet& sheet,
                                      const std::vector<Entry>& entries,
                                      const XapiOptions& options);

}  // namespace cabwright::review
