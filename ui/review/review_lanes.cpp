// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/review_lanes.h"

#include <QCoreApplication>
#include <algorithm>
#include <map>

#include "after/words.h"
#include "fault/active_faults.h"
#include "fault/fault.h"
#include "quantity/sort_once.h"
#include "session/desk_actions.h"
#include "wording/sentences.h"

namespace cabwright::review_room {

using after::Lane;
using after::LaneKind;
using after::Sign;
using drawing::Tone;
using drawing::VerdictSign;

namespace {

constexpr std::size_t kMostFaultRows = 3;
constexpr std::size_t kOwnLanes = 3;  // place and hands: the strip's own, as after a run

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Review)
};

QString toQt(const std::string& words) { return QString::fromStdString(words); }

// What is told of a fault when it comes or goes: "vacuum.train_pipe_leak (2 mm) 'leak' there".
struct FaultNews {
  std::string id, name, size, stage;
};

FaultNews readNews(const std::string& words) {
  FaultNews news;
  news.name = news.id = words.substr(0, words.find(' '));
  news.stage = words.substr(words.rfind(' ') + 1);
  if (const auto open = words.find('\''); open != std::string::npos)
    news.id = words.substr(open + 1, words.rfind('\'') - open - 1);
  const auto from = words.find('('), to = words.find(')');
  if (from != std::string::npos && to != std::string::npos && to > from)
    news.size = words.substr(from + 1, to - from - 1);
  return news;
}

QString faultWords(const FaultNews& news) {
  QString words = toQt(news.name);
  if (const fault::FaultSpec* spec = fault::findFault(news.name)) {
    words = wording::translateEntry("Fault", toQt(spec->where)) + QLatin1String(": ") +
            wording::translateEntry("Fault", toQt(spec->text));
  }
  if (!news.size.empty()) words += QLatin1String(", ") + toQt(news.size);
  return words;
}

// Each in the first row in which nothing else is there; what is one too many joins the last.
void addFaultLanes(const Opened& opened, std::vector<Lane>& lanes) {
  std::vector<Lane> rows(1, Lane{LaneKind::kFault, {}, Words::tr("Faults"), {}});
  for (const FaultStay& stay : findFaultStays(opened.allActions(), opened.lastTick())) {
    auto row = std::ranges::find_if(rows, [&](const Lane& lane) {
      return lane.segments.empty() || lane.segments.back().to <= stay.from;
    });
    if (row == rows.end()) {
      if (rows.size() < kMostFaultRows) rows.push_back({LaneKind::kFault, {}, {}, {}});
      row = rows.end() - 1;
    }
    row->segments.push_back({stay.from, stay.to, 1, stay.words});
  }
  lanes.insert(lanes.end(), rows.begin(), rows.end());
}

QString lineWords(const marking::SheetLine& line, const QString& verdict) {
  const QString title = after::sheetWords(line.title);
  QString words = Words::tr("Line %1, %2: %3").arg(QString::number(line.number), title, verdict);
  if (line.override_record) words += Words::tr(", counted otherwise by the assessor");
  return words;
}

Lane makeMarks(const Opened& opened) {
  Lane lane{LaneKind::kSigns, {}, Words::tr("Marks"), {}};
  const marking::MarkSheet& sheet = opened.sheet();
  std::vector<bool> has_sign(sheet.lines.size());
  for (const marking::Mark& mark : opened.run().marks) {
    const auto line = std::ranges::find(sheet.lines, mark.rule, &marking::SheetLine::rule);
    if (line == sheet.lines.end()) continue;
    has_sign[static_cast<std::size_t>(line - sheet.lines.begin())] = true;
    const VerdictSign sign = mark.met                ? VerdictSign::kGood
                             : mark.inside_tolerance ? VerdictSign::kUnsure
                                                     : VerdictSign::kDefect;
    const QString verdict = mark.met                ? Words::tr("kept")
                            : mark.inside_tolerance ? Words::tr("broken within its tolerance")
                                                    : Words::tr("broken");
    lane.signs.push_back({mark.tick, sign, toneOf(sign), lineWords(*line, verdict), line->number});
  }
  // Those that never came up, though they had to, have no mark of their own.
  for (std::size_t k = 0; k < sheet.lines.size(); ++k) {
    const marking::SheetLine& line = sheet.lines[k];
    if (has_sign[k] || line.verdict.outcome != marking::Outcome::kBroken) continue;
    lane.signs.push_back({after::momentOf(sheet, line), VerdictSign::kDefect, Tone::kBad,
                          lineWords(line, Words::tr("broken")), line.number});
  }
  std::ranges::stable_sort(lane.signs, {}, &Sign::tick);
  return lane;
}

