// SPDX-License-Identifier: GPL-3.0-or-later
// Sheets of A4 on which a report is set, one thing below the other: 1000 u wide between the
// margins, so that common words come out at about 9.5 points. Set once without paper it counts the
// pages, so that the foot of each can say of how many it is.
#pragma once

#include <QImage>
#include <QPainter>
#include <QPdfWriter>
#include <QString>
#include <memory>

#include "drawing/pen.h"
#include "drawing/verdict.h"

namespace cabwright::review_room {

class Paper {
 public:
  static constexpr double kWidth = 1000;
  static constexpr double kLead = 25;

  /// Counts pages and draws nothing that stays.
  Paper();
  /// `writer` must outlive the paper. `caution` and `what` stand at the foot of every page.
  Paper(QPdfWriter& writer, QString what, QString caution, int pages);

  [[nodiscard]] bool isCounting() const { return writer_ == nullptr; }
  [[nodiscard]] int page() const { return page_; }
  [[nodiscard]] drawing::Pen& pen() { return *pen_; }
  /// Where the next thing begins: below it, this much is left.
  [[nodiscard]] double y() const { return y_; }
  [[nodiscard]] double room() const { return height_ - y_; }
  void skip(double u) { y_ += u; }
  /// Begins a new page unless so much is left; what is higher than a page begins on a new one.
  void need(double u);

  /// A caption with a rule; never the last thing on a page.
  void caption(const QString& words, const QString& right = {});
  /// Wrapped words, parted between pages where they must be.
  void paragraph(const QString& words, const drawing::Words& look = {}, double indent = 0);
  /// A name and beside it what it is; left out when there is nothing.
  void fact(const QString& name, const QString& words);
  /// A sign, words, more words below them, and something at the end of the first line.
  struct Row {
    drawing::VerdictSign sign = drawing::VerdictSign::kNone;
    QString words, below, right;
  };
  void row(const Row& row);
  /// So wide, u, or less, where the page has no more room, but not less than `least`.
  void picture(const QImage& image, double width, double least);
  /// Whether it has room here, at its least.
  [[nodiscard]] bool fits(const QImage& image, double least) const;

 private:
  void beginPage();
  void paintFoot();

  QPdfWriter* writer_ = nullptr;
  QString what_, caution_;
  int pages_ = 0, page_ = 1;
  double scale_ = 1, height_ = 1400, y_ = 0;
  QImage nowhere_;
  QPainter painter_;
  std::unique_ptr<drawing::Pen> pen_;
};

}  // namespace cabwright::review_room
