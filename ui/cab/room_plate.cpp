// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/room_plate.h"

#include "unit/perception.h"

namespace cabwright::cab {

void RoomPlate::paintLive(drawing::Pen& pen) const {
  paintState(pen);
  if (unit::hasLight(seat().unit().world())) return;
  const auto [tone, on] = darkTones();
  pen.text(darkWords(), tr("too dark to see closely"),
           {.anchor = drawing::Anchor::kMiddle, .italic = true, .tone = tone, .on = on, .halo = 4});
}

QRectF RoomPlate::findLiveChange() {
  std::vector<double> now = liveState();
  now.push_back(unit::hasLight(seat().unit().world()) ? 1 : 0);
  if (now == live_) return {};
  live_ = std::move(now);
  return area();
}

}  // namespace cabwright::cab
