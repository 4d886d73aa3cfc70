// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalogue.h"

#include <QFile>
#include <QRegularExpression>
#include <QXmlStreamReader>

namespace cabwright::testing_ui {
namespace {

constexpr char16_t kMark = u'ø';

CatalogueEntry readMessage(QXmlStreamReader& xml, const QString& context) {
  CatalogueEntry entry;
  entry.context = context;
  entry.plural = xml.attributes().value(QLatin1String("numerus")) == QLatin1String("yes");
  while (xml.readNextStartElement()) {
    if (xml.name() == QLatin1String("source")) {
      entry.source = xml.readElementText();
    } else if (xml.name() == QLatin1String("comment")) {
      entry.comment = xml.readElementText();
    } else if (xml.name() == QLatin1String("translation")) {
      entry.finished = !xml.attributes().hasAttribute(QLatin1String("type"));
      if (!entry.plural) {
        entry.translations << xml.readElementText();
        continue;
      }
      while (xml.readNextStartElement()) entry.translations << xml.readElementText();
    } else {
      xml.skipCurrentElement();
    }
  }
  return entry;
}

// Letters are changed; what stands behind a per cent sign is a place.
QString mark(const QString& source) {
  QString marked = source;
  for (qsizetype k = 0; k < marked.size(); ++k) {
    const bool place = k > 0 && marked[k - 1] == QLatin1Char('%');
    if (marked[k].isLetter() && !place) marked[k] = QChar(kMark);
  }
  return marked;
}

}  // namespace

std::vector<CatalogueEntry> readCatalogue(const QString& path) {
  QFile file(path);
  std::vector<CatalogueEntry> entries;
  if (!file.open(QIODevice::ReadOnly)) return entries;
  QXmlStreamReader xml(&file);
  if (!xml.readNextStartElement()) return entries;
  while (xml.readNextStartElement()) {
    if (xml.name() != QLatin1String("context")) {
      xml.skipCurrentElement();
      continue;
    }
    QString context;
    while (xml.readNextStartElement()) {
      if (xml.name() == QLatin1String("name")) {
        context = xml.readElementText();
      } else if (xml.name() == QLatin1String("message")) {
        entries.push_back(readMessage(xml, context));
      } else {
        xml.skipCurrentElement();
      }
    }
  }
  return xml.hasError() ? std::vector<CatalogueEntry>{} : entries;
}

MarkingTranslator::MarkingTranslator(const std::vector<CatalogueEntry>& entries) {
  for (const CatalogueEntry& entry : entries)
    marked_[{entry.context, entry.source}] = mark(entry.source);
}

QString MarkingTranslator::translate(const char* context, const char* source,
                                     const char* /*comment*/, int /*number*/) const {
  const auto found = marked_.find({QString::fromUtf8(context), QString::fromUtf8(source)});
  return found == marked_.end() ? QString() : found->second;
}

QStringList findUnmarked(const QString& text) {
  static const QRegularExpression word(QStringLiteral("\\b[A-Za-z]{2,}\\b"));
  static const QStringList units{QStringLiteral("psi"), QStringLiteral("inHg"),
                                 QStringLiteral("mph"), QStringLiteral("rpm")};
  QStringList left;
  for (auto match = word.globalMatch(text); match.hasNext();) {
    const QString found = match.next().captured();
    if (!units.contains(found)) left << found;
  }
  return left;
}

}  // namespace cabwright::testing_ui
