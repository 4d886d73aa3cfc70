// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/face.h"

#include <QFile>
#include <QFontDatabase>
#include <QFontMetricsF>
#include <QStandardPaths>
#include <QtEndian>
#include <algorithm>

namespace cabwright::drawing {
namespace {

const char* const kInstalled = "B612";
const char* const kRenamed = "B61P";  // of the same length, so that no offset in the file moves

// The monospaced B612 answers to the name of the proportional one too, and Qt, which keeps one file
// for one name and style, may take it for the regular face.
bool isProportional(const QString& face) {
  QFont font(face);
  font.setPixelSize(100);
  const QFontMetricsF metrics(font);
  return metrics.horizontalAdvance(QLatin1Char('i')) <
         0.8 * metrics.horizontalAdvance(QLatin1Char('M'));
}

QByteArray utf16(const char* text) {
  QByteArray wide;
  for (; *text != 0; ++text) wide.append('\0').append(*text);
  return wide;
}

// Changes the family in the name table of an OpenType file (OpenType 1.9, "name"); empty when there
// is no such table.
QByteArray renamed(QByteArray file) {
  constexpr qsizetype kDirectory = 12, kRecord = 16;
  if (file.size() < kDirectory) return {};
  const int tables = qFromBigEndian<quint16>(file.constData() + 4);
  for (int i = 0; i < tables; ++i) {
    const qsizetype record = kDirectory + i * kRecord;
    if (record + kRecord > file.size()) return {};
    if (file.mid(record, 4) != "name") continue;
    const auto offset =
        static_cast<qsizetype>(qFromBigEndian<quint32>(file.constData() + record + 8));
    const auto length =
        static_cast<qsizetype>(qFromBigEndian<quint32>(file.constData() + record + 12));
    if (offset + length > file.size()) return {};
    QByteArray names = file.mid(offset, length);
    names.replace(utf16(kInstalled), utf16(kRenamed)).replace(kInstalled, kRenamed);
    return file.replace(offset, length, names);
  }
  return {};
}

bool addRenamed(const QString& style) {
  const QString path =
      QStandardPaths::locate(QStandardPaths::GenericDataLocation,
                             QStringLiteral("fonts/opentype/b612/B612-%1.otf").arg(style));
  QFile file(path);
  if (path.isEmpty() || !file.open(QIODevice::ReadOnly)) return false;
  const QByteArray data = renamed(file.readAll());
  return !data.isEmpty() && QFontDatabase::addApplicationFontFromData(data) >= 0;
}

QString findFace() {
  const QString installed = QString::fromLatin1(kInstalled);
  if (!QFontDatabase::families().contains(installed))
    return QFontDatabase::systemFont(QFontDatabase::GeneralFont).family();
  if (isProportional(installed)) return installed;
  // Under a name of its own the proportional face cannot be mistaken.
  const QStringList styles{QStringLiteral("Regular"), QStringLiteral("Bold"),
                           QStringLiteral("Italic"), QStringLiteral("BoldItalic")};
  const bool all = std::ranges::all_of(styles, addRenamed);
  const QString own = QString::fromLatin1(kRenamed);
  return all && QFontDatabase::families().contains(own) ? own : installed;
}

}  // namespace

QString faceName() {
  static const QString name = findFace();
  return name;
}

}  // namespace cabwright::drawing
