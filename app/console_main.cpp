// SPDX-License-Identifier: GPL-3.0-or-later
// The console program of Cabwright. Everything it does is in console_*.cpp and in sim/.
#include <exception>
#include <new>

#include "console_output.h"
#include "console_program.h"

int main(int count, char** words) {
  using namespace cabwright::console;
  Output output;
  try {
    return output.finish(runConsole(output, count, words));
  } catch (const std::bad_alloc&) {
    output.fault("cabwright-console: out of memory");
  } catch (const std::exception& error) {
    output.fault(std::string("cabwright-console: a fault of the program itself: ") + error.what());
  }
  return output.finish(kBroken);
}
