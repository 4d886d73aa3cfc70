// SPDX-License-Identifier: GPL-3.0-or-later
// The plant's code must not know the figures it is judged by, nor the names of faults: it could
// answer the tests without any physics. Figures belong to the parameter list and to the start.
#include <gtest/gtest.h>

#include <cctype>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <string_view>
#include <utility>
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

// Figures of the acceptance table, of the table of changes (seconds, psi, inches, rpm, miles an
// hour, temperatures, slopes) and of the trade's instruments, in every unit they are told in.
const std::set<double>& judgedFigures() {
  static const std::set<double> figures{
      5.0,    15.0,   30.0,  40.0, 45.0,  60.0,       75.0,       80.0,       82.0,
      90.0,   95.0,   95.5,  21.0, 21.1,  21.25,      20.5,       20.8,       19.8,
      27.0,   70.0,   65.0,  66.0, 56.0,  1750.0,     0.85,       13.5,       63.0,
      110.0,  120.0,  150.0, 92.0, 28.0,  115.0,      420.0,      900.0,      1300.0,
      1600.0, 1800.0, 2.75,  97.0, 0.457, 1.0 / 50.0, 1.0 / 80.0, 1.0 / 200.0};
  return figures;
}

// Where such a number means something else, how often, and what.
struct Harmless {
  std::string_view file;
  double figure;
  int times;
  std::string_view means;
};
const std::vector<Harmless>& harmless() {
  static const std::vector<Harmless> all{
      {"electrics.cpp", 80.0, 1, "most passes of a root search"},
      {"engine.cpp", 420.0, 1, "where the list gives the torque curve: brake_nm_420"},
      {"engine.cpp", 1600.0, 1, "the same: brake_nm_1600"},
      {"engine.cpp", 1800.0, 1, "the same: brake_nm_1800"},
      {"engine.cpp", 80.0, 1, "C, where the viscosity ratio is 1"},
      {"engine.cpp", 40.0, 1, "bar, peak cylinder pressure without fuel"},
      {"engine.cpp", 60.0, 1, "exponent beyond which exp is left out"},
      {"engine.cpp", 5.0, 2, "length of a list: throttle positions"},
      {"gas.h", 60.0, 1, "passes of Newton's root"},
      {"locks.h", 0.005, 1, "s, length of a shock"},
      {"rates_air.cpp", 15.0, 1, "1/s, a piston settling on its stop"},
      {"rates_drive.cpp", 5.0, 1, "most ratio that loads the bevel's meshes"},
      {"rates_drive.cpp", 0.02, 1, "m/s, where what sticks at rest is gone"},
      {"rates_engine.cpp", 5.0, 1, "length of a list: throttle positions"},
      {"route.h", 40.0, 2, "m, over which a slope changes"},
      {"running.cpp", 80.0, 1, "Karwatzki's formula"},
      {"running.cpp", 5.0, 1, "Karwatzki's formula"},
      {"step_method.cpp", 60.0, 1, "most tries of a step"},
      {"world.cpp", 30.0, 1, "rad/s, above which an engine turns by itself"},
      {"world_start.cpp", 30.0, 2, "the same"},
      {"world_readings.cpp", 5.0, 1, "times governed speed: out of validity"},
      {"world_readings.cpp", 40.0, 2, "m/s: out of validity; C: cold oil"},
      {"world_readings.cpp", 900.0, 5, "rpm of racing and lugging; K: out of validity"},
  };
  return all;
}

using FigureCount = std::map<std::pair<std::string, double>, int>;

FigureCount countFigures() {
  FigureCount seen;
  for (const fs::path& path : plantFiles()) {
    for (const std::string& token : splitTokens(stripText(readFile(path)))) {
      if (!std::isdigit(static_cast<unsigned char>(token[0]))) continue;
      const double v = std::strtod(token.c_str(), nullptr);
      if (judgedFigures().count(v) > 0) ++seen[{path.filename().string(), v}];
    }
  }
  return seen;
}

TEST(Source, KnowsNoFigureItIsJudgedBy) {
  ASSERT_GT(plantFiles().size(), 20u);
  FigureCount seen = countFigures();
  for (const Harmless& h : harmless()) {
    const auto at = seen.find({std::string(h.file), h.figure});
    EXPECT_EQ(at == seen.end() ? 0 : at->second, h.times)
        << h.file << ": " << h.figure << " (" << h.means << ")";
    if (at != seen.end()) seen.erase(at);
  }
  for (const auto& [where, times] : seen) {
    ADD_FAILURE() << where.first << " holds the figure " << where.second << ", times " << times;
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
