// SPDX-License-Identifier: GPL-3.0-or-later
// The unit with its spots: a spot that is pressed says which it is; one where a fault waits, grows
// or is there bears a mark and a word. Arrows go from spot to spot, Enter chooses.
#pragma once

#include <QAbstractButton>
#include <QWidget>
#include <vector>

#include "desk/desk.h"
#include "desk/spots.h"
#include "drawing/pen.h"

namespace cabwright::desk {

/// How a spot stands: the strongest of its faults, and how many of them are not put right.
struct SpotState {
  enum class Kind : std::uint8_t { kSound, kArmed, kGrowing, kThere } kind = Kind::kSound;
  int count = 0;
  bool operator==(const SpotState&) const = default;
};
/// One for each spot. Without a run: all sound.
[[nodiscard]] std::vector<SpotState> calcSpotStates(const session::LiveRun* run);
/// "armed", "growing", "there"; empty when sound.
[[nodiscard]] QString wordOf(SpotState::Kind kind);

class SpotButton;

class UnitView : public QWidget {
  Q_OBJECT
 public:
  explicit UnitView(Desk& desk, QWidget* parent = nullptr);

  /// The spot that is shown as chosen; spotTable().size(): none.
  void setChosen(std::size_t spot);
  [[nodiscard]] std::size_t chosen() const { return chosen_; }
  [[nodiscard]] QAbstractButton* button(std::size_t spot) const;
  [[nodiscard]] const std::vector<SpotState>& states() const { return states_; }
  /// The keys go to the spot that had them last.
  void takeFocus();
  [[nodiscard]] int heightForWidth(int width) const override;

  /// Everything but the spots themselves; for the view and for tests of its words.
  void paintSheet(drawing::Pen& pen) const;

 Q_SIGNALS:
  void spotChosen(std::size_t spot);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  friend class SpotButton;
  void refresh();
  void arrange();
  void step(std::size_t from, Qt::Key key);
  void setCurrent(std::size_t spot);
  void setPointed(std::size_t spot);
  void paintWords(drawing::Pen& pen, bool above) const;

  Desk& desk_;
  std::vector<SpotButton*> buttons_;
  std::vector<SpotState> states_;
  std::size_t chosen_, current_ = 0;
  std::size_t pointed_;  ///< by mouse or keys: its name stands below
  double scale_ = 1;
  QPointF origin_;
};

}  // namespace cabwright::desk
