// SPDX-License-Identifier: GPL-3.0-or-later
// A trainee with a mouse and no keyboard.
#include <QListWidget>
#include <QPushButton>

#include "cab/names.h"
#include "cab/plate_cab_round.h"
#include "cab/switch_parts.h"
#include "driver.h"

namespace cabwright::tests {
namespace {

class Mouse final : public Hand {
 public:
  using Hand::Hand;

 private:
  bool look(unit::Item item) override {
    return desk().click(partOf<cab::ItemPart>(unit::itemInfo(item).name));
  }

  bool judge(unit::Item item, unit::Verdict verdict, unit::DefectClass rank) override {
    if (desk().seat().unit().world().trainee.looking != item) return false;
    const char* word = verdict == unit::Verdict::kGood     ? "Good"
                       : verdict == unit::Verdict::kDefect ? "Defect"
                                                           : "Not sure";
    for (auto* button : desk().view().findChildren<cab::WordButton*>())
      if (button->accessibleName() == QLatin1String(word))
        return desk().click(button) && sayClass(rank);
    return false;
  }

  bool sayClass(unit::DefectClass rank) {
    if (rank == unit::DefectClass::kNone) return true;
    desk().settle();
    return desk().click(desk().find<cab::WordButton>("class." + std::string(unit::letterOf(rank))));
  }

  bool walk(unit::Place place) override {
    const QString name =
        QStringLiteral("go.") + QString::fromStdString(std::string(unit::placeInfo(place).name));
    return desk().click(desk().find<cab::BalloonPart>(name)) && desk().seat().isWalking();
  }

  bool say(unit::Phrase phrase) override {
    for (const unit::PhraseInfo& info : unit::phraseTable()) {
      if (info.id != phrase) continue;
      const char* verb = info.verb == unit::PhraseVerb::kSay ? "Say: " : "Do: ";
      return choose(QStringLiteral("say"), QLatin1String(verb) + cab::nameOf(phrase),
                    QStringLiteral("Say it"));
    }
    return false;
  }

  bool ring(unit::Control, const std::string& code) override {
    return choose(QStringLiteral("say"),
                  QStringLiteral("Ring to the guard: ") + QString::fromStdString(code),
                  QStringLiteral("Say it"));
  }

  bool useThing(const std::string& verb, unit::Object object) override {
    const std::string name(unit::objectInfo(object).name);
    auto* thing = desk().find<cab::CarriedPart>("thing." + name);
    return desk().click(thing) && chooseRow(wordsOf(verb, object), QStringLiteral("Do it"));
  }

  bool note(const std::string& what, const std::string& figure) override {
    if (!desk().click(desk().find<cab::WordButton>(QStringLiteral("note")))) return false;
    auto* kind = desk().view().panel()->findChild<QComboBox*>();
    auto* box = desk().view().panel()->findChild<QDoubleSpinBox*>();
    for (int k = 0; k < kind->count() && kind->currentData().toString().toStdString() != what; ++k)
      desk().wheel(kind, -1);
    const double wanted = std::stod(figure);
    for (int k = 0; k < 2000 && std::abs(box->value() - wanted) > 1e-6; ++k)
      desk().wheel(box, box->value() < wanted ? 1 : -1);
    return pressButton(QStringLiteral("Enter"));
  }

  bool set(unit::Control control, double value) override {
    auto* part = partOf<cab::ControlPart>(unit::controlInfo(control).name);
    if (part == nullptr) return false;
    if (auto* lever = qobject_cast<cab::LeverPart*>(part)) {
      const QPoint from = desk().onSheet(lever->knobAt(desk().seat().value(control)));
      if (desk().window().childAt(from) != lever) return false;
      desk().drag(from, desk().onSheet(lever->knobAt(value)));
    } else if (control == unit::Control::kCab1Handbrake ||
               control == unit::Control::kCab2Handbrake) {
      return desk().click(part);  // turns the other way; it takes its time
    } else {
      const auto positions = unit::controlInfo(control).positions.size();
      for (std::size_t k = 0; k < positions && desk().seat().value(control) != value; ++k)
        if (!desk().click(part)) return false;
    }
    return std::abs(desk().seat().value(control) - value) < 0.015;
  }

  bool hold(unit::Control control, std::optional<double> value) override {
    auto* part = partOf<cab::ControlPart>(unit::controlInfo(control).name);
    if (control == unit::Control::kCab1Horn && part != nullptr)
      part = desk().findControl(value == 2.0 ? QStringLiteral("cab.horn_high")
                                             : QStringLiteral("cab.horn_low"));
    // What is held while other things are looked at: a hand stays on it.
    if (control == unit::Control::kCab1LampTest) return desk().click(part, Qt::RightButton);
    if (qobject_cast<cab::DevicePart*>(part) != nullptr) return desk().click(part);
    return desk().pressMouse(part) && desk().seat().value(control) == value.value_or(1.0);
  }

  bool release(unit::Control control) override {
    auto* part = partOf<cab::ControlPart>(unit::controlInfo(control).name);
    if (control == unit::Control::kCab1LampTest) return desk().click(part, Qt::RightButton);
    if (qobject_cast<cab::DevicePart*>(part) != nullptr) return desk().click(part);
    desk().releaseMouse();
    return desk().seat().value(control) == 0;
  }

  void turnRound() override { desk().click(desk().find<cab::TurnPart>(QStringLiteral("turn"))); }

  bool pressButton(const QString& word) {
    for (auto* button : desk().view().panel()->findChildren<QPushButton*>())
      if (button->text() == word) return desk().click(button) && desk().view().panel() == nullptr;
    return false;
  }

  bool choose(const QString& button, const QString& row, const QString& act) {
    return desk().click(desk().find<cab::WordButton>(button)) && chooseRow(row, act);
  }

  bool chooseRow(const QString& words, const QString& act) {
    if (desk().view().panel() == nullptr) return false;
    auto* list = desk().view().panel()->findChild<QListWidget*>();
    const int row = rowOf(*list, words);
    if (row < 0) return false;
    QWidget* sight = list->viewport();
    const auto box = [&] { return list->visualItemRect(list->item(row)); };
    for (int k = 0; k < 60 && !sight->rect().contains(box()); ++k)
      desk().wheel(sight, box().top() < 0 ? 1 : -1);
    const QPoint at = sight->mapTo(&desk().window(), box().center());
    if (desk().window().childAt(at) != sight) return false;
    desk().clickAt(at);
    return list->currentRow() == row && pressButton(act);
  }
};

}  // namespace

std::unique_ptr<Hand> makeMouse(Desk& desk) { return std::make_unique<Mouse>(desk); }

}  // namespace cabwright::tests
