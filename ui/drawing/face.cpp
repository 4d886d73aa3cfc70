// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/face.h"

#include <fontconfig/fontconfig.h>

#include <QFontDatabase>
#include <QStringList>

namespace cabwright::drawing {

void prepareFaces() {
  constexpr const char* kRule =
      "<fontconfig><selectfont><rejectfont><pattern><patelt name='family'>"
      "<string>B612 Mono</string></patelt></pattern></rejectfont></selectfont></fontconfig>";
  if (FcInit() == FcFalse) return;
  FcConfig* config = FcConfigGetCurrent();
  const auto* rule = reinterpret_cast<const FcChar8*>(kRule);
  if (FcConfigParseAndLoadFromMemory(config, rule, FcFalse) == FcTrue) FcConfigBuildFonts(config);
}

QString faceName() {
  static const QString name = [] {
    const QString wanted = QStringLiteral("B612");
    return QFontDatabase::families().contains(wanted)
               ? wanted
               : QFontDatabase::systemFont(QFontDatabase::GeneralFont).family();
  }();
  return name;
}

}  // namespace cabwright::drawing
