// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/preferences.h"

#include <QPalette>
#include <QStandardPaths>
#include <algorithm>

namespace cabwright::desktop {
namespace fs = std::filesystem;

void Preferences::load(QSettings& settings) {
  settings.beginGroup(QStringLiteral("preferences"));
  const QString word = settings.value(QStringLiteral("theme")).toString();
  theme = word == QLatin1String("day")     ? ThemeChoice::kDay
          : word == QLatin1String("night") ? ThemeChoice::kNight
                                           : ThemeChoice::kSystem;
  language = settings.value(QStringLiteral("language")).toString();
  reduced_motion = settings.value(QStringLiteral("reduced_motion"), false).toBool();
  show_keys = settings.value(QStringLiteral("show_keys"), true).toBool();
  volume = std::clamp(settings.value(QStringLiteral("volume"), 0.7).toDouble(), 0.0, 1.0);
  muted = settings.value(QStringLiteral("muted"), false).toBool();
  trainee = settings.value(QStringLiteral("trainee")).toString();
  sessions = settings.value(QStringLiteral("sessions")).toString();
  caution_read = settings.value(QStringLiteral("caution_read"), false).toBool();
  settings.endGroup();
}

void Preferences::save(QSettings& settings) const {
  settings.beginGroup(QStringLiteral("preferences"));
  settings.setValue(QStringLiteral("theme"), theme == ThemeChoice::kDay ? QStringLiteral("day")
                                             : theme == ThemeChoice::kNight
                                                 ? QStringLiteral("night")
                                                 : QStringLiteral("system"));
  settings.setValue(QStringLiteral("language"), language);
  settings.setValue(QStringLiteral("reduced_motion"), reduced_motion);
  settings.setValue(QStringLiteral("show_keys"), show_keys);
  settings.setValue(QStringLiteral("volume"), volume);
  settings.setValue(QStringLiteral("muted"), muted);
  settings.setValue(QStringLiteral("trainee"), trainee);
  settings.setValue(QStringLiteral("sessions"), sessions);
  settings.setValue(QStringLiteral("caution_read"), caution_read);
  settings.endGroup();
}

drawing::Theme themeOf(ThemeChoice choice, const QPalette& system) {
  if (choice == ThemeChoice::kDay) return drawing::Theme::kDay;
  if (choice == ThemeChoice::kNight) return drawing::Theme::kNight;
  const bool dark =
      system.color(QPalette::Window).lightnessF() < system.color(QPalette::WindowText).lightnessF();
  return dark ? drawing::Theme::kNight : drawing::Theme::kDay;
}

QString wishedSessionsFolder(const Preferences& preferences) {
  if (!preferences.sessions.isEmpty()) return preferences.sessions;
  return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
         QStringLiteral("/cabwright/sessions");
}

fs::path findSessionsFolder(const Preferences& preferences) {
  const fs::path folder = wishedSessionsFolder(preferences).toStdString();
  std::error_code failed;
  fs::create_directories(folder, failed);
  return fs::is_directory(folder, failed) ? folder : fs::path();
}

fs::path makeSessionPath(const fs::path& folder, const std::string& exercise,
                         const QString& stamp) {
  const std::string base = exercise + "-" + stamp.toStdString();
  fs::path path = folder / (base + ".cabsession");
  std::error_code ignored;
  for (int n = 2; fs::exists(path, ignored); ++n)
    path = folder / (base + "-" + std::to_string(n) + ".cabsession");
  return path;
}

}  // namespace cabwright::desktop
