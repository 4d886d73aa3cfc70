// SPDX-License-Identifier: GPL-3.0-or-later
// What an assessor takes out of a session: the report on paper, the report as a web page, tables of
// actions and signals, statements for a learning record store. Each is a new file, complete or not
// there.
#pragma once

#include <QString>
#include <QWidget>
#include <array>
#include <cstdint>
#include <optional>

#include "review/recency.h"
#include "review_room/opened.h"

namespace cabwright::review_room {

enum class TakeOut : std::uint8_t { kPaper, kPage, kTables, kStatements };
inline constexpr std::array kTakeOuts{TakeOut::kPaper, TakeOut::kPage, TakeOut::kTables,
                                      TakeOut::kStatements};

/// "Report on &paper (PDF) …": of a menu.
[[nodiscard]] QString menuWords(TakeOut what);
/// Name that is proposed, beside the session's own: "a.pdf"; for tables a folder, "a".
[[nodiscard]] QString proposedName(TakeOut what, const Opened& session);
/// Filter of a dialog: "PDF (*.pdf)"; empty for a folder.
[[nodiscard]] QString filterOf(TakeOut what);

/// Writes it. For paper the session is run again for the pictures, which takes a second or two for
/// half an hour; it says for how long a pass is good by `recency`. Empty: done; else why not, in
/// one line.
[[nodiscard]] std::optional<QString> takeOut(TakeOut what, const Opened& session,
                                             const QString& path,
                                             const review::RecencyRules& recency = {});

}  // namespace cabwright::review_room
