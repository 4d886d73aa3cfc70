// SPDX-License-Identifier: GPL-3.0-or-later
// Playing and stepping: round buttons with the keys that do the same, and how fast it plays.
#pragma once

#include <QAbstractButton>
#include <QComboBox>
#include <QLabel>
#include <array>
#include <vector>

#include "after/sheet_look.h"
#include "drawing/pen.h"

namespace cabwright::review_room {

enum class Step : std::uint8_t {
  kVerdictBack,
  kActBack,
  kSecondBack,
  kFrameBack,
  kPlay,
  kFrameOn,
  kSecondOn,
  kActOn,
  kVerdictOn
};
inline constexpr std::size_t kSteps = 9;

class TransportButton : public QAbstractButton {
  Q_OBJECT
 public:
  TransportButton(Step step, const QString& key, const after::SheetLook& look, QWidget* parent);
  [[nodiscard]] QSize sizeHint() const override;
  /// Whether its key may stand beside it.
  void setRoomForKey(bool room);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void enterEvent(QEnterEvent* event) override;
  void leaveEvent(QEvent* event) override;

 private:
  void paintSign(drawing::Pen& pen, QPointF at) const;
  const Step step_;
  [[nodiscard]] bool showsKey() const { return room_for_key_ && !key_.isEmpty(); }
  const QString key_;
  bool room_for_key_ = true;
  const after::SheetLook& look_;
};

class TransportBar : public QWidget {
  Q_OBJECT
 public:
  explicit TransportBar(const after::SheetLook& look, QWidget* parent = nullptr);

  [[nodiscard]] TransportButton* button(Step step) const;
  [[nodiscard]] QComboBox* rates() const { return rates_; }
  void setPlaying(bool playing);
  /// What is at this moment; empty: nothing.
  void setEvents(const QString& words);
  [[nodiscard]] const QString& events() const { return happens_; }
  /// As much of it as has room.
  [[nodiscard]] QString shownEvents() const { return events_->text(); }
  void setTime(const QString& now, const QString& end);
  void restyle();

  /// How fast it can play, times real time, rising.
  static constexpr std::array<double, 8> kRates{0.1, 0.25, 0.5, 1, 2, 5, 10, 20};
  [[nodiscard]] double rate() const;
  /// One rate up or down.
  void changeRate(int by);

 Q_SIGNALS:
  void stepAsked(cabwright::review_room::Step step);

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void arrange();
  void fit();
  QString happens_;
  std::array<TransportButton*, kSteps> buttons_{};
  QLabel *events_, *time_;
  QComboBox* rates_;
};

}  // namespace cabwright::review_room
