// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/languages.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>

namespace cabwright::desktop {

Languages::Languages(QSettings& settings, const std::filesystem::path& data) {
  const QString chosen = settings.value(QStringLiteral("preferences/language")).toString();
  const QLocale locale = chosen.isEmpty() ? QLocale::system() : QLocale(chosen);
  code_ = locale.name().left(2);
  if (!chosen.isEmpty()) QLocale::setDefault(locale);
  // The sources are English but for plural forms, which stand in a catalogue of their own.
  if (code_ == QLatin1String("C")) code_ = QStringLiteral("en");
  const QString folder = QString::fromStdString((data / "translations").lexically_normal());
  if (own_.load(QStringLiteral("cabwright_") + code_, folder))
    QCoreApplication::installTranslator(&own_);
  if (qt_.load(locale, QStringLiteral("qtbase"), QStringLiteral("_"),
               QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
    QCoreApplication::installTranslator(&qt_);
}

Languages::~Languages() {
  QCoreApplication::removeTranslator(&own_);
  QCoreApplication::removeTranslator(&qt_);
}

}  // namespace cabwright::desktop
