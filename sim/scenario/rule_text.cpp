// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/rule_text.h"

#include <algorithm>
#include <array>
#include <map>

#include "scenario/quantity_text.h"
#include "scenario/rule_reader.h"

namespace cabwright::scenario {

namespace {

enum class Form : std::uint8_t {
  kText,
  kTexts,
  kClass,
  kReads,
  kPoints,
  kSeconds,
  kWindow,
  kTimes,
  kRepeated,
  kFlag,
};

struct RuleKey {
  std::string_view name;
  Form form;
  Need need = Need::kMay;
};

constexpr std::array<RuleKey, 34> kKeys{{{"title", Form::kText, Need::kMust},
                                         {"first_only", Form::kFlag},
                                         {"must_occur", Form::kFlag},
                                         {"reason", Form::kText, Need::kMust},
                                         {"kind", Form::kText, Need::kMust},
                                         {"phase", Form::kText},
                                         {"advice", Form::kText},
                                         {"class", Form::kClass},
                                         {"weight", Form::kPoints},
                                         {"reads", Form::kReads},
                                         {"a", Form::kText},
                                         {"b", Form::kText},
                                         {"a_name", Form::kText},
                                         {"b_name", Form::kText},
                                         {"steps", Form::kTexts},
                                         {"step_names", Form::kTexts},
                                         {"reset", Form::kText},
                                         {"reset_name", Form::kText},
                                         {"condition", Form::kText},
                                         {"condition_name", Form::kText},
                                         {"during", Form::kText},
                                         {"during_name", Form::kText},
                                         {"within", Form::kWindow},
                                         {"for", Form::kSeconds},
                                         {"times", Form::kTimes},
                                         {"measure", Form::kText},
                                         {"by", Form::kPoints},
                                         {"tolerance", Form::kText},
                                         {"inside", Form::kText},
                                         {"slack", Form::kSeconds},
                                         {"falls_to", Form::kClass},
                                         {"follows", Form::kTexts},
                                         {"repeated", Form::kRepeated},
                                         {"repeated_class", Form::kClass}}};
constexpr std::size_t kMostRules = 2000;
constexpr std::array<std::string_view, 6> kClasses{"C",       "S",        "T",
                                                   "serious", "critical", "technique"};
constexpr std::array<std::string_view, 2> kReads{"shown", "true"};

std::optional<double> readSeconds(const toml::node& node, std::string_view key, FaultSink& sink) {
  return readNumberNode(node, key, "s", {0.0, 1e6}, sink);
}

class RuleFields {
 public:
  explicit RuleFields(TableReader& table) : table_(table) {}

  void readAll(RuleText& rule, bool is_change) {
    for (const RuleKey& key : kKeys) {
      if (auto field = read(key, is_change)) rule.fields.push_back(std::move(*field));
    }
    checkNames(rule);
  }

 private:
  std::optional<RuleField> read(const RuleKey& key, bool is_change) {
    const Need need = is_change ? Need::kMay : key.need;
    RuleField field{std::string(key.name), 0.0, table_.placeOfValue(key.name), {}, {}};
    switch (key.form) {
      case Form::kText:
        return readText(std::move(field), need);
      case Form::kTexts:
        return readTexts(std::move(field));
      case Form::kClass:
        return readWord(std::move(field), kClasses);
      case Form::kReads:
        return readWord(std::move(field), kReads);
      case Form::kPoints:
        return readNumber(std::move(field), table_.number(key.name, "", {0.0, 1e6}));
      case Form::kSeconds:
        return readNumber(std::move(field), table_.number(key.name, "s", {0.0, 1e6}));
      case Form::kTimes:
        return readWhole(std::move(field), 0);
      case Form::kRepeated:
        return readWhole(std::move(field), 2);
      case Form::kWindow:
        return readWindow(std::move(field));
      case Form::kFlag:
        return readFlag(std::move(field));
    }
    return std::nullopt;
  }

  void addText(RuleField& field, const std::string& text, const FilePlace& at) {
    field.inside.push_back(findTextPlaces(table_.sink(), at, text));
  }

