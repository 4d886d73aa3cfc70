// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/store.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cstdlib>
#include <system_error>

#include "session/frame_code.h"
#include "session/schema.h"
#include "session/session_error.h"
#include "session/store_checks.h"

namespace cabwright::session {
namespace fs = std::filesystem;
namespace {

// A private copy of a session and its journal, gone again with the object.
class ReadableCopy {
 public:
  explicit ReadableCopy(const fs::path& file) {
    std::string folder = (fs::temp_directory_path() / "cabsession-XXXXXX").string();
    if (::mkdtemp(folder.data()) == nullptr)
      throw SessionError(file.string() + ": no room for a copy to read it from");
    folder_ = folder;
    std::error_code failed;
    fs::copy_file(file, copy(file), failed);
    if (failed) throw SessionError(file.string() + ": " + failed.message());
    const std::string journal = file.string() + "-wal";
    if (fs::exists(journal)) fs::copy_file(journal, copy(file).string() + "-wal", failed);
    if (failed) throw SessionError(file.string() + ": " + failed.message());
  }
  ~ReadableCopy() {
    std::error_code ignored;
    fs::remove_all(folder_, ignored);
  }
  ReadableCopy(const ReadableCopy&) = delete;
  ReadableCopy& operator=(const ReadableCopy&) = delete;
  [[nodiscard]] fs::path copy(const fs::path& file) const { return folder_ / file.filename(); }

 private:
  fs::path folder_;
};

std::unique_ptr<ReadableCopy> copyIfNeeded(const fs::path& file) {
  checkOutside(file);
  return needsCopyToRead(file) ? std::make_unique<ReadableCopy>(file) : nullptr;
}

LoadedHeader loadChecked(Database& database, int version) {
  checkInside(database, version);
  return loadHeader(database, version);
}

}  // namespace

struct Store::Impl {
  explicit Impl(const fs::path& file)
      : name(file.string()),
        copy(copyIfNeeded(file)),
        version(readFormatVersion(file)),
        database(Database::openUntrusted(copy ? copy->copy(file) : file, name, hasJournal(file))),
        loaded(loadChecked(database, version)) {
    if (version >= 2) {
      seal = loadSeal(database);
      review = loadReview(database, loaded.known_people);
      checkPeople();
    }
    closing = loadClosing(database, closing_seq, closing_chain);
    std::array<bool, unit::kSignalCount> present{};
    for (const auto& signal : loaded.signals)
      if (signal) present[static_cast<std::size_t>(*signal)] = true;
    for (const unit::SignalInfo& info : unit::signalTable())
      if (!present[static_cast<std::size_t>(info.id)]) missing.push_back(info.id);
  }

  // Nobody is named there who neither took part nor added anything.
  void checkPeople() const {
    for (const KnownPerson& known : loaded.known_people)
      if (!known.took_part &&
          std::ranges::find(review, known.id, &ReviewRow::person) == review.end())
        throw SessionError(name + ": damaged: somebody is named who has no part in it");
  }

  // Recorded values into a frame of this program.
  void place(const std::vector<float>& values, unit::Frame& frame) const {
    for (std::size_t i = 0; i < values.size(); ++i)
      if (loaded.signals[i]) frame[*loaded.signals[i]] = values[i];
  }

  std::string name;
  std::unique_ptr<ReadableCopy> copy;
  int version;
  Database database;
  LoadedHeader loaded;
  std::optional<Seal> seal;
  std::vector<ReviewRow> review;
  std::optional<Closing> closing;
  std::int64_t closing_seq = 0, closing_chain = 0;
  std::vector<unit::Signal> missing;
};

struct Store::Reader::Impl {
  explicit Impl(Store::Impl& given)
      : store(given),
        chain(given.loaded.chain),
        values(given.loaded.signals.size()),
        frames(given.database, "SELECT seq, tick, is_key, data, chain FROM frame ORDER BY seq"),
        actions(given.database,
                "SELECT seq, tick, number, scheduled, text, chain FROM action ORDER BY seq"),
        states(given.database, "SELECT seq, tick, hash, chain FROM state ORDER BY seq") {
    for (Rows* rows : {&frames, &actions, &states}) rows->advance();
  }

