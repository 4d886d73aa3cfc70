// SPDX-License-Identifier: GPL-3.0-or-later
// People and events, hidden things, draws and faults.
#include <QCompleter>
#include <QCoreApplication>
#include <QLabel>
#include <QStringListModel>
#include <QVBoxLayout>

#include "cab/names.h"
#include "desk/writing_draw.h"
#include "desk/writing_fault.h"
#include "desk/writing_form.h"
#include "desk/writing_list.h"
#include "desk/writing_pages.h"
#include "unit/instruments.h"
#include "unit/items.h"

namespace cabwright::desk {

namespace {

using scenario::DraftTable;
using S = scenario::DraftSection;

QString said(const DraftTable& table, std::string_view key) {
  return QString::fromStdString(table.text(key));
}

QString momentWords(const DraftTable& table) {
  if (table.has("when")) return WritingPages::tr("when %1").arg(said(table, "when"));
  if (table.has("at")) return WritingPages::tr("at %1").arg(said(table, "at"));
  return WritingPages::tr("from the start");
}

void addMoment(WritingForm& form) {
  form.addText("at", WritingPages::tr("At"),
               WritingPages::tr("as 3 min; from the start if nothing is said"));
  form.addText("when", WritingPages::tr("or when"),
               WritingPages::tr("a condition, as cab1.air >= 75 psi"));
  form.addText("after", WritingPages::tr("and so long after"), WritingPages::tr("as 5 s"));
}

// Everything that can be looked at or read, with what can be wrong with it.
std::vector<WritingChoice> itemChoices() {
  std::vector<WritingChoice> all;
  for (const unit::ItemInfo& info : unit::itemTable()) {
    all.push_back({std::string(info.name),
                   fromText(info.name) + QStringLiteral("  ") + cab::nameOf(info.id)});
  }
  return all;
}
std::vector<WritingChoice> instrumentChoices() {
  std::vector<WritingChoice> all;
  for (const unit::InstrumentInfo& info : unit::instrumentTable())
    all.push_back({std::string(info.name), fromText(info.name)});
  return all;
}

std::vector<WritingChoice> conditionsOf(const DraftTable& table) {
  std::vector<WritingChoice> all;
  if (const auto item = unit::findItem(table.text("item"))) {
    for (const unit::ItemCondition& c : unit::itemInfo(*item).conditions) {
      const std::string word(c.name);
      if (unit::findConditionFaults({table.text("item"), word}).empty())
        all.push_back(
            {word, QString::fromStdString(word).replace(QLatin1Char('_'), QLatin1Char(' '))});
    }
  } else if (const auto gauge = unit::findInstrument(table.text("instrument"))) {
    const unit::InstrumentInfo& info = unit::instrumentTable()[unit::indexOf(*gauge)];
    for (const char* word : {"stuck", "offset 2", "slow 20", "dead", "blown", "lit"}) {
      if (unit::findConditionFaults({std::string(info.name), word}).empty())
        all.push_back({word, QString::fromLatin1(word)});
    }
  }
  return all;
}

WritingList* makeHiddenList(Writing& writing, QWidget* page) {
  auto* list = new WritingList(
      writing, S::kHidden, WritingPages::tr("What the trainee has to find"),
      [](const DraftTable& t) {
        const QString what = t.has("item") ? said(t, "item") : said(t, "instrument");
        return (t.has("fault") ? said(t, "fault") : what) + QStringLiteral(": ") +
               said(t, "condition");
      },
      page);
  list->addMaker(WritingPages::tr("Hide a gauge's fault"), QStringLiteral("writing_new_gauge"), [] {
    DraftTable table;
    table.set("instrument", "cab1.air");
    table.set("condition", "stuck");
    return table;
  });
  list->addMaker(WritingPages::tr("Hide a defect"), QStringLiteral("writing_new_hidden"), [] {
    DraftTable table;
    table.set("item", "end2.hoses");
    table.set("condition", "hanging");
    return table;
  });
  WritingForm* form = list->makeForm();
  QComboBox* item = form->addChoice("item", WritingPages::tr("Thing"), itemChoices(), true);
  item->completer()->setFilterMode(Qt::MatchContains);
  item->completer()->setCompletionMode(QCompleter::PopupCompletion);
  QComboBox* gauge = form->addChoice("instrument", WritingPages::tr("or gauge or lamp"),
                                     instrumentChoices(), true);
  gauge->completer()->setFilterMode(Qt::MatchContains);
  QComboBox* condition =
      form->addChoice("condition", WritingPages::tr("What is wrong with it"), {}, true);
  const auto refill = [form, condition] {
    if (!form->table()) return;
    const QSignalBlocker quiet(condition);
    const QString now = said(*form->table(), "condition");
    condition->clear();
    for (const WritingChoice& c : conditionsOf(*form->table()))
      condition->addItem(c.shown, QString::fromStdString(c.word));
    const int at = condition->findData(now);
    condition->setCurrentIndex(at);
    if (at < 0) condition->setEditText(now);
  };
  QObject::connect(list->list(), &QListWidget::currentRowChanged, form, refill);
  QObject::connect(&writing, &Writing::replaced, form, refill);
  // Another thing can have other things wrong with it.
  const auto another = [condition, refill] {
    refill();
    if (condition->currentIndex() < 0 && condition->count() > 0) condition->setCurrentIndex(0);
  };
  QObject::connect(item, &QComboBox::activated, form, another);
  QObject::connect(gauge, &QComboBox::activated, form, another);
  form->fill();
  refill();
  return list;
}

WritingList* makeEventList(Writing& writing, QWidget* page) {
  auto* list = new WritingList(
      writing, S::kEvent, WritingPages::tr("What guard, signaller and the world do"),
      [](const DraftTable& t) {
        QStringList acts;
        for (const std::string& act : t.texts("do")) acts << QString::fromStdString(act);
        return said(t, "who") + QStringLiteral(", ") + momentWords(t) + QStringLiteral(": ") +
               acts.join(QStringLiteral("; "));
      },
      page);
  list->addMaker(WritingPages::tr("Let something happen"), QStringLiteral("writing_new_event"), [] {
    DraftTable table;
    table.set("who", "guard");
    table.set("at", "1 min");
    table.set("do", std::vector<std::string>{"ring bell 2"});
    return table;
  });
  WritingForm* form = list->makeForm();
  form->addChoice("who", WritingPages::tr("Who"),
                  {{"guard", WritingPages::tr("the guard")},
                   {"signaller", WritingPages::tr("the signaller")},
                   {"instructor", WritingPages::tr("the instructor")},
                   {"scenario", WritingPages::tr("it happens by itself")}});
  addMoment(*form);
  form->addLines("do", WritingPages::tr("Does, a line each"), true);
  form->fill();
  return list;
}

}  // namespace

QWidget* WritingPages::makePeople(Writing& writing, QWidget* parent) {
  auto* page = new QWidget(parent);
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(0, 0, 8, 0);
  column->addWidget(makeEventList(writing, page));
  column->addStretch(1);
  return page;
}

QWidget* WritingPages::makeHidden(Writing& writing, QWidget* parent) {
  auto* page = new QWidget(parent);
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(0, 0, 8, 0);
  column->addWidget(makeHiddenList(writing, page));
  column->addWidget(makeDraws(writing, page));
  column->addWidget(new WritingFaults(writing, page));
  column->addStretch(1);
  return page;
}

}  // namespace cabwright::desk
