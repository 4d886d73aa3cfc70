// SPDX-License-Identifier: GPL-3.0-or-later
#include "console_stop.h"

#include <csignal>
#include <initializer_list>

namespace cabwright::console {
namespace {

// The one thing a signal handler may write to; there is no object to hand it.
volatile std::sig_atomic_t stop_signal = 0;

void noteStop(int number) { stop_signal = number; }

}  // namespace

void watchForStop() {
  struct sigaction action = {};
  action.sa_handler = noteStop;
  action.sa_flags = static_cast<int>(SA_RESETHAND | SA_RESTART);
  for (const int number : {SIGINT, SIGTERM, SIGHUP}) sigaction(number, &action, nullptr);
}

int findStopSignal() { return stop_signal; }

}  // namespace cabwright::console
