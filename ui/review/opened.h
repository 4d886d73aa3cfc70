// SPDX-License-Identifier: GPL-3.0-or-later
// A recorded session that an assessor has before them: what was recorded, the sheet that follows
// from it, what was added since, and the moment that is being looked at. Knows no rule and changes
// nothing recorded; what an assessor says is appended and signed (review/review.h).
#pragma once

#include <QObject>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "after/finished_run.h"
#include "marking/sheet.h"
#include "review/entry.h"
#include "session/signal_history.h"
#include "session/signing_key.h"
#include "session/situation.h"
#include "session/store.h"
#include "session/verify.h"

namespace cabwright::review_room {

class Opened : public QObject {
  Q_OBJECT
 public:
  /// Asked now and then while it is read, with the tick; false gives it up.
  using Progress = std::function<bool(std::int64_t tick)>;

  /// Reads all of it. Throws session::SessionError when it is no session of this program, or its
  /// scenario cannot be read any more. One that was altered opens as far as its rows fit, and
  /// verification() says so. Throws as well when it is given up.
  explicit Opened(std::filesystem::path file, QObject* parent = nullptr,
                  const Progress& progress = {});

  [[nodiscard]] const std::filesystem::path& file() const { return file_; }
  [[nodiscard]] const session::Store& store() const { return *store_; }
  /// As it stood when it was opened, or after the last thing that was added.
  [[nodiscard]] const session::Verification& verification() const { return verification_; }
  [[nodiscard]] const session::Situation& situation() const { return situation_; }
  /// Why it could be read only so far; empty: it was read whole.
  [[nodiscard]] const std::string& readFault() const { return read_fault_; }

  /// For strips: what was done, what fell and the sheet as the program marks it. No moment of it
  /// can be taken again.
  [[nodiscard]] const after::FinishedRun& run() const { return run_; }
  /// All that was done, in order: by people, and by the scenario itself.
  [[nodiscard]] const std::vector<session::TimedAction>& allActions() const { return actions_; }
  /// The sheet with all overrides.
  [[nodiscard]] const marking::MarkSheet& sheet() const { return sheet_; }
  /// What was added after the seal, in order.
  [[nodiscard]] const std::vector<review::Entry>& entries() const { return entries_; }

  [[nodiscard]] std::int64_t lastTick() const { return run_.sheet.head.last_tick; }
  /// The moment that is being looked at, ticks of 10 ms.
  [[nodiscard]] std::int64_t cursor() const { return cursor_; }
  /// Moved into the session.
  void setCursor(std::int64_t tick);

  /// Who adds what is added from now on, and with which key it is signed.
  void setSigner(session::Person by, const session::SigningKey& key);
  [[nodiscard]] const std::optional<session::Person>& signer() const { return by_; }
  /// Appends entries by the signer, all or none. Empty: done; else why not, in one line.
  [[nodiscard]] std::optional<std::string> add(std::vector<review::Content> contents);
  /// The same by somebody else, who speaks at this desk: a trainee.
  [[nodiscard]] std::optional<std::string> addBy(const session::Person& by,
                                                 const session::SigningKey& key,
                                                 std::vector<review::Content> contents);
  /// The key of the signer; empty when nobody has signed on.
  [[nodiscard]] const std::optional<session::SigningKey>& signingKey() const { return key_; }

 Q_SIGNALS:
  void cursorMoved(qint64 tick);
  /// Something was added: entries(), sheet() and verification() are others.
  void entriesChanged();
  void signerChanged();

 private:
  void readRecord(const Progress& progress);
  void readAdded();

  std::filesystem::path file_;
  std::unique_ptr<session::Store> store_;
  session::Verification verification_;
  session::Situation situation_;
  std::string read_fault_;
  session::SignalHistory history_;
  after::FinishedRun run_;
  std::vector<session::TimedAction> actions_;
  marking::MarkSheet sheet_;
  std::vector<review::Entry> entries_;
  std::int64_t cursor_ = 0;
  std::optional<session::Person> by_;
  std::optional<session::SigningKey> key_;
};

}  // namespace cabwright::review_room
