// SPDX-License-Identifier: GPL-3.0-or-later
// Makes some weeks of sessions and draws a page of the shelf over them, to look at:
//   shelf_shot OUT.png PAGE day|night WIDTH HEIGHT
// PAGE is sessions, folders, marking, progress, weak, due, lock or waiting (after wrong tries).
#include <fmt/format.h>
#include <unistd.h>

#include <QApplication>
#include <QComboBox>
#include <QElapsedTimer>
#include <QThread>
#include <cstdio>
#include <random>

#include "made_session.h"
#include "review_room/lock_form.h"
#include "review_room/lock_panel.h"
#include "review_room/shelf_page.h"
#include "shot.h"

namespace cabwright {
namespace {

namespace fs = std::filesystem;
using marking::Outcome;

class Folder {
 public:
  Folder() {
    std::string name = (fs::temp_directory_path() / "shelf-shot-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr) throw std::runtime_error("no temporary folder");
    path_ = name;
  }
  ~Folder() {
    std::error_code ignored;
    fs::remove_all(path_, ignored);
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  [[nodiscard]] fs::path operator/(const std::string& name) const { return path_ / name; }

 private:
  fs::path path_;
};

// Twelve trainees over ten weeks; each line is broken the more seldom the later it is.
void fill(const fs::path& folder) {
  fs::create_directories(folder);
  std::minstd_rand random(11);  // NOLINT: the same picture each time
  const auto chance = [&random](double share) {
    return static_cast<double>(random() % 1000) < share * 1000;
  };
  const std::array<const char*, 3> names{"cold-preparation", "warm-tooth", "change-of-ends"};
  int number = 0;
  for (const char* name : names) {
    if (!fs::exists(fs::path(CABWRIGHT_SOURCE_DIR) / "scenarios" / name)) continue;
    const session::Situation exercise = tests::loadExercise(name);
    for (int k = 0; k < 26; ++k) {
      tests::MadeSession made;
      const int who = k < 9 ? 7 : 1 + static_cast<int>(random() % 12);
      made.number = fmt::format("{:02}", who);
      if (who % 3 != 0) made.name = fmt::format("P. Example {}", who);
      made.started_utc = fmt::format("2031-{:02}-{:02}T{:02}:{:02}:00Z", 1 + k / 9, 2 + k % 9 * 3,
                                     7 + random() % 9, random() % 60);
      made.mode = k % 3 == 0 ? scenario::Mode::kPractice : scenario::Mode::kAssessment;
      made.ticks = static_cast<std::int64_t>(150'000 / (1 + 0.25 * k)) + 30'000 +
                   static_cast<std::int64_t>(random() % 9000);
      made.ends = !chance(0.05);
      made.is_sealed = made.mode == scenario::Mode::kAssessment;
      if (k < 2) made.more_text = "an earlier version";
      const double weakness = 0.35 / (1 + 0.3 * k);
      made.outcome = [&, weakness](const std::string& rule) {
        if (rule.size() % 11 == 0) return Outcome::kNotExercised;
        return chance(rule.size() % 7 == 0 ? 2.2 * weakness : weakness / 3) ? Outcome::kBroken
                                                                            : Outcome::kMet;
      };
      tests::makeSession(folder / fmt::format("{}-{:03}.cabsession", name, ++number), exercise,
                         made);
    }
  }
  std::FILE* torn = std::fopen((folder / "copied-halfway.cabsession").c_str(), "w");
  std::fputs("SQLite format 3", torn);
  std::fclose(torn);
}

void settle(review_room::ShelfPage& page) {
  for (int k = 0; k < 3; ++k) QApplication::processEvents();
  while (page.loader().isBusy()) {
    QThread::msleep(5);
    QApplication::processEvents();
  }
  for (int k = 0; k < 3; ++k) QApplication::processEvents();
}

void choose(QWidget& page, const QString& name, int index) {
  for (QComboBox* box : page.findChildren<QComboBox*>())
    if (box->accessibleName() == name) box->setCurrentIndex(index);
}

void arrange(review_room::ShelfPage& page, const std::string& what) {
  if (what == "folders") page.folders()->show();
  if (what == "marking") {
    page.sessions()->table()->selectAll();
    page.findChild<QPushButton*>(QStringLiteral("mark"))->click();
  }
  if (what == "progress") {
    page.filterBar()->choose(QStringLiteral("07"), QStringLiteral("Preparation from cold"));
    choose(page, QStringLiteral("Trainee"), 7);
    choose(page, QStringLiteral("Exercise"), 1);
    page.tabs()->setCurrentIndex(1);
  }
  if (what == "weak") page.tabs()->setCurrentIndex(2);
  if (what == "due") {
    page.recencyPage()->setToday([] { return QDate(2031, 5, 10); });
    page.recencyPage()->form()->setRules({2, {}});
    page.tabs()->setCurrentIndex(3);
  }
}

int run(int argc, char** argv) {
  if (argc < 6) return 2;
  const Folder folder;
  fill(folder / "own");
  const std::string what = argv[2];
  review_room::ShelfPage page(nullptr);
  page.loader().setCacheFolder(folder / "cache");
  page.setOwnFolder(QString::fromStdString((folder / "own").string()));
  const auto theme =
      argv[3] == std::string("night") ? drawing::Theme::kNight : drawing::Theme::kDay;
  page.setTheme(theme);
  page.resize(std::stoi(argv[4]), std::stoi(argv[5]));
  page.show();
  settle(page);
  arrange(page, what);
  review_room::LockKeeper keeper(folder / "lock", nullptr, session::HashCost::kLeast);
  review_room::LockPanel panel(keeper, &page);
  if (what == "lock" || what == "waiting") {
    keeper.change({}, QStringLiteral("some words here"), [](bool) {});
    keeper.wait();
    keeper.lock();
    panel.setTheme(theme);
    for (int k = 0; k < 4 && what == "waiting"; ++k) {
      keeper.open(QStringLiteral("wrong"), [](bool) {});
      keeper.wait();
    }
    panel.ask(QStringLiteral("The review"));
  }
  settle(page);
  return screens::saveShot(page, argv[1]);
}

}  // namespace
}  // namespace cabwright

int main(int argc, char** argv) { return cabwright::screens::runShot(argc, argv, cabwright::run); }
