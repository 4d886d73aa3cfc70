// SPDX-License-Identifier: GPL-3.0-or-later
// Looks into the folders of a shelf, and marks sessions again, beside what is seen: in a thread of
// its own. What it finds is told by signals in the thread of the window.
#pragma once

#include <QObject>
#include <atomic>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <thread>
#include <vector>

#include "review/mark_difference.h"
#include "review/shelf.h"

namespace cabwright::review_room {

class ShelfLoader : public QObject {
  Q_OBJECT
 public:
  explicit ShelfLoader(QObject* parent = nullptr);
  /// Gives up what goes on and waits for it.
  ~ShelfLoader() override;

  /// Where the cache is kept; for tests and benches another place than the user's.
  void setCacheFolder(std::filesystem::path folder) { cache_ = std::move(folder); }
  /// Begins anew; what went on is given up. Answered by opened(), or by givenUp().
  void open(std::vector<std::filesystem::path> folders);
  /// The same of marking: told() for each, then allMarked() or givenUp().
  void mark(std::vector<std::filesystem::path> files);
  void giveUp();
  [[nodiscard]] bool isBusy() const { return busy_; }

 Q_SIGNALS:
  void busyChanged(bool busy);
  /// `done` of `all` files have been looked at.
  void progressed(int done, int all);
  void opened(const cabwright::review::Shelf& shelf);
  void marked(const cabwright::review::MarkDifference& found);
  void allMarked();
  void givenUp();

 private:
  /// What the thread and the window both hold.
  struct Job {
    int number = 0;
    std::atomic<bool> given_up{false};
  };
  void start(const std::function<void(Job& job)>& work);
  void stop();
  /// Does it in the window's thread, unless the job was given up meanwhile.
  void tell(Job& job, std::function<void()> done);
  void setBusy(bool busy);
  [[nodiscard]] std::function<bool(std::size_t, std::size_t)> makeProgress(Job& job);

  std::filesystem::path cache_ = review::userCacheFolder();
  std::thread thread_;
  std::shared_ptr<Job> job_;
  int jobs_ = 0;
  bool busy_ = false;
};

}  // namespace cabwright::review_room
