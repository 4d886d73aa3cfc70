// SPDX-License-Identifier: GPL-3.0-or-later
// The run as a strip: what was done in lanes, what was measured in plots, what fell as flags, and a
// cursor that says all values of a moment. Mouse: the cursor follows, the wheel zooms, dragging
// shifts, a click on a flag chooses its line. Keys: left and right move the cursor (with Shift
// further), Home and End, + and - zoom, 0 shows all, Page Up and Page Down go from flag to flag,
// Enter chooses the one at the cursor.
#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "after/sheet_look.h"
#include "after/strip_layout.h"
#include "after/strip_plots.h"
#include "drawing/pen.h"

namespace cabwright::after {

class StripChart : public QWidget {
  Q_OBJECT
 public:
  /// `look` must outlive it.
  explicit StripChart(const SheetLook& look, QWidget* parent = nullptr);
  ~StripChart() override;

  /// The run's history must outlive this or be replaced first.
  void setRun(const FinishedRun& run);
  /// The run as an assessor looks at it: with these lanes instead of its own, marks as signs on
  /// them instead of flags, and a cursor that stays where it is put: the left button drags it, any
  /// other one shifts the strip. A click on a sign goes to its moment.
  void setReview(const FinishedRun& run, std::vector<Lane> lanes);
  /// Other lanes, of the same run.
  void setReviewLanes(std::vector<Lane> lanes);
  /// Theme or scale are others.
  void restyle();

  [[nodiscard]] std::int64_t cursor() const { return cursor_; }
  /// Moved into the run, and the strip shifted so that it is seen.
  void setCursor(std::int64_t tick);
  /// The flags of this line are marked; 0: none.
  void setSelectedLine(int line);
  [[nodiscard]] Span span() const { return span_; }
  void showSpan(Span span);
  void showAll() { showSpan({0, last_tick_}); }

  [[nodiscard]] const std::vector<Flag>& flags() const { return flags_; }
  [[nodiscard]] const std::vector<Plot>& plots() const { return plots_; }
  [[nodiscard]] const std::vector<Lane>& lanes() const { return lanes_; }
  /// Of a signal that a plot shows, at the cursor; empty before the first value.
  [[nodiscard]] std::optional<double> valueAtCursor(unit::Signal signal) const;
  [[nodiscard]] QList<QPointF> drawnPoints(unit::Signal signal) const {
    return plots_view_->drawnPoints(signal);
  }
  /// x of a tick, pixels of the widget.
  [[nodiscard]] double xOf(std::int64_t tick) const;
  /// Middle of a lane, pixels of the widget.
  [[nodiscard]] double yOfLane(std::size_t lane) const;
  /// In a review: what lies there, in words; empty: nothing.
  [[nodiscard]] QString wordsUnder(QPointF position) const;
  /// All of it in words: for a screen reader.
  [[nodiscard]] QString summary() const;
  /// The moment under the cursor in words.
  [[nodiscard]] QString momentText() const;

  void paintOver(drawing::Pen& pen) const;  ///< flags and cursor; for the layer above the curves

 Q_SIGNALS:
  void cursorMoved(qint64 tick);
  void flagChosen(int line);

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  [[nodiscard]] QPointF toSheet(QPointF position) const;
  [[nodiscard]] std::optional<std::size_t> findFlagAt(QPointF u) const;
  [[nodiscard]] const Sign* findSignAt(QPointF u) const;
  void moveCursor(std::int64_t tick);
  void take(const FinishedRun& run, int cab);
  void dragInReview(QPointF u, Qt::MouseButtons buttons);
  void pressInReview(QPointF u, Qt::MouseButton button);
  void arrange();
  void announce();
  void updateCursor();  ///< draws anew what the cursor changes
  bool goToFlag(int direction);
  bool moveByKey(int key, bool far);
  bool zoomByKey(int key);

  void paintLanes(drawing::Pen& pen) const;
  void paintSegment(drawing::Pen& pen, const Lane& lane, const Segment& segment, double y) const;
  void paintFault(drawing::Pen& pen, const Segment& segment, double y) const;
  void paintSigns(drawing::Pen& pen, const Lane& lane, double y) const;
  void paintActions(drawing::Pen& pen, double y) const;
  /// How far from the cursor its values reach, u.
  [[nodiscard]] double widestValue() const;
  void paintValue(drawing::Pen& pen, QPointF at, const QString& value, const QRectF& plot,
                  double& free_y) const;
  void paintPlot(drawing::Pen& pen, const Plot& plot, const QRectF& box) const;
  void paintLegend(drawing::Pen& pen, const Plot& plot, const QRectF& box) const;
  void paintAxis(drawing::Pen& pen) const;
  void paintFlags(drawing::Pen& pen) const;
  void paintCursor(drawing::Pen& pen) const;
  [[nodiscard]] QRectF cursorTag() const;

  const SheetLook& look_;
  const session::SignalHistory* history_ = nullptr;
  std::vector<session::TimedAction> actions_;
  std::vector<Lane> lanes_;
  std::vector<Plot> plots_;
  std::vector<Flag> flags_;
  std::int64_t last_tick_ = 1, cursor_ = 0;
  int selected_line_ = 0;
  bool review_ = false;
  Span span_;
  StripLayout layout_;
  std::vector<PlacedFlag> placed_;
  StripPlots* plots_view_;
  QWidget* over_;
  std::optional<QPointF> drag_from_;  ///< u
  Span drag_span_;
  bool dragged_ = false;
};

}  // namespace cabwright::after
