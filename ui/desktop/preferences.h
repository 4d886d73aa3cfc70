// SPDX-License-Identifier: GPL-3.0-or-later
// What the user has chosen and the program remembers: looks, sound, keys, where sessions go. Never
// anything that marks depend on.
#pragma once

#include <QSettings>
#include <QString>
#include <filesystem>

#include "cab/shortcuts.h"
#include "drawing/ink.h"

namespace cabwright::desktop {

enum class ThemeChoice { kSystem, kDay, kNight };

struct Preferences {
  ThemeChoice theme = ThemeChoice::kSystem;
  QString language;  ///< "en", "de"; empty: the system's
  bool reduced_motion = false;
  bool show_keys = true;
  double volume = 0.7;
  bool muted = false;
  QString trainee;
  QString sessions;  ///< folder; empty: the standard one
  bool caution_read = false;

  void load(QSettings& settings);
  void save(QSettings& settings) const;
};

/// The theme that is meant: the system's is night when its window colour is darker than its text.
[[nodiscard]] drawing::Theme themeOf(ThemeChoice choice, const QPalette& system);
/// Where sessions are to be recorded, whether that can be or not.
[[nodiscard]] QString wishedSessionsFolder(const Preferences& preferences);
/// Where sessions are recorded; made if it is not there yet. Empty if that cannot be.
[[nodiscard]] std::filesystem::path findSessionsFolder(const Preferences& preferences);
/// A file name that is not taken: exercise, date and time.
[[nodiscard]] std::filesystem::path makeSessionPath(const std::filesystem::path& folder,
                                                    const std::string& exercise,
                                                    const QString& stamp);

}  // namespace cabwright::desktop
