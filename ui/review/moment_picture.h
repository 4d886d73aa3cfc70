// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of what the trainee had before their eyes at moments of a recorded session, for paper.
#pragma once

#include <QImage>
#include <memory>

#include "review_room/opened.h"

namespace cabwright::review_room {

class MomentPainter {
 public:
  /// `session` must outlive it. Nothing is run yet.
  explicit MomentPainter(const Opened& session);
  ~MomentPainter();
  MomentPainter(const MomentPainter&) = delete;
  MomentPainter& operator=(const MomentPainter&) = delete;

  /// The plate of where the trainee stood, with what came in and what the hands held, by day. The
  /// session is run again up to there (a second or two for half an hour). Null for a moment that
  /// cannot be had: the session runs otherwise here than it was recorded, or not at all.
  [[nodiscard]] QImage paint(std::int64_t tick);

 private:
  struct Parts;
  const Opened& session_;
  std::unique_ptr<Parts> parts_;
};

}  // namespace cabwright::review_room
