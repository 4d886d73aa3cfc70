// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop_report.h"

#include <QFileInfo>
#include <QLocale>
#include <QSettings>
#include <algorithm>
#include <cstdio>
#include <string_view>

#include "review_room/recency_form.h"
#include "review_room/take_out.h"
#include "session/session_error.h"

namespace cabwright {
namespace {

constexpr int kWritten = 0, kBadInput = 2;

int refuse(const QString& why) {
  std::fprintf(stderr, "cabwright: %s\n", qPrintable(why));
  return kBadInput;
}

}  // namespace

bool isReportAsked(int argc, char** argv) {
  return std::any_of(argv, argv + argc, [](const char* word) {
    const std::string_view given(word);
    return given == "--report" || given.starts_with("--report=");
  });
}

int runReport(const QString& session, const QStringList& out) {
  if (out.size() != 1) return refuse(QStringLiteral("--report SESSION takes one file to write"));
  if (QFileInfo::exists(out.front()))
    return refuse(out.front() + QStringLiteral(": exists already and is not overwritten"));
  QSettings settings(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("cabwright"),
                     QStringLiteral("cabwright"));  // as the window has them
  try {
    const review_room::Opened opened(session.toStdString());
    if (const auto fault = review_room::takeOut(review_room::TakeOut::kPaper, opened, out.front(),
                                                review_room::loadRecency(settings)))
      return refuse(*fault);
  } catch (const session::SessionError& error) {
    return refuse(QString::fromUtf8(error.what()));
  }
  return kWritten;
}

}  // namespace cabwright
