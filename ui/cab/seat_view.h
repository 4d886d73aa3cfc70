// SPDX-License-Identifier: GPL-3.0-or-later
// The whole sheet of the trainee's seat: what comes in, the plate of the place, two hands, and the
// right block. Everything the keys do that is not a part's own is done here.
#pragma once

#include <QPointer>
#include <QTimer>
#include <memory>

#include "cab/hand_threads.h"
#include "cab/hands_part.h"
#include "cab/heard_part.h"
#include "cab/judge_row.h"
#include "cab/notebook_part.h"
#include "cab/outside_part.h"
#include "cab/panels.h"
#include "cab/plate.h"
#include "cab/why_guide.h"
#include "cab/word_button.h"
#include "cab/you_parts.h"

namespace cabwright::cab {

class SeatView : public QWidget {
  Q_OBJECT
 public:
  SeatView(Seat& seat, const Shortcuts& shortcuts, QWidget* parent = nullptr);
  ~SeatView() override;

  void setTheme(drawing::Theme theme);
  void setReducedMotion(bool reduced);
  void setShowKeys(bool shown);
  /// Only what is around: without plan, notebook and what is carried.
  void setWorldOnly(bool only);
  [[nodiscard]] const SheetStyle& style() const { return style_; }
  [[nodiscard]] Plate* plate() const { return plate_.get(); }
  [[nodiscard]] Panel* panel() const { return panel_; }
  [[nodiscard]] const WhyGuide& why() const { return *why_; }
  [[nodiscard]] const HandThreads& threads() const { return *threads_; }
  /// The line above the hands that says what came of the last deed.
  [[nodiscard]] const QString& message() const { return message_; }
  /// In a cab: shows the desk, or what is behind when one turns round.
  void turnRound();
  [[nodiscard]] bool isTurned() const { return turned_; }

  /// Everything that can be done by its name: what menus, keys and tests use.
  void useCommand(const QString& command, bool down = true);

 Q_SIGNALS:
  void restarted();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void keyReleaseEvent(QKeyEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void build();
  void fitSheet();
  void arrange();
  void orderFocus();
  void makePlateAnew();
  void refresh();
  void restyleAll();
  void openPanel(Panel* panel);
  void closePanel();
  void lookByKey(const QStringList& commands, QKeyEvent& event);
  void askWhy(Part* part);
  void showMessage(const QString& words, bool bad);
  void tellOfRightButton(const QString& what);
  void noteAnswer(const QString& what, const Answer& answer);
  void tellWhatIsSeen();
  void pointGuide();
  void paintGround(QPainter& painter);

  static constexpr double kPlateEnd = 836;  ///< of a sheet without spare height, u
  Seat& seat_;
  const Shortcuts& shortcuts_;
  SheetStyle style_;
  std::unique_ptr<Plate> plate_;
  OutsidePart* outside_ = nullptr;
  HeardPart* heard_ = nullptr;
  PlanPart* plan_ = nullptr;
  NotebookPart* notebook_ = nullptr;
  TitlePart* title_ = nullptr;
  std::array<HandPart*, 2> hands_{};
  HandThreads* threads_ = nullptr;
  JudgeRow* judging_ = nullptr;
  WhyGuide* why_ = nullptr;
  std::array<WordButton*, 3> foot_{};
  std::vector<WordButton*> deeds_;
  std::vector<BalloonPart*> balloons_;
  std::vector<CarriedPart*> things_;
  std::vector<Part*> parts_;
  Panel* panel_ = nullptr;
  QPointer<QWidget> focused_before_;  ///< the panel was opened
  QTimer message_timer_;
  QString message_;
  unit::Sight sight_;  ///< of what is looked at, as the notebook has it
  bool message_bad_ = false, turned_ = false, told_ = false, world_only_ = false;
  QPixmap ground_;
};

}  // namespace cabwright::cab