  struct Rows {
    Rows(Database& database, std::string_view sql) : statement(database, sql) {}
    void advance() { more = statement.step(); }
    Statement statement;
    bool more = false;
  };

  [[noreturn]] void fail(const std::string& what) const {
    throw SessionError(store.name + ": entry " + std::to_string(seq) + ": " + what);
  }

  void checkChain(std::int64_t stored) const {
    if (chain.stored() != stored) fail("damaged: its check value does not fit");
  }

  void checkTick(std::int64_t at) {
    if (at < tick || at > kMostTicks)
      fail("contradicts itself: tick " + std::to_string(at) + " after tick " +
           std::to_string(tick));
    tick = at;
  }

  bool takeFlag(const Statement& row, int column) const {
    const std::int64_t flag = row.integer(column);
    if (flag != 0 && flag != 1)
      fail("damaged: " + std::to_string(flag) + " where there is yes or no");
    return flag == 1;
  }

  unit::Frame takeFrame(Statement& row) {
    const bool is_key = takeFlag(row, 2);
    const auto data = row.bytes(3);
    addFrame(chain, seq, row.integer(1), is_key, data);
    checkChain(row.integer(4));
    checkTick(row.integer(1));
    if (!is_key && !has_frame) fail("the first frame is not whole");
    const auto fault = is_key ? decodeKeyFrame(data, values) : decodeDeltaFrame(data, values);
    if (fault) fail(*fault);
    has_frame = true;
    unit::Frame frame;
    frame.tick = tick;
    store.place(values, frame);
    return frame;
  }

  TimedAction takeAction(const Statement& row) {
    TimedAction timed{row.integer(1), row.integer(2), takeFlag(row, 3), {}};
    const std::string text = row.text(4);
    addAction(chain, seq, timed, text);
    checkChain(row.integer(5));
    checkTick(timed.tick);
    if (timed.number != ++number)
      fail("contradicts itself: action " + std::to_string(timed.number) + " where action " +
           std::to_string(number) + " belongs");
    auto parsed = unit::parseAction(text);
    if (const auto* fault = std::get_if<std::string>(&parsed)) fail("an action: " + *fault);
    timed.action = std::get<unit::Action>(parsed);
    return timed;
  }

  StateHash takeState(const Statement& row) {
    const StateHash state{row.integer(1), std::bit_cast<std::uint64_t>(row.integer(2))};
    addState(chain, seq, state);
    checkChain(row.integer(3));
    checkTick(state.tick);
    return state;
  }

  void checkEnd() {
    ++seq;
    for (const Rows* rows : {&frames, &actions, &states})
      if (rows->more)
        fail("missing or doubled (another is numbered " +
             std::to_string(rows->statement.integer(0)) + ")");
    if (!store.closing) {
      --seq;
      return;
    }
    if (store.closing_seq != seq) fail("missing");
    addClosing(chain, seq, *store.closing);
    checkChain(store.closing_chain);
    checkTick(store.closing->tick);
  }

  bool isNext(const Rows& rows) const { return rows.more && rows.statement.integer(0) == seq + 1; }

  std::optional<RecordedEvent> next() {
    std::optional<RecordedEvent> event;
    Rows* taken = nullptr;
    for (Rows* rows : {&frames, &actions, &states})
      if (isNext(*rows)) taken = rows;
    if (taken == nullptr) {
      if (!ended) checkEnd();
      ended = true;
      return std::nullopt;
    }
    ++seq;
    if (taken == &frames)
      event = takeFrame(frames.statement);
    else if (taken == &actions)
      event = takeAction(actions.statement);
    else
      event = takeState(states.statement);
    taken->advance();
    return event;
  }

