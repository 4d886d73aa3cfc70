// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/take_out.h"

#include <QCoreApplication>
#include <QDir>
#include <QSaveFile>
#include <nlohmann/json.hpp>
#include <sstream>

#include "review/csv.h"
#include "review/html_report.h"
#include "review/xapi.h"
#include "review_room/moment_picture.h"
#include "review_room/recency_day.h"
#include "review_room/report.h"
#include "session/session_error.h"

namespace cabwright::review_room {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(TakeOut)
};

std::optional<QString> save(const QString& path, const std::string& text) {
  QSaveFile file(path);
  if (file.open(QIODevice::WriteOnly) &&
      file.write(text.data(), static_cast<qint64>(text.size())) ==
          static_cast<qint64>(text.size()) &&
      file.commit())
    return std::nullopt;
  return Words::tr("%1 cannot be written: %2").arg(path, file.errorString());
}

std::optional<QString> saveTables(const Opened& session, const QString& folder) {
  if (!QDir().mkpath(folder)) return Words::tr("The folder %1 cannot be made.").arg(folder);
  const QDir place(folder);
  std::ostringstream actions, signals_table;
  review::writeActionsCsv(session.store(), actions);
  review::writeSignalsCsv(session.store(), signals_table, session::kTicksPerSecond);
  if (auto fault = save(place.filePath(QStringLiteral("actions.csv")), actions.str())) return fault;
  return save(place.filePath(QStringLiteral("signals.csv")), signals_table.str());
}

std::optional<QString> savePaper(const Opened& session, const QString& path,
                                 const review::RecencyRules& recency) {
  MomentPainter painter(session);
  ReportOptions options;
  options.program = QCoreApplication::applicationVersion();
  options.attempt = review::findAttempt(session.file());
  options.recency = recency;
  options.picture = [&](std::int64_t tick) { return painter.paint(tick); };
  return writeReport(session, path, options);
}

}  // namespace

QString menuWords(TakeOut what) {
  switch (what) {
    case TakeOut::kPaper:
      return Words::tr("Report on &paper (PDF) …");
    case TakeOut::kPage:
      return Words::tr("Report as &web page (HTML) …");
    case TakeOut::kTables:
      return Words::tr("&Tables of actions and signals (CSV) …");
    case TakeOut::kStatements:
      break;
  }
  return Words::tr("Stateme&nts for a record store (xAPI) …");
}

QString proposedName(TakeOut what, const Opened& session) {
  const std::filesystem::path& file = session.file();
  const QString stem = QString::fromStdString((file.parent_path() / file.stem()).string());
  switch (what) {
    case TakeOut::kPaper:
      return stem + QStringLiteral(".pdf");
    case TakeOut::kPage:
      return stem + QStringLiteral(".html");
    case TakeOut::kTables:
      return stem;
    case TakeOut::kStatements:
      break;
  }
  return stem + QStringLiteral(".json");
}

QString filterOf(TakeOut what) {
  switch (what) {
    case TakeOut::kPaper:
      return QStringLiteral("PDF (*.pdf)");
    case TakeOut::kPage:
      return QStringLiteral("HTML (*.html)");
    case TakeOut::kTables:
      return {};
    case TakeOut::kStatements:
      break;
  }
  return QStringLiteral("JSON (*.json)");
}

std::optional<QString> takeOut(TakeOut what, const Opened& session, const QString& path,
                               const review::RecencyRules& recency) {
  try {
    switch (what) {
      case TakeOut::kPaper:
        return savePaper(session, path, recency);
      case TakeOut::kPage: {
        review::ReportInput report = review::loadReport(session.file());
        report.attempt = review::findAttempt(session.file());
        report.program = QCoreApplication::applicationVersion().toStdString();
        report.recency = recency;
        report.day_of = localDay;
        return save(path, review::makeHtmlReport(report));
      }
      case TakeOut::kTables:
        return saveTables(session, path);
      case TakeOut::kStatements:
        return save(path, review::makeXapi(session.store(), session.sheet(), session.entries(), {})
                                  .dump(2, ' ', false, nlohmann::json::error_handler_t::replace) +
                              "\n");
    }
  } catch (const session::SessionError& error) {
    return QString::fromUtf8(error.what());
  }
  return std::nullopt;
}

}  // namespace cabwright::review_room
