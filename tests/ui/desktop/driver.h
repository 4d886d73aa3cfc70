// SPDX-License-Identifier: GPL-3.0-or-later
// Does the lines of a script at the desk, as somebody would: with nothing but a mouse, or with
// nothing but keys. What cannot be done so fails, and says what.
#pragma once

#include <memory>
#include <optional>
#include <string>

#include "desk.h"
#include "scenario/script.h"

namespace cabwright::tests {

class Hand {
 public:
  explicit Hand(Desk& desk) : desk_(desk) {}
  virtual ~Hand() = default;
  Hand(const Hand&) = delete;
  Hand& operator=(const Hand&) = delete;

  /// Empty: done.
  [[nodiscard]] std::optional<std::string> perform(const unit::Action& action);

 protected:
  [[nodiscard]] Desk& desk() const { return desk_; }
  virtual bool look(unit::Item item) = 0;
  virtual bool judge(unit::Item item, unit::Verdict verdict, unit::DefectClass rank) = 0;
  virtual bool walk(unit::Place place) = 0;
  virtual bool say(unit::Phrase phrase) = 0;
  virtual bool note(const std::string& what, const std::string& figure) = 0;
  virtual bool ring(unit::Control bell, const std::string& code) = 0;
  /// `verb`: take, insert, put.
  virtual bool useThing(const std::string& verb, unit::Object object) = 0;
  virtual bool set(unit::Control control, double value) = 0;
  virtual bool hold(unit::Control control, std::optional<double> value) = 0;
  virtual bool release(unit::Control control) = 0;
  virtual void turnRound() = 0;

  /// The part of that name on the plate; turns round for it where it is behind.
  template <class P>
  [[nodiscard]] P* partOf(std::string_view name) {
    if (auto* part = desk_.find<P>(name)) return part;
    if (unit::cabOf(desk_.seat().place()) < 0) return nullptr;
    turnRound();
    desk_.settle();
    return desk_.find<P>(name);
  }
  /// How the panel words what is to be done with a thing.
  [[nodiscard]] static QString wordsOf(const std::string& verb, unit::Object object);
  [[nodiscard]] static int rowOf(const QListWidget& list, const QString& words);

 private:
  bool performHands(const unit::Action& action);
  Desk& desk_;
};

[[nodiscard]] std::unique_ptr<Hand> makeMouse(Desk& desk);
[[nodiscard]] std::unique_ptr<Hand> makeKeys(Desk& desk);

/// Plays a script of an exercise from its beginning. Empty: it came to its end.
[[nodiscard]] std::optional<std::string> play(Desk& desk, Hand& hand, const std::string& exercise,
                                              const std::string& script);

}  // namespace cabwright::tests
