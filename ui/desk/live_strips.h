// SPDX-License-Identifier: GPL-3.0-or-later
// Live strip charts of any signals of the run, up to twelve at once, with what happened along the
// axis of time. Ctrl+F goes to the search.
#pragma once

#include <QString>
#include <vector>

#include "desk/choice_button.h"
#include "desk/live_page.h"
#include "desk/run_events.h"
#include "desk/signal_list.h"
#include "desk/signal_tape.h"
#include "desk/strip_pane.h"

QT_BEGIN_NAMESPACE
class QLineEdit;
QT_END_NAMESPACE

namespace cabwright::desk {

class LiveStrips : public LivePage {
  Q_OBJECT
 public:
  explicit LiveStrips(Desk& desk, QWidget* parent = nullptr);
  ~LiveStrips() override;

  [[nodiscard]] const std::vector<unit::Signal>& chosen() const { return chosen_; }
  /// Those, in this order, the first twelve.
  void choose(const std::vector<unit::Signal>& signals);
  /// Puts one on the strip or takes it off. False: there are twelve already.
  bool setChosen(unit::Signal signal, bool on);
  /// By its number in presets().
  void choosePreset(std::size_t which);
  /// 1, 5 or 20 minutes.
  void setMinutes(int minutes);
  [[nodiscard]] int minutes() const;

  [[nodiscard]] StripPane& pane() { return *pane_; }
  [[nodiscard]] SignalList& list() { return *list_; }
  [[nodiscard]] const SignalListModel& model() const { return *model_; }
  [[nodiscard]] const SignalTape& tape() const { return tape_; }
  [[nodiscard]] const RunEvents& events() const { return events_; }
  /// What was last said about a choice that was refused; empty: nothing.
  [[nodiscard]] QString said() const { return said_; }

 Q_SIGNALS:
  /// Someone wants to go to this moment of the run.
  void momentChosen(qint64 tick);

 protected:
  void forget() override;
  void keep() override;
  void showRun() override;
  void restyle() override;
  void arrange() override;
  void paintSheet(drawing::Pen& pen, QSizeF sheet) override;

 private:
  void makeBar();
  void takeChoice();
  void say(const QString& words);
  void askWindow(int direction);

  SignalTape tape_;
  RunEvents events_;
  std::vector<unit::Signal> chosen_;
  SignalListModel* model_;
  QLineEdit* search_;
  SignalList* list_;
  StripPane* pane_;
  std::vector<ChoiceButton*> presets_, windows_;
  ChoiceButton *hold_ = nullptr, *only_ = nullptr;
  QString said_;
  bool news_ = false;  ///< since it was last drawn
};

}  // namespace cabwright::desk
