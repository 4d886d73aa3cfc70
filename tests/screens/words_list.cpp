// SPDX-License-Identifier: GPL-3.0-or-later
// Writes the words of tables and exercises as source text, for lupdate to find them:
//   words_to_translate OUT.cpp
#include <cstdio>
#include <exception>
#include <fstream>

#include "table_words.h"

namespace {

std::string quoted(const std::string& words) {
  std::string text = "\"";
  for (const char c : words) {
    if (c == '"' || c == '\\') text += '\\';
    text += c;
  }
  return text + '"';
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 2) {
    std::fprintf(stderr, "words_to_translate OUT.cpp\n");
    return 2;
  }
  try {
    std::ofstream out(argv[1]);
    out << "// SPDX-License-Identifier: GPL-3.0-or-later\n// Written by words_to_translate.\n";
    for (const auto& [context, words] :
         cabwright::testing_ui::collectAllWords(CABWRIGHT_SOURCE_DIR))
      out << "QT_TRANSLATE_NOOP(\"" << context << "\", " << quoted(words) << ")\n";
    return out.flush() ? 0 : 1;
  } catch (const std::exception& fault) {
    std::fprintf(stderr, "%s\n", fault.what());
    return 1;
  }
}
