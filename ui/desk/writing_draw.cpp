// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/writing_draw.h"

#include <QCoreApplication>
#include <QSpinBox>

#include "desk/writing_form.h"
#include "desk/writing_list.h"
#include "fault/fault.h"
#include "scenario/draft_text.h"
#include "scenario/quantity_text.h"
#include "unit/instruments.h"

namespace cabwright::desk {
namespace {

using scenario::DraftInline;
using scenario::DraftTable;
using scenario::DraftValue;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(WritingDraws)
};

constexpr const char* kNothing = "nothing";

QString plain(const DraftValue& value) {
  const auto* text = std::get_if<std::string>(&value.value);
  return QString::fromStdString(text ? *text : scenario::valueText(value));
}

QString candidateText(const DraftInline& one) {
  QString name, condition, rest;
  for (std::size_t k = 0; k < one.keys.size(); ++k) {
    const std::string& key = one.keys[k];
    if (key == kNothing) {
      name = QLatin1String(kNothing);
    } else if (key == "item" || key == "instrument" || key == "fault") {
      name = plain(one.values[k]);
    } else if (key == "condition") {
      condition = QLatin1Char(' ') + plain(one.values[k]);
    } else {
      rest += QStringLiteral("; %1 %2").arg(fromText(key), plain(one.values[k]));
    }
  }
  return name + condition + rest;
}

void add(DraftInline& to, const char* key, DraftValue value) {
  to.keys.emplace_back(key);
  to.values.push_back(std::move(value));
}

DraftInline readCandidate(const QString& line) {
  DraftInline one;
  const QStringList parts = line.split(QLatin1Char(';'));
  const QString head = parts.first().simplified();
  const std::string name = head.section(QLatin1Char(' '), 0, 0).toStdString();
  const std::string condition = head.section(QLatin1Char(' '), 1).toStdString();
  if (name == kNothing) {
    add(one, kNothing, true);
  } else if (fault::findFault(name) != nullptr) {
    add(one, "fault", name);
  } else {
    add(one, unit::findInstrument(name) ? "instrument" : "item", name);
  }
  if (!condition.empty()) add(one, "condition", condition);
  for (const QString& part : parts.mid(1)) {
    const std::string key = part.simplified().section(QLatin1Char(' '), 0, 0).toStdString();
    const std::string value = part.simplified().section(QLatin1Char(' '), 1).toStdString();
    if (key.empty()) continue;
    const auto number = scenario::readNumber(value);
    add(one, key.c_str(), number ? DraftValue(*number) : DraftValue(value));
  }
  return one;
}

DraftTable newDraw() {
  DraftTable draw;
  draw.set("name", Words::tr("one of these").toStdString());
  draw.set("from", *readCandidates(QStringLiteral("end2.tail_lamp dead\nnothing")));
  return draw;
}

}  // namespace

QString candidateLines(const DraftValue& from) {
  QStringList lines;
  if (const auto* list = std::get_if<scenario::DraftList>(&from.value))
    for (const DraftValue& item : list->items)
      if (const auto* one = std::get_if<DraftInline>(&item.value)) lines << candidateText(*one);
  return lines.join(QLatin1Char('\n'));
}

std::optional<DraftValue> readCandidates(const QString& lines) {
  scenario::DraftList list;
  for (const QString& line : lines.split(QLatin1Char('\n'), Qt::SkipEmptyParts))
    if (!line.trimmed().isEmpty()) list.items.emplace_back(readCandidate(line));
  if (list.items.empty()) return std::nullopt;
  return DraftValue(std::move(list));
}

QWidget* makeDraws(Writing& writing, QWidget* parent) {
  auto* list = new WritingList(
      writing, scenario::DraftSection::kDraw, Words::tr("What the seed draws"),
      [](const DraftTable& draw) {
        const DraftValue* from = draw.find("from");
        const DraftValue* count = draw.find("count");
        return Words::tr("%1: %2 of %3")
            .arg(QString::fromStdString(draw.text("name")),
                 count ? plain(*count) : QStringLiteral("1"),
                 from ? candidateLines(*from).replace(QLatin1Char('\n'), QLatin1String(" | "))
                      : QString());
      },
      parent);
  list->addMaker(Words::tr("Draw by the seed"), QStringLiteral("writing_new_draw"), newDraw);
  WritingForm* form = list->makeForm();
  form->addText("name", Words::tr("Called"),
                Words::tr("for the record; never seen by the trainee"));
  form->addNumber("count", Words::tr("How many are drawn"), "", 1, 100, 1, 0);
  form->addWordedLines("from", Words::tr("From, a line each"), {candidateLines, readCandidates});
  form->addNote(
      Words::tr("A thing and what is wrong with it, as: end2.tail_lamp dead. A gauge, as: cab1.air "
                "offset 4. A fault, as: gearbox2.band3_worn; size 40 %. Or: nothing. Behind any of "
                "them: ; weight 2, and it is drawn twice as often."));
  form->fill();
  return list;
}

}  // namespace cabwright::desk
