// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of every page of the program, in both themes:
//   screenshots OUT [WIDTHxHEIGHT ...] [PAGE ...]
// into OUT/WIDTHxHEIGHT-THEME/PAGE.png. Without sizes 1280x720, without pages all of them. The
// language is English, German with LANGUAGE=de. The scale of the screen is Qt's own: with
// QT_SCALE_FACTOR=2 a window of 1280x720 fills 2560x1440.
#include <QApplication>
#include <QDir>
#include <QStackedWidget>
#include <QTemporaryDir>
#include <algorithm>
#include <cstdio>
#include <memory>
#include <regex>
#include <stdexcept>
#include <string>
#include <vector>

#include "cab/seat_view.h"
#include "cab/show_parts.h"
#include "desktop/caution_view.h"
#include "desktop/languages.h"
#include "desktop/main_window.h"
#include "desktop/settings_view.h"
#include "mechanism/mechanism_view.h"
#include "review/shelf.h"
#include "screen_play.h"
#include "shot.h"
#include "telling_moment.h"

namespace cabwright {
namespace {

using drawing::Theme;

const std::string kScenarios = std::string(CABWRIGHT_SOURCE_DIR) + "/scenarios";
// Of each exercise there is a page: where its good script comes to what it is about.
constexpr std::string_view kExercise = "exercise-";

struct Wishes {
  QDir out;
  std::vector<QSize> sizes;
  std::vector<std::string> pages;  ///< empty: all
  [[nodiscard]] bool wants(const std::string& page) const {
    return pages.empty() || std::ranges::find(pages, page) != pages.end();
  }
  [[nodiscard]] bool wantsOneOf(std::initializer_list<const char*> some) const {
    return std::ranges::any_of(some, [this](const char* page) { return wants(page); });
  }
};

std::vector<std::string> knownPages() {
  std::vector<std::string> pages{"choose",     "caution",   "settings", "driving", "mechanism",
                                 "after-good", "after-bad", "desk",     "why",     "review"};
  for (const unit::PlaceInfo& place : unit::placeTable()) {
    pages.emplace_back(place.name);
    if (unit::cabOf(place.id) >= 0) pages.push_back(std::string(place.name) + "-round");
  }
  for (const std::string& name : screens::findExercises(kScenarios))
    pages.push_back(std::string(kExercise) + name);
  return pages;
}

void prepareSettings(QSettings& settings, const QTemporaryDir& home) {
  settings.setValue(QStringLiteral("preferences/sessions"), home.filePath(QStringLiteral("s")));
  settings.setValue(QStringLiteral("preferences/muted"), true);
  settings.setValue(QStringLiteral("preferences/caution_read"), true);
  const bool german = qEnvironmentVariable("LANGUAGE").startsWith(QLatin1String("de"));
  settings.setValue(QStringLiteral("preferences/language"),
                    german ? QStringLiteral("de") : QStringLiteral("en"));
}

class Album {
 public:
  explicit Album(Wishes wishes)
      : wishes_(std::move(wishes)),
        settings_(home_.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat) {
    prepareSettings(settings_, home_);
    languages_ = std::make_unique<desktop::Languages>(settings_, CABWRIGHT_BUILD_DIR "/app");
    window_ = std::make_unique<desktop::MainWindow>(kScenarios, settings_, QStringLiteral("0"));
    window_->setClockRunning(false);
    window_->show();
  }

  void takeAll() {
    takeFirstPages();
    takePlaces();
    takeWhy();
    takeDriving();
    takeDesk();
    takeReview();
    takeAfter("after-good", "hill-start", "@good");
    takeAfter("after-bad", "warm-tooth", "@bad-dark-lamp");
    takeExercises();
  }
  [[nodiscard]] int count() const { return count_; }

 private:
  // The instructor's desk with faults in, page by page, in three sizes beside those asked for.
  void takeDesk() {
    if (!wishes_.wants("desk")) return;
    begin("cold-preparation", scenario::Mode::kPractice);
    openByKeys(Qt::CTRL | Qt::Key_D);
    desk::Desk& run = window_->deskDoor().desk();
    desk::DeskWindow& desk = *window_->deskDoor().window();
    window_->passTime(0.2);
    for (const char* fault : {"compressor2.belt_gone", "gearbox2.band3_worn", "vacuum.hose_chafed",
                              "battery.weak", "cab1.air_offset"})
      run.take("arm", fault);
    run.take("arm", "final_drive1.tooth_on_tooth", "when not true.standing");
    run.take("arm", "air.main_leak", "ramp 60 s");
    run.take("mark", "before", "the first start");
    for (int k = 0; k < 100; ++k) window_->passTime(0.2);
    run.take("clear", "battery.weak");
    window_->passTime(0.2);
    desk.faults()->unit()->button(desk::findSpot("exhauster1"))->click();
    for (int k = 0; k < desk.pageCount(); ++k) {
      desk.tabs()->setCurrentIndex(k);
      takeDeskPage(desk, k == 0 ? "desk" : "desk-" + std::to_string(k + 1));
    }
    desk.close();
  }

