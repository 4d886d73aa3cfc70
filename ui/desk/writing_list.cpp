// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/writing_list.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <algorithm>

namespace cabwright::desk {

namespace {

constexpr int kListHeight = 96;

}  // namespace

WritingList::WritingList(Writing& writing, scenario::DraftSection section, const QString& title,
                         Summary summary, QWidget* parent)
    : QWidget(parent),
      writing_(writing),
      section_(section),
      summary_(std::move(summary)),
      list_(new QListWidget(this)),
      makers_(new QHBoxLayout),
      buttons_(new QHBoxLayout),
      column_(new QVBoxLayout(this)) {
  column_->setContentsMargins(0, 0, 0, 0);
  column_->addWidget(new QLabel(title, this));
  const QString path = fromText(pathOf(section));
  list_->setObjectName(QStringLiteral("writing_list_") + path);
  list_->setAccessibleName(title);
  list_->setFixedHeight(kListHeight);
  column_->addWidget(list_);
  column_->addLayout(makers_);
  column_->addLayout(buttons_);
  makers_->addStretch(1);
  const auto button = [&](const QString& words, const char* name) {
    auto* made = new QPushButton(words, this);
    made->setObjectName(QStringLiteral("writing_%1_%2").arg(QLatin1String(name), path));
    made->setAccessibleName(title + QStringLiteral(": ") + words);
    buttons_->addWidget(made);
    return made;
  };
  connect(button(tr("Take out"), "remove"), &QPushButton::clicked, this, [this] {
    const std::size_t at = chosen();
    writing_.change([&](scenario::Draft& draft) {
      auto& all = draft.list(section_);
      if (at < all.size()) all.erase(all.begin() + static_cast<std::ptrdiff_t>(at));
    });
    fill();
  });
  connect(button(tr("Up"), "up"), &QPushButton::clicked, this, [this] { move(-1); });
  connect(button(tr("Down"), "down"), &QPushButton::clicked, this, [this] { move(1); });
  buttons_->addStretch(1);
  connect(list_, &QListWidget::currentRowChanged, this, [this] {
    if (form_) form_->fill();
  });
  connect(&writing_, &Writing::replaced, this, &WritingList::fill);
  connect(&writing_, &Writing::changed, this, &WritingList::refresh);
  fill();
}

WritingForm* WritingList::makeForm() {
  form_ = new WritingForm(
      writing_,
      [this](scenario::Draft& draft) {
        auto& all = draft.list(section_);
        const std::size_t at = chosen();
        return at < all.size() ? &all[at] : nullptr;
      },
      this);
  column_->addWidget(form_);
  return form_;
}

QPushButton* WritingList::addMaker(const QString& words, const QString& name,
                                   std::function<scenario::DraftTable()> make) {
  auto* made = new QPushButton(words, this);
  made->setObjectName(name);
  made->setAccessibleName(words);
  makers_->insertWidget(0, made);
  connect(made, &QPushButton::clicked, this, [this, make = std::move(make)] { add(make()); });
  return made;
}

std::size_t WritingList::chosen() const { return static_cast<std::size_t>(list_->currentRow()); }

void WritingList::add(scenario::DraftTable table) {
  const std::size_t count = writing_.draft().list(section_).size();
  const std::size_t at = std::min(count, list_->currentRow() < 0 ? count : chosen() + 1);
  writing_.change([&](scenario::Draft& draft) {
    auto& all = draft.list(section_);
    all.insert(all.begin() + static_cast<std::ptrdiff_t>(at), std::move(table));
  });
  fill();
  list_->setCurrentRow(static_cast<int>(at));
}

void WritingList::move(int by) {
  const int from = list_->currentRow(), to = from + by;
  if (from < 0 || to < 0 || to >= list_->count()) return;
  writing_.change([&](scenario::Draft& draft) {
    auto& all = draft.list(section_);
    std::swap(all[static_cast<std::size_t>(from)], all[static_cast<std::size_t>(to)]);
  });
  fill();
  list_->setCurrentRow(to);
}

void WritingList::fill() {
  const int row = list_->currentRow();
  {
    const QSignalBlocker quiet(list_);
    list_->clear();
    for (const scenario::DraftTable& table : writing_.draft().list(section_))
      list_->addItem(summary_(table));
    if (list_->count() > 0) list_->setCurrentRow(std::clamp(row, 0, list_->count() - 1));
  }
  if (form_) form_->fill();
}

// The words of the lines, while fields below are typed into.
void WritingList::refresh() {
  const auto& all = writing_.draft().list(section_);
  if (static_cast<int>(all.size()) != list_->count()) return;
  for (int k = 0; k < list_->count(); ++k)
    list_->item(k)->setText(summary_(all[static_cast<std::size_t>(k)]));
}

}  // namespace cabwright::desk
