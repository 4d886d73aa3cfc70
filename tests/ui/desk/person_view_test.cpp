// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/person_view.h"

#include <QTableView>
#include <algorithm>

#include "cab/names.h"
#include "page_rig.h"
#include "text_recorder.h"

namespace cabwright::desk {
namespace {

using unit::Control;
using unit::Place;

class PersonViewTest : public PageRig<PersonView> {
 protected:
  const PersonState& state() { return page_->state(); }
  // The cells of the entry about a thing; empty: none.
  QStringList entryOf(const after::RowsTable& table, const QString& thing) {
    for (const after::TableRow& row : table.rows())
      if (row.cells[1] == thing) return row.cells;
    return {};
  }
};

TEST_F(PersonViewTest, FollowsTheTraineeOnTheWay) {
  sit("cold-preparation");
  pass(0.1);
  const Place start = state().place;
  EXPECT_FALSE(state().walking);
  doIt("go lineside");
  pass(0.5);
  EXPECT_TRUE(state().walking);
  EXPECT_EQ(state().heading, Place::kLineside);
  EXPECT_GT(state().arrives_in_s, 0);
  EXPECT_TRUE(page_->summary().contains(cab::nameOf(Place::kLineside)));
  for (int k = 0; k < 600 && state().walking; ++k) pass(0.5);
  EXPECT_EQ(state().place, Place::kLineside);
  EXPECT_NE(state().place, start);
}

TEST_F(PersonViewTest, ShowsWhatEachHandHoldsAndHow) {
  sit("hill-start");
  pass(0.1);
  doIt("hold cab1.device");
  doIt("hold cab1.brake");
  pass(0.2);
  std::vector<Control> held;
  for (const cab::Hold& hold : state().hands)
    if (hold.on) held.push_back(*hold.on);
  EXPECT_NE(std::ranges::find(held, Control::kCab1Brake), held.end());
  EXPECT_TRUE(page_->summary().contains(cab::nameOf(Control::kCab1Brake)));
  EXPECT_EQ(page_->accessibleDescription(), page_->summary());
  doIt("release cab1.brake");
  doIt("release cab1.device");
  pass(0.2);
  for (const cab::Hold& hold : state().hands) EXPECT_FALSE(hold.on);
}

TEST_F(PersonViewTest, JudgementsStandBesideWhatWasSo) {
  sit("hill-start");
  pass(0.1);
  doIt("instructor: condition cab1.detonators missing");
  pass(1.5);
  // Put in and found by nobody: it is among what is open, and counted at its place.
  ASSERT_FALSE(entryOf(page_->open(), QStringLiteral("Cab 1, detonators")).isEmpty());
  EXPECT_GE(page_->openAt(Place::kCab1), 1);
  const int open = static_cast<int>(page_->open().rows().size());
  const auto judge = [this](const std::string& item, const std::string& verdict) {
    doIt("look " + item);
    pass(8);
    doIt("judge " + item + " " + verdict);
    pass(0.3);
  };
  judge("cab1.detonators", "good");
  QStringList entry = entryOf(page_->notebook(), QStringLiteral("Cab 1, detonators"));
  ASSERT_EQ(entry.size(), 5);
  EXPECT_EQ(entry[4], QLatin1String("missed"));
  judge("cab1.detonators", "defect");
  entry = entryOf(page_->notebook(), QStringLiteral("Cab 1, detonators"));
  EXPECT_EQ(entry[4], QLatin1String("right: found"));
  EXPECT_EQ(static_cast<int>(page_->open().rows().size()), open - 1);
  judge("cab1.flags", "defect");
  EXPECT_EQ(entryOf(page_->notebook(), QStringLiteral("Cab 1, flags"))[4],
            QLatin1String("false alarm"));
  judge("cab1.first_aid", "good");
  EXPECT_EQ(entryOf(page_->notebook(), QStringLiteral("Cab 1, first aid"))[4],
            QLatin1String("right"));
  // A glance is not a look.
  doIt("look cab1.floor");
  pass(0.2);
  doIt("judge cab1.floor good");
  pass(0.3);
  EXPECT_EQ(entryOf(page_->notebook(), QStringLiteral("Cab 1, floor"))[4],
            QLatin1String("looked too short"));
}

TEST_F(PersonViewTest, ShowsWhatIsLookedAtAndWhatIsThereToBeSeen) {
  sit("hill-start");
  pass(0.1);
  doIt("look cab1.flags");
  pass(0.5);
  EXPECT_EQ(state().looking, unit::Item::kCab1Flags);
  EXPECT_FALSE(state().shows_defect);
  EXPECT_FALSE(state().shows.isEmpty());
  doIt("instructor: condition cab1.detonators missing");
  doIt("look cab1.detonators");
  pass(0.5);
  EXPECT_TRUE(state().shows_defect);
}

TEST_F(PersonViewTest, TellsWhatWasHeardLast) {
  sit("hill-start");
  tests::playScript(*seat_, "hill-start", "good", 140);
  pass(0.2);
  EXPECT_FALSE(state().words.isEmpty() && state().bell_code == 0);
  EXPECT_FALSE(state().sounds.isEmpty());  // both engines run
}

TEST_F(PersonViewTest, EverythingIsReachedByKeysAndNamed) {
  sit("hill-start");
  expectAllReached();
}

// What stands at the left stays clear of the tables at the right.
TEST_F(PersonViewTest, TheWordsBesideTheTablesHaveTheirRoom) {
  sit("hill-start");
  for (const QSize size : {QSize(1000, 560), QSize(1280, 660)}) {
    page_->resize(size);
    settle();
    testing_ui::TextRecorder recorder(size);
    page_->render(&recorder);
    const int tables = page_->findChild<QTableView*>()->x();
    bool seen = false;
    for (const auto& words : recorder.words()) {
      if (words.box.left() >= tables) continue;
      seen = seen || words.text.startsWith(QLatin1String("A figure counts"));
      EXPECT_LE(words.box.right(), tables) << words.text.toStdString();
    }
    EXPECT_TRUE(seen);
  }
}

}  // namespace
}  // namespace cabwright::desk