  // A session with faults and broken lines, as it lies before an assessor: with most room for the
  // strips, for both, for the plate; then what it shows of a moment elsewhere.
  void takeReview() {
    if (!wishes_.wants("review")) return;
    begin("warm-tooth", scenario::Mode::kAssessment);
    screens::play(*window_, "warm-tooth", "@bad-dark-lamp");
    window_->endRun();
    const auto sessions = review::findSessionFiles(home_.path().toStdString());
    if (sessions.empty()) throw std::runtime_error("nothing was recorded");
    openByKeys(Qt::CTRL | Qt::SHIFT | Qt::Key_V);
    review_room::ReviewWindow& room = *window_->reviewDoor().window();
    room.open(*std::max_element(sessions.begin(), sessions.end(), [](const auto& a, const auto& b) {
      return std::filesystem::last_write_time(a) < std::filesystem::last_write_time(b);
    }));
    while (room.isOpening()) QApplication::processEvents(QEventLoop::WaitForMoreEvents);
    if (room.view() == nullptr) throw std::runtime_error(room.said().toStdString());
    room.view()->rerun().wait();
    room.view()->jumpTo(room.view()->opened().lastTick() * 7 / 10);
    takeReviewPage(room, review_room::Share::kBoth, "review");
    takeReviewPage(room, review_room::Share::kStrips, "review-strips");
    takeReviewPage(room, review_room::Share::kPlate, "review-plate");
    room.view()->moment().seat().lookFrom(unit::Place::kEngine1);
    takeReviewPage(room, review_room::Share::kPlate, "review-elsewhere");
    room.close();
  }

  void takeReviewPage(review_room::ReviewWindow& room, review_room::Share share,
                      const std::string& page) {
    std::vector<QSize> sizes{{1280, 720}, {1920, 1080}};
    for (const QSize size : wishes_.sizes)
      if (std::ranges::find(sizes, size) == sizes.end()) sizes.push_back(size);
    room.view()->setShare(share);
    for (const Theme theme : {Theme::kDay, Theme::kNight}) {
      useTheme(theme);
      for (const QSize size : sizes) save(room, page, theme, size);
    }
  }

  void takeDeskPage(desk::DeskWindow& desk, const std::string& page) {
    std::vector<QSize> sizes{{1280, 720}, {1600, 1000}, {1920, 1080}};
    for (const QSize size : wishes_.sizes)
      if (std::ranges::find(sizes, size) == sizes.end()) sizes.push_back(size);
    for (const Theme theme : {Theme::kDay, Theme::kNight}) {
      useTheme(theme);
      for (const QSize size : sizes) save(desk, page, theme, size);
    }
  }

  void takeFirstPages() {
    if (!wishes_.wantsOneOf({"choose", "caution", "settings"})) return;
    take("choose");
    auto* pages = window_->findChild<QStackedWidget*>();
    QWidget* choose = pages->currentWidget();
    pages->setCurrentWidget(window_->findChild<desktop::CautionView*>());
    take("caution");
    settings_page_ = window_->findChild<desktop::SettingsView*>();
    pages->setCurrentWidget(settings_page_);
    take("settings");
    settings_page_ = nullptr;
    pages->setCurrentWidget(choose);
  }

  // With the standard folder instead of the one that is gone afterwards.
  void showSettings() {
    desktop::Preferences shown = window_->preferences();
    shown.sessions.clear();
    settings_page_->show(shown);
  }

  // Every place a person can be, as it is after a cold night.
  void takePlaces() {
    begin("cold-preparation", scenario::Mode::kGuided);
    for (const unit::PlaceInfo& place : unit::placeTable()) {
      const std::string name(place.name);
      const bool cab = unit::cabOf(place.id) >= 0;
      if (!wishes_.wants(name) && !(cab && wishes_.wants(name + "-round"))) continue;
      screens::reach(*window_, place);
      take(name);
      if (!cab) continue;
      window_->seatView()->turnRound();
      take(name + "-round");
      window_->seatView()->turnRound();
    }
  }

  // A dark lamp, and a lever that was refused, each with what is missing.
  void takeWhy() {
    if (!wishes_.wants("why")) return;
    begin("cold-preparation", scenario::Mode::kPractice);
    screens::reach(*window_, unit::placeInfo(unit::Place::kCab1));
    cab::SeatView& view = *window_->seatView();
    for (auto* lamp : view.findChildren<cab::LampPart*>())
      if (lamp->isVisible() && lamp->lamp() == unit::Signal::kCab1LampAir) lamp->setFocus();
    view.useCommand(QStringLiteral("why"));
    take("why");
  }

