// SPDX-License-Identifier: GPL-3.0-or-later
// How quick the shelf is on the screen with ten thousand sessions that were looked at before: from
// asking for it to the picture, and what filtering, sorting and each page cost.
//   usage: shelf_bench [--files N]
#include <fmt/format.h>
#include <unistd.h>

#include <QApplication>
#include <QThread>
#include <chrono>
#include <cstdlib>
#include <cstring>
#include <random>

#include "drawing/face.h"
#include "made_session.h"
#include "review_room/shelf_page.h"

namespace {

using namespace cabwright;
namespace fs = std::filesystem;

double now() {
  return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

void settle(review_room::ShelfPage& page) {
  QApplication::processEvents();
  while (page.loader().isBusy()) {
    QThread::usleep(200);
    QApplication::processEvents();
  }
  QApplication::processEvents();
  (void)page.grab();
}

void makeShelf(const fs::path& folder, int files) {
  fs::create_directories(folder / "made");
  const session::Situation exercise = tests::loadExercise("cold-preparation");
  std::minstd_rand random(5);  // NOLINT: any will do
  for (int k = 0; k < 60; ++k) {
    tests::MadeSession made;
    made.number = fmt::format("{:02}", k % 12);
    made.started_utc = fmt::format("2031-{:02}-{:02}T08:00:00Z", 1 + k % 12, 1 + k % 28);
    made.outcome = [&random](const std::string&) {
      return random() % 9 == 0 ? marking::Outcome::kBroken : marking::Outcome::kMet;
    };
    tests::makeSession(folder / fmt::format("made/{}.cabsession", k), exercise, made);
  }
  // Other names for the same files: the disk of this machine is not what is measured.
  for (int k = 60; k < files; ++k) {
    const fs::path part = folder / fmt::format("{:02}", k % 50);
    fs::create_directories(part);
    fs::create_hard_link(folder / fmt::format("made/{}.cabsession", k % 60),
                         part / fmt::format("{:05}.cabsession", k));
  }
}

template <typename Act>
void measure(const char* name, review_room::ShelfPage& page, const Act& act) {
  const double began = now();
  act();
  settle(page);
  fmt::print("{:<22} {:.3f} s\n", name, now() - began);
}

void run(const fs::path& folder, int files) {
  makeShelf(folder / "own", files);
  for (const char* name : {"first", "again"}) {
    review_room::ShelfPage page(nullptr);
    page.loader().setCacheFolder(folder / "cache");
    page.setOwnFolder(QString::fromStdString((folder / "own").string()));
    page.resize(1280, 720);
    measure(fmt::format("shelf_{}", name).c_str(), page, [&] { page.show(); });
    if (page.model().rowCount() != files) throw std::runtime_error("sessions are missing");
    if (name == std::string("first")) continue;
    measure("sort_by_trainee", page, [&] { page.model().sort(0, Qt::AscendingOrder); });
    measure("filter_by_words", page, [&] {
      review_room::ShelfFilter filter;
      filter.text = QStringLiteral("2031 assess 000");
      page.model().setFilter(filter);
    });
    measure("show_all", page, [&] { page.model().setFilter({}); });
    measure("weak_lines", page, [&] { page.tabs()->setCurrentIndex(2); });
  }
}

}  // namespace

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  cabwright::drawing::prepareFaces();
  const QApplication app(argc, argv);
  int files = 10'000;
  if (argc > 2 && std::strcmp(argv[1], "--files") == 0) files = std::max(60, std::atoi(argv[2]));
  std::string name = (fs::temp_directory_path() / "shelf-bench-XXXXXX").string();
  if (::mkdtemp(name.data()) == nullptr) return 1;
  int code = 0;
  try {
    run(name, files);
  } catch (const std::exception& error) {
    fmt::print(stderr, "shelf_bench: {}\n", error.what());
    code = 1;
  }
  std::error_code ignored;
  fs::remove_all(name, ignored);
  return code;
}
