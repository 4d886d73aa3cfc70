// SPDX-License-Identifier: GPL-3.0-or-later
// cabwright --report SESSION OUT: the report on paper, without a window.
#pragma once

#include <QStringList>

namespace cabwright {

/// Before there is an application: whether one of the words is --report.
[[nodiscard]] bool isReportAsked(int argc, char** argv);

/// Writes it. Gives the exit code: 0 written, 2 not, and then said why on standard error in one
/// line. A file that is there already is not overwritten.
int runReport(const QString& session, const QStringList& out);

}  // namespace cabwright
