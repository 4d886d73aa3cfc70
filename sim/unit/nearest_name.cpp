// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/nearest_name.h"

#include <algorithm>
#include <vector>

namespace cabwright::unit {

namespace {

constexpr std::size_t kLongestWord = 64;  // longer ones are noise, and cost the square of it
constexpr std::size_t kFewNames = 12;

std::size_t calcDistance(std::string_view a, std::string_view b) {
  std::vector<std::size_t> two_up, up(b.size() + 1), row(b.size() + 1);
  for (std::size_t k = 0; k <= b.size(); ++k) up[k] = k;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    row[0] = i;
    for (std::size_t k = 1; k <= b.size(); ++k) {
      const std::size_t replaced = up[k - 1] + (a[i - 1] == b[k - 1] ? 0 : 1);
      row[k] = std::min({replaced, up[k] + 1, row[k - 1] + 1});
      const bool swapped = i > 1 && k > 1 && a[i - 1] == b[k - 2] && a[i - 2] == b[k - 1];
      if (swapped) row[k] = std::min(row[k], two_up[k - 2] + 1);
    }
    two_up = up;
    up = row;
  }
  return up[b.size()];
}

// What was written, fit for a message: short, and without bytes that are no letters.
std::string quoted(std::string_view written) {
  std::string text = "'";
  for (char c : written.substr(0, kLongestWord)) {
    text += (static_cast<unsigned char>(c) < 0x20 || c == 0x7f) ? '?' : c;
  }
  if (written.size() > kLongestWord) text += "...";
  return text + "'";
}

}  // namespace

std::optional<std::string_view> nearestName(std::string_view written,
                                            std::span<const std::string_view> known) {
  if (written.empty() || written.size() > kLongestWord) return std::nullopt;
  std::optional<std::string_view> best;
  std::size_t best_distance = std::max<std::size_t>(1, (written.size() + 2) / 3) + 1;
  for (std::string_view name : known) {
    const std::size_t difference =
        name.size() > written.size() ? name.size() - written.size() : written.size() - name.size();
    if (difference >= best_distance) continue;
    const std::size_t distance = calcDistance(written, name);
    // With no letter left of it, nothing says that this one was meant.
    if (distance < best_distance && distance < std::max(written.size(), name.size())) {
      best_distance = distance;
      best = name;
    }
  }
  return best;
}

std::string unknownWord(std::string_view what, std::string_view written,
                        std::span<const std::string_view> known) {
  std::string text = "unknown " + std::string(what) + " " + quoted(written);
  if (const auto near = nearestName(written, known)) {
    return text + "; did you mean '" + std::string(*near) + "'?";
  }
  if (known.empty() || known.size() > kFewNames) return text;
  text += "; allowed: ";
  for (std::size_t k = 0; k < known.size(); ++k) {
    if (k > 0) text += ", ";
    text += known[k];
  }
  return text;
}

}  // namespace cabwright::unit
