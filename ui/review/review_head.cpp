// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/review_head.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QStringList>

#include "after/words.h"
#include "cab/names.h"
#include "cab/you_parts.h"

namespace cabwright::review_room {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(ReviewHead)
};

QString toQt(const std::string& words) { return QString::fromStdString(words); }

const QString& dot() {
  static const QString between = QStringLiteral(" · ");
  return between;
}

QString findName(const std::vector<session::Person>& people, const std::string& role) {
  for (const session::Person& person : people)
    if (person.role == role && !person.name.empty()) return toQt(person.name);
  return {};
}

QString makeReviewers(const Opened& opened) {
  QStringList names;
  for (const review::Entry& entry : opened.entries()) {
    const QString name = entry.by.name.empty() ? Words::tr("somebody erased") : toQt(entry.by.name);
    if (!names.contains(name)) names << name;
  }
  return names.isEmpty() ? Words::tr("nobody has added anything yet")
                         : Words::tr("added to by %1").arg(names.join(QLatin1String(", ")));
}

}  // namespace

QString makeHeadWords(const Opened& opened) {
  const session::SessionHeader& header = opened.store().header();
  const QString trainee = toQt(session::traineeWords(header));
  QStringList parts;
  parts << (trainee.isEmpty() ? Words::tr("trainee without a name") : trainee);
  parts << cab::exerciseWords(header.scenario);
  parts << cab::modeText(opened.situation().loaded.scenario.mode);
  const QDateTime began = QDateTime::fromString(toQt(header.started_utc), Qt::ISODate);
  if (began.isValid())
    parts << Words::tr("began %1 UTC")
                 .arg(QLocale().toString(began, QStringLiteral("d MMM yyyy, HH:mm")));
  parts << after::timeText(opened.lastTick());
  if (const QString instructor = findName(header.people, "instructor"); !instructor.isEmpty())
    parts << Words::tr("instructor %1").arg(instructor);
  return parts.join(dot());
}

SealWords makeSealWords(const Opened& opened) {
  const session::Verification& found = opened.verification();
  QStringList findings;
  for (const std::string& finding : found.findings) findings << toQt(finding);
  SealWords seal;
  switch (found.standing) {
    case session::Standing::kWhole:
      seal.words = Words::tr("Sealed, and whole");
      seal.look = QStringLiteral("good");
      break;
    case session::Standing::kNotSealed:
      seal.words = found.is_assessment ? Words::tr("Not sealed, though it is an assessment")
                                       : Words::tr("Not sealed");
      seal.look = found.is_assessment ? QStringLiteral("bad") : QStringLiteral("doubt");
      break;
    case session::Standing::kAltered:
    case session::Standing::kNoSession:
      seal.words = Words::tr("ALTERED: %1").arg(findings.value(0));
      if (findings.size() > 1) seal.words += Words::tr(" (and %1 more)").arg(findings.size() - 1);
      seal.look = QStringLiteral("bad");
      break;
  }
  if (!found.has_end) seal.words += dot() + Words::tr("cut off before its end");
  if (!opened.readFault().empty())
    seal.words += dot() + Words::tr("read only up to %1").arg(after::timeText(opened.lastTick()));
  seal.words += dot() + makeReviewers(opened);
  if (!opened.readFault().empty()) findings << toQt(opened.readFault());
  findings.prepend(seal.words);
  seal.all = findings.join(QLatin1Char('\n'));
  return seal;
}

}  // namespace cabwright::review_room
