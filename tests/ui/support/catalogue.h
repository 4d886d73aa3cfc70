// SPDX-License-Identifier: GPL-3.0-or-later
// A catalogue as its file says it, and a translator that marks what a catalogue has.
#pragma once

#include <QString>
#include <QStringList>
#include <QTranslator>
#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace cabwright::testing_ui {

struct CatalogueEntry {
  QString context, source, comment;
  QStringList translations;  ///< one; of plurals one for each form
  bool plural = false;
  bool finished = true;
};

/// All entries of a .ts file; empty: it cannot be read.
[[nodiscard]] std::vector<CatalogueEntry> readCatalogue(const QString& path);

/// Gives every entry of a catalogue in letters that no English word has, its places (%1, %n) kept:
/// whatever English is then left on a screen has not gone through the catalogue.
class MarkingTranslator : public QTranslator {
 public:
  explicit MarkingTranslator(const std::vector<CatalogueEntry>& entries);
  [[nodiscard]] QString translate(const char* context, const char* source, const char* comment,
                                  int number) const override;
  [[nodiscard]] bool isEmpty() const override { return false; }

 private:
  std::map<std::pair<QString, QString>, QString> marked_;
};

/// English words left in a text that was marked; units and proper names do not count.
[[nodiscard]] QStringList findUnmarked(const QString& text);

}  // namespace cabwright::testing_ui
