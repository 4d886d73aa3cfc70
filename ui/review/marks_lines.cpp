// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/marks_lines.h"

#include <QScrollBar>
#include <algorithm>

#include "review_room/marks_facts.h"
#include "review_room/marks_flow.h"

namespace cabwright::review_room {
namespace {

constexpr double kWide = 820;  ///< u: from here on list and detail stand side by side

}  // namespace

LinesView::LinesView(const after::SheetLook& look, Opened& opened, QWidget* parent)
    : QWidget(parent),
      look_(look),
      opened_(opened),
      filters_(new QButtonGroup(this)),
      halves_(new QBoxLayout(QBoxLayout::TopToBottom)),
      list_(new MarksList(look, tr("Lines of the mark sheet"), this)),
      stack_(new QStackedWidget(this)),
      detail_(new QTextBrowser(this)),
      override_(new OverrideForm(look, opened, this)),
      remark_(new RemarkForm(look, opened, this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  makeFilters(column);
  detail_->setAccessibleName(tr("The selected line"));
  detail_->setObjectName(QStringLiteral("line_detail"));
  detail_->setOpenLinks(false);
  detail_->setMinimumHeight(60);
  stack_->addWidget(detail_);
  stack_->addWidget(makeScroll(override_, stack_));
  stack_->addWidget(makeScroll(remark_, stack_));
  halves_->setSpacing(8);
  halves_->addWidget(list_, 3);
  halves_->addWidget(stack_, 2);
  column->addLayout(halves_, 1);
  for (MarkForm* form : std::initializer_list<MarkForm*>{override_, remark_}) {
    connect(form, &MarkForm::done, this, &LinesView::showDetail);
    connect(form, &MarkForm::cancelled, this, &LinesView::showDetail);
  }
  connect(list_, &MarksList::lineChosen, this, [this] {
    showLine();
    const marking::SheetLine* line = selectedLine();
    const auto moment = line == nullptr ? std::nullopt : findMoment(*line);
    if (moment) Q_EMIT jumpAsked(*moment);
  });
  connect(list_, &MarksList::momentChosen, this, &LinesView::jumpAsked);
  connect(detail_, &QTextBrowser::anchorClicked, this, [this](const QUrl& link) {
    if (const auto tick = tickOfLink(link.toString())) Q_EMIT jumpAsked(*tick);
  });
}

void LinesView::makeFilters(QBoxLayout* column) {
  auto* row = new FlowRow(4);
  for (int k = 0; k < 4; ++k) {
    auto* button = new MarkButton(look_, {}, QStringLiteral("filter%1").arg(k), this);
    button->setCheckable(true);
    button->setSlim(true);
    filters_->addButton(button, k);
    row->addWidget(button);
  }
  filters_->button(0)->setChecked(true);
  connect(filters_, &QButtonGroup::idClicked, this,
          [this](int id) { setFilter(static_cast<MarkFilter>(id)); });
  column->addLayout(row);
}

void LinesView::showFilters() {
  const MarkCounts counts = countMarks(opened_.sheet());
  const QStringList words{tr("All %1").arg(counts.all), tr("Broken %1").arg(counts.broken),
                          tr("Critical %1").arg(counts.critical),
                          tr("Overridden %1").arg(counts.overridden)};
  for (int k = 0; k < 4; ++k) {
    filters_->button(k)->setText(words[k]);
    filters_->button(k)->setAccessibleName(tr("Show lines: %1").arg(words[k]));
    filters_->button(k)->updateGeometry();
  }
}

void LinesView::setFilter(MarkFilter filter) {
  filter_ = filter;
  filters_->button(static_cast<int>(filter))->setChecked(true);
  refresh();
}

void LinesView::refresh() {
  showFilters();
  list_->setRows(makeMarkRows(opened_.sheet(), opened_.entries(), filter_));
  if (list_->selected().empty()) showMoment(opened_.cursor());
  showLine();
}

void LinesView::restyle() {
  list_->restyle();
  override_->restyle();
  remark_->restyle();
  showLine();
}

const marking::SheetLine* LinesView::selectedLine() const {
  const auto& lines = opened_.sheet().lines;
  const auto line = std::ranges::find(lines, list_->selected(), &marking::SheetLine::id);
  return line == lines.end() ? nullptr : &*line;
}

void LinesView::showMoment(std::int64_t tick) {
  const std::string before = list_->selected();
  list_->select(findRowAt(list_->rows(), tick, before));
  if (list_->selected() != before) showLine();
}

void LinesView::showLine() {
  const marking::SheetLine* line = selectedLine();
  if (line != nullptr) {
    detail_->setHtml(toHtml(makeLineFacts(opened_, *line), look_));
    return;
  }
  const QString none = list_->rows().empty()
                           ? tr("No line of the sheet is of this kind.")
                           : tr("Nothing had fallen by this moment. Choose a line, or move the "
                                "cursor.");
  detail_->setHtml(toHtml({{{}, {{{}, none, {}, drawing::Tone::kInk2}}}}, look_));
}

void LinesView::showDetail() {
  stack_->setCurrentIndex(0);
  list_->setFocus(Qt::OtherFocusReason);
}

bool LinesView::beginOverride() {
  const marking::SheetLine* line = selectedLine();
  if (line == nullptr) {
    stack_->setCurrentIndex(0);
    const QString first = tr("Choose the line that is to be overridden first.");
    detail_->setHtml(toHtml({{{}, {{{}, first, {}, drawing::Tone::kBad}}}}, look_));
    list_->setFocus(Qt::OtherFocusReason);
    return false;
  }
  stack_->setCurrentIndex(1);
  override_->begin(*line);
  return true;
}

void LinesView::beginRemark() {
  stack_->setCurrentIndex(2);
  remark_->begin(selectedLine());
}

void LinesView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  const bool wide = width() >= kWide * look_.scale;
  halves_->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
  halves_->setStretch(0, wide ? 1 : 3);
  halves_->setStretch(1, wide ? 1 : 2);
}

}  // namespace cabwright::review_room
