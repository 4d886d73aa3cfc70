// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/writing_fault.h"

#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "scenario/draft_text.h"

namespace cabwright::desk {

namespace {

using scenario::DraftTable;
using S = scenario::DraftSection;

constexpr int kFoundHeight = 120;

QString said(const DraftTable& table, std::string_view key) {
  return QString::fromStdString(table.text(key));
}

QString wordsOf(const fault::FaultSpec& spec) {
  return QString::fromStdString(spec.name) + QStringLiteral("  ") +
         QString::fromStdString(spec.where) + QStringLiteral(": ") +
         QString::fromStdString(spec.text);
}

}  // namespace

WritingFaults::WritingFaults(Writing& writing, QWidget* parent)
    : QWidget(parent),
      writing_(writing),
      search_(new QLineEdit(this)),
      found_(new QListWidget(this)),
      size_(new PlainNumber),
      about_(new QLabel(this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  list_ = new WritingList(
      writing, S::kFault, tr("What goes wrong"),
      [](const DraftTable& t) {
        const QString when = t.has("when") ? tr("when %1").arg(said(t, "when"))
                             : t.has("at") ? tr("at %1").arg(said(t, "at"))
                                           : tr("from the start");
        return said(t, "fault") + QLatin1Char(' ') + said(t, "size") + QStringLiteral(", ") + when;
      },
      this);
  search_->setObjectName(QStringLiteral("writing_find_fault"));
  search_->setAccessibleName(tr("Find a fault of the catalogue"));
  search_->setPlaceholderText(tr("Find a fault: leak, gearbox 2, belt ..."));
  search_->setClearButtonEnabled(true);
  found_->setObjectName(QStringLiteral("writing_found_faults"));
  found_->setAccessibleName(tr("Faults of the catalogue; Enter puts one in"));
  found_->setFixedHeight(kFoundHeight);
  form_ = list_->makeForm();
  about_->setObjectName(QStringLiteral("second"));
  about_->setWordWrap(true);
  form_->rows()->addRow(about_);
  size_->setParent(form_);
  size_->setObjectName(QStringLiteral("writing_size"));
  size_->setAccessibleName(tr("Size"));
  size_->setDecimals(3);
  form_->rows()->addRow(tr("Size"), size_);
  form_->addText("at", tr("At"), tr("as 3 min; from the start if nothing is said"));
  form_->addText("when", tr("or when"), tr("a condition, as cab1.air >= 75 psi"));
  form_->addText("after", tr("and so long after"), tr("as 5 s"));
  form_->addText("ramp", tr("It grows for"), tr("as 20 s"));
  form_->addText("until", tr("It goes again at"), tr("as 10 min"));
  form_->addText("until_when", tr("or when"), tr("a condition"));
  column->addWidget(search_);
  column->addWidget(found_);
  column->addWidget(list_);
  connect(search_, &QLineEdit::textChanged, this, &WritingFaults::find);
  connect(search_, &QLineEdit::returnPressed, this, [this] {
    if (found_->count() == 0) return;
    found_->setCurrentRow(0);
    takeFound();
  });
  connect(found_, &QListWidget::itemActivated, this, &WritingFaults::takeFound);
  connect(found_, &QListWidget::itemDoubleClicked, this, &WritingFaults::takeFound);
  connect(list_->list(), &QListWidget::currentRowChanged, this, &WritingFaults::showSize);
  connect(&writing_, &Writing::replaced, this, &WritingFaults::showSize);
  connect(size_, &QDoubleSpinBox::valueChanged, this, [this](double size) {
    const auto* table = form_->table();
    const auto* spec = table ? fault::findFault(table->text("fault")) : nullptr;
    if (spec) form_->put("size", scenario::quantityValue(size, spec->size.unit));
  });
  find({});
  form_->fill();
  showSize();
}

void WritingFaults::find(const QString& words) {
  const QStringList wanted = words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  shown_.clear();
  found_->clear();
  for (const fault::FaultSpec& spec : fault::faultCatalogue()) {
    const QString text = wordsOf(spec);
    const bool fits = std::all_of(wanted.begin(), wanted.end(), [&](const QString& word) {
      return text.contains(word, Qt::CaseInsensitive);
    });
    if (!fits) continue;
    shown_.push_back(&spec);
    found_->addItem(text);
  }
}

void WritingFaults::takeFound() {
  const int row = found_->currentRow();
  if (row < 0 || row >= static_cast<int>(shown_.size())) return;
  const fault::FaultSpec& spec = *shown_[static_cast<std::size_t>(row)];
  DraftTable table;
  table.set("fault", spec.name);
  if (spec.size.exists())
    table.set("size", scenario::quantityValue(spec.size.usual, spec.size.unit));
  list_->add(std::move(table));
  showSize();
}

// Unit and bounds are those of the catalogue.
void WritingFaults::showSize() {
  const auto* table = form_->table();
  const auto* spec = table ? fault::findFault(table->text("fault")) : nullptr;
  const QSignalBlocker quiet(size_);
  const bool sized = spec && spec->size.exists();
  size_->setEnabled(sized);
  about_->setText(spec ? QString::fromStdString(spec->text + " " + spec->symptom) : QString());
  if (!sized) return;
  size_->setRange(spec->size.lowest, spec->size.highest);
  size_->setDecimals(spec->size.whole ? 0 : 3);
  size_->setSuffix(QLatin1Char(' ') + fromText(spec->size.unit));
  size_->setToolTip(tr("%1 to %2").arg(spec->size.lowest).arg(spec->size.highest));
  const scenario::DraftValue* value = table->find("size");
  size_->setValue(value ? numberOf(*value, spec->size.unit).value_or(spec->size.usual)
                        : spec->size.usual);
}

}  // namespace cabwright::desk
