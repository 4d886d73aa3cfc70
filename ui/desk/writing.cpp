// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/writing.h"

#include <utility>
#include <variant>

#include "scenario/scenario_writer.h"
#include "session/kept_moment.h"
#include "session/rule_reader.h"

namespace cabwright::desk {

namespace {

constexpr int kCheckAfterMs = 250;
constexpr std::size_t kMostSteps = 200;

using scenario::DraftSection;

}  // namespace

Writing::Writing(QObject* parent) : QObject(parent) {
  soon_.setSingleShot(true);
  soon_.setInterval(kCheckAfterMs);
  connect(&soon_, &QTimer::timeout, this, [this] { check(); });
  begin();
}

void Writing::setFolders(std::filesystem::path own, std::filesystem::path shipped) {
  own_ = std::move(own);
  shipped_ = std::move(shipped);
  Q_EMIT replaced();
  check();
}

scenario::FolderLibrary Writing::library() const {
  const std::filesystem::path file =
      path_.isEmpty() ? own_ / "new" / "scenario.toml" : std::filesystem::path(path_.toStdString());
  return scenario::FolderLibrary(scenario::findLibraryFolder(file), shipped_);
}

void Writing::note() {
  text_ = scenario::writeDraft(draft_);
  soon_.start();
}

void Writing::change(const std::function<void(scenario::Draft&)>& step) {
  scenario::Draft next = draft_;
  step(next);
  std::string text = scenario::writeDraft(next);
  const bool same = text == text_ && next.saysTheSame(draft_);
  std::swap(draft_, next);
  if (same) return;
  before_.push_back(std::move(next));
  if (before_.size() > kMostSteps) before_.erase(before_.begin());
  text_ = std::move(text);
  soon_.start();
  Q_EMIT changed();
}

bool Writing::undo() {
  if (before_.empty()) return false;
  draft_ = std::move(before_.back());
  before_.pop_back();
  note();
  Q_EMIT replaced();
  return true;
}

void Writing::replace(scenario::Draft draft, const QString& path) {
  draft_ = std::move(draft);
  before_.clear();
  path_ = path;
  note();
  saved_ = text_;
  refusal_.clear();
  Q_EMIT replaced();
  check();
}

void Writing::begin() {
  scenario::Draft draft;
  scenario::DraftTable& head = draft.table(DraftSection::kHead);
  head.set("title", tr("New scenario").toStdString());
  head.set("purpose", tr("What is to be learnt").toStdString());
  head.set("summary", tr("What the trainee is told").toStdString());
  head.set("vehicle", "two-engine-unit");
  head.set("route", "quavelow-branch");
  head.set("mode", "practice");
  draft.table(DraftSection::kStart).set("place", "booking");
  replace(std::move(draft), {});
  saved_.clear();
}

bool Writing::open(const QString& path) {
  refusal_.clear();
  const std::string name = path.toStdString();
  auto loaded = scenario::loadText(name);
  if (const auto* fault = std::get_if<scenario::FileFault>(&loaded)) {
    refusal_ = {*fault};
    return false;
  }
  const auto& file = std::get<scenario::SourceFile>(loaded);
  const scenario::FolderLibrary library(scenario::findLibraryFolder(name), shipped_);
  auto parsed = scenario::parseScenario(file, library, session::findRuleFaults);
  if (auto* faults = std::get_if<scenario::FileFaults>(&parsed)) {
    refusal_ = std::move(*faults);
    return false;
  }
  auto draft = scenario::readDraft(file);
  if (auto* faults = std::get_if<scenario::FileFaults>(&draft)) {
    refusal_ = std::move(*faults);
    return false;
  }
  replace(std::get<scenario::Draft>(std::move(draft)), path);
  return true;
}

bool Writing::save(const QString& path) {
  refusal_.clear();
  if (auto fault = scenario::saveText(path.toStdString(), text_)) {
    refusal_ = {*fault};
    return false;
  }
  path_ = path;
  saved_ = text_;
  // From now on changes are changes of this file.
  auto read = scenario::readDraft({path.toStdString(), text_});
  if (auto* draft = std::get_if<scenario::Draft>(&read)) draft_ = std::move(*draft);
  before_.clear();
  Q_EMIT replaced();
  check();
  return true;
}

std::vector<std::string> Writing::takeMoment(const session::Run& run,
                                             const scenario::LoadedScenario& loaded) {
  std::vector<std::string> not_kept;
  change([&](scenario::Draft& draft) {
    scenario::DraftTable& head = draft.table(DraftSection::kHead);
    head.set("vehicle", loaded.scenario.vehicle);
    head.set("route", loaded.scenario.route);
    not_kept = session::putMoment(draft, run, loaded);
  });
  Q_EMIT replaced();
  check();
  return not_kept;
}

const scenario::FileFaults& Writing::check() {
  soon_.stop();
  const std::string name = path_.isEmpty()
                               ? std::string("scenario.toml")
                               : std::filesystem::path(path_.toStdString()).filename().string();
  faults_ = scenario::findDraftFaults(draft_, name, library(), session::findRuleFaults);
  Q_EMIT checked();
  return faults_;
}

}  // namespace cabwright::desk
