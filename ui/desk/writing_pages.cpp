// SPDX-License-Identifier: GPL-3.0-or-later
// Situation, conditions, controls and things, words.
#include "desk/writing_pages.h"

#include <QCoreApplication>
#include <QLabel>
#include <QVBoxLayout>
#include <array>

#include "cab/names.h"
#include "cab/you_parts.h"
#include "desk/writing_form.h"
#include "desk/writing_named.h"
#include "scenario/route_file.h"
#include "unit/places.h"

namespace cabwright::desk {

namespace {

using S = scenario::DraftSection;

QVBoxLayout* columnOf(QWidget* page) {
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(0, 0, 8, 0);
  return column;
}

constexpr std::array kWeathers{
    QT_TRANSLATE_NOOP("Weather", "clear"), QT_TRANSLATE_NOOP("Weather", "overcast"),
    QT_TRANSLATE_NOOP("Weather", "rain"),  QT_TRANSLATE_NOOP("Weather", "snow"),
    QT_TRANSLATE_NOOP("Weather", "frost"), QT_TRANSLATE_NOOP("Weather", "fog"),
    QT_TRANSLATE_NOOP("Weather", "wind"),  QT_TRANSLATE_NOOP("Weather", "hot")};
constexpr std::array kRails{
    QT_TRANSLATE_NOOP("Rail", "dry"),    QT_TRANSLATE_NOOP("Rail", "damp"),
    QT_TRANSLATE_NOOP("Rail", "wet"),    QT_TRANSLATE_NOOP("Rail", "frosty"),
    QT_TRANSLATE_NOOP("Rail", "greasy"), QT_TRANSLATE_NOOP("Rail", "leaves")};

std::vector<WritingChoice> choicesOf(std::span<const char* const> words, const char* context) {
  std::vector<WritingChoice> all{{"", WritingPages::tr("not said")}};
  for (const char* word : words) all.push_back({word, QCoreApplication::translate(context, word)});
  return all;
}

std::vector<WritingChoice> namesOf(const scenario::FolderLibrary& library, scenario::Shelf shelf) {
  std::vector<WritingChoice> all;
  for (const std::string& name : library.names(shelf))
    all.push_back({name, QString::fromStdString(name)});
  return all;
}

// Berths of all routes there are; the check says when one is not of this route.
std::vector<WritingChoice> berths(const scenario::FolderLibrary& library) {
  std::vector<WritingChoice> all{{"", WritingPages::tr("not said")}};
  for (const std::string& name : library.names(scenario::Shelf::kRoutes)) {
    const auto found = library.find(scenario::Shelf::kRoutes, name);
    const auto* file = std::get_if<scenario::SourceFile>(&found);
    if (!file) continue;
    const auto parsed = scenario::parseRoute(name, *file);
    if (const auto* route = std::get_if<scenario::RouteFile>(&parsed)) {
      for (const scenario::Berth& berth : route->berths)
        all.push_back({berth.name, QString::fromStdString(berth.name)});
    }
  }
  return all;
}

}  // namespace

QWidget* WritingPages::makeSituation(Writing& writing, QWidget* parent) {
  auto* page = new QWidget(parent);
  auto* column = columnOf(page);
  const scenario::FolderLibrary library = writing.library();
  auto* head = new WritingForm(writing, S::kHead, page);
  head->addChoice("vehicle", tr("Vehicle"), namesOf(library, scenario::Shelf::kVehicles), true);
  head->addChoice("route", tr("Route"), namesOf(library, scenario::Shelf::kRoutes), true);
  head->addChoice("mode", tr("How it is taken"),
                  {{"guided", cab::modeText(scenario::Mode::kGuided)},
                   {"practice", cab::modeText(scenario::Mode::kPractice)},
                   {"assessment", cab::modeText(scenario::Mode::kAssessment)}});
  head->addText("time_allowed", tr("Time allowed"), tr("as 20 min; none if left empty"));
  head->addNumber("seed", tr("Seed of what is drawn"), "", 0, 999999, 1, 0);
  auto* start = new WritingForm(writing, S::kStart, page);
  std::vector<WritingChoice> places;
  for (const unit::PlaceInfo& place : unit::placeTable())
    places.push_back({std::string(place.name), cab::nameOf(place.id)});
  start->addChoice("place", tr("The trainee stands"), places);
  start->addChoice("berth", tr("The unit stands at"), berths(library), true);
  start->addNumber("position_m", tr("or at metre"), "m", -1e6, 1e6, 0, 3);
  start->addNumber("speed_mph", tr("It moves with"), "mph", -80, 80, 0, 3);
  start->addChoice("teeth", tr("Teeth of the dogs"),
                   {{"", tr("as said by angle")}, {"random", tr("drawn by the seed")}});
  auto* people = new WritingForm(writing, S::kPeople, page);
  people->addFlag("guard", tr("There is a guard"), true);
  people->addFlag("second_person", tr("Somebody comes when asked"), true);
  for (WritingForm* form : {head, start, people}) {
    column->addWidget(form);
    form->fill();
  }
  column->addStretch(1);
  return page;
}

QWidget* WritingPages::makeConditions(Writing& writing, QWidget* parent) {
  auto* page = new QWidget(parent);
  auto* column = columnOf(page);
  auto* form = new WritingForm(writing, S::kConditions, page);
  form->addChoice("weather", tr("Weather"), choicesOf(kWeathers, "Weather"));
  form->addNumber("temperature", tr("Temperature"), "C", -30, 45, 15, 1);
  form->addChoice("rail", tr("Rail"), choicesOf(kRails, "Rail"), true);
  form->addFlag("dark", tr("It is dark"), false);
  form->addNumber("stood_hours", tr("It has stood"), "h", 0, 200, 9, 2);
  form->addNote(
      tr("Air, vacuum, heat and battery are what so many hours have left, unless the "
         "start says otherwise."));
  column->addWidget(form);
  form->fill();
  column->addStretch(1);
  return page;
}

QWidget* WritingPages::makeThings(Writing& writing, QWidget* parent) {
  auto* page = new QWidget(parent);
  auto* column = columnOf(page);
  column->addWidget(new NamedValues(writing, S::kControls, tr("Controls out of their usual place"),
                                    controlEntries(), page));
  column->addWidget(
      new NamedValues(writing, S::kObjects, tr("Loose things"), objectEntries(), page));
  column->addWidget(new NamedValues(writing, S::kStart, tr("Numbers of the machine at the start"),
                                    startEntries(), page));
  column->addWidget(new NamedValues(writing, S::kParameters,
                                    tr("Numbers of the vehicle, for this scenario only"),
                                    parameterEntries(), page));
  column->addStretch(1);
  return page;
}

QWidget* WritingPages::makeWords(Writing& writing, QWidget* parent) {
  auto* page = new QWidget(parent);
  auto* column = columnOf(page);
  auto* form = new WritingForm(writing, S::kHead, page);
  form->addText("title", tr("Title"));
  form->addText("purpose", tr("What it is for"), tr("for instructor and sheet"));
  form->addLines("summary", tr("What the trainee is told"), false);
  form->addLines("teaches", tr("What it teaches, a line each"), true);
  form->addNumber("level", tr("How hard, 1 to 5"), "", 1, 5, 2, 0);
  column->addWidget(form);
  form->fill();
  column->addStretch(1);
  return page;
}

}  // namespace cabwright::desk
