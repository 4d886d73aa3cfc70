// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/moment_picture.h"

#include <stdexcept>

#include "cab/seat_view.h"
#include "review/playback.h"
#include "session/session_error.h"

namespace cabwright::review_room {
namespace {

constexpr QSize kSize(1600, 1000);
constexpr double kHandsBelow = 19;  // u that the hands reach below their block
constexpr double kSharpness = 1.6;  // pixels for each of them: some 300 to the inch on paper
constexpr std::int64_t kStepTicks = 10 * session::kTicksPerSecond;

}  // namespace

struct MomentPainter::Parts {
  explicit Parts(const Opened& session)
      : playback(session.file()),
        seat(session::LiveRun::toLookAt(session.situation(), session.store().header())) {}
  review::Playback playback;
  cab::Seat seat;
  cab::Shortcuts shortcuts;
};

MomentPainter::MomentPainter(const Opened& session) : session_(session) {}
MomentPainter::~MomentPainter() = default;

QImage MomentPainter::paint(std::int64_t tick) {
  try {
    if (!parts_) parts_ = std::make_unique<Parts>(session_);
    while (parts_->playback.state().built_to < tick && parts_->playback.build(kStepTicks)) {
    }
    const std::optional<session::Run> moment = parts_->playback.findMoment(tick);
    if (!moment) return {};
    parts_->seat.showMoment(*moment);
  } catch (const std::exception&) {
    return {};  // the report says the same without it
  }
  cab::SeatView view(parts_->seat, parts_->shortcuts);
  view.setReducedMotion(true);
  view.setShowKeys(false);
  view.setTheme(drawing::Theme::kDay);
  view.resize(kSize);
  // A sheet that was never shown has no plate yet: it is made when the sheet gets its size.
  view.setAttribute(Qt::WA_DontShowOnScreen);
  view.show();
  QImage image((QSizeF(kSize) * kSharpness).toSize(), QImage::Format_RGB32);
  image.setDevicePixelRatio(kSharpness);
  view.render(&image);
  const drawing::SheetFrame& frame = view.style().frame;
  const double k = frame.scale * kSharpness;
  const QRectF world = frame.world.adjusted(-8, -8, 8, kHandsBelow);
  QImage plate = image.copy(QRectF(world.topLeft() * k, world.size() * k).toAlignedRect());
  plate.setDevicePixelRatio(1);
  return plate;
}

}  // namespace cabwright::review_room
