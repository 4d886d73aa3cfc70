// SPDX-License-Identifier: GPL-3.0-or-later
// The strips themselves: lanes of what happened, plots of what is measured, one axis of time that
// goes on with the run. Keys: left and right move a cursor (with Shift further), Home and End to
// the ends, Page Up and Page Down from one thing that happened to the next, Space holds the strip
// and lets it go on, + and - show less and more time, Enter chooses the moment at the cursor,
// Escape takes the cursor away. Mouse: the cursor follows, the wheel shows less or more, dragging
// holds the strip and shifts it.
#pragma once

#include <QPixmap>
#include <QWidget>
#include <optional>
#include <vector>

#include "after/sheet_look.h"
#include "after/strip_layout.h"
#include "after/strip_plots.h"
#include "desk/run_events.h"
#include "desk/signal_tape.h"
#include "drawing/pen.h"

namespace cabwright::desk {

class StripPane : public QWidget {
  Q_OBJECT
 public:
  /// All must outlive it.
  StripPane(const after::SheetLook& look, const SignalTape& tape, const RunEvents& events,
            QWidget* parent);
  ~StripPane() override;

  void setSignals(const std::vector<unit::Signal>& signals);
  [[nodiscard]] const std::vector<after::Plot>& plots() const { return plots_; }
  /// How much time is shown, ticks.
  void setWindow(std::int64_t ticks);
  [[nodiscard]] std::int64_t window() const { return window_; }
  /// Held: the strip stands while the run goes on.
  void setHeld(bool held);
  [[nodiscard]] bool isHeld() const { return held_to_.has_value(); }
  /// The tape has something new.
  void advance();
  /// Another run.
  void forget();
  void restyle();

  [[nodiscard]] after::Span span() const;
  [[nodiscard]] std::optional<std::int64_t> cursor() const { return cursor_; }
  void setCursor(std::optional<std::int64_t> tick);
  /// The value that stands beside a curve: at the cursor, or now.
  [[nodiscard]] std::optional<double> shownValue(unit::Signal signal) const;
  [[nodiscard]] QList<QPointF> drawnPoints(unit::Signal signal) const {
    return curves_->drawnPoints(signal);
  }
  [[nodiscard]] double xOf(std::int64_t tick) const;  ///< pixels
  /// What is drawn as done, fallen or noted in the stretch shown.
  [[nodiscard]] std::vector<const RunEvent*> eventsShown() const;
  /// The moment at the cursor, or now, in words.
  [[nodiscard]] QString momentText() const;

  void paintOver(drawing::Pen& pen) const;  ///< the cursor; for the layer above the curves

  /// A curve's name in so many u, told from the others of its plot.
  [[nodiscard]] static QString shortName(const after::Plot& plot, const QString& name, double room);

 Q_SIGNALS:
  void heldChanged(bool held);
  void cursorChanged();
  /// Someone wants to go to this moment of the run.
  void momentChosen(qint64 tick);
  /// Wants less (-1) or more (1) time.
  void windowAsked(int direction);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  struct FaultBar {
    const FaultStay* stay;
    int row;
  };
  void arrange();
  void arrangeRows();
  void draw();  ///< curves and what moves with them
  void announce();
  [[nodiscard]] int faultRows() const;
  [[nodiscard]] std::vector<FaultBar> faultBars() const;
  [[nodiscard]] QList<QPointF> pointsOf(unit::Signal signal, std::int64_t from,
                                        std::int64_t to) const;
  [[nodiscard]] double laneY(int lane) const;  ///< middle, u; 0 acts, 1 faults, 2 verdicts, 3 marks
  [[nodiscard]] QPointF toSheet(QPointF position) const { return position / look_.scale; }
  [[nodiscard]] double xIn(std::int64_t tick) const { return layout_.xOf(tick, span()); }
  [[nodiscard]] QRectF cursorTag() const;
  bool goToEvent(int direction);
  bool useKey(int key, bool far);
  void shiftTo(std::int64_t to);

  // What stands still is drawn once, into a picture.
  void paintGround(drawing::Pen& pen) const;
  void paintFrame(drawing::Pen& pen, const after::Plot& plot, const QRectF& box) const;
  void paintScale(drawing::Pen& pen, const after::Plot& plot, const QRectF& box) const;
  void paintNames(drawing::Pen& pen, const after::Plot& plot, const QRectF& box) const;
  // What moves.
  void paintActs(drawing::Pen& pen) const;
  void paintFaults(drawing::Pen& pen) const;
  void paintVerdicts(drawing::Pen& pen) const;
  void paintMarks(drawing::Pen& pen) const;
  void paintPoles(drawing::Pen& pen) const;
  void paintGrid(drawing::Pen& pen) const;
  void paintValues(drawing::Pen& pen, const after::Plot& plot, const QRectF& box) const;
  void paintAxis(drawing::Pen& pen) const;

  const after::SheetLook& look_;
  const SignalTape& tape_;
  const RunEvents& events_;
  std::vector<after::Plot> plots_;
  after::StripPlots* curves_;
  QWidget* over_;
  after::StripLayout layout_;
  QPixmap ground_;  ///< null: to be drawn anew
  int rows_ = 1;    ///< of faults, in the stretch shown
  std::int64_t window_ = 30000;
  std::optional<std::int64_t> held_to_;  ///< right edge while held
  std::optional<std::int64_t> cursor_;
  std::optional<QPointF> drag_from_;  ///< u
  std::int64_t drag_to_ = 0;
  bool dragged_ = false;
};

}  // namespace cabwright::desk
