// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/writing_rules.h"

#include <QGridLayout>
#include <QMouseEvent>
#include <algorithm>

#include "cab/names.h"
#include "desk/desk_look.h"

namespace cabwright::desk {

namespace {

using scenario::Draft;
using scenario::DraftSection;
using scenario::DraftTable;

const DraftTable* findUse(const Draft& draft, const std::string& file) {
  for (const DraftTable& use : draft.list(DraftSection::kUse)) {
    if (use.text("file") == file) return &use;
  }
  return nullptr;
}

/// Words that are clicked like the box they belong to.
class RuleWords final : public QLabel {
 public:
  RuleWords(const QString& words, QCheckBox* tick, QWidget* parent)
      : QLabel(words, parent), tick_(tick) {
    setWordWrap(true);
  }

 protected:
  void mouseReleaseEvent(QMouseEvent* event) override {
    if (event->button() == Qt::LeftButton && rect().contains(event->pos())) tick_->click();
  }

 private:
  QCheckBox* tick_;
};

bool isIn(const std::vector<std::string>& ids, const std::string& id) {
  return std::find(ids.begin(), ids.end(), id) != ids.end();
}

}  // namespace

std::vector<std::string> chosenRules(const Draft& draft, const std::string& file,
                                     const std::vector<scenario::RuleText>& all) {
  std::vector<std::string> chosen;
  const DraftTable* use = findUse(draft, file);
  if (!use) return chosen;
  const std::vector<std::string> named = use->texts("rules"), except = use->texts("except");
  for (const scenario::RuleText& rule : all) {
    if (use->has("rules") && !isIn(named, rule.id)) continue;
    if (!isIn(except, rule.id)) chosen.push_back(rule.id);
  }
  return chosen;
}

void chooseRules(Draft& draft, const std::string& file, const std::vector<scenario::RuleText>& all,
                 const std::vector<std::string>& chosen) {
  auto& uses = draft.list(DraftSection::kUse);
  auto use = std::find_if(uses.begin(), uses.end(),
                          [&](const DraftTable& one) { return one.text("file") == file; });
  if (chosen.empty()) {
    if (use != uses.end()) uses.erase(use);
    return;
  }
  if (use == uses.end()) {
    uses.emplace_back();
    use = uses.end() - 1;
    use->set("file", file);
    use->set("rules", std::vector<std::string>());
  }
  if (!use->has("rules")) {
    std::vector<std::string> except;
    for (const scenario::RuleText& rule : all)
      if (!isIn(chosen, rule.id)) except.push_back(rule.id);
    use->remove("except");
    if (!except.empty()) use->set("except", except);
    return;
  }
  // Those that stay keep their order; a new one comes behind its neighbour of the shared file.
  std::vector<std::string> named = use->texts("rules");
  std::erase_if(named, [&](const std::string& id) { return !isIn(chosen, id); });
  auto behind = named.begin();
  for (const scenario::RuleText& rule : all) {
    if (!isIn(chosen, rule.id)) continue;
    const auto at = std::find(named.begin(), named.end(), rule.id);
    behind = at != named.end() ? at + 1 : named.insert(behind, rule.id) + 1;
  }
  use->set("rules", named);
}

WritingRules::WritingRules(Writing& writing, QWidget* parent)
    : QWidget(parent),
      writing_(writing),
      search_(new QLineEdit(this)),
      column_(new QVBoxLayout(this)) {
  column_->setContentsMargins(0, 0, 0, 0);
  search_->setObjectName(QStringLiteral("writing_find_rules"));
  search_->setAccessibleName(tr("Find a rule"));
  search_->setPlaceholderText(tr("Find a rule by its words"));
  search_->setClearButtonEnabled(true);
  column_->addWidget(search_);
  connect(search_, &QLineEdit::textChanged, this, &WritingRules::filter);
  connect(&writing_, &Writing::replaced, this, &WritingRules::build);
  build();
}

void WritingRules::build() {
  std::vector<std::pair<std::string, std::vector<scenario::RuleText>>> files;
  const scenario::FolderLibrary library = writing_.library();
  for (const std::string& name : library.names(scenario::Shelf::kRules)) {
    auto found = library.find(scenario::Shelf::kRules, name);
    const auto* file = std::get_if<scenario::SourceFile>(&found);
    if (file) files.emplace_back(name, scenario::readRuleFile(*file).rules);
  }
  const auto same = [](const auto& a, const auto& b) {
    return a.first == b.first && std::ranges::equal(a.second, b.second, {}, &scenario::RuleText::id,
                                                    &scenario::RuleText::id);
  };
  if (body_ && std::ranges::equal(files, files_, same)) return fill();
  files_ = std::move(files);
  if (body_) body_->deleteLater();
  lines_.clear();
  body_ = new QWidget(this);
  auto* body = new QVBoxLayout(body_);
  body->setContentsMargins(0, 0, 0, 0);
  for (const auto& [file, rules] : files_) {
    for (const scenario::RuleText& rule : rules) {
      const Line line = makeLine(file, rule);
      body->addWidget(line.row);
      connect(line.tick, &QCheckBox::toggled, this, [this, file = file] { take(file); });
      lines_.push_back(line);
    }
  }
  column_->addWidget(body_);
  body_->show();
  fill();
  filter(search_->text());
}

WritingRules::Line WritingRules::makeLine(const std::string& file, const scenario::RuleText& rule) {
  const QString title = cab::exerciseWords(rule.text("title"));
  const QString reason = cab::exerciseWords(rule.text("reason"));
  auto* row = new QWidget(body_);
  auto* tick = new TickBox(row);
  tick->setObjectName(QStringLiteral("writing_rule_") + QString::fromStdString(rule.id));
  tick->setAccessibleName(title);
  tick->setAccessibleDescription(reason);
  auto* name = new RuleWords(title, tick, row);
  auto* why = new RuleWords(reason, tick, row);
  why->setObjectName(QStringLiteral("second"));
  auto* grid = new QGridLayout(row);
  grid->setContentsMargins(0, 2, 0, 2);
  grid->addWidget(tick, 0, 0, Qt::AlignTop);
  grid->addWidget(name, 0, 1);
  grid->addWidget(why, 1, 1);
  grid->setColumnStretch(1, 1);
  const QString phase = cab::exerciseWords(rule.text("phase"));
  return {
      file, rule.id, tick, row,
      QStringList{QString::fromStdString(rule.id), title, reason, phase}.join(QLatin1Char(' '))};
}

void WritingRules::fill() {
  filling_ = true;
  for (const auto& [file, rules] : files_) {
    const std::vector<std::string> chosen = chosenRules(writing_.draft(), file, rules);
    for (const Line& line : lines_)
      if (line.file == file) line.tick->setChecked(isIn(chosen, line.id));
  }
  filling_ = false;
}

void WritingRules::take(const std::string& name) {
  if (filling_) return;
  for (const auto& [file, rules] : files_) {
    if (file != name) continue;
    std::vector<std::string> chosen;
    for (const Line& line : lines_)
      if (line.file == file && line.tick->isChecked()) chosen.push_back(line.id);
    writing_.change(
        [&, &shared = rules](Draft& draft) { chooseRules(draft, name, shared, chosen); });
  }
}

void WritingRules::filter(const QString& words) {
  const QStringList wanted = words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  for (const Line& line : lines_) {
    const bool fits = std::all_of(wanted.begin(), wanted.end(), [&](const QString& word) {
      return line.words.contains(word, Qt::CaseInsensitive);
    });
    line.row->setVisible(fits);
  }
}

QCheckBox* WritingRules::tickOf(const std::string& id) const {
  for (const Line& line : lines_) {
    if (line.id == id) return line.tick;
  }
  return nullptr;
}

}  // namespace cabwright::desk