  Store::Impl& store;
  RowChain chain;
  std::vector<float> values;
  Rows frames, actions, states;
  std::int64_t seq = 0, tick = 0, number = 0;
  bool has_frame = false, ended = false;
};

Store::Store(const fs::path& file) : impl_(std::make_unique<Impl>(file)) {}
Store::~Store() = default;
Store::Store(Store&&) noexcept = default;
Store& Store::operator=(Store&&) noexcept = default;

const SessionHeader& Store::header() const { return impl_->loaded.header; }
const std::optional<Closing>& Store::closing() const { return impl_->closing; }
const std::string& Store::name() const { return impl_->name; }
int Store::formatVersion() const { return impl_->version; }
std::size_t Store::erasedPeople() const { return impl_->loaded.erased_people; }
const std::optional<Seal>& Store::seal() const { return impl_->seal; }
const std::vector<ReviewRow>& Store::review() const { return impl_->review; }
const std::vector<unit::Signal>& Store::missingSignals() const { return impl_->missing; }

Store::Reader::Reader(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
Store::Reader::~Reader() = default;
Store::Reader::Reader(Reader&&) noexcept = default;
Store::Reader& Store::Reader::operator=(Reader&&) noexcept = default;
std::optional<RecordedEvent> Store::Reader::next() { return impl_->next(); }
ChainEnd Store::Reader::chainEnd() const { return {impl_->seq, impl_->chain.digest()}; }

Store::Reader Store::read() const { return Reader(std::make_unique<Reader::Impl>(*impl_)); }

void Store::show(Witness& witness) const {
  Reader reader = read();
  while (const auto event = reader.next()) {
    if (const auto* frame = std::get_if<unit::Frame>(&*event)) witness.seeFrame(*frame);
    if (const auto* action = std::get_if<TimedAction>(&*event)) witness.seeAction(*action);
    if (const auto* hash = std::get_if<StateHash>(&*event)) witness.seeHash(*hash);
  }
}

ChainEnd Store::readChainEnd() const {
  Reader reader = read();
  while (reader.next()) continue;
  return reader.chainEnd();
}

std::vector<TimedAction> Store::readActions() const {
  std::vector<TimedAction> actions;
  Reader reader = read();
  while (auto event = reader.next())
    if (auto* action = std::get_if<TimedAction>(&*event)) actions.push_back(std::move(*action));
  return actions;
}

std::optional<unit::Frame> Store::findFrame(std::int64_t tick) const {
  Statement key(impl_->database, "SELECT max(tick) FROM frame WHERE is_key = 1 AND tick <= ?1");
  key.bind(1, tick);
  if (!key.step() || key.isNull(0)) return std::nullopt;
  Statement first(impl_->database, "SELECT max(seq) FROM frame WHERE is_key = 1 AND tick = ?1");
  first.bind(1, key.integer(0)).step();
  Statement rows(impl_->database,
                 "SELECT tick, is_key, data FROM frame WHERE seq >= ?1 ORDER BY seq");
  rows.bind(1, first.integer(0));
  std::vector<float> values(impl_->loaded.signals.size());
  unit::Frame frame;
  while (rows.step() && rows.integer(0) <= tick) {
    const auto data = rows.bytes(2);
    const auto fault =
        rows.integer(1) != 0 ? decodeKeyFrame(data, values) : decodeDeltaFrame(data, values);
    if (fault) throw SessionError(impl_->name + ": " + *fault);
    frame.tick = rows.integer(0);
  }
  impl_->place(values, frame);
  return frame;
}

std::int64_t Store::lastTick() const {
  std::int64_t last = impl_->closing ? impl_->closing->tick : -1;
  for (const char* table : {"frame", "action", "state"}) {
    Statement row(impl_->database,
                  std::string("SELECT tick FROM ") + table + " ORDER BY seq DESC LIMIT 1");
    if (row.step()) last = std::max(last, row.integer(0));
  }
  return last;
}

}  // namespace cabwright::session
