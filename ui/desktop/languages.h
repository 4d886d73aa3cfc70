// SPDX-License-Identifier: GPL-3.0-or-later
// The language the program speaks: the one chosen, else the system's, else English.
#pragma once

#include <QSettings>
#include <QStringList>
#include <QTranslator>
#include <filesystem>

namespace cabwright::desktop {

class Languages {
 public:
  /// Installs what there is for the language kept in the settings. Catalogues lie in
  /// `data`/translations (installed), or where the build has put them.
  Languages(QSettings& settings, const std::filesystem::path& data);
  ~Languages();
  Languages(const Languages&) = delete;
  Languages& operator=(const Languages&) = delete;

  [[nodiscard]] const QString& code() const { return code_; }

 private:
  QTranslator own_, qt_;
  QString code_;
};

}  // namespace cabwright::desktop
