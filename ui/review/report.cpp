// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/report.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFile>
#include <QSaveFile>

#include "after/words.h"
#include "review_room/report_parts.h"
#include "session/digest.h"

namespace cabwright::review_room {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Report)
};

QString hashOf(const std::filesystem::path& file) {
  const auto digest = session::digestOfFile(file);
  return digest ? QString::fromStdString(session::toHex(*digest)) : QString();
}

ReportMatter gather(const Opened& session, const ReportOptions& options) {
  ReportMatter matter{session, options, session.run(), hashOf(session.file()), {}};
  matter.run.sheet = session.sheet();
  if (!options.picture) return matter;
  for (const marking::SheetLine* line : after::findBrokenLines(matter.run.sheet)) {
    if (static_cast<int>(matter.pictures.size()) >= kMostPictures) break;
    const std::int64_t tick = after::momentOf(matter.run.sheet, *line);
    if (matter.pictures.contains(tick)) continue;
    matter.pictures[tick] = options.picture(tick);
    whiten(matter.pictures[tick]);
  }
  return matter;
}

void setAll(Paper& paper, const ReportMatter& matter) {
  setDecision(paper, matter);
  setFacts(paper, matter);
  setBrokenLines(paper, matter);
  setOtherLines(paper, matter);
  setEntries(paper, matter);
  setCautions(paper, matter);
}

}  // namespace

std::optional<QString> writeReport(const Opened& session, const QString& file,
                                   const ReportOptions& options) {
  const ReportMatter matter = gather(session, options);
  Paper counted;
  setAll(counted, matter);

  QSaveFile out(file);
  if (!out.open(QIODevice::WriteOnly))
    return Words::tr("%1 cannot be written: %2").arg(file, out.errorString());
  const marking::SheetHead& head = matter.run.sheet.head;
  // By way of memory: QPdfWriter does not look at what becomes of its bytes, and a device that took
  // only some of them would leave half a report.
  QBuffer pages;
  pages.open(QIODevice::WriteOnly);
  {
    QPdfWriter writer(&pages);
    writer.setPageLayout(QPageLayout(QPageSize(QPageSize::A4), QPageLayout::Portrait,
                                     {15, 15, 15, 15}, QPageLayout::Millimeter));
    writer.setResolution(300);
    writer.setTitle(Words::tr("Mark sheet: %1").arg(after::exerciseWords(head.title)));
    writer.setCreator(QStringLiteral("Cabwright ") + options.program);
    Paper paper(writer, Words::tr("Session %1").arg(QString::fromStdString(head.session_id)),
                Words::tr("A training aid only; it gives no authority to drive. See the cautions "
                          "at the end."),
                counted.page());
    setAll(paper, matter);
  }
  if (out.write(pages.data()) != pages.size() || !out.commit())
    return Words::tr("%1 cannot be written: %2").arg(file, out.errorString());
  return std::nullopt;
}

}  // namespace cabwright::review_room