  std::optional<RuleField> readText(RuleField field, Need need) {
    auto text = table_.text(field.key, need);
    if (!text) return std::nullopt;
    addText(field, *text, field.at);
    field.value = std::move(*text);
    return field;
  }

  std::optional<RuleField> readTexts(RuleField field) {
    if (!table_.has(field.key)) {
      (void)table_.find(field.key);
      return std::nullopt;
    }
    std::vector<std::string> texts;
    for (TableReader::Text& item : table_.texts(field.key)) {
      addText(field, item.text, item.at);
      field.items.push_back(item.at);
      texts.push_back(std::move(item.text));
    }
    field.value = std::move(texts);
    return field;
  }

  std::optional<RuleField> readWord(RuleField field, std::span<const std::string_view> allowed) {
    const auto word = table_.word(field.key, allowed);
    if (!word) return std::nullopt;
    field.value = std::string(allowed[*word]);
    return field;
  }

  std::optional<RuleField> readFlag(RuleField field) {
    const auto flag = table_.flag(field.key);
    if (!flag) return std::nullopt;
    field.value = *flag;
    return field;
  }

  static std::optional<RuleField> readNumber(RuleField field, std::optional<double> value) {
    if (!value) return std::nullopt;
    field.value = *value;
    return field;
  }

  std::optional<RuleField> readWhole(RuleField field, std::int64_t lowest) {
    const auto value = table_.whole(field.key, lowest, 1'000'000);
    if (!value) return std::nullopt;
    field.value = static_cast<double>(*value);
    return field;
  }

  std::optional<RuleField> readWindow(RuleField field) {
    const toml::node* node = table_.find(field.key);
    if (!node) return std::nullopt;
    std::vector<double> window;
    const auto* list = node->as_array();
    if (!list) {
      const auto value = readSeconds(*node, field.key, table_.sink());
      if (!value) return std::nullopt;
      window = {0.0, *value};
    } else {
      for (const toml::node& item : *list) {
        const auto value = readSeconds(item, field.key, table_.sink());
        if (!value) return std::nullopt;
        field.items.push_back(placeOf(table_.sink(), item.source()));
        window.push_back(*value);
      }
    }
    const bool sound = window.size() == 1 || (window.size() == 2 && window[0] <= window[1]);
    if (!sound) {
      table_.sink().add(field.at,
                        "'within' is [lo, hi] with lo not above hi, or [lo], or one number: "
                        "from 0 to it");
      return std::nullopt;
    }
    field.value = std::move(window);
    return field;
  }

  void checkNames(const RuleText& rule) {
    const std::size_t steps = rule.texts("steps").size(), names = rule.texts("step_names").size();
    if (names == 0 || names == steps || !rule.find("steps")) return;
    table_.sink().add(table_.placeOfValue("step_names"),
                      std::to_string(names) + " 'step_names' for " + std::to_string(steps) +
                          " 'steps'; allowed: as many");
  }

