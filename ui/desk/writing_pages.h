// SPDX-License-Identifier: GPL-3.0-or-later
// The pages of "Write a scenario", each made of plain forms over the sections of the draft.
#pragma once

#include <QCoreApplication>
#include <QWidget>

#include "desk/writing.h"

namespace cabwright::desk {

class WritingPages {
  Q_DECLARE_TR_FUNCTIONS(WritingPages)
 public:
  /// Vehicle, route, where it stands, who is there, how it is taken.
  [[nodiscard]] static QWidget* makeSituation(Writing& writing, QWidget* parent);
  [[nodiscard]] static QWidget* makeConditions(Writing& writing, QWidget* parent);
  /// Controls, loose things, numbers of the machine and of the vehicle.
  [[nodiscard]] static QWidget* makeThings(Writing& writing, QWidget* parent);
  [[nodiscard]] static QWidget* makePeople(Writing& writing, QWidget* parent);
  [[nodiscard]] static QWidget* makeHidden(Writing& writing, QWidget* parent);
  [[nodiscard]] static QWidget* makeMarking(Writing& writing, QWidget* parent);
  /// The guide: shared ones, and steps of this exercise's own.
  [[nodiscard]] static QWidget* makeGuide(Writing& writing, QWidget* parent);
  [[nodiscard]] static QWidget* makeWords(Writing& writing, QWidget* parent);
};

}  // namespace cabwright::desk
