// SPDX-License-Identifier: GPL-3.0-or-later
// Which key does what. Every command has a name, a default and what the user chose instead; keys
// are shown where they act.
#pragma once

#include <QKeySequence>
#include <QObject>
#include <QSettings>
#include <map>
#include <span>

namespace cabwright::cab {

struct CommandInfo {
  const char* id;
  const char* text;  ///< what it does; translated in the context Command
  const char* keys;  ///< the default, in portable form
};

/// All commands that have a key, in the order of the settings page.
[[nodiscard]] std::span<const CommandInfo> commandTable();

class Shortcuts : public QObject {
  Q_OBJECT
 public:
  explicit Shortcuts(QObject* parent = nullptr);

  /// What the user chose before; unknown commands and unreadable keys are left out.
  void load(QSettings& settings);
  void save(QSettings& settings) const;

  [[nodiscard]] QKeySequence keys(const QString& command) const;
  /// As shown in a key cap; empty: none.
  [[nodiscard]] QString text(const QString& command) const;
  /// Empty keys: none. Another command that had them loses them; its name comes back.
  QString setKeys(const QString& command, const QKeySequence& keys);
  void reset();
  /// The commands of one key stroke: several, when they never act at the same place.
  [[nodiscard]] QStringList findCommands(int key, Qt::KeyboardModifiers modifiers) const;

 Q_SIGNALS:
  void changed();

 private:
  std::map<QString, QKeySequence> keys_;
};

}  // namespace cabwright::cab