  TableReader& table_;
};

RuleText readAny(TableReader& table, std::string_view id_key, bool is_change) {
  RuleText rule;
  const std::size_t before = table.sink().count();
  rule.at = table.placeOfValue(id_key);
  rule.id = table.text(id_key, Need::kMust).value_or("");
  RuleFields(table).readAll(rule, is_change);
  table.finish();
  rule.is_whole = table.sink().count() == before && !table.isLenient();
  return rule;
}

bool isRuleId(const std::string& id) {
  return id.size() <= 60 && std::all_of(id.begin(), id.end(), [](char c) {
           return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
                  c == '-' || c == '_' || c == '.';
         });
}

}  // namespace

RuleText readRule(TableReader& table) {
  RuleText rule = readAny(table, "id", false);
  if (!isRuleId(rule.id)) {
    rule.is_whole = false;
    table.sink().add(rule.at, "'" + printable(rule.id) +
                                  "' found; allowed in an id: letters, digits, '-', '_', '.'");
  }
  return rule;
}

RuleText readRuleChange(TableReader& table) { return readAny(table, "rule", true); }

std::vector<RuleText> readRules(TableReader& root) {
  std::vector<RuleText> rules;
  std::map<std::string, FilePlace> first;
  std::vector<TableReader> tables = root.tables("rule");
  if (tables.size() > kMostRules) {
    root.sink().add(root.placeOfKey("rule"), "more than 2000 of [[rule]]");
    return rules;
  }
  for (TableReader& table : tables) {
    RuleText rule = readRule(table);
    const auto [at, is_new] = first.try_emplace(rule.id, rule.at);
    if (!is_new && !rule.id.empty()) {
      rule.is_whole = false;
      root.sink().add(rule.at, "the id '" + rule.id + "' is taken by the rule of line " +
                                   std::to_string(at->second.line));
    }
    rules.push_back(std::move(rule));
  }
  return rules;
}

void applyChange(const RuleText& change, RuleText& rule) {
  for (const RuleField& field : change.fields) {
    const auto at = std::find_if(rule.fields.begin(), rule.fields.end(),
                                 [&](const RuleField& f) { return f.key == field.key; });
    if (at == rule.fields.end()) {
      rule.fields.push_back(field);
    } else {
      *at = field;
    }
  }
  rule.is_whole = rule.is_whole && change.is_whole;
}

const RuleField* RuleText::find(std::string_view key) const {
  for (const RuleField& field : fields) {
    if (field.key == key) return &field;
  }
  return nullptr;
}

std::string RuleText::text(std::string_view key) const {
  const RuleField* field = find(key);
  const auto* value = field ? std::get_if<std::string>(&field->value) : nullptr;
  return value ? *value : std::string();
}

std::optional<double> RuleText::number(std::string_view key) const {
  const RuleField* field = find(key);
  const auto* value = field ? std::get_if<double>(&field->value) : nullptr;
  return value ? std::optional(*value) : std::nullopt;
}

bool RuleText::flag(std::string_view key) const {
  const RuleField* field = find(key);
  const auto* value = field ? std::get_if<bool>(&field->value) : nullptr;
  return value && *value;
}

std::vector<std::string> RuleText::texts(std::string_view key) const {
  const RuleField* field = find(key);
  const auto* value = field ? std::get_if<std::vector<std::string>>(&field->value) : nullptr;
  return value ? *value : std::vector<std::string>();
}

std::vector<double> RuleText::numbers(std::string_view key) const {
  const RuleField* field = find(key);
  const auto* value = field ? std::get_if<std::vector<double>>(&field->value) : nullptr;
  return value ? *value : std::vector<double>();
}

FilePlace RuleText::placeOf(std::string_view key, std::size_t item, std::size_t offset) const {
  const RuleField* field = find(key);
  if (!field) return at;
  if (item < field->inside.size() && offset < field->inside[item].size()) {
    const TextPlace& place = field->inside[item][offset];
    return {field->at.file, place.line, place.column};
  }
  return item < field->items.size() ? field->items[item] : field->at;
}

RuleFile readRuleFile(const SourceFile& file) {
  FaultSink sink(file);
  const TomlFile toml = parseToml(file, sink);
  TableReader root(toml.root, sink, "a file of rules", toml.broken);
  (void)root.text("title");
  std::vector<RuleText> rules = readRules(root);
  root.finish();
  if (rules.empty() && sink.isEmpty())
    sink.add(1, 1, "a file of rules needs one [[rule]] at least");
  return {std::move(rules), sink.take()};
}

std::variant<std::vector<RuleText>, FileFaults> parseRules(const SourceFile& file,
                                                           const RuleCheck& check) {
  RuleFile read = readRuleFile(file);
  if (check) {
    const FileFaults more = check(read.rules);
    read.faults.insert(read.faults.end(), more.begin(), more.end());
    sortFaults(read.faults);
  }
  if (!read.faults.empty()) return std::move(read.faults);
  return std::move(read.rules);
}

}  // namespace cabwright::scenario
