// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/named_numbers.h"

#include <cstdio>

namespace cabwright::plant {

std::string shortNumber(double v) {
  char text[32];
  std::snprintf(text, sizeof text, "%.6g", v);
  return text;
}

bool namesMatch(std::string_view written, std::string_view full) {
  if (written == full) return true;
  const std::size_t dot = full.find('.');
  if (dot == std::string_view::npos || dot == 0) return false;
  const char last = full[dot - 1];
  if (last < '0' || last > '9') return false;
  return written.size() + 1 == full.size() &&
         written.substr(0, dot - 1) == full.substr(0, dot - 1) &&
         written.substr(dot - 1) == full.substr(dot);
}

}  // namespace cabwright::plant
