// SPDX-License-Identifier: GPL-3.0-or-later
// The lines of the sheet with their filters, all of the selected one beside or below, and the forms
// that say something of it.
#pragma once

#include <QStackedWidget>
#include <QTextBrowser>
#include <QWidget>

#include "review_room/marks_list.h"
#include "review_room/marks_remark.h"
#include "review_room/override_form.h"

namespace cabwright::review_room {

class LinesView : public QWidget {
  Q_OBJECT
 public:
  LinesView(const after::SheetLook& look, Opened& opened, QWidget* parent);

  [[nodiscard]] MarksList& list() { return *list_; }
  [[nodiscard]] MarkFilter filter() const { return filter_; }
  void setFilter(MarkFilter filter);
  /// Takes everything anew from the session.
  void refresh();
  void restyle();
  /// Selects the line that is before one at this moment.
  void showMoment(std::int64_t tick);
  /// The selected line; nullptr: none.
  [[nodiscard]] const marking::SheetLine* selectedLine() const;
  /// The form for the selected line; false when none is selected.
  bool beginOverride();
  void beginRemark();

 Q_SIGNALS:
  void jumpAsked(qint64 tick);

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void makeFilters(QBoxLayout* column);
  void showFilters();
  void showLine();
  void showDetail();
  const after::SheetLook& look_;
  Opened& opened_;
  MarkFilter filter_ = MarkFilter::kAll;
  QButtonGroup* filters_;
  QBoxLayout* halves_;
  MarksList* list_;
  QStackedWidget* stack_;
  QTextBrowser* detail_;
  OverrideForm* override_;
  RemarkForm* remark_;
};

}  // namespace cabwright::review_room
