// SPDX-License-Identifier: GPL-3.0-or-later
// A scenario that is being written: its draft, the file it belongs to, and what is wrong with it so
// far. The forms change it; the text beside them and the list of faults follow.
#pragma once

#include <QObject>
#include <QString>
#include <QTimer>
#include <filesystem>
#include <functional>
#include <string>
#include <vector>

#include "scenario/draft.h"
#include "scenario/library.h"
#include "session/run.h"

namespace cabwright::desk {

class Writing : public QObject {
  Q_OBJECT
 public:
  explicit Writing(QObject* parent = nullptr);

  /// Where new scenarios go, and the scenarios/ folder that ships with its vehicles and rules.
  void setFolders(std::filesystem::path own, std::filesystem::path shipped);
  [[nodiscard]] const std::filesystem::path& ownFolder() const { return own_; }
  [[nodiscard]] const std::filesystem::path& shippedFolder() const { return shipped_; }
  /// Where the draft's vehicle, route, rules and guides are found.
  [[nodiscard]] scenario::FolderLibrary library() const;

  [[nodiscard]] const scenario::Draft& draft() const { return draft_; }
  /// One step of writing; it can be taken back.
  void change(const std::function<void(scenario::Draft&)>& step);
  bool undo();

  /// The text as it would be saved, and as the file has it.
  [[nodiscard]] const std::string& text() const { return text_; }
  [[nodiscard]] const std::string& savedText() const { return saved_; }
  [[nodiscard]] bool isSaved() const { return text_ == saved_; }
  /// Of its file; empty while it has none.
  [[nodiscard]] const QString& path() const { return path_; }

  void begin();
  /// Reads a file. Of one with any fault nothing is taken over: false, and refusal() says where.
  bool open(const QString& path);
  [[nodiscard]] const scenario::FileFaults& refusal() const { return refusal_; }
  /// Writes it, whatever is wrong in it; false: it could not be written, see refusal().
  bool save(const QString& path);
  /// Puts the moment of a run in. Gives what cannot be kept, one sentence each.
  std::vector<std::string> takeMoment(const session::Run& run,
                                      const scenario::LoadedScenario& loaded);

  /// What is wrong in text(), found now; otherwise it is found a little after each change.
  const scenario::FileFaults& check();
  [[nodiscard]] const scenario::FileFaults& faults() const { return faults_; }

 Q_SIGNALS:
  /// The draft is another one: fields are to be filled in anew.
  void replaced();
  /// Something in it was changed by a field.
  void changed();
  void checked();

 private:
  void note();
  void replace(scenario::Draft draft, const QString& path);

  std::filesystem::path own_, shipped_;
  scenario::Draft draft_;
  std::vector<scenario::Draft> before_;
  std::string text_, saved_;
  QString path_;
  scenario::FileFaults faults_, refusal_;
  QTimer soon_;
};

}  // namespace cabwright::desk
