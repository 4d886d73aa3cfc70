// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/opened.h"

#include <algorithm>
#include <utility>

#include "review/review.h"
#include "session/marking_witness.h"
#include "session/replay.h"
#include "session/session_error.h"

namespace cabwright::review_room {
namespace {

// Not one of the record's own faults, which end the reading and nothing else.
struct GivenUp : session::SessionError {
  GivenUp() : SessionError("given up") {}
};

}  // namespace

Opened::Opened(std::filesystem::path file, QObject* parent, const Progress& progress)
    : QObject(parent),
      file_(std::move(file)),
      store_(std::make_unique<session::Store>(file_)),
      verification_(session::verifySession(file_)),
      situation_(session::readSituation(*store_)),
      history_(session::chartSignals()) {
  readRecord(progress);
  readAdded();
}

// Once through the file: what is charted and what is marked are the same rows.
void Opened::readRecord(const Progress& progress) {
  session::MarkingWitness marking(session::makeTerms(
      situation_, scenario::makeSetup(situation_.loaded, store_->header().seed)));
  std::int64_t last_tick = 0;
  auto reader = store_->read();
  try {
    while (auto event = reader.next()) {
      if (const auto* frame = std::get_if<unit::Frame>(&*event)) {
        last_tick = std::max(last_tick, frame->tick);
        if (progress && frame->tick % session::kTicksPerSecond == 0 && !progress(frame->tick))
          throw GivenUp();
        history_.seeFrame(*frame);
        marking.seeFrame(*frame);
      } else if (const auto* action = std::get_if<session::TimedAction>(&*event)) {
        last_tick = std::max(last_tick, action->tick);
        marking.seeAction(*action);
        actions_.push_back(*action);
        if (!action->scheduled) run_.actions.push_back(*action);
      }
    }
  } catch (const GivenUp&) {
    throw;
  } catch (const session::SessionError& error) {
    read_fault_ = error.what();
  }
  const auto& closing = store_->closing();
  if (closing && read_fault_.empty() && closing->tick >= last_tick + session::kFrameTicks)
    read_fault_ = "nothing was recorded up to its end";
  if (closing && read_fault_.empty()) marking.finish(closing->tick);
  marking::SheetHead head = session::makeHead(situation_, store_->header());
  head.last_tick = closing && read_fault_.empty() ? store_->lastTick() : last_tick;
  run_.sheet = marking.makeSheet(head);
  run_.marks = marking.marker().marks();
  run_.history = &history_;
  run_.frame_at = [this](std::int64_t tick) {
    return store_->findFrame(tick).value_or(unit::Frame{});
  };
  run_.may_take_again = false;
}

void Opened::readAdded() {
  entries_ = review::readEntries(*store_);
  sheet_ = run_.sheet;
  if (!entries_.empty()) review::applyOverrides(sheet_, *situation_.rules, entries_);
}

void Opened::setCursor(std::int64_t tick) {
  tick = std::clamp<std::int64_t>(tick, 0, lastTick());
  if (tick == cursor_) return;
  cursor_ = tick;
  Q_EMIT cursorMoved(tick);
}

void Opened::setSigner(session::Person by, const session::SigningKey& key) {
  by_ = std::move(by);
  key_ = key;
  Q_EMIT signerChanged();
}

std::optional<std::string> Opened::add(std::vector<review::Content> contents) {
  if (!by_ || !key_) return "nobody has signed on as assessor";
  return addBy(*by_, *key_, std::move(contents));
}

std::optional<std::string> Opened::addBy(const session::Person& by, const session::SigningKey& key,
                                         std::vector<review::Content> contents) {
  try {
    review::addEntries(file_, by, std::move(contents), key);
    store_ = std::make_unique<session::Store>(file_);
    verification_ = session::verifySession(file_);
    readAdded();
  } catch (const session::SessionError& error) {
    return error.what();
  }
  Q_EMIT entriesChanged();
  return std::nullopt;
}

}  // namespace cabwright::review_room
