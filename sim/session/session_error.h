// SPDX-License-Identifier: GPL-3.0-or-later
// What goes wrong with a session file, in one line a person can act on.
#pragma once

#include <stdexcept>

namespace cabwright::session {

/// Thrown by everything that opens, writes or reads a session file. what() is one line that begins
/// with the file's name: "night.cabsession: the disk is full".
class SessionError : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

}  // namespace cabwright::session