  // Power on, moving: the cab and the mechanism at the same moment.
  void takeDriving() {
    if (!wishes_.wantsOneOf({"driving", "mechanism"})) return;
    begin("hill-start", scenario::Mode::kPractice);
    screens::play(*window_, "hill-start", "@good:135");
    take("driving");
    if (!wishes_.wants("mechanism")) return;
    openByKeys(Qt::CTRL | Qt::Key_I);
    if (window_->findChild<mechanism::MechanismView*>() != window_->page())
      throw std::runtime_error("the mechanism did not open");
    take("mechanism");
  }

  void openByKeys(const QKeySequence& keys) {
    for (QAction* action : window_->findChildren<QAction*>())
      if (action->shortcut() == keys) action->trigger();
  }

  void takeAfter(const std::string& page, const std::string& exercise, const std::string& script) {
    if (!wishes_.wants(page)) return;
    begin(exercise, scenario::Mode::kPractice);
    screens::play(*window_, exercise, script);
    window_->endRun();
    take(page);
  }

  void takeExercises() {
    for (const std::string& name : screens::findExercises(kScenarios)) {
      const std::string page = std::string(kExercise) + name;
      if (!wishes_.wants(page)) continue;
      cab::Seat seat(screens::playToTellingMoment(std::filesystem::path(kScenarios) / name));
      cab::Shortcuts shortcuts;
      cab::SeatView view(seat, shortcuts);
      view.show();
      for (const Theme theme : {Theme::kDay, Theme::kNight}) {
        view.setTheme(theme);
        for (const QSize size : wishes_.sizes) save(view, page, theme, size);
      }
    }
  }

  void begin(const std::string& exercise, scenario::Mode mode) {
    if (!window_->begin(exercise, mode, QStringLiteral("07")))
      throw std::runtime_error(exercise + " cannot be taken");
  }

  void take(const std::string& page) {
    if (!wishes_.wants(page)) return;
    for (const Theme theme : {Theme::kDay, Theme::kNight}) {
      useTheme(theme);
      if (settings_page_ != nullptr) showSettings();
      for (const QSize size : wishes_.sizes) save(*window_, page, theme, size);
    }
  }

  void useTheme(Theme theme) {
    window_->preferences().theme =
        theme == Theme::kNight ? desktop::ThemeChoice::kNight : desktop::ThemeChoice::kDay;
    window_->applyPreferences();
  }

  void save(QWidget& window, const std::string& page, Theme theme, QSize size) {
    window.resize(size);
    for (int k = 0; k < 5; ++k) QApplication::processEvents();
    if (window.size() != size) throw std::runtime_error(page + " does not fit the size asked for");
    const QPixmap picture = window.grab();
    const QString folder = QStringLiteral("%1x%2-%3")
                               .arg(picture.width())
                               .arg(picture.height())
                               .arg(QLatin1String(theme == Theme::kNight ? "night" : "day"));
    const QString file = folder + QLatin1Char('/') + QString::fromStdString(page) + ".png";
    if (!wishes_.out.mkpath(folder) || !picture.save(wishes_.out.filePath(file)))
      throw std::runtime_error(file.toStdString() + " cannot be written");
    ++count_;
  }

  Wishes wishes_;
  QTemporaryDir home_;
  QSettings settings_;
  std::unique_ptr<desktop::Languages> languages_;
  std::unique_ptr<desktop::MainWindow> window_;
  desktop::SettingsView* settings_page_ = nullptr;  ///< while it is the page that is taken
  int count_ = 0;
};

Wishes parse(int argc, char** argv) {
  Wishes wishes{QDir(QString::fromLocal8Bit(argv[1])), {}, {}};
  for (int k = 2; k < argc; ++k) {
    const std::string word = argv[k];
    std::smatch size;
    if (std::regex_match(word, size, std::regex("([0-9]{2,5})x([0-9]{2,5})")))
      wishes.sizes.emplace_back(std::stoi(size[1]), std::stoi(size[2]));
    else
      wishes.pages.push_back(word);
  }
  if (wishes.sizes.empty()) wishes.sizes.emplace_back(1280, 720);
  return wishes;
}

int run(int argc, char** argv) {
  if (argc < 2) {
    std::fputs("usage: screenshots OUT [WIDTHxHEIGHT ...] [PAGE ...]\n", stderr);
    return 2;
  }
  const Wishes wishes = parse(argc, argv);
  const std::vector<std::string> known = knownPages();
  for (const std::string& page : wishes.pages) {
    if (std::ranges::find(known, page) != known.end()) continue;
    std::fprintf(stderr, "%s: no such page; there are:", page.c_str());
    for (const std::string& name : known) std::fprintf(stderr, " %s", name.c_str());
    std::fputs("\n", stderr);
    return 2;
  }
  Album album(wishes);
  album.takeAll();
  std::printf("%d pictures in %s\n", album.count(), argv[1]);
  return 0;
}

}  // namespace
}  // namespace cabwright

int main(int argc, char** argv) { return cabwright::screens::runShot(argc, argv, cabwright::run); }