Lane makeRemarks(const Opened& opened) {
  Lane lane{LaneKind::kSigns, {}, Words::tr("Remarks"), {}};
  const auto add = [&lane](std::int64_t tick, Tone tone, const QString& who, const QString& words) {
    lane.signs.push_back({tick, VerdictSign::kNone, tone,
                          words.isEmpty() ? who : who + QLatin1String(": ") + words, 0});
  };
  for (const session::TimedAction& timed : opened.allActions()) {
    if (timed.action.actor != unit::Actor::kInstructor) continue;
    if (const auto why = session::findIntervention(timed.action)) {
      add(timed.tick, Tone::kBad, Words::tr("The instructor stepped in"), toQt(*why));
    } else if (const auto remark = session::findRemark(timed.action)) {
      add(timed.tick, Tone::kInfo, Words::tr("Instructor"), toQt(*remark));
    } else if (const auto mark = session::findMarkName(timed.action)) {
      add(timed.tick, Tone::kInk2, Words::tr("Moment"), toQt(*mark));
    } else {
      add(timed.tick, Tone::kInk2, Words::tr("Instructor"),
          after::actText(unit::toText(timed.action)));
    }
  }
  for (const review::Entry& entry : opened.entries()) {
    const auto* comment = std::get_if<review::Comment>(&entry.content);
    if (comment == nullptr || !comment->tick) continue;
    const QString who = entry.by.name.empty() ? Words::tr("Assessor") : toQt(entry.by.name);
    add(std::clamp<std::int64_t>(*comment->tick, 0, opened.lastTick()), Tone::kHand, who,
        toQt(comment->text));
  }
  std::ranges::stable_sort(lane.signs, {}, &Sign::tick);
  return lane;
}

}  // namespace

std::vector<FaultStay> findFaultStays(const std::vector<session::TimedAction>& actions,
                                      std::int64_t last_tick) {
  std::vector<FaultStay> stays;
  std::map<std::string, std::size_t> open;
  for (const session::TimedAction& timed : actions) {
    const unit::Action& action = timed.action;
    if (!timed.scheduled || action.verb != "remark" || action.object != "fault") continue;
    const FaultNews news = readNews(action.argument);
    const auto found = open.find(news.id);
    if (news.stage == fault::wordOf(fault::FaultStage::kCleared)) {
      if (found == open.end()) continue;
      stays[found->second].to = timed.tick;
      open.erase(found);
    } else if (found == open.end() && news.stage != fault::wordOf(fault::FaultStage::kArmed)) {
      open.emplace(news.id, stays.size());
      stays.push_back({news.id, faultWords(news), timed.tick, last_tick});
    }
  }
  return stays;
}

std::vector<Lane> makeReviewLanes(const Opened& opened, bool hides_marks) {
  const session::SignalHistory& history = *opened.run().history;
  std::vector<Lane> lanes = after::makeLanes(history, after::findLeadingCab(history));
  lanes.resize(std::min(lanes.size(), kOwnLanes));
  lanes.push_back({LaneKind::kActions, {}, Words::tr("Actions"), {}});
  addFaultLanes(opened, lanes);
  lanes.push_back(hides_marks ? Lane{LaneKind::kSigns, {}, Words::tr("Marks"), {}}
                              : makeMarks(opened));
  lanes.push_back(makeRemarks(opened));
  return lanes;
}

QString wordsOfMoment(const Opened& opened, const std::vector<Lane>& lanes, std::int64_t tick) {
  QStringList words;
  const auto& actions = opened.allActions();
  auto act = std::ranges::lower_bound(actions, tick, {}, &session::TimedAction::tick);
  for (; act != actions.end() && act->tick == tick; ++act)
    if (act->action.actor != unit::Actor::kInstructor && act->action.verb != "remark")
      words << after::actText(unit::toText(act->action));
  for (const Lane& lane : lanes)
    for (const Sign& sign : lane.signs)
      if (sign.tick == tick) words << sign.words;
  return words.join(QStringLiteral(" · "));
}

std::vector<std::int64_t> findVerdictTicks(const std::vector<Lane>& lanes) {
  std::vector<std::int64_t> ticks;
  for (const Lane& lane : lanes)
    for (const Sign& sign : lane.signs)
      if (sign.verdict != VerdictSign::kNone) ticks.push_back(sign.tick);
  quantity::sortOnce(ticks);
  return ticks;
}

}  // namespace cabwright::review_room
