// SPDX-License-Identifier: GPL-3.0-or-later
// The mark sheet as an assessor works with it: its lines, ratings, a second assessor, the decision
// with its signature, and the record. Stands beside the timeline (about 460 u wide) or alone. The
// selected line and the cursor of the session are one thing.
//
// Two states hide what the marks say, and whoever shows marks elsewhere hides them too
// (hidesMarks()): before the trainee has rated the run (sign_self.h), and while a second assessor
// marks it (rater_blind.h).
#pragma once

#include <QStackedWidget>
#include <QWidget>
#include <filesystem>
#include <functional>
#include <optional>

#include "review_room/marks_lines.h"
#include "review_room/opened.h"
#include "review_room/rater_blind.h"
#include "review_room/rater_page.h"
#include "review_room/sign_decision.h"
#include "review_room/sign_on.h"
#include "review_room/sign_self.h"

namespace cabwright::review_room {

class MarksPage : public QWidget {
  Q_OBJECT
 public:
  enum Tab { kLines, kRatings, kSecond, kDecision, kRecord, kTabs };
  enum class Mode { kOpen, kSelfRating, kBlind };

  /// The session must outlive the page.
  explicit MarksPage(Opened& opened, QWidget* parent = nullptr);

  void setTheme(drawing::Theme theme);
  /// Device-independent pixels for one u. Without it that of the sheet which fills the window, or 1
  /// when the page is the window.
  void setScale(double scale);
  /// Where keys lie, if not in the user's data folder.
  void setKeyFolder(const std::filesystem::path& folder);

  [[nodiscard]] Mode mode() const { return mode_; }
  /// Whether nothing of the marks may be seen now, here or elsewhere.
  [[nodiscard]] bool hidesMarks() const { return mode_ != Mode::kOpen; }
  void showTab(Tab tab);
  [[nodiscard]] Tab tab() const { return tab_; }
  [[nodiscard]] LinesView& lines() { return *lines_; }
  [[nodiscard]] BlindForm& blind() { return *blind_; }
  [[nodiscard]] RaterPage& raters() { return *raters_; }

 public Q_SLOTS:
  /// The cursor is there now: selects the line that had fallen last.
  void showMoment(qint64 tick);
  /// What the keys O, C and S do here; each asks for a sign-on first when nobody has.
  void beginOverride();
  void beginRemark();
  void beginSign();
  void beginSignOn();

 Q_SIGNALS:
  /// Somebody wants to see this moment.
  void jumpAsked(qint64 tick);
  void hidesMarksChanged(bool hides);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  void makeHead(QBoxLayout* column);
  void makePages(QBoxLayout* column);
  void connectPages();
  QWidget* makeDecisionPage();
  void makeFoot(QBoxLayout* column);
  void addKey(int key, void (MarksPage::*slot)());
  void refresh();
  void refreshMode();
  void showPage();
  void showResult();
  void showSigner();
  void restyle();
  void askToSignOn(const QString& why, bool second, std::function<void()> act);
  /// Does it at once, or after somebody has signed on.
  void whenSignedOn(const QString& why, std::function<void()> act);
  void leaveSelfRatingOut();
  void showSaid(const QString& words);

  after::SheetLook look_;
  std::optional<double> scale_;
  Opened& opened_;
  Mode mode_ = Mode::kOpen;
  Tab tab_ = kLines;
  QString digest_;       ///< of the file as it is; empty: to be worked out
  bool second_ = false;  ///< who signed on last did so to mark blind
  QLabel *title_, *state_, *result_, *signer_;
  QWidget *tab_row_, *act_row_;
  QButtonGroup* tabs_;
  QStackedWidget* stack_;
  LinesView* lines_;
  RatingForm* ratings_;
  RaterPage* raters_;
  DecisionForm* decision_;
  SignForm* sign_;
  QTextBrowser* record_;
  SignOnForm* sign_on_;
  SelfRatingForm* self_;
  BlindForm* blind_;
  MarkButton* sign_on_button_;
  std::function<void()> after_sign_on_;
};

}  // namespace cabwright::review_room
