// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>
#include <string>
#include "unit/unit.h"
namespace cabwright::session {
class ChangeWatch {
 public:
  explicit ChangeWatch(const unit::Unit&) {}
  std::optional<std::string> see(const unit::Unit&) { return {}; }
};
}
