// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/verdict_list.h"

#include <algorithm>

#include "after/sheet_delegate.h"
#include "after/words.h"
#include "desk/live_page.h"
#include "drawing/pen.h"

namespace cabwright::desk {

using drawing::Anchor;
using drawing::Tone;

namespace {

constexpr double kPad = 12, kText = 46, kLead = 24, kHead = 34, kFoot = 12;
constexpr qsizetype kMostTitle = 2, kMostReason = 3;

class VerdictDelegate : public after::SheetDelegate {
 public:
  VerdictDelegate(const after::SheetLook& look, const VerdictModel& model, QListView* view)
      : after::SheetDelegate(look, view), model_(model), view_(view) {}

  QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override {
    const VerdictRow& row = rowOf(index);
    const double wide = view_->viewport()->width() / look().scale;
    const double high = row.part == VerdictPart::kHeading ? kHead + 6 : calcHeight(row, wide);
    return {toPixels(wide, look()), toPixels(high, look())};
  }

  void paintCell(drawing::Pen& pen, QSizeF size, const QModelIndex& index,
                 bool chosen) const override {
    const VerdictRow& row = rowOf(index);
    if (row.part == VerdictPart::kHeading) {
      pen.rect({0, 0, size.width(), size.height()}, drawing::kNoLine, Tone::kPaper);
      pen.text({kPad, 27}, row.title, {.tone = Tone::kInk2});
    } else {
      paintCard(pen, size, row, chosen);
    }
  }

 private:
  const VerdictRow& rowOf(const QModelIndex& index) const {
    return model_.rows()[static_cast<std::size_t>(index.row())];
  }

  static QStringList titleLines(const VerdictRow& row, double wide) {
    const double moment = row.moment.isEmpty() ? 0 : drawing::textWidth(row.moment) + 18;
    return wrapped(row.title, wide - kText - kPad - moment, kMostTitle, true);
  }
  static QStringList reasonLines(const VerdictRow& row, double wide) {
    return wrapped(row.reason, wide - kText - kPad, kMostReason, false);
  }
  static QStringList wrapped(const QString& words, double room, qsizetype most, bool bold) {
    if (words.isEmpty()) return {};
    QStringList lines = drawing::wrapText(words, room, drawing::kText, bold);
    if (lines.size() <= most) return lines;
    const QString rest = lines.mid(most - 1).join(QLatin1Char(' '));
    lines = lines.mid(0, most - 1);
    lines << drawing::elideText(rest, room, drawing::kText, bold);
    return lines;
  }

  static double calcHeight(const VerdictRow& row, double wide) {
    const auto lines = titleLines(row, wide).size() + 1 + reasonLines(row, wide).size();
    return 8 + kLead * static_cast<double>(lines) + kFoot;
  }

  static void paintCard(drawing::Pen& pen, QSizeF size, const VerdictRow& row, bool chosen) {
    const double w = size.width(), h = size.height();
    const Tone on = chosen ? Tone::kWash : Tone::kFace;
    const bool critical = row.part == VerdictPart::kCritical;
    pen.rect({0, 0, w, h}, drawing::kNoLine, on);
    if (critical) pen.rect({0, 0, 6, h - 1}, drawing::kNoLine, Tone::kBad);
    pen.line({kPad, h - 0.5}, {w - kPad, h - 0.5}, {drawing::kHairline, Tone::kHair});
    drawing::paintVerdict(pen, {kPad + 14, 22}, row.sign, 9.5, on);
    double y = 28;
    for (const QString& line : titleLines(row, w)) {
      pen.text({kText, y}, line, {.bold = true, .on = on});
      y += kLead;
    }
    pen.text({w - kPad, 28}, row.moment, {.anchor = Anchor::kEnd, .tone = Tone::kInk2, .on = on});
    double x = kText;
    x += pen.text({x, y}, row.verdict,
                  {.bold = critical, .tone = drawing::toneOf(row.sign), .on = on});
    if (!row.margin.isEmpty())
      x += pen.text({x, y}, QStringLiteral(" \u00B7 ") + row.margin, {.on = on});
    pen.text({w - kPad, y}, after::className(row.rule_class),
             {.anchor = Anchor::kEnd,
              .tone = row.rule_class == marking::RuleClass::kCritical ? Tone::kBad : Tone::kInk2,
              .on = on});
    y += kLead;
    for (const QString& line : reasonLines(row, w)) {
      pen.text({kText, y}, line, {.tone = Tone::kInk2, .on = on});
      y += kLead;
    }
  }

  const VerdictModel& model_;
  QListView* view_;
};

}  // namespace

int VerdictModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant VerdictModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const VerdictRow& row = rows_[static_cast<std::size_t>(index.row())];
  if (role == Qt::DisplayRole) return row.title;
  if (role != Qt::AccessibleTextRole) return {};
  if (row.part == VerdictPart::kHeading) return row.title;
  QStringList parts{row.verdict, row.title, after::className(row.rule_class)};
  for (const QString& words : {row.margin, row.moment, row.reason})
    if (!words.isEmpty()) parts << words;
  return parts.join(QLatin1String(", "));
}

Qt::ItemFlags VerdictModel::flags(const QModelIndex& index) const {
  if (!index.isValid()) return {};
  const bool heading = rows_[static_cast<std::size_t>(index.row())].part == VerdictPart::kHeading;
  return heading ? Qt::ItemFlags(Qt::ItemIsEnabled)
                 : Qt::ItemFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
}

void VerdictModel::setRows(std::vector<VerdictRow> rows) {
  const auto reset = [this](auto put) {
    beginResetModel();
    put();
    endResetModel();
  };
  after::putRows(rows_, std::move(rows), reset,
                 [this](int k, const VerdictRow&) { Q_EMIT dataChanged(index(k), index(k)); });
}

VerdictList::VerdictList(const after::SheetLook& look, const QString& name, QWidget* parent)
    : CardList(look, name, parent), model_(new VerdictModel(this)) {
  setModel(model_);
  setItemDelegate(new VerdictDelegate(look, *model_, this));
  connect(this, &QAbstractItemView::doubleClicked, this, &VerdictList::enterCard);
}

void VerdictList::enterCard(const QModelIndex& index) {
  if (!index.isValid()) return;
  const VerdictRow& row = rows()[static_cast<std::size_t>(index.row())];
  const bool fell = row.part == VerdictPart::kCritical || row.part == VerdictPart::kFallen;
  if (fell && row.tick >= 0) Q_EMIT momentChosen(row.tick);
}

}  // namespace cabwright::desk
