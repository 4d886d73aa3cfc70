// SPDX-License-Identifier: GPL-3.0-or-later
// The plant's code must not know the figures it is judged by, nor the names of faults: it could
// answer the tests without any physics. Figures belong to the parameter list and to the start.
#include <gtest/gtest.h>

#include <cctype>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>
#include <string>
#include <vector>

namespace cabwright::testing {
namespace {

namespace fs = std::filesystem;

std::string readFile(const fs::path& path) {
  std::ifstream in(path);
  std::stringstream text;
  text << in.rdbuf();
  return text.str();
}

// Code without comments, strings and character constants.
std::string stripText(const std::string& s) {
  std::string out;
  for (std::size_t k = 0; k < s.size(); ++k) {
    if (s.compare(k, 2, "//") == 0) {
      while (k < s.size() && s[k] != '\n') ++k;
    } else if (s.compare(k, 2, "/*") == 0) {
      k = s.find("*/", k) + 1;
    } else if (s[k] == '"') {
      for (++k; k < s.size() && s[k] != '"'; ++k) k += s[k] == '\\';
      out += "\"\"";
      continue;
    }
    if (k < s.size()) out += s[k];
  }
  return out;
}

std::vector<std::string> splitTokens(const std::string& code) {
  std::vector<std::string> tokens;
  std::string now;
  for (std::size_t k = 0; k < code.size(); ++k) {
    const char c = code[k];
    const bool exponent = (c == '-' || c == '+') && !now.empty() &&
                          std::isdigit(static_cast<unsigned char>(now[0])) &&
                          (now.back() == 'e' || now.back() == 'E');
    if (std::isalnum(static_cast<unsigned char>(c)) || c == '_' || c == '.' || exponent) {
      now += c;
    } else if (!now.empty()) {
      tokens.push_back(now);
      now.clear();
    }
  }
  return tokens;
}

std::vector<fs::path> plantFiles() {
  std::vector<fs::path> files;
  for (const auto& e : fs::directory_iterator(fs::path(CABWRIGHT_SOURCE_DIR) / "sim" / "plant")) {
    const std::string name = e.path().filename().string();
    const bool source = e.path().extension() == ".cpp" || e.path().extension() == ".h";
    if (source && name != "parameter_list.h" && name.rfind("start_conditions", 0) != 0) {
      files.push_back(e.path());
    }
  }
  return files;
}

// Figures of the acceptance table and of the trade's instruments, in every unit they are told in.
const std::set<double>& judgedFigures() {
  static const std::set<double> figures{75.0, 82.0,  95.0,   21.0,   21.25, 20.5, 45.0,  27.0,
                                        70.0, 65.0,  1750.0, 0.85,   13.5,  63.0, 110.0, 92.0,
                                        28.0, 115.0, 420.0,  1800.0, 2.75,  97.0, 0.457};
  return figures;
}

// Where such a number means something else.
bool isHarmless(const std::string& file, double v) {
  // The speeds at which the parameter list gives the torque curve: brake_nm_420 and so on.
  if (file == "engine.cpp") return v == 420.0 || v == 1800.0;
  return false;
}

TEST(Source, KnowsNoFigureItIsJudgedBy) {
  const std::vector<fs::path> files = plantFiles();
  ASSERT_GT(files.size(), 20u);
  for (const fs::path& path : files) {
    for (const std::string& token : splitTokens(stripText(readFile(path)))) {
      if (!std::isdigit(static_cast<unsigned char>(token[0]))) continue;
      char* rest = nullptr;
      const double v = std::strtod(token.c_str(), &rest);
      if (judgedFigures().count(v) == 0 || isHarmless(path.filename().string(), v)) continue;
      ADD_FAILURE() << path.filename().string() << " holds the figure " << token;
    }
  }
}

TEST(Source, KnowsNoFault) {
  const std::vector<std::string> words{"fault",    "symptom",  "defect", "broken",
                                       "scripted", "scenario", "lesson", "trainee"};
  for (const fs::path& path : plantFiles()) {
    const std::string name = path.filename().string();
    // Faults of a file's numbers, not of the machine.
    if (name.rfind("parameters", 0) == 0) continue;
    for (std::string token : splitTokens(stripText(readFile(path)))) {
      for (char& c : token) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
      // A C++ keyword, and the check of a file's numbers.
      if (token == "default" || token == "findparameterfaults" || token == "faults" ||
          token == "faults.empty" || token == "faults.front") {
        continue;
      }
      for (const std::string& word : words) {
        EXPECT_EQ(token.find(word), std::string::npos) << name << " speaks of " << token;
      }
    }
  }
}

TEST(Source, ScanSeesWhatItLooksFor) {
  const std::string code = stripText("x = 75.0; // 21\nconst char* s = \"95\"; y(21.25e0 + a82);");
  std::set<double> seen;
  for (const std::string& token : splitTokens(code)) {
    if (std::isdigit(static_cast<unsigned char>(token[0]))) seen.insert(std::stod(token));
  }
  EXPECT_EQ(seen, (std::set<double>{75.0, 21.25}));
}

}  // namespace
}  // namespace cabwright::testing
