// SPDX-License-Identifier: GPL-3.0-or-later
// The translation context of the mechanism's words.
#pragma once

#include <QCoreApplication>

namespace cabwright::mechanism {

class Words {
  Q_DECLARE_TR_FUNCTIONS(Mechanism)
};

}  // namespace cabwright::mechanism
