// SPDX-License-Identifier: GPL-3.0-or-later
// The mechanism as drawn: tooth counts, speeds that agree with the gearing, words from live state.
#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <cmath>

#include "mechanism/mechanism_view.h"
#include "session/situation.h"

namespace cabwright::mechanism {
namespace {

std::unique_ptr<session::LiveRun> makeRun(const std::string& scenario, scenario::Mode mode) {
  auto loaded = session::loadSituation(std::string(CABWRIGHT_SOURCE_DIR) + "/scenarios/" +
                                       scenario + "/scenario.toml");
  session::LiveOptions options;
  options.mode = mode;
  return std::make_unique<session::LiveRun>(std::get<session::Situation>(loaded), options);
}

void instruct(session::LiveRun& run, const std::string& words) {
  auto action = std::get<unit::Action>(unit::parseAction(words));
  action.actor = unit::Actor::kInstructor;
  const session::Taken taken = run.take(action);
  EXPECT_FALSE(taken.fault) << words;
}

double wrapped(double deg, double pitch) { return std::remainder(deg, pitch); }

TEST(MechanismState, TeethFitIntoEachOther) {
  const auto run = makeRun("cold-preparation", scenario::Mode::kGuided);
  const MechanismState s = readMechanism(run->unit());
  EXPECT_EQ(s.teeth[0], (TrainTeeth{24, 27, 78}));
  EXPECT_EQ(s.teeth[1], (TrainTeeth{24, 27, 78}));
  EXPECT_EQ(s.teeth[2], (TrainTeeth{36, 18, 72}));
  for (const TrainTeeth& t : s.teeth) {
    EXPECT_EQ(t.sun + 2 * t.planet, t.annulus);
    EXPECT_EQ((t.sun + t.annulus) % 3, 0);  // else three planets cannot stand evenly
  }
}

// Teeth stand in gaps wherever two wheels touch, at each of the three planets.
TEST(GearAngles, TeethMeshAtEachPlanet) {
  for (const TrainTeeth t : {TrainTeeth{24, 27, 78}, TrainTeeth{36, 18, 72}}) {
    for (double sun : {0.0, 4.0, 77.7}) {
      for (double carrier : {0.0, 33.3, 251.0}) {
        const double annulus = calcMesh(t, sun, carrier).annulus;
        for (int k = 0; k < 3; ++k) {
          const double a = carrier + 120 * k;
          const MeshAngles m = calcMesh(t, sun, a);
          const double outer = t.sun * (a - sun) + t.planet * (a + 180 - m.planet);
          EXPECT_NEAR(std::abs(wrapped(outer - 180, 360)), 0, 1e-6);
          EXPECT_NEAR(wrapped(m.annulus - annulus, 360.0 / t.annulus), 0, 1e-6);
        }
      }
    }
  }
}

// Willis: the annulus of the drawing turns as the drum of the machine does.
TEST(GearAngles, TheDrawnAnnulusObeysWillis) {
  for (const TrainTeeth t : {TrainTeeth{24, 27, 78}, TrainTeeth{36, 18, 72}}) {
    for (const auto& [sun, carrier] : {std::pair{420.0, 12.0}, {0.0, 100.0}, {-50.0, 30.0}}) {
      const double dt = 1e-4;
      const double before = calcMesh(t, 0, 0).annulus;
      const double after = calcMesh(t, 6 * sun * dt, 6 * carrier * dt).annulus;
      EXPECT_NEAR((after - before) / (6 * dt), calcDrumSpeed(t, sun, carrier), 1e-6);
    }
  }
}

// The plant's own speeds fulfil it too, so that what the drawing turns by is what its teeth allow.
TEST(GearAngles, TheMachinesSpeedsFitTheDrawnTeeth) {
  const auto run = makeRun("hill-start", scenario::Mode::kGuided);
  run->advance(200);
  const MechanismState s = readMechanism(run->unit());
  bool turns = false;
  for (const LineState& line : s.line) {
    const double carriers[] = {line.output, line.drum[0], line.drum[1]};
    for (std::size_t k = 0; k < 3; ++k)
      EXPECT_NEAR(line.drum[k], calcDrumSpeed(s.teeth[k], line.input, carriers[k]), 1e-6);
    turns = turns || std::abs(line.input) > 50;
  }
  EXPECT_TRUE(turns);
}

TEST(GearAngles, TurnsByTheSpeedsGiven) {
  LineState line;
  line.input = 60;
  line.drum[1] = -30;
  const MechanismTurn before;
  const MechanismTurn after = calcTurn(before, line, 0.1);
  EXPECT_NEAR(after.sun - before.sun, 36, 1e-9);
  EXPECT_NEAR(after.drum[1] - before.drum[1], -18, 1e-9);
  EXPECT_EQ(after.output, before.output);
}

TEST(MechanismWords, EachStateOfTheDogsHasItsOwn) {
  LineState line;
  line.dog_side = 1;
  std::set<QString> all;
  for (int k = 0; k <= static_cast<int>(plant::DogState::kPinned); ++k) {
    line.dog = static_cast<plant::DogState>(k);
    EXPECT_FALSE(dogWords(line).isEmpty());
    all.insert(dogWords(line));
  }
  EXPECT_EQ(all.size(), 7U);
  line.dog = plant::DogState::kMeshed;
  line.dog_side = -1;
  EXPECT_TRUE(dogWords(line).contains(QLatin1String("reverse")));
}

TEST(MechanismWords, ToothOnToothSaysHowFarAndWhatIsMissing) {
  MechanismState state;
  LineState line;
  line.dog = plant::DogState::kOnTooth;
  line.dog_side = 1;
  line.tooth_deg = 21.6;
  EXPECT_TRUE(dogOutlook(line, state).contains(QLatin1String("Nothing turns")));
  line.crown = 4.4;
  EXPECT_TRUE(dogOutlook(line, state).contains(QLatin1String("8.4")));
  line.crown = -4.4;
  EXPECT_TRUE(dogOutlook(line, state).contains(QLatin1String("13.6")));
  // The other way the crown wheel runs against the shaft, and the angle is counted by the shaft.
  line.dog_side = -1;
  EXPECT_TRUE(dogOutlook(line, state).contains(QLatin1String("8.4")));
}

TEST(MechanismWords, BandsFollowAirAndDrum) {
  LineState line;
  EXPECT_EQ(bandWords(line, 0), QLatin1String("open"));
  EXPECT_EQ(gearWords(line), QLatin1String("no gear"));
  line.gear_psi[0] = 46;
  line.drum[0] = -111;
  EXPECT_EQ(bandWords(line, 0), QLatin1String("slips"));
  EXPECT_EQ(gearWords(line), QLatin1String("first gear taking hold"));
  line.gear_holds[0] = true;
  line.drum[0] = 0;
  EXPECT_EQ(bandWords(line, 0), QLatin1String("holds"));
  EXPECT_EQ(gearWords(line), QLatin1String("first gear"));
}

// The path is dead from the first open contact on; the lamp burns when all of them make.
TEST(MechanismState, TheLampsPathIsThatOfTheInterlocks) {
  const auto run = makeRun("warm-tooth", scenario::Mode::kGuided);
  run->advance(10);
  MechanismState s = readMechanism(run->unit());
  ASSERT_EQ(s.path.size(), 6U);
  EXPECT_EQ(s.lamp_air, std::ranges::all_of(s.path, &PathContact::made));
  instruct(*run, "set breaker_lamps out");
  run->advance(10);
  s = readMechanism(run->unit());
  EXPECT_FALSE(s.path[1].made);
  EXPECT_EQ(s.path[1].words, QLatin1String("out"));
  EXPECT_FALSE(s.lamp_air);
}

TEST(MechanismPicture, QuickTeethAreNotDrawn) {
  EXPECT_GT(pitchesPerPicture(420, 24, 1), 1.0 / 3);
  EXPECT_LT(pitchesPerPicture(420, 24, 100), 1.0 / 3);
  EXPECT_EQ(pitchesPerPicture(420, 24, 0), 0);
}

// All words of the sheet stand inside it, are large enough, and apart.
TEST(MechanismPicture, WordsStandApart) {
  const auto run = makeRun("hill-start", scenario::Mode::kGuided);
  run->advance(200);
  const MechanismState s = readMechanism(run->unit());
  for (int line : {0, 1}) {
    QImage image(1600, 1000, QImage::Format_RGB32);
    QPainter painter(&image);
    drawing::Pen pen(painter, drawing::Theme::kDay);
    std::vector<drawing::SetWords> words;
    pen.noteWords(&words);
    paintMechanism(pen, {0, 0, 1600, 1000}, s, {}, {.line = line});
    ASSERT_GT(words.size(), 50U);
    for (std::size_t a = 0; a < words.size(); ++a) {
      EXPECT_TRUE(QRectF(20, 20, 1560, 960).contains(words[a].box)) << qPrintable(words[a].text);
      EXPECT_GE(words[a].size_px, drawing::kText - 0.01) << qPrintable(words[a].text);
      for (std::size_t b = a + 1; b < words.size(); ++b)
        EXPECT_FALSE(words[a].box.intersects(words[b].box))
            << qPrintable(words[a].text) << " / " << qPrintable(words[b].text);
    }
  }
}

TEST(MechanismView, FollowsTheMachineOutsideAssessmentOnly) {
  const cab::SheetStyle style;
  cab::Seat seat(makeRun("hill-start", scenario::Mode::kGuided));
  MechanismView view(seat, style);
  EXPECT_TRUE(view.isOpen());
  view.setSlownessStep(1);
  const MechanismTurn before = view.turn();
  for (int k = 0; k < 20; ++k) seat.passRealTime(0.05);
  EXPECT_GT(std::abs(view.turn().crank - before.crank), 1);
  view.setSlownessStep(4);
  const double stands = view.turn().crank;
  for (int k = 0; k < 20; ++k) seat.passRealTime(0.05);
  EXPECT_EQ(view.turn().crank, stands);
  view.setLine(1);
  EXPECT_EQ(view.look().line, 1);
  cab::Seat examined(makeRun("warm-tooth", scenario::Mode::kAssessment));
  const MechanismView shut(examined, style);
  EXPECT_FALSE(shut.isOpen());
  EXPECT_EQ(shut.state().path.size(), 0U);
}

}  // namespace
}  // namespace cabwright::mechanism
