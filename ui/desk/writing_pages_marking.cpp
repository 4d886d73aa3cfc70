// SPDX-License-Identifier: GPL-3.0-or-later
// Marking: which rules of the shared files, some of them otherwise here, some of this exercise's
// own; and the steps of its guide.
#include <QVBoxLayout>

#include "desk/writing_form.h"
#include "desk/writing_list.h"
#include "desk/writing_pages.h"
#include "desk/writing_rules.h"
#include "scenario/quantity_text.h"
#include "unit/places.h"

namespace cabwright::desk {

namespace {

using scenario::DraftTable;
using scenario::DraftValue;
using S = scenario::DraftSection;

QString said(const DraftTable& table, std::string_view key) {
  return QString::fromStdString(table.text(key));
}

std::vector<WritingChoice> classChoices(const QString& not_said) {
  return {{"", not_said},
          {"C", WritingPages::tr("critical: fails the run")},
          {"S", WritingPages::tr("serious")},
          {"T", WritingPages::tr("technique")}};
}

// "0 to 120", "5" for up to 5, "from 5": seconds, as the file has them ([0, 120], 5, [5]).
QString windowText(const DraftValue& value) {
  const auto* list = std::get_if<scenario::DraftList>(&value.value);
  const auto number = [](const DraftValue& v) {
    return QString::number(numberOf(v, "s").value_or(0));
  };
  if (list == nullptr) return number(value);
  if (list->items.size() == 1) return WritingPages::tr("from %1").arg(number(list->items[0]));
  QStringList ends;
  for (const DraftValue& end : list->items) ends << number(end);
  return ends.join(QStringLiteral(" - "));
}

std::optional<DraftValue> readWindow(const QString& words) {
  scenario::DraftList ends;
  QString number;
  for (const QChar c : words + QLatin1Char(' ')) {
    if (c.isDigit() || c == QLatin1Char('.')) {
      number += c;
    } else if (!number.isEmpty()) {
      ends.items.emplace_back(number.toDouble());
      number.clear();
    }
  }
  if (ends.items.empty()) return std::nullopt;
  const bool starts_with_word = !words.isEmpty() && !words[0].isDigit();
  if (ends.items.size() == 1 && !starts_with_word) return ends.items.front();
  return DraftValue(std::move(ends));
}

WritingList* makeChanges(Writing& writing, QWidget* page) {
  auto* list = new WritingList(
      writing, S::kChange, WritingPages::tr("Shared rules that are otherwise here"),
      [](const DraftTable& t) {
        QStringList words{said(t, "rule")};
        for (const scenario::DraftEntry& entry : t.entries)
          if (entry.key != "rule") words << fromText(entry.key);
        return words.join(QStringLiteral(", "));
      },
      page);
  list->addMaker(WritingPages::tr("Change a rule here"), QStringLiteral("writing_new_change"), [] {
    DraftTable change;
    change.set("rule", "hb-on");
    change.set("weight", 2);
    return change;
  });
  WritingForm* form = list->makeForm();
  form->addText("rule", WritingPages::tr("Which rule"), WritingPages::tr("its short name"));
  form->addChoice("class", WritingPages::tr("Counts as"),
                  classChoices(WritingPages::tr("as in the shared file")));
  form->addNumber("weight", WritingPages::tr("Points"), "", 0, 1000, 1);
  form->addText("reason", WritingPages::tr("Reason"), WritingPages::tr("as in the shared file"));
  form->addText("tolerance", WritingPages::tr("Tolerance"),
                WritingPages::tr("a critical one needs it; or none: and why"));
  form->fill();
  return list;
}

// The kinds that need no more than the fields below, with what each is made of; all others are
// written in the file.
struct Kind {
  const char* word;
  const char* shown;
  bool a, b, condition, during, within, hold;
};
constexpr Kind kKinds[]{
    {"precedence", QT_TRANSLATE_NOOP("WritingPages", "B only when A was done before"), true, true,
     false, false, true, false},
    {"response", QT_TRANSLATE_NOOP("WritingPages", "after A comes B"), true, true, false, false,
     true, false},
    {"absence", QT_TRANSLATE_NOOP("WritingPages", "A is never done"), true, false, false, true,
     false, false},
    {"existence", QT_TRANSLATE_NOOP("WritingPages", "A is done once at least"), true, false, false,
     true, true, false},
    {"not_succession", QT_TRANSLATE_NOOP("WritingPages", "no B after A"), true, true, false, false,
     true, false},
    {"never_while", QT_TRANSLATE_NOOP("WritingPages", "never so, while"), false, false, true, true,
     false, true},
    {"limit", QT_TRANSLATE_NOOP("WritingPages", "always so, while"), false, false, true, true,
     false, true},
    {"hold_for", QT_TRANSLATE_NOOP("WritingPages", "B only when it was so for some time"), false,
     true, true, false, false, true},
    {"reach_within", QT_TRANSLATE_NOOP("WritingPages", "after A it comes to be so in time"), true,
     false, true, false, true, false},
    {"hold_after", QT_TRANSLATE_NOOP("WritingPages", "after A it stays so for a time"), true, false,
     true, false, true, false}};
constexpr const char* kAnA = "did set cab1.brake release";
constexpr const char* kAB = "did set cab1.throttle 1";
constexpr const char* kACondition = "cab1.train_pipe >= 21 inHg";

std::vector<WritingChoice> kindChoices() {
  std::vector<WritingChoice> all;
  for (const Kind& kind : kKinds) all.push_back({kind.word, WritingPages::tr(kind.shown)});
  return all;
}

// Another kind is made of other parts: those it has not go, those it cannot be without come.
void fitToKind(DraftTable& rule) {
  const std::string word = rule.text("kind");
  for (const Kind& kind : kKinds) {
    if (word != kind.word) continue;
    const auto fit = [&rule](bool wanted, const std::string& key, const char* at_first) {
      if (!wanted) {
        rule.remove(key);
        rule.remove(key + "_name");
      } else if (at_first != nullptr && !rule.has(key)) {
        rule.set(key, at_first);
      }
    };
    fit(kind.a, "a", kAnA);
    fit(kind.b, "b", kAB);
    fit(kind.condition, "condition", kACondition);
    fit(kind.during, "during", nullptr);
    fit(kind.within, "within", nullptr);
    fit(kind.hold, "for", nullptr);
  }
}

WritingList* makeOwnRules(Writing& writing, QWidget* page) {
  auto* list = new WritingList(
      writing, S::kRule, WritingPages::tr("Rules of this exercise's own"),
      [](const DraftTable& t) { return said(t, "title"); }, page);
  list->addMaker(WritingPages::tr("Write a rule"), QStringLiteral("writing_new_rule"), [&writing] {
    DraftTable rule;
    const auto number = writing.draft().list(S::kRule).size() + 1;
    rule.set("id", "own-" + std::to_string(number));
    rule.set("title", WritingPages::tr("What is asked").toStdString());
    rule.set("reason", WritingPages::tr("Why it is asked").toStdString());
    rule.set("kind", "precedence");
    rule.set("class", "S");
    rule.set("a", kAnA);
    rule.set("b", kAB);
    return rule;
  });
  WritingForm* form = list->makeForm();
  form->addText("id", WritingPages::tr("Short name"));
  form->addText("title", WritingPages::tr("What is asked"));
  form->addText("reason", WritingPages::tr("Why"));
  QComboBox* kind = form->addChoice("kind", WritingPages::tr("Kind"), kindChoices(), true);
  QObject::connect(kind, &QComboBox::currentIndexChanged, form, [&writing, list, form](int chosen) {
    const int row = list->list()->currentRow();
    if (chosen < 0 || row < 0 || form->isFilling()) return;
    writing.change([row](scenario::Draft& draft) {
      fitToKind(draft.list(S::kRule)[static_cast<std::size_t>(row)]);
    });
    form->fill();
  });
  form->addChoice("class", WritingPages::tr("Counts as"),
                  classChoices(WritingPages::tr("serious")));
  form->addNumber("weight", WritingPages::tr("Points"), "", 0, 1000, 1);
  form->addChoice(
      "reads", WritingPages::tr("Looks at"),
      {{"", WritingPages::tr("what was shown")}, {"true", WritingPages::tr("what was true")}});
  form->addText("a", WritingPages::tr("A, an act"),
                WritingPages::tr("as did set cab1.brake release"));
  form->addText("a_name", WritingPages::tr("A in plain words"));
  form->addText("b", WritingPages::tr("B, an act"), WritingPages::tr("as did set cab1.throttle 1"));
  form->addText("b_name", WritingPages::tr("B in plain words"));
  form->addText("condition", WritingPages::tr("It is so when"),
                WritingPages::tr("as cab1.train_pipe >= 21 inHg"));
  form->addText("condition_name", WritingPages::tr("that in plain words"));
  form->addText("during", WritingPages::tr("while"), WritingPages::tr("as true.standing"));
  form->addNumber("for", WritingPages::tr("for so long"), "s", 0, 1e6, 0);
  form->addWorded("within", WritingPages::tr("Within, seconds"),
                  WritingPages::tr("as 0 - 120, or 5, or from 5"), {windowText, readWindow});
  form->addText("tolerance", WritingPages::tr("Tolerance"),
                WritingPages::tr("a critical one needs it; or none: and why"));
  form->fill();
  return list;
}

WritingList* makeSteps(Writing& writing, QWidget* page) {
  auto* list = new WritingList(
      writing, S::kGuideStep, WritingPages::tr("Steps of this exercise's own guide"),
      [](const DraftTable& t) { return said(t, "id") + QStringLiteral(": ") + said(t, "do"); },
      page);
  list->addMaker(WritingPages::tr("Write a step"), QStringLiteral("writing_new_step"), [&writing] {
    DraftTable step;
    step.set("id", "own-" + std::to_string(writing.draft().list(S::kGuideStep).size() + 1));
    step.set("do", WritingPages::tr("What is to be done").toStdString());
    step.set("why", WritingPages::tr("Why it is done").toStdString());
    step.set("place", "cab1");
    step.set("done", "cab1.key == 1");
    return step;
  });
  std::vector<WritingChoice> places{{"", WritingPages::tr("anywhere")}};
  for (const unit::PlaceInfo& place : unit::placeTable())
    places.push_back({std::string(place.name), fromText(place.name)});
  WritingForm* form = list->makeForm();
  form->addText("id", WritingPages::tr("Short name"));
  form->addText("do", WritingPages::tr("Do, as an order"));
  form->addText("why", WritingPages::tr("Why"));
  form->addText("alternative", WritingPages::tr("If it does not go"));
  form->addChoice("place", WritingPages::tr("Where"), places);
  form->addLines("points", WritingPages::tr("Points at, a line each"), true);
  form->addText("done", WritingPages::tr("It is done when"), WritingPages::tr("a condition"));
  form->addLines("acts", WritingPages::tr("Said or done in it, a line each"), true);
  form->addText("meanwhile", WritingPages::tr("True once while it is next"),
                WritingPages::tr("a condition"));
  form->addText("past", WritingPages::tr("Passed over if so when its turn comes"),
                WritingPages::tr("a condition"));
  form->addText("when", WritingPages::tr("Asked only when"));
  form->addFlag("anytime", WritingPages::tr("Done counts whenever it was so before"), false);
  form->addText("after", WritingPages::tr("After the step"));
  form->addText("before", WritingPages::tr("or before the step"));
  form->addText("phase", WritingPages::tr("Heading"));
  form->fill();
  return list;
}

}  // namespace

QWidget* WritingPages::makeMarking(Writing& writing, QWidget* parent) {
  auto* page = new QWidget(parent);
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(0, 0, 8, 0);
  auto* form = new WritingForm(writing, S::kMarking, page);
  form->addNumber("pass_mark", tr("Pass mark"), "%", 0, 100, 80, 1);
  form->addText("complete", tr("It is done when"), tr("a condition"));
  form->addText("complete_says", tr("in plain words"));
  form->addLines("phases", tr("Headings of the sheet, a line each"), true);
  form->fill();
  column->addWidget(form);
  column->addWidget(makeChanges(writing, page));
  column->addWidget(makeOwnRules(writing, page));
  column->addWidget(new WritingRules(writing, page));
  column->addStretch(1);
  return page;
}

QWidget* WritingPages::makeGuide(Writing& writing, QWidget* parent) {
  auto* page = new QWidget(parent);
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(0, 0, 8, 0);
  auto* guide = new WritingForm(writing, S::kGuide, page);
  guide->addLines("use", tr("Guides, a line each"), true);
  guide->addLines("without", tr("without these steps"), true);
  guide->fill();
  column->addWidget(guide);
  column->addWidget(makeSteps(writing, page));
  column->addStretch(1);
  return page;
}

}  // namespace cabwright::desk
