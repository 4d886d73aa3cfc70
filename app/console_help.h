// SPDX-License-Identifier: GPL-3.0-or-later
// The texts of --help.
#pragma once

#include <string>

namespace cabwright::console {

std::string helpOfProgram();
std::string helpWithExamples();
std::string helpOfCheck();
std::string helpOfRun();
std::string helpOfMark();
std::string helpOfReplay();
std::string helpOfTrace();
std::string helpOfVerify();
std::string helpOfErase();
std::string helpOfSeal();
std::string helpOfKey();
std::string helpOfFaults();
std::string helpOfExport();

/// The caution of the program, one paragraph.
std::string caution();

}  // namespace cabwright::console
