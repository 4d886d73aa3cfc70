// SPDX-License-Identifier: GPL-3.0-or-later
// A folder of sessions as a station has it after some weeks, and a shelf page over it. Most are
// copies of a few that were really run, with other heads.
#pragma once

#include <QApplication>
#include <QElapsedTimer>
#include <QSettings>
#include <QTest>

#include "review_room/shelf_page.h"
#include "reviewed_session.h"

namespace cabwright::tests {

/// Waits for something that goes on in another thread, at most half a minute.
template <typename Done>
bool waitFor(const Done& done) {
  QElapsedTimer clock;
  clock.start();
  while (!done() && clock.elapsed() < 30'000) QTest::qWait(5);
  return done();
}

struct ShelfRig {
  ShelfRig() {
    std::filesystem::create_directories(own);
    page.loader().setCacheFolder(folder / "cache");
    page.setSettings(settings);
    page.setOwnFolder(QString::fromStdString(own.string()));
    page.resize(1280, 720);
  }
  /// Shows the page and waits until it has looked into the folders.
  void open() {
    page.show();
    QApplication::setActiveWindow(&page);
    settle();
  }
  void settle() {
    QApplication::processEvents();
    waitFor([this] { return !page.loader().isBusy(); });
    QApplication::processEvents();
  }
  void reload() {
    QTest::keyClick(&page, Qt::Key_F5);
    settle();
  }
  [[nodiscard]] QString path(const std::string& name) const {
    return QString::fromStdString((own / name).string());
  }
  [[nodiscard]] review_room::ShelfTable* table() const { return page.sessions()->table(); }
  /// Clicks into the row of this file.
  bool click(const std::string& name) {
    const int row = page.model().findShown(path(name));
    if (row < 0) return false;
    const QModelIndex at = page.model().index(row, 1);
    table()->scrollTo(at);
    QTest::mouseClick(table()->viewport(), Qt::LeftButton, {}, table()->visualRect(at).center());
    return true;
  }
  QPushButton* button(const QString& name) { return page.findChild<QPushButton*>(name); }

  session::Folder folder;
  std::filesystem::path own = folder / "own";
  QSettings settings{QString::fromStdString((folder / "settings.ini").string()),
                     QSettings::IniFormat};
  review_room::ShelfPage page{nullptr};
};

/// Takes every `passed` or failed attempt of this trainee at another time of the sample exercise.
inline void putSession(const std::filesystem::path& file, const std::string& number, bool good) {
  session::record(file, good ? session::kGoodDeeds : review::kBadDeeds, 915, true, number);
}

}  // namespace cabwright::tests
