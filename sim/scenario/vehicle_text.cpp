// SPDX-License-Identifier: GPL-3.0-or-later
// Writes a vehicle file.
#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "fault/fault.h"
#include "scenario/vehicle.h"

namespace cabwright::scenario {

namespace {

struct Row {
  std::string group, field;  ///< "gearbox1.band3", "friction"
  std::string without;       ///< group without its instance number; empty if it has none
  double value;
  std::string_view unit, text;
};

std::string escaped(const std::string& text) {
  std::string out;
  for (char c : text) {
    if (c == '"' || c == '\\') out += '\\';
    if (c == '\n') {
      out += "\\n";
    } else if (static_cast<unsigned char>(c) < 0x20 || c == 0x7f) {
      out += fmt::format("\\u{:04X}", static_cast<unsigned>(c));
    } else {
      out += c;
    }
  }
  return out;
}

// The shortest text that reads back as the same double; always with a point or an exponent, so that
// it stays a float for other TOML readers.
std::string number(double v) {
  std::string text = fmt::format("{}", v);
  if (text.find_first_of(".en") == std::string::npos) text += ".0";
  return text;
}

Row makeRow(const std::string& name, double value, std::string_view unit, std::string_view text) {
  Row row;
  const std::size_t last = name.rfind('.'), first = name.find('.');
  row.group = name.substr(0, last);
  row.field = name.substr(last + 1);
  const char digit = name[first - 1];
  if (digit >= '0' && digit <= '9') {
    row.without = row.group;
    row.without.erase(first - 1, 1);
  }
  row.value = value;
  row.unit = unit;
  row.text = text;
  return row;
}

std::vector<Row> makeRows(const Vehicle& vehicle) {
  std::vector<Row> rows;
  for (const auto& info : plant::parameterTable()) {
    rows.push_back(makeRow(info.name, info.of(vehicle.plant), info.unit, info.text));
  }
  for (const auto& info : unit::unitParameterTable()) {
    rows.push_back(makeRow(info.name, info.of(vehicle.unit), info.unit, info.text));
  }
  return rows;
}

class VehicleWriter {
 public:
  explicit VehicleWriter(std::vector<Row> rows) : rows_(std::move(rows)) {
    for (const Row& r : rows_) {
      if (r.without.empty()) continue;
      const auto [at, is_new] = common_.try_emplace(r.without + "." + r.field, r.value);
      if (!is_new && at->second != r.value) differs_[r.without + "." + r.field] = true;
    }
  }

  std::string write() {
    // What all instances share comes first, under the first of them.
    std::map<std::string, bool> written;
    for (const Row& r : rows_) {
      const std::string& group = r.without.empty() ? r.group : r.without;
      if (!written.emplace(group, true).second) continue;
      writeShared(group);
      if (!r.without.empty()) writeSpecial(group);
    }
    return std::move(text_);
  }

 private:
  [[nodiscard]] bool isSpecial(const Row& r) const {
    return !r.without.empty() && differs_.contains(r.without + "." + r.field);
  }

  void writeShared(const std::string& group) {
    std::map<std::string, bool> done;
    bool head = false;
    for (const Row& r : rows_) {
      if ((r.without.empty() ? r.group : r.without) != group || isSpecial(r)) continue;
      if (!done.emplace(r.field, true).second) continue;
      if (!head) text_ += "\n[" + group + "]\n";
      head = true;
      writeRow(r);
    }
  }

  void writeSpecial(const std::string& group) {
    std::string last;
    for (const Row& r : rows_) {
      if (r.without != group || !isSpecial(r)) continue;
      if (r.group != last) text_ += "\n[" + r.group + "]\n";
      last = r.group;
      writeRow(r);
    }
  }

  void writeRow(const Row& r) {
    const std::string set = r.field + " = " + number(r.value);
    const std::string unit = r.unit.empty() ? "" : std::string(r.unit) + ": ";
    text_ += fmt::format("{:<32} # {}{}\n", set, unit, r.text);
  }

  std::vector<Row> rows_;
  std::map<std::string, double> common_;
  std::map<std::string, bool> differs_;
  std::string text_;
};

}  // namespace

std::string vehicleText(const Vehicle& vehicle) {
  std::string text =
      "# SPDX-License-Identifier: GPL-3.0-or-later\n"
      "# A vehicle: every number of the machine and of its switches, with unit and meaning. A "
      "group\n"
      "# without a number, [engine], speaks of all of its kind; [engine2] of one, and wins. What "
      "a\n"
      "# file leaves out is as in the standard vehicle; values may carry their unit: \"95 psi\".\n";
  text += "title = \"" + escaped(vehicle.title) + "\"\n";
  text += "text = \"" + escaped(vehicle.text) + "\"\n";
  return text + VehicleWriter(makeRows(vehicle)).write();
}

}  // namespace cabwright::scenario
