// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/csv.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace cabwright::review {
namespace {

bool isNumber(std::string_view text) {
  double number = 0;
  const char* end = text.data() + text.size();
  const auto read = std::from_chars(text.data() + (text.starts_with('+') ? 1 : 0), end, number);
  return read.ec == std::errc() && read.ptr == end;
}

// As the text of an action has it in front; the trainee is not named there.
std::string nameOf(unit::Actor actor) {
  if (actor == unit::Actor::kTrainee) return "trainee";
  const std::string text = unit::toText({actor, "x", "", ""});
  return text.substr(0, text.find(':'));
}

class ActionLines final : public session::Witness {
 public:
  explicit ActionLines(std::ostream& out) : out_(out) {
    out_ << "tick,time_s,number,by,scheduled,verb,object,argument\n";
  }
  void seeFrame(const unit::Frame&) override {}
  void seeHash(const session::StateHash&) override {}
  void seeAction(const session::TimedAction& timed) override {
    const unit::Action& action = timed.action;
    out_ << fmt::format("{},{:.2f},{},{},{},{},{},{}\n", timed.tick,
                        static_cast<double>(timed.tick) * 0.01, timed.number,
                        csvField(nameOf(action.actor)), timed.scheduled ? 1 : 0,
                        csvField(action.verb), csvField(action.object), csvField(action.argument));
  }

 private:
  std::ostream& out_;
};

class SignalLines final : public session::Witness {
 public:
  SignalLines(std::ostream& out, const std::vector<unit::Signal>& missing, std::int64_t every)
      : out_(out), every_(std::max(every, session::kFrameTicks)) {
    out_ << "tick,time_s";
    for (const unit::SignalInfo& info : unit::signalTable()) {
      if (std::ranges::find(missing, info.id) != missing.end()) continue;
      signals_.push_back(info.id);
      const std::string unit = info.unit.empty() ? "" : fmt::format(" [{}]", info.unit);
      out_ << ',' << csvField(std::string(info.name) + unit);
    }
    out_ << '\n';
  }
  void seeAction(const session::TimedAction&) override {}
  void seeHash(const session::StateHash&) override {}
  void seeFrame(const unit::Frame& frame) override {
    if (frame.tick % session::kFrameTicks != 0 || frame.tick < next_) return;
    next_ = (frame.tick / every_ + 1) * every_;
    fmt::memory_buffer line;
    fmt::format_to(std::back_inserter(line), "{},{:.2f}", frame.tick,
                   static_cast<double>(frame.tick) * 0.01);
    for (const unit::Signal signal : signals_)
      fmt::format_to(std::back_inserter(line), ",{}", frame[signal]);
    line.push_back('\n');
    out_.write(line.data(), static_cast<std::streamsize>(line.size()));
  }

 private:
  std::ostream& out_;
  std::int64_t every_, next_ = 0;
  std::vector<unit::Signal> signals_;
};

}  // namespace

std::string csvField(std::string_view text) {
  const bool runs =
      !text.empty() && std::string_view("=+-@\t\r").find(text[0]) != std::string_view::npos;
  std::string field(runs && !isNumber(text) ? "'" : "");
  field += text;
  if (field.find_first_of(",\"\r\n") == std::string::npos) return field;
  std::string quoted = "\"";
  for (const char c : field) quoted += c == '"' ? "\"\"" : std::string(1, c);
  return quoted + "\"";
}

void writeActionsCsv(const session::Store& store, std::ostream& out) {
  ActionLines lines(out);
  store.show(lines);
}

void writeSignalsCsv(const session::Store& store, std::ostream& out, std::int64_t every_ticks) {
  SignalLines lines(out, store.missingSignals(), every_ticks);
  store.show(lines);
}

}  // namespace cabwright::review
