// SPDX-License-Identifier: GPL-3.0-or-later
// Which key does what. Every command has a name, a default and what the user chose instead; keys
// are shown where they act.
//
// Some keys go by where they lie and not by their letter, because they lie as what they press does:
// start above stop, engine 1 beside engine 2, left hand beside right. What letter is there is
// guessed by the language of the keyboard, and learned from the keys that are pressed.
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
  /// What acts on this keyboard: keys(), or the letter that lies where the key does.
  [[nodiscard]] QKeySequence shown(const QString& command) const;
  /// It goes by place: it does as long as no other key was chosen for it.
  [[nodiscard]] bool isByPlace(const QString& command) const;
  /// As shown in a key cap; empty: none.
  [[nodiscard]] QString text(const QString& command) const;
  /// Empty keys: none. Another command that had them loses them; its name comes back.
  QString setKeys(const QString& command, const QKeySequence& keys);
  void reset();
  /// The commands of one key stroke: several, when they never act at the same place. `scan_code`:
  /// where it lies, as the system counts; 0: not known, the letter decides.
  [[nodiscard]] QStringList findCommands(int key, Qt::KeyboardModifiers modifiers,
                                         quint32 scan_code = 0) const;

 Q_SIGNALS:
  void changed();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  std::map<QString, QKeySequence> keys_;
  std::map<quint32, int> letters_;  ///< by scan code
};

}  // namespace cabwright::cab
