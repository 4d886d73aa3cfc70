// SPDX-License-Identifier: GPL-3.0-or-later
#include "console_help.h"

namespace cabwright::console {

std::string caution() {
  return "Caution: a training aid only. It is generic, models no particular vehicle and gives no\n"
         "authority to drive. The operator's rule book, the vehicle's own manual and a licensed\n"
         "instructor or assessor decide. Working around stabled trains, rotating shafts,\n"
         "compressed air and moving vehicles kills people.";
}

std::string helpOfProgram() {
  return "Cabwright - preparing and driving a diesel multiple unit with mechanical transmission,\n"
         "as physics, without a screen. A scenario says how the unit stands and what is wrong\n"
         "with it; a script says what somebody does; the run is marked rule by rule.\n";
}

std::string helpWithExamples() {
  return "Examples, from nothing to a mark that can be defended:\n"
         "  cabwright-console check scenarios/*/scenario.toml\n"
         "      every fault in a file at once, with line and column\n"
         "  cabwright-console run cold-preparation --script good --record night.cabsession\n"
         "      a shipped exercise by its name, with the script good.txt beside it\n"
         "  cabwright-console mark night.cabsession\n"
         "      the same marks from the recording, by whoever marks it\n"
         "  cabwright-console replay night.cabsession\n"
         "      runs it again from its actions: identical, or where it first differs\n"
         "  cabwright-console verify night.cabsession\n"
         "      sealed and whole, altered and where, or not sealed\n"
         "  cabwright-console trace cold-preparation --script good \\\n"
         "      --signals cab1.air,true.train_pipe --every 1 > air.csv\n"
         "      what the gauge showed and what was true, for a chart\n"
         "  cabwright-console trace --signals help\n"
         "      every signal with its unit and meaning\n"
         "  cabwright-console faults\n"
         "      what can be put wrong, how it shows, and what is right to do\n"
         "\n"
         "Exit code: 0 passed, or all is well; 1 failed, or differs; 2 bad input, one line for\n"
         "each fault on standard error; 128 + n when signal n ended a run. What verify says has\n"
         "codes of its own besides: 3 altered, 4 not sealed.\n"
         "Shipped exercises are looked for in --data, in CABWRIGHT_DATA, beside the program and\n"
         "where it was installed.\n"
         "\n" +
         caution();
}

std::string helpOfCheck() {
  return "The kind of a file is told by what is in it: TOML with [[rule]], a vehicle, a route or "
         "a\n"
         "scenario, or a script of actions. A folder stands for its scenario.toml. A script that\n"
         "begins with \"as good\" is the good.txt beside it but for the edits that follow.\n"
         "Exit code: 0 good, 2 faults, each as file:line:column: what was found, what is allowed.\n"
         "\n"
         "Example:  cabwright-console check my-exercise/scenario.toml my-exercise/good.txt";
}

std::string helpOfRun() {
  return "Prints the mark sheet: criticals first, each line with what had to be done, what was\n"
         "done, when, and by how much. Exit code: 0 passed, 1 failed, 2 bad input.\n"
         "With --record the session is written as it goes: if the program is killed, at most one\n"
         "second of the run is lost. Ctrl-C ends the run and closes the session.\n"
         "\n"
         "Example:  cabwright-console run cold-preparation --script good --record a.cabsession";
}

std::string helpOfMark() {
  return "Marks from what was recorded, with the rules kept in the session; nothing is run again.\n"
         "A session that was cut off is marked as far as it goes. Exit code as for run. Of many, "
         "all\n"
         "processors at work, one that is broken is said and stops nothing; exit code 0 when none\n"
         "was, whatever was passed or failed, and 2 when one was. With --out a run that was\n"
         "stopped goes on where it was; what was broken is tried again and gets another line.\n"
         "\n"
         "Example:  cabwright-console mark a.cabsession --json > sheet.json\n"
         "          cabwright-console mark sessions --json --out marks.jsonl";
}

std::string helpOfReplay() {
  return "Prints \"identical\" (exit code 0), or the first tick and quantity that differ (1). A\n"
         "difference means another version of the program, or a recording that was changed.\n"
         "\n"
         "Example:  cabwright-console replay a.cabsession";
}

std::string helpOfTrace() {
  return "Names that begin with \"plant.\" are true values straight from the machine; the others\n"
         "are what a frame holds: what was shown, what was true, what was done.\n"
         "\n"
         "Example:  cabwright-console trace cold-preparation --script good \\\n"
         "              --signals time,cab1.air,plant.line1.crank --every 0.5";
}

std::string helpOfVerify() {
  return "Reads every row and every byte. Exit code: 0 sealed and whole; 3 altered, with the "
         "first\n"
         "row that no longer fits, or what was cut off or added; 4 not sealed, or with --trust\n"
         "signed by a key that is not trusted; 2 not a session. What was added after the seal\n"
         "is listed.\n"
         "A seal says that nobody without the station's key has changed it since; that what was\n"
         "recorded follows from what was done is proved by replay.\n"
         "\n"
         "Example:  cabwright-console verify a.cabsession --trust stations.txt";
}

std::string helpOfSeal() {
  return "An assessment is sealed when it ends; this is for any other session that has to be\n"
         "defended, and for one that was cut off. Every row is gone through first: what does not\n"
         "fit is not sealed. The seal is made with this station's key and says that it was made\n"
         "on request. Exit code: 0 sealed; 2 it was sealed already, or is no whole session.\n"
         "\n"
         "Example:  cabwright-console seal a.cabsession";
}

std::string helpOfKey() {
  return "One line for each: 64 hexadecimal digits and a name, first this station's, then those\n"
         "of the people who sign at it. The station's is made when it is first asked for. Lines\n"
         "of several stations in one file are what verify --trust takes.\n"
         "\n"
         "Example:  cabwright-console key >> stations.txt";
}

std::string helpOfFaults() {
  return "Of each its name, where it lives and what is wrong there, its size, the symptom that is\n"
         "to be found, and the right decision. A scenario or script puts it in by that name.\n"
         "\n"
         "Example:  cabwright-console faults --json > faults.json";
}

std::string helpOfErase() {
  return "The names stand in a table of their own and are overwritten there; seal, marks and "
         "replay\n"
         "stay what they were. What was written as free text (remarks, comments, reasons) is not\n"
         "looked into, and copies elsewhere are not known.\n"
         "\n"
         "Example:  cabwright-console erase a.cabsession --erase-names-for-good";
}

std::string helpOfExport() {
  return "--csv gives two tables: what was done, and every signal as recorded. Text that a\n"
         "spreadsheet would run as a formula gets an apostrophe in front. --html gives the mark\n"
         "sheet with its evidence, for the screen and for paper. --pdf gives it on A4 with charts "
         "and\n"
         "pictures of the deciding moments; it is drawn by the desktop program, which has to be\n"
         "installed beside this one (no screen is needed). --xapi gives statements of the\n"
         "Experience API 1.0.3, with the same ids whenever the same session is exported. Files\n"
         "that are there are not overwritten.\n"
         "\n"
         "Example:  cabwright-console export a.cabsession --pdf a.pdf --csv a --xapi a.json";
}

}  // namespace cabwright::console
